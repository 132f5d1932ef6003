/* tests/bench/bench-derive.c: how long each stage of deriving takes, against one frame of a screen.
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Each example as it is, and while each of its openings, windows and pieces of hardware is dragged
 * about: then all stages but packing run for every frame. This prints and asserts nothing: times
 * depend on the machine. ninja -C build bench; a number after it: runs, and frames of each drag. */
#include "config.h"
#include "bench/hut-frame.h"
#include "design/hut-file.h"

#include <math.h>
#include <stdio.h>
#include <stdlib.h>

#define DEFAULT_RUNS 60
/* A drag goes this far to each side of where the thing is, mm, in so many swings; own choice: across
 * its neighbours, and over the border of some panels. */
#define DRAG_U_MM 70.0
#define DRAG_V_MM 45.0
#define SWINGS_U 2.0
#define SWINGS_V 3.0
#define PERCENT 100.0

static int
compare_times (gconstpointer a,
               gconstpointer b)
{
  const double x = *(const double *) a, y = *(const double *) b;

  return (x > y) - (x < y);
}

/* The least time that this share of all is not above. */
static double
quantile_ms (GArray *times_ms,
             double share)
{
  const guint rank = (guint) MAX (ceil (share * times_ms->len), 1);

  g_array_sort (times_ms, compare_times);
  return g_array_index (times_ms, double, rank - 1);
}

static double
sum_ms (const GArray *times_ms)
{
  double all_ms = 0.0;

  for (guint i = 0; i < times_ms->len; i++)
    all_ms += g_array_index (times_ms, double, i);
  return all_ms;
}

static void
times_init (GArray *times_ms[HUT_STAGE_COUNT])
{
  for (HutStage stage = 0; stage < HUT_STAGE_COUNT; stage++)
    times_ms[stage] = g_array_new (FALSE, FALSE, sizeof (double));
}

static void
times_add (GArray *times_ms[HUT_STAGE_COUNT],
           const double frame_ms[HUT_STAGE_COUNT])
{
  for (HutStage stage = 0; stage < HUT_STAGE_COUNT; stage++)
    g_array_append_val (times_ms[stage], frame_ms[stage]);
}

static void
times_clear (GArray *times_ms[HUT_STAGE_COUNT])
{
  for (HutStage stage = 0; stage < HUT_STAGE_COUNT; stage++)
    g_array_unref (times_ms[stage]);
}

/* ---- as it is ------------------------------------------------------------------------------ */

static void
bench_design (const char *name,
              const HutDesign *design,
              cairo_t *cr,
              guint runs)
{
  GArray *times_ms[HUT_STAGE_COUNT];
  double run_ms[HUT_STAGE_COUNT];

  times_init (times_ms);
  hut_frame_run (design, cr, NULL, TRUE, run_ms); /* not counted: fonts are looked up */
  for (guint run = 0; run < runs; run++)
    {
      hut_frame_run (design, cr, NULL, TRUE, run_ms);
      times_add (times_ms, run_ms);
    }
  printf ("%s, %u runs\n  stage         min ms median ms    max ms   of a frame (median)\n", name, runs);
  for (HutStage stage = 0; stage < HUT_STAGE_COUNT; stage++)
    {
      const double median_ms = quantile_ms (times_ms[stage], 0.5);

      printf ("  %-10s %9.3f %9.3f %9.3f   %5.1f %%\n", hut_stage_name (stage),
              quantile_ms (times_ms[stage], 0.0), median_ms, quantile_ms (times_ms[stage], 1.0),
              PERCENT * median_ms / HUT_FRAME_MS);
    }
  times_clear (times_ms);
}

/* ---- dragged ------------------------------------------------------------------------------- */

/* Frames of one thing on its way round. @id: of it; @at: its position in @design */
static void
drag (const HutDesign *design,
      cairo_t *cr,
      const char *id,
      HutPosition *at,
      guint frames,
      GArray *times_ms[HUT_STAGE_COUNT])
{
  const double u_mm = at->u_offset_mm, v_mm = at->v_offset_mm;

  for (guint i = 0; i < frames; i++)
    {
      const double turn_rad = 2.0 * G_PI * i / frames;
      double frame_ms[HUT_STAGE_COUNT];

      at->u_offset_mm = u_mm + DRAG_U_MM * sin (SWINGS_U * turn_rad);
      at->v_offset_mm = v_mm + DRAG_V_MM * sin (SWINGS_V * turn_rad);
      hut_frame_run (design, cr, id, FALSE, frame_ms);
      times_add (times_ms, frame_ms);
    }
  at->u_offset_mm = u_mm;
  at->v_offset_mm = v_mm;
}

static void
print_drag (guint things,
            GArray *times_ms[HUT_STAGE_COUNT])
{
  const GArray *frames_ms = times_ms[HUT_STAGE_FRAME];
  const double all_ms = sum_ms (frames_ms);
  guint in_time = 0;

  for (guint i = 0; i < frames_ms->len; i++)
    in_time += g_array_index (frames_ms, double, i) <= HUT_FRAME_MS;
  printf ("  %u things dragged, %u frames: %.2f %% of them within %.1f ms\n"
          "  stage      median ms   99 %% ms    max ms   share\n",
          things, frames_ms->len, PERCENT * in_time / MAX (frames_ms->len, 1), HUT_FRAME_MS);
  for (HutStage stage = 0; stage <= HUT_STAGE_FRAME; stage++)
    printf ("  %-10s %9.3f %9.3f %9.3f   %5.1f %%\n", hut_stage_name (stage),
            quantile_ms (times_ms[stage], 0.5), quantile_ms (times_ms[stage], 0.99),
            quantile_ms (times_ms[stage], 1.0), PERCENT * sum_ms (times_ms[stage]) / all_ms);
}

static void
bench_drags (const HutDesign *design,
             cairo_t *cr,
             guint frames)
{
  const guint things = design->openings->len + design->windows->len + design->hardware->len;
  GArray *times_ms[HUT_STAGE_COUNT];

  if (things == 0)
    return;
  times_init (times_ms);
  for (guint i = 0; i < design->openings->len; i++)
    {
      HutOpening *opening = g_ptr_array_index (design->openings, i);

      drag (design, cr, opening->id, &opening->at, frames, times_ms);
    }
  for (guint i = 0; i < design->windows->len; i++)
    {
      HutWindow *window = g_ptr_array_index (design->windows, i);

      drag (design, cr, window->id, &window->at, frames, times_ms);
    }
  for (guint i = 0; i < design->hardware->len; i++)
    {
      HutHardware *hardware = g_ptr_array_index (design->hardware, i);

      drag (design, cr, hardware->id, &hardware->at, frames, times_ms);
    }
  print_drag (things, times_ms);
  times_clear (times_ms);
}

int
main (int argc,
      char **argv)
{
  const guint runs = argc > 1 ? (guint) MAX (atoi (argv[1]), 1) : DEFAULT_RUNS;
  cairo_surface_t *surface = cairo_image_surface_create (
    CAIRO_FORMAT_ARGB32, HUT_FRAME_CANVAS_WIDTH_PX, HUT_FRAME_CANVAS_HEIGHT_PX);
  cairo_t *cr = cairo_create (surface);
  int status = EXIT_SUCCESS;

  for (const char *const *name = hut_example_names (); *name != NULL && status == EXIT_SUCCESS; name++)
    {
      g_autoptr(GError) error = NULL;
      g_autoptr(HutDesign) design = hut_example_load (*name, &error);

      if (design == NULL)
        {
          fprintf (stderr, "%s\n", error->message);
          status = EXIT_FAILURE;
          continue;
        }
      bench_design (*name, design, cr, runs);
      bench_drags (design, cr, runs);
    }
  cairo_destroy (cr);
  cairo_surface_destroy (surface);
  return status;
}

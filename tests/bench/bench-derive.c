/* tests/bench/bench-derive.c: how long each stage of deriving takes, against one frame of a screen.
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * While something is dragged, all stages but packing run for every frame. This prints and asserts
 * nothing: times depend on the machine. They are processor time, so that other programs on the machine
 * do not count; no stage waits or has threads. ninja -C build bench */
#include "config.h"
#include "design/hut-file.h"
#include "draw/hut-flat.h"
#include "sheets/hut-sheet.h"

#include <math.h>
#include <stdio.h>
#include <stdlib.h>
#include <time.h>

#define DEFAULT_RUNS 60
#define FRAME_MS (1000.0 / 60.0) /* of a screen that shows 60 frames a second */
#define MS_PER_S 1e3
#define NS_PER_MS 1e6
#define CANVAS_WIDTH_PX 1100 /* own choice: the canvas of a window of 1366 x 768 */
#define CANVAS_HEIGHT_PX 680
#define BORDER_PX 24.0

typedef enum
{
  STAGE_ASSEMBLY,
  STAGE_SPLIT,
  STAGE_CHECKS,
  STAGE_DRAW,
  STAGE_FRAME, /* the four above */
  STAGE_SHEETS,
  STAGE_COUNT
} Stage;

static const char *const stage_names[STAGE_COUNT] = {
  [STAGE_ASSEMBLY] = "assembly", [STAGE_SPLIT] = "split", [STAGE_CHECKS] = "checks",
  [STAGE_DRAW] = "draw flat", [STAGE_FRAME] = "a frame", [STAGE_SHEETS] = "(sheets)",
};

/* Processor time of this thread, ms. */
static double
get_now_ms (void)
{
  struct timespec now = { 0 };

  clock_gettime (CLOCK_THREAD_CPUTIME_ID, &now);
  return (double) now.tv_sec * MS_PER_S + (double) now.tv_nsec / NS_PER_MS;
}

/* Milliseconds since @since_ms, which becomes now. */
static double
take_lap_ms (double *since_ms)
{
  const double now_ms = get_now_ms ();
  const double lap_ms = now_ms - *since_ms;

  *since_ms = now_ms;
  return lap_ms;
}

static void
draw (cairo_t *cr,
      const HutAssembly *assembly,
      const HutPartSet *parts,
      const GPtrArray *findings)
{
  g_autoptr(HutFlatLayout) layout = hut_flat_layout_new (assembly);
  const HutFlatView view = hut_flat_view_fit (layout->bounds, CANVAS_WIDTH_PX, CANVAS_HEIGHT_PX,
                                              BORDER_PX);
  const HutFlatStyle style = {
    .show_machine = TRUE,
    .show_splices = TRUE,
    .show_dimensions = TRUE,
    .selected_finding = -1,
  };

  hut_flat_draw (cr, assembly, parts, findings, layout, &view, &style, CANVAS_WIDTH_PX,
                 CANVAS_HEIGHT_PX);
}

static void
run_once (const HutDesign *design,
          cairo_t *cr,
          double times_ms[STAGE_COUNT])
{
  double since_ms = get_now_ms ();
  g_autoptr(HutAssembly) assembly = hut_assembly_new (design);
  g_autoptr(HutPartSet) parts = NULL;
  g_autoptr(GPtrArray) findings = NULL;
  g_autoptr(HutSheetSet) sheets = NULL;

  times_ms[STAGE_ASSEMBLY] = take_lap_ms (&since_ms);
  parts = hut_part_set_new (assembly);
  times_ms[STAGE_SPLIT] = take_lap_ms (&since_ms);
  findings = hut_check_all (assembly, parts);
  times_ms[STAGE_CHECKS] = take_lap_ms (&since_ms);
  draw (cr, assembly, parts, findings);
  times_ms[STAGE_DRAW] = take_lap_ms (&since_ms);
  sheets = hut_sheet_set_new (assembly, parts);
  times_ms[STAGE_SHEETS] = take_lap_ms (&since_ms);
  times_ms[STAGE_FRAME] = times_ms[STAGE_ASSEMBLY] + times_ms[STAGE_SPLIT] + times_ms[STAGE_CHECKS]
                          + times_ms[STAGE_DRAW];
}

static int
compare_times (gconstpointer a,
               gconstpointer b)
{
  const double x = *(const double *) a, y = *(const double *) b;

  return (x > y) - (x < y);
}

static void
print_stage (const char *name,
             GArray *times_ms)
{
  const guint count = times_ms->len;
  double median_ms = 0.0;

  g_array_sort (times_ms, compare_times);
  median_ms = g_array_index (times_ms, double, count / 2);
  printf ("  %-10s %9.3f %9.3f %9.3f   %5.1f %%\n", name, g_array_index (times_ms, double, 0), median_ms,
          g_array_index (times_ms, double, count - 1), 100.0 * median_ms / FRAME_MS);
}

static void
bench_design (const char *name,
              const HutDesign *design,
              guint runs)
{
  cairo_surface_t *surface = cairo_image_surface_create (CAIRO_FORMAT_ARGB32, CANVAS_WIDTH_PX,
                                                         CANVAS_HEIGHT_PX);
  cairo_t *cr = cairo_create (surface);
  GArray *times_ms[STAGE_COUNT];
  double run_ms[STAGE_COUNT];

  for (Stage stage = 0; stage < STAGE_COUNT; stage++)
    times_ms[stage] = g_array_new (FALSE, FALSE, sizeof (double));
  run_once (design, cr, run_ms); /* not counted: fonts are looked up, memory is asked for */
  for (guint run = 0; run < runs; run++)
    {
      run_once (design, cr, run_ms);
      for (Stage stage = 0; stage < STAGE_COUNT; stage++)
        g_array_append_val (times_ms[stage], run_ms[stage]);
    }
  printf ("%s, %u runs\n  stage         min ms median ms    max ms   of a frame (median)\n", name, runs);
  for (Stage stage = 0; stage < STAGE_COUNT; stage++)
    {
      print_stage (stage_names[stage], times_ms[stage]);
      g_array_unref (times_ms[stage]);
    }
  cairo_destroy (cr);
  cairo_surface_destroy (surface);
}

int
main (int argc,
      char **argv)
{
  const guint runs = argc > 1 ? (guint) MAX (atoi (argv[1]), 1) : DEFAULT_RUNS;

  for (const char *const *name = hut_example_names (); *name != NULL; name++)
    {
      g_autoptr(GError) error = NULL;
      g_autoptr(HutDesign) design = hut_example_load (*name, &error);

      if (design == NULL)
        {
          fprintf (stderr, "%s\n", error->message);
          return EXIT_FAILURE;
        }
      bench_design (*name, design, runs);
    }
  return EXIT_SUCCESS;
}

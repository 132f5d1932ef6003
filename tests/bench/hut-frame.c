/* tests/bench/hut-frame.c: one frame of a design, with the time of each of its stages.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "config.h"
#include "bench/hut-frame.h"
#include "checks/hut-finding.h"
#include "draw/hut-flat.h"
#include "sheets/hut-sheet.h"

#include <time.h>

#define MS_PER_S 1e3
#define NS_PER_MS 1e6
#define BORDER_PX 24.0

static const char *const stage_names[HUT_STAGE_COUNT] = {
  [HUT_STAGE_ASSEMBLY] = "assembly", [HUT_STAGE_SPLIT] = "split", [HUT_STAGE_CHECKS] = "checks",
  [HUT_STAGE_DRAW] = "draw flat", [HUT_STAGE_FRAME] = "a frame", [HUT_STAGE_SHEETS] = "(sheets)",
};

const char *
hut_stage_name (HutStage stage)
{
  return stage_names[stage];
}

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
      const GPtrArray *findings,
      const char *selected)
{
  g_autoptr(HutFlatLayout) layout = hut_flat_layout_new (assembly);
  const HutFlatView view = hut_flat_view_fit (layout->bounds, HUT_FRAME_CANVAS_WIDTH_PX, HUT_FRAME_CANVAS_HEIGHT_PX,
                                              BORDER_PX);
  const HutFlatStyle style = {
    .show_machine = TRUE,
    .show_splices = TRUE,
    .show_dimensions = TRUE,
    .selected = selected,
    .selected_finding = -1,
  };

  hut_flat_draw (cr, assembly, parts, findings, layout, &view, &style, HUT_FRAME_CANVAS_WIDTH_PX,
                 HUT_FRAME_CANVAS_HEIGHT_PX);
}

void
hut_frame_run (const HutDesign *design,
               cairo_t *cr,
               const char *selected,
               gboolean sheets,
               double times_ms[HUT_STAGE_COUNT])
{
  double since_ms = get_now_ms ();
  g_autoptr(HutAssembly) assembly = hut_assembly_new (design);
  g_autoptr(HutPartSet) parts = NULL;
  g_autoptr(GPtrArray) findings = NULL;

  times_ms[HUT_STAGE_ASSEMBLY] = take_lap_ms (&since_ms);
  parts = hut_part_set_new (assembly);
  times_ms[HUT_STAGE_SPLIT] = take_lap_ms (&since_ms);
  findings = hut_check_all (assembly, parts);
  times_ms[HUT_STAGE_CHECKS] = take_lap_ms (&since_ms);
  draw (cr, assembly, parts, findings, selected);
  times_ms[HUT_STAGE_DRAW] = take_lap_ms (&since_ms);
  times_ms[HUT_STAGE_FRAME] = times_ms[HUT_STAGE_ASSEMBLY] + times_ms[HUT_STAGE_SPLIT]
                              + times_ms[HUT_STAGE_CHECKS] + times_ms[HUT_STAGE_DRAW];
  if (sheets)
    hut_sheet_set_free (hut_sheet_set_new (assembly, parts));
  times_ms[HUT_STAGE_SHEETS] = take_lap_ms (&since_ms);
}

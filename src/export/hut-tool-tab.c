/* src/export/hut-tool-tab.c: bridges that hold parts while they are cut.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-export"
#include "config.h"
#include "export/hut-tool-tab.h"
#include <math.h>

/* Sizes: see hut_tab_size (). */
#define LASER_WIDTH_RATIO 0.15
#define LASER_WIDTH_MIN_MM 0.4
#define LASER_WIDTH_MAX_MM 1.2
#define LASER_SPACING_MM 200.0
#define LASER_COUNT 2
#define ROUTER_WIDTH_MIN_MM 4.0
#define ROUTER_WIDTH_MAX_MM 8.0
#define ROUTER_HEIGHT_RATIO 0.25
#define ROUTER_HEIGHT_MIN_MM 0.8
#define ROUTER_HEIGHT_MAX_MM 2.0
#define ROUTER_SPACING_MM 150.0
#define ROUTER_COUNT 3

/* A tab keeps this much and a kerf from the ends of its run, mm. Own choice: corners stay clean. */
#define MARGIN_MM 1.0
/* Arcs from this radius on count as straight, mm. Own choice. */
#define STRAIGHT_RADIUS_MM 20.0
/* Waste of a hole that is narrower than this is left to fall, mm. Own choice: it stands in
 * nobody's way. */
#define HOLE_MIN_MM 40.0
/* Tabs are at least this share of their usual distance apart. Own choice. */
#define APART_RATIO 0.4
/* A turn to the right by more than this is a foot (sine). Own choice: five degrees. */
#define TURN_SINE 0.09

/* Where a tab may begin, mm from the start of the path. */
typedef struct
{
  double from_mm, to_mm;
} Run;

HutTabSize
hut_tab_size (const HutStock *stock,
              HutCutterKind cutter)
{
  g_return_val_if_fail (stock != NULL, ((HutTabSize) { 0, 0, 0, 0, 0 }));

  const double thickness_mm = hut_stock_mean_mm (stock);
  const gboolean laser = cutter == HUT_CUTTER_LASER;
  const double width_mm
      = laser ? CLAMP (thickness_mm * LASER_WIDTH_RATIO, LASER_WIDTH_MIN_MM, LASER_WIDTH_MAX_MM)
              : CLAMP (thickness_mm, ROUTER_WIDTH_MIN_MM, ROUTER_WIDTH_MAX_MM);

  return (HutTabSize) {
    .width_mm = width_mm,
    .height_mm = laser ? thickness_mm
                       : MIN (CLAMP (thickness_mm * ROUTER_HEIGHT_RATIO, ROUTER_HEIGHT_MIN_MM,
                                     ROUTER_HEIGHT_MAX_MM),
                              thickness_mm / 2.0),
    .gap_mm = width_mm + stock->kerf_mm,
    .spacing_mm = laser ? LASER_SPACING_MM : ROUTER_SPACING_MM,
    .least_count = laser ? LASER_COUNT : ROUTER_COUNT,
  };
}

double
hut_tool_depth_mm (const HutStock *stock,
                   const HutCutter *cutter)
{
  return hut_stock_max_mm (stock) + cutter->through_mm;
}

double
hut_tool_ramp_mm (const HutStock *stock,
                  const HutCutter *cutter)
{
  return hut_tool_depth_mm (stock, cutter) / stock->passes * HUT_RAMP_ALONG_RATIO;
}

/* ---- runs ------------------------------------------------------------------------------------ */

static HutPoint
direction_at (const HutSegment *segment,
              gboolean at_end)
{
  HutPoint centre, arm;
  double radius_mm;

  if (segment->bulge == 0.0 || !hut_segment_get_circle (segment, &centre, &radius_mm))
    return hut_point_unit (hut_point_minus (segment->end, segment->start));
  arm = hut_point_unit (hut_point_minus (at_end ? segment->end : segment->start, centre));
  return segment->bulge > 0.0 ? (HutPoint) { -arm.v, arm.u } : (HutPoint) { arm.v, -arm.u };
}

/* The neighbour of edge @index, past a relief that goes there and back. */
static HutSegment
neighbour (const HutPath *path,
           guint index,
           gboolean next)
{
  const guint count = hut_path_get_count (path);
  const guint step = next ? 1 : count - 1;
  const HutSegment first = hut_path_get_segment (path, (index + step) % count);
  const HutSegment second = hut_path_get_segment (path, (index + 2 * step) % count);
  const gboolean back = first.bulge == 0.0 && second.bulge == 0.0 && count > 3
                        && hut_point_distance_mm (next ? first.start : first.end,
                                                  next ? second.end : second.start)
                               < HUT_SHORTEST_MM;

  return back ? hut_path_get_segment (path, (index + 3 * step) % count) : first;
}

/* Whether a part's outline turns into its material at an end of the edge: there another part's
 * finger
 * stands, and nothing may be left for it to meet. */
static gboolean
has_foot (const HutPath *path,
          guint index)
{
  const HutSegment self = hut_path_get_segment (path, index);
  const HutSegment before = neighbour (path, index, FALSE), after = neighbour (path, index, TRUE);

  return hut_point_cross (direction_at (&before, TRUE), direction_at (&self, FALSE)) < -TURN_SINE
         || hut_point_cross (direction_at (&self, TRUE), direction_at (&after, FALSE)) < -TURN_SINE;
}

static gboolean
is_straight (const HutSegment *segment)
{
  HutPoint centre;
  double radius_mm;

  return segment->bulge == 0.0
         || (hut_segment_get_circle (segment, &centre, &radius_mm)
             && radius_mm >= STRAIGHT_RADIUS_MM);
}

/* (transfer full) (element-type Run) */
static GArray *
runs_new (const HutToolPath *path,
          double tab_mm,
          double margin_mm,
          double skip_mm)
{
  GArray *runs = g_array_new (FALSE, FALSE, sizeof (Run));
  double at_mm = 0.0;

  for (guint i = 0; i < hut_path_get_count (path->closed); i++)
    {
      const HutSegment segment = hut_path_get_segment (path->closed, i);
      const double length_mm = hut_segment_length_mm (&segment);
      const Run run = { MAX (at_mm + margin_mm, skip_mm), at_mm + length_mm - margin_mm - tab_mm };

      at_mm += length_mm;
      if (run.to_mm >= run.from_mm && segment.kind == HUT_EDGE_PLAIN && is_straight (&segment)
          && !(path->outline && has_foot (path->closed, i)))
        g_array_append_val (runs, run);
    }
  return runs;
}

/* ---- places ---------------------------------------------------------------------------------- */

static gboolean
is_apart (const GArray *tabs,
          double from_mm,
          double apart_mm)
{
  for (guint i = 0; i < tabs->len; i++)
    if (fabs (g_array_index (tabs, HutTab, i).from_mm - from_mm) < apart_mm)
      return FALSE;
  return TRUE;
}

/* The allowed begin that is nearest to @wanted_mm. */
static gboolean
find_begin (const GArray *runs,
            const GArray *tabs,
            double wanted_mm,
            double apart_mm,
            double *begin_mm)
{
  double best_mm = G_MAXDOUBLE;

  for (guint i = 0; i < runs->len; i++)
    {
      const Run *run = &g_array_index (runs, Run, i);
      const double at_mm = CLAMP (wanted_mm, run->from_mm, run->to_mm);

      if (fabs (at_mm - wanted_mm) >= best_mm || !is_apart (tabs, at_mm, apart_mm))
        continue;
      best_mm = fabs (at_mm - wanted_mm);
      *begin_mm = at_mm;
    }
  return best_mm < G_MAXDOUBLE;
}

static int
compare_tabs (gconstpointer a,
              gconstpointer b)
{
  const HutTab *x = a, *y = b;

  return x->from_mm < y->from_mm ? -1 : x->from_mm > y->from_mm;
}

static gboolean
wants_tabs (const HutToolPath *path)
{
  HutRect box;

  if (path->closed == NULL || (path->layer != HUT_LAYER_CUT_OUTSIDE
                               && path->layer != HUT_LAYER_CUT_INSIDE))
    return FALSE;
  if (path->outline)
    return TRUE;
  box = hut_path_bounds (path->closed);
  if (MIN (box.u1 - box.u0, box.v1 - box.v0) < HOLE_MIN_MM)
    return FALSE;
  for (guint i = 0; i < hut_path_get_count (path->closed); i++)
    if (hut_path_get (path->closed, i)->kind == HUT_EDGE_MATING)
      return FALSE;
  return TRUE;
}

static void
add_tabs (HutToolPath *path,
          const HutTabSize *size,
          double margin_mm,
          double behind_mm,
          double skip_mm)
{
  const double length_mm = hut_path_length_mm (path->closed);
  const guint count = MAX (size->least_count, (guint) ceil (length_mm / size->spacing_mm));
  g_autoptr(GArray) runs = runs_new (path, size->gap_mm + behind_mm, margin_mm, skip_mm);

  path->tabs = g_array_new (FALSE, FALSE, sizeof (HutTab));
  for (guint i = 0; i < count; i++)
    {
      const double wanted_mm = length_mm * (i + 0.5) / count - size->gap_mm / 2.0;
      HutTab tab;

      if (!find_begin (runs, path->tabs, wanted_mm,
                       MAX (length_mm / count * APART_RATIO,
                            size->gap_mm + behind_mm + 2.0 * margin_mm),
                       &tab.from_mm))
        continue;
      tab.to_mm = tab.from_mm + size->gap_mm;
      g_array_append_val (path->tabs, tab);
    }
  g_array_sort (path->tabs, compare_tabs);
}

void
hut_tool_paths_add_tabs (GPtrArray *paths,
                         const HutCutter *cutter,
                         const HutStock *stock)
{
  g_return_if_fail (paths != NULL && cutter != NULL && stock != NULL);

  const HutTabSize size = hut_tab_size (stock, cutter->kind);
  const gboolean router = cutter->kind == HUT_CUTTER_ROUTER;
  /* Behind a tab a router goes down again on a ramp. */
  const double behind_mm = router ? (size.height_mm + cutter->through_mm
                                     + hut_stock_max_mm (stock) - hut_stock_mean_mm (stock))
                                        * HUT_RAMP_RATIO
                                  : 0.0;

  if (!cutter->tabs)
    return;
  for (guint i = 0; i < paths->len; i++)
    {
      HutToolPath *path = g_ptr_array_index (paths, i);

      if (wants_tabs (path))
        add_tabs (path, &size, MARGIN_MM + stock->kerf_mm, behind_mm,
                  router && !path->has_lead ? hut_tool_ramp_mm (stock, cutter) : 0.0);
    }
}

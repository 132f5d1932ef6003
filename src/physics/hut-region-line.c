/* src/physics/hut-region-line.c: where a straight line runs through the material of a region.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-physics"
#include "config.h"
#include "physics/hut-region-line.h"

/* A line past the end of an edge by this share of it is a cut as well, whatever the rounding; own
 * choice. */
#define SLACK_RATIO 1e-6

typedef struct
{
  HutPoint from, way; /* mm */
} Line;

static void
add_share (GArray *cuts,
           double share)
{
  if (share > 0 && share < 1)
    g_array_append_val (cuts, share);
}

static void
cut_by_line (const Line *line,
             const HutSegment *segment,
             GArray *cuts)
{
  const HutPoint edge = hut_point_minus (segment->end, segment->start);
  const HutPoint to_edge = hut_point_minus (segment->start, line->from);
  const double turn = hut_point_cross (line->way, edge);

  double at;

  /* A parallel edge has ends on other edges, which give the cuts. */
  if (turn == 0)
    return;
  at = hut_point_cross (to_edge, line->way) / turn;
  if (at >= -SLACK_RATIO && at <= 1 + SLACK_RATIO)
    add_share (cuts, hut_point_cross (to_edge, edge) / turn);
}

static void
cut_by_circle (const Line *line,
               HutPoint centre,
               double radius_mm,
               GArray *cuts)
{
  const HutPoint off = hut_point_minus (line->from, centre);
  const double a = hut_point_dot (line->way, line->way), b = hut_point_dot (line->way, off);
  const double c = hut_point_dot (off, off) - radius_mm * radius_mm, root = b * b - a * c;

  if (!(root > 0) || !(a > 0))
    return;
  add_share (cuts, (-b - sqrt (root)) / a);
  add_share (cuts, (-b + sqrt (root)) / a);
}

/* More cuts than crossings do no harm: each stretch between two of them is looked at. */
static void
cut_by_path (const Line *line,
             const HutPath *path,
             GArray *cuts)
{
  for (guint i = 0; i < hut_path_get_count (path); i++)
    {
      const HutSegment segment = hut_path_get_segment (path, i);
      HutPoint centre;
      double radius_mm;

      if (hut_segment_get_circle (&segment, &centre, &radius_mm))
        cut_by_circle (line, centre, radius_mm, cuts);
      else
        cut_by_line (line, &segment, cuts);
    }
}

static gboolean
is_material (const HutRegion *region,
             HutPoint p)
{
  if (hut_path_locate (region->outer, p) != HUT_PATH_SIDE_INSIDE)
    return FALSE;
  for (guint i = 0; i < region->holes->len; i++)
    if (hut_path_locate (region->holes->pdata[i], p) != HUT_PATH_SIDE_OUTSIDE)
      return FALSE;
  return TRUE;
}

static int
compare_shares (gconstpointer a,
                gconstpointer b)
{
  const double p = *(const double *)a, q = *(const double *)b;

  return (p > q) - (p < q);
}

GArray *
hut_region_line_shares (const HutRegion *region,
                        HutPoint from,
                        HutPoint to)
{
  g_return_val_if_fail (region != NULL, NULL);

  const Line line = { from, hut_point_minus (to, from) };
  GArray *shares = g_array_new (FALSE, FALSE, sizeof (HutShare));
  g_autoptr(GArray) cuts = g_array_new (FALSE, FALSE, sizeof (double));
  const double ends[] = { 0, 1 };

  g_array_append_vals (cuts, ends, G_N_ELEMENTS (ends));
  cut_by_path (&line, region->outer, cuts);
  for (guint i = 0; i < region->holes->len; i++)
    cut_by_path (&line, region->holes->pdata[i], cuts);
  g_array_sort (cuts, compare_shares);
  for (guint i = 0; i + 1 < cuts->len; i++)
    {
      const HutShare share
          = { g_array_index (cuts, double, i), g_array_index (cuts, double, i + 1) };
      HutShare *last = shares->len > 0 ? &g_array_index (shares, HutShare, shares->len - 1) : NULL;

      if (!(share.to > share.from)
          || !is_material (region, hut_point_along (from, line.way, 0.5 * (share.from + share.to))))
        continue;
      if (last != NULL && last->to == share.from)
        last->to = share.to;
      else
        g_array_append_val (shares, share);
    }
  return shares;
}

gboolean
hut_region_line_meets (const HutRegion *region,
                       HutPoint from,
                       HutPoint to)
{
  g_autoptr(GArray) shares = hut_region_line_shares (region, from, to);

  return shares->len > 0;
}

/* src/checks/hut-border.c: how near the borders of two paths come to each other.
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Two segments are nearest at an end of one of them, where both are square to the line between
 * the nearest points, or where they cross. Each of these gives a few candidate points in closed
 * form; a candidate is drawn onto one segment and from there onto the other, so one that misses
 * its segment does no harm. */
#define G_LOG_DOMAIN "hut-checks"
#include "config.h"
#include "checks/hut-border.h"
#include <math.h>

/* Borders nearer than this cross or touch, mm. Own choice: far under the grid, far above
 * rounding. */
#define TOUCH_MM 1e-9

typedef struct
{
  HutSegment segment;
  HutRect bounds;
  gboolean arc;
  HutPoint centre;
  double radius_mm;
} Piece;

typedef struct
{
  HutWeb best;
  gboolean found;
} Search;

static Piece
piece_of (HutSegment segment)
{
  Piece piece = { .segment = segment, .bounds = hut_segment_bounds (&segment) };

  piece.arc = hut_segment_get_circle (&segment, &piece.centre, &piece.radius_mm);
  return piece;
}

static Piece *
pieces_new (const HutPath *path)
{
  const guint n = hut_path_get_count (path);
  Piece *pieces = g_new (Piece, MAX (n, 1));

  for (guint i = 0; i < n; i++)
    pieces[i] = piece_of (hut_path_get_segment (path, i));
  return pieces;
}

static double
rects_distance_mm (const HutRect *a,
                   const HutRect *b)
{
  return hypot (fmax (0.0, fmax (a->u0 - b->u1, b->u0 - a->u1)),
                fmax (0.0, fmax (a->v0 - b->v1, b->v0 - a->v1)));
}

static void
try_point (Search *search,
           const Piece *a,
           const Piece *b,
           HutPoint near)
{
  const HutPoint on_a = hut_segment_nearest (&a->segment, near);
  const HutPoint on_b = hut_segment_nearest (&b->segment, on_a);
  const double width_mm = hut_point_distance_mm (on_a, on_b);

  if (width_mm < search->best.width_mm)
    {
      search->best = (HutWeb) { on_a, on_b, width_mm < TOUCH_MM ? 0.0 : width_mm };
      search->found = TRUE;
    }
}

/* The points of an arc that look along a direction, forwards and backwards. */
static void
try_direction (Search *search,
               const Piece *arc,
               const Piece *other,
               HutPoint direction)
{
  const double length = hypot (direction.u, direction.v);

  if (!(length > 0.0))
    return;
  for (int sign = -1; sign <= 1; sign += 2)
    {
      const double far_mm = sign * arc->radius_mm / length;

      try_point (search, arc, other,
                 (HutPoint) { arc->centre.u + direction.u * far_mm,
                             arc->centre.v + direction.v * far_mm });
    }
}

/* Where the carrying lines or circles of both cross. */
static void
try_crossings (Search *search,
               const Piece *a,
               const Piece *b)
{
  const HutPoint from = a->arc ? a->centre : a->segment.start;
  HutPoint along, foot;
  double half_mm;

  if (!a->arc && !b->arc)
    {
      const HutPoint d = { a->segment.end.u - from.u, a->segment.end.v - from.v };
      const HutPoint e
          = { b->segment.end.u - b->segment.start.u, b->segment.end.v - b->segment.start.v };
      const double det = d.u * e.v - d.v * e.u;
      const double t
          = ((b->segment.start.u - from.u) * e.v - (b->segment.start.v - from.v) * e.u) / det;

      if (det != 0.0)
        try_point (search, a, b, (HutPoint) { from.u + d.u * t, from.v + d.v * t });
      return;
    }
  if (a->arc && b->arc)
    {
      const double far_mm = hut_point_distance_mm (a->centre, b->centre);
      const double to_foot_mm
          = (far_mm * far_mm + a->radius_mm * a->radius_mm - b->radius_mm * b->radius_mm)
            / (2.0 * far_mm);
      const double rest_mm2 = a->radius_mm * a->radius_mm - to_foot_mm * to_foot_mm;

      if (!(far_mm > 0.0) || rest_mm2 < 0.0)
        return;
      along = (HutPoint) { -(b->centre.v - from.v) / far_mm, (b->centre.u - from.u) / far_mm };
      foot = (HutPoint) { from.u + along.v * to_foot_mm, from.v - along.u * to_foot_mm };
      half_mm = sqrt (rest_mm2);
    }
  else
    {
      const Piece *line = a->arc ? b : a, *arc = a->arc ? a : b;
      const HutPoint d = { line->segment.end.u - line->segment.start.u,
                           line->segment.end.v - line->segment.start.v };
      const double length_mm = hypot (d.u, d.v);
      const HutPoint to_centre
          = { arc->centre.u - line->segment.start.u, arc->centre.v - line->segment.start.v };
      double off_mm;

      if (!(length_mm > 0.0))
        return;
      along = (HutPoint) { d.u / length_mm, d.v / length_mm };
      off_mm = along.u * to_centre.v - along.v * to_centre.u;
      if (fabs (off_mm) > arc->radius_mm)
        return;
      foot = (HutPoint) { arc->centre.u + along.v * off_mm, arc->centre.v - along.u * off_mm };
      half_mm = sqrt (arc->radius_mm * arc->radius_mm - off_mm * off_mm);
    }
  try_point (search, a, b, (HutPoint) { foot.u + along.u * half_mm, foot.v + along.v * half_mm });
  try_point (search, a, b, (HutPoint) { foot.u - along.u * half_mm, foot.v - along.v * half_mm });
}

static void
try_square (Search *search,
            const Piece *arc,
            const Piece *other)
{
  const HutSegment *line = &other->segment;

  if (!arc->arc)
    return;
  if (other->arc)
    try_direction (
        search, arc, other,
        (HutPoint) { other->centre.u - arc->centre.u, other->centre.v - arc->centre.v });
  else
    try_direction (search, arc, other,
                   (HutPoint) { line->end.v - line->start.v, line->start.u - line->end.u });
}

static void
try_pair (Search *search,
          const Piece *a,
          const Piece *b)
{
  /* The second point of @best is on @b: what starts from @b is turned round afterwards. */
  Search back = { .best = { .width_mm = search->best.width_mm } };

  try_point (search, a, b, a->segment.start);
  try_point (search, a, b, a->segment.end);
  try_square (search, a, b);
  try_crossings (search, a, b);
  try_point (&back, b, a, b->segment.start);
  try_point (&back, b, a, b->segment.end);
  try_square (&back, b, a);
  if (back.found && back.best.width_mm < search->best.width_mm)
    {
      search->best = (HutWeb) { back.best.b, back.best.a, back.best.width_mm };
      search->found = TRUE;
    }
}

static gboolean
find_gap (const Piece *a,
          guint a_count,
          const Piece *b,
          guint b_count,
          double limit_mm,
          HutWeb *gap)
{
  Search search = { .best = { .width_mm = limit_mm } };

  for (guint i = 0; i < a_count; i++)
    for (guint k = 0; k < b_count; k++)
      if (rects_distance_mm (&a[i].bounds, &b[k].bounds) < search.best.width_mm)
        try_pair (&search, &a[i], &b[k]);
  if (search.found)
    *gap = search.best;
  return search.found;
}

gboolean
hut_border_find_gap (const HutPath *a,
                     const HutPath *b,
                     double limit_mm,
                     HutWeb *gap)
{
  const HutRect bounds_a = hut_path_bounds (a), bounds_b = hut_path_bounds (b);
  g_autofree Piece *pieces_a = NULL, *pieces_b = NULL;

  g_return_val_if_fail (gap != NULL, FALSE);

  if (hut_path_get_count (a) == 0 || hut_path_get_count (b) == 0
      || rects_distance_mm (&bounds_a, &bounds_b) >= limit_mm)
    return FALSE;
  pieces_a = pieces_new (a);
  pieces_b = pieces_new (b);
  return find_gap (pieces_a, hut_path_get_count (a), pieces_b, hut_path_get_count (b), limit_mm,
                   gap);
}

gboolean
hut_border_find_segment_gap (const HutSegment *segment,
                             const HutPath *path,
                             double limit_mm,
                             HutWeb *gap)
{
  const Piece piece = piece_of (*segment);
  g_autofree Piece *pieces = NULL;

  g_return_val_if_fail (gap != NULL, FALSE);

  pieces = pieces_new (path);
  return find_gap (&piece, 1, pieces, hut_path_get_count (path), limit_mm, gap);
}

/* src/sheets/hut-no-fit.c: where one shape may not lie beside another one.
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The union of the pieces is never formed: a shift is forbidden when it is inside one piece. That
 * needs no boolean operation that rounding could tear, and places where something fits exactly,
 * which are a line or a point, are kept. Walls are where pieces end: each edge less what other
 * pieces hide. */
#define G_LOG_DOMAIN "hut-sheets"
#include "config.h"
#include "sheets/hut-no-fit.h"
#include <math.h>

void
hut_no_fit_free (HutNoFit *self)
{
  if (self == NULL)
    return;
  hut_convex_set_free (self->pieces);
  g_array_unref (self->boxes);
  g_array_unref (self->sides);
  g_clear_pointer (&self->walls, g_array_unref);
  g_free (self);
}

/* Index of the lowest point, of those the leftmost. */
static guint
find_lowest (const HutPoint *points,
             guint count)
{
  guint lowest = 0;

  for (guint i = 1; i < count; i++)
    if (points[i].v < points[lowest].v
        || (points[i].v == points[lowest].v && points[i].u < points[lowest].u))
      lowest = i;
  return lowest;
}

/* Adds the sum of two convex polygons: their edges, joined in the order of their directions. */
static void
append_sum (HutConvexSet *set,
            const HutPoint *a,
            guint a_count,
            const HutPoint *b,
            guint b_count)
{
  g_autofree HutPoint *sum = g_new (HutPoint, a_count + b_count);
  const guint a0 = find_lowest (a, a_count), b0 = find_lowest (b, b_count);
  guint i = 0, k = 0, count = 0;

  while (i < a_count || k < b_count)
    {
      const HutPoint pa = a[(a0 + i) % a_count], pb = b[(b0 + k) % b_count];
      const HutPoint ea = hut_point_minus (a[(a0 + i + 1) % a_count], pa);
      const HutPoint eb = hut_point_minus (b[(b0 + k + 1) % b_count], pb);
      const double turn_mm2 = hut_point_cross (ea, eb);

      sum[count++] = (HutPoint) { pa.u + pb.u, pa.v + pb.v };
      if (k == b_count || (i < a_count && turn_mm2 > 0.0))
        i++;
      else if (i == a_count || turn_mm2 < 0.0)
        k++;
      else
        {
          i++;
          k++;
        }
    }
  hut_convex_set_append (set, sum, count);
}

static HutRect
points_box (const HutPoint *points,
            guint count)
{
  HutRect box = { points[0].u, points[0].v, points[0].u, points[0].v };

  for (guint i = 1; i < count; i++)
    {
      box.u0 = MIN (box.u0, points[i].u);
      box.v0 = MIN (box.v0, points[i].v);
      box.u1 = MAX (box.u1, points[i].u);
      box.v1 = MAX (box.v1, points[i].v);
    }
  return box;
}

static gboolean
box_holds (HutRect box,
           HutPoint p)
{
  return p.u > box.u0 + HUT_NO_FIT_SLACK_MM && p.u < box.u1 - HUT_NO_FIT_SLACK_MM
         && p.v > box.v0 + HUT_NO_FIT_SLACK_MM && p.v < box.v1 - HUT_NO_FIT_SLACK_MM;
}

/* The sides of a piece; @count: (out) */
static const HutHalfPlane *
get_sides (const HutNoFit *self,
           guint piece,
           guint *count)
{
  const guint *ends = (const guint *) (const void *) self->pieces->ends->data;
  const guint start = piece > 0 ? ends[piece - 1] : 0;

  *count = ends[piece] - start;
  return &g_array_index (self->sides, HutHalfPlane, start);
}

static double
depth_mm (const HutHalfPlane *side,
          HutPoint p)
{
  return side->u * p.u + side->v * p.v - side->least_mm;
}

gboolean
hut_no_fit_forbids (const HutNoFit *self,
                    HutPoint p)
{
  if (!box_holds (self->bounds, p))
    return FALSE;
  for (guint i = 0; i < self->boxes->len; i++)
    {
      const HutHalfPlane *sides;
      guint count, at = 0;

      if (!box_holds (g_array_index (self->boxes, HutRect, i), p))
        continue;
      sides = get_sides (self, i, &count);
      while (at < count && depth_mm (&sides[at], p) > HUT_NO_FIT_SLACK_MM)
        at++;
      if (at == count)
        return TRUE;
    }
  return FALSE;
}

/* The least depth over the sides; 0 when it is not over @least_mm. @side: (out) the least one */
static double
piece_depth_mm (const HutHalfPlane *sides,
                guint count,
                HutPoint p,
                double least_mm,
                guint *side)
{
  double depth = G_MAXDOUBLE;

  for (guint i = 0; i < count; i++)
    {
      const double here_mm = depth_mm (&sides[i], p);

      if (here_mm <= least_mm)
        return 0.0;
      if (here_mm < depth)
        {
          depth = here_mm;
          *side = i;
        }
    }
  return depth;
}

double
hut_no_fit_depth_mm (const HutNoFit *self,
                     HutPoint p,
                     HutPoint *out)
{
  double deepest_mm = HUT_NO_FIT_SLACK_MM;
  gboolean found = FALSE;

  if (!box_holds (self->bounds, p))
    return 0.0;
  for (guint i = 0; i < self->boxes->len; i++)
    {
      const HutHalfPlane *sides;
      guint count, side = 0;
      double here_mm;

      if (!box_holds (g_array_index (self->boxes, HutRect, i), p))
        continue;
      sides = get_sides (self, i, &count);
      here_mm = piece_depth_mm (sides, count, p, deepest_mm, &side);
      if (here_mm <= deepest_mm)
        continue;
      deepest_mm = here_mm;
      found = TRUE;
      if (out != NULL)
        *out = (HutPoint) { -sides[side].u, -sides[side].v };
    }
  return found ? deepest_mm : 0.0;
}

/* The share [from, to] of the wall that lies inside the piece; FALSE when none does. */
static gboolean
find_hidden (const HutWall *wall,
             const HutHalfPlane *sides,
             guint count,
             double *from_ratio,
             double *to_ratio)
{
  *from_ratio = 0.0;
  *to_ratio = 1.0;
  for (guint i = 0; i < count; i++)
    {
      const double start_mm = depth_mm (&sides[i], wall->a) - HUT_NO_FIT_SLACK_MM;
      const double end_mm = depth_mm (&sides[i], wall->b) - HUT_NO_FIT_SLACK_MM;

      if (start_mm <= 0.0 && end_mm <= 0.0)
        return FALSE;
      if (start_mm < 0.0)
        *from_ratio = MAX (*from_ratio, start_mm / (start_mm - end_mm));
      else if (end_mm < 0.0)
        *to_ratio = MIN (*to_ratio, start_mm / (start_mm - end_mm));
      if (*from_ratio >= *to_ratio)
        return FALSE;
    }
  return TRUE;
}

static HutPoint
wall_point (const HutWall *wall,
            double ratio)
{
  return (HutPoint) { wall->a.u + (wall->b.u - wall->a.u) * ratio,
                      wall->a.v + (wall->b.v - wall->a.v) * ratio };
}

/* Takes what the piece hides from each of the walls. */
static void
hide_walls (GArray *walls,
            const HutHalfPlane *sides,
            guint count,
            HutRect box)
{
  const guint wall_count = walls->len;
  guint kept = 0;

  for (guint i = 0; i < wall_count; i++)
    {
      const HutWall wall = g_array_index (walls, HutWall, i);
      double from_ratio, to_ratio;

      if (MAX (wall.a.u, wall.b.u) <= box.u0 || MIN (wall.a.u, wall.b.u) >= box.u1
          || MAX (wall.a.v, wall.b.v) <= box.v0 || MIN (wall.a.v, wall.b.v) >= box.v1
          || !find_hidden (&wall, sides, count, &from_ratio, &to_ratio))
        {
          g_array_index (walls, HutWall, kept++) = wall;
          continue;
        }
      /* The second rest goes to the end, behind what is still to be looked at. */
      if (to_ratio < 1.0 && from_ratio > 0.0)
        {
          const HutWall rest = { wall_point (&wall, to_ratio), wall.b };

          g_array_append_val (walls, rest);
        }
      if (from_ratio > 0.0)
        g_array_index (walls, HutWall, kept++)
            = (HutWall) { wall.a, wall_point (&wall, from_ratio) };
      else if (to_ratio < 1.0)
        g_array_index (walls, HutWall, kept++)
            = (HutWall) { wall_point (&wall, to_ratio), wall.b };
    }
  if (kept < wall_count)
    g_array_remove_range (walls, kept, wall_count - kept);
}

static void
append_walls (HutNoFit *self,
              guint piece)
{
  g_autoptr(GArray) walls = g_array_new (FALSE, FALSE, sizeof (HutWall));
  guint count;
  const HutPoint *points = hut_convex_set_get (self->pieces, piece, &count);

  for (guint i = 0; i < count; i++)
    {
      const HutWall wall = { points[i], points[(i + 1) % count] };

      g_array_append_val (walls, wall);
    }
  for (guint other = 0; other < self->boxes->len && walls->len > 0; other++)
    {
      guint side_count;
      const HutHalfPlane *sides = get_sides (self, other, &side_count);

      if (other != piece)
        hide_walls (walls, sides, side_count, g_array_index (self->boxes, HutRect, other));
    }
  g_array_append_vals (self->walls, walls->data, walls->len);
}

static void
append_sides (HutNoFit *self,
              const HutPoint *points,
              guint count)
{
  for (guint i = 0; i < count; i++)
    {
      const HutPoint a = points[i], b = points[(i + 1) % count];
      const double length_mm = hut_point_distance_mm (a, b);
      /* A side without length hides nothing and bounds nothing. */
      HutHalfPlane side = { 0.0, 0.0, -G_MAXDOUBLE };

      if (length_mm > 0.0)
        {
          side.u = (a.v - b.v) / length_mm;
          side.v = (b.u - a.u) / length_mm;
          side.least_mm = side.u * a.u + side.v * a.v;
        }
      g_array_append_val (self->sides, side);
    }
}

HutNoFit *
hut_no_fit_new (const HutConvexSet *resting,
                const HutConvexSet *moving)
{
  g_return_val_if_fail (resting != NULL && moving != NULL, NULL);

  HutNoFit *self = g_new0 (HutNoFit, 1);
  g_autoptr(GArray) negative = g_array_copy (moving->points);

  self->pieces = hut_convex_set_new ();
  self->boxes = g_array_new (FALSE, FALSE, sizeof (HutRect));
  self->sides = g_array_new (FALSE, FALSE, sizeof (HutHalfPlane));
  for (guint i = 0; i < negative->len; i++)
    {
      HutPoint *p = &g_array_index (negative, HutPoint, i);

      *p = (HutPoint) { -p->u, -p->v };
    }
  for (guint i = 0; i < hut_convex_set_get_count (resting); i++)
    for (guint k = 0, start = 0; k < hut_convex_set_get_count (moving); k++)
      {
        const guint end = g_array_index (moving->ends, guint, k);
        guint count, sum_count;
        const HutPoint *piece = hut_convex_set_get (resting, i, &count);

        append_sum (self->pieces, piece, count, &g_array_index (negative, HutPoint, start),
                    end - start);
        piece = hut_convex_set_get (self->pieces, self->boxes->len, &sum_count);

        const HutRect box = points_box (piece, sum_count);

        g_array_append_val (self->boxes, box);
        append_sides (self, piece, sum_count);
        start = end;
      }
  self->bounds = hut_convex_set_bounds (self->pieces);
  return self;
}

const GArray *
hut_no_fit_get_walls (HutNoFit *self)
{
  g_return_val_if_fail (self != NULL, NULL);

  if (self->walls == NULL)
    {
      self->walls = g_array_new (FALSE, FALSE, sizeof (HutWall));
      for (guint i = 0; i < self->boxes->len; i++)
        append_walls (self, i);
    }
  return self->walls;
}

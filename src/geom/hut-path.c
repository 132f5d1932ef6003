/* src/geom/hut-path.c: a closed path of lines and arcs.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-geom"
#include "config.h"
#include "geom/hut-path.h"
#include <math.h>

/* tan (22.5 degrees): a quarter of a circle, ratio. */
#define QUARTER_BULGE 0.41421356237309503
#define HALF_BULGE 1.0
/* A point this near to the line of its neighbours is on it, mm. Own choice: rounding of doubles on
 * a 10 m sheet, far under the grid. */
#define ON_LINE_MM 1e-9
/* A coordinate this near to the grid is meant to be on it, mm: the rounding of one sum. */
#define GRID_DUST_MM 1e-9
/* A turn this near to a right angle is one, rad: the rounding of degrees to radians. */
#define RIGHT_ANGLE_DUST_RAD 1e-9

struct _HutPath
{
  GArray *vertices; /* of HutVertex */
};

HutPath *
hut_path_new (void)
{
  HutPath *self = g_new0 (HutPath, 1);

  self->vertices = g_array_new (FALSE, FALSE, sizeof (HutVertex));
  return self;
}

HutPath *
hut_path_copy (const HutPath *self)
{
  HutPath *copy = hut_path_new ();

  if (self->vertices->len > 0)
    g_array_append_vals (copy->vertices, self->vertices->data, self->vertices->len);
  return copy;
}

void
hut_path_free (HutPath *self)
{
  if (self == NULL)
    return;
  g_array_unref (self->vertices);
  g_free (self);
}

/* 0.1 + 0.2 is not the double 0.3: sums of grid numbers get back onto the grid, all else stays. */
static double
clean_mm (double value_mm)
{
  const double snapped_mm = hut_snap_mm (value_mm);

  return fabs (snapped_mm - value_mm) <= GRID_DUST_MM ? snapped_mm : value_mm;
}

static void
append_clean (HutPath *self,
              double u_mm,
              double v_mm,
              double bulge)
{
  hut_path_append (self, (HutPoint) { clean_mm (u_mm), clean_mm (v_mm) }, bulge, HUT_EDGE_PLAIN);
}

static void
append_rounded_rect (HutPath *self,
                     HutRect rect,
                     double radius_mm)
{
  const gboolean flat_u = rect.u1 - rect.u0 - 2 * radius_mm >= HUT_SHORTEST_MM;
  const gboolean flat_v = rect.v1 - rect.v0 - 2 * radius_mm >= HUT_SHORTEST_MM;
  const double r = radius_mm;

  /* Where a side has no flat part, the arcs meet in its middle. */
  if (flat_u)
    append_clean (self, rect.u0 + r, rect.v0, 0);
  append_clean (self, rect.u1 - r, rect.v0, QUARTER_BULGE);
  if (flat_v)
    append_clean (self, rect.u1, rect.v0 + r, 0);
  append_clean (self, rect.u1, rect.v1 - r, QUARTER_BULGE);
  if (flat_u)
    append_clean (self, rect.u1 - r, rect.v1, 0);
  append_clean (self, rect.u0 + r, rect.v1, QUARTER_BULGE);
  if (flat_v)
    append_clean (self, rect.u0, rect.v1 - r, 0);
  append_clean (self, rect.u0, rect.v0 + r, QUARTER_BULGE);
}

HutPath *
hut_path_new_rect (HutRect rect,
                   double radius_mm)
{
  HutPath *self = hut_path_new ();
  const double width_mm = rect.u1 - rect.u0;
  const double height_mm = rect.v1 - rect.v0;
  const double cut_mm = fmin (radius_mm, fmin (width_mm, height_mm) / 2);

  if (!(width_mm >= HUT_SHORTEST_MM && height_mm >= HUT_SHORTEST_MM)
      || !isfinite (width_mm) || !isfinite (height_mm) || isnan (radius_mm))
    return self;
  if (cut_mm >= HUT_SHORTEST_MM)
    {
      append_rounded_rect (self, rect, cut_mm);
      return self;
    }
  append_clean (self, rect.u0, rect.v0, 0);
  append_clean (self, rect.u1, rect.v0, 0);
  append_clean (self, rect.u1, rect.v1, 0);
  append_clean (self, rect.u0, rect.v1, 0);
  return self;
}

HutPath *
hut_path_new_circle (HutPoint centre,
                     double radius_mm)
{
  HutPath *self = hut_path_new ();

  if (!(radius_mm >= HUT_SHORTEST_MM) || !isfinite (radius_mm) || !isfinite (centre.u)
      || !isfinite (centre.v))
    return self;
  append_clean (self, centre.u + radius_mm, centre.v, HALF_BULGE);
  append_clean (self, centre.u - radius_mm, centre.v, HALF_BULGE);
  return self;
}

void
hut_path_append (HutPath *self,
                 HutPoint p,
                 double bulge,
                 HutEdgeKind kind)
{
  const HutVertex vertex = { .p = p, .bulge = bulge, .kind = kind };

  g_return_if_fail (self != NULL);
  g_array_append_val (self->vertices, vertex);
}

guint
hut_path_get_count (const HutPath *self)
{
  return self->vertices->len;
}

const HutVertex *
hut_path_get (const HutPath *self,
              guint index)
{
  g_return_val_if_fail (index < self->vertices->len, NULL);
  return &g_array_index (self->vertices, HutVertex, index);
}

HutSegment
hut_path_get_segment (const HutPath *self,
                      guint index)
{
  g_return_val_if_fail (index < self->vertices->len, (HutSegment) { 0 });

  const HutVertex *vertices = (const HutVertex *) (const void *) self->vertices->data;
  const HutVertex *from = &vertices[index];
  const HutVertex *to = &vertices[index + 1 < self->vertices->len ? index + 1 : 0];

  return (HutSegment) { from->p, to->p, from->bulge, from->kind };
}

void
hut_path_reverse (HutPath *self)
{
  const guint count = self->vertices->len;
  g_autoptr(GArray) turned = g_array_sized_new (FALSE, FALSE, sizeof (HutVertex), count);

  for (guint i = 0; i < count; i++)
    {
      /* The segment that ended here starts here, and bends the other way. */
      const HutSegment segment = hut_path_get_segment (self, (2 * count - 2 - i) % count);
      const HutVertex vertex = { segment.end, 0.0 - segment.bulge, segment.kind };

      g_array_append_val (turned, vertex);
    }
  g_array_unref (self->vertices);
  self->vertices = g_steal_pointer (&turned);
}

void
hut_path_snap (HutPath *self)
{
  for (guint i = 0; i < self->vertices->len; i++)
    {
      HutPoint *p = &g_array_index (self->vertices, HutVertex, i).p;

      *p = (HutPoint) { hut_snap_mm (p->u), hut_snap_mm (p->v) };
    }
}

double
hut_path_area_mm2 (const HutPath *self)
{
  const guint count = self->vertices->len;
  double twice_mm2 = 0;
  double caps_mm2 = 0;

  if (count == 0)
    return 0;

  /* Measured from the first corner, so that a far origin costs no digits. */
  const HutPoint origin = hut_path_get (self, 0)->p;

  for (guint i = 0; i < count; i++)
    {
      const HutSegment segment = hut_path_get_segment (self, i);

      twice_mm2 += (segment.start.u - origin.u) * (segment.end.v - origin.v)
                   - (segment.start.v - origin.v) * (segment.end.u - origin.u);
      if (segment.bulge != 0)
        caps_mm2 += hut_segment_cap_mm2 (&segment);
    }
  return twice_mm2 / 2 + caps_mm2;
}

double
hut_path_length_mm (const HutPath *self)
{
  double length_mm = 0;

  for (guint i = 0; i < self->vertices->len; i++)
    {
      const HutSegment segment = hut_path_get_segment (self, i);

      length_mm += hut_segment_length_mm (&segment);
    }
  return length_mm;
}

HutRect
hut_path_bounds (const HutPath *self)
{
  HutRect bounds = { INFINITY, INFINITY, -INFINITY, -INFINITY };

  if (self->vertices->len == 0)
    return (HutRect) { 0, 0, -1, -1 };
  for (guint i = 0; i < self->vertices->len; i++)
    {
      const HutSegment segment = hut_path_get_segment (self, i);
      const HutRect own = hut_segment_bounds (&segment);

      bounds.u0 = fmin (bounds.u0, own.u0);
      bounds.v0 = fmin (bounds.v0, own.v0);
      bounds.u1 = fmax (bounds.u1, own.u1);
      bounds.v1 = fmax (bounds.v1, own.v1);
    }
  return bounds;
}

/* TRUE only when the point is farther from the segment than a border: told from the box of its
 * chord, which an arc leaves by no more than its height, |bulge| chord / 2. FALSE proves nothing.
 */
static gboolean
is_far_from (const HutSegment *segment,
             HutPoint p)
{
  const HutPoint a = segment->start, b = segment->end;
  const double chord_most_mm = fabs (b.u - a.u) + fabs (b.v - a.v);
  const double room_mm = 2 * HUT_BORDER_MM + fabs (segment->bulge) * chord_most_mm;

  return p.u < MIN (a.u, b.u) - room_mm || p.u > MAX (a.u, b.u) + room_mm
         || p.v < MIN (a.v, b.v) - room_mm || p.v > MAX (a.v, b.v) + room_mm;
}

HutPathSide
hut_path_locate (const HutPath *self,
                 HutPoint p)
{
  gboolean inside = FALSE;

  for (guint i = 0; i < self->vertices->len; i++)
    {
      const HutSegment segment = hut_path_get_segment (self, i);

      if (!is_far_from (&segment, p)
          && hut_point_distance_mm (hut_segment_nearest (&segment, p), p) <= HUT_BORDER_MM)
        return HUT_PATH_SIDE_BORDER;
      inside ^= hut_segment_is_crossed (&segment, p);
    }
  return inside ? HUT_PATH_SIDE_INSIDE : HUT_PATH_SIDE_OUTSIDE;
}

gboolean
hut_path_contains (const HutPath *self,
                   HutPoint p)
{
  return hut_path_locate (self, p) != HUT_PATH_SIDE_OUTSIDE;
}

gboolean
hut_path_is_finite (const HutPath *self)
{
  for (guint i = 0; i < self->vertices->len; i++)
    {
      const HutVertex *vertex = hut_path_get (self, i);

      if (!isfinite (vertex->p.u) || !isfinite (vertex->p.v) || !isfinite (vertex->bulge))
        return FALSE;
    }
  return TRUE;
}

/* TRUE when the path stays the same without the corner @self between @before and @after. */
typedef gboolean (*IsNeedless) (const HutVertex *before,
                                const HutVertex *self,
                                const HutVertex *after);

static gboolean
is_doubled (const HutVertex *before,
            const HutVertex *self,
            const HutVertex *after)
{
  return hut_point_distance_mm (self->p, after->p) < HUT_SHORTEST_MM;
}

static gboolean
is_on_line (const HutVertex *before,
            const HutVertex *self,
            const HutVertex *after)
{
  if (before->bulge != 0 || self->bulge != 0 || before->kind != self->kind)
    return FALSE;

  const HutSegment straight = { before->p, after->p, 0, self->kind };
  const HutPoint nearest = hut_segment_nearest (&straight, self->p);

  /* A spike, where the path turns back on itself, is nearest to an end: it stays. */
  return hut_point_distance_mm (nearest, self->p) <= ON_LINE_MM;
}

static void
drop_needless (HutPath *self,
               IsNeedless is_needless)
{
  const guint count = self->vertices->len;
  g_autoptr(GArray) kept = g_array_sized_new (FALSE, FALSE, sizeof (HutVertex), count);
  const HutVertex *before = count > 0 ? hut_path_get (self, count - 1) : NULL;

  for (guint i = 0; i < count; i++)
    {
      const HutVertex *vertex = hut_path_get (self, i);

      if (is_needless (before, vertex, hut_path_get (self, i + 1 < count ? i + 1 : 0)))
        continue;
      g_array_append_val (kept, *vertex);
      before = vertex;
    }
  g_array_unref (self->vertices);
  self->vertices = g_steal_pointer (&kept);
}

void
hut_path_simplify (HutPath *self)
{
  /* Doubled points first: beside one, a true corner would seem to lie on a line. */
  drop_needless (self, is_doubled);
  drop_needless (self, is_on_line);
}

HutPoint
hut_placement_apply (const HutPlacement *self,
                     HutPoint p)
{
  const double quarters = round (self->turn_rad / G_PI_2);
  const double u = self->mirrored ? -p.u : p.u;
  double cosine = cos (self->turn_rad);
  double sine = sin (self->turn_rad);

  if (fabs (self->turn_rad - quarters * G_PI_2) < RIGHT_ANGLE_DUST_RAD)
    {
      const int quarter = (int) fmod (fmod (quarters, 4) + 4, 4);

      cosine = quarter == 0 ? 1 : quarter == 2 ? -1 : 0;
      sine = quarter == 1 ? 1 : quarter == 3 ? -1 : 0;
    }
  return (HutPoint) {
    u * cosine - p.v * sine + self->shift.u + 0.0,
    u * sine + p.v * cosine + self->shift.v + 0.0,
  };
}

HutPath *
hut_path_dup_placed (const HutPath *self,
                     const HutPlacement *placement)
{
  HutPath *placed = hut_path_copy (self);

  for (guint i = 0; i < placed->vertices->len; i++)
    {
      HutVertex *vertex = &g_array_index (placed->vertices, HutVertex, i);

      vertex->p = hut_placement_apply (placement, vertex->p);
      if (placement->mirrored)
        vertex->bulge = 0.0 - vertex->bulge;
    }
  if (placement->mirrored)
    hut_path_reverse (placed);
  return placed;
}

/* src/geom/hut-convex.c: a region as convex pieces, with some room around it.
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Strategy: arcs become tangents where the material bulges and chords where it is hollow, so that
 * nothing is lost; GEOS grows the polygon by the room, and closes it (grows and shrinks it); steps
 * of corners are squared off; the rest is cut into triangles, which are joined while the result
 * stays convex (S. Hertel and K. Mehlhorn, "Fast triangulation of simple polygons", 1983).
 * Invariant: the pieces cover the region. It is checked; where it fails, the grown box is taken.
 * Not promised: the fewest pieces. */
#define G_LOG_DOMAIN "hut-geom"
#include "config.h"
#include "geom/hut-convex.h"
#include <geos_c.h>
#include <math.h>

/* Turn of an arc that one tangent or chord stands for, rad. Own choice: 22.5 degrees; a tangent
 * polygon is then at most 2 % of the radius outside. */
#define ARC_STEP_RAD (G_PI / 8.0)
/* Longest mitre of the buffer, in distances (ratio). Own choice: sharper corners than 23 degrees
 * are cut off, still outside of what must be covered. */
#define MITRE_LIMIT 5.0
#define QUADRANT_STEPS 8 /* count: GEOS asks for it; only round joins would use it */
/* Points nearer to a line between their neighbours than this are dropped, mm. Own choice: far over
 * the rounding of the engine, far under the grid. */
#define FLAT_MM 1e-9
/* The pieces may miss so much of the region, mm2: rounding along its border. */
#define MISSED_MM2 1e-6
#define RING_POINTS 3
#define TRIANGLE_POINTS 3
#define BOX_POINTS 4

HutConvexSet *
hut_convex_set_new (void)
{
  HutConvexSet *self = g_new0 (HutConvexSet, 1);

  self->points = g_array_new (FALSE, FALSE, sizeof (HutPoint));
  self->ends = g_array_new (FALSE, FALSE, sizeof (guint));
  return self;
}

void
hut_convex_set_free (HutConvexSet *self)
{
  if (self == NULL)
    return;
  g_array_unref (self->points);
  g_array_unref (self->ends);
  g_free (self);
}

void
hut_convex_set_append (HutConvexSet *self,
                       const HutPoint *points,
                       guint count)
{
  g_return_if_fail (self != NULL && points != NULL && count >= RING_POINTS);

  g_array_append_vals (self->points, points, count);
  g_array_append_val (self->ends, self->points->len);
}

guint
hut_convex_set_get_count (const HutConvexSet *self)
{
  g_return_val_if_fail (self != NULL, 0);
  return self->ends->len;
}

const HutPoint *
hut_convex_set_get (const HutConvexSet *self,
                    guint piece,
                    guint *count)
{
  g_return_val_if_fail (self != NULL && piece < self->ends->len && count != NULL, NULL);

  const guint start = piece > 0 ? g_array_index (self->ends, guint, piece - 1) : 0;

  *count = g_array_index (self->ends, guint, piece) - start;
  return &g_array_index (self->points, HutPoint, start);
}

HutRect
hut_convex_set_bounds (const HutConvexSet *self)
{
  g_return_val_if_fail (self != NULL, ((HutRect) { 0, 0, -1, -1 }));

  HutRect bounds = { 0, 0, -1, -1 };

  for (guint i = 0; i < self->points->len; i++)
    {
      const HutPoint p = g_array_index (self->points, HutPoint, i);

      if (i == 0)
        bounds = (HutRect) { p.u, p.v, p.u, p.v };
      bounds.u0 = MIN (bounds.u0, p.u);
      bounds.v0 = MIN (bounds.v0, p.v);
      bounds.u1 = MAX (bounds.u1, p.u);
      bounds.v1 = MAX (bounds.v1, p.v);
    }
  return bounds;
}

HutConvexSet *
hut_convex_set_dup_placed (const HutConvexSet *self,
                           const HutPlacement *placement)
{
  g_return_val_if_fail (self != NULL && placement != NULL && !placement->mirrored, NULL);

  HutConvexSet *copy = hut_convex_set_new ();

  for (guint i = 0; i < self->points->len; i++)
    {
      const HutPoint p
        = hut_placement_apply (placement, g_array_index (self->points, HutPoint, i));

      g_array_append_val (copy->points, p);
    }
  g_array_append_vals (copy->ends, self->ends->data, self->ends->len);
  return copy;
}

/* ---- rings ----------------------------------------------------------------------------------- */

static void
append_point (GArray *ring,
              HutPoint p)
{
  g_array_append_val (ring, p);
}

/* The points of an arc but its end: outside of it where the material bulges, else on it. */
static void
append_arc (GArray *ring,
            const HutSegment *arc,
            HutPoint centre,
            double radius_mm)
{
  const double turn_rad = hut_segment_turn_rad (arc);
  const guint count = (guint) MAX (ceil (fabs (turn_rad) / ARC_STEP_RAD), 1.0);
  const double step_rad = turn_rad / count;
  const double start_rad = atan2 (arc->start.v - centre.v, arc->start.u - centre.u);
  const gboolean bulges = turn_rad > 0.0;
  const double reach_mm = bulges ? radius_mm / cos (step_rad / 2.0) : radius_mm;

  append_point (ring, arc->start);
  for (guint i = bulges ? 0 : 1; i < count; i++)
    {
      const double at_rad = start_rad + step_rad * (bulges ? i + 0.5 : (double) i);

      append_point (ring, (HutPoint) { centre.u + reach_mm * cos (at_rad),
                                       centre.v + reach_mm * sin (at_rad) });
    }
}

static GArray *
ring_from_path (const HutPath *path)
{
  GArray *ring = g_array_new (FALSE, FALSE, sizeof (HutPoint));

  for (guint i = 0; i < hut_path_get_count (path); i++)
    {
      const HutSegment segment = hut_path_get_segment (path, i);
      HutPoint centre;
      double radius_mm;

      if (segment.bulge != 0.0 && hut_segment_get_circle (&segment, &centre, &radius_mm))
        append_arc (ring, &segment, centre, radius_mm);
      else
        append_point (ring, segment.start);
    }
  return ring;
}

static HutPoint
ring_get (const GArray *ring,
          guint index)
{
  return g_array_index (ring, HutPoint, index % ring->len);
}

/* Twice the area left of a -> b -> c, mm2: > 0 for a left turn. */
static double
turn_mm2 (HutPoint a,
          HutPoint b,
          HutPoint c)
{
  return hut_point_cross (hut_point_minus (b, a), hut_point_minus (c, b));
}

static void
drop_flat_points (GArray *ring)
{
  for (guint i = 0; i < ring->len && ring->len > RING_POINTS;)
    {
      const HutPoint a = ring_get (ring, i + ring->len - 1), b = ring_get (ring, i),
                     c = ring_get (ring, i + 1);
      const double chord_mm = hut_point_distance_mm (a, c);

      if (hut_point_distance_mm (a, b) < FLAT_MM || fabs (turn_mm2 (a, b, c)) <= FLAT_MM * chord_mm)
        g_array_remove_index (ring, i);
      else
        i++;
    }
}

/* Where the line from @p through @a, going on, meets that from @q through @b, going on; both no
 * farther than @limit_mm. */
static gboolean
meet_ahead (HutPoint p,
            HutPoint a,
            HutPoint q,
            HutPoint b,
            double limit_mm,
            HutPoint *meet)
{
  const HutPoint along = hut_point_unit (hut_point_minus (a, p));
  const HutPoint back = hut_point_unit (hut_point_minus (b, q));
  const double sine = hut_point_cross (along, back);

  if (!(fabs (sine) > FLAT_MM))
    return FALSE;

  const HutPoint gap = hut_point_minus (b, a);
  const double ahead_mm = hut_point_cross (gap, back) / sine;
  const double ahead_of_b_mm = hut_point_cross (gap, along) / sine;

  if (ahead_mm < 0.0 || ahead_mm > limit_mm || ahead_of_b_mm < 0.0 || ahead_of_b_mm > limit_mm)
    return FALSE;
  *meet = hut_point_along (a, along, ahead_mm);
  return TRUE;
}

/* Material is left of a ring. A hollow corner between two bulging ones is a step: it is squared. */
static void
square_steps (GArray *ring,
              double limit_mm)
{
  guint since_change = 0;

  for (guint i = 0; since_change < ring->len && ring->len > RING_POINTS + 2; i++, since_change++)
    {
      const guint n = ring->len;
      const HutPoint p = ring_get (ring, i), a = ring_get (ring, i + 1), v = ring_get (ring, i + 2),
                     b = ring_get (ring, i + 3), q = ring_get (ring, i + 4);
      HutPoint meet;

      if (turn_mm2 (a, v, b) >= 0.0 || turn_mm2 (p, a, v) <= 0.0 || turn_mm2 (v, b, q) <= 0.0
          || !meet_ahead (p, a, q, b, limit_mm, &meet))
        continue;
      g_array_index (ring, HutPoint, (i + 1) % n) = meet;
      for (guint k = 0; k < 2; k++)
        {
          const guint at = (i + 2) % n;

          /* Both go from the same place, unless the ring's end lies between them. */
          g_array_remove_index (ring, at < ring->len ? at : 0);
        }
      since_change = 0;
    }
  drop_flat_points (ring);
}

/* ---- the engine ------------------------------------------------------------------------------ */

typedef struct
{
  GEOSContextHandle_t context;
  GPtrArray *owned; /* GEOSGeometry */
} Engine;

static void
engine_start (Engine *self)
{
  self->context = GEOS_init_r ();
  self->owned = g_ptr_array_new ();
}

static void
engine_stop (Engine *self)
{
  for (guint i = 0; i < self->owned->len; i++)
    GEOSGeom_destroy_r (self->context, g_ptr_array_index (self->owned, i));
  g_ptr_array_unref (self->owned);
  GEOS_finish_r (self->context);
}

G_DEFINE_AUTO_CLEANUP_CLEAR_FUNC (Engine, engine_stop)

/* @geometry: (transfer full) (nullable). Returns it, kept until the engine stops. */
static GEOSGeometry *
engine_keep (Engine *self,
             GEOSGeometry *geometry)
{
  if (geometry != NULL)
    g_ptr_array_add (self->owned, geometry);
  return geometry;
}

/* (transfer full) (nullable) */
static GEOSGeometry *
dup_linear_ring (const Engine *self,
                 const GArray *ring)
{
  g_autoptr(GArray) closed = g_array_copy ((GArray *) ring);
  GEOSCoordSequence *sequence;

  if (ring->len < RING_POINTS)
    return NULL;
  append_point (closed, ring_get (ring, 0));
  sequence = GEOSCoordSeq_copyFromBuffer_r (
    self->context, (const double *) (const void *) closed->data, closed->len, FALSE, FALSE);
  return sequence != NULL ? GEOSGeom_createLinearRing_r (self->context, sequence) : NULL;
}

/* @rings: GArray of HutPoint, the outer one first. (nullable): kept by the engine */
static GEOSGeometry *
polygon_from_rings (Engine *self,
                    const GPtrArray *rings)
{
  g_autofree GEOSGeometry **holes = g_new0 (GEOSGeometry *, rings->len + 1);
  GEOSGeometry *shell = dup_linear_ring (self, g_ptr_array_index (rings, 0));
  guint count = 0;

  if (shell == NULL)
    return NULL;
  for (guint i = 1; i < rings->len; i++)
    {
      holes[count] = dup_linear_ring (self, g_ptr_array_index (rings, i));
      count += holes[count] != NULL ? 1 : 0;
    }
  return engine_keep (self, GEOSGeom_createPolygon_r (self->context, shell, holes, count));
}

static GEOSGeometry *
buffer (Engine *self,
        const GEOSGeometry *geometry,
        double distance_mm)
{
  if (geometry == NULL || distance_mm == 0.0)
    return (GEOSGeometry *) geometry; /* kept by the engine already */
  return engine_keep (self, GEOSBufferWithStyle_r (self->context, geometry, distance_mm,
                                                   QUADRANT_STEPS, GEOSBUF_CAP_ROUND,
                                                   GEOSBUF_JOIN_MITRE, MITRE_LIMIT));
}

/* (transfer full) (nullable): the ring's points, material left of it */
static GArray *
dup_ring_points (const Engine *self,
                 const GEOSGeometry *linear,
                 gboolean outer)
{
  const GEOSCoordSequence *sequence
      = linear != NULL ? GEOSGeom_getCoordSeq_r (self->context, linear) : NULL;
  g_autoptr(GArray) ring = g_array_new (FALSE, FALSE, sizeof (HutPoint));
  unsigned int count = 0;
  double area2_mm2 = 0.0;

  if (sequence == NULL || !GEOSCoordSeq_getSize_r (self->context, sequence, &count))
    return NULL;
  for (unsigned int i = 0; i + 1 < count; i++)
    {
      HutPoint p;

      if (!GEOSCoordSeq_getXY_r (self->context, sequence, i, &p.u, &p.v))
        return NULL;
      append_point (ring, p);
    }
  for (guint i = 0; i < ring->len; i++)
    area2_mm2 += hut_point_cross (ring_get (ring, i), ring_get (ring, i + 1));
  if ((area2_mm2 > 0.0) != outer)
    for (guint i = 0; i < ring->len / 2; i++)
      {
        const HutPoint swap = ring_get (ring, i);

        g_array_index (ring, HutPoint, i) = ring_get (ring, ring->len - 1 - i);
        g_array_index (ring, HutPoint, ring->len - 1 - i) = swap;
      }
  drop_flat_points (ring);
  return g_steal_pointer (&ring);
}

/* The polygon with its steps squared off; as it was where that tears it. */
static GEOSGeometry *
simplify (Engine *self,
          GEOSGeometry *polygon,
          double close_mm)
{
  g_autoptr(GPtrArray) rings = g_ptr_array_new_with_free_func ((GDestroyNotify) g_array_unref);
  const int hole_count = GEOSGetNumInteriorRings_r (self->context, polygon);
  GArray *outer = dup_ring_points (self, GEOSGetExteriorRing_r (self->context, polygon), TRUE);
  GEOSGeometry *simple;

  if (outer == NULL)
    return polygon;
  g_ptr_array_add (rings, outer);
  for (int i = 0; i < hole_count; i++)
    {
      GArray *hole = dup_ring_points (self, GEOSGetInteriorRingN_r (self->context, polygon, i),
                                      FALSE);

      if (hole != NULL)
        g_ptr_array_add (rings, hole);
    }
  for (guint i = 0; close_mm > 0.0 && i < rings->len; i++)
    square_steps (g_ptr_array_index (rings, i), close_mm);
  simple = polygon_from_rings (self, rings);
  return simple != NULL && GEOSisValid_r (self->context, simple) == 1 ? simple : polygon;
}

/* ---- pieces ---------------------------------------------------------------------------------- */

/* Whether @a and @b share an edge and are convex together; then @a takes @b in. Both are GArray of
 * HutPoint, counter-clockwise. */
static gboolean
join (GArray *a,
      const GArray *b)
{
  for (guint i = 0; i < a->len; i++)
    for (guint k = 0; k < b->len; k++)
      {
        const HutPoint start = ring_get (a, i), end = ring_get (a, i + 1);
        const HutPoint b_start = ring_get (b, k), b_end = ring_get (b, k + 1);

        if (start.u != b_end.u || start.v != b_end.v || end.u != b_start.u || end.v != b_start.v)
          continue;
        if (turn_mm2 (ring_get (a, i + a->len - 1), start, ring_get (b, k + 2)) < 0.0
            || turn_mm2 (ring_get (b, k + b->len - 1), end, ring_get (a, i + 2)) < 0.0)
          return FALSE;
        for (guint m = 2; m < b->len; m++)
          {
            const HutPoint p = ring_get (b, k + m);

            g_array_insert_val (a, i + m - 1, p);
          }
        return TRUE;
      }
  return FALSE;
}

static void
join_pieces (GPtrArray *pieces)
{
  for (guint i = 0; i < pieces->len; i++)
    for (guint k = i + 1; k < pieces->len;)
      if (join (g_ptr_array_index (pieces, i), g_ptr_array_index (pieces, k)))
        {
          g_ptr_array_remove_index (pieces, k);
          k = i + 1;
        }
      else
        k++;
}

/* Adds the triangles of the polygon to @pieces; FALSE when the engine can not. */
static gboolean
append_triangles (Engine *self,
                  const GEOSGeometry *polygon,
                  GPtrArray *pieces)
{
  const GEOSGeometry *mesh
      = engine_keep (self, GEOSConstrainedDelaunayTriangulation_r (self->context, polygon));
  const int count = mesh != NULL ? GEOSGetNumGeometries_r (self->context, mesh) : 0;

  for (int i = 0; i < count; i++)
    {
      const GEOSGeometry *triangle = GEOSGetGeometryN_r (self->context, mesh, i);
      GArray *ring = dup_ring_points (self, GEOSGetExteriorRing_r (self->context, triangle), TRUE);

      if (ring == NULL || ring->len != TRIANGLE_POINTS)
        {
          g_clear_pointer (&ring, g_array_unref);
          return FALSE;
        }
      g_ptr_array_add (pieces, ring);
    }
  return count > 0;
}

/* TRUE when the polygon covers the region, but for rounding. */
static gboolean
covers (Engine *self,
        const GEOSGeometry *polygon,
        const GEOSGeometry *region)
{
  const GEOSGeometry *missed
      = engine_keep (self, GEOSDifference_r (self->context, region, polygon));
  double area_mm2;

  return missed != NULL && GEOSArea_r (self->context, missed, &area_mm2)
         && area_mm2 <= MISSED_MM2;
}

/* Grown, and filled where it is narrower than twice @close_mm. Shrinking with mitres takes a little
 * more than growing gave where hollow corners are round, so what has only grown is put back; last,
 * so that no buffer sees the rounding of a union. */
static GEOSGeometry *
grow_and_close (Engine *self,
                GEOSGeometry *polygon,
                double grow_mm,
                double close_mm)
{
  GEOSGeometry *grown = buffer (self, polygon, grow_mm);
  const GEOSGeometry *closed;

  if (close_mm == 0.0)
    return grown;
  closed = buffer (self, buffer (self, polygon, grow_mm + close_mm), -close_mm);
  if (grown == NULL || closed == NULL)
    return NULL;
  return engine_keep (self, GEOSUnion_r (self->context, grown, closed));
}

/* (transfer full): pieces, NULL when the engine can not */
static GPtrArray *
dup_pieces (Engine *self,
            const HutRegion *region,
            double grow_mm,
            double close_mm)
{
  g_autoptr(GPtrArray) rings = g_ptr_array_new_with_free_func ((GDestroyNotify) g_array_unref);
  g_autoptr(GPtrArray) pieces = g_ptr_array_new_with_free_func ((GDestroyNotify) g_array_unref);
  GEOSGeometry *polygon, *room;

  g_ptr_array_add (rings, ring_from_path (region->outer));
  for (guint i = 0; i < region->holes->len; i++)
    g_ptr_array_add (rings, ring_from_path (g_ptr_array_index (region->holes, i)));
  polygon = polygon_from_rings (self, rings);
  room = grow_and_close (self, polygon, grow_mm, close_mm);
  if (room == NULL || GEOSGeomTypeId_r (self->context, room) != GEOS_POLYGON
      || GEOSisEmpty_r (self->context, room) != 0)
    return NULL;
  room = simplify (self, room, close_mm);
  if (!covers (self, room, polygon) || !append_triangles (self, room, pieces))
    return NULL;
  join_pieces (pieces);
  return g_steal_pointer (&pieces);
}

HutConvexSet *
hut_convex_set_new_around (const HutRegion *region,
                           double grow_mm,
                           double close_mm)
{
  g_return_val_if_fail (region != NULL && grow_mm >= 0.0 && close_mm >= 0.0, NULL);

  g_auto(Engine) engine;
  HutConvexSet *self = hut_convex_set_new ();

  engine_start (&engine);

  g_autoptr(GPtrArray) pieces = dup_pieces (&engine, region, grow_mm, close_mm);

  for (guint i = 0; pieces != NULL && i < pieces->len; i++)
    {
      const GArray *piece = g_ptr_array_index (pieces, i);

      hut_convex_set_append (self, (const HutPoint *) (const void *) piece->data, piece->len);
    }
  if (pieces == NULL)
    {
      const HutRect box = hut_region_bounds (region);
      const double u0 = box.u0 - grow_mm, u1 = box.u1 + grow_mm;
      const double v0 = box.v0 - grow_mm, v1 = box.v1 + grow_mm;

      hut_convex_set_append (
        self, (const HutPoint[]) { { u0, v0 }, { u1, v0 }, { u1, v1 }, { u0, v1 } }, BOX_POINTS);
    }
  return self;
}

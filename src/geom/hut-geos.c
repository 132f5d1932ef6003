/* src/geom/hut-geos.c: the bridge to GEOS.
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A region is flattened, given to GEOS as a polygon, and the answer is turned back. What can not be
 * a polygon at all is refused here, with words of our own; all else that GEOS says is handed on. */
#define G_LOG_DOMAIN "hut-geom"
#include "config.h"
#include "geom/hut-geos.h"
#include "geom/hut-flatten.h"
#include <geos_c.h>
#include <math.h>

/* A ring needs so many points, the first one not repeated (count). */
#define RING_POINTS 3
/* Longest mitre of the buffer, in distances (ratio). Own choice: sharper corners than 1.2 degrees
 * do not occur in outlines that are cut. */
#define MITRE_LIMIT 100.0
#define QUADRANT_STEPS 8 /* count: GEOS asks for it; only round joins would use it */

/* One call's engine: its context, and the last thing it complained of. */
typedef struct
{
  GEOSContextHandle_t context;
  char *complaint; /* (nullable) (owned) */
} Engine;

static void
keep_complaint (const char *message,
                void *user_data)
{
  Engine *self = user_data;

  g_free (self->complaint);
  self->complaint = g_strdup (message);
}

static void
engine_start (Engine *self)
{
  self->complaint = NULL;
  self->context = GEOS_init_r ();
  GEOSContext_setErrorMessageHandler_r (self->context, keep_complaint, self);
}

static void
engine_stop (Engine *self)
{
  GEOS_finish_r (self->context);
  g_free (self->complaint);
}

G_DEFINE_AUTO_CLEANUP_CLEAR_FUNC (Engine, engine_stop)

static void
set_engine_error (const Engine *self,
                  GError **error)
{
  g_set_error (error, HUT_GEOM_ERROR, HUT_GEOM_ERROR_ENGINE, "the geometry engine refused: %s",
               self->complaint != NULL ? self->complaint : "no reason given");
}

/* (transfer full): a closed ring, NULL with @error when the path can not be one */
static GEOSGeometry *
ring_from_path (const Engine *self,
                const HutPath *path,
                GError **error)
{
  g_autoptr(GArray) points = hut_path_dup_flat (path, error);

  if (points == NULL)
    return NULL;
  if (points->len < RING_POINTS)
    {
      g_set_error (error, HUT_GEOM_ERROR, HUT_GEOM_ERROR_INVALID,
                   "an outline has %u corners; at least 3, or arcs, are needed", points->len);
      return NULL;
    }

  const HutPoint first = g_array_index (points, HutPoint, 0); /* appending may move the array */

  g_array_append_val (points, first);

  GEOSCoordSequence *sequence = GEOSCoordSeq_copyFromBuffer_r (
    self->context, (const double *) (const void *) points->data, points->len, FALSE, FALSE);
  GEOSGeometry *ring = NULL;

  if (sequence != NULL)
    ring = GEOSGeom_createLinearRing_r (self->context, sequence);
  if (ring == NULL)
    set_engine_error (self, error);
  return ring;
}

static void
destroy_rings (const Engine *self,
               GEOSGeometry **rings,
               guint count)
{
  for (guint i = 0; i < count; i++)
    GEOSGeom_destroy_r (self->context, rings[i]);
}

/* (transfer full): NULL with @error */
static GEOSGeometry *
polygon_from_paths (const Engine *self,
                    const HutPath *outer,
                    const GPtrArray *holes,
                    GError **error)
{
  const guint hole_count = holes != NULL ? holes->len : 0;
  g_autofree GEOSGeometry **rings = g_new0 (GEOSGeometry *, hole_count + 1);
  GEOSGeometry *shell = ring_from_path (self, outer, error);
  GEOSGeometry *polygon;

  if (shell == NULL)
    return NULL;
  for (guint i = 0; i < hole_count; i++)
    {
      rings[i] = ring_from_path (self, g_ptr_array_index (holes, i), error);
      if (rings[i] == NULL)
        {
          destroy_rings (self, rings, i);
          GEOSGeom_destroy_r (self->context, shell);
          return NULL;
        }
    }
  /* Owns shell and rings from here on, also when it fails. */
  polygon = GEOSGeom_createPolygon_r (self->context, shell, rings, hole_count);
  if (polygon == NULL)
    set_engine_error (self, error);
  return polygon;
}

static GEOSGeometry *
polygon_from_region (const Engine *self,
                     const HutRegion *region,
                     GError **error)
{
  return polygon_from_paths (self, region->outer, region->holes, error);
}

/* @error: HUT_GEOM_ERROR_INVALID with reason and place */
static gboolean
check_polygon (const Engine *self,
               const GEOSGeometry *polygon,
               GError **error)
{
  char *reason = NULL;
  GEOSGeometry *place = NULL;
  const char answer = GEOSisValidDetail_r (self->context, polygon, 0, &reason, &place);

  if (answer == 0)
    {
      HutPoint at = { NAN, NAN };
      g_autofree char *at_text = NULL;

      if (place != NULL)
        {
          GEOSGeomGetX_r (self->context, place, &at.u);
          GEOSGeomGetY_r (self->context, place, &at.v);
        }
      at_text = hut_point_dup_text (at);
      g_set_error (error, HUT_GEOM_ERROR, HUT_GEOM_ERROR_INVALID, "%s at %s",
                   reason != NULL ? reason : "not a valid outline", at_text);
    }
  else if (answer != 1)
    set_engine_error (self, error);
  if (place != NULL)
    GEOSGeom_destroy_r (self->context, place);
  if (reason != NULL)
    GEOSFree_r (self->context, reason);
  return answer == 1;
}

gboolean
hut_geos_is_valid (const HutRegion *self,
                   GError **error)
{
  g_auto(Engine) engine;

  engine_start (&engine);

  GEOSGeometry *polygon = polygon_from_region (&engine, self, error);

  if (polygon == NULL)
    return FALSE;

  const gboolean valid = check_polygon (&engine, polygon, error);

  GEOSGeom_destroy_r (engine.context, polygon);
  return valid;
}

gboolean
hut_geos_path_is_simple (const HutPath *self)
{
  g_auto(Engine) engine;

  engine_start (&engine);

  /* No error: the answer to "is it simple" is all that is asked; a path that is no ring is not. */
  GEOSGeometry *polygon = polygon_from_paths (&engine, self, NULL, NULL);

  if (polygon == NULL)
    return FALSE;

  const gboolean simple = GEOSisValid_r (engine.context, polygon) == 1;

  GEOSGeom_destroy_r (engine.context, polygon);
  return simple;
}

/* (transfer full): NULL with @error */
static GEOSGeometry *
operate (const Engine *self,
         const HutRegion *a,
         const HutRegion *b,
         HutGeosOp op,
         GError **error)
{
  GEOSGeometry *first = polygon_from_region (self, a, error);
  GEOSGeometry *second = first != NULL ? polygon_from_region (self, b, error) : NULL;
  GEOSGeometry *result = NULL;

  /* What an operation makes of a torn polygon is no area of anything. */
  if (second != NULL && check_polygon (self, first, error) && check_polygon (self, second, error))
    {
      switch (op)
        {
        case HUT_GEOS_UNION:
          result = GEOSUnion_r (self->context, first, second);
          break;
        case HUT_GEOS_INTERSECTION:
          result = GEOSIntersection_r (self->context, first, second);
          break;
        case HUT_GEOS_DIFFERENCE:
          result = GEOSDifference_r (self->context, first, second);
          break;
        default:
          break;
        }
      if (result == NULL)
        set_engine_error (self, error);
    }
  if (first != NULL)
    GEOSGeom_destroy_r (self->context, first);
  if (second != NULL)
    GEOSGeom_destroy_r (self->context, second);
  return result;
}

/* Area of @geometry, which is taken, mm2; -1 with @error. */
static double
take_area_mm2 (const Engine *self,
               GEOSGeometry *geometry,
               GError **error)
{
  double area_mm2 = -1;

  if (geometry == NULL)
    return -1;
  if (!GEOSArea_r (self->context, geometry, &area_mm2) || !isfinite (area_mm2))
    {
      set_engine_error (self, error);
      area_mm2 = -1;
    }
  GEOSGeom_destroy_r (self->context, geometry);
  return area_mm2;
}

double
hut_geos_op_area_mm2 (const HutRegion *a,
                      const HutRegion *b,
                      HutGeosOp op,
                      GError **error)
{
  g_auto(Engine) engine;

  engine_start (&engine);
  return take_area_mm2 (&engine, operate (&engine, a, b, op, error), error);
}

/* (transfer full): NULL when GEOS fails */
static HutPath *
path_from_ring (const Engine *self,
                const GEOSGeometry *ring)
{
  const GEOSCoordSequence *sequence = GEOSGeom_getCoordSeq_r (self->context, ring);
  unsigned int count = 0;
  g_autoptr(HutPath) path = hut_path_new ();

  if (sequence == NULL || !GEOSCoordSeq_getSize_r (self->context, sequence, &count))
    return NULL;
  for (unsigned int i = 0; i + 1 < count; i++) /* the last point repeats the first */
    {
      HutPoint p;

      if (!GEOSCoordSeq_getXY_r (self->context, sequence, i, &p.u, &p.v))
        return NULL;
      hut_path_append (path, p, 0, HUT_EDGE_PLAIN);
    }
  return g_steal_pointer (&path);
}

/* (transfer full): NULL when GEOS fails */
static HutRegion *
region_from_polygon (const Engine *self,
                     const GEOSGeometry *polygon)
{
  const GEOSGeometry *shell = GEOSGetExteriorRing_r (self->context, polygon);
  const int hole_count = GEOSGetNumInteriorRings_r (self->context, polygon);
  HutPath *outer = shell != NULL ? path_from_ring (self, shell) : NULL;
  g_autoptr(HutRegion) region = outer != NULL ? hut_region_new (outer) : NULL;

  if (region == NULL || hole_count < 0)
    return NULL;
  for (int i = 0; i < hole_count; i++)
    {
      const GEOSGeometry *ring = GEOSGetInteriorRingN_r (self->context, polygon, i);
      HutPath *hole = ring != NULL ? path_from_ring (self, ring) : NULL;

      if (hole == NULL)
        return NULL;
      hut_region_take_hole (region, hole);
    }
  return g_steal_pointer (&region);
}

static void
free_region (gpointer region)
{
  hut_region_free (region);
}

GPtrArray *
hut_geos_op (const HutRegion *a,
             const HutRegion *b,
             HutGeosOp op,
             GError **error)
{
  g_auto(Engine) engine;
  g_autoptr(GPtrArray) pieces = g_ptr_array_new_with_free_func (free_region);

  engine_start (&engine);

  GEOSGeometry *result = operate (&engine, a, b, op, error);

  if (result == NULL)
    return NULL;

  const int count = GEOSGetNumGeometries_r (engine.context, result);
  gboolean whole = count >= 0;

  for (int i = 0; i < count && whole; i++)
    {
      const GEOSGeometry *piece = GEOSGetGeometryN_r (engine.context, result, i);
      HutRegion *region;

      /* Where two regions only touch, GEOS also returns points and lines: no area, no piece. */
      if (GEOSGeomTypeId_r (engine.context, piece) != GEOS_POLYGON
          || GEOSisEmpty_r (engine.context, piece) == 1)
        continue;
      region = region_from_polygon (&engine, piece);
      whole = region != NULL;
      if (whole)
        g_ptr_array_add (pieces, region);
    }
  GEOSGeom_destroy_r (engine.context, result);
  if (!whole)
    {
      set_engine_error (&engine, error);
      return NULL;
    }
  return g_steal_pointer (&pieces);
}

double
hut_geos_buffer_area_mm2 (const HutRegion *self,
                          double distance_mm,
                          GError **error)
{
  g_auto(Engine) engine;

  engine_start (&engine);

  GEOSGeometry *polygon = polygon_from_region (&engine, self, error);

  if (polygon == NULL)
    return -1;

  GEOSGeometry *grown = GEOSBufferWithStyle_r (engine.context, polygon, distance_mm, QUADRANT_STEPS,
                                               GEOSBUF_CAP_FLAT, GEOSBUF_JOIN_MITRE, MITRE_LIMIT);

  if (grown == NULL)
    set_engine_error (&engine, error);
  GEOSGeom_destroy_r (engine.context, polygon);
  return take_area_mm2 (&engine, grown, error);
}

double
hut_geos_distance_mm (const HutRegion *a,
                      const HutRegion *b,
                      GError **error)
{
  g_auto(Engine) engine;
  double distance_mm = -1;

  engine_start (&engine);

  GEOSGeometry *first = polygon_from_region (&engine, a, error);
  GEOSGeometry *second = first != NULL ? polygon_from_region (&engine, b, error) : NULL;

  if (second != NULL && (!GEOSDistance_r (engine.context, first, second, &distance_mm)
                         || !isfinite (distance_mm)))
    {
      set_engine_error (&engine, error);
      distance_mm = -1;
    }
  if (first != NULL)
    GEOSGeom_destroy_r (engine.context, first);
  if (second != NULL)
    GEOSGeom_destroy_r (engine.context, second);
  return distance_mm;
}

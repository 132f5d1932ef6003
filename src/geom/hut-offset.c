/* src/geom/hut-offset.c: exact parallel outlines.
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Each edge is moved to its right (the side without material) by the distance of its kind: a line
 * stays a line, an arc keeps its centre. Then each corner is worked out from its two moved edges:
 *
 *   two lines             where they meet; along one line with two distances: a jog across
 *   smooth, with an arc   on the common normal: nearly parallel curves are never intersected
 *   else                  the meeting point of line and circle that is nearest to the old corner
 *
 * Invariants: edge i of the result is edge i of the outline (jogs come between), runs in the same
 * direction, and is HUT_SHORTEST_MM long or more, so no outline is turned inside out; the result is
 * as valid as the outline was. Not promised: that a result exists. What would be lost is an error,
 * never left out. */
#define G_LOG_DOMAIN "hut-geom"
#include "config.h"
#include "geom/hut-offset.h"
#include "geom/hut-geos.h"
#include <math.h>

/* An arc's join with less turn than this (sine) is smooth. The grid bends a smooth join of a 20 mm
 * arc by this much; taking it for smooth moves an edge by distance * 5e-9. */
#define SMOOTH_SINE 1e-4
/* A join with less turn than this (sine) jogs when the two distances differ: a mitre would run ten
 * times the difference along the edge. Own choice. */
#define JOG_SINE 0.1
/* A smaller change of an arc's end is rounding, rad: its bulge then stays the same double. */
#define ARC_DUST_RAD 1e-11

/* An edge on its way; normals are unit vectors to the right of the direction. */
typedef struct
{
  HutSegment segment;
  double shift_mm;
  HutPoint start_normal, end_normal;
  HutPoint centre;        /* of an arc */
  double moved_radius_mm; /* of an arc; 0 for a line */
  HutPoint start, end;    /* moved */
} Edge;

static gboolean
is_arc (const Edge *edge)
{
  return edge->segment.bulge != 0;
}

G_GNUC_PRINTF (3, 4)
static gboolean
lost (HutPoint place,
      GError **error,
      const char *format,
      ...)
{
  g_autofree char *at = hut_point_dup_text (place);
  g_autofree char *what = NULL;
  va_list arguments;

  va_start (arguments, format);
  what = g_strdup_vprintf (format, arguments);
  va_end (arguments);
  g_set_error (error, HUT_GEOM_ERROR, HUT_GEOM_ERROR_VANISHED, "%s at %s", what, at);
  return FALSE;
}

HutOffset
hut_offset_for_fit (double kerf_mm,
                    double allowance_mm)
{
  return (HutOffset) { .plain_mm = kerf_mm / 2, .mating_mm = kerf_mm / 2 - allowance_mm / 4 };
}

static gboolean
edge_init (Edge *self,
           const HutSegment *segment,
           const HutOffset *offset,
           GError **error)
{
  const double turn = segment->bulge > 0 ? 1 : -1;
  double radius_mm;

  *self = (Edge) { .segment = *segment };
  self->shift_mm = segment->kind == HUT_EDGE_MATING ? offset->mating_mm : offset->plain_mm;
  if (!is_arc (self))
    {
      const HutPoint direction = hut_point_unit (hut_point_minus (segment->end, segment->start));

      self->start_normal = (HutPoint) { direction.v, -direction.u };
      self->end_normal = self->start_normal;
      return TRUE;
    }
  /* hut_geos_is_valid () has refused arcs without a circle. */
  if (!hut_segment_get_circle (segment, &self->centre, &radius_mm))
    return FALSE;
  self->moved_radius_mm = radius_mm + turn * self->shift_mm;
  if (self->moved_radius_mm < HUT_SHORTEST_MM)
    return lost (segment->start, error, "the arc is too narrow for the tool");

  const HutPoint to_start = hut_point_unit (hut_point_minus (segment->start, self->centre));
  const HutPoint to_end = hut_point_unit (hut_point_minus (segment->end, self->centre));

  self->start_normal = (HutPoint) { turn * to_start.u, turn * to_start.v };
  self->end_normal = (HutPoint) { turn * to_end.u, turn * to_end.v };
  return TRUE;
}

/* (element-type Edge) (transfer full): NULL on error */
static GArray *
edges_from_path (const HutPath *path,
                 const HutOffset *offset,
                 GError **error)
{
  const guint count = hut_path_get_count (path);
  g_autoptr(GArray) edges = g_array_sized_new (FALSE, FALSE, sizeof (Edge), count);

  for (guint i = 0; i < count; i++)
    {
      const HutSegment segment = hut_path_get_segment (path, i);
      Edge edge;

      /* A doubled point is no edge: nothing is lost with it. */
      if (hut_point_distance_mm (segment.start, segment.end) < HUT_SHORTEST_MM)
        continue;
      if (!edge_init (&edge, &segment, offset, error))
        return NULL;
      g_array_append_val (edges, edge);
    }
  return g_steal_pointer (&edges);
}

/* Where two moved lines meet, from the old corner @p. */
static HutPoint
meet_lines (HutPoint p,
            const Edge *in,
            const Edge *out)
{
  const HutPoint a = in->end_normal;
  const HutPoint b = out->start_normal;

  if (in->shift_mm == out->shift_mm)
    {
      /* Along the sum of the normals; needs no intersection, so it holds for straight joins too. */
      const double scale_mm = in->shift_mm / (1 + hut_point_dot (a, b));

      return (HutPoint) { p.u + (a.u + b.u) * scale_mm, p.v + (a.v + b.v) * scale_mm };
    }
  return (HutPoint) {
    p.u + (in->shift_mm * b.v - out->shift_mm * a.v) / hut_point_cross (a, b),
    p.v + (out->shift_mm * a.u - in->shift_mm * b.u) / hut_point_cross (a, b),
  };
}

static HutPoint
nearer (HutPoint p,
        HutPoint a,
        HutPoint b)
{
  return hut_point_distance_mm (p, a) <= hut_point_distance_mm (p, b) ? a : b;
}

static gboolean
meet_line_and_circle (HutPoint p,
                      HutPoint normal,
                      double shift_mm,
                      const Edge *arc,
                      HutPoint *at)
{
  const HutPoint direction = { -normal.v, normal.u };
  const HutPoint to_centre = hut_point_minus (arc->centre, hut_point_along (p, normal, shift_mm));
  const double away_mm = hut_point_dot (to_centre, normal);
  const double radius_mm = arc->moved_radius_mm;
  const double half2 = (radius_mm - away_mm) * (radius_mm + away_mm);
  const HutPoint foot = hut_point_along (arc->centre, normal, -away_mm);

  if (half2 < 0)
    return FALSE;
  *at = nearer (p, hut_point_along (foot, direction, sqrt (half2)),
                hut_point_along (foot, direction, -sqrt (half2)));
  return TRUE;
}

static gboolean
meet_circles (HutPoint p,
              const Edge *in,
              const Edge *out,
              HutPoint *at)
{
  const HutPoint apart = hut_point_minus (out->centre, in->centre);
  const double apart_mm = hypot (apart.u, apart.v);
  const double r_mm = in->moved_radius_mm;
  const double s_mm = out->moved_radius_mm;

  if (apart_mm < HUT_SHORTEST_MM)
    return FALSE;

  const double foot_mm = apart_mm / 2 + (r_mm - s_mm) * (r_mm + s_mm) / (2 * apart_mm);
  const double half2 = (r_mm - foot_mm) * (r_mm + foot_mm);
  const HutPoint direction = hut_point_unit (apart);
  const HutPoint across = { -direction.v, direction.u };
  const HutPoint foot = hut_point_along (in->centre, direction, foot_mm);

  if (half2 < 0)
    return FALSE;
  *at = nearer (p, hut_point_along (foot, across, sqrt (half2)),
                hut_point_along (foot, across, -sqrt (half2)));
  return TRUE;
}

/* Sets the end of @in and the start of @out. */
static gboolean
move_corner (Edge *in,
             Edge *out,
             GError **error)
{
  const HutPoint p = out->segment.start;
  const double sine = fabs (hut_point_cross (in->end_normal, out->start_normal));
  const gboolean onwards = hut_point_dot (in->end_normal, out->start_normal) > 0;
  const gboolean lines = !is_arc (in) && !is_arc (out);
  const gboolean same = in->shift_mm == out->shift_mm;
  gboolean meets = TRUE;

  if (onwards && !same && sine < JOG_SINE)
    {
      in->end = hut_point_along (p, in->end_normal, in->shift_mm);
      out->start = hut_point_along (p, out->start_normal, out->shift_mm);
      return TRUE;
    }
  if (lines)
    in->end = meet_lines (p, in, out);
  else if (onwards && sine < SMOOTH_SINE)
    in->end = hut_point_along (p, is_arc (in) ? in->end_normal : out->start_normal, in->shift_mm);
  else if (is_arc (in) && is_arc (out))
    meets = meet_circles (p, in, out, &in->end);
  else if (is_arc (in))
    meets = meet_line_and_circle (p, out->start_normal, out->shift_mm, in, &in->end);
  else
    meets = meet_line_and_circle (p, in->end_normal, in->shift_mm, out, &in->end);
  out->start = in->end;
  return meets || lost (p, error, "no corner is left, its edges have parted");
}

/* Signed angle from @a to @b, seen from @centre, rad; 0 for rounding. */
static double
angle_rad (HutPoint centre,
           HutPoint from,
           HutPoint to)
{
  const HutPoint a = hut_point_minus (from, centre);
  const HutPoint b = hut_point_minus (to, centre);
  const double angle = atan2 (hut_point_cross (a, b), hut_point_dot (a, b));

  return fabs (angle) < ARC_DUST_RAD ? 0 : angle;
}

/* Appends the moved edge, and the jog to @next if there is one. */
static gboolean
append_edge (HutPath *path,
             const Edge *self,
             const Edge *next,
             GError **error)
{
  const HutPoint direction = { -self->start_normal.v, self->start_normal.u };
  const HutPoint chord = hut_point_minus (self->end, self->start);
  double bulge = self->segment.bulge;

  if (is_arc (self))
    {
      const double change_rad = angle_rad (self->centre, self->segment.end, self->end)
                                - angle_rad (self->centre, self->segment.start, self->start);
      const double turn_rad = hut_segment_turn_rad (&self->segment) + change_rad;

      if (turn_rad * bulge <= 0 || hypot (chord.u, chord.v) < HUT_SHORTEST_MM)
        return lost (self->segment.start, error, "the arc is too short for the tool");
      if (change_rad != 0)
        bulge = tan (turn_rad / 4);
    }
  else if (hut_point_dot (chord, direction) < HUT_SHORTEST_MM)
    return lost (self->segment.start, error, "the edge is too short for the tool");

  hut_path_append (path, self->start, bulge, self->segment.kind);
  if (self->end.u != next->start.u || self->end.v != next->start.v)
    hut_path_append (path, self->end, 0, HUT_EDGE_PLAIN);
  return TRUE;
}

/* (transfer full): NULL on error */
static HutPath *
path_dup_offset (const HutPath *self,
                 const HutOffset *offset,
                 GError **error)
{
  g_autoptr(GArray) edges = edges_from_path (self, offset, error);
  g_autoptr(HutPath) moved = hut_path_new ();

  if (edges == NULL)
    return NULL;

  Edge *edge = (Edge *) (void *) edges->data;
  const guint count = edges->len;

  for (guint i = 0; i < count; i++)
    {
      if (!move_corner (&edge[i], &edge[(i + 1) % count], error))
        return NULL;
    }
  for (guint i = 0; i < count; i++)
    {
      if (!append_edge (moved, &edge[i], &edge[(i + 1) % count], error))
        return NULL;
    }
  return g_steal_pointer (&moved);
}

HutRegion *
hut_region_dup_offset (const HutRegion *self,
                       const HutOffset *offset,
                       GError **error)
{
  g_autoptr(HutRegion) moved = NULL;
  g_autoptr(GError) crossing = NULL;
  HutPath *outer;

  g_return_val_if_fail (self != NULL && offset != NULL, NULL);

  if (!isfinite (offset->plain_mm) || !isfinite (offset->mating_mm))
    {
      g_set_error_literal (error, HUT_GEOM_ERROR, HUT_GEOM_ERROR_INVALID,
                           "an offset must be a finite number of mm");
      return NULL;
    }
  if (!hut_geos_is_valid (self, error))
    return NULL;
  outer = path_dup_offset (self->outer, offset, error);
  if (outer == NULL)
    return NULL;
  moved = hut_region_new (outer);
  for (guint i = 0; i < self->holes->len; i++)
    {
      HutPath *hole = path_dup_offset (g_ptr_array_index (self->holes, i), offset, error);

      if (hole == NULL)
        return NULL;
      hut_region_take_hole (moved, hole);
    }
  if (!hut_geos_is_valid (moved, &crossing))
    {
      g_set_error (error, HUT_GEOM_ERROR, HUT_GEOM_ERROR_VANISHED,
                   "a slot or web is too narrow for the tool: %s", crossing->message);
      return NULL;
    }
  return g_steal_pointer (&moved);
}

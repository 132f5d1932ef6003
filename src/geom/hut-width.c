/* src/geom/hut-width.c: the narrowest web of a region.
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A chord that is locally shortest stands upright on the border at both ends, or ends in a corner
 * that both edges lead away from it. So all candidates come from a few pairs:
 *
 *   two lines that face each other     across the middle of where they overlap
 *   line and arc, arc and arc          along the normal through the centres, where that is a least
 *   corner and line, arc or corner     the foot on the other one
 *
 * Material lies left of every edge, so the sides decide whether a chord starts and ends in
 * material; what is left to check is that no border crosses it. Only a corner that points into the
 * material can carry an end: from any other one walking on shortens the chord, or the edges beside
 * it carry it.
 *
 * Pairs are found by a sweep over the bounds, sorted by u; the reach of the sweep is the narrowest
 * web so far. Invariant: @web is written once, with the narrowest. Not promised: which of several
 * equally narrow ones. */
#define G_LOG_DOMAIN "hut-geom"
#include "config.h"
#include "geom/hut-width.h"
#include <math.h>

/* Directions nearer than this (sine) count as the same, and as upright. The grid turns an edge of
 * 1.4 mm by as much. */
#define SAME_DIRECTION 1e-3
/* Centres nearer than this are one, mm: two arcs of one centre, each rounded to the grid. */
#define SAME_CENTRE_MM (2 * HUT_GRID_MM)
/* A border that meets the chord nearer to its end than this is the border that it ends on, mm. A
 * foot this far beyond an edge is on its end: at a smooth join, rounding must not lose it to both
 * edges. */
#define END_MM 1e-6
/* Less than this (sine) is no turn: rounding of doubles. */
#define TURN_DUST 1e-9

/* Where a chord is tried between parallel edges, share of their overlap: in the middle, and near
 * the ends in case something comes between. Own choice. */
static const double parallel_at_ratio[] = { 0.5, 0.0625, 0.9375 };

/* A segment and the corner it starts from. */
typedef struct
{
  HutSegment segment;
  HutRect box;
  guint id, previous_id; /* in the order of the outlines */
  HutPoint direction;    /* of a line: unit */
  double length_mm;      /* of a line */
  HutPoint centre;       /* of an arc */
  double radius_mm;      /* of an arc; 0 for a line */
  HutPoint before, after; /* at the corner, unit: direction of arriving, of leaving */
  gboolean carries;      /* the corner can carry an end of a web */
} Edge;

typedef struct
{
  const Edge *edges; /* (array length=count) */
  guint count;
  double narrowest_mm; /* so far; at first the limit */
  gboolean found;
  HutWeb web;
} Search;

/* Unit direction of travel at @p, which is on the edge. */
static HutPoint
direction_at (const Edge *self,
              HutPoint p)
{
  if (self->radius_mm == 0)
    return self->direction;

  const HutPoint tangent = hut_point_left (hut_point_unit (hut_point_minus (p, self->centre)));

  return self->segment.bulge > 0 ? tangent : (HutPoint) { -tangent.u, -tangent.v };
}

static gboolean
curves_inwards (const Edge *self)
{
  return self->radius_mm > 0 && self->segment.bulge > 0;
}

/* TRUE when the arc has a point in direction @d (unit) from its centre. */
static gboolean
faces (const Edge *arc,
       HutPoint d)
{
  const HutPoint p = hut_point_along (arc->centre, d, arc->radius_mm);

  return hut_segment_spans (&arc->segment, arc->centre, d)
         || hut_point_distance_mm (p, arc->segment.start) < END_MM
         || hut_point_distance_mm (p, arc->segment.end) < END_MM;
}

/* TRUE when the line has a point @at_mm from its start. */
static gboolean
reaches (const Edge *line,
         double at_mm)
{
  return at_mm > -END_MM && at_mm < line->length_mm + END_MM;
}

/* FALSE for a segment without length. */
static gboolean
edge_init (Edge *self,
           const HutSegment *segment)
{
  const HutPoint chord = hut_point_minus (segment->end, segment->start);

  if (!(hut_point_dot (chord, chord) >= HUT_SHORTEST_MM * HUT_SHORTEST_MM))
    return FALSE;
  self->segment = *segment;
  self->box = hut_segment_bounds (segment);
  self->radius_mm = 0;
  if (segment->bulge == 0 || !hut_segment_get_circle (segment, &self->centre, &self->radius_mm))
    {
      self->length_mm = sqrt (hut_point_dot (chord, chord));
      self->direction = (HutPoint) { chord.u / self->length_mm, chord.v / self->length_mm };
    }
  return TRUE;
}

static void
append_path (GArray *edges,
             const HutPath *path)
{
  const guint first = edges->len;

  for (guint i = 0; i < hut_path_get_count (path); i++)
    {
      const HutSegment segment = hut_path_get_segment (path, i);
      Edge edge;

      if (edge_init (&edge, &segment))
        g_array_append_val (edges, edge);
    }
  for (guint i = first; i < edges->len; i++)
    {
      Edge *edge = &g_array_index (edges, Edge, i);
      const Edge *previous = &g_array_index (edges, Edge, i > first ? i - 1 : edges->len - 1);
      const gboolean inwards = curves_inwards (edge) || curves_inwards (previous);

      edge->id = i;
      edge->previous_id = i > first ? i - 1 : edges->len - 1;
      edge->before = direction_at (previous, edge->segment.start);
      edge->after = direction_at (edge, edge->segment.start);
      /* Points into the material: a right turn. The grid makes tiny right turns at smooth joins; on
       * a round outline they would hold up the chord across, from which both ends want to slide. */
      edge->carries = hut_point_cross (edge->before, edge->after)
                      < (inwards ? -SAME_DIRECTION : -TURN_DUST);
    }
}

static int
compare_left_ends (gconstpointer a,
                   gconstpointer b)
{
  const Edge *first = a;
  const Edge *second = b;

  if (first->box.u0 != second->box.u0)
    return first->box.u0 < second->box.u0 ? -1 : 1;
  return first->id < second->id ? -1 : 1;
}

/* TRUE when @edge meets the chord from @a along @d (unit) for @width_mm, its ends apart. */
static gboolean
crosses (const Edge *edge,
         HutPoint a,
         HutPoint d,
         double width_mm)
{
  if (edge->radius_mm == 0)
    {
      const HutPoint from = hut_point_minus (edge->segment.start, a);
      const double turn = hut_point_cross (d, edge->direction);

      if (fabs (turn) < TURN_DUST)
        return FALSE; /* in line with the chord: if it meets it, so do the edges at its ends */

      const double at_mm = hut_point_cross (from, edge->direction) / turn;
      const double on_edge_mm = hut_point_cross (from, d) / turn;

      return at_mm > END_MM && at_mm < width_mm - END_MM && on_edge_mm >= -END_MM
             && on_edge_mm <= edge->length_mm + END_MM;
    }

  const HutPoint to_centre = hut_point_minus (edge->centre, a);
  const double middle_mm = hut_point_dot (to_centre, d);
  const double off_mm = hut_point_cross (d, to_centre);
  const double half2 = (edge->radius_mm - off_mm) * (edge->radius_mm + off_mm);

  if (half2 < 0)
    return FALSE;
  for (int side = -1; side <= 1; side += 2)
    {
      const double at_mm = middle_mm + side * sqrt (half2);

      const HutPoint to = hut_point_minus (hut_point_along (a, d, at_mm), edge->centre);

      if (at_mm > END_MM && at_mm < width_mm - END_MM
          && hut_segment_spans (&edge->segment, edge->centre, to))
        return TRUE;
    }
  return FALSE;
}

/* Takes the chord from @a to @b if it is the narrowest so far and no border crosses it. */
static void
offer (Search *self,
       HutPoint a,
       HutPoint b)
{
  const HutPoint chord = hut_point_minus (b, a);
  const double width_mm = hypot (chord.u, chord.v);
  const HutRect box = { fmin (a.u, b.u), fmin (a.v, b.v), fmax (a.u, b.u), fmax (a.v, b.v) };

  if (!(width_mm > 0 && width_mm < self->narrowest_mm))
    return;

  const HutPoint d = { chord.u / width_mm, chord.v / width_mm };

  for (guint i = 0; i < self->count && self->edges[i].box.u0 <= box.u1 + END_MM; i++)
    {
      const Edge *edge = &self->edges[i];

      if (edge->box.u1 >= box.u0 - END_MM && edge->box.v0 <= box.v1 + END_MM
          && edge->box.v1 >= box.v0 - END_MM && crosses (edge, a, d, width_mm))
        return;
    }
  self->found = TRUE;
  self->narrowest_mm = width_mm;
  self->web = (HutWeb) { a, b, width_mm };
}

/* TRUE when a chord that leaves the corner along @d (any length) starts in material, and walking
 * along neither edge shortens it. */
static gboolean
corner_holds (const Edge *corner,
              HutPoint d)
{
  const double slack = SAME_DIRECTION * sqrt (hut_point_dot (d, d));

  /* A direction that is upright on both edges of a nearly straight corner may still go outwards. */
  return -hut_point_dot (corner->before, d) <= slack && hut_point_dot (corner->after, d) <= slack
         && hut_point_cross (corner->before, d) - hut_point_cross (d, corner->after) >= -slack;
}

static void
try_corners (Search *self,
             const Edge *a,
             const Edge *b)
{
  const HutPoint d = hut_point_minus (b->segment.start, a->segment.start);

  if (a->carries && b->carries && corner_holds (a, d)
      && corner_holds (b, (HutPoint) { -d.u, -d.v }))
    offer (self, a->segment.start, b->segment.start);
}

/* The corner that @a starts from against the edge @b. */
static void
try_corner_and_edge (Search *self,
                     const Edge *a,
                     const Edge *b)
{
  const HutPoint p = a->segment.start;
  HutPoint foot;

  if (!a->carries || a->previous_id == b->id)
    return;
  if (b->radius_mm == 0)
    {
      const HutPoint from = hut_point_minus (p, b->segment.start);
      const double at_mm = hut_point_dot (from, b->direction);
      const double off_mm = hut_point_cross (b->direction, from);

      if (!(off_mm > 0 && off_mm < self->narrowest_mm && reaches (b, at_mm)))
        return;
      foot = hut_point_along (b->segment.start, b->direction, at_mm);
    }
  else
    {
      const HutPoint from = hut_point_minus (p, b->centre);
      const double away_mm = hypot (from.u, from.v);
      const double gap_mm = b->segment.bulge > 0 ? b->radius_mm - away_mm : away_mm - b->radius_mm;

      if (!(gap_mm > 0 && gap_mm < self->narrowest_mm))
        return;
      /* Seen from its very centre, an arc is no nearer than its ends: those are somebody's
       * corners. */
      if (away_mm == 0 || !faces (b, hut_point_unit (from)))
        return;
      foot = hut_point_along (b->centre, from, b->radius_mm / away_mm);
    }
  if (corner_holds (a, hut_point_minus (foot, p)))
    offer (self, p, foot);
}

/* A chord from the line @a, upright on it. */
static void
offer_across (Search *self,
              const Edge *a,
              double at_mm,
              double off_mm)
{
  const HutPoint p = hut_point_along (a->segment.start, a->direction, at_mm);

  offer (self, p, hut_point_along (p, hut_point_left (a->direction), off_mm));
}

/* Two lines that run against each other: the narrower end of their overlap, its middle if they are
 * parallel. */
static void
try_lines (Search *self,
           const Edge *a,
           const Edge *b)
{
  const double turn = hut_point_cross (a->direction, b->direction);

  if (fabs (turn) > SAME_DIRECTION || a->previous_id == b->id || b->previous_id == a->id)
    return;

  const HutPoint start = hut_point_minus (b->segment.start, a->segment.start);
  const HutPoint end = hut_point_minus (b->segment.end, a->segment.start);
  const double start_mm = hut_point_dot (start, a->direction);
  const double end_mm = hut_point_dot (end, a->direction);
  const double from_mm = fmax (0, end_mm);
  const double to_mm = fmin (a->length_mm, start_mm);
  const double from_off_mm = hut_point_cross (a->direction, end) - (from_mm - end_mm) * turn;
  const double to_off_mm = hut_point_cross (a->direction, start) + (start_mm - to_mm) * turn;

  /* Lines that run the same way do not face each other: their ends lie in the wrong order. */
  if (from_mm > to_mm || !(from_off_mm > 0 && to_off_mm > 0))
    return;
  if (fabs (from_off_mm - to_off_mm) < END_MM)
    {
      for (guint i = 0; i < G_N_ELEMENTS (parallel_at_ratio); i++)
        offer_across (self, a, from_mm + (to_mm - from_mm) * parallel_at_ratio[i], from_off_mm);
    }
  else if (from_off_mm < to_off_mm)
    offer_across (self, a, from_mm, from_off_mm);
  else
    offer_across (self, a, to_mm, to_off_mm);
}

static void
try_line_and_arc (Search *self,
                  const Edge *line,
                  const Edge *arc)
{
  const HutPoint from = hut_point_minus (arc->centre, line->segment.start);
  const double at_mm = hut_point_dot (from, line->direction);
  const double off_mm = hut_point_cross (line->direction, from);
  const HutPoint towards = { line->direction.v, -line->direction.u };

  /* From inside the circle the normal is the longest chord, not the shortest. */
  if (arc->segment.bulge > 0 || off_mm <= arc->radius_mm
      || off_mm - arc->radius_mm >= self->narrowest_mm || !reaches (line, at_mm)
      || !faces (arc, towards))
    return;
  offer (self, hut_point_along (line->segment.start, line->direction, at_mm),
         hut_point_along (arc->centre, towards, arc->radius_mm));
}

static HutPoint
middle_of (const Edge *arc)
{
  const HutPoint a = arc->segment.start, b = arc->segment.end;
  const double sagitta_ratio = arc->segment.bulge / 2; /* of the chord, to its right */

  return (HutPoint) { (a.u + b.u) / 2 + (b.v - a.v) * sagitta_ratio,
                      (a.v + b.v) / 2 - (b.u - a.u) * sagitta_ratio };
}

/* A bulge into the material inside of a round outline: ring and eccentric ring. */
static void
try_ring (Search *self,
          const Edge *outer,
          const Edge *inner)
{
  const HutPoint apart = hut_point_minus (inner->centre, outer->centre);
  const double apart_mm = hypot (apart.u, apart.v);
  HutPoint d;

  if (outer->radius_mm - inner->radius_mm - apart_mm <= 0
      || outer->radius_mm - inner->radius_mm - apart_mm >= self->narrowest_mm)
    return;
  /* Of one centre, it is even: any direction does. Where only ends overlap, those are corners, or
   * smooth joins whose other edge is found. */
  d = apart_mm < SAME_CENTRE_MM
        ? hut_point_unit (hut_point_minus (middle_of (inner), inner->centre))
        : hut_point_unit (apart);
  if (!faces (outer, d) || !faces (inner, d))
    return;
  offer (self, hut_point_along (outer->centre, d, outer->radius_mm),
         hut_point_along (inner->centre, d, inner->radius_mm));
}

static void
try_arcs (Search *self,
          const Edge *a,
          const Edge *b)
{
  if (a->segment.bulge > 0 && b->segment.bulge > 0)
    return; /* two round outlines from inside: along the normal the chord is longest */
  if (a->segment.bulge > 0 || b->segment.bulge > 0)
    {
      try_ring (self, a->segment.bulge > 0 ? a : b, a->segment.bulge > 0 ? b : a);
      return;
    }

  const HutPoint apart = hut_point_minus (b->centre, a->centre);
  const double apart_mm = hypot (apart.u, apart.v);
  const double gap_mm = apart_mm - a->radius_mm - b->radius_mm;
  const HutPoint d = { apart.u / apart_mm, apart.v / apart_mm };

  if (gap_mm > 0 && gap_mm < self->narrowest_mm && faces (a, d)
      && faces (b, (HutPoint) { -d.u, -d.v }))
    offer (self, hut_point_along (a->centre, d, a->radius_mm),
           hut_point_along (b->centre, d, -b->radius_mm));
}

static void
try_pair (Search *self,
          const Edge *a,
          const Edge *b)
{
  if (a->radius_mm == 0 && b->radius_mm == 0)
    try_lines (self, a, b);
  else if (a->radius_mm == 0)
    try_line_and_arc (self, a, b);
  else if (b->radius_mm == 0)
    try_line_and_arc (self, b, a);
  else
    try_arcs (self, a, b);
  try_corner_and_edge (self, a, b);
  try_corner_and_edge (self, b, a);
  try_corners (self, a, b);
}

/* (element-type Edge) (transfer full): of all outlines, sorted by their left ends */
static GArray *
edges_from_region (const HutRegion *region)
{
  guint count = hut_path_get_count (region->outer);
  GArray *edges;

  for (guint i = 0; i < region->holes->len; i++)
    count += hut_path_get_count (g_ptr_array_index (region->holes, i));
  edges = g_array_sized_new (FALSE, FALSE, sizeof (Edge), count);
  append_path (edges, region->outer);
  for (guint i = 0; i < region->holes->len; i++)
    append_path (edges, g_ptr_array_index (region->holes, i));
  g_array_sort (edges, compare_left_ends);
  return edges;
}

gboolean
hut_region_find_web (const HutRegion *self,
                     double limit_mm,
                     HutWeb *web)
{
  g_return_val_if_fail (self != NULL && web != NULL, FALSE);

  g_autoptr(GArray) edges = edges_from_region (self);
  const Edge *edge = (const Edge *) (const void *) edges->data;
  Search search = { .edges = edge, .count = edges->len, .narrowest_mm = limit_mm };

  for (guint i = 0; i < search.count; i++)
    {
      for (guint j = i + 1; j < search.count
                            && edge[j].box.u0 < edge[i].box.u1 + search.narrowest_mm; j++)
        {
          if (edge[j].box.v0 < edge[i].box.v1 + search.narrowest_mm
              && edge[i].box.v0 < edge[j].box.v1 + search.narrowest_mm)
            try_pair (&search, &edge[i], &edge[j]);
        }
    }
  if (search.found)
    *web = search.web;
  return search.found;
}

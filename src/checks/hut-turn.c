/* src/checks/hut-turn.c: a rectangle that turns about the origin, against one that stands still.
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Distance. Two convex polygons that do not overlap are nearest at a corner of one of them, so
 * the distance d(angle) is the least of eight functions: each corner of the turning rectangle to
 * the fixed one, and each corner of the fixed one to the turning one, seen from which it turns
 * backwards. A local minimum of the least of several functions is a local minimum of one of them.
 * The distance of a point to a convex body is smooth outside of it, so inside the range each
 * minimum has slope 0:
 *   - the point faces a side: it is at the top of its circle, in one of the four axis directions;
 *   - the point faces a corner: both corners and the hinge are in one line.
 * Those 16 + 16 + 16 angles and the two ends of the range are all that has to be tried.
 *
 * Collision. Whether the two overlap can change only where a corner of one crosses a side's line
 * of the other: 32 + 32 angles at most. Between two neighbours of these nothing changes, so one
 * look in the middle decides. The fixed rectangle is shrunk by HUT_TURN_TOUCH_MM first: what only
 * touches does not collide, whatever the rounding.
 *
 * Both are pruned by the bounds of what the rectangle sweeps in each sector of the turn. */
#define G_LOG_DOMAIN "hut-checks"
#include "config.h"
#include "checks/hut-turn.h"
#include <math.h>
#include <stdlib.h>

#define CORNERS 4
/* Ends, and 8 crossings per corner of either rectangle. */
#define EVENTS_MAX (2 + 2 * CORNERS * 8)

static const double quarter_rad = G_PI / 2.0;

static void
get_corners (HutRect rect,
             HutPoint corners[CORNERS])
{
  corners[0] = (HutPoint) { rect.u0, rect.v0 };
  corners[1] = (HutPoint) { rect.u1, rect.v0 };
  corners[2] = (HutPoint) { rect.u1, rect.v1 };
  corners[3] = (HutPoint) { rect.u0, rect.v1 };
}

static HutPoint
turned (HutPoint p,
        double cosine,
        double sine)
{
  return (HutPoint) { p.u * cosine - p.v * sine, p.u * sine + p.v * cosine };
}

static void
widen (HutRect *bounds,
       double u,
       double v)
{
  bounds->u0 = fmin (bounds->u0, u);
  bounds->v0 = fmin (bounds->v0, v);
  bounds->u1 = fmax (bounds->u1, u);
  bounds->v1 = fmax (bounds->v1, v);
}

static HutRect
bounds_of (const HutPoint points[CORNERS])
{
  HutRect bounds = { points[0].u, points[0].v, points[0].u, points[0].v };

  for (int i = 1; i < CORNERS; i++)
    widen (&bounds, points[i].u, points[i].v);
  return bounds;
}

/* ---- bounds -------------------------------------------------------------------------------- */

/* Bounds of the arcs of all corners from one angle to another: the rectangle lies in the hull of
 * its corners at each angle. */
static HutRect
sector_bounds (const HutTurn *self,
               double from_rad,
               double to_rad)
{
  HutRect bounds = { INFINITY, INFINITY, -INFINITY, -INFINITY };

  for (int i = 0; i < CORNERS; i++)
    {
      const double radius_mm = hypot (self->corners[i].u, self->corners[i].v);
      const double first = self->corner_rad[i] + from_rad, last = self->corner_rad[i] + to_rad;
      const HutPoint a = turned (self->corners[i], cos (from_rad), sin (from_rad));
      const HutPoint b = turned (self->corners[i], cos (to_rad), sin (to_rad));

      widen (&bounds, a.u, a.v);
      widen (&bounds, b.u, b.v);
      for (double k = ceil (first / quarter_rad); k * quarter_rad <= last; k++)
        widen (&bounds, radius_mm * cos (k * quarter_rad), radius_mm * sin (k * quarter_rad));
    }
  return bounds;
}

void
hut_turn_init (HutTurn *self,
               HutRect rect,
               double end_rad)
{
  self->rect = rect;
  self->end_rad = end_rad > 0.0 ? fmin (end_rad, 2.0 * G_PI) : 0.0;
  get_corners (rect, self->corners);
  for (int i = 0; i < CORNERS; i++)
    self->corner_rad[i] = atan2 (self->corners[i].v, self->corners[i].u);
  for (int i = 0; i < HUT_TURN_SECTORS; i++)
    self->swept[i] = sector_bounds (self, self->end_rad * i / HUT_TURN_SECTORS,
                                    self->end_rad * (i + 1) / HUT_TURN_SECTORS);
}

static double
rects_distance2_mm2 (const HutRect *a,
                     const HutRect *b)
{
  const double u = fmax (0.0, fmax (a->u0 - b->u1, b->u0 - a->u1));
  const double v = fmax (0.0, fmax (a->v0 - b->v1, b->v0 - a->v1));

  return u * u + v * v;
}

double
hut_turn_bound_mm (const HutTurn *self,
                   const HutRect *fixed)
{
  double least_mm2 = INFINITY;

  for (int i = 0; i < HUT_TURN_SECTORS; i++)
    least_mm2 = fmin (least_mm2, rects_distance2_mm2 (&self->swept[i], fixed));
  return sqrt (least_mm2);
}

/* ---- distance ------------------------------------------------------------------------------ */

static double
point_distance2_mm2 (HutPoint p,
                     const HutRect *rect)
{
  const double u = fmax (0.0, fmax (rect->u0 - p.u, p.u - rect->u1));
  const double v = fmax (0.0, fmax (rect->v0 - p.v, p.v - rect->v1));

  return u * u + v * v;
}

/* TRUE when the insides of both overlap: no side of either parts them. */
static gboolean
overlaps (const HutTurn *self,
          const HutRect *fixed,
          double angle_rad)
{
  const double cosine = cos (angle_rad), sine = sin (angle_rad);
  HutPoint points[CORNERS];
  HutRect bounds;

  for (int i = 0; i < CORNERS; i++)
    points[i] = turned (self->corners[i], cosine, sine);
  bounds = bounds_of (points);
  if (bounds.u0 >= fixed->u1 || bounds.u1 <= fixed->u0 || bounds.v0 >= fixed->v1
      || bounds.v1 <= fixed->v0)
    return FALSE;

  get_corners (*fixed, points);
  for (int i = 0; i < CORNERS; i++)
    points[i] = turned (points[i], cosine, -sine);
  bounds = bounds_of (points);
  return bounds.u0 < self->rect.u1 && bounds.u1 > self->rect.u0 && bounds.v0 < self->rect.v1
         && bounds.v1 > self->rect.v0;
}

/* Without the test for an overlap in which no corner of one is inside the other. */
static double
corner_distance2_mm2 (const HutTurn *self,
                      const HutPoint fixed_corners[CORNERS],
                      const HutRect *fixed,
                      double angle_rad)
{
  const double cosine = cos (angle_rad), sine = sin (angle_rad);
  double least_mm2 = INFINITY;

  for (int i = 0; i < CORNERS; i++)
    {
      const HutPoint there = turned (self->corners[i], cosine, sine);
      const HutPoint back = turned (fixed_corners[i], cosine, -sine);

      least_mm2 = fmin (least_mm2, point_distance2_mm2 (there, fixed));
      least_mm2 = fmin (least_mm2, point_distance2_mm2 (back, &self->rect));
    }
  return least_mm2;
}

double
hut_turn_distance_mm (const HutTurn *self,
                      const HutRect *fixed,
                      double angle_rad)
{
  HutPoint corners[CORNERS];

  if (overlaps (self, fixed, angle_rad))
    return 0.0;
  get_corners (*fixed, corners);
  return sqrt (corner_distance2_mm2 (self, corners, fixed, angle_rad));
}

/* ---- nearest ------------------------------------------------------------------------------- */

/* The search for the smallest distance, while it runs. */
typedef struct
{
  const HutTurn *turn;
  const HutRect *fixed;
  HutPoint corners[CORNERS]; /* of @fixed */
  double
      bounds_mm2[HUT_TURN_SECTORS]; /* squared distance that no angle of the sector undercuts */
  double best_mm2, best_rad;
} Search;

static double
wrapped (double angle_rad)
{
  const double turns = floor (angle_rad / (2.0 * G_PI));

  return angle_rad - turns * 2.0 * G_PI;
}

static int
sector_of (const HutTurn *self,
           double angle_rad)
{
  return self->end_rad > 0.0 ? CLAMP ((int)(angle_rad / self->end_rad * HUT_TURN_SECTORS), 0,
                                      HUT_TURN_SECTORS - 1)
                             : 0;
}

static void
try_angle (Search *search,
           double angle_rad)
{
  const double angle = wrapped (angle_rad);
  double distance_mm2;

  if (angle > search->turn->end_rad
      || search->bounds_mm2[sector_of (search->turn, angle)] >= search->best_mm2)
    return;
  distance_mm2 = corner_distance2_mm2 (search->turn, search->corners, search->fixed, angle);
  if (distance_mm2 < search->best_mm2)
    {
      search->best_mm2 = distance_mm2;
      search->best_rad = angle;
    }
}

static void
search_smallest (Search *search)
{
  const HutTurn *turn = search->turn;

  try_angle (search, 0.0);
  if (turn->end_rad < 2.0 * G_PI)
    try_angle (search, turn->end_rad);
  for (int i = 0; i < CORNERS; i++)
    {
      const double fixed_rad = atan2 (search->corners[i].v, search->corners[i].u);

      for (int k = 0; k < 4; k++)
        {
          try_angle (search, k * quarter_rad - turn->corner_rad[i]);
          try_angle (search, fixed_rad - k * quarter_rad);
          try_angle (search, fixed_rad - turn->corner_rad[k]);
        }
    }
}

/* ---- collision ----------------------------------------------------------------------------- */

typedef struct
{
  double rad[EVENTS_MAX];
  guint count;
  double end_rad;
} Events;

static void
add_event (Events *events,
           double angle_rad)
{
  const double angle = wrapped (angle_rad);

  if (angle < events->end_rad)
    events->rad[events->count++] = angle;
}

/* Angles at which a point that starts in direction @from_rad and turns by @sign crosses the four
 * lines of
 * @rect: u = r cos (from + sign angle), v = r sin (from + sign angle). */
static void
add_crossings (Events *events,
               double radius_mm,
               double from_rad,
               double sign,
               const HutRect *rect)
{
  const double u_mm[] = { rect->u0, rect->u1 }, v_mm[] = { rect->v0, rect->v1 };

  for (int i = 0; i < 2; i++)
    {
      if (fabs (u_mm[i]) <= radius_mm)
        {
          const double at_rad = acos (u_mm[i] / radius_mm);

          add_event (events, sign * (at_rad - from_rad));
          add_event (events, sign * (-at_rad - from_rad));
        }
      if (fabs (v_mm[i]) <= radius_mm)
        {
          const double at_rad = asin (v_mm[i] / radius_mm);

          add_event (events, sign * (at_rad - from_rad));
          add_event (events, sign * (G_PI - at_rad - from_rad));
        }
    }
}

static int
compare_angles (const void *a,
                const void *b)
{
  const double x = *(const double *)a, y = *(const double *)b;

  return (x > y) - (x < y);
}

/* The first angle from which on they overlap deeper than a touch; -1 when they never do. */
static double
first_overlap_rad (const Search *search)
{
  const HutTurn *turn = search->turn;
  const double touch_mm = HUT_TURN_TOUCH_MM;
  const HutRect core = { search->fixed->u0 + touch_mm, search->fixed->v0 + touch_mm,
                         search->fixed->u1 - touch_mm, search->fixed->v1 - touch_mm };
  Events events = { .end_rad = turn->end_rad };
  HutPoint corners[CORNERS];

  if (!(core.u1 > core.u0 && core.v1 > core.v0))
    return -1.0;
  if (overlaps (turn, &core, 0.0))
    return 0.0;
  get_corners (core, corners);
  for (int i = 0; i < CORNERS; i++)
    {
      add_crossings (&events, hypot (turn->corners[i].u, turn->corners[i].v), turn->corner_rad[i],
                     1.0, &core);
      add_crossings (&events, hypot (corners[i].u, corners[i].v),
                     atan2 (corners[i].v, corners[i].u), -1.0, &turn->rect);
    }
  events.rad[events.count++] = 0.0;
  events.rad[events.count++] = turn->end_rad;
  qsort (events.rad, events.count, sizeof (double), compare_angles);
  for (guint i = 0; i + 1 < events.count; i++)
    {
      const double middle_rad = (events.rad[i] + events.rad[i + 1]) / 2.0;

      if (search->bounds_mm2[sector_of (turn, middle_rad)] <= 0.0
          && overlaps (turn, &core, middle_rad))
        return events.rad[i];
    }
  return -1.0;
}

gboolean
hut_turn_find_nearest (const HutTurn *self,
                       const HutRect *fixed,
                       double limit_mm,
                       HutTurnNearest *nearest)
{
  Search search
      = { .turn = self, .fixed = fixed, .best_mm2 = limit_mm * limit_mm, .best_rad = -1.0 };
  double bound_mm2 = INFINITY;

  g_return_val_if_fail (nearest != NULL, FALSE);

  for (int i = 0; i < HUT_TURN_SECTORS; i++)
    {
      search.bounds_mm2[i] = rects_distance2_mm2 (&self->swept[i], fixed);
      bound_mm2 = fmin (bound_mm2, search.bounds_mm2[i]);
    }
  if (bound_mm2 <= 0.0)
    {
      const double first_rad = first_overlap_rad (&search);

      if (first_rad >= 0.0)
        {
          *nearest = (HutTurnNearest) { .collides = TRUE, .angle_rad = first_rad };
          return TRUE;
        }
    }
  if (bound_mm2 >= search.best_mm2)
    return FALSE;
  get_corners (*fixed, search.corners);
  search_smallest (&search);
  if (search.best_rad < 0.0)
    return FALSE;
  *nearest
      = (HutTurnNearest) { .distance_mm = sqrt (search.best_mm2), .angle_rad = search.best_rad };
  return TRUE;
}

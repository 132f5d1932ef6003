/* src/geom/hut-segment.c: measures of one segment, line or arc.
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Every measure is a closed formula in the chord and the bulge b, written so that it neither
 * divides by b nor cancels where b is small: an arc that is nearly a line is measured as well as a
 * line. */
#define G_LOG_DOMAIN "hut-geom"
#include "config.h"
#include "geom/hut-segment.h"
#include <math.h>

/* Under this bulge (ratio) the power series of the cap area is exact to double, and the closed
 * formula has begun to cancel. */
#define SERIES_BULGE 0.03
/* Quadrant points nearer than this to an end of the arc (sine of the angle) are that end: the
 * bounds then differ by under r * 5e-15. */
#define QUADRANT_SINE 1e-7

gboolean
hut_segment_get_circle (const HutSegment *self,
                        HutPoint *centre,
                        double *radius_mm)
{
  const HutPoint chord = hut_point_minus (self->end, self->start);
  const double chord_mm = hypot (chord.u, chord.v);
  const double b = self->bulge;

  if (b == 0 || !isfinite (b) || !(chord_mm >= HUT_SHORTEST_MM) || !isfinite (chord_mm))
    return FALSE;

  const double to_centre_ratio = (1 - b * b) / (4 * b);

  centre->u = (self->start.u + self->end.u) / 2 - chord.v * to_centre_ratio;
  centre->v = (self->start.v + self->end.v) / 2 + chord.u * to_centre_ratio;
  *radius_mm = chord_mm * (1 + b * b) / (4 * fabs (b));
  return TRUE;
}

double
hut_segment_turn_rad (const HutSegment *self)
{
  return 4 * atan (self->bulge);
}

double
hut_segment_length_mm (const HutSegment *self)
{
  const double chord_mm = hut_point_distance_mm (self->start, self->end);
  const double b = fabs (self->bulge);

  /* r * turn; atan (b) / b goes to 1 */
  return b == 0 ? chord_mm : chord_mm * (1 + b * b) * (atan (b) / b);
}

/* The point at a share of the length. */
static HutPoint
point_at (const HutSegment *self,
          double ratio)
{
  HutPoint centre;
  double radius_mm;

  if (ratio <= 0.0)
    return self->start;
  if (ratio >= 1.0)
    return self->end;
  if (self->bulge == 0.0 || !hut_segment_get_circle (self, &centre, &radius_mm))
    return (HutPoint) { self->start.u + (self->end.u - self->start.u) * ratio,
                        self->start.v + (self->end.v - self->start.v) * ratio };

  const double at_rad = atan2 (self->start.v - centre.v, self->start.u - centre.u)
                        + hut_segment_turn_rad (self) * ratio;

  return (HutPoint) { centre.u + radius_mm * cos (at_rad), centre.v + radius_mm * sin (at_rad) };
}

HutSegment
hut_segment_between (const HutSegment *self,
                     double from_ratio,
                     double to_ratio)
{
  g_return_val_if_fail (self != NULL, ((HutSegment) { { 0, 0 }, { 0, 0 }, 0, HUT_EDGE_PLAIN }));

  if (from_ratio <= 0.0 && to_ratio >= 1.0)
    return *self;
  return (HutSegment) {
    .start = point_at (self, from_ratio),
    .end = point_at (self, to_ratio),
    .bulge = self->bulge != 0.0
                 ? tan (hut_segment_turn_rad (self) * (to_ratio - from_ratio) / 4.0)
                 : 0.0,
    .kind = self->kind,
  };
}

double
hut_segment_cap_mm2 (const HutSegment *self)
{
  const HutPoint chord = hut_point_minus (self->end, self->start);
  const double chord2 = hut_point_dot (chord, chord);
  const double b = self->bulge;
  const double b2 = b * b;

  /* Circular segment r^2 (turn - sin turn) / 2, with r and turn put in terms of chord and bulge. */
  if (fabs (b) < SERIES_BULGE)
    return chord2 * b * (1.0 / 3 + b2 * (1.0 / 15 - b2 * (1.0 / 105 - b2 / 315)));
  return chord2 * ((1 + b2) * (1 + b2) * atan (b) - b + b * b2) / (8 * b2);
}

gboolean
hut_segment_spans (const HutSegment *self,
                   HutPoint centre,
                   HutPoint to)
{
  const gboolean ccw = self->bulge > 0;
  const HutPoint first = hut_point_minus (ccw ? self->start : self->end, centre);
  const HutPoint last = hut_point_minus (ccw ? self->end : self->start, centre);

  if (fabs (self->bulge) <= 1)
    return hut_point_cross (first, to) >= 0 && hut_point_cross (to, last) >= 0;
  return !(hut_point_cross (last, to) > 0 && hut_point_cross (to, first) > 0);
}

/* TRUE when @to is well inside the turn, not at one of its ends. */
static gboolean
spans_inside (const HutSegment *self,
              HutPoint centre,
              HutPoint to,
              double radius_mm)
{
  const HutPoint start = hut_point_minus (self->start, centre);
  const HutPoint end = hut_point_minus (self->end, centre);
  const double slack = QUADRANT_SINE * radius_mm;

  if ((fabs (hut_point_cross (start, to)) < slack && hut_point_dot (start, to) > 0)
      || (fabs (hut_point_cross (end, to)) < slack && hut_point_dot (end, to) > 0))
    return FALSE;
  return hut_segment_spans (self, centre, to);
}

HutRect
hut_segment_bounds (const HutSegment *self)
{
  HutPoint centre;
  double radius_mm;
  HutRect bounds = {
    fmin (self->start.u, self->end.u), fmin (self->start.v, self->end.v),
    fmax (self->start.u, self->end.u), fmax (self->start.v, self->end.v),
  };

  if (!hut_segment_get_circle (self, &centre, &radius_mm))
    return bounds;
  if (spans_inside (self, centre, (HutPoint) { -1, 0 }, radius_mm))
    bounds.u0 = centre.u - radius_mm;
  if (spans_inside (self, centre, (HutPoint) { 0, -1 }, radius_mm))
    bounds.v0 = centre.v - radius_mm;
  if (spans_inside (self, centre, (HutPoint) { 1, 0 }, radius_mm))
    bounds.u1 = centre.u + radius_mm;
  if (spans_inside (self, centre, (HutPoint) { 0, 1 }, radius_mm))
    bounds.v1 = centre.v + radius_mm;
  return bounds;
}

static HutPoint
nearer_end (const HutSegment *self,
            HutPoint p)
{
  return hut_point_distance_mm (self->start, p) <= hut_point_distance_mm (self->end, p)
           ? self->start : self->end;
}

HutPoint
hut_segment_nearest (const HutSegment *self,
                     HutPoint p)
{
  HutPoint centre;
  double radius_mm;

  if (hut_segment_get_circle (self, &centre, &radius_mm))
    {
      const HutPoint to = hut_point_minus (p, centre);
      const double away_mm = hypot (to.u, to.v);

      /* From the centre itself every point is equally near. */
      if (away_mm == 0 || !hut_segment_spans (self, centre, to))
        return nearer_end (self, p);
      return (HutPoint) {
        centre.u + to.u / away_mm * radius_mm, centre.v + to.v / away_mm * radius_mm,
      };
    }

  const HutPoint chord = hut_point_minus (self->end, self->start);
  const HutPoint from_start = hut_point_minus (p, self->start);
  const double at_ratio = hut_point_dot (from_start, chord) / hut_point_dot (chord, chord);

  if (!(at_ratio > 0)) /* also a segment without length */
    return self->start;
  if (at_ratio >= 1)
    return self->end;
  return (HutPoint) { self->start.u + chord.u * at_ratio, self->start.v + chord.v * at_ratio };
}

/* The ray crosses an arc as often as its chord, but for points between chord and arc, where the
 * count differs by one. A point on the chord itself is taken as moved by (+e, +e^2) for both
 * questions, so the two answers fit together. */
gboolean
hut_segment_is_crossed (const HutSegment *self,
                        HutPoint p)
{
  const HutPoint chord = hut_point_minus (self->end, self->start);
  const gboolean start_above = self->start.v > p.v;
  const gboolean end_above = self->end.v > p.v;
  const double b = self->bulge;
  const HutPoint from_start = hut_point_minus (p, self->start);
  const double off = hut_point_cross (chord, from_start); /* chord * distance, > 0 left of it */
  const double side = off != 0 ? off : chord.v != 0 ? -chord.v : chord.u;
  const gboolean crossed = start_above != end_above && (end_above ? side > 0 : side < 0);

  if (b == 0 || (b > 0 ? side > 0 : side < 0))
    return crossed;

  /* Inside the circle through both ends with this bulge, without its centre: multiplied by |b|. */
  const double level = hut_point_dot (from_start, hut_point_minus (p, self->end));

  return crossed != (fabs (b) * level + fabs (off) / 2 * (1 - b * b) < 0);
}

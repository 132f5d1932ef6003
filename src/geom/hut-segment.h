/* src/geom/hut-segment.h: measures of one segment, line or arc.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "geom/hut-geom.h"

/* What an edge of an outline is for; the fit allowance moves mating edges only. */
typedef enum
{
  HUT_EDGE_PLAIN,
  HUT_EDGE_MATING, /* flank of a finger, or a splice: another part's edge lies against it */
} HutEdgeKind;

/* A segment with its ends. bulge = tan (angle / 4): 0 line, > 0 arc counter-clockwise, 1 half
 * circle. */
typedef struct
{
  HutPoint start, end; /* mm */
  double bulge;        /* ratio */
  HutEdgeKind kind;
} HutSegment;

/* Shorter chords have no direction and no circle, mm: half the grid, so that no edge between two
 * grid points is lost. */
#define HUT_SHORTEST_MM (HUT_GRID_MM / 2)

/**
 * hut_segment_get_circle:
 * @self: a segment
 * @centre: (out): centre, mm
 * @radius_mm: (out): radius, mm, > 0
 *
 * Source: r = c (1 + b^2) / (4 |b|), b = tan (angle / 4), centre = middle + n c (1 - b^2) / (4 b),
 * n the left normal of the chord c: the right triangle of half chord, radius, centre distance.
 *
 * Returns: FALSE, with nothing written, for a line or a chord under HUT_SHORTEST_MM
 */
gboolean hut_segment_get_circle (const HutSegment *self, HutPoint *centre, double *radius_mm);

/* Angle that the arc turns through, rad: > 0 counter-clockwise, 0 for a line. */
double hut_segment_turn_rad (const HutSegment *self);
double hut_segment_length_mm (const HutSegment *self);
/* The part of it between two shares of its length, 0 <= @from_ratio < @to_ratio <= 1; the ends of the
 * whole stay the same doubles. */
HutSegment hut_segment_between (const HutSegment *self, double from_ratio, double to_ratio);
/* Area between chord and arc, mm2: > 0 right of the chord, where a counter-clockwise path grows. */
double hut_segment_cap_mm2 (const HutSegment *self);
/* Exact with arcs: ends and the quadrant points that the arc passes. */
HutRect hut_segment_bounds (const HutSegment *self);
/* The point of the segment that is nearest to @p; a start for a segment without length. */
HutPoint hut_segment_nearest (const HutSegment *self, HutPoint p);
/* TRUE when the ray from @p along +u crosses the segment an odd number of times. Ends that are
 * level with @p count half open, so the crossings of a closed path add up; @p is not on the
 * segment. */
gboolean hut_segment_is_crossed (const HutSegment *self, HutPoint p);
/* TRUE when the direction @to (any length, from the centre) lies in the turn of the arc. */
gboolean hut_segment_spans (const HutSegment *self, HutPoint centre, HutPoint to);

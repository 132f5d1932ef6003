/* src/geom/hut-path.h: a closed path of lines and arcs.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "geom/hut-segment.h"

/* A corner of a path, and the segment from it to the next one (from the last to the first).
 * bulge = tan (angle / 4): 0 line, > 0 arc counter-clockwise, 1 half circle. */
typedef struct
{
  HutPoint p; /* mm */
  double bulge; /* ratio */
  HutEdgeKind kind;
} HutVertex;

/* A closed path. Outer outlines run counter-clockwise, holes clockwise. */
typedef struct _HutPath HutPath;

HutPath *hut_path_new (void) G_GNUC_WARN_UNUSED_RESULT;
HutPath *hut_path_copy (const HutPath *self) G_GNUC_WARN_UNUSED_RESULT;
void hut_path_free (HutPath *self);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (HutPath, hut_path_free)

/* Ready-made shapes, counter-clockwise, plain edges, mm. A radius is cut down to half the shorter
 * side. What is no shape (empty, not finite, under the grid) gives a path without corners. */
HutPath *hut_path_new_rect (HutRect rect, double radius_mm) G_GNUC_WARN_UNUSED_RESULT;
HutPath *hut_path_new_circle (HutPoint centre, double radius_mm) G_GNUC_WARN_UNUSED_RESULT;

/* Adds a corner; the border from the last corner back to the first stays implied. */
void hut_path_append (HutPath *self, HutPoint p, double bulge, HutEdgeKind kind);
guint hut_path_get_count (const HutPath *self);
/* (transfer none), valid until the path changes; NULL when there is no such corner */
const HutVertex *hut_path_get (const HutPath *self, guint index);
HutSegment hut_path_get_segment (const HutPath *self, guint index);

/* The same path run the other way: orientation flips, the point set stays. */
void hut_path_reverse (HutPath *self);
/* Signed area, mm2: > 0 counter-clockwise. Arcs are exact. */
double hut_path_area_mm2 (const HutPath *self);
double hut_path_length_mm (const HutPath *self);
/* Exact with arcs; empty for a path without corners. */
HutRect hut_path_bounds (const HutPath *self);

/* Where a point lies; the border is HUT_BORDER_MM wide to each side. */
typedef enum
{
  HUT_PATH_SIDE_OUTSIDE,
  HUT_PATH_SIDE_BORDER,
  HUT_PATH_SIDE_INSIDE,
} HutPathSide;

/* Half the width of a border, mm. Own choice: a thousandth of the grid, and far above the
 * rounding of doubles on a 10 m sheet. */
#define HUT_BORDER_MM 1e-6

/* Which side of the border @p is on; arcs are exact. */
HutPathSide hut_path_locate (const HutPath *self, HutPoint p);
/* TRUE when @p is inside or on the border; arcs are exact. */
gboolean hut_path_contains (const HutPath *self, HutPoint p);
/* FALSE when a coordinate or a bulge is infinite or not a number. */
gboolean hut_path_is_finite (const HutPath *self);
/* Drops points that lie on a line between their neighbours of the same kind, and doubled points. */
void hut_path_simplify (HutPath *self);

/* Moves every corner to the nearest point of the grid; bulges stay, so arcs keep their angle. */
void hut_path_snap (HutPath *self);

/* A placement in the plane: optional mirror (u -> -u), then turn, then shift. */
typedef struct
{
  gboolean mirrored;
  double turn_rad; /* counter-clockwise; multiples of a right angle are exact */
  HutPoint shift;  /* mm */
} HutPlacement;

/* Where the placement puts @p. */
HutPoint hut_placement_apply (const HutPlacement *self, HutPoint p);
/* A mirrored path keeps its role: it is reversed so that outer stays counter-clockwise. */
HutPath *hut_path_dup_placed (const HutPath *self,
                              const HutPlacement *placement) G_GNUC_WARN_UNUSED_RESULT;

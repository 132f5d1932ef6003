/* src/geom/hut-path.h: a closed path of lines and arcs.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "geom/hut-geom.h"

/* What an edge of an outline is for; the fit allowance moves mating edges only. */
typedef enum
{
  HUT_EDGE_PLAIN,
  HUT_EDGE_MATING, /* flank of a finger, or a splice: another part's edge lies against it */
} HutEdgeKind;

/* A corner of a path, and the segment from it to the next one (from the last to the first).
 * bulge = tan (angle / 4): 0 line, > 0 arc counter-clockwise, 1 half circle. */
typedef struct
{
  HutPoint p; /* mm */
  double bulge; /* ratio */
  HutEdgeKind kind;
} HutVertex;

/* A segment with its ends, as iteration hands it out. */
typedef struct
{
  HutPoint start, end; /* mm */
  double bulge;        /* ratio */
  HutEdgeKind kind;
} HutSegment;

/* A closed path. Outer outlines run counter-clockwise, holes clockwise. */
typedef struct _HutPath HutPath;

HutPath *hut_path_new (void) G_GNUC_WARN_UNUSED_RESULT;
HutPath *hut_path_copy (const HutPath *self) G_GNUC_WARN_UNUSED_RESULT;
void hut_path_free (HutPath *self);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (HutPath, hut_path_free)

/* Ready-made shapes, counter-clockwise, mm. A radius is cut down to half the shorter side. */
HutPath *hut_path_new_rect (HutRect rect, double radius_mm) G_GNUC_WARN_UNUSED_RESULT;
HutPath *hut_path_new_circle (HutPoint centre, double radius_mm) G_GNUC_WARN_UNUSED_RESULT;

void hut_path_append (HutPath *self, HutPoint p, double bulge, HutEdgeKind kind);
guint hut_path_get_count (const HutPath *self);
/* (transfer none), valid until the path changes */
const HutVertex *hut_path_get (const HutPath *self, guint index);
HutSegment hut_path_get_segment (const HutPath *self, guint index);

/* The same path run the other way: orientation flips, the point set stays. */
void hut_path_reverse (HutPath *self);
/* Signed area, mm2: > 0 counter-clockwise. Arcs are exact. */
double hut_path_area_mm2 (const HutPath *self);
double hut_path_length_mm (const HutPath *self);
HutRect hut_path_bounds (const HutPath *self);
/* TRUE when @p is inside or on the border; arcs are exact. */
gboolean hut_path_contains (const HutPath *self, HutPoint p);
/* Drops points that lie on a line between their neighbours of the same kind, and doubled points. */
void hut_path_simplify (HutPath *self);

/* A placement in the plane: optional mirror (u -> -u), then turn, then shift. */
typedef struct
{
  gboolean mirrored;
  double turn_rad; /* counter-clockwise; multiples of a right angle are exact */
  HutPoint shift;  /* mm */
} HutPlacement;

HutPoint hut_placement_apply (const HutPlacement *self, HutPoint p);
/* A mirrored path keeps its role: it is reversed so that outer stays counter-clockwise. */
HutPath *hut_path_dup_placed (const HutPath *self, const HutPlacement *placement) G_GNUC_WARN_UNUSED_RESULT;

/**
 * hut_segment_get_circle:
 * @self: a segment whose bulge is not 0
 * @centre: (out): centre, mm
 * @radius_mm: (out): radius, mm, > 0
 *
 * Source: r = c (1 + b^2) / (4 |b|), b = tan (angle / 4); reference/formats.md 2.2 (checked with ezdxf).
 *
 * Returns: FALSE for a line or a chord under the grid
 */
gboolean hut_segment_get_circle (const HutSegment *self, HutPoint *centre, double *radius_mm);
double hut_segment_length_mm (const HutSegment *self);

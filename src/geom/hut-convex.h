/* src/geom/hut-convex.h: a region as convex pieces, with some room around it.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "geom/hut-region.h"

/* Convex polygons, counter-clockwise, that together cover something; they may overlap. */
typedef struct
{
  GArray *points; /* HutPoint, mm: of all pieces, one after the other */
  GArray *ends;   /* guint: index behind the last point of each piece */
} HutConvexSet;

HutConvexSet *hut_convex_set_new (void) G_GNUC_WARN_UNUSED_RESULT;
void hut_convex_set_free (HutConvexSet *self);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (HutConvexSet, hut_convex_set_free)

/* Adds a piece: (array length=count), convex, counter-clockwise, at least 3 points. */
void hut_convex_set_append (HutConvexSet *self, const HutPoint *points, guint count);
guint hut_convex_set_get_count (const HutConvexSet *self);
/* (transfer none) (array length=count): valid until the set changes */
const HutPoint *hut_convex_set_get (const HutConvexSet *self, guint piece, guint *count);
/* Empty for a set without pieces. */
HutRect hut_convex_set_bounds (const HutConvexSet *self);

/**
 * hut_convex_set_new_around:
 * @region: a valid region
 * @grow_mm: room that is wanted around it, mm, >= 0
 * @close_mm: notches and holes narrower than twice this are filled, mm, >= 0
 *
 * Covers every point that is less than @grow_mm from the region, and a little more where that makes
 * it simpler: corners are mitred, arcs become few tangents or chords, what @close_mm fills is filled,
 * steps of a corner that are no longer than @close_mm are squared off. Holes that stay are free.
 *
 * Returns: (transfer full): the box of the region, grown, when the engine can not do it
 */
HutConvexSet *hut_convex_set_new_around (const HutRegion *region,
                                         double grow_mm,
                                         double close_mm) G_GNUC_WARN_UNUSED_RESULT;

/* (transfer full). @placement: not mirrored: a mirrored piece would run clockwise */
HutConvexSet *hut_convex_set_dup_placed (const HutConvexSet *self,
                                         const HutPlacement *placement) G_GNUC_WARN_UNUSED_RESULT;

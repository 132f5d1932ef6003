/* src/draw/hut-hull.h: the convex hull of points in the plane.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "geom/hut-geom.h"

/**
 * hut_hull_new:
 * @points: (element-type HutPoint): mm or px
 * @grow_mm: the corners are moved outwards from their middle by this, mm, or px as the points
 *
 * Source: A. M. Andrew's monotone chain, 1979 (from memory).
 *
 * Returns: (transfer full) (element-type HutPoint): the corners, counter-clockwise (u right, v up);
 *   fewer than three when all points are on a line
 */
GArray *hut_hull_new (const GArray *points, double grow_mm) G_GNUC_WARN_UNUSED_RESULT;

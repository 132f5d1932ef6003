/* src/draw/hut-hull.h: the convex hull of points in the plane.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "geom/hut-geom.h"

/* (transfer full) (element-type HutPoint): the corners, counter-clockwise (u right, v up), moved
 * outwards from the middle by @grow; fewer than three when all points are on a line.
 * @points: (element-type HutPoint). Source: A. M. Andrew's monotone chain, 1979 (from memory). */
GArray *hut_hull_new (const GArray *points, double grow) G_GNUC_WARN_UNUSED_RESULT;

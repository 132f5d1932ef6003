/* tests/bench/hut-tour.h: how long the way of a tool is at least, and by a plain rule.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "geom/hut-path.h"

/* From (0, 0) always to the nearest corner of a path that may be cut, mm: all of a lower rank first,
 * and what lies inside a path before it. */
double hut_tour_nearest_mm (const GPtrArray *paths, const guint *ranks);

/**
 * hut_tour_bound_mm:
 * @points: (array length=count): to be visited, mm
 * @groups: (nullable) (array length=count): 0.. without a gap: all of a lower group come first
 *
 * No way from (0, 0) through all points is shorter: the bound of M. Held and R. Karp, "The
 * traveling-salesman problem and minimum spanning trees", 1970 and 1971, by subgradient ascent on trees
 * that a last point without length closes. Links between groups that follow each other cost a constant
 * more, which every allowed way pays as often: the tree then has as few of them as the way.
 *
 * Returns: mm
 */
double hut_tour_bound_mm (const HutPoint *points, const guint *groups, guint count);

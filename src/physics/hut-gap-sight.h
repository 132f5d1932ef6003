/* src/physics/hut-gap-sight.h: whether light passes a gap in a straight line, in a section across it.
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Own derivations, checked against rays in the tests. Take the widest gap that tolerances allow. No
 * direct sight is necessary, not enough: see hut-bounce.h. */
#pragma once
#include "physics/hut-physics.h"

/* Angle (rad) off its axis within which rays pass a straight gap, atan (g / d), both m; @depth_m >
 * 0. */
double hut_gap_half_angle_rad (double gap_m, double depth_m);

/* Share of diffuse light (a ratio) that a straight gap with black sides lets through.
 * Source: Hottel's crossed strings, sqrt (1 + (d / g)2) - d / g. @gap_m > 0 */
double hut_gap_view_ratio (double gap_m, double depth_m);

/**
 * hut_corner_is_sighted:
 * @gap1_m, @gap2_m: widths of the two legs of a gap with one corner
 * @leg1_m, @leg2_m: their lengths from the inner corner to their mouths
 *
 * A straight line from mouth to mouth exists exactly when g1 g2 >= L1 L2: with the inner corner at
 * the origin the extreme ray through the outer ends of the mouths, (-L1, g1) and (g2, -L2), has to
 * pass it on the open side. For a lip that hangs d over a wall of thickness t: legs t and d.
 */
gboolean hut_corner_is_sighted (double gap1_m, double gap2_m, double leg1_m, double leg2_m);

/* How often a ray at @angle_rad (0 .. pi / 2) from a lap of that depth and gap meets its sides at
 * least: floor (d tan / g). */
guint hut_lap_bounces_count (double depth_m, double gap_m, double angle_rad);

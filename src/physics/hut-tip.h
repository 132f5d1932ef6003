/* src/physics/hut-tip.h: whether the enclosure tips over.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "physics/hut-physics.h"

/* Designers ask for at least this much more holding than tipping moment: common practice, 1.5 .. 2.
 * */
#define HUT_TIP_RATIO 1.5

/**
 * hut_tip_ratio:
 * @holding_kg, @holding_m: what stands on the near side of the edge, and how far its centre is from
 *   it, level
 * @tipping_kg, @tipping_m: what hangs beyond the edge, and how far; >= 0
 *
 * Source: moments about the edge. Returns: holding over tipping moment, a ratio; INFINITY when
 * nothing hangs beyond; under 1 it tips
 */
double hut_tip_ratio (double holding_kg, double holding_m, double tipping_kg, double tipping_m);

/* Downward push (N) at @push_m > 0 beyond the edge that just tips it. */
double hut_tip_push_down_n (double holding_kg,
                            double holding_m,
                            double tipping_kg,
                            double tipping_m,
                            double push_m);

/* Level push (N) at a height (m, > 0) that tips a mass whose centre is @arm_m from the edge: m g b
 * / h, if the feet do not slide first. */
double hut_tip_push_level_n (double mass_kg, double arm_m, double height_m);

/* src/physics/hut-purge.h: how fast moving air clears a box.
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * One well mixed zone, clean supply, nothing settles. The mixing factor k >= 1 says how much worse
 * than that a real box is: 1 is perfect, 3 a reasonable layout (common practice), up to 10 when air
 * short-circuits (CDC, MMWR 1994;43(RR-13)). */
#pragma once
#include "physics/hut-physics.h"

/* Mixing factor of a box whose intake lies across from its fan: common practice, no single source.
 * */
#define HUT_MIXING_USUAL_RATIO 3.0

/* Air changes an hour: 3600 Q / V. @flow_m3_s >= 0; @volume_m3 > 0, less what stands inside. A
 * ratio per hour; NAN outside of that range. */
double hut_air_changes_count (double flow_m3_s, double volume_m3);

/**
 * hut_purge_time_s:
 * @remaining_ratio: what may be left, 0 .. 1: 0.01 for 99 % gone
 * @mixing_ratio: k, >= 1
 *
 * Source: t = -k V / Q ln (C2 / C1); CDC, MMWR 1994;43(RR-13), table S3-1.
 *
 * Returns: seconds; INFINITY without flow or when nothing may be left; NAN outside of the ranges
 */
double hut_purge_time_s (double flow_m3_s, double volume_m3, double remaining_ratio, double mixing_ratio);

/**
 * hut_buildup_kg_m3:
 * @source_kg_s: what the work gives off
 * @time_s: since the start with clean air; INFINITY for the steady value
 *
 * Source: C = G / Q' (1 - exp (-Q' t / V)), Q' = Q / k: mass balance of one zone.
 *
 * Returns: concentration, kg/m3; without flow G t / V; NAN outside of the ranges
 */
double hut_buildup_kg_m3 (double source_kg_s,
                          double flow_m3_s,
                          double volume_m3,
                          double mixing_ratio,
                          double time_s);

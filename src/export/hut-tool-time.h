/* src/export/hut-tool-time.h: how long the tool needs for its moves.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include <glib.h>

/* A corner is rounded off by so much in thought, mm. What small controllers are often set to on
 * delivery (from memory). */
#define HUT_CORNER_MM 0.01

/**
 * hut_tool_program_time_s:
 * @moves: (element-type HutToolMove): see hut_tool_program_new ()
 * @acceleration_mm_s2: > 0
 *
 * Own model, of elementary mechanics. Each move has a speed that it does not pass: its own, and on
 * an arc of
 * radius r sqrt (a r). From one move to the next the tool is no faster than on the circle that
 * touches both
 * and passes their corner at HUT_CORNER_MM: its radius is d s / (1 - s), s the sine of half the
 * angle between
 * them; between a cut and a travel it stands. Within these limits it always speeds up or slows
 * down with the
 * full acceleration or holds the limit. Left out: jerk, what a controller needs to think, and the
 * time that a
 * spindle gets to come up to speed.
 *
 * Returns: s
 */
double hut_tool_program_time_s (const GArray *moves, double acceleration_mm_s2);

/* src/assembly/hut-finger.h: finger joints along an edge, and the outline that they give a panel.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "assembly/hut-assembly.h"

/* Limits of a finger's width over the thicker of the two panels; DESIGN: 1.5 t .. 6 t. */
#define HUT_FINGER_MIN_RATIO 1.5
#define HUT_FINGER_MAX_RATIO 6.0
/* Own choice: more fingers than this on one edge are a mistake in the input, not a joint. */
#define HUT_FINGER_MAX_COUNT 301u

/**
 * hut_finger_count:
 * @length_mm: length of the edge prism between its corners, mm
 * @target_mm: finger width that is wanted, mm, > 0
 * @least_mm: finger width that must not be undercut, mm, > 0
 *
 * Returns: an odd number >= 3 whose fingers are as near to @target_mm as @least_mm permits; 1 when
 *   three fingers would be too narrow (butt joint)
 */
guint hut_finger_count (double length_mm, double target_mm, double least_mm);

/* (transfer full) (element-type double): @count + 1 borders from @from_mm to @to_mm, on the grid. */
GArray *hut_finger_cuts (double from_mm, double to_mm, guint count) G_GNUC_WARN_UNUSED_RESULT;

/**
 * hut_finger_outline:
 * @width_mm, @height_mm: outer rectangle of the panel, mm
 * @edges: its four joints
 *
 * The outline is a row of runs, each parallel to an edge at depth 0 (owned) or at the neighbour's
 * thickness (not owned). Runs of one edge are joined at the finger borders; runs of two edges at the
 * crossing of their lines: with the rank rule that gives the corner to its owner (see DEVELOPERS.md).
 *
 * Returns: (transfer full): counter-clockwise; flanks of fingers are MATING
 */
HutPath *hut_finger_outline (double width_mm, double height_mm, const HutEdgeJoint edges[HUT_EDGE_COUNT]) G_GNUC_WARN_UNUSED_RESULT;

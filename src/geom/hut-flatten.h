/* src/geom/hut-flatten.h: a path as points, for what knows lines only.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "geom/hut-path.h"

/**
 * hut_path_dup_flat:
 * @self: a path
 * @error: HUT_GEOM_ERROR_INVALID when a number is not finite, HUT_GEOM_ERROR_NO_CIRCLE when an arc
 *   has no chord; the message names the place
 *
 * The points of an arc lie on its circle, its chords at most HUT_CHORD_MM off it. An arc run the
 * other way has the same points to the bit, so two regions on both sides of it still meet.
 *
 * Returns: (transfer full) (element-type HutPoint): corners and points of arcs, the first one not
 *   repeated; empty for a path without corners; NULL on error
 */
GArray *hut_path_dup_flat (const HutPath *self, GError **error) G_GNUC_WARN_UNUSED_RESULT;

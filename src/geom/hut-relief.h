/* src/geom/hut-relief.h: room in the corners that a round tool does not reach.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "geom/hut-region.h"

/* Edges shorter than this make no corner worth a relief, mm. Own choice: jogs where the fit allowance
 * begins are shorter, and so are the chords of what was an arc. */
#define HUT_RELIEF_EDGE_MIN_MM 0.5

/**
 * hut_region_dup_relieved:
 * @self: the way of the tool's middle, as hut_region_dup_offset () makes it: material on the left
 * @radius_mm: of the tool, > 0
 *
 * At each sharp corner to the right, where the round tool would leave material that the mating part's
 * corner needs, the tool goes on until its edge touches the wanted corner, and back the same way: by
 * r (1 / cos (turn / 2) - 1) along the line that halves the corner; elementary trigonometry. Only
 * between two lines of at least HUT_RELIEF_EDGE_MIN_MM. The new corner is on the grid.
 *
 * Returns: (transfer full): with two corners more for each relief; not simple any more in the sense
 *   of GEOS, since there and back is one line
 */
HutRegion *hut_region_dup_relieved (const HutRegion *self,
                                    double radius_mm) G_GNUC_WARN_UNUSED_RESULT;

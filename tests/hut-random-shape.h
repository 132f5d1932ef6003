/* tests/hut-random-shape.h: random valid regions for the property tests of the geometry.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "geom/hut-region.h"
#include "hut-random.h"

/* A plate with fingers (mating flanks, on the grid) on its sides, some rounded corners and holes if
 * @arcs; no part of it, and no gap, is narrower than HUT_RANDOM_LEAST_MM. */
#define HUT_RANDOM_LEAST_MM 2.0
HutRegion *hut_random_fingers (HutRandom *random, gboolean arcs) G_GNUC_WARN_UNUSED_RESULT;
/* A plate with turned holes of every kind, as near to each other and to the rim as chance puts
 * them. */
HutRegion *hut_random_plate (HutRandom *random) G_GNUC_WARN_UNUSED_RESULT;
/* Two blocks and a slanted bridge between them, of even or uneven width. */
HutRegion *hut_random_bridge (HutRandom *random) G_GNUC_WARN_UNUSED_RESULT;
/* Any of them, mirrored or not, turned and shifted: nothing of it lies on the grid. */
HutRegion *hut_random_placed (HutRandom *random, const HutRegion *region) G_GNUC_WARN_UNUSED_RESULT;

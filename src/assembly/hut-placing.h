/* src/assembly/hut-placing.h: openings and windows put on their panels.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "assembly/hut-assembly.h"

/* Least material round a hole for it to be cut at all, mm. Own choice: far under any kerf; the checks ask
 * for more, this only keeps outlines simple. */
#define HUT_HOLE_GUARD_MM 0.05

/* Puts every opening and window of the design on its panel: fills `holes` and `plates`, cuts the panels'
 * regions, and adds a trouble for each one that cannot be cut. */
void hut_placing_run (HutAssembly *assembly);

void hut_placed_hole_free (HutPlacedHole *self);
void hut_plate_free (HutPlate *self);

/* src/assembly/hut-placing.h: openings, windows and hardware put on their panels.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "assembly/hut-assembly.h"

/* Least material round a hole for it to be cut at all, mm. Own choice: far under any kerf; the checks ask
 * for more, this only keeps outlines simple. */
#define HUT_HOLE_GUARD_MM 0.05

/* Puts every opening, window and piece of hardware of the design on its panel: fills `holes`, `plates` and
 * `hardware`, cuts the panels' regions, and adds a trouble for each one that cannot be cut. */
void hut_placing_run (HutAssembly *assembly);

/* A path placed and snapped to the grid. (transfer full) */
HutPath *hut_placing_dup_on_grid (const HutPath *path, const HutPlacement *placement) G_GNUC_WARN_UNUSED_RESULT;
/* Cuts all of @paths (transfer full; panel frame, on the grid) out of a panel, or none of them. @item: lent by
 * the design. (transfer none) */
const HutPlacedHole *hut_placing_take_hole (HutAssembly *self,
                                            HutHoleSource source,
                                            const char *item,
                                            guint panel,
                                            HutPoint middle,
                                            GPtrArray *paths);
void hut_placing_add_trouble (HutAssembly *self, HutTroubleKind kind, HutPanelId panel, const char *item);

void hut_placed_hole_free (HutPlacedHole *self);
void hut_plate_free (HutPlate *self);

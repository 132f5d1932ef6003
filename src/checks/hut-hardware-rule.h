/* src/checks/hut-hardware-rule.h: what a piece of hardware must keep to, as rules for a move.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "checks/hut-checking.h"

/* What one leaf must keep to on its panel: its solids, its holes, its pocket, its screws. @placed: as
 * it is, or only thought of, on any panel and face. (transfer full) (element-type HutMoveRule) */
GArray *hut_hardware_rules_new (const HutChecking *self, const HutPlacedHardware *placed) G_GNUC_WARN_UNUSED_RESULT;

/* src/assembly/hut-part-grain.h: how a part may lie on a sheet with grain.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "assembly/hut-part.h"

/* How the grain shall run on the part: as its stock says for pieces of the shell; other parts, and all
 * of a stock without grain, are free. */
HutGrainRule hut_part_grain_rule (const HutPart *self);

/* FALSE when the part goes on the bed's sheet only, or not even, against its rule: then it may lie in
 * any way. A part that is free keeps its rule. */
gboolean hut_part_keeps_grain (const HutPart *self, const HutCutter *cutter);

/* TRUE when the part may lie turned by so many quarter turns on the sheet as it lies on the bed. */
gboolean hut_part_may_turn (const HutPart *self, const HutCutter *cutter, guint quarters);

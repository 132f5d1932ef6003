/* src/design/hut-position.h: where the middle of a thing is on its panel.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "design/hut-design.h"

/* The middle of a panel. */
HutPosition hut_position_centre_of (HutPanelId panel);
/* A copy with a `body` of its own (transfer full). */
HutPosition hut_position_copy (const HutPosition *self);
void hut_position_clear (HutPosition *self);
/* Moves the middle on its panel, mm: offsets from the far edge run the other way. */
void hut_position_shift (HutPosition *self, double du_mm, double dv_mm);
gboolean hut_position_equal (const HutPosition *a, const HutPosition *b);

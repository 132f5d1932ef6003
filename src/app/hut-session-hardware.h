/* src/app/hut-session-hardware.h: edits of hardware; each is one undo step.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "app/hut-session.h"

/* Puts a piece of hardware on @panel with its middle at @at, from outside when it can be; the design
 * keeps a copy of @item. It becomes selected. @name: what it is called (translated). Returns: its id
 * (lent) or NULL. */
const char *hut_session_add_hardware (HutSession *self,
                                      const HutItem *item,
                                      const char *name,
                                      HutPanelId panel,
                                      HutPoint at);
/* Mounts the selected opening or hardware from the other face; FALSE when nothing such is selected or
 * it cannot be mounted from there. */
gboolean hut_session_flip_selected (HutSession *self);
/* Turns the selected opening or hardware by a right angle counter-clockwise. */
gboolean hut_session_turn_selected (HutSession *self);
/* Does what the finding's fix says. */
gboolean hut_session_apply_fix (HutSession *self, const HutFinding *finding);

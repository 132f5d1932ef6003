/* src/checks/hut-other-panel.h: another panel on which a piece of hardware fits as it stands.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "checks/hut-checking.h"

/**
 * hut_other_panel_find:
 * @panel, @at: (out caller-allocates): the panel, and the middle on it, mm from its lower left
 *
 * Looks for it on all other panels but the floor and bought ones, mounted from the same face and
 * turned alike. On each it starts from where the machine has the end of the service that it serves, or
 * else from the same place by share of width and height, and takes the nearest one where all of it has
 * room and the panel holds it. Of the panels the one with the shortest way wins, one of its own shell
 * before the others.
 *
 * Returns: FALSE when there is none, and for what lies across a line
 */
gboolean hut_other_panel_find (const HutChecking *self, const HutPlacedHardware *placed, HutPanelId *panel, HutPoint *at);

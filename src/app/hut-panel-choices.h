/* src/app/hut-panel-choices.h: panels as choices of a form.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "design/hut-design.h"

/* (transfer none): "Base front", translated; static. */
const char *hut_panel_shown_name (HutPanelId panel);
/* One number per panel, for lists of choices. */
int hut_panel_to_choice (HutPanelId panel);
HutPanelId hut_panel_from_choice (int choice);
/* Adds all panels that the enclosure has: choices (int) and names. */
void hut_panel_list_choices (const HutDesign *design, GArray *values, GPtrArray *names);

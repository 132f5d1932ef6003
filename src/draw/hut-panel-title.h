/* src/draw/hut-panel-title.h: how people call the panels.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "design/hut-design.h"

/* (transfer none): "Base front" as msgid; static. */
const char *hut_panel_id_title (HutPanelId id);

/* src/draw/hut-flat-panel.h: one panel of the flat view: sheet, edges, openings, windows.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "draw/hut-flat-scene.h"

/* The material, with its holes left open. Lies under the machine's shadow. */
void hut_flat_panel_fill (const HutFlatScene *scene, guint panel);
/* Windows, then all cut edges, then names of openings where they fit. Lies over the machine's
 * shadow. */
void hut_flat_panel_draw (const HutFlatScene *scene, guint panel);

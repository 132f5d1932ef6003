/* src/draw/hut-sheet-view.h: sheets side by side, drawn with Cairo.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "draw/hut-flat.h"
#include "sheets/hut-sheet.h"

/* Draws all sheets side by side, as large as the area allows. Nothing is kept. */
void hut_sheet_view_draw (cairo_t *cr, const HutAssembly *assembly, const HutPartSet *parts, const HutSheetSet *sheets, const HutFlatStyle *style, double width_px, double height_px);

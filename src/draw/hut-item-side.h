/* src/draw/hut-item-side.h: an item of hardware alone, seen from its right, in its panel.
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The picture's u is the depth: 0 is the face that it is mounted on, what is in front is left of it,
 * what is behind is right. Its v is that of the item. */
#pragma once
#include "catalog/hut-item.h"
#include "draw/hut-palette.h"
#include <cairo.h>

/* The panel that is drawn, mm: the thickest that it holds in, but not over HUT_SIDE_PANEL_MM. */
#define HUT_SIDE_PANEL_MM 6.0 /* own choice: a usual sheet */
double hut_item_side_panel_mm (const HutItem *item);

/* Box round all that hut_item_side_draw () shows, mm: panel, holes, spaces with leads and hands. */
HutRect hut_item_side_bounds (const HutItem *item);

/* Draws it with (0,0) at @at_px: the panel filled where it is not cut away, solids in solid lines, in
 * front, and dashed behind the panel; leads and hands in dots. @fill_ratio: opacity of the panel */
void hut_item_side_draw (cairo_t *cr,
                         const HutItem *item,
                         HutColour colour,
                         double fill_ratio,
                         HutPoint at_px,
                         double scale_px_per_mm);

/* src/draw/hut-item-view.h: an item of hardware alone, for lists, for its editor and for what hangs on
 * the pointer.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "catalog/hut-item.h"
#include "draw/hut-palette.h"
#include <cairo.h>

/* Box round all that hut_item_view_draw () shows, mm, item frame: cuts, flange, and what it takes up in
 * front and behind, leads and hands left out. Never empty: an item that shows nothing has a box of 1 mm. */
HutRect hut_item_view_bounds (const HutItem *item);

/* Draws the item with its (0,0) at @at_px: holes filled, flange and bodies in front in solid lines,
 * bodies behind the panel dashed. @fill_ratio: opacity of a hole; the rest is a third of that. */
void hut_item_view_draw (cairo_t *cr,
                         const HutItem *item,
                         HutColour colour,
                         double fill_ratio,
                         HutPoint at_px,
                         double scale_px_per_mm);

/* src/draw/hut-opening-view.h: an opening alone, for lists and for what hangs on the pointer.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "draw/hut-palette.h"
#include <cairo.h>

/* Draws the outline of @opening with its middle at (x, y), px; @fill_ratio: opacity of its inside.
 */
void hut_opening_view_draw (cairo_t *cr,
                            const HutOpening *opening,
                            HutColour colour,
                            double fill_ratio,
                            HutPoint at_px,
                            double scale_px_per_mm);

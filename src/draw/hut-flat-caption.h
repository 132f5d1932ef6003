/* src/draw/hut-flat-caption.h: names and sizes of panels.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "draw/hut-flat-scene.h"

/* Name and thickness over the panel; stays in sight while any of the panel is visible. */
void hut_flat_caption_draw (const HutFlatScene *scene, guint panel);
/* Width under the panel, height left of it; each left out where it would not fit. */
void hut_flat_dimensions_draw (const HutFlatScene *scene, guint panel);

/**
 * hut_flat_dimension:
 * @from_px: one end on the page
 * @to_px: the other end; on the same height or straight above or below
 * @value_mm: what the label says
 * @colour: of line and label
 *
 * A dimension line with slanted ticks and its value in the middle; nothing where it is too short.
 */
void hut_flat_dimension (HutInk *ink,
                         HutPoint from_px,
                         HutPoint to_px,
                         double value_mm,
                         HutColour colour);

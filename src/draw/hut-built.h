/* src/draw/hut-built.h: the built view: the enclosure in space, drawn with Cairo.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "draw/hut-built-model.h"
#include "draw/hut-palette.h"
#include <cairo.h>

/* Where it is looked at from: parallel projection. */
typedef struct
{
  double yaw_rad;   /* 0: from the front; > 0: from further right */
  double pitch_rad; /* 0: level; > 0: from above, up to a right angle */
  double scale_px_per_mm;
  double x_px, y_px; /* where the world's origin is */
} HutBuiltView;

/* The steepest view, rad: straight from above. */
#define HUT_BUILT_PITCH_MAX_RAD G_PI_2

/* From the front right, a little from above: own choice. */
void hut_built_view_reset (HutBuiltView *self);
/* Scale and place so that the model fills the page, with a free border. */
void hut_built_view_fit (HutBuiltView *self,
                         const HutBuiltModel *model,
                         double width_px,
                         double height_px,
                         double border_px);
/* Unit vector of the direction of view, into the picture; world. */
HutVec3 hut_built_view_into (const HutBuiltView *self);
/* px */
HutPoint hut_built_view_to_px (const HutBuiltView *self, HutVec3 p);

/**
 * hut_built_draw:
 * @cr: user space in pixels, y down; (0,0) .. (@width_px, @height_px) is filled
 * @selected_panel: its edges are drawn in the colour of the selection; -1 for none
 *
 * Surfaces hide what is behind them; glazing is looked through.
 */
void hut_built_draw (cairo_t *cr,
                     const HutBuiltModel *model,
                     const HutBuiltView *view,
                     const HutPalette *palette,
                     int selected_panel,
                     double width_px,
                     double height_px);

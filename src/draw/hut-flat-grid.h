/* src/draw/hut-flat-grid.h: round distances from the lower left corner of a panel.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "draw/hut-flat-scene.h"

/* Thin lines, 10, 50 or 100 mm (or 0.5, 1 or 5 inches) apart, the finest that is not crowded. */
void hut_flat_grid_draw (const HutFlatScene *scene, guint panel);
/* The distance of two lines at a scale, mm. */
double hut_flat_grid_step_mm (double scale_px_per_mm, gboolean inches);

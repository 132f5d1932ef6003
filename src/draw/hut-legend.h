/* src/draw/hut-legend.h: what the lines and marks of the flat view mean.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "draw/hut-ink.h"

/* Size of the legend in the drawing's language, px. */
void hut_legend_measure (HutInk *ink, double *width_px, double *height_px);
/* @x_px, @y_px: upper left corner. */
void hut_legend_draw (HutInk *ink, double x_px, double y_px);

/* src/app/hut-plot-area.h: a plot on the screen.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "draw/hut-plot.h"
#include <gtk/gtk.h>

#define HUT_TYPE_PLOT_AREA (hut_plot_area_get_type ())
G_DECLARE_FINAL_TYPE (HutPlotArea, hut_plot_area, HUT, PLOT_AREA, GtkWidget)

GtkWidget *hut_plot_area_new (void);
/* @plot: (transfer full) (nullable): NULL hides it */
void hut_plot_area_take (HutPlotArea *self, HutPlot *plot);

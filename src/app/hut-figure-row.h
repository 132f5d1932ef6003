/* src/app/hut-figure-row.h: one result: words, number, and on demand how it is worked out.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "engineering/hut-figure.h"
#include <gtk/gtk.h>

#define HUT_TYPE_FIGURE_ROW (hut_figure_row_get_type ())
G_DECLARE_FINAL_TYPE (HutFigureRow, hut_figure_row, HUT, FIGURE_ROW, GtkWidget)

GtkWidget *hut_figure_row_new (void);
void hut_figure_row_show (HutFigureRow *self, const HutFigure *figure);

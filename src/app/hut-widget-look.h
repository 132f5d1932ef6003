/* src/app/hut-widget-look.h: what a widget that draws itself takes from its surroundings.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include <gtk/gtk.h>

/* Whether the surroundings are dark, told from the colour that text has there. */
gboolean hut_widget_is_dark (GtkWidget *widget);
gboolean hut_widget_is_high_contrast (GtkWidget *widget);
/* Height of small text, px. */
double hut_widget_text_px (GtkWidget *widget);

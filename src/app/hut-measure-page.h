/* src/app/hut-measure-page.h: the step Measure: machine, room, cutter, stocks.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "app/hut-session.h"
#include <gtk/gtk.h>

#define HUT_TYPE_MEASURE_PAGE (hut_measure_page_get_type ())
G_DECLARE_FINAL_TYPE (HutMeasurePage, hut_measure_page, HUT, MEASURE_PAGE, GtkWidget)

GtkWidget *hut_measure_page_new (HutSession *session);
/* Opens the section of that body, service or stock, and gives it the focus. */
void hut_measure_page_reveal (HutMeasurePage *self, const char *item);
/* Writes the coupon of a stock; its row tells how that went. */
void hut_measure_page_write_coupon (HutMeasurePage *self, const char *stock, const char *folder);

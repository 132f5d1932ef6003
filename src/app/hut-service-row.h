/* src/app/hut-service-row.h: one lead, hose or duct that crosses the wall.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "app/hut-session.h"
#include <gtk/gtk.h>

#define HUT_TYPE_SERVICE_ROW (hut_service_row_get_type ())
G_DECLARE_FINAL_TYPE (HutServiceRow, hut_service_row, HUT, SERVICE_ROW, GtkWidget)

/* @service: its id. */
GtkWidget *hut_service_row_new (HutSession *session, const char *service);

/* src/app/hut-way-row.h: one line of the services ledger: its way out, and a button for it.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "app/hut-session.h"
#include <gtk/gtk.h>

#define HUT_TYPE_WAY_ROW (hut_way_row_get_type ())
G_DECLARE_FINAL_TYPE (HutWayRow, hut_way_row, HUT, WAY_ROW, GtkWidget)

GtkWidget *hut_way_row_new (HutSession *session, const char *service);

/* src/app/hut-body-row.h: one measured body of the machine.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "app/hut-session.h"
#include <gtk/gtk.h>

#define HUT_TYPE_BODY_ROW (hut_body_row_get_type ())
G_DECLARE_FINAL_TYPE (HutBodyRow, hut_body_row, HUT, BODY_ROW, GtkWidget)

/* @body: its id. */
GtkWidget *hut_body_row_new (HutSession *session, const char *body);

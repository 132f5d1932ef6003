/* src/app/hut-extra-row.h: a plate that the user draws: its numbers, shapes, and how it looks.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "app/hut-session.h"
#include <gtk/gtk.h>

#define HUT_TYPE_EXTRA_ROW (hut_extra_row_get_type ())
G_DECLARE_FINAL_TYPE (HutExtraRow, hut_extra_row, HUT, EXTRA_ROW, GtkWidget)

GtkWidget *hut_extra_row_new (HutSession *session, const char *extra);

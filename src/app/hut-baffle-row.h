/* src/app/hut-baffle-row.h: the baffle along one side of the seam, or none.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "app/hut-session.h"
#include <gtk/gtk.h>

#define HUT_TYPE_BAFFLE_ROW (hut_baffle_row_get_type ())
G_DECLARE_FINAL_TYPE (HutBaffleRow, hut_baffle_row, HUT, BAFFLE_ROW, GtkWidget)

GtkWidget *hut_baffle_row_new (HutSession *session, HutSide side);

/* src/app/hut-sheets-view.h: how the parts lie on the sheets.
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Parts are laid out anew when the design has rested for a moment, in a worker thread.
 * Signal "packed": hut_sheets_view_get_packed () has changed. */
#pragma once
#include "app/hut-session.h"
#include "app/hut-sheet-job.h"
#include <gtk/gtk.h>

#define HUT_TYPE_SHEETS_VIEW (hut_sheets_view_get_type ())
G_DECLARE_FINAL_TYPE (HutSheetsView, hut_sheets_view, HUT, SHEETS_VIEW, GtkWidget)

GtkWidget *hut_sheets_view_new (HutSession *session);
/* (transfer none) (nullable): until "packed". */
const HutPacked *hut_sheets_view_get_packed (HutSheetsView *self);
/* TRUE while what is shown may still change by itself. */
gboolean hut_sheets_view_is_busy (HutSheetsView *self);

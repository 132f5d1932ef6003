/* src/app/hut-main-window.h: the window: steps on the left, canvas in the middle, numbers and
 * findings on the right. SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Actions (win.*): new, open, open-path (s), open-example (s), save, save-as, save-to (s), export,
 * export-to (s), cancel-export, undo, redo, delete, duplicate, add-window, add-body, add-service,
 * add-stock, step (s), zoom-in, zoom-out, zoom-fit, zoom-selection, show-machine, show-splices,
 * show-dimensions, show-legend, grid, snap, next-finding, previous-finding, close,
 * show-help-overlay. */
#pragma once
#include "app/hut-session.h"
#include <gtk/gtk.h>

#define HUT_TYPE_MAIN_WINDOW (hut_main_window_get_type ())
G_DECLARE_FINAL_TYPE (HutMainWindow, hut_main_window, HUT, MAIN_WINDOW, GtkApplicationWindow)

/* With a new design. */
GtkWidget *hut_main_window_new (GtkApplication *application);
HutSession *hut_main_window_get_session (HutMainWindow *self);
/* TRUE when the design was never touched and is in no file: another may take its place unasked. */
gboolean hut_main_window_is_untouched (HutMainWindow *self);
/* Opens a file without asking; an error is shown in the window. Returns: FALSE on error */
gboolean hut_main_window_open (HutMainWindow *self, const char *path);
/* Asks whether to take up what an earlier run left behind. */
void hut_main_window_offer_recovery (HutMainWindow *self);
/* Writes what is modified to the recovery file, at once. */
void hut_main_window_autosave (HutMainWindow *self);

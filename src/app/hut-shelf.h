/* src/app/hut-shelf.h: openings and hardware ready to be dragged onto panels.
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Properties:
 *   "session"     HutSession, set at construction
 *   "drag-scale"  double: px per mm of what hangs on the pointer; bind it to the canvas' "scale"
 * Actions: "shelf.new-item", "shelf.new-pattern", and of the chosen item "shelf.edit-item",
 *   "shelf.copy-item", "shelf.remove-item" (the user's own only)
 * Enter or a double click places the chosen opening or item at a free place of the panel with the
 * selected item, else of the first panel that has one; what lies across hinge line or seam, along it. */
#pragma once
#include "app/hut-session.h"
#include <gtk/gtk.h>

#define HUT_TYPE_SHELF (hut_shelf_get_type ())
G_DECLARE_FINAL_TYPE (HutShelf, hut_shelf, HUT, SHELF, GtkWidget)

GtkWidget *hut_shelf_new (HutSession *session);
/* Puts the text cursor into the search. */
void hut_shelf_focus_search (HutShelf *self);

/* src/app/hut-pick-list.h: the model of a list from which one row can be picked.
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Signal "picked" (guint position): by the user, not by hut_pick_list_show (). */
#pragma once
#include "app/hut-list-entry.h"
#include <gtk/gtk.h>

#define HUT_TYPE_PICK_LIST (hut_pick_list_get_type ())
G_DECLARE_FINAL_TYPE (HutPickList, hut_pick_list, HUT, PICK_LIST, GObject)

/* Fills @view with rows of @row_type, a subclass of HutListRow; Enter and a double click pick too. */
HutPickList *hut_pick_list_new (GtkListView *view, GType row_type) G_GNUC_WARN_UNUSED_RESULT;
/* Makes the list hold these. */
void hut_pick_list_sync (HutPickList *self, const HutListContent *contents, guint count);
guint hut_pick_list_get_count (HutPickList *self);
/* (transfer none): lent until the next hut_pick_list_sync () */
const HutListContent *hut_pick_list_get (HutPickList *self, guint position);
/* Marks a row; GTK_INVALID_LIST_POSITION marks none. */
void hut_pick_list_show (HutPickList *self, guint position);

/* src/app/hut-item-rows.h: one row widget per item of the design, kept in step by id.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include <gtk/gtk.h>

/* Returns: (transfer floating): the row of that item */
typedef GtkWidget *(*HutItemRowNew) (const char *item, gpointer user_data);

/* Makes the children of @box the rows of @ids (element-type utf8), in that order. Rows of ids that
 * were there stay, with their focus. */
void
hut_item_rows_sync (GtkBox *box, const GPtrArray *ids, HutItemRowNew new_row, gpointer user_data);
/* (transfer none) (nullable): the row of an item. */
GtkWidget *hut_item_rows_find (GtkBox *box, const char *item);

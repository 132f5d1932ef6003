/* src/app/hut-item-editor.h: the window in which an item of hardware is measured.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "app/hut-stockroom.h"
#include <gtk/gtk.h>

#define HUT_TYPE_ITEM_EDITOR (hut_item_editor_get_type ())
G_DECLARE_FINAL_TYPE (HutItemEditor, hut_item_editor, HUT, ITEM_EDITOR, GtkWindow)

/* @item: copied; one with an empty id is a new one, any other takes the place of the item of its id.
 * Saving puts it among the user's own items and closes the window. */
GtkWidget *hut_item_editor_new (HutStockroom *stockroom, const HutItem *item);

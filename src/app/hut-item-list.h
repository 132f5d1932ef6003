/* src/app/hut-item-list.h: all openings and windows of the design, for those who do not point.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "app/hut-session.h"
#include <gtk/gtk.h>

#define HUT_TYPE_ITEM_LIST (hut_item_list_get_type ())
G_DECLARE_FINAL_TYPE (HutItemList, hut_item_list, HUT, ITEM_LIST, GtkWidget)

/* To be called once. Signal "chosen" (const char *): the user chose that item; it is selected
 * already. */
void hut_item_list_bind (HutItemList *self, HutSession *session);

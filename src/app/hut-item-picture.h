/* src/app/hut-item-picture.h: a large drawing of an item of hardware, beside its form.
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Over one another, at one scale: from the front, its holes numbered as in the form, and from the
 * side, in a panel; with a bar that says how long a piece of the drawing is. */
#pragma once
#include "catalog/hut-item.h"
#include <gtk/gtk.h>

#define HUT_TYPE_ITEM_PICTURE (hut_item_picture_get_type ())
G_DECLARE_FINAL_TYPE (HutItemPicture, hut_item_picture, HUT, ITEM_PICTURE, GtkWidget)

/* @item: (nullable): copied */
void hut_item_picture_set_item (HutItemPicture *self, const HutItem *item);

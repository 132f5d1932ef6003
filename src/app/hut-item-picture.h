/* src/app/hut-item-picture.h: a drawing of an item of hardware: small in a list, large beside its form.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "catalog/hut-item.h"
#include <gtk/gtk.h>

#define HUT_TYPE_ITEM_PICTURE (hut_item_picture_get_type ())
G_DECLARE_FINAL_TYPE (HutItemPicture, hut_item_picture, HUT, ITEM_PICTURE, GtkWidget)

/* As large as the icons of openings and at their scale, unless it would be too small to be seen or
 * too large to fit. @item: copied */
GtkWidget *hut_item_picture_new_icon (const HutItem *item);
/* Fills whatever room a picture has that is no icon. @item: (nullable): copied */
void hut_item_picture_set_item (HutItemPicture *self, const HutItem *item);

/* src/app/hut-shelf-icon.h: a small drawing of an opening or an item, all of them at one scale.
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * One that would be too small to be seen or too large to fit has a scale of its own. */
#pragma once
#include "design/hut-design.h"
#include <gtk/gtk.h>

#define HUT_TYPE_SHELF_ICON (hut_shelf_icon_get_type ())
G_DECLARE_FINAL_TYPE (HutShelfIcon, hut_shelf_icon, HUT, SHELF_ICON, GtkWidget)

/* @opening, @item: copied */
GtkWidget *hut_shelf_icon_new_opening (const HutOpening *opening);
GtkWidget *hut_shelf_icon_new_item (const HutItem *item);

/* src/app/hut-shelf-row.h: one opening or item of hardware on the shelf, to be dragged from there.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "design/hut-design.h"
#include <gtk/gtk.h>

#define HUT_TYPE_SHELF_ROW (hut_shelf_row_get_type ())
G_DECLARE_FINAL_TYPE (HutShelfRow, hut_shelf_row, HUT, SHELF_ROW, GtkListBoxRow)

/* @index: of a ready opening */
GtkWidget *hut_shelf_row_new (guint index);
/* @item: copied; @own: the user has measured it */
GtkWidget *hut_shelf_row_new_item (const HutItem *item, gboolean own);

/* What it lies there for: one of the two, the other is NULL. (transfer none) */
const HutOpening *hut_shelf_row_get_opening (HutShelfRow *self);
const HutItem *hut_shelf_row_get_item (HutShelfRow *self);
/* The name of an item as people read it: translated, or its id when it has none. (transfer none) */
const char *hut_shelf_row_get_item_name (const HutItem *item);

const char *hut_shelf_row_get_group (HutShelfRow *self);
/* TRUE when name, group or other words have each word of @text. */
gboolean hut_shelf_row_matches (HutShelfRow *self, const char *text);
/* Scale of what hangs on the pointer while dragging, px per mm. */
void hut_shelf_row_set_drag_scale (HutShelfRow *self, double scale_px_per_mm);

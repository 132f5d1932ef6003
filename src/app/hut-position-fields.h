/* src/app/hut-position-fields.h: where an opening or window sits: panel, anchors, offsets.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "app/hut-session.h"
#include <gtk/gtk.h>

#define HUT_TYPE_POSITION_FIELDS (hut_position_fields_get_type ())
G_DECLARE_FINAL_TYPE (HutPositionFields, hut_position_fields, HUT, POSITION_FIELDS, GtkWidget)

/* To be called once, before set_item. */
void hut_position_fields_bind (HutPositionFields *self, HutSession *session);
/* @item: id of an opening or window, or NULL. */
void hut_position_fields_set_item (HutPositionFields *self, const char *item);

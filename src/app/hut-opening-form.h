/* src/app/hut-opening-form.h: the parameters of one opening.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "app/hut-session.h"
#include <gtk/gtk.h>

#define HUT_TYPE_OPENING_FORM (hut_opening_form_get_type ())
G_DECLARE_FINAL_TYPE (HutOpeningForm, hut_opening_form, HUT, OPENING_FORM, GtkWidget)

GtkWidget *hut_opening_form_new (HutSession *session);
/* @item: id of an opening, or NULL. */
void hut_opening_form_set_item (HutOpeningForm *self, const char *item);

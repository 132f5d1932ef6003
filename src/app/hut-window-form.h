/* src/app/hut-window-form.h: the parameters of one window.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "app/hut-session.h"
#include <gtk/gtk.h>

#define HUT_TYPE_WINDOW_FORM (hut_window_form_get_type ())
G_DECLARE_FINAL_TYPE (HutWindowForm, hut_window_form, HUT, WINDOW_FORM, GtkWidget)

GtkWidget *hut_window_form_new (HutSession *session);
/* @item: id of a window, or NULL. */
void hut_window_form_set_item (HutWindowForm *self, const char *item);

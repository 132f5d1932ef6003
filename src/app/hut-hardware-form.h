/* src/app/hut-hardware-form.h: the parameters of one piece of hardware.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "app/hut-session.h"
#include <gtk/gtk.h>

#define HUT_TYPE_HARDWARE_FORM (hut_hardware_form_get_type ())
G_DECLARE_FINAL_TYPE (HutHardwareForm, hut_hardware_form, HUT, HARDWARE_FORM, GtkWidget)

GtkWidget *hut_hardware_form_new (HutSession *session);
/* @item: id of a piece of hardware, or NULL. */
void hut_hardware_form_set_item (HutHardwareForm *self, const char *item);

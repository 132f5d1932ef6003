/* src/app/hut-field.h: one parameter on a page: its name, why it matters, and its control.
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * In a .ui file the control is the child. Properties: "title", "why" (one line, may be NULL).
 * The control gets its accessible name and description from them; a HutNumberEntry shows its
 * problem here, over the whole width. */
#pragma once
#include <gtk/gtk.h>

#define HUT_TYPE_FIELD (hut_field_get_type ())
G_DECLARE_FINAL_TYPE (HutField, hut_field, HUT, FIELD, GtkWidget)

GtkWidget *hut_field_new (const char *title, const char *why, GtkWidget *control);
/* What is wrong with the value although the control takes it; NULL: nothing. A problem of the control
 * itself comes first. */
void hut_field_set_problem (HutField *self, const char *problem);

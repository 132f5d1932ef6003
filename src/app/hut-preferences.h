/* src/app/hut-preferences.h: how the program looks and counts.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include <gtk/gtk.h>

#define HUT_TYPE_PREFERENCES (hut_preferences_get_type ())
G_DECLARE_FINAL_TYPE (HutPreferences, hut_preferences, HUT, PREFERENCES, GtkWindow)

GtkWidget *hut_preferences_new (GtkWindow *parent);

/* src/app/hut-application.h: the program with its windows.
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Actions (app.*): new-window, preferences, about, quit. */
#pragma once
#include <gtk/gtk.h>

#define HUT_TYPE_APPLICATION (hut_application_get_type ())
G_DECLARE_FINAL_TYPE (HutApplication, hut_application, HUT, APPLICATION, GtkApplication)

HutApplication *hut_application_new (void) G_GNUC_WARN_UNUSED_RESULT;

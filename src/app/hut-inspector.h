/* src/app/hut-inspector.h: the numbers of what is selected.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "app/hut-session.h"
#include <gtk/gtk.h>

#define HUT_TYPE_INSPECTOR (hut_inspector_get_type ())
G_DECLARE_FINAL_TYPE (HutInspector, hut_inspector, HUT, INSPECTOR, GtkWidget)

GtkWidget *hut_inspector_new (HutSession *session);

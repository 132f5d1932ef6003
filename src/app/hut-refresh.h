/* src/app/hut-refresh.h: at most one refresh per frame.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include <gtk/gtk.h>

typedef void (*HutRefresh) (GtkWidget *widget);

/* Runs @refresh once before the next frame of @widget, however often it is asked for; while the
 * widget is not on screen it waits. For what needs the derived enclosure: a drag then pays once per
 * frame. */
void hut_refresh_queue (GtkWidget *widget, HutRefresh refresh);
/* TRUE between the call and the run. */
gboolean hut_refresh_is_queued (GtkWidget *widget);

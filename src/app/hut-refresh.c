/* src/app/hut-refresh.c: at most one refresh per frame.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-app"
#include "config.h"
#include "app/hut-refresh.h"

#define QUEUED_KEY "hut-refresh-queued"

static gboolean
on_tick (GtkWidget *widget,
         GdkFrameClock *clock,
         gpointer user_data)
{
  const HutRefresh refresh = (HutRefresh)user_data;

  g_object_set_data (G_OBJECT (widget), QUEUED_KEY, NULL);
  refresh (widget);
  return G_SOURCE_REMOVE;
}

gboolean
hut_refresh_is_queued (GtkWidget *widget)
{
  g_return_val_if_fail (GTK_IS_WIDGET (widget), FALSE);
  return g_object_get_data (G_OBJECT (widget), QUEUED_KEY) != NULL;
}

void
hut_refresh_queue (GtkWidget *widget,
                   HutRefresh refresh)
{
  g_return_if_fail (GTK_IS_WIDGET (widget) && refresh != NULL);

  if (hut_refresh_is_queued (widget))
    return;
  g_object_set_data (G_OBJECT (widget), QUEUED_KEY, GINT_TO_POINTER (TRUE));
  gtk_widget_add_tick_callback (widget, on_tick, (gpointer)refresh, NULL);
}

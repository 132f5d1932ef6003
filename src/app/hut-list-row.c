/* src/app/hut-list-row.c: a row that shows an entry of a list and follows it.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-app"
#include "config.h"
#include "app/hut-list-row.h"

typedef struct
{
  HutListEntry *entry;
} HutListRowPrivate;

G_DEFINE_ABSTRACT_TYPE_WITH_PRIVATE (HutListRow, hut_list_row, GTK_TYPE_WIDGET)

static void
show_entry (HutListRow *self)
{
  const HutListRowPrivate *priv = hut_list_row_get_instance_private (self);

  HUT_LIST_ROW_GET_CLASS (self)->show (self, hut_list_entry_get (priv->entry));
}

static void
hut_list_row_dispose (GObject *object)
{
  GtkWidget *child;

  hut_list_row_set_entry (HUT_LIST_ROW (object), NULL);
  while ((child = gtk_widget_get_first_child (GTK_WIDGET (object))) != NULL)
    gtk_widget_unparent (child);
  G_OBJECT_CLASS (hut_list_row_parent_class)->dispose (object);
}

static void
hut_list_row_class_init (HutListRowClass *class)
{
  G_OBJECT_CLASS (class)->dispose = hut_list_row_dispose;
}

static void
hut_list_row_init (HutListRow *self)
{
}

void
hut_list_row_set_entry (HutListRow *self,
                        HutListEntry *entry)
{
  g_return_if_fail (HUT_IS_LIST_ROW (self));

  HutListRowPrivate *priv = hut_list_row_get_instance_private (self);

  if (priv->entry != NULL)
    g_signal_handlers_disconnect_by_data (priv->entry, self);
  g_set_object (&priv->entry, entry);
  if (entry == NULL)
    return;
  g_signal_connect_object (entry, "changed", G_CALLBACK (show_entry), self, G_CONNECT_SWAPPED);
  show_entry (self);
}

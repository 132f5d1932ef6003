/* src/app/hut-item-row.c: one opening or window in a list: its shape, name, and where it is.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-app"
#include "config.h"
#include "app/hut-item-row.h"

struct _HutItemRow
{
  GtkWidget parent_instance;

  GtkWidget *content;
  GtkImage *icon;
  GtkLabel *title, *subtitle;

  HutListEntry *entry;
};

G_DEFINE_TYPE (HutItemRow, hut_item_row, GTK_TYPE_WIDGET)

static void
show_entry (HutItemRow *self)
{
  const HutListContent *content = hut_list_entry_get (self->entry);

  gtk_image_set_from_icon_name (self->icon, content->icon_name);
  gtk_label_set_text (self->title, content->heading);
  gtk_label_set_text (self->subtitle, content->text);
}

static void
hut_item_row_dispose (GObject *object)
{
  HutItemRow *self = HUT_ITEM_ROW (object);

  hut_item_row_set_entry (self, NULL);
  g_clear_pointer (&self->content, gtk_widget_unparent);
  G_OBJECT_CLASS (hut_item_row_parent_class)->dispose (object);
}

static void
hut_item_row_class_init (HutItemRowClass *class)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (class);

  G_OBJECT_CLASS (class)->dispose = hut_item_row_dispose;
  gtk_widget_class_set_css_name (widget_class, "listed");
  gtk_widget_class_set_template_from_resource (widget_class,
                                               "/org/hutchwright/Hutchwright/hut-item-row.ui");
  gtk_widget_class_bind_template_child (widget_class, HutItemRow, content);
  gtk_widget_class_bind_template_child (widget_class, HutItemRow, icon);
  gtk_widget_class_bind_template_child (widget_class, HutItemRow, title);
  gtk_widget_class_bind_template_child (widget_class, HutItemRow, subtitle);
}

static void
hut_item_row_init (HutItemRow *self)
{
  gtk_widget_init_template (GTK_WIDGET (self));
}

GtkWidget *
hut_item_row_new (void)
{
  return g_object_new (HUT_TYPE_ITEM_ROW, NULL);
}

void
hut_item_row_set_entry (HutItemRow *self,
                        HutListEntry *entry)
{
  g_return_if_fail (HUT_IS_ITEM_ROW (self));

  if (self->entry != NULL)
    g_signal_handlers_disconnect_by_data (self->entry, self);
  g_set_object (&self->entry, entry);
  if (entry == NULL)
    return;
  g_signal_connect_object (entry, "changed", G_CALLBACK (show_entry), self, G_CONNECT_SWAPPED);
  show_entry (self);
}

/* src/app/hut-item-row.c: one opening or window in a list: its shape, name, and where it is.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-app"
#include "config.h"
#include "app/hut-item-row.h"

struct _HutItemRow
{
  HutListRow parent_instance;

  GtkImage *icon;
  GtkLabel *title, *subtitle;
};

G_DEFINE_TYPE (HutItemRow, hut_item_row, HUT_TYPE_LIST_ROW)

static void
hut_item_row_show (HutListRow *row,
                   const HutListContent *content)
{
  HutItemRow *self = HUT_ITEM_ROW (row);

  gtk_image_set_from_icon_name (self->icon, content->icon_name);
  gtk_label_set_text (self->title, content->heading);
  gtk_label_set_text (self->subtitle, content->text);
}

static void
hut_item_row_class_init (HutItemRowClass *class)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (class);

  HUT_LIST_ROW_CLASS (class)->show = hut_item_row_show;
  gtk_widget_class_set_css_name (widget_class, "listed");
  gtk_widget_class_set_template_from_resource (widget_class,
                                               "/org/hutchwright/Hutchwright/hut-item-row.ui");
  gtk_widget_class_bind_template_child (widget_class, HutItemRow, icon);
  gtk_widget_class_bind_template_child (widget_class, HutItemRow, title);
  gtk_widget_class_bind_template_child (widget_class, HutItemRow, subtitle);
}

static void
hut_item_row_init (HutItemRow *self)
{
  gtk_widget_init_template (GTK_WIDGET (self));
}

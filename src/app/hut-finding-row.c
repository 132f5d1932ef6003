/* src/app/hut-finding-row.c: one finding: severity as shape and word, number as on the canvas,
 * sentence. SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-app"
#include "config.h"
#include "app/hut-finding-row.h"

struct _HutFindingRow
{
  GtkWidget parent_instance;

  GtkWidget *content;
  GtkImage *icon;
  GtkLabel *number, *severity, *sentence;

  HutListEntry *entry;
  const char *style; /* CSS class that is set; static */
};

G_DEFINE_TYPE (HutFindingRow, hut_finding_row, GTK_TYPE_WIDGET)

static void
show_entry (HutFindingRow *self)
{
  const HutListContent *content = hut_list_entry_get (self->entry);
  g_autofree char *number = g_strdup_printf ("%u", content->number);

  gtk_image_set_from_icon_name (self->icon, content->icon_name);
  gtk_label_set_text (self->number, number);
  gtk_label_set_text (self->severity, content->heading);
  gtk_label_set_text (self->sentence, content->text);
  if (g_strcmp0 (self->style, content->style) == 0)
    return;
  if (self->style != NULL)
    gtk_widget_remove_css_class (GTK_WIDGET (self), self->style);
  self->style = content->style;
  if (self->style != NULL)
    gtk_widget_add_css_class (GTK_WIDGET (self), self->style);
}

static void
hut_finding_row_dispose (GObject *object)
{
  HutFindingRow *self = HUT_FINDING_ROW (object);

  hut_finding_row_set_entry (self, NULL);
  g_clear_pointer (&self->content, gtk_widget_unparent);
  G_OBJECT_CLASS (hut_finding_row_parent_class)->dispose (object);
}

static void
hut_finding_row_class_init (HutFindingRowClass *class)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (class);

  G_OBJECT_CLASS (class)->dispose = hut_finding_row_dispose;
  gtk_widget_class_set_css_name (widget_class, "finding");
  gtk_widget_class_set_template_from_resource (widget_class,
                                               "/org/hutchwright/Hutchwright/hut-finding-row.ui");
  gtk_widget_class_bind_template_child (widget_class, HutFindingRow, content);
  gtk_widget_class_bind_template_child (widget_class, HutFindingRow, icon);
  gtk_widget_class_bind_template_child (widget_class, HutFindingRow, number);
  gtk_widget_class_bind_template_child (widget_class, HutFindingRow, severity);
  gtk_widget_class_bind_template_child (widget_class, HutFindingRow, sentence);
}

static void
hut_finding_row_init (HutFindingRow *self)
{
  gtk_widget_init_template (GTK_WIDGET (self));
}

GtkWidget *
hut_finding_row_new (void)
{
  return g_object_new (HUT_TYPE_FINDING_ROW, NULL);
}

void
hut_finding_row_set_entry (HutFindingRow *self,
                           HutListEntry *entry)
{
  g_return_if_fail (HUT_IS_FINDING_ROW (self));

  if (self->entry != NULL)
    g_signal_handlers_disconnect_by_data (self->entry, self);
  g_set_object (&self->entry, entry);
  if (entry == NULL)
    return;
  g_signal_connect_object (entry, "changed", G_CALLBACK (show_entry), self, G_CONNECT_SWAPPED);
  show_entry (self);
}

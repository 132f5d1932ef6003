/* src/app/hut-source-row.c: where some numbers of an item come from.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-app"
#include "config.h"
#include "app/hut-source-row.h"
#include <glib/gi18n.h>

struct _HutSourceRow
{
  HutDraftRow parent_instance;

  GtkEditable *of, *source;
  GtkWidget *remove;
};

G_DEFINE_FINAL_TYPE (HutSourceRow, hut_source_row, HUT_TYPE_DRAFT_ROW)

static void
set_text (GtkEditable *entry,
          const char *text)
{
  if (g_strcmp0 (gtk_editable_get_text (entry), text) != 0)
    gtk_editable_set_text (entry, text);
}

static void
hut_source_row_show (HutDraftRow *row,
                     const HutItem *item,
                     guint index)
{
  HutSourceRow *self = HUT_SOURCE_ROW (row);
  const HutItemSource *source = g_ptr_array_index (item->sources, index);
  /* Translators: %u counts the sources of an item's numbers */
  g_autofree char *of = g_strdup_printf (_ ("Source %u, for which numbers"), index + 1),
                  *from = g_strdup_printf (_ ("Source %u, where they come from"), index + 1),
                  *away = g_strdup_printf (_ ("Remove Source %u"), index + 1);

  set_text (self->of, source->of);
  set_text (self->source, source->source);
  gtk_accessible_update_property (GTK_ACCESSIBLE (self->of), GTK_ACCESSIBLE_PROPERTY_LABEL, of, -1);
  gtk_accessible_update_property (GTK_ACCESSIBLE (self->source), GTK_ACCESSIBLE_PROPERTY_LABEL,
                                  from, -1);
  hut_draft_row_name_remover (row, self->remove, away);
}

static void
hut_source_row_write (HutDraftRow *row,
                      HutItem *item,
                      guint index)
{
  HutSourceRow *self = HUT_SOURCE_ROW (row);
  HutItemSource *source = g_ptr_array_index (item->sources, index);

  g_free (source->of);
  g_free (source->source);
  source->of = g_strdup (gtk_editable_get_text (self->of));
  source->source = g_strdup (gtk_editable_get_text (self->source));
}

/* Text is applied as it is typed. */
static gboolean
hut_source_row_commit (HutDraftRow *row)
{
  return TRUE;
}

static void
hut_source_row_class_init (HutSourceRowClass *class)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (class);
  HutDraftRowClass *row_class = HUT_DRAFT_ROW_CLASS (class);

  row_class->show = hut_source_row_show;
  row_class->write = hut_source_row_write;
  row_class->commit = hut_source_row_commit;
  gtk_widget_class_set_template_from_resource (widget_class,
                                               "/org/hutchwright/Hutchwright/hut-source-row.ui");
  gtk_widget_class_bind_template_child (widget_class, HutSourceRow, of);
  gtk_widget_class_bind_template_child (widget_class, HutSourceRow, source);
  gtk_widget_class_bind_template_child (widget_class, HutSourceRow, remove);
  gtk_widget_class_bind_template_callback (widget_class, hut_draft_row_changed);
}

static void
hut_source_row_init (HutSourceRow *self)
{
  gtk_widget_init_template (GTK_WIDGET (self));
  hut_draft_row_set_remover (HUT_DRAFT_ROW (self), self->remove);
}

/* src/app/hut-point-row.c: one point of a fan's curve, while it is being measured.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-app"
#include "config.h"
#include "app/hut-point-row.h"
#include "app/hut-number-entry.h"
#include <glib/gi18n.h>

struct _HutPointRow
{
  HutDraftRow parent_instance;

  GtkLabel *number;
  HutNumberEntry *flow, *pressure;
  GtkWidget *remove;
};

G_DEFINE_FINAL_TYPE (HutPointRow, hut_point_row, HUT_TYPE_DRAFT_ROW)

static void
hut_point_row_show (HutDraftRow *row,
                    const HutItem *item,
                    guint index)
{
  HutPointRow *self = HUT_POINT_ROW (row);
  const HutFanPoint point = g_array_index (item->curve, HutFanPoint, index);
  /* Translators: %u counts the points of a fan's curve */
  g_autofree char *count = g_strdup_printf ("%u", index + 1),
                  *flow = g_strdup_printf (_ ("Point %u, flow"), index + 1),
                  *pressure = g_strdup_printf (_ ("Point %u, pressure"), index + 1),
                  *away = g_strdup_printf (_ ("Remove Point %u"), index + 1);

  gtk_label_set_text (self->number, count);
  g_object_set (self->flow, "title", flow, NULL);
  g_object_set (self->pressure, "title", pressure, NULL);
  hut_number_entry_set_value (self->flow, point.flow_m3_h);
  hut_number_entry_set_value (self->pressure, point.pressure_pa);
  hut_draft_row_name_remover (row, self->remove, away);
}

static void
hut_point_row_write (HutDraftRow *row,
                     HutItem *item,
                     guint index)
{
  HutPointRow *self = HUT_POINT_ROW (row);

  g_array_index (item->curve, HutFanPoint, index)
      = (HutFanPoint){ hut_number_entry_get_value (self->flow),
                       hut_number_entry_get_value (self->pressure) };
}

static gboolean
hut_point_row_commit (HutDraftRow *row)
{
  HutPointRow *self = HUT_POINT_ROW (row);
  const gboolean flow = hut_number_entry_commit (self->flow);

  return hut_number_entry_commit (self->pressure) && flow;
}

static void
hut_point_row_class_init (HutPointRowClass *class)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (class);
  HutDraftRowClass *row_class = HUT_DRAFT_ROW_CLASS (class);

  row_class->show = hut_point_row_show;
  row_class->write = hut_point_row_write;
  row_class->commit = hut_point_row_commit;
  g_type_ensure (HUT_TYPE_NUMBER_ENTRY);
  gtk_widget_class_set_template_from_resource (widget_class,
                                               "/org/hutchwright/Hutchwright/hut-point-row.ui");
  gtk_widget_class_bind_template_child (widget_class, HutPointRow, number);
  gtk_widget_class_bind_template_child (widget_class, HutPointRow, flow);
  gtk_widget_class_bind_template_child (widget_class, HutPointRow, pressure);
  gtk_widget_class_bind_template_child (widget_class, HutPointRow, remove);
  gtk_widget_class_bind_template_callback (widget_class, hut_draft_row_changed);
}

static void
hut_point_row_init (HutPointRow *self)
{
  gtk_widget_init_template (GTK_WIDGET (self));
  hut_draft_row_set_remover (HUT_DRAFT_ROW (self), self->remove);
}

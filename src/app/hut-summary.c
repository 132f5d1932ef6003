/* src/app/hut-summary.c: the enclosure as a whole, in a few numbers.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-app"
#include "config.h"
#include "app/hut-summary.h"
#include "app/hut-refresh.h"
#include "app/hut-settings.h"
#include <glib/gi18n.h>

#define M3_PER_MM3 1e-9

struct _HutSummary
{
  GtkWidget parent_instance;

  GtkLabel *outer, *inside, *parts, *stock_use, *splices, *mass;

  HutSession *session;
};

G_DEFINE_TYPE (HutSummary, hut_summary, GTK_TYPE_WIDGET)

static char *
dup_size (HutVec3 size_mm)
{
  const HutUnits units = hut_settings_get_units (hut_settings_get_default ());
  g_autofree char *width = hut_quantity_dup_text (HUT_QUANTITY_LENGTH, units, size_mm.x);
  g_autofree char *depth = hut_quantity_dup_text (HUT_QUANTITY_LENGTH, units, size_mm.y);
  g_autofree char *height = hut_quantity_dup_text_with_unit (HUT_QUANTITY_LENGTH, units, size_mm.z);

  /* Translators: width × depth × height; the last one has the unit */
  return g_strdup_printf (_("%s × %s × %s"), width, depth, height);
}

static void
show_size (GtkLabel *label,
           gboolean whole,
           HutVec3 size_mm)
{
  g_autofree char *text = whole ? dup_size (size_mm) : g_strdup (_("not yet"));

  gtk_label_set_text (label, text);
}

static double
mass_kg (const HutPart *part)
{
  return hut_region_area_mm2 (part->region) * part->thickness_mm * M3_PER_MM3
         * part->stock->density_kg_m3;
}

static void
show_parts (HutSummary *self,
            const HutPartSet *set)
{
  g_autoptr (GString) stocks = g_string_new (NULL);
  g_autofree char *mass = NULL, *parts = NULL, *splices = NULL;
  double total_kg = 0.0;
  guint bought_count = 0;

  for (guint i = 0; i < set->parts->len; i++)
    {
      const HutPart *part = g_ptr_array_index (set->parts, i);
      gboolean named = FALSE;

      total_kg += mass_kg (part);
      bought_count += part->bought ? 1 : 0;
      for (guint k = 0; k < i && !named; k++)
        named = ((const HutPart *)g_ptr_array_index (set->parts, k))->stock == part->stock;
      if (!named)
        g_string_append_printf (stocks, "%s%s", stocks->len > 0 ? ", " : "", part->stock->name);
    }
  parts = bought_count == 0 ? g_strdup_printf (ngettext ("%u to cut", "%u to cut", set->parts->len),
                                               set->parts->len)
                            /* Translators: numbers of parts */
                            : g_strdup_printf (_("%u to cut, %u bought"),
                                               set->parts->len - bought_count, bought_count);
  splices = g_strdup_printf ("%u", set->splices->len);
  mass = hut_quantity_dup_text_with_unit (HUT_QUANTITY_MASS, HUT_UNITS_MM, total_kg);
  gtk_label_set_text (self->parts, parts);
  gtk_label_set_text (self->splices, splices);
  gtk_label_set_text (self->stock_use, stocks->len > 0 ? stocks->str : "–");
  gtk_label_set_text (self->mass, mass);
}

static void
refresh (GtkWidget *widget)
{
  HutSummary *self = HUT_SUMMARY (widget);
  const HutAssembly *assembly = hut_session_get_assembly (self->session);
  const HutBox3 *inside = &assembly->inside;

  show_size (self->outer, assembly->whole, assembly->outer_mm);
  show_size (self->inside, assembly->whole,
             (HutVec3){ inside->max.x - inside->min.x, inside->max.y - inside->min.y,
                        inside->max.z - inside->min.z });
  show_parts (self, hut_session_get_parts (self->session));
}

static void
on_derived (HutSummary *self)
{
  hut_refresh_queue (GTK_WIDGET (self), refresh);
}

static void
hut_summary_dispose (GObject *object)
{
  HutSummary *self = HUT_SUMMARY (object);
  GtkWidget *child;

  while ((child = gtk_widget_get_first_child (GTK_WIDGET (self))) != NULL)
    gtk_widget_unparent (child);
  g_clear_object (&self->session);
  G_OBJECT_CLASS (hut_summary_parent_class)->dispose (object);
}

static void
hut_summary_class_init (HutSummaryClass *class)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (class);

  G_OBJECT_CLASS (class)->dispose = hut_summary_dispose;
  gtk_widget_class_set_template_from_resource (widget_class,
                                               "/org/hutchwright/Hutchwright/hut-summary.ui");
  gtk_widget_class_bind_template_child (widget_class, HutSummary, outer);
  gtk_widget_class_bind_template_child (widget_class, HutSummary, inside);
  gtk_widget_class_bind_template_child (widget_class, HutSummary, parts);
  gtk_widget_class_bind_template_child (widget_class, HutSummary, stock_use);
  gtk_widget_class_bind_template_child (widget_class, HutSummary, splices);
  gtk_widget_class_bind_template_child (widget_class, HutSummary, mass);
}

static void
hut_summary_init (HutSummary *self)
{
  gtk_widget_init_template (GTK_WIDGET (self));
}

GtkWidget *
hut_summary_new (HutSession *session)
{
  g_return_val_if_fail (HUT_IS_SESSION (session), NULL);

  HutSummary *self = g_object_new (HUT_TYPE_SUMMARY, NULL);

  self->session = g_object_ref (session);
  g_signal_connect_object (session, "derived", G_CALLBACK (on_derived), self, G_CONNECT_SWAPPED);
  g_signal_connect_object (hut_settings_get_default (), "notify::units", G_CALLBACK (on_derived),
                           self, G_CONNECT_SWAPPED);
  on_derived (self);
  return GTK_WIDGET (self);
}

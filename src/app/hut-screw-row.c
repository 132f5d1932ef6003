/* src/app/hut-screw-row.c: one screw hole in the editor of an item.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-app"
#include "config.h"
#include "app/hut-screw-row.h"
#include "app/hut-choice-list.h"
#include "app/hut-number-entry.h"
#include <glib/gi18n.h>

struct _HutScrewRow
{
  GtkWidget parent_instance;

  HutNumberEntry *across, *up;
  GtkDropDown *thread;
  GtkWidget *remove;

  HutItemCut cut;
  gboolean filling;
};

static guint changed_signal, removed_signal;

G_DEFINE_TYPE (HutScrewRow, hut_screw_row, GTK_TYPE_WIDGET)

/* ---- threads: bolts first, then wood screws; in the order of the table ----------------------- */

/* Wood screws that the editor offers, mm. Own choice: those with a pilot in the chart. */
static const double wood_mm[] = { 2.5, 3.0, 3.5, 4.0, 4.5, 5.0 };

static void
fill_threads (HutScrewRow *self)
{
  g_autoptr (GPtrArray) names = g_ptr_array_new_with_free_func (g_free);
  guint count = 0;
  const HutScrew *screws = hut_screw_list (&count);

  for (guint i = 0; i < count; i++)
    {
      g_autofree char *size
          = hut_quantity_dup_text (HUT_QUANTITY_LENGTH, HUT_UNITS_MM, screws[i].thread_mm);

      /* Translators: a metric thread, such as M4 */
      g_ptr_array_add (names, g_strdup_printf (_ ("M%s"), size));
    }
  for (guint i = 0; i < G_N_ELEMENTS (wood_mm); i++)
    {
      g_autofree char *size
          = hut_quantity_dup_text (HUT_QUANTITY_LENGTH, HUT_UNITS_MM, wood_mm[i]);

      /* Translators: a wood screw of that diameter in mm */
      g_ptr_array_add (names, g_strdup_printf (_ ("Wood %s"), size));
    }
  hut_choice_list_set (self->thread, names);
}

static guint
find_thread (const HutItemCut *cut)
{
  guint count = 0;
  const HutScrew *screws = hut_screw_list (&count);

  for (guint i = 0; !cut->wood_screw && i < count; i++)
    if (screws[i].thread_mm == cut->thread_mm)
      return i;
  for (guint i = 0; cut->wood_screw && i < G_N_ELEMENTS (wood_mm); i++)
    if (wood_mm[i] == cut->thread_mm)
      return count + i;
  return GTK_INVALID_LIST_POSITION; /* an item of another size keeps it until one is chosen */
}

static void
on_thread_changed (HutScrewRow *self)
{
  const guint position = gtk_drop_down_get_selected (self->thread);
  guint count = 0;
  const HutScrew *screws = hut_screw_list (&count);

  if (self->filling || position == GTK_INVALID_LIST_POSITION)
    return;
  self->cut.wood_screw = position >= count;
  self->cut.thread_mm = position < count ? screws[position].thread_mm : wood_mm[position - count];
  g_signal_emit (self, changed_signal, 0);
}

/* ---- place ----------------------------------------------------------------------------------- */

static void
on_across (HutScrewRow *self,
           double value)
{
  self->cut.at.u = value;
  g_signal_emit (self, changed_signal, 0);
}

static void
on_up (HutScrewRow *self,
       double value)
{
  self->cut.at.v = value;
  g_signal_emit (self, changed_signal, 0);
}

static void
on_remove (HutScrewRow *self)
{
  g_signal_emit (self, removed_signal, 0);
}

/* ---- widget ---------------------------------------------------------------------------------- */

static void
hut_screw_row_dispose (GObject *object)
{
  GtkWidget *child;

  while ((child = gtk_widget_get_first_child (GTK_WIDGET (object))) != NULL)
    gtk_widget_unparent (child);
  G_OBJECT_CLASS (hut_screw_row_parent_class)->dispose (object);
}

static void
hut_screw_row_class_init (HutScrewRowClass *class)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (class);

  G_OBJECT_CLASS (class)->dispose = hut_screw_row_dispose;
  g_type_ensure (HUT_TYPE_NUMBER_ENTRY);
  changed_signal = g_signal_new ("changed", G_TYPE_FROM_CLASS (class), G_SIGNAL_RUN_LAST, 0, NULL,
                                 NULL, NULL, G_TYPE_NONE, 0);
  removed_signal = g_signal_new ("removed", G_TYPE_FROM_CLASS (class), G_SIGNAL_RUN_LAST, 0, NULL,
                                 NULL, NULL, G_TYPE_NONE, 0);
  gtk_widget_class_set_template_from_resource (widget_class,
                                               "/org/hutchwright/Hutchwright/hut-screw-row.ui");
  gtk_widget_class_bind_template_child (widget_class, HutScrewRow, across);
  gtk_widget_class_bind_template_child (widget_class, HutScrewRow, up);
  gtk_widget_class_bind_template_child (widget_class, HutScrewRow, thread);
  gtk_widget_class_bind_template_child (widget_class, HutScrewRow, remove);
}

static void
hut_screw_row_init (HutScrewRow *self)
{
  gtk_widget_init_template (GTK_WIDGET (self));
  hut_choice_list_style (self->thread);
}

GtkWidget *
hut_screw_row_new (guint number,
                   const HutItemCut *cut)
{
  g_return_val_if_fail (cut != NULL, NULL);

  HutScrewRow *self = g_object_new (HUT_TYPE_SCREW_ROW, NULL);
  /* Translators: names for screen readers; %u counts the holes of an item */
  g_autofree char *across = g_strdup_printf (_ ("Hole %u, across"), number),
                  *up = g_strdup_printf (_ ("Hole %u, upwards"), number),
                  *thread = g_strdup_printf (_ ("Hole %u, screw"), number),
                  *away = g_strdup_printf (_ ("Remove Hole %u"), number);

  self->cut = *cut;
  self->filling = TRUE;
  fill_threads (self);
  gtk_drop_down_set_selected (self->thread, find_thread (cut));
  hut_number_entry_set_value (self->across, cut->at.u);
  hut_number_entry_set_value (self->up, cut->at.v);
  self->filling = FALSE;
  g_object_set (self->across, "title", across, NULL);
  g_object_set (self->up, "title", up, NULL);
  gtk_accessible_update_property (GTK_ACCESSIBLE (self->thread), GTK_ACCESSIBLE_PROPERTY_LABEL,
                                  thread, -1);
  gtk_accessible_update_property (GTK_ACCESSIBLE (self->remove), GTK_ACCESSIBLE_PROPERTY_LABEL,
                                  away, -1);
  gtk_widget_set_tooltip_text (self->remove, away);
  g_signal_connect_swapped (self->across, "committed", G_CALLBACK (on_across), self);
  g_signal_connect_swapped (self->up, "committed", G_CALLBACK (on_up), self);
  g_signal_connect_swapped (self->thread, "notify::selected", G_CALLBACK (on_thread_changed), self);
  g_signal_connect_swapped (self->remove, "clicked", G_CALLBACK (on_remove), self);
  return GTK_WIDGET (self);
}

const HutItemCut *
hut_screw_row_get_cut (HutScrewRow *self)
{
  g_return_val_if_fail (HUT_IS_SCREW_ROW (self), NULL);

  return &self->cut;
}

gboolean
hut_screw_row_commit (HutScrewRow *self)
{
  g_return_val_if_fail (HUT_IS_SCREW_ROW (self), FALSE);

  const gboolean across = hut_number_entry_commit (self->across);

  return hut_number_entry_commit (self->up) && across;
}

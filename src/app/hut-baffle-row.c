/* src/app/hut-baffle-row.c: the baffle along one side of the seam, or none.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-app"
#include "config.h"
#include "app/hut-baffle-row.h"
#include "app/hut-field.h"
#include "app/hut-form.h"
#include "app/hut-refresh.h"
#include "app/hut-session-items.h"
#include "app/hut-settings.h"
#include "app/hut-stock-list.h"
#include "assembly/hut-strip.h"
#include <glib/gi18n.h>

struct _HutBaffleRow
{
  GtkWidget parent_instance;

  HutField *fitted_field;
  GtkSwitch *fitted;
  GtkWidget *details, *carrier_field, *hold_field;
  GtkLabel *least_gap;
  GtkDropDown *carrier, *stock;
  HutNumberEntry *overlap, *gap, *hold;

  HutSide side;
  HutForm *form;
  gboolean filling;
};

G_DEFINE_TYPE (HutBaffleRow, hut_baffle_row, GTK_TYPE_WIDGET)

static const char *const side_names[HUT_SIDE_COUNT] = {
  /* Translators: side of the enclosure that a baffle stands on */
  [HUT_SIDE_FRONT] = N_ ("Front"),   [HUT_SIDE_BACK] = N_ ("Back"),
  [HUT_SIDE_LEFT] = N_ ("Left"),     [HUT_SIDE_RIGHT] = N_ ("Right"),
  [HUT_SIDE_BOTTOM] = N_ ("Bottom"), [HUT_SIDE_TOP] = N_ ("Top"),
};

/* The form names its item by a text: the side's number. */
static gpointer
locate_baffle (const HutDesign *design,
               const char *item)
{
  return hut_design_get_baffle (design, (HutSide)g_ascii_strtoull (item, NULL, 10));
}

static void
on_fitted_changed (HutBaffleRow *self)
{
  if (!self->filling)
    hut_session_set_baffle (hut_form_get_session (self->form), self->side,
                            gtk_switch_get_active (self->fitted));
}

static void
show_least_gap (GtkWidget *widget)
{
  HutBaffleRow *self = HUT_BAFFLE_ROW (widget);
  HutSession *session = hut_form_get_session (self->form);
  const HutAssembly *assembly = hut_session_get_assembly (session);
  const HutBaffle *baffle = hut_design_get_baffle (hut_session_get_design (session), self->side);
  const HutUnits units = hut_settings_get_units (hut_settings_get_default ());
  g_autofree char *number = NULL, *text = NULL;
  double least_mm;

  if (baffle == NULL)
    return;
  least_mm
      = hut_strip_least_gap_mm (assembly, self->side, baffle->shell, baffle->overlap_mm);
  gtk_widget_set_visible (GTK_WIDGET (self->least_gap), least_mm > 0.0);
  number = hut_quantity_dup_text_with_unit (HUT_QUANTITY_LENGTH, units, least_mm);
  /* Translators: a length with its unit; the strip must not touch the wall as the lid opens */
  text = g_strdup_printf (_("With less than %s it hits the wall as the lid opens."), number);
  gtk_label_set_text (self->least_gap, text);
}

static void
on_derived (HutBaffleRow *self)
{
  const HutDesign *design = hut_session_get_design (hut_form_get_session (self->form));
  const HutShell *shell = &design->shell;
  const gboolean on_edge = shell->lid == HUT_LID_TOP || shell->lid == HUT_LID_FRONT;
  const gboolean fitted = hut_design_get_baffle (design, self->side) != NULL;

  self->filling = TRUE;
  gtk_switch_set_active (self->fitted, fitted);
  self->filling = FALSE;
  gtk_widget_set_visible (GTK_WIDGET (self), hut_shell_has_seam (shell, self->side));
  gtk_widget_set_visible (self->details, fitted);
  gtk_widget_set_visible (self->carrier_field, !on_edge);
  gtk_widget_set_visible (self->hold_field, !on_edge);
  hut_refresh_queue (GTK_WIDGET (self), show_least_gap);
}

static void
hut_baffle_row_dispose (GObject *object)
{
  HutBaffleRow *self = HUT_BAFFLE_ROW (object);
  GtkWidget *child;

  g_clear_object (&self->form);
  while ((child = gtk_widget_get_first_child (GTK_WIDGET (self))) != NULL)
    gtk_widget_unparent (child);
  G_OBJECT_CLASS (hut_baffle_row_parent_class)->dispose (object);
}

static void
hut_baffle_row_class_init (HutBaffleRowClass *class)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (class);

  G_OBJECT_CLASS (class)->dispose = hut_baffle_row_dispose;
  g_type_ensure (HUT_TYPE_FIELD);
  g_type_ensure (HUT_TYPE_NUMBER_ENTRY);
  gtk_widget_class_set_template_from_resource (widget_class,
                                               "/org/hutchwright/Hutchwright/hut-baffle-row.ui");
  gtk_widget_class_bind_template_child (widget_class, HutBaffleRow, fitted_field);
  gtk_widget_class_bind_template_child (widget_class, HutBaffleRow, fitted);
  gtk_widget_class_bind_template_child (widget_class, HutBaffleRow, details);
  gtk_widget_class_bind_template_child (widget_class, HutBaffleRow, carrier);
  gtk_widget_class_bind_template_child (widget_class, HutBaffleRow, carrier_field);
  gtk_widget_class_bind_template_child (widget_class, HutBaffleRow, overlap);
  gtk_widget_class_bind_template_child (widget_class, HutBaffleRow, gap);
  gtk_widget_class_bind_template_child (widget_class, HutBaffleRow, least_gap);
  gtk_widget_class_bind_template_child (widget_class, HutBaffleRow, hold);
  gtk_widget_class_bind_template_child (widget_class, HutBaffleRow, hold_field);
  gtk_widget_class_bind_template_child (widget_class, HutBaffleRow, stock);
}

static void
hut_baffle_row_init (HutBaffleRow *self)
{
  gtk_widget_init_template (GTK_WIDGET (self));
}

GtkWidget *
hut_baffle_row_new (HutSession *session,
                    HutSide side)
{
  g_return_val_if_fail (HUT_IS_SESSION (session), NULL);
  g_return_val_if_fail ((guint)side < HUT_SIDE_COUNT, NULL);

  HutBaffleRow *self = g_object_new (HUT_TYPE_BAFFLE_ROW, NULL);
  HutForm *form = hut_form_new (session, locate_baffle);
  g_autofree char *item = g_strdup_printf ("%d", (int)side);

  self->form = form;
  self->side = side;
  g_object_set (self->fitted_field, "title", _(side_names[side]), NULL);
  hut_form_add_choice (form, self->carrier, G_STRUCT_OFFSET (HutBaffle, shell),
                       N_ ("Baffle on Base or Lid"));
  hut_form_add_number (form, self->overlap, G_STRUCT_OFFSET (HutBaffle, overlap_mm),
                       N_ ("Overlap of Baffle"));
  hut_form_add_number (form, self->gap, G_STRUCT_OFFSET (HutBaffle, gap_mm),
                       N_ ("Gap of Baffle"));
  hut_form_add_number (form, self->hold, G_STRUCT_OFFSET (HutBaffle, hold_mm),
                       N_ ("Hold of Baffle"));
  hut_form_add_reference (form, self->stock, G_STRUCT_OFFSET (HutBaffle, stock), hut_stock_list,
                          NULL, N_ ("Stock of Baffle"));
  hut_form_set_item (form, item);
  g_signal_connect_object (self->fitted, "notify::active", G_CALLBACK (on_fitted_changed), self,
                           G_CONNECT_SWAPPED);
  g_signal_connect_object (session, "derived", G_CALLBACK (on_derived), self, G_CONNECT_SWAPPED);
  g_signal_connect_object (hut_settings_get_default (), "notify::units", G_CALLBACK (on_derived),
                           self, G_CONNECT_SWAPPED);
  on_derived (self);
  return GTK_WIDGET (self);
}

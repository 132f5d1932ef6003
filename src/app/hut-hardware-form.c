/* src/app/hut-hardware-form.c: the parameters of one piece of hardware.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-app"
#include "config.h"
#include "app/hut-hardware-form.h"
#include "app/hut-field.h"
#include "app/hut-form.h"
#include "app/hut-position-fields.h"
#include "app/hut-settings.h"
#include "app/hut-stock-list.h"
#include <glib/gi18n.h>

struct _HutHardwareForm
{
  GtkWidget parent_instance;

  GtkEntry *name;
  GtkLabel *item, *pocket;
  HutPositionFields *position;
  GtkDropDown *face, *hole_class, *serves, *way, *plate_stock;
  HutNumberEntry *turn, *narrow;
  GtkSwitch *bolted, *sunk;
  GtkWidget *turn_field, *plate_stock_field, *bolted_field;

  HutForm *form;
};

G_DEFINE_TYPE (HutHardwareForm, hut_hardware_form, GTK_TYPE_WIDGET)

static gpointer
locate_hardware (const HutDesign *design,
                 const char *item)
{
  return hut_design_get_hardware (design, item);
}

/* ---- way of the pocket ----------------------------------------------------------------------- */

static int
get_way (gconstpointer target)
{
  return (int)((const HutHardware *)target)->pocket_way;
}

/* A face plate needs a stock: the thinnest there is, as the item needs a plate because the panel is
 * too thick. */
static void
set_way (HutForm *form,
         gpointer target,
         int value)
{
  HutHardware *hardware = target;
  const HutDesign *design = hut_session_get_design (hut_form_get_session (form));
  const HutStock *thinnest = NULL;

  hardware->pocket_way = (HutPocketWay)value;
  for (guint i = 0; i < design->stocks->len; i++)
    {
      const HutStock *stock = g_ptr_array_index (design->stocks, i);

      if (thinnest == NULL || hut_stock_mean_mm (stock) < hut_stock_mean_mm (thinnest))
        thinnest = stock;
    }
  if (hardware->pocket_way == HUT_POCKET_PLATE && hardware->plate_stock == NULL
      && thinnest != NULL)
    hardware->plate_stock = g_strdup (thinnest->id);
}

/* ---- what is shown --------------------------------------------------------------------------- */

static char *
dup_pocket_text (const HutPlacedHardware *placed)
{
  const HutUnits units = hut_settings_get_units (hut_settings_get_default ());

  if (placed == NULL || !placed->bored)
    return g_strdup (_("No pocket: the panel is within what it holds in."));

  g_autofree char *across
      = hut_quantity_dup_text_with_unit (HUT_QUANTITY_LENGTH, units, placed->need.bit_mm);
  g_autofree char *depth
      = hut_quantity_dup_text_with_unit (HUT_QUANTITY_LENGTH, units, placed->need.depth_mm);
  g_autofree char *floor
      = hut_quantity_dup_text_with_unit (HUT_QUANTITY_LENGTH, units, placed->need.floor_mm);

  /* Translators: diameter, depth and floor of a relief pocket, with their units */
  return g_strdup_printf (_("Pocket %s across, %s deep; it leaves a floor of %s."), across, depth,
                          floor);
}

static gboolean
has_wood_screw (const HutItem *item)
{
  for (guint i = 0; i < item->cuts->len; i++)
    if (g_array_index (item->cuts, HutItemCut, i).wood_screw)
      return TRUE;
  return FALSE;
}

static void
on_derived (HutHardwareForm *self)
{
  const HutHardware *hardware = hut_form_peek (self->form);
  HutSession *session = hut_form_get_session (self->form);
  const HutItem *item;
  g_autofree char *pocket = NULL;

  if (hardware == NULL)
    return;
  item = hut_design_get_hardware_item (hut_session_get_design (session), hardware);
  gtk_label_set_text (self->item, item != NULL ? gettext (item->name) : hardware->item);
  pocket = dup_pocket_text (
      hut_assembly_get_hardware (hut_session_get_assembly (session), hardware->id));
  gtk_label_set_text (self->pocket, pocket);
  gtk_widget_set_visible (GTK_WIDGET (self->pocket), hardware->pocket_way != HUT_POCKET_PLATE);
  gtk_widget_set_visible (self->plate_stock_field, hardware->pocket_way == HUT_POCKET_PLATE);
  gtk_widget_set_visible (self->turn_field, item == NULL || item->span == HUT_SPAN_PANEL);
  gtk_widget_set_visible (self->bolted_field, item != NULL && has_wood_screw (item));
}

static void
list_services (const HutDesign *design,
               GPtrArray *ids,
               GPtrArray *names)
{
  for (guint i = 0; i < design->machine.services->len; i++)
    {
      const HutService *service = g_ptr_array_index (design->machine.services, i);

      g_ptr_array_add (ids, g_strdup (service->id));
      g_ptr_array_add (names, g_strdup (service->name));
    }
}

static void
hut_hardware_form_dispose (GObject *object)
{
  HutHardwareForm *self = HUT_HARDWARE_FORM (object);
  GtkWidget *child;

  g_clear_object (&self->form);
  while ((child = gtk_widget_get_first_child (GTK_WIDGET (self))) != NULL)
    gtk_widget_unparent (child);
  G_OBJECT_CLASS (hut_hardware_form_parent_class)->dispose (object);
}

static void
hut_hardware_form_class_init (HutHardwareFormClass *class)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (class);

  G_OBJECT_CLASS (class)->dispose = hut_hardware_form_dispose;
  g_type_ensure (HUT_TYPE_FIELD);
  g_type_ensure (HUT_TYPE_NUMBER_ENTRY);
  g_type_ensure (HUT_TYPE_POSITION_FIELDS);
  gtk_widget_class_set_template_from_resource (widget_class,
                                               "/org/hutchwright/Hutchwright/hut-hardware-form.ui");
  gtk_widget_class_bind_template_child (widget_class, HutHardwareForm, name);
  gtk_widget_class_bind_template_child (widget_class, HutHardwareForm, item);
  gtk_widget_class_bind_template_child (widget_class, HutHardwareForm, pocket);
  gtk_widget_class_bind_template_child (widget_class, HutHardwareForm, position);
  gtk_widget_class_bind_template_child (widget_class, HutHardwareForm, face);
  gtk_widget_class_bind_template_child (widget_class, HutHardwareForm, hole_class);
  gtk_widget_class_bind_template_child (widget_class, HutHardwareForm, serves);
  gtk_widget_class_bind_template_child (widget_class, HutHardwareForm, way);
  gtk_widget_class_bind_template_child (widget_class, HutHardwareForm, plate_stock);
  gtk_widget_class_bind_template_child (widget_class, HutHardwareForm, turn);
  gtk_widget_class_bind_template_child (widget_class, HutHardwareForm, narrow);
  gtk_widget_class_bind_template_child (widget_class, HutHardwareForm, bolted);
  gtk_widget_class_bind_template_child (widget_class, HutHardwareForm, sunk);
  gtk_widget_class_bind_template_child (widget_class, HutHardwareForm, turn_field);
  gtk_widget_class_bind_template_child (widget_class, HutHardwareForm, plate_stock_field);
  gtk_widget_class_bind_template_child (widget_class, HutHardwareForm, bolted_field);
}

static void
hut_hardware_form_init (HutHardwareForm *self)
{
  gtk_widget_init_template (GTK_WIDGET (self));
}

static void
bind_fields (HutHardwareForm *self)
{
  HutForm *form = self->form;

  hut_form_add_text (form, self->name, G_STRUCT_OFFSET (HutHardware, name), N_ ("Rename Hardware"));
  hut_form_add_choice (form, self->face, G_STRUCT_OFFSET (HutHardware, face), N_ ("Face"));
  hut_form_add_number (form, self->turn, G_STRUCT_OFFSET (HutHardware, turn_deg), N_ ("Turn"));
  hut_form_add_choice (form, self->hole_class, G_STRUCT_OFFSET (HutHardware, hole_class),
                       N_ ("Screw Holes"));
  hut_form_add_reference (form, self->serves, G_STRUCT_OFFSET (HutHardware, serves), list_services,
                          /* Translators: what passes through an opening */ N_ ("Nothing"),
                          N_ ("Service of Hardware"));
  hut_form_add_derived_choice (form, self->way, NULL, get_way, set_way, N_ ("Pocket"));
  hut_form_add_reference (form, self->plate_stock, G_STRUCT_OFFSET (HutHardware, plate_stock),
                          hut_stock_list, NULL, N_ ("Face Plate"));
  hut_form_add_number (form, self->narrow, G_STRUCT_OFFSET (HutHardware, narrow_mm),
                       N_ ("Narrower Opening"));
  hut_form_add_switch (form, self->bolted, G_STRUCT_OFFSET (HutHardware, bolted),
                       N_ ("Bolts and Nuts"));
  hut_form_add_switch (form, self->sunk, G_STRUCT_OFFSET (HutHardware, sunk),
                       N_ ("Countersunk Heads"));
}

GtkWidget *
hut_hardware_form_new (HutSession *session)
{
  g_return_val_if_fail (HUT_IS_SESSION (session), NULL);

  HutHardwareForm *self = g_object_new (HUT_TYPE_HARDWARE_FORM, NULL);

  self->form = hut_form_new (session, locate_hardware);
  bind_fields (self);
  hut_position_fields_bind (self->position, session);
  g_signal_connect_object (session, "derived", G_CALLBACK (on_derived), self, G_CONNECT_SWAPPED);
  g_signal_connect_object (hut_settings_get_default (), "notify::units", G_CALLBACK (on_derived),
                           self, G_CONNECT_SWAPPED);
  return GTK_WIDGET (self);
}

void
hut_hardware_form_set_item (HutHardwareForm *self,
                            const char *item)
{
  g_return_if_fail (HUT_IS_HARDWARE_FORM (self));

  g_autofree char *kept = g_strdup (item);

  hut_position_fields_set_item (self->position, kept);
  hut_form_set_item (self->form, kept);
  on_derived (self);
}

/* src/app/hut-measure-page.c: the step Measure: machine, room, cutter, stocks.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-app"
#include "config.h"
#include "app/hut-measure-page.h"
#include "app/hut-bits.h"
#include "app/hut-body-row.h"
#include "app/hut-checked-entry.h"
#include "app/hut-field.h"
#include "app/hut-form.h"
#include "app/hut-item-rows.h"
#include "app/hut-readings.h"
#include "app/hut-service-row.h"
#include "app/hut-settings.h"
#include "app/hut-stock-row.h"
#include <glib/gi18n.h>

struct _HutMeasurePage
{
  GtkWidget parent_instance;

  GtkWidget *scroller;
  GtkEntry *machine_name, *cutter_name;
  HutNumberEntry *mass;
  HutNumberEntry *power, *lamps, *warmest, *sound, *laser_power, *laser_wavelength, *exposure;
  GtkDropDown *glow;
  HutNumberEntry *clearance_left, *clearance_right, *clearance_front, *clearance_back,
      *clearance_top;
  HutNumberEntry *room_left, *room_right, *room_front, *room_back, *room_above,
      *room_temperature, *altitude;
  GtkDropDown *cutter_kind;
  HutNumberEntry *bed_width, *bed_depth, *margin, *part_gap;
  GtkSwitch *any_angle, *tabs;
  HutNumberEntry *lead_in, *travel, *acceleration, *plunge, *spindle, *safe, *through;
  GtkWidget *router_fields;
  HutCheckedEntry *bits;
  GtkExpander *work_section, *bodies_section, *services_section, *stocks_section;
  GtkBox *bodies, *services, *stocks;

  HutSession *session;
  HutForm *form;
};

G_DEFINE_TYPE (HutMeasurePage, hut_measure_page, GTK_TYPE_WIDGET)

/* ---- bits ------------------------------------------------------------------------------------ */

static HutUnits
units (void)
{
  return hut_settings_get_units (hut_settings_get_default ());
}

static gboolean
check_bits (const char *text,
            GError **error)
{
  g_autoptr (GArray) bits_mm = hut_bits_parse (text, units (), error);

  return bits_mm != NULL;
}

static void
show_bits (HutMeasurePage *self)
{
  const HutDesign *design = hut_session_get_design (self->session);
  g_autofree char *text = hut_readings_dup_text (design->bits_mm, units ());

  hut_checked_entry_set_text (self->bits, text);
}

static gboolean
set_bits (HutDesign *design,
          gpointer user_data)
{
  const GArray *bits_mm = user_data;

  g_array_set_size (design->bits_mm, 0);
  g_array_append_vals (design->bits_mm, bits_mm->data, bits_mm->len);
  return TRUE;
}

static void
on_bits_committed (HutMeasurePage *self,
                   const char *text)
{
  g_autoptr (GArray) bits_mm = hut_bits_parse (text, units (), NULL); /* was checked */

  /* Translators: what Undo takes back. */
  if (bits_mm == NULL
      || !hut_session_edit (self->session, _("Flat-Bottom Bits"), set_bits, bits_mm))
    show_bits (self);
}

/* ---- lists ----------------------------------------------------------------------------------- */

static GtkWidget *
new_body_row (const char *item,
              gpointer user_data)
{
  return hut_body_row_new (user_data, item);
}

static GtkWidget *
new_service_row (const char *item,
                 gpointer user_data)
{
  return hut_service_row_new (user_data, item);
}

static GtkWidget *
new_stock_row (const char *item,
               gpointer user_data)
{
  return hut_stock_row_new (user_data, item);
}

static void
on_derived (HutMeasurePage *self)
{
  const HutDesign *design = hut_session_get_design (self->session);
  g_autoptr (GPtrArray) bodies = g_ptr_array_new ();
  g_autoptr (GPtrArray) services = g_ptr_array_new ();
  g_autoptr (GPtrArray) stocks = g_ptr_array_new ();

  for (guint i = 0; i < design->machine.bodies->len; i++)
    g_ptr_array_add (bodies, ((HutBody *)g_ptr_array_index (design->machine.bodies, i))->id);
  for (guint i = 0; i < design->machine.services->len; i++)
    g_ptr_array_add (services, ((HutService *)g_ptr_array_index (design->machine.services, i))->id);
  for (guint i = 0; i < design->stocks->len; i++)
    g_ptr_array_add (stocks, ((HutStock *)g_ptr_array_index (design->stocks, i))->id);
  hut_item_rows_sync (self->bodies, bodies, new_body_row, self->session);
  hut_item_rows_sync (self->services, services, new_service_row, self->session);
  hut_item_rows_sync (self->stocks, stocks, new_stock_row, self->session);
  show_bits (self);
  gtk_widget_set_visible (self->router_fields, design->cutter.kind == HUT_CUTTER_ROUTER);
}

static void
hut_measure_page_dispose (GObject *object)
{
  HutMeasurePage *self = HUT_MEASURE_PAGE (object);

  g_clear_object (&self->form);
  g_clear_pointer (&self->scroller, gtk_widget_unparent);
  g_clear_object (&self->session);
  G_OBJECT_CLASS (hut_measure_page_parent_class)->dispose (object);
}

static void
bind_machine_and_room (GtkWidgetClass *widget_class)
{
  gtk_widget_class_bind_template_child (widget_class, HutMeasurePage, machine_name);
  gtk_widget_class_bind_template_child (widget_class, HutMeasurePage, mass);
  gtk_widget_class_bind_template_child (widget_class, HutMeasurePage, clearance_left);
  gtk_widget_class_bind_template_child (widget_class, HutMeasurePage, clearance_right);
  gtk_widget_class_bind_template_child (widget_class, HutMeasurePage, clearance_front);
  gtk_widget_class_bind_template_child (widget_class, HutMeasurePage, clearance_back);
  gtk_widget_class_bind_template_child (widget_class, HutMeasurePage, clearance_top);
  gtk_widget_class_bind_template_child (widget_class, HutMeasurePage, room_left);
  gtk_widget_class_bind_template_child (widget_class, HutMeasurePage, room_right);
  gtk_widget_class_bind_template_child (widget_class, HutMeasurePage, room_front);
  gtk_widget_class_bind_template_child (widget_class, HutMeasurePage, room_back);
  gtk_widget_class_bind_template_child (widget_class, HutMeasurePage, room_above);
  gtk_widget_class_bind_template_child (widget_class, HutMeasurePage, room_temperature);
  gtk_widget_class_bind_template_child (widget_class, HutMeasurePage, altitude);
}

static void
bind_work (GtkWidgetClass *widget_class)
{
  gtk_widget_class_bind_template_child (widget_class, HutMeasurePage, work_section);
  gtk_widget_class_bind_template_child (widget_class, HutMeasurePage, power);
  gtk_widget_class_bind_template_child (widget_class, HutMeasurePage, lamps);
  gtk_widget_class_bind_template_child (widget_class, HutMeasurePage, warmest);
  gtk_widget_class_bind_template_child (widget_class, HutMeasurePage, sound);
  gtk_widget_class_bind_template_child (widget_class, HutMeasurePage, glow);
  gtk_widget_class_bind_template_child (widget_class, HutMeasurePage, laser_power);
  gtk_widget_class_bind_template_child (widget_class, HutMeasurePage, laser_wavelength);
  gtk_widget_class_bind_template_child (widget_class, HutMeasurePage, exposure);
}

static void
bind_cutting (GtkWidgetClass *widget_class)
{
  gtk_widget_class_bind_template_child (widget_class, HutMeasurePage, tabs);
  gtk_widget_class_bind_template_child (widget_class, HutMeasurePage, lead_in);
  gtk_widget_class_bind_template_child (widget_class, HutMeasurePage, travel);
  gtk_widget_class_bind_template_child (widget_class, HutMeasurePage, acceleration);
  gtk_widget_class_bind_template_child (widget_class, HutMeasurePage, plunge);
  gtk_widget_class_bind_template_child (widget_class, HutMeasurePage, spindle);
  gtk_widget_class_bind_template_child (widget_class, HutMeasurePage, safe);
  gtk_widget_class_bind_template_child (widget_class, HutMeasurePage, through);
  gtk_widget_class_bind_template_child (widget_class, HutMeasurePage, router_fields);
}

static void
hut_measure_page_class_init (HutMeasurePageClass *class)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (class);

  G_OBJECT_CLASS (class)->dispose = hut_measure_page_dispose;
  g_type_ensure (HUT_TYPE_CHECKED_ENTRY);
  g_type_ensure (HUT_TYPE_FIELD);
  g_type_ensure (HUT_TYPE_NUMBER_ENTRY);
  gtk_widget_class_set_template_from_resource (widget_class,
                                               "/org/hutchwright/Hutchwright/hut-measure-page.ui");
  gtk_widget_class_bind_template_child (widget_class, HutMeasurePage, scroller);
  bind_machine_and_room (widget_class);
  bind_work (widget_class);
  gtk_widget_class_bind_template_child (widget_class, HutMeasurePage, cutter_name);
  gtk_widget_class_bind_template_child (widget_class, HutMeasurePage, cutter_kind);
  gtk_widget_class_bind_template_child (widget_class, HutMeasurePage, bed_width);
  gtk_widget_class_bind_template_child (widget_class, HutMeasurePage, bed_depth);
  gtk_widget_class_bind_template_child (widget_class, HutMeasurePage, margin);
  gtk_widget_class_bind_template_child (widget_class, HutMeasurePage, part_gap);
  gtk_widget_class_bind_template_child (widget_class, HutMeasurePage, any_angle);
  bind_cutting (widget_class);
  gtk_widget_class_bind_template_child (widget_class, HutMeasurePage, bits);
  gtk_widget_class_bind_template_child (widget_class, HutMeasurePage, bodies_section);
  gtk_widget_class_bind_template_child (widget_class, HutMeasurePage, services_section);
  gtk_widget_class_bind_template_child (widget_class, HutMeasurePage, stocks_section);
  gtk_widget_class_bind_template_child (widget_class, HutMeasurePage, bodies);
  gtk_widget_class_bind_template_child (widget_class, HutMeasurePage, services);
  gtk_widget_class_bind_template_child (widget_class, HutMeasurePage, stocks);
}

static void
hut_measure_page_init (HutMeasurePage *self)
{
  gtk_widget_init_template (GTK_WIDGET (self));
}

/* Binds a number of this page to a member of the design. */
#define BIND_NUMBER(control, member, label)                                                        \
  hut_form_add_number (self->form, self->control, G_STRUCT_OFFSET (HutDesign, member), label)

static void
bind_work_fields (HutMeasurePage *self)
{
  BIND_NUMBER (power, machine.work.power_w, N_ ("Power of Machine"));
  BIND_NUMBER (lamps, machine.work.lamp_w, N_ ("Power of Lamps"));
  BIND_NUMBER (warmest, machine.work.warmest_c, N_ ("Highest Temperature"));
  BIND_NUMBER (sound, machine.work.sound_db, N_ ("Sound of Machine"));
  hut_form_add_choice (self->form, self->glow, G_STRUCT_OFFSET (HutDesign, machine.work.glow),
                       N_ ("Light of Machine"));
  BIND_NUMBER (laser_power, machine.work.laser_w, N_ ("Laser Power"));
  BIND_NUMBER (laser_wavelength, machine.work.laser_nm, N_ ("Wavelength"));
  BIND_NUMBER (exposure, machine.work.exposure_s, N_ ("Viewing Time"));
}

static void
bind_cutter_fields (HutMeasurePage *self)
{
  hut_form_add_switch (self->form, self->any_angle, G_STRUCT_OFFSET (HutDesign, cutter.any_angle),
                       N_ ("Parts at Any Angle"));
  hut_form_add_switch (self->form, self->tabs, G_STRUCT_OFFSET (HutDesign, cutter.tabs),
                       N_ ("Holding Tabs"));
  BIND_NUMBER (lead_in, cutter.lead_in_mm, N_ ("Lead-In"));
  BIND_NUMBER (travel, cutter.travel_mm_min, N_ ("Travel Speed"));
  BIND_NUMBER (acceleration, cutter.acceleration_mm_s2, N_ ("Acceleration"));
  BIND_NUMBER (plunge, cutter.plunge_mm_min, N_ ("Plunge Speed"));
  BIND_NUMBER (spindle, cutter.spindle_rpm, N_ ("Spindle Speed"));
  BIND_NUMBER (safe, cutter.safe_mm, N_ ("Travel Height"));
  BIND_NUMBER (through, cutter.through_mm, N_ ("Depth Under the Sheet"));
}

static void
bind_fields (HutMeasurePage *self)
{
  hut_form_add_text (self->form, self->machine_name, G_STRUCT_OFFSET (HutDesign, machine.name),
                     N_ ("Rename Machine"));
  BIND_NUMBER (mass, machine.mass_kg, N_ ("Mass of Machine"));
  BIND_NUMBER (clearance_left, machine.clearance_mm.left, N_ ("Free Room"));
  BIND_NUMBER (clearance_right, machine.clearance_mm.right, N_ ("Free Room"));
  BIND_NUMBER (clearance_front, machine.clearance_mm.front, N_ ("Free Room"));
  BIND_NUMBER (clearance_back, machine.clearance_mm.back, N_ ("Free Room"));
  BIND_NUMBER (clearance_top, machine.clearance_mm.top, N_ ("Free Room"));
  BIND_NUMBER (room_left, room_mm.left, N_ ("Room"));
  BIND_NUMBER (room_right, room_mm.right, N_ ("Room"));
  BIND_NUMBER (room_front, room_mm.front, N_ ("Room"));
  BIND_NUMBER (room_back, room_mm.back, N_ ("Room"));
  BIND_NUMBER (room_above, room_mm.above, N_ ("Room"));
  BIND_NUMBER (room_temperature, room_mm.temperature_c, N_ ("Temperature of Room"));
  BIND_NUMBER (altitude, room_mm.altitude_m, N_ ("Height over Sea Level"));
  hut_form_add_text (self->form, self->cutter_name, G_STRUCT_OFFSET (HutDesign, cutter.name),
                     N_ ("Rename Cutter"));
  hut_form_add_choice (self->form, self->cutter_kind, G_STRUCT_OFFSET (HutDesign, cutter.kind),
                       N_ ("Kind of Cutter"));
  BIND_NUMBER (bed_width, cutter.bed_width_mm, N_ ("Bed Width"));
  BIND_NUMBER (bed_depth, cutter.bed_depth_mm, N_ ("Bed Depth"));
  BIND_NUMBER (margin, cutter.margin_mm, N_ ("Bed Margin"));
  BIND_NUMBER (part_gap, cutter.part_gap_mm, N_ ("Gap Between Parts"));
  bind_cutter_fields (self);
}

GtkWidget *
hut_measure_page_new (HutSession *session)
{
  g_return_val_if_fail (HUT_IS_SESSION (session), NULL);

  HutMeasurePage *self = g_object_new (HUT_TYPE_MEASURE_PAGE, NULL);

  self->session = g_object_ref (session);
  self->form = hut_form_new (session, NULL);
  bind_fields (self);
  bind_work_fields (self);
  hut_form_fill (self->form);
  hut_checked_entry_set_check (self->bits, check_bits);
  g_signal_connect_object (self->bits, "committed", G_CALLBACK (on_bits_committed), self,
                           G_CONNECT_SWAPPED);
  g_signal_connect_object (hut_settings_get_default (), "notify::units", G_CALLBACK (show_bits),
                           self, G_CONNECT_SWAPPED);
  g_signal_connect_object (session, "derived", G_CALLBACK (on_derived), self, G_CONNECT_SWAPPED);
  on_derived (self);
  return GTK_WIDGET (self);
}

void
hut_measure_page_reveal (HutMeasurePage *self,
                         const char *item)
{
  g_return_if_fail (HUT_IS_MEASURE_PAGE (self) && item != NULL);

  const struct
  {
    GtkBox *rows;
    GtkExpander *section;
  } places[] = {
    { self->bodies, self->bodies_section },
    { self->services, self->services_section },
    { self->stocks, self->stocks_section },
  };

  for (guint i = 0; i < G_N_ELEMENTS (places); i++)
    {
      GtkWidget *row = hut_item_rows_find (places[i].rows, item);

      if (row == NULL)
        continue;
      gtk_expander_set_expanded (places[i].section, TRUE);
      if (HUT_IS_STOCK_ROW (row))
        hut_stock_row_expand (HUT_STOCK_ROW (row));
      gtk_widget_child_focus (row, GTK_DIR_TAB_FORWARD);
      return;
    }
}

void
hut_measure_page_write_coupon (HutMeasurePage *self,
                               const char *stock,
                               const char *folder)
{
  g_return_if_fail (HUT_IS_MEASURE_PAGE (self) && stock != NULL && folder != NULL);

  GtkWidget *row = hut_item_rows_find (self->stocks, stock);

  if (row != NULL)
    hut_coupon_form_write (hut_stock_row_get_coupon (HUT_STOCK_ROW (row)), folder);
}

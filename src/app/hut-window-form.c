/* src/app/hut-window-form.c: the parameters of one window.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-app"
#include "config.h"
#include "app/hut-window-form.h"
#include "app/hut-field.h"
#include "app/hut-form.h"
#include "app/hut-position-fields.h"
#include "app/hut-settings.h"
#include "app/hut-stock-list.h"
#include "assembly/hut-window-screws.h"
#include <glib/gi18n.h>

struct _HutWindowForm
{
  GtkWidget parent_instance;

  GtkEntry *name;
  HutNumberEntry *width, *height, *radius, *overlap;
  HutPositionFields *position;
  GtkDropDown *glazing_stock, *frame_stock, *held_by;
  GtkLabel *screws;
  GtkSwitch *glazing_bought;

  HutForm *form;
};

G_DEFINE_TYPE (HutWindowForm, hut_window_form, GTK_TYPE_WIDGET)

static gpointer
locate_window (const HutDesign *design,
               const char *item)
{
  return hut_design_get_window (design, item);
}

/* ---- what holds the frame -------------------------------------------------------------------- */

/* Threads of the choices after "Glue", mm. Own choice: what sheet of 3 to 18 mm is screwed with. */
static const double threads_mm[] = { 3.0, 4.0, 5.0 };

/* A thread that is no choice (a file may hold any) shows as the next thicker one. */
static int
get_held_by (gconstpointer target)
{
  const double screw_mm = ((const HutWindow *)target)->screw_mm;

  if (screw_mm <= 0.0)
    return 0;
  for (guint i = 0; i < G_N_ELEMENTS (threads_mm); i++)
    if (screw_mm <= threads_mm[i])
      return (int)i + 1;
  return (int)G_N_ELEMENTS (threads_mm);
}

static void
set_held_by (HutForm *form,
             gpointer target,
             int value)
{
  ((HutWindow *)target)->screw_mm = value > 0 ? threads_mm[value - 1] : HUT_ROOM_FREE;
}

static void
show_screws (HutWindowForm *self)
{
  const HutWindow *window = hut_form_peek (self->form);
  const HutDesign *design = hut_session_get_design (hut_form_get_session (self->form));
  const HutUnits units = hut_settings_get_units (hut_settings_get_default ());
  HutWindowScrews screws = { 0 };

  if (window != NULL)
    screws = hut_window_screws_find (design, window);
  gtk_widget_set_visible (GTK_WIDGET (self->screws), screws.count > 0);
  if (screws.count > 0)
    {
      g_autofree char *rim = hut_quantity_dup_text_with_unit (HUT_QUANTITY_LENGTH, units,
                                                              screws.rim_mm);
      g_autofree char *length = hut_quantity_dup_text_with_unit (
          HUT_QUANTITY_LENGTH, units, MAX (screws.length_mm, screws.least_mm));
      /* Translators: number of screws; their length; how far the frame reaches past the glazing */
      g_autofree char *text = g_strdup_printf (
          _("%u screws, %s long, with nuts and two washers each; the frame reaches %s past the "
            "glazing. Under it, beside the glazing, goes packing as thick as that."),
          screws.count, length, rim);

      gtk_label_set_text (self->screws, text);
    }
}

static void
hut_window_form_dispose (GObject *object)
{
  HutWindowForm *self = HUT_WINDOW_FORM (object);
  GtkWidget *child;

  g_clear_object (&self->form);
  while ((child = gtk_widget_get_first_child (GTK_WIDGET (self))) != NULL)
    gtk_widget_unparent (child);
  G_OBJECT_CLASS (hut_window_form_parent_class)->dispose (object);
}

static void
hut_window_form_class_init (HutWindowFormClass *class)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (class);

  G_OBJECT_CLASS (class)->dispose = hut_window_form_dispose;
  g_type_ensure (HUT_TYPE_FIELD);
  g_type_ensure (HUT_TYPE_NUMBER_ENTRY);
  g_type_ensure (HUT_TYPE_POSITION_FIELDS);
  gtk_widget_class_set_template_from_resource (widget_class,
                                               "/org/hutchwright/Hutchwright/hut-window-form.ui");
  gtk_widget_class_bind_template_child (widget_class, HutWindowForm, name);
  gtk_widget_class_bind_template_child (widget_class, HutWindowForm, width);
  gtk_widget_class_bind_template_child (widget_class, HutWindowForm, height);
  gtk_widget_class_bind_template_child (widget_class, HutWindowForm, radius);
  gtk_widget_class_bind_template_child (widget_class, HutWindowForm, overlap);
  gtk_widget_class_bind_template_child (widget_class, HutWindowForm, position);
  gtk_widget_class_bind_template_child (widget_class, HutWindowForm, glazing_stock);
  gtk_widget_class_bind_template_child (widget_class, HutWindowForm, frame_stock);
  gtk_widget_class_bind_template_child (widget_class, HutWindowForm, glazing_bought);
  gtk_widget_class_bind_template_child (widget_class, HutWindowForm, held_by);
  gtk_widget_class_bind_template_child (widget_class, HutWindowForm, screws);
}

static void
hut_window_form_init (HutWindowForm *self)
{
  gtk_widget_init_template (GTK_WIDGET (self));
}

GtkWidget *
hut_window_form_new (HutSession *session)
{
  g_return_val_if_fail (HUT_IS_SESSION (session), NULL);

  HutWindowForm *self = g_object_new (HUT_TYPE_WINDOW_FORM, NULL);
  HutForm *form = hut_form_new (session, locate_window);

  self->form = form;
  hut_form_add_text (form, self->name, G_STRUCT_OFFSET (HutWindow, name), N_ ("Rename Window"));
  hut_form_add_number (form, self->width, G_STRUCT_OFFSET (HutWindow, width_mm), N_ ("Width"));
  hut_form_add_number (form, self->height, G_STRUCT_OFFSET (HutWindow, height_mm), N_ ("Height"));
  hut_form_add_number (form, self->radius, G_STRUCT_OFFSET (HutWindow, radius_mm),
                       N_ ("Corner Radius"));
  hut_form_add_number (form, self->overlap, G_STRUCT_OFFSET (HutWindow, overlap_mm),
                       N_ ("Overlap"));
  hut_form_add_reference (form, self->glazing_stock, G_STRUCT_OFFSET (HutWindow, glazing_stock),
                          hut_stock_list, NULL, N_ ("Glazing"));
  hut_form_add_reference (form, self->frame_stock, G_STRUCT_OFFSET (HutWindow, frame_stock),
                          hut_stock_list, NULL, N_ ("Frame"));
  hut_form_add_switch (form, self->glazing_bought, G_STRUCT_OFFSET (HutWindow, glazing_bought),
                       N_ ("Glazing Bought"));
  hut_form_add_derived_choice (form, self->held_by, NULL, get_held_by, set_held_by,
                               N_ ("Frame Held By"));
  hut_position_fields_bind (self->position, session);
  g_signal_connect_object (session, "derived", G_CALLBACK (show_screws), self, G_CONNECT_SWAPPED);
  g_signal_connect_object (hut_settings_get_default (), "notify::units", G_CALLBACK (show_screws),
                           self, G_CONNECT_SWAPPED);
  return GTK_WIDGET (self);
}

void
hut_window_form_set_item (HutWindowForm *self,
                          const char *item)
{
  g_return_if_fail (HUT_IS_WINDOW_FORM (self));

  g_autofree char *kept = g_strdup (item);

  hut_position_fields_set_item (self->position, kept);
  hut_form_set_item (self->form, kept);
  show_screws (self);
}

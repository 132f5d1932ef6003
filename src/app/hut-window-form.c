/* src/app/hut-window-form.c: the parameters of one window.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-app"
#include "config.h"
#include "app/hut-window-form.h"
#include "app/hut-field.h"
#include "app/hut-form.h"
#include "app/hut-position-fields.h"
#include "app/hut-stock-list.h"
#include <glib/gi18n.h>

struct _HutWindowForm
{
  GtkWidget parent_instance;

  GtkEntry *name;
  HutNumberEntry *width, *height, *radius, *overlap;
  HutPositionFields *position;
  GtkDropDown *glazing_stock, *frame_stock;
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
  hut_position_fields_bind (self->position, session);
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
}

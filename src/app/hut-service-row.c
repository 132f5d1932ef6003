/* src/app/hut-service-row.c: one lead, hose or duct that crosses the wall.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-app"
#include "config.h"
#include "app/hut-service-row.h"
#include "app/hut-field.h"
#include "app/hut-form.h"
#include "app/hut-session-items.h"
#include "app/hut-settings.h"
#include <glib/gi18n.h>

struct _HutServiceRow
{
  GtkWidget parent_instance;

  GtkEntry *name;
  GtkDropDown *kind;
  HutNumberEntry *line, *head_width, *head_height, *at_x, *at_y, *at_z;

  GtkLabel *unit;

  HutForm *form;
};

G_DEFINE_TYPE (HutServiceRow, hut_service_row, GTK_TYPE_WIDGET)

static gpointer
locate_service (const HutDesign *design,
                const char *item)
{
  return hut_design_get_service (design, item);
}

static void
on_remove (HutServiceRow *self)
{
  g_autofree char *item = g_strdup (hut_form_get_item (self->form));

  hut_session_remove_service (hut_form_get_session (self->form), item);
}

/* The numbers of the table have their unit in its corner. */
static void
show_unit (HutServiceRow *self)
{
  gtk_label_set_text (self->unit,
                      hut_quantity_unit (HUT_QUANTITY_LENGTH,
                                         hut_settings_get_units (hut_settings_get_default ())));
}

static void
hut_service_row_dispose (GObject *object)
{
  HutServiceRow *self = HUT_SERVICE_ROW (object);
  GtkWidget *child;

  g_clear_object (&self->form);
  while ((child = gtk_widget_get_first_child (GTK_WIDGET (self))) != NULL)
    gtk_widget_unparent (child);
  G_OBJECT_CLASS (hut_service_row_parent_class)->dispose (object);
}

static void
hut_service_row_class_init (HutServiceRowClass *class)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (class);

  G_OBJECT_CLASS (class)->dispose = hut_service_row_dispose;
  g_type_ensure (HUT_TYPE_FIELD);
  g_type_ensure (HUT_TYPE_NUMBER_ENTRY);
  gtk_widget_class_set_css_name (widget_class, "item");
  gtk_widget_class_set_template_from_resource (widget_class,
                                               "/org/hutchwright/Hutchwright/hut-service-row.ui");
  gtk_widget_class_bind_template_child (widget_class, HutServiceRow, name);
  gtk_widget_class_bind_template_child (widget_class, HutServiceRow, kind);
  gtk_widget_class_bind_template_child (widget_class, HutServiceRow, line);
  gtk_widget_class_bind_template_child (widget_class, HutServiceRow, head_width);
  gtk_widget_class_bind_template_child (widget_class, HutServiceRow, head_height);
  gtk_widget_class_bind_template_child (widget_class, HutServiceRow, at_x);
  gtk_widget_class_bind_template_child (widget_class, HutServiceRow, at_y);
  gtk_widget_class_bind_template_child (widget_class, HutServiceRow, at_z);
  gtk_widget_class_bind_template_child (widget_class, HutServiceRow, unit);
  gtk_widget_class_bind_template_callback (widget_class, on_remove);
}

static void
hut_service_row_init (HutServiceRow *self)
{
  gtk_widget_init_template (GTK_WIDGET (self));
}

GtkWidget *
hut_service_row_new (HutSession *session,
                     const char *service)
{
  g_return_val_if_fail (HUT_IS_SESSION (session) && service != NULL, NULL);

  HutServiceRow *self = g_object_new (HUT_TYPE_SERVICE_ROW, NULL);
  HutForm *form = hut_form_new (session, locate_service);

  self->form = form;
  hut_form_add_text (form, self->name, G_STRUCT_OFFSET (HutService, name), N_ ("Rename Service"));
  hut_form_add_choice (form, self->kind, G_STRUCT_OFFSET (HutService, kind),
                       N_ ("Kind of Service"));
  hut_form_add_number (form, self->line, G_STRUCT_OFFSET (HutService, line_mm),
                       N_ ("Line Diameter"));
  hut_form_add_number (form, self->head_width, G_STRUCT_OFFSET (HutService, head_width_mm),
                       N_ ("Head Width"));
  hut_form_add_number (form, self->head_height, G_STRUCT_OFFSET (HutService, head_height_mm),
                       N_ ("Head Height"));
  hut_form_add_number (form, self->at_x, G_STRUCT_OFFSET (HutService, at.x), N_ ("Move Service"));
  hut_form_add_number (form, self->at_y, G_STRUCT_OFFSET (HutService, at.y), N_ ("Move Service"));
  hut_form_add_number (form, self->at_z, G_STRUCT_OFFSET (HutService, at.z), N_ ("Move Service"));
  hut_form_set_item (form, service);
  g_signal_connect_object (hut_settings_get_default (), "notify::units", G_CALLBACK (show_unit),
                           self, G_CONNECT_SWAPPED);
  show_unit (self);
  return GTK_WIDGET (self);
}

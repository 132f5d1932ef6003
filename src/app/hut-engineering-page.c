/* src/app/hut-engineering-page.c: the step Engineering: duct, finish, and what holds the lid.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-app"
#include "config.h"
#include "app/hut-engineering-page.h"
#include "app/hut-field.h"
#include "app/hut-form.h"
#include <glib/gi18n.h>

struct _HutEngineeringPage
{
  GtkWidget parent_instance;

  GtkWidget *scroller;
  GtkDropDown *duct_kind, *duct_exit, *inside_coat, *outside_coat, *stay_kind;
  HutNumberEntry *duct_diameter, *duct_length, *duct_bends, *stay_count, *stay_force;

  HutForm *form;
};

G_DEFINE_TYPE (HutEngineeringPage, hut_engineering_page, GTK_TYPE_WIDGET)

static void
hut_engineering_page_dispose (GObject *object)
{
  HutEngineeringPage *self = HUT_ENGINEERING_PAGE (object);

  g_clear_object (&self->form);
  g_clear_pointer (&self->scroller, gtk_widget_unparent);
  G_OBJECT_CLASS (hut_engineering_page_parent_class)->dispose (object);
}

static void
hut_engineering_page_class_init (HutEngineeringPageClass *class)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (class);

  G_OBJECT_CLASS (class)->dispose = hut_engineering_page_dispose;
  g_type_ensure (HUT_TYPE_FIELD);
  g_type_ensure (HUT_TYPE_NUMBER_ENTRY);
  gtk_widget_class_set_template_from_resource (
      widget_class, "/org/hutchwright/Hutchwright/hut-engineering-page.ui");
  gtk_widget_class_bind_template_child (widget_class, HutEngineeringPage, scroller);
  gtk_widget_class_bind_template_child (widget_class, HutEngineeringPage, duct_kind);
  gtk_widget_class_bind_template_child (widget_class, HutEngineeringPage, duct_diameter);
  gtk_widget_class_bind_template_child (widget_class, HutEngineeringPage, duct_length);
  gtk_widget_class_bind_template_child (widget_class, HutEngineeringPage, duct_bends);
  gtk_widget_class_bind_template_child (widget_class, HutEngineeringPage, duct_exit);
  gtk_widget_class_bind_template_child (widget_class, HutEngineeringPage, inside_coat);
  gtk_widget_class_bind_template_child (widget_class, HutEngineeringPage, outside_coat);
  gtk_widget_class_bind_template_child (widget_class, HutEngineeringPage, stay_kind);
  gtk_widget_class_bind_template_child (widget_class, HutEngineeringPage, stay_count);
  gtk_widget_class_bind_template_child (widget_class, HutEngineeringPage, stay_force);
}

static void
hut_engineering_page_init (HutEngineeringPage *self)
{
  gtk_widget_init_template (GTK_WIDGET (self));
}

/* Binds a control of this page to a member of the design's shell. */
#define BIND(kind, control, member, label)                                                         \
  hut_form_add_##kind (self->form, self->control, G_STRUCT_OFFSET (HutDesign, shell.member), label)

static void
bind_fields (HutEngineeringPage *self)
{
  BIND (choice, duct_kind, duct.kind, N_ ("Kind of Duct"));
  BIND (number, duct_diameter, duct.diameter_mm, N_ ("Width of Duct"));
  BIND (number, duct_length, duct.length_mm, N_ ("Length of Duct"));
  BIND (count, duct_bends, duct.bends, N_ ("Bends of Duct"));
  BIND (choice, duct_exit, duct.exit, N_ ("End of Duct"));
  BIND (choice, inside_coat, finishing.inside, N_ ("Finish Inside"));
  BIND (choice, outside_coat, finishing.outside, N_ ("Finish Outside"));
  BIND (choice, stay_kind, stay.kind, N_ ("What Holds the Lid"));
  BIND (count, stay_count, stay.count, N_ ("Number of Stays"));
  BIND (number, stay_force, stay.force_n, N_ ("Force of Gas Spring"));
}

GtkWidget *
hut_engineering_page_new (HutSession *session)
{
  g_return_val_if_fail (HUT_IS_SESSION (session), NULL);

  HutEngineeringPage *self = g_object_new (HUT_TYPE_ENGINEERING_PAGE, NULL);

  self->form = hut_form_new (session, NULL);
  bind_fields (self);
  hut_form_fill (self->form);
  return GTK_WIDGET (self);
}

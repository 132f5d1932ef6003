/* src/app/hut-field.c: one parameter on a page: its name, why it matters, and its control.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-app"
#include "config.h"
#include "app/hut-field.h"
#include "app/hut-checked-entry.h"
#include "app/hut-number-entry.h"

struct _HutField
{
  GtkWidget parent_instance;

  GtkWidget *line, *title_label, *why_label, *problem_label;
  GtkWidget *control;
  char *problem; /* or NULL: see hut_field_set_problem () */
};

enum
{
  PROP_0,
  PROP_TITLE,
  PROP_WHY,
  PROP_COUNT
};

static GParamSpec *properties[PROP_COUNT];

static void hut_field_buildable_init (GtkBuildableIface *iface);

G_DEFINE_TYPE_WITH_CODE (HutField,
                         hut_field,
                         GTK_TYPE_WIDGET,
                         G_IMPLEMENT_INTERFACE (GTK_TYPE_BUILDABLE, hut_field_buildable_init))

static GtkBuildableIface *parent_buildable_iface;

/* Tells screen readers what the control is; GTK builds no such relation by itself. */
static void
name_control (HutField *self)
{
  const char *title = gtk_label_get_text (GTK_LABEL (self->title_label));
  const char *why = gtk_label_get_text (GTK_LABEL (self->why_label));

  if (self->control == NULL)
    return;
  if (HUT_IS_NUMBER_ENTRY (self->control) || HUT_IS_CHECKED_ENTRY (self->control))
    {
      g_object_set (self->control, "title", title, NULL);
      return;
    }
  gtk_accessible_update_property (GTK_ACCESSIBLE (self->control), GTK_ACCESSIBLE_PROPERTY_LABEL,
                                  title, GTK_ACCESSIBLE_PROPERTY_DESCRIPTION, why, -1);
}

static void
show_problem (HutField *self)
{
  const char *problem = HUT_IS_NUMBER_ENTRY (self->control)
                            ? hut_number_entry_get_problem (HUT_NUMBER_ENTRY (self->control))
                            : NULL;

  if (problem == NULL)
    problem = self->problem;
  gtk_label_set_text (GTK_LABEL (self->problem_label), problem != NULL ? problem : "");
  gtk_widget_set_visible (self->problem_label, problem != NULL);
}

static void
hut_field_set_control (HutField *self,
                       GtkWidget *control)
{
  g_return_if_fail (self->control == NULL);

  self->control = control;
  gtk_widget_set_valign (control, GTK_ALIGN_CENTER);
  gtk_box_append (GTK_BOX (self->line), control);
  if (HUT_IS_NUMBER_ENTRY (control))
    {
      g_object_set (control, "shows-problem", FALSE, NULL);
      g_signal_connect_object (control, "notify::problem", G_CALLBACK (show_problem), self,
                               G_CONNECT_SWAPPED);
    }
  name_control (self);
}

static void
hut_field_add_child (GtkBuildable *buildable,
                     GtkBuilder *builder,
                     GObject *child,
                     const char *type)
{
  HutField *self = HUT_FIELD (buildable);

  /* The children of the template come first, while `line` is not yet there. */
  if (GTK_IS_WIDGET (child) && self->line != NULL && self->control == NULL)
    hut_field_set_control (self, GTK_WIDGET (child));
  else
    parent_buildable_iface->add_child (buildable, builder, child, type);
}

static void
hut_field_buildable_init (GtkBuildableIface *iface)
{
  parent_buildable_iface = g_type_interface_peek_parent (iface);
  iface->add_child = hut_field_add_child;
}

static void
hut_field_get_property (GObject *object,
                        guint id,
                        GValue *value,
                        GParamSpec *pspec)
{
  const HutField *self = HUT_FIELD (object);

  switch (id)
    {
    case PROP_TITLE:
      g_value_set_string (value, gtk_label_get_text (GTK_LABEL (self->title_label)));
      break;
    case PROP_WHY:
      g_value_set_string (value, gtk_label_get_text (GTK_LABEL (self->why_label)));
      break;
    default:
      G_OBJECT_WARN_INVALID_PROPERTY_ID (object, id, pspec);
    }
}

static void
hut_field_set_property (GObject *object,
                        guint id,
                        const GValue *value,
                        GParamSpec *pspec)
{
  HutField *self = HUT_FIELD (object);
  const char *text = g_value_get_string (value);

  switch (id)
    {
    case PROP_TITLE:
      gtk_label_set_text (GTK_LABEL (self->title_label), text != NULL ? text : "");
      break;
    case PROP_WHY:
      gtk_label_set_text (GTK_LABEL (self->why_label), text != NULL ? text : "");
      gtk_widget_set_visible (self->why_label, text != NULL && *text != '\0');
      break;
    default:
      G_OBJECT_WARN_INVALID_PROPERTY_ID (object, id, pspec);
      return;
    }
  name_control (self);
}

static void
hut_field_dispose (GObject *object)
{
  HutField *self = HUT_FIELD (object);

  self->control = NULL;
  g_clear_pointer (&self->line, gtk_widget_unparent);
  g_clear_pointer (&self->problem_label, gtk_widget_unparent);
  G_OBJECT_CLASS (hut_field_parent_class)->dispose (object);
}

static void
hut_field_finalize (GObject *object)
{
  g_free (HUT_FIELD (object)->problem);
  G_OBJECT_CLASS (hut_field_parent_class)->finalize (object);
}

static void
hut_field_class_init (HutFieldClass *class)
{
  GObjectClass *object_class = G_OBJECT_CLASS (class);
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (class);
  const GParamFlags flags = G_PARAM_READWRITE | G_PARAM_STATIC_STRINGS;

  object_class->get_property = hut_field_get_property;
  object_class->set_property = hut_field_set_property;
  object_class->dispose = hut_field_dispose;
  object_class->finalize = hut_field_finalize;
  properties[PROP_TITLE] = g_param_spec_string ("title", NULL, NULL, "", flags);
  properties[PROP_WHY] = g_param_spec_string ("why", NULL, NULL, "", flags);
  g_object_class_install_properties (object_class, PROP_COUNT, properties);
  gtk_widget_class_set_css_name (widget_class, "field");
  gtk_widget_class_set_accessible_role (widget_class, GTK_ACCESSIBLE_ROLE_GROUP);
  gtk_widget_class_set_template_from_resource (widget_class,
                                               "/org/hutchwright/Hutchwright/hut-field.ui");
  gtk_widget_class_bind_template_child (widget_class, HutField, line);
  gtk_widget_class_bind_template_child_full (widget_class, "title", FALSE,
                                             G_STRUCT_OFFSET (HutField, title_label));
  gtk_widget_class_bind_template_child_full (widget_class, "why", FALSE,
                                             G_STRUCT_OFFSET (HutField, why_label));
  gtk_widget_class_bind_template_child_full (widget_class, "problem", FALSE,
                                             G_STRUCT_OFFSET (HutField, problem_label));
}

static void
hut_field_init (HutField *self)
{
  gtk_widget_init_template (GTK_WIDGET (self));
}

GtkWidget *
hut_field_new (const char *title,
               const char *why,
               GtkWidget *control)
{
  g_return_val_if_fail (GTK_IS_WIDGET (control), NULL);

  HutField *self = g_object_new (HUT_TYPE_FIELD, "title", title, "why", why, NULL);

  hut_field_set_control (self, control);
  return GTK_WIDGET (self);
}

void
hut_field_set_problem (HutField *self,
                       const char *problem)
{
  g_return_if_fail (HUT_IS_FIELD (self));

  if (g_strcmp0 (problem, self->problem) == 0)
    return;
  g_free (self->problem);
  self->problem = g_strdup (problem);
  show_problem (self);
}

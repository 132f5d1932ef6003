/* src/app/hut-inspector.c: the numbers of what is selected.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-app"
#include "config.h"
#include "app/hut-inspector.h"
#include "app/hut-hardware-form.h"
#include "app/hut-opening-form.h"
#include "app/hut-summary.h"
#include "app/hut-window-form.h"
#include <glib/gi18n.h>

struct _HutInspector
{
  GtkWidget parent_instance;

  GtkWidget *content, *duplicate, *delete;
  GtkLabel *title;
  GtkStack *stack;

  HutSession *session;
  HutOpeningForm *opening_form;
  HutWindowForm *window_form;
  HutHardwareForm *hardware_form;
};

G_DEFINE_TYPE (HutInspector, hut_inspector, GTK_TYPE_WIDGET)

static void
show_selected (HutInspector *self)
{
  const HutDesign *design = hut_session_get_design (self->session);
  const char *item = hut_session_get_selected (self->session);
  const HutOpening *opening = item != NULL ? hut_design_get_opening (design, item) : NULL;
  const HutWindow *window = item != NULL ? hut_design_get_window (design, item) : NULL;
  const HutHardware *hardware = item != NULL ? hut_design_get_hardware (design, item) : NULL;
  const char *name = opening != NULL    ? opening->name
                     : window != NULL   ? window->name
                     : hardware != NULL ? hardware->name
                                        : NULL;

  hut_opening_form_set_item (self->opening_form, opening != NULL ? item : NULL);
  hut_window_form_set_item (self->window_form, window != NULL ? item : NULL);
  hut_hardware_form_set_item (self->hardware_form, hardware != NULL ? item : NULL);
  gtk_stack_set_visible_child_name (self->stack, opening != NULL  ? "opening"
                                                 : window != NULL ? "window"
                                                 : hardware != NULL ? "hardware"
                                                                    : "summary");
  gtk_widget_set_visible (self->duplicate, name != NULL);
  gtk_widget_set_visible (self->delete, name != NULL);
  if (name == NULL)
    gtk_label_set_text (self->title, _("Enclosure"));
  else
    gtk_label_set_text (self->title, *name != '\0' ? name : item);
  gtk_widget_set_tooltip_text (GTK_WIDGET (self->title), gtk_label_get_text (self->title));
}

static void
hut_inspector_dispose (GObject *object)
{
  HutInspector *self = HUT_INSPECTOR (object);

  g_clear_pointer (&self->content, gtk_widget_unparent);
  g_clear_object (&self->session);
  G_OBJECT_CLASS (hut_inspector_parent_class)->dispose (object);
}

static void
hut_inspector_class_init (HutInspectorClass *class)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (class);

  G_OBJECT_CLASS (class)->dispose = hut_inspector_dispose;
  gtk_widget_class_set_template_from_resource (widget_class,
                                               "/org/hutchwright/Hutchwright/hut-inspector.ui");
  gtk_widget_class_bind_template_child (widget_class, HutInspector, content);
  gtk_widget_class_bind_template_child (widget_class, HutInspector, duplicate);
  gtk_widget_class_bind_template_child (widget_class, HutInspector, delete);
  gtk_widget_class_bind_template_child (widget_class, HutInspector, title);
  gtk_widget_class_bind_template_child (widget_class, HutInspector, stack);
}

static void
hut_inspector_init (HutInspector *self)
{
  gtk_widget_init_template (GTK_WIDGET (self));
}

GtkWidget *
hut_inspector_new (HutSession *session)
{
  g_return_val_if_fail (HUT_IS_SESSION (session), NULL);

  HutInspector *self = g_object_new (HUT_TYPE_INSPECTOR, NULL);

  self->session = g_object_ref (session);
  self->opening_form = HUT_OPENING_FORM (hut_opening_form_new (session));
  self->window_form = HUT_WINDOW_FORM (hut_window_form_new (session));
  self->hardware_form = HUT_HARDWARE_FORM (hut_hardware_form_new (session));
  gtk_stack_add_named (self->stack, hut_summary_new (session), "summary");
  gtk_stack_add_named (self->stack, GTK_WIDGET (self->opening_form), "opening");
  gtk_stack_add_named (self->stack, GTK_WIDGET (self->window_form), "window");
  gtk_stack_add_named (self->stack, GTK_WIDGET (self->hardware_form), "hardware");
  g_signal_connect_object (session, "selection-changed", G_CALLBACK (show_selected), self,
                           G_CONNECT_SWAPPED);
  /* Names change with the design. */
  g_signal_connect_object (session, "derived", G_CALLBACK (show_selected), self, G_CONNECT_SWAPPED);
  show_selected (self);
  return GTK_WIDGET (self);
}

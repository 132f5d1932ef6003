/* src/app/hut-body-row.c: one measured body of the machine.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-app"
#include "config.h"
#include "app/hut-body-row.h"
#include "app/hut-form.h"
#include "app/hut-session-items.h"
#include "app/hut-settings.h"
#include <glib/gi18n.h>

struct _HutBodyRow
{
  GtkWidget parent_instance;

  GtkEntry *name;
  GtkDropDown *kind;
  HutNumberEntry *at_x, *at_y, *at_z, *size_x, *size_y, *size_z, *travel_x, *travel_y, *travel_z;
  GtkWidget *travel_label, *keep_note;

  GtkLabel *unit;

  HutForm *form;
};

G_DEFINE_TYPE (HutBodyRow, hut_body_row, GTK_TYPE_WIDGET)

static gpointer
locate_body (const HutDesign *design,
             const char *item)
{
  return hut_design_get_body (design, item);
}

/* A box is kept by two corners and measured by one corner and its size: moving the corner moves the
 * box. A file holds no coordinate beyond HUT_SIZE_MAX_MM. */
static void
set_span (double *min_mm,
          double *max_mm,
          double at_mm,
          double size_mm)
{
  *min_mm = at_mm;
  *max_mm = MIN (hut_snap_mm (at_mm + size_mm), HUT_SIZE_MAX_MM);
}

#define HUT_BODY_AXIS(axis)                                                                        \
  static double get_at_##axis (gconstpointer target)                                               \
  {                                                                                                \
    return ((const HutBody *)target)->box.min.axis;                                                \
  }                                                                                                \
                                                                                                   \
  static double get_size_##axis (gconstpointer target)                                             \
  {                                                                                                \
    const HutBox3 *box = &((const HutBody *)target)->box;                                          \
                                                                                                   \
    return hut_snap_mm (box->max.axis - box->min.axis);                                            \
  }                                                                                                \
                                                                                                   \
  static void set_at_##axis (gpointer target, double at_mm)                                        \
  {                                                                                                \
    HutBox3 *box = &((HutBody *)target)->box;                                                      \
                                                                                                   \
    set_span (&box->min.axis, &box->max.axis, at_mm, get_size_##axis (target));                    \
  }                                                                                                \
                                                                                                   \
  static void set_size_##axis (gpointer target, double size_mm)                                    \
  {                                                                                                \
    HutBox3 *box = &((HutBody *)target)->box;                                                      \
                                                                                                   \
    set_span (&box->min.axis, &box->max.axis, box->min.axis, size_mm);                             \
  }

HUT_BODY_AXIS (x)
HUT_BODY_AXIS (y)
HUT_BODY_AXIS (z)

static int
get_kind (gconstpointer target)
{
  return (int)((const HutBody *)target)->kind;
}

static void
set_kind (HutForm *form,
          gpointer target,
          int kind)
{
  HutBody *body = target;

  body->kind = (HutBodyKind)kind;
  if (body->kind != HUT_BODY_MOVING)
    body->travel = (HutVec3){ 0 };
}

static void
on_derived (HutBodyRow *self)
{
  const HutBody *body = hut_form_peek (self->form);
  const gboolean moves = body != NULL && body->kind == HUT_BODY_MOVING;

  gtk_widget_set_visible (self->travel_label, moves);
  gtk_widget_set_visible (GTK_WIDGET (self->travel_x), moves);
  gtk_widget_set_visible (GTK_WIDGET (self->travel_y), moves);
  gtk_widget_set_visible (GTK_WIDGET (self->travel_z), moves);
  gtk_widget_set_visible (self->keep_note, body != NULL && body->kind == HUT_BODY_KEEP_OUT);
}

static void
on_remove (HutBodyRow *self)
{
  g_autofree char *item = g_strdup (hut_form_get_item (self->form));

  hut_session_remove_body (hut_form_get_session (self->form), item);
}

/* The numbers of the table have their unit in its corner. */
static void
show_unit (HutBodyRow *self)
{
  gtk_label_set_text (self->unit,
                      hut_quantity_unit (HUT_QUANTITY_LENGTH,
                                         hut_settings_get_units (hut_settings_get_default ())));
}

static void
hut_body_row_dispose (GObject *object)
{
  HutBodyRow *self = HUT_BODY_ROW (object);
  GtkWidget *child;

  g_clear_object (&self->form);
  while ((child = gtk_widget_get_first_child (GTK_WIDGET (self))) != NULL)
    gtk_widget_unparent (child);
  G_OBJECT_CLASS (hut_body_row_parent_class)->dispose (object);
}

static void
hut_body_row_class_init (HutBodyRowClass *class)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (class);

  G_OBJECT_CLASS (class)->dispose = hut_body_row_dispose;
  g_type_ensure (HUT_TYPE_NUMBER_ENTRY);
  gtk_widget_class_set_css_name (widget_class, "item");
  gtk_widget_class_set_template_from_resource (widget_class,
                                               "/org/hutchwright/Hutchwright/hut-body-row.ui");
  gtk_widget_class_bind_template_child (widget_class, HutBodyRow, name);
  gtk_widget_class_bind_template_child (widget_class, HutBodyRow, kind);
  gtk_widget_class_bind_template_child (widget_class, HutBodyRow, at_x);
  gtk_widget_class_bind_template_child (widget_class, HutBodyRow, at_y);
  gtk_widget_class_bind_template_child (widget_class, HutBodyRow, at_z);
  gtk_widget_class_bind_template_child (widget_class, HutBodyRow, size_x);
  gtk_widget_class_bind_template_child (widget_class, HutBodyRow, size_y);
  gtk_widget_class_bind_template_child (widget_class, HutBodyRow, size_z);
  gtk_widget_class_bind_template_child (widget_class, HutBodyRow, travel_x);
  gtk_widget_class_bind_template_child (widget_class, HutBodyRow, travel_y);
  gtk_widget_class_bind_template_child (widget_class, HutBodyRow, travel_z);
  gtk_widget_class_bind_template_child (widget_class, HutBodyRow, travel_label);
  gtk_widget_class_bind_template_child (widget_class, HutBodyRow, keep_note);
  gtk_widget_class_bind_template_child (widget_class, HutBodyRow, unit);
  gtk_widget_class_bind_template_callback (widget_class, on_remove);
}

static void
hut_body_row_init (HutBodyRow *self)
{
  gtk_widget_init_template (GTK_WIDGET (self));
}

static void
bind_numbers (HutBodyRow *self)
{
  HutForm *form = self->form;

  hut_form_add_derived (form, self->at_x, get_at_x, set_at_x, N_ ("Move Body"));
  hut_form_add_derived (form, self->at_y, get_at_y, set_at_y, N_ ("Move Body"));
  hut_form_add_derived (form, self->at_z, get_at_z, set_at_z, N_ ("Move Body"));
  hut_form_add_derived (form, self->size_x, get_size_x, set_size_x, N_ ("Body Size"));
  hut_form_add_derived (form, self->size_y, get_size_y, set_size_y, N_ ("Body Size"));
  hut_form_add_derived (form, self->size_z, get_size_z, set_size_z, N_ ("Body Size"));
  hut_form_add_number (form, self->travel_x, G_STRUCT_OFFSET (HutBody, travel.x),
                       N_ ("Body Travel"));
  hut_form_add_number (form, self->travel_y, G_STRUCT_OFFSET (HutBody, travel.y),
                       N_ ("Body Travel"));
  hut_form_add_number (form, self->travel_z, G_STRUCT_OFFSET (HutBody, travel.z),
                       N_ ("Body Travel"));
}

GtkWidget *
hut_body_row_new (HutSession *session,
                  const char *body)
{
  g_return_val_if_fail (HUT_IS_SESSION (session) && body != NULL, NULL);

  HutBodyRow *self = g_object_new (HUT_TYPE_BODY_ROW, NULL);

  self->form = hut_form_new (session, locate_body);
  hut_form_add_text (self->form, self->name, G_STRUCT_OFFSET (HutBody, name), N_ ("Rename Body"));
  hut_form_add_derived_choice (self->form, self->kind, NULL, get_kind, set_kind,
                               N_ ("Kind of Body"));
  bind_numbers (self);
  hut_form_set_item (self->form, body);
  g_signal_connect_object (session, "derived", G_CALLBACK (on_derived), self, G_CONNECT_SWAPPED);
  on_derived (self);
  g_signal_connect_object (hut_settings_get_default (), "notify::units", G_CALLBACK (show_unit),
                           self, G_CONNECT_SWAPPED);
  show_unit (self);
  return GTK_WIDGET (self);
}

/* src/app/hut-extra-shape-row.c: the numbers of one rectangle or hole of a plate.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-app"
#include "config.h"
#include "app/hut-extra-shape-row.h"
#include "app/hut-form.h"
#include <glib/gi18n.h>

struct _HutExtraShapeRow
{
  GtkWidget parent_instance;

  GtkLabel *title;
  GtkWidget *radius_label;
  HutNumberEntry *at_u, *at_v, *width, *height, *radius;

  char *extra;
  HutExtraShapeKind kind;
  guint index;
  HutForm *form;
};

G_DEFINE_TYPE (HutExtraShapeRow, hut_extra_shape_row, GTK_TYPE_WIDGET)

/* The form names its item by "KIND INDEX ID". A rectangle's members are the first of a hole's. */
G_STATIC_ASSERT (offsetof (HutExtraRect, u_mm) == offsetof (HutExtraHole, u_mm));
G_STATIC_ASSERT (offsetof (HutExtraRect, v_mm) == offsetof (HutExtraHole, v_mm));
G_STATIC_ASSERT (offsetof (HutExtraRect, width_mm) == offsetof (HutExtraHole, width_mm));
G_STATIC_ASSERT (offsetof (HutExtraRect, height_mm) == offsetof (HutExtraHole, height_mm));

static gpointer
locate_shape (const HutDesign *design,
              const char *item)
{
  g_auto (GStrv) words = g_strsplit (item, " ", 3);
  const HutExtra *extra = hut_design_get_extra (design, words[2]);
  const guint index = (guint)g_ascii_strtoull (words[1], NULL, 10);
  const gboolean hole = g_ascii_strtoull (words[0], NULL, 10) == HUT_EXTRA_HOLE;

  if (extra == NULL || index >= (hole ? extra->holes->len : extra->rects->len))
    return NULL;
  return hole ? (gpointer)&g_array_index (extra->holes, HutExtraHole, index)
              : (gpointer)&g_array_index (extra->rects, HutExtraRect, index);
}

static void
on_remove (HutExtraShapeRow *self)
{
  hut_session_remove_extra_shape (hut_form_get_session (self->form), self->extra, self->kind,
                                  self->index);
}

static void
hut_extra_shape_row_dispose (GObject *object)
{
  HutExtraShapeRow *self = HUT_EXTRA_SHAPE_ROW (object);
  GtkWidget *child;

  g_clear_object (&self->form);
  while ((child = gtk_widget_get_first_child (GTK_WIDGET (self))) != NULL)
    gtk_widget_unparent (child);
  g_clear_pointer (&self->extra, g_free);
  G_OBJECT_CLASS (hut_extra_shape_row_parent_class)->dispose (object);
}

static void
hut_extra_shape_row_class_init (HutExtraShapeRowClass *class)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (class);

  G_OBJECT_CLASS (class)->dispose = hut_extra_shape_row_dispose;
  g_type_ensure (HUT_TYPE_NUMBER_ENTRY);
  gtk_widget_class_set_css_name (widget_class, "item");
  gtk_widget_class_set_template_from_resource (
      widget_class, "/org/hutchwright/Hutchwright/hut-extra-shape-row.ui");
  gtk_widget_class_bind_template_child (widget_class, HutExtraShapeRow, title);
  gtk_widget_class_bind_template_child (widget_class, HutExtraShapeRow, at_u);
  gtk_widget_class_bind_template_child (widget_class, HutExtraShapeRow, at_v);
  gtk_widget_class_bind_template_child (widget_class, HutExtraShapeRow, width);
  gtk_widget_class_bind_template_child (widget_class, HutExtraShapeRow, height);
  gtk_widget_class_bind_template_child (widget_class, HutExtraShapeRow, radius);
  gtk_widget_class_bind_template_child (widget_class, HutExtraShapeRow, radius_label);
  gtk_widget_class_bind_template_callback (widget_class, on_remove);
}

static void
hut_extra_shape_row_init (HutExtraShapeRow *self)
{
  gtk_widget_init_template (GTK_WIDGET (self));
}

GtkWidget *
hut_extra_shape_row_new (HutSession *session,
                         const char *extra,
                         HutExtraShapeKind kind,
                         guint index)
{
  g_return_val_if_fail (HUT_IS_SESSION (session) && extra != NULL, NULL);

  HutExtraShapeRow *self = g_object_new (HUT_TYPE_EXTRA_SHAPE_ROW, NULL);
  HutForm *form = hut_form_new (session, locate_shape);
  g_autofree char *item = g_strdup_printf ("%d %u %s", (int)kind, index, extra);
  /* Translators: the number of a rectangle or hole of a plate */
  g_autofree char *title = g_strdup_printf (
      kind == HUT_EXTRA_HOLE ? _("Hole %u") : _("Rectangle %u"), index + 1);

  self->form = form;
  self->extra = g_strdup (extra);
  self->kind = kind;
  self->index = index;
  gtk_label_set_text (self->title, title);
  hut_form_add_number (form, self->at_u, G_STRUCT_OFFSET (HutExtraHole, u_mm), N_ ("Move Shape"));
  hut_form_add_number (form, self->at_v, G_STRUCT_OFFSET (HutExtraHole, v_mm), N_ ("Move Shape"));
  hut_form_add_number (form, self->width, G_STRUCT_OFFSET (HutExtraHole, width_mm),
                       N_ ("Shape Size"));
  hut_form_add_number (form, self->height, G_STRUCT_OFFSET (HutExtraHole, height_mm),
                       N_ ("Shape Size"));
  if (kind == HUT_EXTRA_HOLE)
    hut_form_add_number (form, self->radius, G_STRUCT_OFFSET (HutExtraHole, radius_mm),
                         N_ ("Corner Radius"));
  gtk_widget_set_visible (GTK_WIDGET (self->radius), kind == HUT_EXTRA_HOLE);
  gtk_widget_set_visible (self->radius_label, kind == HUT_EXTRA_HOLE);
  hut_form_set_item (form, item);
  return GTK_WIDGET (self);
}

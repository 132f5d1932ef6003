/* src/app/hut-extra-row.c: a plate that the user draws: its numbers, shapes, and how it looks.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-app"
#include "config.h"
#include "app/hut-extra-row.h"
#include "app/hut-extra-shape-row.h"
#include "app/hut-extra-view.h"
#include "app/hut-field.h"
#include "app/hut-form.h"
#include "app/hut-item-rows.h"
#include "app/hut-stock-list.h"
#include <glib/gi18n.h>

struct _HutExtraRow
{
  GtkWidget parent_instance;

  GtkEntry *name;
  GtkDropDown *stock;
  HutNumberEntry *count, *radius;
  HutExtraView *view;
  GtkBox *shapes;

  HutForm *form;
};

G_DEFINE_TYPE (HutExtraRow, hut_extra_row, GTK_TYPE_WIDGET)

static gpointer
locate_extra (const HutDesign *design,
              const char *item)
{
  return hut_design_get_extra (design, item);
}

/* Shapes are named "KIND INDEX" among the rows. */
static GtkWidget *
new_shape_row (const char *item,
               gpointer user_data)
{
  HutExtraRow *self = user_data;
  g_auto (GStrv) words = g_strsplit (item, " ", 2);

  return hut_extra_shape_row_new (hut_form_get_session (self->form),
                                  hut_form_get_item (self->form),
                                  (HutExtraShapeKind)g_ascii_strtoull (words[0], NULL, 10),
                                  (guint)g_ascii_strtoull (words[1], NULL, 10));
}

static void
add_names (GPtrArray *names,
           HutExtraShapeKind kind,
           guint count)
{
  for (guint i = 0; i < count; i++)
    g_ptr_array_add (names, g_strdup_printf ("%d %u", (int)kind, i));
}

static void
on_derived (HutExtraRow *self)
{
  const HutExtra *extra = hut_form_peek (self->form);
  g_autoptr(GPtrArray) names = g_ptr_array_new_with_free_func (g_free);

  if (extra == NULL)
    return;
  add_names (names, HUT_EXTRA_RECTANGLE, extra->rects->len);
  add_names (names, HUT_EXTRA_HOLE, extra->holes->len);
  hut_item_rows_sync (self->shapes, names, new_shape_row, self);
  hut_extra_view_set_extra (self->view, extra);
}

static void
on_remove (HutExtraRow *self)
{
  g_autofree char *item = g_strdup (hut_form_get_item (self->form));

  hut_session_remove_extra (hut_form_get_session (self->form), item);
}

static void
on_add_rectangle (HutExtraRow *self)
{
  hut_session_add_extra_shape (hut_form_get_session (self->form), hut_form_get_item (self->form),
                               HUT_EXTRA_RECTANGLE);
}

static void
on_add_hole (HutExtraRow *self)
{
  hut_session_add_extra_shape (hut_form_get_session (self->form), hut_form_get_item (self->form),
                               HUT_EXTRA_HOLE);
}

static void
hut_extra_row_dispose (GObject *object)
{
  HutExtraRow *self = HUT_EXTRA_ROW (object);
  GtkWidget *child;

  g_clear_object (&self->form);
  while ((child = gtk_widget_get_first_child (GTK_WIDGET (self))) != NULL)
    gtk_widget_unparent (child);
  G_OBJECT_CLASS (hut_extra_row_parent_class)->dispose (object);
}

static void
hut_extra_row_class_init (HutExtraRowClass *class)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (class);

  G_OBJECT_CLASS (class)->dispose = hut_extra_row_dispose;
  g_type_ensure (HUT_TYPE_FIELD);
  g_type_ensure (HUT_TYPE_NUMBER_ENTRY);
  g_type_ensure (HUT_TYPE_EXTRA_VIEW);
  gtk_widget_class_set_css_name (widget_class, "item");
  gtk_widget_class_set_template_from_resource (widget_class,
                                               "/org/hutchwright/Hutchwright/hut-extra-row.ui");
  gtk_widget_class_bind_template_child (widget_class, HutExtraRow, name);
  gtk_widget_class_bind_template_child (widget_class, HutExtraRow, stock);
  gtk_widget_class_bind_template_child (widget_class, HutExtraRow, count);
  gtk_widget_class_bind_template_child (widget_class, HutExtraRow, radius);
  gtk_widget_class_bind_template_child (widget_class, HutExtraRow, view);
  gtk_widget_class_bind_template_child (widget_class, HutExtraRow, shapes);
  gtk_widget_class_bind_template_callback (widget_class, on_remove);
  gtk_widget_class_bind_template_callback (widget_class, on_add_rectangle);
  gtk_widget_class_bind_template_callback (widget_class, on_add_hole);
}

static void
hut_extra_row_init (HutExtraRow *self)
{
  gtk_widget_init_template (GTK_WIDGET (self));
}

GtkWidget *
hut_extra_row_new (HutSession *session,
                   const char *extra)
{
  g_return_val_if_fail (HUT_IS_SESSION (session) && extra != NULL, NULL);

  HutExtraRow *self = g_object_new (HUT_TYPE_EXTRA_ROW, NULL);
  HutForm *form = hut_form_new (session, locate_extra);

  self->form = form;
  hut_form_add_text (form, self->name, G_STRUCT_OFFSET (HutExtra, name), N_ ("Rename Plate"));
  hut_form_add_reference (form, self->stock, G_STRUCT_OFFSET (HutExtra, stock), hut_stock_list,
                          NULL, N_ ("Stock of Plate"));
  hut_form_add_count (form, self->count, G_STRUCT_OFFSET (HutExtra, count),
                      N_ ("Number of Plates"));
  hut_form_add_number (form, self->radius, G_STRUCT_OFFSET (HutExtra, radius_mm),
                       N_ ("Corner Radius"));
  hut_form_set_item (form, extra);
  g_signal_connect_object (session, "derived", G_CALLBACK (on_derived), self, G_CONNECT_SWAPPED);
  on_derived (self);
  return GTK_WIDGET (self);
}

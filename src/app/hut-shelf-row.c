/* src/app/hut-shelf-row.c: one opening or item of hardware on the shelf, to be dragged from there.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-app"
#include "config.h"
#include "app/hut-shelf-row.h"
#include "app/hut-drag-escape.h"
#include "app/hut-item-type.h"
#include "app/hut-opening-type.h"
#include "app/hut-ready-opening.h"
#include "app/hut-shelf-icon.h"
#include "catalog/hut-catalog.h"
#include "draw/hut-item-view.h"
#include "draw/hut-opening-view.h"
#include "draw/hut-snap.h"
#include <glib/gi18n.h>

/* Own choice, px: least size of what hangs on the pointer, room for its line, and where it hangs
 * when the screen cannot blend it with what lies under it. */
#define DRAG_LEAST_PX 12.0
#define DRAG_PAD_PX 2.0
#define DRAG_ASIDE_PX -18.0
#define DRAG_PLAIN_MOST_PX 64.0
#define DRAG_FILL_RATIO 0.15

struct _HutShelfRow
{
  GtkListBoxRow parent;
  HutOpening *opening; /* or NULL */
  HutItem *item;       /* or NULL */
  const char *group;   /* translated, static */
  char *wanted;        /* casefolded: name, group and other words */
  double drag_scale_px_per_mm;
  GtkWidget *box, *name, *own;
};

G_DEFINE_FINAL_TYPE (HutShelfRow, hut_shelf_row, GTK_TYPE_LIST_BOX_ROW)

static GdkContentProvider *
on_prepare (GtkDragSource *source,
            double x,
            double y,
            HutShelfRow *self)
{
  return self->item != NULL ? gdk_content_provider_new_typed (HUT_TYPE_ITEM, self->item)
                            : gdk_content_provider_new_typed (HUT_TYPE_OPENING, self->opening);
}

static HutRect
thing_bounds (HutShelfRow *self)
{
  return self->item != NULL ? hut_item_view_bounds (self->item)
                            : hut_snap_opening_bounds (self->opening);
}

static void
draw_thing (HutShelfRow *self,
            cairo_t *cr,
            HutPoint middle_px,
            double scale)
{
  GdkRGBA c;

  gtk_style_context_get_color (gtk_widget_get_style_context (GTK_WIDGET (self)), &c);
  if (self->item != NULL)
    hut_item_view_draw (cr, self->item, (HutColour){ c.red, c.green, c.blue }, DRAG_FILL_RATIO,
                        middle_px, scale);
  else
    hut_opening_view_draw (cr, self->opening, (HutColour){ c.red, c.green, c.blue },
                           DRAG_FILL_RATIO, middle_px, scale);
}

/* The thing as large as it will be on the canvas, its middle on the pointer. The canvas shows
 * where it would land, so on screens without blending the picture is kept small and hung aside. */
static void
on_drag_begin (GtkDragSource *source,
               GdkDrag *drag,
               HutShelfRow *self)
{
  const gboolean blends = gdk_display_is_composited (gtk_widget_get_display (GTK_WIDGET (self)));
  const HutRect b = thing_bounds (self);
  const double largest_mm = MAX (b.u1 - b.u0, b.v1 - b.v0);
  double scale = MAX (self->drag_scale_px_per_mm, DRAG_LEAST_PX / largest_mm);
  g_autoptr (GtkSnapshot) snapshot = gtk_snapshot_new ();
  g_autoptr (GdkPaintable) picture = NULL;

  if (!blends)
    scale = MIN (scale, DRAG_PLAIN_MOST_PX / largest_mm);
  const double width = (b.u1 - b.u0) * scale + 2.0 * DRAG_PAD_PX;
  const double height = (b.v1 - b.v0) * scale + 2.0 * DRAG_PAD_PX;
  const HutPoint middle = { DRAG_PAD_PX - b.u0 * scale, DRAG_PAD_PX + b.v1 * scale };
  const graphene_rect_t area = GRAPHENE_RECT_INIT (0.0f, 0.0f, (float)width, (float)height);
  cairo_t *cr = gtk_snapshot_append_cairo (snapshot, &area);

  draw_thing (self, cr, middle, scale);
  cairo_destroy (cr);
  picture = gtk_snapshot_to_paintable (snapshot, &area.size);
  gtk_drag_source_set_icon (source, picture, (int)(blends ? middle.u : DRAG_ASIDE_PX),
                            (int)(blends ? middle.v : DRAG_ASIDE_PX));
}

static void
hut_shelf_row_finalize (GObject *object)
{
  HutShelfRow *self = HUT_SHELF_ROW (object);

  g_clear_pointer (&self->opening, hut_opening_free);
  g_clear_pointer (&self->item, hut_item_free);
  g_free (self->wanted);
  G_OBJECT_CLASS (hut_shelf_row_parent_class)->finalize (object);
}

static void
hut_shelf_row_class_init (HutShelfRowClass *klass)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);

  G_OBJECT_CLASS (klass)->finalize = hut_shelf_row_finalize;
  gtk_widget_class_set_template_from_resource (widget_class,
                                               "/org/hutchwright/Hutchwright/hut-shelf-row.ui");
  gtk_widget_class_bind_template_child (widget_class, HutShelfRow, box);
  gtk_widget_class_bind_template_child (widget_class, HutShelfRow, name);
  gtk_widget_class_bind_template_child (widget_class, HutShelfRow, own);
}

static void
hut_shelf_row_init (HutShelfRow *self)
{
  GtkDragSource *source = gtk_drag_source_new ();

  self->drag_scale_px_per_mm = 1.0;
  gtk_widget_init_template (GTK_WIDGET (self));
  gtk_drag_source_set_actions (source, GDK_ACTION_COPY);
  g_signal_connect (source, "prepare", G_CALLBACK (on_prepare), self);
  g_signal_connect (source, "drag-begin", G_CALLBACK (on_drag_begin), self);
  hut_drag_escape_add (source);
  gtk_widget_add_controller (GTK_WIDGET (self), GTK_EVENT_CONTROLLER (source));
}

/* @words: other words to find it by. */
static void
show (HutShelfRow *self,
      GtkWidget *icon,
      const char *name,
      const char *group,
      const char *words)
{
  g_autofree char *all = g_strjoin (" ", name, group, words, NULL);

  self->group = group;
  self->wanted = g_utf8_casefold (all, -1);
  gtk_label_set_text (GTK_LABEL (self->name), name);
  gtk_box_prepend (GTK_BOX (self->box), icon);
  gtk_accessible_update_property (GTK_ACCESSIBLE (self), GTK_ACCESSIBLE_PROPERTY_LABEL, name,
                                  GTK_ACCESSIBLE_PROPERTY_DESCRIPTION,
                                  _ ("Drag it onto a panel, or press Enter to place it."), -1);
}

GtkWidget *
hut_shelf_row_new (guint index)
{
  g_return_val_if_fail (index < hut_ready_opening_get_count (), NULL);

  HutShelfRow *self = g_object_new (HUT_TYPE_SHELF_ROW, NULL);

  self->opening = hut_ready_opening_new (index);
  show (self, hut_shelf_icon_new_opening (self->opening), hut_ready_opening_get_name (index),
        hut_ready_opening_get_group (index), hut_ready_opening_get_words (index));
  return GTK_WIDGET (self);
}

GtkWidget *
hut_shelf_row_new_item (const HutItem *item,
                        gboolean own)
{
  g_return_val_if_fail (item != NULL, NULL);

  HutShelfRow *self = g_object_new (HUT_TYPE_SHELF_ROW, NULL);

  self->item = hut_item_copy (item);
  gtk_widget_set_visible (self->own, own);
  show (self, hut_shelf_icon_new_item (item), hut_shelf_row_get_item_name (item),
        _(hut_item_group_title (item->group)), item->words);
  return GTK_WIDGET (self);
}

const char *
hut_shelf_row_get_item_name (const HutItem *item)
{
  g_return_val_if_fail (item != NULL, "");

  return item->name[0] != '\0' ? _(item->name) : item->id;
}

const HutOpening *
hut_shelf_row_get_opening (HutShelfRow *self)
{
  g_return_val_if_fail (HUT_IS_SHELF_ROW (self), NULL);

  return self->opening;
}

const HutItem *
hut_shelf_row_get_item (HutShelfRow *self)
{
  g_return_val_if_fail (HUT_IS_SHELF_ROW (self), NULL);

  return self->item;
}

const char *
hut_shelf_row_get_group (HutShelfRow *self)
{
  g_return_val_if_fail (HUT_IS_SHELF_ROW (self), NULL);

  return self->group;
}

gboolean
hut_shelf_row_matches (HutShelfRow *self,
                       const char *text)
{
  g_return_val_if_fail (HUT_IS_SHELF_ROW (self) && text != NULL, FALSE);

  g_autofree char *folded = g_utf8_casefold (text, -1);
  g_auto (GStrv) words = g_strsplit (folded, " ", -1);

  for (char **word = words; *word != NULL; word++)
    if (strstr (self->wanted, *word) == NULL)
      return FALSE;
  return TRUE;
}

void
hut_shelf_row_set_drag_scale (HutShelfRow *self,
                              double scale_px_per_mm)
{
  g_return_if_fail (HUT_IS_SHELF_ROW (self));

  self->drag_scale_px_per_mm = scale_px_per_mm;
}

/* src/app/hut-shelf-icon.c: a small drawing of an opening or an item, all of them at one scale.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-app"
#include "config.h"
#include "app/hut-shelf-icon.h"
#include "draw/hut-item-view.h"
#include "draw/hut-opening-view.h"
#include "draw/hut-snap.h"

/* Own choice, px: the largest ready opening (pattern of 10 x 3, 134 mm) just fits. */
#define ICON_PX 40
#define ICON_SCALE_PX_PER_MM 0.29
#define ICON_LEAST_PX 16.0
#define ICON_PAD_PX 2.0
#define OPENING_FILL_RATIO 0.12
#define ITEM_FILL_RATIO 0.3

struct _HutShelfIcon
{
  GtkWidget parent_instance;

  HutOpening *opening; /* or NULL */
  HutItem *item;       /* or NULL */
};

G_DEFINE_FINAL_TYPE (HutShelfIcon, hut_shelf_icon, GTK_TYPE_WIDGET)

static double
find_scale (HutRect b,
            double width,
            double height)
{
  const double largest_mm = MAX (b.u1 - b.u0, b.v1 - b.v0);
  const double fits = (MIN (width, height) - 2.0 * ICON_PAD_PX) / largest_mm;

  return MIN (MAX (ICON_SCALE_PX_PER_MM, ICON_LEAST_PX / largest_mm), fits);
}

static void
hut_shelf_icon_snapshot (GtkWidget *widget,
                         GtkSnapshot *snapshot)
{
  HutShelfIcon *self = HUT_SHELF_ICON (widget);
  const double width = gtk_widget_get_width (widget), height = gtk_widget_get_height (widget);
  const HutRect b = self->item != NULL ? hut_item_view_bounds (self->item)
                                       : hut_snap_opening_bounds (self->opening);
  const double scale = find_scale (b, width, height);
  const HutPoint at_px = { width / 2.0 - (b.u0 + b.u1) / 2.0 * scale,
                           height / 2.0 + (b.v0 + b.v1) / 2.0 * scale };
  cairo_t *cr = gtk_snapshot_append_cairo (
      snapshot, &GRAPHENE_RECT_INIT (0.0f, 0.0f, (float)width, (float)height));
  GdkRGBA c;

  gtk_style_context_get_color (gtk_widget_get_style_context (widget), &c);

  const HutColour colour = { c.red, c.green, c.blue };

  if (self->item != NULL)
    hut_item_view_draw (cr, self->item, colour, ITEM_FILL_RATIO, at_px, scale);
  else
    hut_opening_view_draw (cr, self->opening, colour, OPENING_FILL_RATIO, at_px, scale);
  cairo_destroy (cr);
}

static void
hut_shelf_icon_measure (GtkWidget *widget,
                        GtkOrientation orientation,
                        int for_size,
                        int *minimum,
                        int *natural,
                        int *minimum_baseline,
                        int *natural_baseline)
{
  *minimum = *natural = ICON_PX;
}

static void
hut_shelf_icon_finalize (GObject *object)
{
  HutShelfIcon *self = HUT_SHELF_ICON (object);

  g_clear_pointer (&self->opening, hut_opening_free);
  g_clear_pointer (&self->item, hut_item_free);
  G_OBJECT_CLASS (hut_shelf_icon_parent_class)->finalize (object);
}

static void
hut_shelf_icon_class_init (HutShelfIconClass *class)
{
  G_OBJECT_CLASS (class)->finalize = hut_shelf_icon_finalize;
  GTK_WIDGET_CLASS (class)->snapshot = hut_shelf_icon_snapshot;
  GTK_WIDGET_CLASS (class)->measure = hut_shelf_icon_measure;
  /* The name beside it says all. */
  gtk_widget_class_set_accessible_role (GTK_WIDGET_CLASS (class), GTK_ACCESSIBLE_ROLE_PRESENTATION);
}

static void
hut_shelf_icon_init (HutShelfIcon *self)
{
}

GtkWidget *
hut_shelf_icon_new_opening (const HutOpening *opening)
{
  g_return_val_if_fail (opening != NULL, NULL);

  HutShelfIcon *self = g_object_new (HUT_TYPE_SHELF_ICON, NULL);

  self->opening = hut_opening_copy (opening);
  return GTK_WIDGET (self);
}

GtkWidget *
hut_shelf_icon_new_item (const HutItem *item)
{
  g_return_val_if_fail (item != NULL, NULL);

  HutShelfIcon *self = g_object_new (HUT_TYPE_SHELF_ICON, NULL);

  self->item = hut_item_copy (item);
  return GTK_WIDGET (self);
}

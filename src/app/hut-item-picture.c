/* src/app/hut-item-picture.c: a drawing of an item of hardware.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-app"
#include "config.h"
#include "app/hut-item-picture.h"
#include "draw/hut-item-view.h"

/* Own choice, px: as hut-opening-icon.c has them; and how small an icon may be drawn. */
#define ICON_PX 40
#define ICON_SCALE_PX_PER_MM 0.29
#define ICON_LEAST_PX 16.0
#define ICON_PAD_PX 2.0
/* Own choice: of the large picture. */
#define LARGE_PX 220
#define LARGE_PAD_PX 16.0
#define LARGE_MOST_PX_PER_MM 8.0
#define FILL_RATIO 0.3
#define AXIS_ALPHA_RATIO 0.25

struct _HutItemPicture
{
  GtkWidget parent_instance;

  HutItem *item;
  gboolean icon;
};

G_DEFINE_TYPE (HutItemPicture, hut_item_picture, GTK_TYPE_WIDGET)

static double
find_scale (HutItemPicture *self,
            HutRect b,
            double width,
            double height)
{
  const double pad = self->icon ? ICON_PAD_PX : LARGE_PAD_PX;
  const double fits
      = MIN ((width - 2.0 * pad) / (b.u1 - b.u0), (height - 2.0 * pad) / (b.v1 - b.v0));
  const double largest_mm = MAX (b.u1 - b.u0, b.v1 - b.v0);

  if (!self->icon)
    return MAX (MIN (fits, LARGE_MOST_PX_PER_MM), 0.0);
  return MIN (MAX (ICON_SCALE_PX_PER_MM, ICON_LEAST_PX / largest_mm), fits);
}

/* The cross of (0,0): where the placement puts the item. */
static void
draw_axes (cairo_t *cr,
           const GdkRGBA *c,
           HutPoint at_px,
           double width,
           double height)
{
  cairo_set_source_rgba (cr, c->red, c->green, c->blue, AXIS_ALPHA_RATIO);
  cairo_set_line_width (cr, 1.0);
  cairo_move_to (cr, at_px.u, 0.0);
  cairo_line_to (cr, at_px.u, height);
  cairo_move_to (cr, 0.0, at_px.v);
  cairo_line_to (cr, width, at_px.v);
  cairo_stroke (cr);
}

static void
hut_item_picture_snapshot (GtkWidget *widget,
                           GtkSnapshot *snapshot)
{
  HutItemPicture *self = HUT_ITEM_PICTURE (widget);
  const double width = gtk_widget_get_width (widget), height = gtk_widget_get_height (widget);
  GdkRGBA c;

  if (self->item == NULL)
    return;

  const HutRect b = hut_item_view_bounds (self->item);
  const double scale = find_scale (self, b, width, height);
  const HutPoint at_px = { width / 2.0 - (b.u0 + b.u1) / 2.0 * scale,
                           height / 2.0 + (b.v0 + b.v1) / 2.0 * scale };
  cairo_t *cr = gtk_snapshot_append_cairo (
      snapshot, &GRAPHENE_RECT_INIT (0.0f, 0.0f, (float)width, (float)height));

  gtk_style_context_get_color (gtk_widget_get_style_context (widget), &c);
  if (!self->icon)
    draw_axes (cr, &c, at_px, width, height);
  hut_item_view_draw (cr, self->item, (HutColour){ c.red, c.green, c.blue }, FILL_RATIO, at_px,
                      scale);
  cairo_destroy (cr);
}

static void
hut_item_picture_measure (GtkWidget *widget,
                          GtkOrientation orientation,
                          int for_size,
                          int *minimum,
                          int *natural,
                          int *minimum_baseline,
                          int *natural_baseline)
{
  *minimum = *natural = HUT_ITEM_PICTURE (widget)->icon ? ICON_PX : LARGE_PX;
}

static void
hut_item_picture_finalize (GObject *object)
{
  hut_item_free (HUT_ITEM_PICTURE (object)->item);
  G_OBJECT_CLASS (hut_item_picture_parent_class)->finalize (object);
}

static void
hut_item_picture_class_init (HutItemPictureClass *class)
{
  G_OBJECT_CLASS (class)->finalize = hut_item_picture_finalize;
  GTK_WIDGET_CLASS (class)->snapshot = hut_item_picture_snapshot;
  GTK_WIDGET_CLASS (class)->measure = hut_item_picture_measure;
  /* Name and numbers beside it say all. */
  gtk_widget_class_set_accessible_role (GTK_WIDGET_CLASS (class), GTK_ACCESSIBLE_ROLE_PRESENTATION);
}

static void
hut_item_picture_init (HutItemPicture *self)
{
}

GtkWidget *
hut_item_picture_new_icon (const HutItem *item)
{
  g_return_val_if_fail (item != NULL, NULL);

  HutItemPicture *self = g_object_new (HUT_TYPE_ITEM_PICTURE, NULL);

  self->icon = TRUE;
  self->item = hut_item_copy (item);
  return GTK_WIDGET (self);
}

void
hut_item_picture_set_item (HutItemPicture *self,
                           const HutItem *item)
{
  g_return_if_fail (HUT_IS_ITEM_PICTURE (self));

  g_clear_pointer (&self->item, hut_item_free);
  self->item = item != NULL ? hut_item_copy (item) : NULL;
  gtk_widget_queue_draw (GTK_WIDGET (self));
}

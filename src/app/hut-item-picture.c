/* src/app/hut-item-picture.c: a large drawing of an item of hardware, beside its form.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-app"
#include "config.h"
#include "app/hut-item-picture.h"
#include "app/hut-settings.h"
#include "app/hut-units.h"
#include "app/hut-widget-look.h"
#include "draw/hut-ink.h"
#include "draw/hut-item-side.h"
#include "draw/hut-item-view.h"
#include <math.h>

/* Own choice, px. */
#define LEAST_PX 220
#define PAD_PX 16.0
#define GAP_PX 24.0
#define BAR_PX 26.0 /* room of the bar and its label */
#define TICK_PX 3.0
#define MOST_PX_PER_MM 8.0
#define BAR_MOST_RATIO 0.4 /* of the width */
#define FILL_RATIO 0.3
#define AXIS_ALPHA_RATIO 0.25
#define NUMBERS_MOST 24 /* more would hide the drawing */

struct _HutItemPicture
{
  GtkWidget parent_instance;

  HutItem *item;
};

G_DEFINE_FINAL_TYPE (HutItemPicture, hut_item_picture, GTK_TYPE_WIDGET)

/* Where both views are. */
typedef struct
{
  double scale_px_per_mm;
  HutPoint front_px, side_px; /* of (0,0) */
} Layout;

static Layout
lay_out (const HutItem *item,
         double width,
         double height)
{
  const HutRect front = hut_item_view_bounds (item), side = hut_item_side_bounds (item);
  const double room_px = height - 2.0 * PAD_PX - GAP_PX - BAR_PX;
  const double tall_mm = front.v1 - front.v0 + side.v1 - side.v0,
               wide_mm = MAX (front.u1 - front.u0, side.u1 - side.u0);
  const double fits = MIN ((width - 2.0 * PAD_PX) / wide_mm, room_px / tall_mm);
  const double scale = CLAMP (fits, 0.0, MOST_PX_PER_MM);
  const double spare_px = (room_px - tall_mm * scale) / 2.0;

  return (Layout){ .scale_px_per_mm = scale,
                   .front_px = { width / 2.0 - (front.u0 + front.u1) / 2.0 * scale,
                                 PAD_PX + spare_px + front.v1 * scale },
                   .side_px = { width / 2.0 - (side.u0 + side.u1) / 2.0 * scale,
                                PAD_PX + spare_px + (front.v1 - front.v0) * scale + GAP_PX
                                    + side.v1 * scale } };
}

/* The cross of (0,0): where the placement puts the item. */
static void
draw_axes (cairo_t *cr,
           HutColour c,
           HutPoint at_px,
           double width,
           double bottom_px)
{
  cairo_set_source_rgba (cr, c.r, c.g, c.b, AXIS_ALPHA_RATIO);
  cairo_set_line_width (cr, 1.0);
  cairo_move_to (cr, at_px.u, 0.0);
  cairo_line_to (cr, at_px.u, bottom_px);
  cairo_move_to (cr, 0.0, at_px.v);
  cairo_line_to (cr, width, at_px.v);
  cairo_stroke (cr);
}

/* The numbers that the holes have in the form. */
static void
draw_numbers (HutInk *ink,
              const HutItem *item,
              HutColour colour,
              const Layout *layout)
{
  for (guint i = 0; item->cuts->len <= NUMBERS_MOST && i < item->cuts->len; i++)
    {
      const HutItemCut *cut = &g_array_index (item->cuts, HutItemCut, i);
      g_autofree char *number = g_strdup_printf ("%u", i + 1);

      hut_ink_text (ink, number,
                    &(HutInkText){ .x_px = layout->front_px.u + cut->at.u * layout->scale_px_per_mm,
                                   .y_px = layout->front_px.v - cut->at.v * layout->scale_px_per_mm,
                                   .align = HUT_TEXT_MIDDLE,
                                   .bold = TRUE,
                                   .colour = colour });
    }
}

/* A round length that takes up a good part of the width. */
static double
find_bar_mm (double most_mm)
{
  const double power = pow (10.0, floor (log10 (most_mm)));

  if (most_mm >= 5.0 * power)
    return 5.0 * power;
  return most_mm >= 2.0 * power ? 2.0 * power : power;
}

static void
draw_bar (HutInk *ink,
          HutColour colour,
          double scale,
          double width,
          double height)
{
  const HutUnits units = hut_settings_get_units (hut_settings_get_default ());
  const double unit_mm = 1.0 / hut_quantity_scale_ratio (HUT_QUANTITY_LENGTH, units);
  const double bar_mm = find_bar_mm (width * BAR_MOST_RATIO / scale / unit_mm) * unit_mm;
  const double left = (width - bar_mm * scale) / 2.0, y = height - TICK_PX - 1.0;
  g_autofree char *text = hut_quantity_dup_text_with_unit (HUT_QUANTITY_LENGTH, units, bar_mm);

  hut_ink_line (ink, HUT_LINE_SOLID, 1.0);
  hut_ink_colour (ink, colour);
  cairo_move_to (ink->cr, left, y - TICK_PX);
  cairo_line_to (ink->cr, left, y + TICK_PX);
  cairo_move_to (ink->cr, left, y);
  cairo_line_to (ink->cr, left + bar_mm * scale, y);
  cairo_move_to (ink->cr, left + bar_mm * scale, y - TICK_PX);
  cairo_line_to (ink->cr, left + bar_mm * scale, y + TICK_PX);
  cairo_stroke (ink->cr);
  hut_ink_text (ink, text,
                &(HutInkText){ .x_px = width / 2.0,
                               .y_px = height - BAR_PX / 2.0 - TICK_PX,
                               .align = HUT_TEXT_MIDDLE,
                               .colour = colour });
}

static void
hut_item_picture_snapshot (GtkWidget *widget,
                           GtkSnapshot *snapshot)
{
  HutItemPicture *self = HUT_ITEM_PICTURE (widget);
  const double width = gtk_widget_get_width (widget), height = gtk_widget_get_height (widget);
  GdkRGBA c;
  HutInk ink;

  if (self->item == NULL || width <= 2.0 * PAD_PX || height < LEAST_PX)
    return;

  const Layout layout = lay_out (self->item, width, height);
  cairo_t *cr = gtk_snapshot_append_cairo (
      snapshot, &GRAPHENE_RECT_INIT (0.0f, 0.0f, (float)width, (float)height));

  gtk_style_context_get_color (gtk_widget_get_style_context (widget), &c);

  const HutColour colour = { c.red, c.green, c.blue };
  const double front_bottom_px
      = layout.front_px.v
        - hut_item_view_bounds (self->item).v0 * layout.scale_px_per_mm + GAP_PX / 2.0;

  draw_axes (cr, colour, layout.front_px, width, front_bottom_px);
  hut_item_view_draw (cr, self->item, colour, FILL_RATIO, layout.front_px, layout.scale_px_per_mm);
  hut_item_side_draw (cr, self->item, colour, FILL_RATIO, layout.side_px, layout.scale_px_per_mm);
  hut_ink_begin (&ink, cr, hut_palette_get (FALSE, FALSE), width, height,
                 hut_widget_text_px (widget));
  draw_numbers (&ink, self->item, colour, &layout);
  draw_bar (&ink, colour, layout.scale_px_per_mm, width, height);
  hut_ink_end (&ink);
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
  *minimum = *natural = LEAST_PX;
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
  /* The numbers beside it say all. */
  gtk_widget_class_set_accessible_role (GTK_WIDGET_CLASS (class), GTK_ACCESSIBLE_ROLE_PRESENTATION);
}

static void
hut_item_picture_init (HutItemPicture *self)
{
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

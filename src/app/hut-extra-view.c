/* src/app/hut-extra-view.c: a plate that the user draws, as it will be cut.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-app"
#include "config.h"
#include "app/hut-extra-view.h"
#include "assembly/hut-extra-part.h"
#include "draw/hut-ink.h"

#define HEIGHT_PX 120
#define WIDTH_PX 120
#define MARGIN_PX 8.0
#define FILL_RATIO 0.15 /* of the text's colour: enough to tell wood from hole */
#define LINE_PX 1.5

struct _HutExtraView
{
  GtkWidget parent_instance;

  HutRegion *region; /* NULL: nothing to draw */
};

G_DEFINE_TYPE (HutExtraView, hut_extra_view, GTK_TYPE_WIDGET)

static void
add_region (cairo_t *cr,
            const HutRegion *region,
            HutPoint origin_px,
            double scale)
{
  HutInk ink = { .cr = cr };

  cairo_new_path (cr);
  hut_ink_path (&ink, region->outer, origin_px.u, origin_px.v, scale);
  for (guint i = 0; i < region->holes->len; i++)
    hut_ink_path (&ink, g_ptr_array_index (region->holes, i), origin_px.u, origin_px.v, scale);
}

static void
hut_extra_view_snapshot (GtkWidget *widget,
                         GtkSnapshot *snapshot)
{
  HutExtraView *self = HUT_EXTRA_VIEW (widget);
  const double width = gtk_widget_get_width (widget), height = gtk_widget_get_height (widget);
  HutRect b;
  double scale;
  GdkRGBA c;
  cairo_t *cr;

  if (self->region == NULL)
    return;
  b = hut_region_bounds (self->region);
  scale = MIN ((width - 2.0 * MARGIN_PX) / (b.u1 - b.u0),
               (height - 2.0 * MARGIN_PX) / (b.v1 - b.v0));
  if (!(scale > 0.0))
    return;
  cr = gtk_snapshot_append_cairo (
      snapshot, &GRAPHENE_RECT_INIT (0.0f, 0.0f, (float)width, (float)height));
  add_region (cr, self->region,
              (HutPoint){ width / 2.0 - (b.u0 + b.u1) / 2.0 * scale,
                          height / 2.0 + (b.v0 + b.v1) / 2.0 * scale },
              scale);
  gtk_style_context_get_color (gtk_widget_get_style_context (widget), &c);
  cairo_set_source_rgba (cr, c.red, c.green, c.blue, FILL_RATIO);
  cairo_set_fill_rule (cr, CAIRO_FILL_RULE_EVEN_ODD);
  cairo_fill_preserve (cr);
  cairo_set_source_rgba (cr, c.red, c.green, c.blue, 1.0);
  cairo_set_line_width (cr, LINE_PX);
  cairo_stroke (cr);
  cairo_destroy (cr);
}

static void
hut_extra_view_measure (GtkWidget *widget,
                        GtkOrientation orientation,
                        int for_size,
                        int *minimum,
                        int *natural,
                        int *minimum_baseline,
                        int *natural_baseline)
{
  *minimum = *natural = orientation == GTK_ORIENTATION_VERTICAL ? HEIGHT_PX : WIDTH_PX;
}

static void
hut_extra_view_finalize (GObject *object)
{
  g_clear_pointer (&HUT_EXTRA_VIEW (object)->region, hut_region_free);
  G_OBJECT_CLASS (hut_extra_view_parent_class)->finalize (object);
}

static void
hut_extra_view_class_init (HutExtraViewClass *class)
{
  G_OBJECT_CLASS (class)->finalize = hut_extra_view_finalize;
  GTK_WIDGET_CLASS (class)->snapshot = hut_extra_view_snapshot;
  GTK_WIDGET_CLASS (class)->measure = hut_extra_view_measure;
  /* The numbers beside it say all. */
  gtk_widget_class_set_accessible_role (GTK_WIDGET_CLASS (class), GTK_ACCESSIBLE_ROLE_PRESENTATION);
}

static void
hut_extra_view_init (HutExtraView *self)
{
}

void
hut_extra_view_set_extra (HutExtraView *self,
                          const HutExtra *extra)
{
  g_return_if_fail (HUT_IS_EXTRA_VIEW (self));

  g_clear_pointer (&self->region, hut_region_free);
  if (extra != NULL)
    self->region = hut_extra_dup_region (extra, NULL, NULL);
  gtk_widget_queue_draw (GTK_WIDGET (self));
}

/* src/app/hut-opening-icon.c: a small drawing of an opening, all of them at one scale.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-app"
#include "config.h"
#include "app/hut-opening-icon.h"
#include "draw/hut-opening-view.h"
#include "draw/hut-snap.h"

/* Own choice: the largest ready opening (pattern of 10 x 3, 134 mm) just fits. */
#define ICON_PX 40
#define ICON_SCALE_PX_PER_MM 0.29
#define FILL_RATIO 0.12

struct _HutOpeningIcon
{
  GtkWidget parent;
  HutOpening *opening;
};

G_DEFINE_FINAL_TYPE (HutOpeningIcon, hut_opening_icon, GTK_TYPE_WIDGET)

static void
hut_opening_icon_snapshot (GtkWidget *widget,
                           GtkSnapshot *snapshot)
{
  HutOpeningIcon *self = HUT_OPENING_ICON (widget);
  const double width = gtk_widget_get_width (widget), height = gtk_widget_get_height (widget);
  const HutRect b = hut_snap_opening_bounds (self->opening);
  const double largest_mm = MAX (b.u1 - b.u0, b.v1 - b.v0);
  /* An opening larger than any ready one is drawn smaller rather than cut off. */
  const double scale
      = MIN (ICON_SCALE_PX_PER_MM, (MIN (width, height) - 2.0) / MAX (largest_mm, 1.0));
  cairo_t *cr = gtk_snapshot_append_cairo (
      snapshot, &GRAPHENE_RECT_INIT (0.0f, 0.0f, (float)width, (float)height));
  GdkRGBA c;

  gtk_style_context_get_color (gtk_widget_get_style_context (widget), &c);
  hut_opening_view_draw (cr, self->opening, (HutColour){ c.red, c.green, c.blue }, FILL_RATIO,
                         (HutPoint){ width / 2.0 - (b.u0 + b.u1) / 2.0 * scale,
                                     height / 2.0 + (b.v0 + b.v1) / 2.0 * scale },
                         scale);
  cairo_destroy (cr);
}

static void
hut_opening_icon_measure (GtkWidget *widget,
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
hut_opening_icon_finalize (GObject *object)
{
  hut_opening_free (HUT_OPENING_ICON (object)->opening);
  G_OBJECT_CLASS (hut_opening_icon_parent_class)->finalize (object);
}

static void
hut_opening_icon_class_init (HutOpeningIconClass *klass)
{
  G_OBJECT_CLASS (klass)->finalize = hut_opening_icon_finalize;
  GTK_WIDGET_CLASS (klass)->snapshot = hut_opening_icon_snapshot;
  GTK_WIDGET_CLASS (klass)->measure = hut_opening_icon_measure;
  /* The name beside it says all. */
  gtk_widget_class_set_accessible_role (GTK_WIDGET_CLASS (klass), GTK_ACCESSIBLE_ROLE_PRESENTATION);
}

static void
hut_opening_icon_init (HutOpeningIcon *self)
{
}

GtkWidget *
hut_opening_icon_new (const HutOpening *opening)
{
  g_return_val_if_fail (opening != NULL, NULL);

  HutOpeningIcon *self = g_object_new (HUT_TYPE_OPENING_ICON, NULL);

  self->opening = hut_opening_copy (opening);
  return GTK_WIDGET (self);
}

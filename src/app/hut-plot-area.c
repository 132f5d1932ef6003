/* src/app/hut-plot-area.c: a plot on the screen.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-app"
#include "config.h"
#include "app/hut-plot-area.h"
#include "app/hut-widget-look.h"
#include <glib/gi18n.h>
#include <locale.h>

/* Widths that a plot is legible and handy at, px: own choice. */
#define WIDTH_MIN_PX 300
#define WIDTH_USUAL_PX 420

struct _HutPlotArea
{
  GtkWidget parent_instance;

  HutPlot *plot;
};

G_DEFINE_TYPE (HutPlotArea, hut_plot_area, GTK_TYPE_WIDGET)

static const char *
translate (const char *msgid)
{
  return gettext (msgid);
}

static double
height_px (HutPlotArea *self)
{
  const HutInk ink = { .text_px = hut_widget_text_px (GTK_WIDGET (self)) };

  return self->plot != NULL ? hut_plot_height_px (self->plot, &ink, WIDTH_USUAL_PX) : 0;
}

static void
hut_plot_area_snapshot (GtkWidget *widget,
                        GtkSnapshot *snapshot)
{
  HutPlotArea *self = HUT_PLOT_AREA (widget);
  const double width_px = gtk_widget_get_width (widget);
  const double drawn_px = gtk_widget_get_height (widget);
  cairo_t *cr;
  HutInk ink;

  if (self->plot == NULL || width_px <= 0 || drawn_px <= 0)
    return;
  cr = gtk_snapshot_append_cairo (
      snapshot, &GRAPHENE_RECT_INIT (0.0f, 0.0f, (float)width_px, (float)drawn_px));
  hut_ink_begin (&ink, cr,
                 hut_palette_get (hut_widget_is_dark (widget),
                                  hut_widget_is_high_contrast (widget)),
                 width_px, drawn_px, hut_widget_text_px (widget));
  ink.translate = translate;
  ink.decimal_point = localeconv ()->decimal_point;
  hut_plot_draw (self->plot, &ink, 0, 0, width_px, drawn_px);
  hut_ink_end (&ink);
  cairo_destroy (cr);
}

static void
hut_plot_area_measure (GtkWidget *widget,
                       GtkOrientation orientation,
                       int for_size,
                       int *minimum,
                       int *natural,
                       int *minimum_baseline,
                       int *natural_baseline)
{
  if (orientation == GTK_ORIENTATION_HORIZONTAL)
    {
      *minimum = WIDTH_MIN_PX;
      *natural = WIDTH_USUAL_PX;
      return;
    }
  /* The same at any width: a wide plot need not be a high one. */
  *minimum = *natural = (int)ceil (height_px (HUT_PLOT_AREA (widget)));
}

static void
hut_plot_area_finalize (GObject *object)
{
  g_clear_pointer (&HUT_PLOT_AREA (object)->plot, hut_plot_free);
  G_OBJECT_CLASS (hut_plot_area_parent_class)->finalize (object);
}

static void
hut_plot_area_class_init (HutPlotAreaClass *class)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (class);

  G_OBJECT_CLASS (class)->finalize = hut_plot_area_finalize;
  widget_class->snapshot = hut_plot_area_snapshot;
  widget_class->measure = hut_plot_area_measure;
  gtk_widget_class_set_accessible_role (widget_class, GTK_ACCESSIBLE_ROLE_IMG);
}

static void
hut_plot_area_init (HutPlotArea *self)
{
  gtk_accessible_update_property (GTK_ACCESSIBLE (self), GTK_ACCESSIBLE_PROPERTY_LABEL, _("Plot"),
                                  -1);
}

GtkWidget *
hut_plot_area_new (void)
{
  return g_object_new (HUT_TYPE_PLOT_AREA, NULL);
}

void
hut_plot_area_take (HutPlotArea *self,
                    HutPlot *plot)
{
  g_return_if_fail (HUT_IS_PLOT_AREA (self));

  g_clear_pointer (&self->plot, hut_plot_free);
  self->plot = plot;
  gtk_widget_set_visible (GTK_WIDGET (self), plot != NULL);
  if (plot != NULL)
    gtk_accessible_update_property (GTK_ACCESSIBLE (self), GTK_ACCESSIBLE_PROPERTY_LABEL,
                                    _(plot->title), -1);
  gtk_widget_queue_resize (GTK_WIDGET (self));
}

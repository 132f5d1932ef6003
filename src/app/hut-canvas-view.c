/* src/app/hut-canvas-view.c: zoom and pan of the canvas.
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A wheel zooms to the pointer, a touch pad's two fingers move the view; with Ctrl both zoom, with
 * Shift the wheel moves sideways. */
#define G_LOG_DOMAIN "hut-app"
#include "config.h"
#include "app/hut-canvas-private.h"
#include <math.h>

/* Own choice. */
#define BORDER_PX 44.0           /* room round all panels for captions and sizes */
#define ZOOM_STEP_RATIO 1.25     /* per key or button */
#define WHEEL_STEP_RATIO 1.15    /* per notch */
#define WHEEL_PAN_PX 60.0        /* per notch */
#define SURFACE_ZOOM_RATIO 1.005 /* per px of a touch pad's scroll */
#define SCALE_MOST_PX_PER_MM 60.0
#define SCALE_LEAST_OF_FIT_RATIO 0.4 /* of the scale that shows all panels */
#define STAY_PX 60.0                 /* so much of the drawing stays in sight */
#define PLACE_AROUND_MM 60.0         /* what is shown around a finding's place */
#define PLACE_SHARE_RATIO 0.5        /* of the canvas that it takes at most */
#define ITEM_BORDER_PX 30.0

static HutFlatView
fit_view (HutCanvas *self)
{
  return hut_flat_view_fit (self->layout->bounds, gtk_widget_get_width (GTK_WIDGET (self)),
                            gtk_widget_get_height (GTK_WIDGET (self)), BORDER_PX);
}

/* The drawing must not get lost beyond the border. */
static void
keep_in_sight (HutCanvas *self)
{
  const double width = gtk_widget_get_width (GTK_WIDGET (self));
  const double height = gtk_widget_get_height (GTK_WIDGET (self));
  const double scale = self->view.scale_px_per_mm;
  const HutRect b = self->layout->bounds;

  self->view.pan_x_px
      = CLAMP (self->view.pan_x_px, STAY_PX - b.u1 * scale, width - STAY_PX - b.u0 * scale);
  self->view.pan_y_px
      = CLAMP (self->view.pan_y_px, STAY_PX + b.v0 * scale, height - STAY_PX + b.v1 * scale);
}

static void
set_view (HutCanvas *self,
          HutFlatView view,
          gboolean fitted)
{
  const double old_scale = self->view.scale_px_per_mm;

  self->view = view;
  self->fitted = fitted;
  if (!fitted)
    keep_in_sight (self);
  if (view.scale_px_per_mm != old_scale)
    g_object_notify (G_OBJECT (self), "scale");
  gtk_widget_queue_draw (GTK_WIDGET (self));
}

void
hut_canvas_fit (HutCanvas *self)
{
  if (self->layout != NULL)
    set_view (self, fit_view (self), TRUE);
}

/* Changes the scale so that the point under (x, y) stays there. */
static void
zoom_to (HutCanvas *self,
         double scale_px_per_mm,
         double x,
         double y)
{
  const double least = fit_view (self).scale_px_per_mm * SCALE_LEAST_OF_FIT_RATIO;
  const double scale
      = CLAMP (scale_px_per_mm, MIN (least, SCALE_MOST_PX_PER_MM), SCALE_MOST_PX_PER_MM);
  const double ratio = scale / self->view.scale_px_per_mm;

  set_view (self,
            (HutFlatView){ scale, x + (self->view.pan_x_px - x) * ratio,
                           y + (self->view.pan_y_px - y) * ratio },
            FALSE);
}

void
hut_canvas_pan (HutCanvas *self,
                double dx,
                double dy)
{
  HutFlatView view = self->view;

  view.pan_x_px += dx;
  view.pan_y_px += dy;
  set_view (self, view, FALSE);
}

double
hut_canvas_get_scale (HutCanvas *self)
{
  g_return_val_if_fail (HUT_IS_CANVAS (self), 1.0);

  return self->view.scale_px_per_mm;
}

/* Brings a rectangle of a panel to the middle, at a scale that shows it and its surrounding. */
static void
show_rect (HutCanvas *self,
           guint panel,
           HutRect rect)
{
  const double width = gtk_widget_get_width (GTK_WIDGET (self));
  const double height = gtk_widget_get_height (GTK_WIDGET (self));
  const HutPoint at = self->layout->at[panel];
  const HutRect around = { at.u + rect.u0 - PLACE_AROUND_MM, at.v + rect.v0 - PLACE_AROUND_MM,
                           at.u + rect.u1 + PLACE_AROUND_MM, at.v + rect.v1 + PLACE_AROUND_MM };
  HutFlatView view = hut_flat_view_fit (around, width, height, 0.0);
  const double fit = fit_view (self).scale_px_per_mm;
  const double scale = CLAMP (view.scale_px_per_mm * PLACE_SHARE_RATIO, fit, SCALE_MOST_PX_PER_MM);
  const double ratio = scale / view.scale_px_per_mm;

  view = (HutFlatView){ scale, width / 2.0 + (view.pan_x_px - width / 2.0) * ratio,
                        height / 2.0 + (view.pan_y_px - height / 2.0) * ratio };
  set_view (self, view, FALSE);
}

void
hut_canvas_show_place (HutCanvas *self,
                       const HutPlace *place)
{
  g_return_if_fail (HUT_IS_CANVAS (self) && place != NULL);

  const int panel = place->has_panel
                        ? hut_assembly_find_panel (hut_canvas_get_assembly (self), place->panel)
                        : -1;

  if (panel >= 0 && (guint)panel < self->layout->panel_count)
    show_rect (self, (guint)panel, place->rect);
}

/* How far [low, high] must be shifted to lie within [0, size]; its middle goes first if it is too
 * long. */
static double
shift_into (double low,
            double high,
            double size)
{
  if (high - low > size)
    return size / 2.0 - (low + high) / 2.0;
  if (low < 0.0)
    return -low;
  return high > size ? size - high : 0.0;
}

void
hut_canvas_show_item (HutCanvas *self,
                      const char *item)
{
  g_return_if_fail (HUT_IS_CANVAS (self));

  const HutPlacedHole *hole
      = item != NULL ? hut_assembly_get_hole (hut_canvas_get_assembly (self), item) : NULL;
  double x0, y0, x1, y1;

  if (hole == NULL || hole->panel >= self->layout->panel_count)
    return;
  hut_flat_view_to_px (&self->view, self->layout, hole->panel,
                       (HutPoint){ hole->bounds.u0, hole->bounds.v1 }, &x0, &y0);
  hut_flat_view_to_px (&self->view, self->layout, hole->panel,
                       (HutPoint){ hole->bounds.u1, hole->bounds.v0 }, &x1, &y1);
  const double dx = shift_into (x0 - ITEM_BORDER_PX, x1 + ITEM_BORDER_PX,
                                gtk_widget_get_width (GTK_WIDGET (self)));
  const double dy = shift_into (y0 - ITEM_BORDER_PX, y1 + ITEM_BORDER_PX,
                                gtk_widget_get_height (GTK_WIDGET (self)));
  if (dx != 0.0 || dy != 0.0)
    hut_canvas_pan (self, dx, dy);
}

gboolean
hut_canvas_locate (HutCanvas *self,
                   HutPanelId panel,
                   HutPoint at,
                   double *x,
                   double *y)
{
  g_return_val_if_fail (HUT_IS_CANVAS (self) && x != NULL && y != NULL, FALSE);

  const int index = hut_assembly_find_panel (hut_canvas_get_assembly (self), panel);

  if (index < 0)
    return FALSE;
  hut_flat_view_to_px (&self->view, self->layout, (guint)index, at, x, y);
  return TRUE;
}

static void
zoom_action (GtkWidget *widget,
             const char *name,
             GVariant *parameter)
{
  HutCanvas *self = HUT_CANVAS (widget);
  const double ratio
      = g_str_equal (name, "canvas.zoom-in") ? ZOOM_STEP_RATIO : 1.0 / ZOOM_STEP_RATIO;

  zoom_to (self, self->view.scale_px_per_mm * ratio, gtk_widget_get_width (widget) / 2.0,
           gtk_widget_get_height (widget) / 2.0);
}

static void
fit_action (GtkWidget *widget,
            const char *name,
            GVariant *parameter)
{
  hut_canvas_fit (HUT_CANVAS (widget));
}

static void
zoom_selection_action (GtkWidget *widget,
                       const char *name,
                       GVariant *parameter)
{
  HutCanvas *self = HUT_CANVAS (widget);
  const char *item = hut_session_get_selected (self->session);
  const HutPlacedHole *hole
      = item != NULL ? hut_assembly_get_hole (hut_canvas_get_assembly (self), item) : NULL;

  if (hole != NULL && hole->panel < self->layout->panel_count)
    show_rect (self, hole->panel, hole->bounds);
}

static gboolean
on_scroll (HutCanvas *self,
           double dx,
           double dy,
           GtkEventControllerScroll *scroll)
{
  const GdkModifierType held
      = gtk_event_controller_get_current_event_state (GTK_EVENT_CONTROLLER (scroll));
  const gboolean surface = gtk_event_controller_scroll_get_unit (scroll) == GDK_SCROLL_UNIT_SURFACE;
  const gboolean zooms
      = (held & GDK_CONTROL_MASK) != 0 || (!surface && (held & GDK_SHIFT_MASK) == 0);

  if (zooms)
    {
      const double ratio = pow (surface ? SURFACE_ZOOM_RATIO : WHEEL_STEP_RATIO, -dy);

      zoom_to (self, self->view.scale_px_per_mm * ratio, self->pointer_x, self->pointer_y);
      if (!surface && dx != 0.0)
        hut_canvas_pan (self, -dx * WHEEL_PAN_PX, 0.0);
    }
  else if (surface)
    hut_canvas_pan (self, -dx, -dy);
  else /* Shift and a wheel; some systems turn dy into dx themselves */
    hut_canvas_pan (self, -(dx + dy) * WHEEL_PAN_PX, 0.0);
  return TRUE;
}

/* The scale factor of GtkGestureZoom counts from the start of the pinch. */
static void
on_pinch_begin (GtkGesture *pinch,
                GdkEventSequence *sequence,
                HutCanvas *self)
{
  self->pinch_scale_px_per_mm = self->view.scale_px_per_mm;
  hut_canvas_cancel_drag (self);
  gtk_gesture_set_state (pinch, GTK_EVENT_SEQUENCE_CLAIMED);
}

static void
on_pinch (GtkGestureZoom *pinch,
          double factor,
          HutCanvas *self)
{
  double x, y;

  if (gtk_gesture_get_bounding_box_center (GTK_GESTURE (pinch), &x, &y))
    zoom_to (self, self->pinch_scale_px_per_mm * factor, x, y);
}

void
hut_canvas_view_class_init (GtkWidgetClass *klass)
{
  static const struct
  {
    guint key;
    const char *action;
  } keys[] = {
    { GDK_KEY_plus, "canvas.zoom-in" },         { GDK_KEY_equal, "canvas.zoom-in" },
    { GDK_KEY_KP_Add, "canvas.zoom-in" },       { GDK_KEY_minus, "canvas.zoom-out" },
    { GDK_KEY_KP_Subtract, "canvas.zoom-out" }, { GDK_KEY_0, "canvas.zoom-fit" },
    { GDK_KEY_KP_0, "canvas.zoom-fit" },        { GDK_KEY_9, "canvas.zoom-selection" },
  };

  gtk_widget_class_install_action (klass, "canvas.zoom-in", NULL, zoom_action);
  gtk_widget_class_install_action (klass, "canvas.zoom-out", NULL, zoom_action);
  gtk_widget_class_install_action (klass, "canvas.zoom-fit", NULL, fit_action);
  gtk_widget_class_install_action (klass, "canvas.zoom-selection", NULL, zoom_selection_action);
  for (gsize i = 0; i < G_N_ELEMENTS (keys); i++)
    gtk_widget_class_add_binding_action (klass, keys[i].key, GDK_CONTROL_MASK, keys[i].action,
                                         NULL);
}

void
hut_canvas_view_init (HutCanvas *self)
{
  GtkEventController *scroll
      = gtk_event_controller_scroll_new (GTK_EVENT_CONTROLLER_SCROLL_BOTH_AXES);
  GtkGesture *pinch = gtk_gesture_zoom_new ();

  g_signal_connect_swapped (scroll, "scroll", G_CALLBACK (on_scroll), self);
  gtk_widget_add_controller (GTK_WIDGET (self), scroll);
  g_signal_connect (pinch, "begin", G_CALLBACK (on_pinch_begin), self);
  g_signal_connect (pinch, "scale-changed", G_CALLBACK (on_pinch), self);
  gtk_widget_add_controller (GTK_WIDGET (self), GTK_EVENT_CONTROLLER (pinch));
}

/* src/app/hut-built-area.c: the enclosure in space, to be turned by pointer and keys.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-app"
#include "config.h"
#include "app/hut-built-area.h"
#include "app/hut-widget-look.h"
#include <glib/gi18n.h>

/* Own choices. */
#define BORDER_PX 32.0
#define TURN_PER_PX_RAD 0.008
#define KEY_TURN_RAD (G_PI / 24.0)
#define ZOOM_STEP_RATIO 1.25
#define ZOOM_MIN_RATIO 0.2
#define ZOOM_MAX_RATIO 40.0
#define NOTHING (-1)

struct _HutBuiltArea
{
  GtkWidget parent_instance;

  HutSession *session;
  HutBuiltPose pose;
  HutBuiltModel *model; /* NULL: to be made when it is drawn next */
  HutBuiltView view;    /* fitted; zoom and shift come on top of it */
  double zoom_ratio;
  HutPoint shift_px;
  HutBuiltView drag_view; /* as a drag began */
  HutPoint drag_shift_px;
  gboolean drag_moves; /* else it turns */
};

G_DEFINE_TYPE (HutBuiltArea, hut_built_area, GTK_TYPE_WIDGET)

/* ---- drawing --------------------------------------------------------------------------------- */

static int
selected_panel (HutBuiltArea *self)
{
  const char *item = hut_session_get_selected (self->session);
  const HutDesign *design = hut_session_get_design (self->session);
  const HutOpening *opening = item != NULL ? hut_design_get_opening (design, item) : NULL;
  const HutWindow *window = item != NULL ? hut_design_get_window (design, item) : NULL;

  if (opening == NULL && window == NULL)
    return NOTHING;
  return hut_assembly_find_panel (hut_session_get_assembly (self->session),
                                  opening != NULL ? opening->at.panel : window->at.panel);
}

/* The view as it is seen: fitted, then zoomed about the middle and shifted. */
HutBuiltView
hut_built_area_get_view (HutBuiltArea *self)
{
  HutBuiltView view = self->view;
  const double width_px = gtk_widget_get_width (GTK_WIDGET (self)),
               height_px = gtk_widget_get_height (GTK_WIDGET (self));

  g_return_val_if_fail (HUT_IS_BUILT_AREA (self), view);

  view.scale_px_per_mm *= self->zoom_ratio;
  view.x_px = width_px / 2.0 + (view.x_px - width_px / 2.0) * self->zoom_ratio + self->shift_px.u;
  view.y_px = height_px / 2.0 + (view.y_px - height_px / 2.0) * self->zoom_ratio + self->shift_px.v;
  return view;
}

static void
hut_built_area_snapshot (GtkWidget *widget, GtkSnapshot *snapshot)
{
  HutBuiltArea *self = HUT_BUILT_AREA (widget);
  const int width = gtk_widget_get_width (widget), height = gtk_widget_get_height (widget);
  const HutPalette *palette
      = hut_palette_get (hut_widget_is_dark (widget), hut_widget_is_high_contrast (widget));
  HutBuiltView view;
  cairo_t *cr;

  if (self->session == NULL || width <= 0 || height <= 0)
    return;
  if (self->model == NULL)
    self->model = hut_built_model_new (hut_session_get_assembly (self->session),
                                       hut_session_get_parts (self->session), &self->pose);
  hut_built_view_fit (&self->view, self->model, width, height, BORDER_PX);
  view = hut_built_area_get_view (self);
  cr = gtk_snapshot_append_cairo (snapshot,
                                  &GRAPHENE_RECT_INIT (0.0f, 0.0f, (float)width, (float)height));
  hut_built_draw (cr, self->model, &view, palette, selected_panel (self), width, height);
  cairo_destroy (cr);
}

static void
make_anew (HutBuiltArea *self)
{
  g_clear_pointer (&self->model, hut_built_model_free);
  gtk_widget_queue_draw (GTK_WIDGET (self));
}

/* ---- turning, moving, zooming ---------------------------------------------------------------- */

static void
turn (HutBuiltArea *self, double yaw_rad, double pitch_rad)
{
  self->view.yaw_rad = remainder (yaw_rad, 2.0 * G_PI);
  self->view.pitch_rad = CLAMP (pitch_rad, -HUT_BUILT_PITCH_MAX_RAD, HUT_BUILT_PITCH_MAX_RAD);
  gtk_widget_queue_draw (GTK_WIDGET (self));
}

static void
zoom (HutBuiltArea *self, double factor_ratio)
{
  self->zoom_ratio = CLAMP (self->zoom_ratio * factor_ratio, ZOOM_MIN_RATIO, ZOOM_MAX_RATIO);
  gtk_widget_queue_draw (GTK_WIDGET (self));
}

static void
zoom_action (GtkWidget *widget, const char *name, GVariant *parameter)
{
  HutBuiltArea *self = HUT_BUILT_AREA (widget);

  if (g_str_has_suffix (name, "in"))
    zoom (self, ZOOM_STEP_RATIO);
  else
    zoom (self, 1.0 / ZOOM_STEP_RATIO);
}

static void
fit_action (GtkWidget *widget, const char *name, GVariant *parameter)
{
  HutBuiltArea *self = HUT_BUILT_AREA (widget);

  self->zoom_ratio = 1.0;
  self->shift_px = (HutPoint){ 0.0, 0.0 };
  hut_built_view_reset (&self->view);
  gtk_widget_queue_draw (widget);
}

static gboolean
on_turn_key (GtkWidget *widget, GVariant *arguments, gpointer user_data)
{
  HutBuiltArea *self = HUT_BUILT_AREA (widget);
  double yaw, pitch;

  g_variant_get (arguments, "(dd)", &yaw, &pitch);
  turn (self, self->view.yaw_rad + yaw * KEY_TURN_RAD, self->view.pitch_rad + pitch * KEY_TURN_RAD);
  return TRUE;
}

static void
on_drag_begin (HutBuiltArea *self, double x, double y, GtkGestureDrag *drag)
{
  const GdkModifierType held
      = gtk_event_controller_get_current_event_state (GTK_EVENT_CONTROLLER (drag));

  gtk_widget_grab_focus (GTK_WIDGET (self));
  self->drag_view = self->view;
  self->drag_shift_px = self->shift_px;
  self->drag_moves
      = (held & GDK_SHIFT_MASK) != 0
        || gtk_gesture_single_get_current_button (GTK_GESTURE_SINGLE (drag)) != GDK_BUTTON_PRIMARY;
}

static void
on_drag_update (HutBuiltArea *self, double x, double y)
{
  if (self->drag_moves)
    {
      self->shift_px = (HutPoint){ self->drag_shift_px.u + x, self->drag_shift_px.v + y };
      gtk_widget_queue_draw (GTK_WIDGET (self));
    }
  else
    turn (self, self->drag_view.yaw_rad - x * TURN_PER_PX_RAD,
          self->drag_view.pitch_rad + y * TURN_PER_PX_RAD);
}

static gboolean
on_scroll (HutBuiltArea *self, double dx, double dy)
{
  zoom (self, pow (ZOOM_STEP_RATIO, -dy));
  return GDK_EVENT_STOP;
}

/* ---- the widget ------------------------------------------------------------------------------ */

static void
hut_built_area_dispose (GObject *object)
{
  HutBuiltArea *self = HUT_BUILT_AREA (object);

  g_clear_pointer (&self->model, hut_built_model_free);
  g_clear_object (&self->session);
  G_OBJECT_CLASS (hut_built_area_parent_class)->dispose (object);
}

static void
bind_key (GtkWidgetClass *class, guint key, guint keypad_key, double yaw, double pitch)
{
  gtk_widget_class_add_binding (class, key, 0, on_turn_key, "(dd)", yaw, pitch);
  gtk_widget_class_add_binding (class, keypad_key, 0, on_turn_key, "(dd)", yaw, pitch);
}

static void
hut_built_area_class_init (HutBuiltAreaClass *class)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (class);

  G_OBJECT_CLASS (class)->dispose = hut_built_area_dispose;
  widget_class->snapshot = hut_built_area_snapshot;
  gtk_widget_class_set_accessible_role (widget_class, GTK_ACCESSIBLE_ROLE_IMG);
  gtk_widget_class_install_action (widget_class, "built.zoom-in", NULL, zoom_action);
  gtk_widget_class_install_action (widget_class, "built.zoom-out", NULL, zoom_action);
  gtk_widget_class_install_action (widget_class, "built.zoom-fit", NULL, fit_action);
  bind_key (widget_class, GDK_KEY_Left, GDK_KEY_KP_Left, 1.0, 0.0);
  bind_key (widget_class, GDK_KEY_Right, GDK_KEY_KP_Right, -1.0, 0.0);
  bind_key (widget_class, GDK_KEY_Up, GDK_KEY_KP_Up, 0.0, 1.0);
  bind_key (widget_class, GDK_KEY_Down, GDK_KEY_KP_Down, 0.0, -1.0);
  gtk_widget_class_add_binding_action (widget_class, GDK_KEY_Home, 0, "built.zoom-fit", NULL);
}

static void
hut_built_area_init (HutBuiltArea *self)
{
  GtkGesture *drag = gtk_gesture_drag_new ();
  GtkEventController *scroll
      = gtk_event_controller_scroll_new (GTK_EVENT_CONTROLLER_SCROLL_VERTICAL);

  self->zoom_ratio = 1.0;
  hut_built_view_reset (&self->view);
  gtk_widget_set_focusable (GTK_WIDGET (self), TRUE);
  gtk_widget_set_overflow (GTK_WIDGET (self), GTK_OVERFLOW_HIDDEN);
  gtk_gesture_single_set_button (GTK_GESTURE_SINGLE (drag), 0);
  g_signal_connect_swapped (drag, "drag-begin", G_CALLBACK (on_drag_begin), self);
  g_signal_connect_swapped (drag, "drag-update", G_CALLBACK (on_drag_update), self);
  g_signal_connect_swapped (scroll, "scroll", G_CALLBACK (on_scroll), self);
  gtk_widget_add_controller (GTK_WIDGET (self), GTK_EVENT_CONTROLLER (drag));
  gtk_widget_add_controller (GTK_WIDGET (self), scroll);
}

void
hut_built_area_set_session (HutBuiltArea *self, HutSession *session)
{
  g_return_if_fail (HUT_IS_BUILT_AREA (self) && HUT_IS_SESSION (session));
  g_return_if_fail (self->session == NULL);

  self->session = g_object_ref (session);
  g_signal_connect_object (session, "derived", G_CALLBACK (make_anew), self, G_CONNECT_SWAPPED);
  g_signal_connect_object (session, "selection-changed", G_CALLBACK (gtk_widget_queue_draw), self,
                           G_CONNECT_SWAPPED);
}

void
hut_built_area_set_pose (HutBuiltArea *self, const HutBuiltPose *pose)
{
  g_return_if_fail (HUT_IS_BUILT_AREA (self) && pose != NULL);

  self->pose = *pose;
  make_anew (self);
}

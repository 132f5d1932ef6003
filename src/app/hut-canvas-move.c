/* src/app/hut-canvas-move.c: select, move, size and pan with the pointer.
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A press selects; what happens next is decided by what was under it: a finding's badge, a handle
 * of the selected item, an item, or nothing (then the view is dragged). All changes of one drag are
 * one gesture of the session: one undo step, taken back as a whole by Escape. */
#define G_LOG_DOMAIN "hut-app"
#include "config.h"
#include "app/hut-canvas-private.h"
#include "draw/hut-flat-marks.h"
#include <glib/gi18n.h>
#include <math.h>

/* Own choice. */
#define PICK_REACH_PX 4.0
#define SNAP_REACH_PX 9.0
#define SIZE_LEAST_MM 1.0

/* ---- stops ---------------------------------------------------------------------------------- */

void
hut_canvas_forget_stop (HutCanvas *self)
{
  self->snapped.guide_count = 0;
  self->drag.has_target = FALSE;
}

/* The stop on a given panel. */
static void
find_stop_on (HutCanvas *self,
              const HutSnapQuery *query,
              HutPoint wanted,
              HutPanelId *panel,
              HutPoint *at)
{
  const HutAssembly *assembly = hut_canvas_get_assembly (self);
  const HutPanel *found = g_ptr_array_index (assembly->panels, query->panel);

  hut_snap_find (assembly, query, wanted, &self->snapped);
  *panel = found->id;
  *at = self->snapped.at;
  self->drag.target = found->id;
  self->drag.has_target = TRUE;
}

static HutSnapQuery
make_query (HutCanvas *self,
            guint panel,
            const char *item,
            HutRect bounds,
            gboolean snap)
{
  return (HutSnapQuery){
    .panel = panel,
    .item = item,
    .bounds = bounds,
    .reach_mm = snap && self->snap ? SNAP_REACH_PX / self->view.scale_px_per_mm : 0.0,
    .step_mm = hut_snap_step_mm (self->view.scale_px_per_mm),
  };
}

gboolean
hut_canvas_find_stop (HutCanvas *self,
                      const char *item,
                      HutRect bounds,
                      HutPoint middle_px,
                      gboolean snap,
                      HutPanelId *panel,
                      HutPoint *at)
{
  HutPoint wanted;
  const int index = hut_flat_pick_panel (self->layout, hut_canvas_get_assembly (self), &self->view,
                                         middle_px.u, middle_px.v, &wanted);

  if (index < 0)
    {
      hut_canvas_forget_stop (self);
      return FALSE;
    }
  const HutSnapQuery query = make_query (self, (guint)index, item, bounds, snap);
  find_stop_on (self, &query, wanted, panel, at);
  return TRUE;
}

/* ---- moving --------------------------------------------------------------------------------- */

static void
begin_move (HutCanvas *self,
            double x,
            double y)
{
  const HutPlacedHole *hole
      = hut_assembly_get_hole (hut_canvas_get_assembly (self), self->drag.item);
  double middle_x, middle_y;

  hut_flat_view_to_px (&self->view, self->layout, hole->panel, hole->centre, &middle_x, &middle_y);
  self->drag.grab_x = middle_x - x;
  self->drag.grab_y = middle_y - y;
}

static void
move_to (HutCanvas *self,
         double x,
         double y,
         gboolean snap)
{
  const HutAssembly *assembly = hut_canvas_get_assembly (self);
  const HutPlacedHole *hole = hut_assembly_get_hole (assembly, self->drag.item);
  const HutPoint middle_px = { x + self->drag.grab_x, y + self->drag.grab_y };
  HutPanelId panel;
  HutRect bounds;
  HutPoint at;

  if (hole == NULL || !hut_snap_item_bounds (assembly, self->drag.item, &bounds))
    return;
  if (!hut_canvas_find_stop (self, self->drag.item, bounds, middle_px, snap, &panel, &at))
    {
      /* Between panels it stays on its own one, with its middle on the border. */
      const HutPanel *own = g_ptr_array_index (assembly->panels, hole->panel);
      const HutSnapQuery query = make_query (self, hole->panel, self->drag.item, bounds, FALSE);
      HutPoint wanted = hut_flat_view_to_panel (&self->view, self->layout, hole->panel, middle_px.u,
                                                middle_px.v);

      wanted.u = CLAMP (wanted.u, 0.0, own->width_mm);
      wanted.v = CLAMP (wanted.v, 0.0, own->height_mm);
      find_stop_on (self, &query, wanted, &panel, &at);
    }
  hut_session_move_item (self->session, self->drag.item, panel, at);
}

/* ---- sizing --------------------------------------------------------------------------------- */

typedef struct
{
  const char *item;
  double half_u_mm, half_v_mm; /* from the middle to the dragged corner, in the item's own axes */
  double step_mm;
} Resize;

static double
size_of (double half_mm,
         double step_mm)
{
  return MAX (SIZE_LEAST_MM, hut_snap_mm (round (2.0 * fabs (half_mm) / step_mm) * step_mm));
}

static gboolean
resize_item (HutDesign *design,
             gpointer user_data)
{
  const Resize *resize = user_data;
  HutOpening *opening = hut_design_get_opening (design, resize->item);
  HutWindow *window = hut_design_get_window (design, resize->item);
  const double width_mm = size_of (resize->half_u_mm, resize->step_mm);
  const double height_mm = size_of (resize->half_v_mm, resize->step_mm);

  if (window != NULL && opening == NULL)
    {
      window->width_mm = width_mm;
      window->height_mm = height_mm;
      return TRUE;
    }
  if (opening == NULL || opening->shape == HUT_SHAPE_PATTERN)
    return FALSE;
  if (opening->shape == HUT_SHAPE_ROUND)
    opening->diameter_mm = MAX (width_mm, height_mm);
  else
    {
      opening->width_mm = width_mm;
      opening->height_mm = height_mm;
    }
  if (opening->shape == HUT_SHAPE_SLOT) /* a slot is never broader than long */
    opening->height_mm = MIN (opening->height_mm, opening->width_mm);
  return TRUE;
}

static void
begin_resize (HutCanvas *self,
              double x,
              double y)
{
  const HutPlacedHole *hole
      = hut_assembly_get_hole (hut_canvas_get_assembly (self), self->drag.item);
  const gboolean right
      = self->drag.handle == HUT_HANDLE_LOWER_RIGHT || self->drag.handle == HUT_HANDLE_UPPER_RIGHT;
  const gboolean upper
      = self->drag.handle == HUT_HANDLE_UPPER_LEFT || self->drag.handle == HUT_HANDLE_UPPER_RIGHT;
  const HutPoint corner
      = { right ? hole->bounds.u1 : hole->bounds.u0, upper ? hole->bounds.v1 : hole->bounds.v0 };
  double corner_x, corner_y;

  hut_flat_view_to_px (&self->view, self->layout, hole->panel, corner, &corner_x, &corner_y);
  self->drag.grab_x = corner_x - x;
  self->drag.grab_y = corner_y - y;
}

static void
resize_to (HutCanvas *self,
           double x,
           double y)
{
  const HutAssembly *assembly = hut_canvas_get_assembly (self);
  const HutPlacedHole *hole = hut_assembly_get_hole (assembly, self->drag.item);
  const HutOpening *opening = hut_design_get_opening (assembly->design, self->drag.item);
  const double degree_rad = G_PI / 180.0;
  const double turn_rad = opening != NULL ? opening->turn_deg * degree_rad : 0.0;

  if (hole == NULL)
    return;
  const HutPoint p = hut_flat_view_to_panel (&self->view, self->layout, hole->panel,
                                             x + self->drag.grab_x, y + self->drag.grab_y);
  const double du_mm = p.u - hole->centre.u, dv_mm = p.v - hole->centre.v;
  Resize resize = {
    .item = self->drag.item,
    .half_u_mm = du_mm * cos (turn_rad) + dv_mm * sin (turn_rad),
    .half_v_mm = dv_mm * cos (turn_rad) - du_mm * sin (turn_rad),
    .step_mm = hut_snap_step_mm (self->view.scale_px_per_mm),
  };
  hut_session_edit (self->session, _ ("Resize"), resize_item, &resize);
}

/* ---- the drag ------------------------------------------------------------------------------- */

static gboolean
select_badge (HutCanvas *self,
              double x,
              double y)
{
  g_autoptr (GArray) marks
      = hut_flat_marks_new (hut_session_get_findings (self->session),
                            hut_canvas_get_assembly (self), self->layout, &self->view);
  const int finding = hut_flat_marks_pick (marks, x, y);

  if (finding >= 0)
    hut_session_select_finding (self->session, finding);
  return finding >= 0;
}

static void
set_drag_item (HutCanvas *self,
               HutDragKind kind,
               const char *item)
{
  self->drag.kind = kind;
  g_free (self->drag.item);
  self->drag.item = g_strdup (item);
}

static void
on_drag_begin (HutCanvas *self,
               double x,
               double y,
               GtkGestureDrag *gesture)
{
  const HutAssembly *assembly = hut_canvas_get_assembly (self);
  const char *selected = hut_session_get_selected (self->session);
  const char *item;

  gtk_widget_grab_focus (GTK_WIDGET (self));
  self->drag.start_x = self->drag.last_x = x;
  self->drag.start_y = self->drag.last_y = y;
  self->drag.handle = HUT_HANDLE_NONE;
  if (!self->space_held && select_badge (self, x, y))
    {
      self->drag.kind = HUT_DRAG_NONE;
      return;
    }
  if (!self->space_held)
    self->drag.handle = hut_flat_pick_handle (self->layout, assembly, &self->view, selected, x, y);
  item = self->drag.handle != HUT_HANDLE_NONE
             ? selected
             : hut_flat_pick_item (self->layout, assembly, &self->view, x, y, PICK_REACH_PX);
  if (item == NULL || self->space_held)
    {
      set_drag_item (self, HUT_DRAG_PRESSED, NULL); /* becomes a pan once it moves */
      return;
    }
  set_drag_item (self, HUT_DRAG_PRESSED, item);
  hut_session_select_finding (self->session, -1);
  hut_session_select (self->session, self->drag.item);
}

static gboolean
pass_threshold (HutCanvas *self,
                double dx,
                double dy,
                GtkGestureDrag *gesture)
{
  if (!gtk_drag_check_threshold (GTK_WIDGET (self), 0, 0, (int)dx, (int)dy))
    return FALSE;
  gtk_gesture_set_state (GTK_GESTURE (gesture), GTK_EVENT_SEQUENCE_CLAIMED);
  if (self->drag.item == NULL)
    self->drag.kind = HUT_DRAG_PAN;
  else if (hut_assembly_get_hole (hut_canvas_get_assembly (self), self->drag.item) == NULL)
    self->drag.kind = HUT_DRAG_NONE;
  else if (self->drag.handle != HUT_HANDLE_NONE)
    {
      self->drag.kind = HUT_DRAG_RESIZE;
      begin_resize (self, self->drag.start_x, self->drag.start_y);
      hut_session_begin_gesture (self->session, _ ("Resize"));
    }
  else
    {
      self->drag.kind = HUT_DRAG_MOVE;
      begin_move (self, self->drag.start_x, self->drag.start_y);
      hut_session_begin_gesture (self->session, _ ("Move"));
    }
  hut_canvas_update_cursor (self);
  return TRUE;
}

static void
pan_to (HutCanvas *self,
        double x,
        double y)
{
  hut_canvas_pan (self, x - self->drag.last_x, y - self->drag.last_y);
  self->drag.last_x = x;
  self->drag.last_y = y;
}

static void
on_drag_update (HutCanvas *self,
                double dx,
                double dy,
                GtkGestureDrag *gesture)
{
  const double x = self->drag.start_x + dx, y = self->drag.start_y + dy;
  const GdkModifierType held
      = gtk_event_controller_get_current_event_state (GTK_EVENT_CONTROLLER (gesture));

  if (self->drag.kind == HUT_DRAG_PRESSED && !pass_threshold (self, dx, dy, gesture))
    return;
  if (self->drag.kind == HUT_DRAG_PAN)
    pan_to (self, x, y);
  else if (self->drag.kind == HUT_DRAG_MOVE)
    move_to (self, x, y, (held & GDK_CONTROL_MASK) == 0);
  else if (self->drag.kind == HUT_DRAG_RESIZE)
    resize_to (self, x, y);
}

static void
finish_drag (HutCanvas *self)
{
  self->drag.kind = HUT_DRAG_NONE;
  g_clear_pointer (&self->drag.item, g_free);
  g_clear_pointer (&self->drag.model, hut_opening_free);
  g_clear_pointer (&self->drag.model_item, hut_item_free);
  hut_canvas_forget_stop (self);
  hut_canvas_update_cursor (self);
  gtk_widget_queue_draw (GTK_WIDGET (self));
}

static void
on_drag_end (HutCanvas *self)
{
  const HutDragKind kind = self->drag.kind;

  if (kind == HUT_DRAG_MOVE || kind == HUT_DRAG_RESIZE)
    hut_session_end_gesture (self->session);
  else if (kind == HUT_DRAG_PRESSED && self->drag.item == NULL && !self->space_held)
    {
      /* A click beside everything. */
      hut_session_select_finding (self->session, -1);
      hut_session_select (self->session, NULL);
    }
  if (kind != HUT_DRAG_DROP)
    finish_drag (self);
}

gboolean
hut_canvas_cancel_drag (HutCanvas *self)
{
  const HutDragKind kind = self->drag.kind;

  if (kind == HUT_DRAG_NONE)
    return FALSE;
  /* The preview's item goes with the gesture. */
  if (kind == HUT_DRAG_MOVE || kind == HUT_DRAG_RESIZE
      || (kind == HUT_DRAG_DROP && self->drag.item != NULL))
    hut_session_cancel_gesture (self->session);
  finish_drag (self);
  return TRUE;
}

/* The system took the pointer away. */
static void
on_drag_cancel (HutCanvas *self)
{
  if (self->drag.kind != HUT_DRAG_DROP)
    hut_canvas_cancel_drag (self);
}

static void
on_middle_begin (HutCanvas *self,
                 double x,
                 double y)
{
  hut_canvas_cancel_drag (self);
  self->drag.start_x = self->drag.last_x = x;
  self->drag.start_y = self->drag.last_y = y;
  self->drag.kind = HUT_DRAG_PAN;
  hut_canvas_update_cursor (self);
}

static void
on_middle_update (HutCanvas *self,
                  double dx,
                  double dy)
{
  if (self->drag.kind == HUT_DRAG_PAN)
    pan_to (self, self->drag.start_x + dx, self->drag.start_y + dy);
}

static void
on_click (HutCanvas *self,
          int count,
          double x,
          double y)
{
  const char *item = hut_flat_pick_item (self->layout, hut_canvas_get_assembly (self), &self->view,
                                         x, y, PICK_REACH_PX);
  const int double_click = 2;

  if (count == double_click && item != NULL)
    g_signal_emit_by_name (self, "activate-item", item);
}

void
hut_canvas_move_init (HutCanvas *self)
{
  GtkGesture *drag = gtk_gesture_drag_new (), *middle = gtk_gesture_drag_new (),
             *click = gtk_gesture_click_new ();

  gtk_gesture_single_set_button (GTK_GESTURE_SINGLE (drag), GDK_BUTTON_PRIMARY);
  g_signal_connect_swapped (drag, "drag-begin", G_CALLBACK (on_drag_begin), self);
  g_signal_connect_swapped (drag, "drag-update", G_CALLBACK (on_drag_update), self);
  g_signal_connect_swapped (drag, "drag-end", G_CALLBACK (on_drag_end), self);
  g_signal_connect_swapped (drag, "cancel", G_CALLBACK (on_drag_cancel), self);
  gtk_widget_add_controller (GTK_WIDGET (self), GTK_EVENT_CONTROLLER (drag));

  gtk_gesture_single_set_button (GTK_GESTURE_SINGLE (middle), GDK_BUTTON_MIDDLE);
  g_signal_connect_swapped (middle, "drag-begin", G_CALLBACK (on_middle_begin), self);
  g_signal_connect_swapped (middle, "drag-update", G_CALLBACK (on_middle_update), self);
  g_signal_connect_swapped (middle, "drag-end", G_CALLBACK (hut_canvas_cancel_drag), self);
  gtk_widget_add_controller (GTK_WIDGET (self), GTK_EVENT_CONTROLLER (middle));

  g_signal_connect_swapped (click, "pressed", G_CALLBACK (on_click), self);
  gtk_widget_add_controller (GTK_WIDGET (self), GTK_EVENT_CONTROLLER (click));
  gtk_gesture_group (drag, click);
}

/* src/app/hut-canvas-drop.c: openings and hardware from the shelf, dropped onto a panel.
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * While the thing hovers over a panel it is already part of the design, inside a gesture of the
 * session: so its findings are live. Leaving cancels the gesture, dropping ends it: one undo step.
 */
#define G_LOG_DOMAIN "hut-app"
#include "config.h"
#include "app/hut-canvas-private.h"
#include "app/hut-item-type.h"
#include "app/hut-opening-type.h"
#include "app/hut-session-hardware.h"
#include "app/hut-shelf-row.h"
#include "draw/hut-item-place.h"
#include <glib/gi18n.h>

/* Drag events carry no modifiers: ask the pointer itself. */
static gboolean
control_is_held (GtkWidget *widget)
{
  GdkSurface *surface = gtk_native_get_surface (gtk_widget_get_native (widget));
  GdkDevice *pointer
      = gdk_seat_get_pointer (gdk_display_get_default_seat (gtk_widget_get_display (widget)));
  GdkModifierType held = 0;

  if (pointer != NULL)
    gdk_surface_get_device_position (surface, pointer, NULL, NULL, &held);
  return (held & GDK_CONTROL_MASK) != 0;
}

static gboolean
has_model (const HutCanvas *self)
{
  return self->drag.model != NULL || self->drag.model_item != NULL;
}

static void
take_value (HutCanvas *self,
            const GValue *value)
{
  if (has_model (self) || value == NULL)
    return;
  if (G_VALUE_HOLDS (value, HUT_TYPE_OPENING))
    self->drag.model = hut_opening_copy (g_value_get_boxed (value));
  else if (G_VALUE_HOLDS (value, HUT_TYPE_ITEM))
    self->drag.model_item = hut_item_copy (g_value_get_boxed (value));
}

/* The value is there at once for drags within the program; others may take a while. */
static gboolean
take_model (HutCanvas *self,
            GtkDropTarget *target)
{
  take_value (self, gtk_drop_target_get_value (target));
  return has_model (self);
}

static const char *
model_name (const HutCanvas *self)
{
  return self->drag.model != NULL ? self->drag.model->name
                                  : hut_shelf_row_get_item_name (self->drag.model_item);
}

static HutRect
model_bounds (const HutCanvas *self)
{
  return self->drag.model != NULL
             ? hut_snap_opening_bounds (self->drag.model)
             : hut_item_place_bounds (self->drag.model_item);
}

static const char *
add_model (HutCanvas *self,
           HutPanelId panel,
           HutPoint at)
{
  if (self->drag.model != NULL)
    return hut_session_add_opening (self->session, self->drag.model, panel, at);
  return hut_session_add_hardware (self->session, self->drag.model_item, model_name (self), panel,
                                   at);
}

static void
drop_preview (HutCanvas *self)
{
  if (self->drag.item == NULL)
    return;
  g_clear_pointer (&self->drag.item, g_free);
  hut_session_cancel_gesture (self->session);
}

/* Puts the preview where it would stop; takes it away where there is no panel. */
static gboolean
preview_at (HutCanvas *self,
            GtkDropTarget *target,
            double x,
            double y)
{
  HutPanelId panel;
  HutPoint at;

  if (!take_model (self, target)
      || !hut_canvas_find_stop (self, self->drag.item, model_bounds (self),
                                (HutPoint){ x, y }, !control_is_held (GTK_WIDGET (self)), &panel,
                                &at))
    {
      drop_preview (self);
      gtk_widget_queue_draw (GTK_WIDGET (self));
      return FALSE;
    }
  self->drag.kind = HUT_DRAG_DROP;
  if (self->drag.item != NULL)
    {
      /* FALSE only says that it is there already. */
      hut_session_move_item (self->session, self->drag.item, panel, at);
      return TRUE;
    }

  /* Translators: what Undo takes back; %s is an opening, such as "Round hole 30", or hardware. */
  g_autofree char *label = g_strdup_printf (_ ("Add %s"), model_name (self));
  hut_session_begin_gesture (self->session, label);
  self->drag.item = g_strdup (add_model (self, panel, at));
  if (self->drag.item == NULL)
    hut_session_cancel_gesture (self->session);
  return self->drag.item != NULL;
}

static GdkDragAction
on_enter (GtkDropTarget *target,
          double x,
          double y,
          HutCanvas *self)
{
  hut_canvas_cancel_drag (self);
  return preview_at (self, target, x, y) ? GDK_ACTION_COPY : 0;
}

static GdkDragAction
on_motion (GtkDropTarget *target,
           double x,
           double y,
           HutCanvas *self)
{
  return preview_at (self, target, x, y) ? GDK_ACTION_COPY : 0;
}

static void
on_leave (GtkDropTarget *target,
          HutCanvas *self)
{
  if (self->drag.kind == HUT_DRAG_DROP || has_model (self))
    {
      self->drag.kind = HUT_DRAG_DROP;
      hut_canvas_cancel_drag (self);
    }
}

static gboolean
on_drop (GtkDropTarget *target,
         const GValue *value,
         double x,
         double y,
         HutCanvas *self)
{
  take_value (self, value);
  /* It goes where the preview is: what the hand saw last counts. */
  if (self->drag.item == NULL && !preview_at (self, target, x, y))
    {
      hut_canvas_cancel_drag (self);
      return FALSE;
    }
  hut_session_end_gesture (self->session);
  g_clear_pointer (&self->drag.item, g_free); /* it stays in the design */
  hut_canvas_cancel_drag (self);
  gtk_widget_grab_focus (GTK_WIDGET (self));
  return TRUE;
}

void
hut_canvas_drop_init (HutCanvas *self)
{
  GtkDropTarget *target = gtk_drop_target_new (G_TYPE_INVALID, GDK_ACTION_COPY);
  GType types[] = { HUT_TYPE_OPENING, HUT_TYPE_ITEM };

  gtk_drop_target_set_gtypes (target, types, G_N_ELEMENTS (types));
  gtk_drop_target_set_preload (target, TRUE);
  g_signal_connect (target, "enter", G_CALLBACK (on_enter), self);
  g_signal_connect (target, "motion", G_CALLBACK (on_motion), self);
  g_signal_connect (target, "leave", G_CALLBACK (on_leave), self);
  g_signal_connect (target, "drop", G_CALLBACK (on_drop), self);
  gtk_widget_add_controller (GTK_WIDGET (self), GTK_EVENT_CONTROLLER (target));
}

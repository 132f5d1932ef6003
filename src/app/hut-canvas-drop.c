/* src/app/hut-canvas-drop.c: openings from the shelf, dropped onto a panel.
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * While the thing hovers over a panel it is already part of the design, inside a gesture of the
 * session: so its findings are live. Leaving cancels the gesture, dropping ends it: one undo step.
 */
#define G_LOG_DOMAIN "hut-app"
#include "config.h"
#include "app/hut-canvas-private.h"
#include "app/hut-opening-type.h"
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

/* The value is there at once for drags within the program; others may take a while. */
static gboolean
take_model (HutCanvas *self,
            GtkDropTarget *target)
{
  const GValue *value = gtk_drop_target_get_value (target);

  if (self->drag.model == NULL && value != NULL && G_VALUE_HOLDS (value, HUT_TYPE_OPENING))
    self->drag.model = hut_opening_copy (g_value_get_boxed (value));
  return self->drag.model != NULL;
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
      || !hut_canvas_find_stop (self, self->drag.item, hut_snap_opening_bounds (self->drag.model),
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

  /* Translators: what Undo takes back; %s is an opening, such as "Round hole 30". */
  g_autofree char *label = g_strdup_printf (_ ("Add %s"), self->drag.model->name);
  hut_session_begin_gesture (self->session, label);
  self->drag.item = g_strdup (hut_session_add_opening (self->session, self->drag.model, panel, at));
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
  if (self->drag.kind == HUT_DRAG_DROP || self->drag.model != NULL)
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
  if (self->drag.model == NULL && G_VALUE_HOLDS (value, HUT_TYPE_OPENING))
    self->drag.model = hut_opening_copy (g_value_get_boxed (value));
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
  GtkDropTarget *target = gtk_drop_target_new (HUT_TYPE_OPENING, GDK_ACTION_COPY);

  gtk_drop_target_set_preload (target, TRUE);
  g_signal_connect (target, "enter", G_CALLBACK (on_enter), self);
  g_signal_connect (target, "motion", G_CALLBACK (on_motion), self);
  g_signal_connect (target, "leave", G_CALLBACK (on_leave), self);
  g_signal_connect (target, "drop", G_CALLBACK (on_drop), self);
  gtk_widget_add_controller (GTK_WIDGET (self), GTK_EVENT_CONTROLLER (target));
}

/* src/app/hut-canvas-keys.c: the canvas without a pointer: all items can be reached, moved and
 * changed. SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Tab goes from item to item and leaves the canvas after the last one, so that nobody is trapped.
 */
#define G_LOG_DOMAIN "hut-app"
#include "config.h"
#include "app/hut-canvas-private.h"
#include "app/hut-session-hardware.h"

/* How far an arrow key moves the selected item, mm; issue: 1, with Shift 10, with Ctrl 0.1. */
#define NUDGE_MM 1.0
#define NUDGE_FAR_MM 10.0
#define NUDGE_FINE_MM 0.1
#define PAN_PX 40.0 /* without a selection; own choice */

static gboolean
nudge (GtkWidget *widget,
       GVariant *arguments,
       gpointer user_data)
{
  HutCanvas *self = HUT_CANVAS (widget);
  double du_mm, dv_mm;

  g_variant_get (arguments, "(dd)", &du_mm, &dv_mm);
  if (hut_session_get_selected (self->session) == NULL)
    {
      hut_canvas_pan (self,
                      du_mm > 0.0   ? -PAN_PX
                      : du_mm < 0.0 ? PAN_PX
                                    : 0.0,
                      dv_mm > 0.0   ? PAN_PX
                      : dv_mm < 0.0 ? -PAN_PX
                                    : 0.0);
      return TRUE;
    }
  hut_session_nudge_selected (self->session, du_mm, dv_mm);
  hut_canvas_show_item (self, hut_session_get_selected (self->session));
  return TRUE;
}

static gboolean
activate (GtkWidget *widget,
          GVariant *arguments,
          gpointer user_data)
{
  const char *item = hut_session_get_selected (HUT_CANVAS (widget)->session);

  if (item == NULL)
    return FALSE;
  g_signal_emit_by_name (widget, "activate-item", item);
  return TRUE;
}

static gboolean
step_item (HutCanvas *self,
           gboolean forward)
{
  const char *selected = hut_session_get_selected (self->session);
  const char *next = hut_flat_next_item (hut_canvas_get_assembly (self), selected, forward);

  if (next == NULL)
    return FALSE;
  g_autofree char *item = g_strdup (next);
  hut_session_select_finding (self->session, -1);
  hut_session_select (self->session, item);
  hut_canvas_show_item (self, item);
  return TRUE;
}

static void
step_action (GtkWidget *widget,
             const char *name,
             GVariant *parameter)
{
  step_item (HUT_CANVAS (widget), g_str_equal (name, "canvas.next"));
}

static void
delete_action (GtkWidget *widget,
               const char *name,
               GVariant *parameter)
{
  hut_session_delete_selected (HUT_CANVAS (widget)->session);
}

static void
duplicate_action (GtkWidget *widget,
                  const char *name,
                  GVariant *parameter)
{
  hut_session_duplicate_selected (HUT_CANVAS (widget)->session);
}

static void
flip_action (GtkWidget *widget,
             const char *name,
             GVariant *parameter)
{
  hut_session_flip_selected (HUT_CANVAS (widget)->session);
}

static void
turn_action (GtkWidget *widget,
             const char *name,
             GVariant *parameter)
{
  hut_session_turn_selected (HUT_CANVAS (widget)->session);
}

static void
unselect_action (GtkWidget *widget,
                 const char *name,
                 GVariant *parameter)
{
  hut_session_select_finding (HUT_CANVAS (widget)->session, -1);
  hut_session_select (HUT_CANVAS (widget)->session, NULL);
}

/* Escape gives up one thing at a time: the drag, then the selection, then it is for others. */
static gboolean
escape (GtkWidget *widget,
        GVariant *arguments,
        gpointer user_data)
{
  HutCanvas *self = HUT_CANVAS (widget);

  if (hut_canvas_cancel_drag (self))
    return TRUE;
  if (hut_session_get_selected (self->session) == NULL
      && hut_session_get_selected_finding (self->session) < 0)
    return FALSE;
  unselect_action (widget, NULL, NULL);
  return TRUE;
}

/* The focus moves among the items before it moves on. */
static gboolean
hut_canvas_focus (GtkWidget *widget,
                  GtkDirectionType direction)
{
  HutCanvas *self = HUT_CANVAS (widget);
  const gboolean tab = direction == GTK_DIR_TAB_FORWARD || direction == GTK_DIR_TAB_BACKWARD;

  if (!gtk_widget_is_focus (widget))
    return gtk_widget_grab_focus (widget);
  return tab && step_item (self, direction == GTK_DIR_TAB_FORWARD);
}

static gboolean
on_key_pressed (HutCanvas *self,
                guint key)
{
  if (key != GDK_KEY_space)
    return FALSE;
  self->space_held = TRUE;
  hut_canvas_update_cursor (self);
  return TRUE;
}

static void
on_key_released (HutCanvas *self,
                 guint key)
{
  if (key != GDK_KEY_space)
    return;
  self->space_held = FALSE;
  hut_canvas_update_cursor (self);
}

static void
on_focus_left (HutCanvas *self)
{
  self->space_held = FALSE;
}

static void
bind_arrow (GtkWidgetClass *klass,
            guint key,
            guint keypad_key,
            int du,
            int dv)
{
  static const struct
  {
    GdkModifierType held;
    double step_mm;
  } steps[]
      = { { 0, NUDGE_MM }, { GDK_SHIFT_MASK, NUDGE_FAR_MM }, { GDK_CONTROL_MASK, NUDGE_FINE_MM } };

  for (gsize i = 0; i < G_N_ELEMENTS (steps); i++)
    {
      const double du_mm = du * steps[i].step_mm, dv_mm = dv * steps[i].step_mm;

      gtk_widget_class_add_binding (klass, key, steps[i].held, nudge, "(dd)", du_mm, dv_mm);
      gtk_widget_class_add_binding (klass, keypad_key, steps[i].held, nudge, "(dd)", du_mm, dv_mm);
    }
}

void
hut_canvas_keys_class_init (GtkWidgetClass *klass)
{
  klass->focus = hut_canvas_focus;
  gtk_widget_class_install_action (klass, "canvas.next", NULL, step_action);
  gtk_widget_class_install_action (klass, "canvas.previous", NULL, step_action);
  gtk_widget_class_install_action (klass, "canvas.delete", NULL, delete_action);
  gtk_widget_class_install_action (klass, "canvas.duplicate", NULL, duplicate_action);
  gtk_widget_class_install_action (klass, "canvas.flip", NULL, flip_action);
  gtk_widget_class_install_action (klass, "canvas.turn", NULL, turn_action);
  gtk_widget_class_install_action (klass, "canvas.unselect", NULL, unselect_action);

  bind_arrow (klass, GDK_KEY_Left, GDK_KEY_KP_Left, -1, 0);
  bind_arrow (klass, GDK_KEY_Right, GDK_KEY_KP_Right, 1, 0);
  bind_arrow (klass, GDK_KEY_Up, GDK_KEY_KP_Up, 0, 1);
  bind_arrow (klass, GDK_KEY_Down, GDK_KEY_KP_Down, 0, -1);
  gtk_widget_class_add_binding_action (klass, GDK_KEY_Delete, 0, "canvas.delete", NULL);
  gtk_widget_class_add_binding_action (klass, GDK_KEY_KP_Delete, 0, "canvas.delete", NULL);
  gtk_widget_class_add_binding_action (klass, GDK_KEY_BackSpace, 0, "canvas.delete", NULL);
  gtk_widget_class_add_binding_action (klass, GDK_KEY_d, GDK_CONTROL_MASK, "canvas.duplicate",
                                       NULL);
  gtk_widget_class_add_binding_action (klass, GDK_KEY_f, 0, "canvas.flip", NULL);
  gtk_widget_class_add_binding_action (klass, GDK_KEY_t, 0, "canvas.turn", NULL);
  gtk_widget_class_add_binding (klass, GDK_KEY_Return, 0, activate, NULL);
  gtk_widget_class_add_binding (klass, GDK_KEY_KP_Enter, 0, activate, NULL);
  gtk_widget_class_add_binding (klass, GDK_KEY_Escape, 0, escape, NULL);
}

void
hut_canvas_keys_init (HutCanvas *self)
{
  GtkEventController *keys = gtk_event_controller_key_new (),
                     *focus = gtk_event_controller_focus_new ();

  g_signal_connect_swapped (keys, "key-pressed", G_CALLBACK (on_key_pressed), self);
  g_signal_connect_swapped (keys, "key-released", G_CALLBACK (on_key_released), self);
  gtk_widget_add_controller (GTK_WIDGET (self), keys);
  g_signal_connect_swapped (focus, "leave", G_CALLBACK (on_focus_left), self);
  gtk_widget_add_controller (GTK_WIDGET (self), focus);
}

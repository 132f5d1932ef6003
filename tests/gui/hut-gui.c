/* tests/gui/hut-gui.c: a window in this process, worked with real pointer and key events of the X
 * server. SPDX-License-Identifier: GPL-3.0-or-later */
#include "config.h"
#include "hut-gui.h"
#include "app/hut-application.h"
#include "app/hut-main-window.h"
#include <gdk/x11/gdkx.h>
#include <math.h>
#include <xdo.h>

#define SPIN_MS 10
#define STEPS 12 /* of a drag; own choice: more than the threshold of any drag needs */

/* A connection of its own: to the program the events come from a stranger. */
static xdo_t *
get_xdo (void)
{
  static xdo_t *xdo;

  if (xdo == NULL)
    xdo = xdo_new (NULL);
  assert_non_null (xdo);
  return xdo;
}

static gboolean
on_moment (gpointer user_data)
{
  *(gboolean *)user_data = TRUE;
  return G_SOURCE_REMOVE;
}

void
hut_gui_spin (void)
{
  gboolean over = FALSE;

  g_timeout_add (SPIN_MS, on_moment, &over);
  while (!over)
    g_main_context_iteration (NULL, TRUE);
}

/* One for the whole run: accelerators belong to it. */
static GtkApplication *
get_application (void)
{
  static HutApplication *application;
  g_autoptr (GError) error = NULL;

  if (application == NULL)
    {
      application = hut_application_new ();
      assert_ok (g_application_register (G_APPLICATION (application), NULL, &error), error);
    }
  return GTK_APPLICATION (application);
}

void
hut_gui_open (HutGui *self,
              HutDesign *design)
{
  self->window = hut_main_window_new (get_application ());
  self->session = g_object_ref (hut_main_window_get_session (HUT_MAIN_WINDOW (self->window)));
  hut_session_replace (self->session, design, NULL, FALSE);
  g_object_set (gtk_settings_get_default (), "gtk-enable-animations", FALSE, NULL);
  gtk_widget_activate_action (self->window, "win.step", "s", "openings");
  gtk_window_set_default_size (GTK_WINDOW (self->window), HUT_GUI_WIDTH_PX, HUT_GUI_HEIGHT_PX);
  gtk_window_present (GTK_WINDOW (self->window));

  self->canvas = hut_gui_find (self->window, HUT_TYPE_CANVAS, NULL);
  self->shelf = hut_gui_find (self->window, HUT_TYPE_SHELF, NULL);
  assert_non_null (self->canvas);
  assert_non_null (self->shelf);
  hut_gui_wait_for (gtk_widget_get_mapped (self->canvas) && gtk_widget_get_mapped (self->shelf));
  hut_gui_wait_for (gtk_widget_get_width (self->canvas) > HUT_GUI_WIDTH_PX / 3);
  xdo_focus_window (get_xdo (),
                    gdk_x11_surface_get_xid (gtk_native_get_surface (GTK_NATIVE (self->window))));
  hut_gui_wait_for (gtk_window_is_active (GTK_WINDOW (self->window)));
  gtk_widget_activate_action (self->canvas, "canvas.zoom-fit", NULL);
  hut_gui_move ((HutGuiPoint){ 2, 2 });
}

void
hut_gui_close (HutGui *self)
{
  if (self->window != NULL)
    gtk_window_destroy (GTK_WINDOW (self->window));
  g_clear_object (&self->session);
  hut_gui_spin ();
}

/* ---- places --------------------------------------------------------------------------------- */

HutGuiPoint
hut_gui_point (GtkWidget *widget,
               double x,
               double y)
{
  GtkNative *native = gtk_widget_get_native (widget);
  const Window window = gdk_x11_surface_get_xid (gtk_native_get_surface (native));
  double off_x, off_y;
  int window_x, window_y;
  graphene_point_t p;

  assert_true (gtk_widget_compute_point (widget, GTK_WIDGET (native),
                                         &GRAPHENE_POINT_INIT ((float)x, (float)y), &p));
  gtk_native_get_surface_transform (native, &off_x, &off_y);
  xdo_get_window_location (get_xdo (), window, &window_x, &window_y, NULL);
  return (HutGuiPoint){ window_x + (int)floor (p.x + off_x), window_y + (int)floor (p.y + off_y) };
}

GtkWidget *
hut_gui_find (GtkWidget *parent,
              GType type,
              const char *text)
{
  for (GtkWidget *child = gtk_widget_get_first_child (parent); child != NULL;
       child = gtk_widget_get_next_sibling (child))
    {
      GtkWidget *found;

      if (g_type_is_a (G_OBJECT_TYPE (child), type)
          && (text == NULL
              || (GTK_IS_LABEL (child)
                  && g_strcmp0 (gtk_label_get_text (GTK_LABEL (child)), text) == 0)))
        return child;
      found = hut_gui_find (child, type, text);
      if (found != NULL)
        return found;
    }
  return NULL;
}

HutGuiPoint
hut_gui_shelf_point (HutGui *self,
                     const char *name)
{
  GtkWidget *label = hut_gui_find (self->shelf, GTK_TYPE_LABEL, name);
  GtkWidget *row, *list;
  graphene_rect_t place;

  assert_non_null (label);
  row = gtk_widget_get_ancestor (label, GTK_TYPE_LIST_BOX_ROW);
  list = gtk_widget_get_ancestor (label, GTK_TYPE_SCROLLED_WINDOW);
  gtk_widget_grab_focus (row); /* which scrolls it into sight */
  hut_gui_wait_for (gtk_widget_compute_bounds (row, list, &place) && place.origin.y >= 0.0f
                    && place.origin.y + place.size.height
                           <= (float)gtk_widget_get_height (list) + 1.0f);
  return hut_gui_point (label, 20.0, gtk_widget_get_height (label) / 2.0);
}

HutGuiPoint
hut_gui_panel_point (HutGui *self,
                     const char *panel,
                     HutPoint wanted,
                     HutPoint *real)
{
  const double scale = hut_canvas_get_scale (HUT_CANVAS (self->canvas));
  HutPanelId id;
  double x, y;

  assert_true (hut_panel_id_from_string (panel, &id));
  assert_true (hut_canvas_locate (HUT_CANVAS (self->canvas), id, wanted, &x, &y));
  assert_true (x > 0.0 && y > 0.0 && x < gtk_widget_get_width (self->canvas)
               && y < gtk_widget_get_height (self->canvas));
  if (real != NULL)
    *real = (HutPoint){ wanted.u + (floor (x) - x) / scale, wanted.v - (floor (y) - y) / scale };
  return hut_gui_point (self->canvas, floor (x), floor (y));
}

/* ---- pointer and keys ----------------------------------------------------------------------- */

void
hut_gui_move (HutGuiPoint to)
{
  xdo_move_mouse (get_xdo (), to.x, to.y, 0);
  hut_gui_spin ();
}

void
hut_gui_press (void)
{
  xdo_mouse_down (get_xdo (), CURRENTWINDOW, 1);
  hut_gui_spin ();
}

void
hut_gui_release (void)
{
  xdo_mouse_up (get_xdo (), CURRENTWINDOW, 1);
  hut_gui_spin ();
}

void
hut_gui_drag (HutGuiPoint from,
              HutGuiPoint to)
{
  hut_gui_move (from);
  hut_gui_press ();
  for (int i = 1; i <= STEPS; i++)
    hut_gui_move ((HutGuiPoint){ from.x + (to.x - from.x) * i / STEPS,
                                 from.y + (to.y - from.y) * i / STEPS });
}

void
hut_gui_wheel (gboolean up)
{
  const int wheel_up = 4, wheel_down = 5; /* buttons of the X protocol */

  xdo_click_window (get_xdo (), CURRENTWINDOW, up ? wheel_up : wheel_down);
  hut_gui_spin ();
}

void
hut_gui_key (const char *key)
{
  xdo_send_keysequence_window (get_xdo (), CURRENTWINDOW, key, 0);
  hut_gui_spin ();
}

void
hut_gui_enter (const char *text)
{
  const useconds_t pause_us = 2000; /* own choice: a fast typist's, not a machine's */

  xdo_enter_text_window (get_xdo (), CURRENTWINDOW, text, pause_us);
  hut_gui_spin ();
}

void
hut_gui_hold (const char *key,
              gboolean down)
{
  if (down)
    xdo_send_keysequence_window_down (get_xdo (), CURRENTWINDOW, key, 0);
  else
    xdo_send_keysequence_window_up (get_xdo (), CURRENTWINDOW, key, 0);
  hut_gui_spin ();
}

/* ---- what has come of it -------------------------------------------------------------------- */

HutPoint
hut_gui_item_at (HutGui *self,
                 const char *item,
                 HutPanelId *panel)
{
  const HutAssembly *assembly = hut_session_get_assembly (self->session);
  const HutOpening *opening = hut_design_get_opening (assembly->design, item);
  const HutWindow *window = hut_design_get_window (assembly->design, item);
  const HutPosition *position = opening != NULL  ? &opening->at
                                : window != NULL ? &window->at
                                                 : NULL;
  HutPoint at = { 0, 0 };

  assert_non_null (position);
  assert_true (hut_assembly_locate (assembly, position, &at));
  if (panel != NULL)
    *panel = position->panel;
  return at;
}

gboolean
hut_gui_has_finding (HutGui *self,
                     const char *check,
                     const char *item)
{
  const GPtrArray *findings = hut_session_get_findings (self->session);

  for (guint i = 0; i < findings->len; i++)
    {
      const HutFinding *finding = g_ptr_array_index (findings, i);

      if (g_str_equal (finding->check, check)
          && (item == NULL || g_strcmp0 (finding->item, item) == 0))
        return TRUE;
    }
  return FALSE;
}

/* tests/gui/hut-gui-app.c: commands, fields, dialogs and files of the program's window.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "config.h"
#include "hut-gui-app.h"
#include "design/hut-file.h"
#include "hut-scratch.h"

void
hut_gui_app_open (HutGuiApp *self,
                  const char *example)
{
  g_autoptr(GError) error = NULL;
  HutDesign *design = example != NULL ? hut_example_load (example, &error) : hut_design_new ();

  assert_ok (design != NULL, error);
  *self = (HutGuiApp) { .folder = hut_scratch_new () };
  hut_gui_open (&self->gui, design);
}

void
hut_gui_app_close (HutGuiApp *self)
{
  if (self->folder == NULL)
    return;
  hut_gui_app_close_dialogs (self);
  hut_gui_close (&self->gui);
  g_clear_pointer (&self->folder, hut_scratch_free);
}

gboolean
hut_gui_app_activate (HutGuiApp *self,
                      const char *action,
                      GVariant *parameter)
{
  const gboolean in_window = g_str_has_prefix (action, "win.");
  GActionGroup *group = in_window ? G_ACTION_GROUP (self->gui.window)
                                  : G_ACTION_GROUP (gtk_window_get_application (
                                        GTK_WINDOW (self->gui.window)));
  const char *name = action + strlen ("win.");

  if (!g_action_group_has_action (group, name))
    fail_msg ("there is no action %s", action);
  if (!g_action_group_get_action_enabled (group, name))
    {
      if (parameter != NULL)
        g_variant_unref (g_variant_ref_sink (parameter));
      return FALSE;
    }
  g_action_group_activate_action (group, name, parameter);
  hut_gui_spin ();
  return TRUE;
}

static GtkWidget *
find_visible (GtkWidget *widget,
              const char *id)
{
  for (GtkWidget *child = gtk_widget_get_first_child (widget); child != NULL;
       child = gtk_widget_get_next_sibling (child))
    {
      GtkWidget *found;

      if (!gtk_widget_get_mapped (child))
        continue;
      if (g_strcmp0 (gtk_buildable_get_buildable_id (GTK_BUILDABLE (child)), id) == 0)
        return child;
      found = find_visible (child, id);
      if (found != NULL)
        return found;
    }
  return NULL;
}

GtkWidget *
hut_gui_app_look_for (HutGuiApp *self,
                      const char *id)
{
  return find_visible (self->gui.window, id);
}

GtkWidget *
hut_gui_app_find (HutGuiApp *self,
                  const char *id)
{
  GtkWidget *widget = NULL;

  hut_gui_wait_for ((widget = find_visible (self->gui.window, id)) != NULL);
  return widget;
}

void
hut_gui_app_type (HutGuiApp *self,
                  const char *id,
                  const char *text)
{
  GtkWidget *field = hut_gui_app_find (self, id);

  gtk_widget_grab_focus (field);
  hut_gui_wait_for ((gtk_widget_get_state_flags (field) & GTK_STATE_FLAG_FOCUS_WITHIN) != 0);
  hut_gui_key ("ctrl+a");
  hut_gui_key ("BackSpace");
  hut_gui_enter (text);
}

guint
hut_gui_app_count_dialogs (HutGuiApp *self)
{
  GListModel *windows = gtk_window_get_toplevels ();
  guint count = 0;

  for (guint i = 0; i < g_list_model_get_n_items (windows); i++)
    {
      g_autoptr(GtkWidget) window = g_list_model_get_item (windows, i);

      count += window != self->gui.window && gtk_widget_get_mapped (window) ? 1 : 0;
    }
  return count;
}

void
hut_gui_app_close_dialogs (HutGuiApp *self)
{
  GListModel *windows = gtk_window_get_toplevels ();

  for (guint i = g_list_model_get_n_items (windows); i-- > 0;)
    {
      g_autoptr(GtkWindow) window = g_list_model_get_item (windows, i);

      if (GTK_WIDGET (window) != self->gui.window)
        gtk_window_close (window);
    }
  hut_gui_spin ();
}

char *
hut_gui_app_dup_path (HutGuiApp *self,
                      const char *name)
{
  return g_build_filename (self->folder, name, NULL);
}

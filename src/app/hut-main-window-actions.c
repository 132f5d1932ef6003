/* src/app/hut-main-window-actions.c: the commands of the window that are not about files.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-app"
#include "config.h"
#include "app/hut-checked-entry.h"
#include "app/hut-number-entry.h"
#include "app/hut-session-items.h"
#include "app/hut-settings.h"
#include "app/hut-main-window-private.h"

/* ---- typing ---------------------------------------------------------------------------------- */

/* The field with the text cursor, or NULL. */
static GtkWidget *
focused_field (HutMainWindow *self,
               GType type)
{
  GtkWidget *focus = gtk_root_get_focus (GTK_ROOT (self));

  return focus != NULL ? gtk_widget_get_ancestor (focus, type) : NULL;
}

void
hut_main_window_commit_typing (HutMainWindow *self)
{
  GtkWidget *number = focused_field (self, HUT_TYPE_NUMBER_ENTRY);
  GtkWidget *checked = focused_field (self, HUT_TYPE_CHECKED_ENTRY);
  GtkWidget *text = focused_field (self, GTK_TYPE_ENTRY);

  if (number != NULL)
    hut_number_entry_commit (HUT_NUMBER_ENTRY (number));
  else if (checked != NULL)
    hut_checked_entry_commit (HUT_CHECKED_ENTRY (checked));
  else if (text != NULL)
    g_signal_emit_by_name (text, "activate");
}

gboolean
hut_main_window_revert_typing (HutMainWindow *self)
{
  GtkWidget *number = focused_field (self, HUT_TYPE_NUMBER_ENTRY);
  HutNumberEntry *entry = number != NULL ? HUT_NUMBER_ENTRY (number) : NULL;

  if (entry == NULL || !hut_number_entry_is_pending (entry))
    return FALSE;
  hut_number_entry_reset (entry, hut_number_entry_get_value (entry));
  return TRUE;
}

/* ---- history and items ----------------------------------------------------------------------- */

static void
undo (GSimpleAction *action,
      GVariant *parameter,
      gpointer user_data)
{
  HutMainWindow *self = user_data;

  /* What was typed but not applied is the last thing that was done. */
  if (!hut_main_window_revert_typing (self))
    hut_session_undo (self->session);
}

static void
redo (GSimpleAction *action,
      GVariant *parameter,
      gpointer user_data)
{
  hut_session_redo (((HutMainWindow *)user_data)->session);
}

static void
delete_selected (GSimpleAction *action,
                 GVariant *parameter,
                 gpointer user_data)
{
  hut_session_delete_selected (((HutMainWindow *)user_data)->session);
}

static void
duplicate_selected (GSimpleAction *action,
                    GVariant *parameter,
                    gpointer user_data)
{
  HutMainWindow *self = user_data;

  hut_main_window_commit_typing (self);
  hut_session_duplicate_selected (self->session);
}

static void
add_window (GSimpleAction *action,
            GVariant *parameter,
            gpointer user_data)
{
  HutMainWindow *self = user_data;
  g_autofree char *item = hut_session_add_window (self->session);

  if (item == NULL)
    return;
  hut_main_window_show_step (self, "openings");
  hut_canvas_show_item (self->canvas, item);
}

/* Bodies, services and stocks: shown where they can be changed. */
static void
reveal (HutMainWindow *self,
        const char *item)
{
  if (item == NULL)
    return;
  hut_main_window_show_step (self, "measure");
  hut_measure_page_reveal (self->measure_page, item);
}

static void
add_body (GSimpleAction *action,
          GVariant *parameter,
          gpointer user_data)
{
  HutMainWindow *self = user_data;
  g_autofree char *item = hut_session_add_body (self->session);

  reveal (self, item);
}

static void
add_service (GSimpleAction *action,
             GVariant *parameter,
             gpointer user_data)
{
  HutMainWindow *self = user_data;
  g_autofree char *item = hut_session_add_service (self->session);

  reveal (self, item);
}

static void
add_stock (GSimpleAction *action,
           GVariant *parameter,
           gpointer user_data)
{
  HutMainWindow *self = user_data;
  g_autofree char *item = hut_session_add_stock (self->session);

  reveal (self, item);
}

/* ---- view ------------------------------------------------------------------------------------ */

/* "win.zoom-in" is "canvas.zoom-in" or "built.zoom-in", wherever the focus is. */
static void
pass_to_view (GSimpleAction *action,
                GVariant *parameter,
                gpointer user_data)
{
  HutMainWindow *self = user_data;
  const gboolean built = gtk_stack_get_visible_child (self->views) == GTK_WIDGET (self->built);
  GtkWidget *target = built ? GTK_WIDGET (hut_built_page_get_area (self->built))
                            : GTK_WIDGET (self->canvas);
  g_autofree char *name
      = g_strconcat (built ? "built." : "canvas.", g_action_get_name (G_ACTION (action)), NULL);

  gtk_widget_activate_action_variant (target, name, parameter);
}

static void
next_finding (GSimpleAction *action,
              GVariant *parameter,
              gpointer user_data)
{
  hut_findings_list_step (((HutMainWindow *)user_data)->findings, TRUE);
}

static void
previous_finding (GSimpleAction *action,
                  GVariant *parameter,
                  gpointer user_data)
{
  hut_findings_list_step (((HutMainWindow *)user_data)->findings, FALSE);
}

static void
change_step (GSimpleAction *action,
             GVariant *value,
             gpointer user_data)
{
  hut_main_window_show_step (user_data, g_variant_get_string (value, NULL));
}

static void
change_view (GSimpleAction *action,
             GVariant *value,
             gpointer user_data)
{
  hut_main_window_show_view (user_data, g_variant_get_string (value, NULL));
}

static void
close_window (GSimpleAction *action,
              GVariant *parameter,
              gpointer user_data)
{
  gtk_window_close (user_data);
}

static const GActionEntry entries[] = {
  { "undo", undo, NULL, NULL, NULL, { 0 } },
  { "redo", redo, NULL, NULL, NULL, { 0 } },
  { "delete", delete_selected, NULL, NULL, NULL, { 0 } },
  { "duplicate", duplicate_selected, NULL, NULL, NULL, { 0 } },
  { "add-window", add_window, NULL, NULL, NULL, { 0 } },
  { "add-body", add_body, NULL, NULL, NULL, { 0 } },
  { "add-service", add_service, NULL, NULL, NULL, { 0 } },
  { "add-stock", add_stock, NULL, NULL, NULL, { 0 } },
  { "zoom-in", pass_to_view, NULL, NULL, NULL, { 0 } },
  { "zoom-out", pass_to_view, NULL, NULL, NULL, { 0 } },
  { "zoom-fit", pass_to_view, NULL, NULL, NULL, { 0 } },
  { "zoom-selection", pass_to_view, NULL, NULL, NULL, { 0 } },
  { "next-finding", next_finding, NULL, NULL, NULL, { 0 } },
  { "previous-finding", previous_finding, NULL, NULL, NULL, { 0 } },
  { "step", NULL, "s", "'measure'", change_step, { 0 } },
  { "view", NULL, "s", "'flat'", change_view, { 0 } },
  { "close", close_window, NULL, NULL, NULL, { 0 } },
};

/* What the canvas shows besides the panels. */
static const char *const canvas_properties[]
    = { "show-machine", "show-splices", "show-dimensions", "show-legend" };

void
hut_main_window_install_actions (HutMainWindow *self)
{
  HutSettings *settings = hut_settings_get_default ();
  g_autoptr (GPropertyAction) grid = g_property_action_new ("grid", settings, "grid");
  g_autoptr (GPropertyAction) snap = g_property_action_new ("snap", settings, "snap");

  g_action_map_add_action_entries (G_ACTION_MAP (self), entries, G_N_ELEMENTS (entries), self);
  g_action_map_add_action (G_ACTION_MAP (self), G_ACTION (grid));
  g_action_map_add_action (G_ACTION_MAP (self), G_ACTION (snap));
  for (guint i = 0; i < G_N_ELEMENTS (canvas_properties); i++)
    {
      g_autoptr (GPropertyAction) show
          = g_property_action_new (canvas_properties[i], self->canvas, canvas_properties[i]);

      g_action_map_add_action (G_ACTION_MAP (self), G_ACTION (show));
    }
}

static void
enable (HutMainWindow *self,
        const char *name,
        gboolean enabled)
{
  GAction *action = g_action_map_lookup_action (G_ACTION_MAP (self), name);

  g_simple_action_set_enabled (G_SIMPLE_ACTION (action), enabled);
}

void
hut_main_window_update_actions (HutMainWindow *self)
{
  const gboolean selected = hut_session_get_selected (self->session) != NULL;

  enable (self, "undo", hut_session_can_undo (self->session));
  enable (self, "redo", hut_session_can_redo (self->session));
  enable (self, "delete", selected);
  enable (self, "duplicate", selected);
  enable (self, "zoom-selection", selected);
}

/* tests/gui/test-actions.c: every command can be given by name, and its key is its own.
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * G_DEBUG=fatal-criticals: a command that leaves a critical warning ends the test. */
#include "design/hut-file.h"
#include "hut-gui-app.h"
#include <locale.h>

/* What each command with a parameter gets; PATH is a file or folder in the scratch folder. */
static const struct
{
  const char *action, *parameter;
  gboolean is_path;
  const char *path; /* of a command with two parameters, or NULL */
} parameters[] = {
  { "open-path", "there.hutch", TRUE, NULL },
  { "save-to", "written.hutch", TRUE, NULL },
  { "export-to", "set", TRUE, NULL },
  { "open-example", "mini-router", FALSE, NULL },
  { "step", "openings", FALSE, NULL },
  { "view", "built", FALSE, NULL },
  { "write-coupon", "ply6", FALSE, NULL },
  { "write-coupon-to", "ply6", FALSE, "coupon" },
};

/* Commands that end the window: tried last. */
static const char *const endings[] = { "close", "quit", NULL };

static GVariant *
dup_parameter (HutGuiApp *app,
               const char *action)
{
  for (guint i = 0; i < G_N_ELEMENTS (parameters); i++)
    if (g_str_equal (parameters[i].action, action))
      {
        g_autofree char *path = hut_gui_app_dup_path (
            app, parameters[i].path != NULL ? parameters[i].path : parameters[i].parameter);

        if (parameters[i].path != NULL)
          return g_variant_new ("(ss)", parameters[i].parameter, path);
        return g_variant_new_string (parameters[i].is_path ? path : parameters[i].parameter);
      }
  fail_msg ("the test knows no parameter for %s: add one", action);
  return NULL;
}

static void
rest (HutGuiApp *app)
{
  /* Exports and choosers come to their end. */
  hut_gui_wait_for (hut_gui_app_look_for (app, "progress_box") == NULL);
  hut_gui_app_close_dialogs (app);
  hut_gui_wait_for (hut_gui_app_count_dialogs (app) == 0);
}

static guint
try_all (HutGuiApp *app,
         GActionGroup *group,
         const char *prefix)
{
  g_auto(GStrv) names = g_action_group_list_actions (group);
  guint count = 0;

  for (guint i = 0; names[i] != NULL; i++)
    {
      g_autofree char *action = g_strconcat (prefix, names[i], NULL);
      const gboolean has_parameter
          = g_action_group_get_action_parameter_type (group, names[i]) != NULL;

      if (g_strv_contains (endings, names[i]))
        continue;
      print_message ("%s\n", action);
      /* So that what acts on a selection has one. */
      hut_session_select (app->gui.session, "data-hole");
      hut_gui_app_activate (app, action, has_parameter ? dup_parameter (app, names[i]) : NULL);
      rest (app);
      count++;
    }
  return count;
}

static void
each_command_can_be_given_by_name (void **state)
{
  g_auto(HutGuiApp) app = { 0 };
  g_autofree char *there = NULL;
  g_autoptr(GError) error = NULL;
  GtkApplication *application;

  hut_gui_app_open (&app, "engraver");
  application = gtk_window_get_application (GTK_WINDOW (app.gui.window));
  there = hut_gui_app_dup_path (&app, "there.hutch");
  assert_ok (hut_design_save (hut_session_get_design (app.gui.session), there, &error), error);
  assert_true (try_all (&app, G_ACTION_GROUP (app.gui.window), "win.") > 25);
  assert_true (try_all (&app, G_ACTION_GROUP (application), "app.") >= 3);
  /* All of them together may have left changes: nothing asks about those of an unmodified design. */
  hut_session_replace (app.gui.session, hut_design_new (), NULL, FALSE);
  GtkWidget *window = app.gui.window;
  g_object_add_weak_pointer (G_OBJECT (window), (gpointer *) &window);
  app.gui.window = NULL; /* it will be gone */
  gtk_widget_activate_action (window, "win.close", NULL);
  hut_gui_wait_for (window == NULL);
}

static void
no_key_gives_two_commands (void **state)
{
  g_auto(HutGuiApp) app = { 0 };
  g_autoptr(GHashTable) seen = g_hash_table_new_full (g_str_hash, g_str_equal, g_free, g_free);
  GtkApplication *application;

  hut_gui_app_open (&app, NULL);
  application = gtk_window_get_application (GTK_WINDOW (app.gui.window));
  g_auto(GStrv) actions = gtk_application_list_action_descriptions (application);
  for (guint i = 0; actions[i] != NULL; i++)
    {
      g_auto(GStrv) keys = gtk_application_get_accels_for_action (application, actions[i]);

      for (guint k = 0; keys[k] != NULL; k++)
        {
          const char *other = g_hash_table_lookup (seen, keys[k]);

          if (other != NULL)
            fail_msg ("%s gives both %s and %s", keys[k], other, actions[i]);
          g_hash_table_insert (seen, g_strdup (keys[k]), g_strdup (actions[i]));
        }
    }
  assert_true (g_hash_table_size (seen) > 20);
}

static void
each_key_belongs_to_a_command_that_exists (void **state)
{
  g_auto(HutGuiApp) app = { 0 };
  GtkApplication *application;

  hut_gui_app_open (&app, NULL);
  application = gtk_window_get_application (GTK_WINDOW (app.gui.window));
  g_auto(GStrv) actions = gtk_application_list_action_descriptions (application);
  for (guint i = 0; actions[i] != NULL; i++)
    {
      g_autofree char *name = NULL;
      g_autoptr(GVariant) target = NULL;
      GActionGroup *group = g_str_has_prefix (actions[i], "win.")
                                ? G_ACTION_GROUP (app.gui.window)
                                : G_ACTION_GROUP (application);

      assert_true (g_action_parse_detailed_name (actions[i], &name, &target, NULL));
      if (!g_action_group_has_action (group, name + strlen ("win.")))
        fail_msg ("%s has a key, but is no command", actions[i]);
    }
}

static void
keys_work_while_a_field_has_the_cursor (void **state)
{
  g_auto(HutGuiApp) app = { 0 };

  hut_gui_app_open (&app, "engraver");
  hut_session_select (app.gui.session, "data-hole");
  gtk_widget_grab_focus (hut_gui_app_find (&app, "u_offset"));
  hut_gui_key ("alt+2");
  hut_gui_app_find (&app, "seam_height");
  hut_gui_key ("alt+5");
  hut_gui_app_find (&app, "sheet_counts");
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (each_command_can_be_given_by_name),
    cmocka_unit_test (no_key_gives_two_commands),
    cmocka_unit_test (each_key_belongs_to_a_command_that_exists),
    cmocka_unit_test (keys_work_while_a_field_has_the_cursor),
  };

  setlocale (LC_ALL, "C");
  gtk_init ();
  return cmocka_run_group_tests_name ("actions", tests, NULL, NULL);
}

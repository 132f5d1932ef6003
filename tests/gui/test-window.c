/* tests/gui/test-window.c: commands, numbers and files of the program's window.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "app/hut-notice.h"
#include "app/hut-number-entry.h"
#include "app/hut-settings.h"
#include "design/hut-file.h"
#include "hut-gui-app.h"
#include "hut-scratch.h"
#include <glib/gstdio.h>
#include <locale.h>

/* An opening of the example: round, 140 mm from the left edge of the base's back. */
#define EXAMPLE "engraver"
#define ITEM "data-hole"

static const HutDesign *
design_of (HutGuiApp *app)
{
  return hut_session_get_design (app->gui.session);
}

static const HutOpening *
item_of (HutGuiApp *app)
{
  return hut_design_get_opening (design_of (app), ITEM);
}

static void
open_and_select (HutGuiApp *app)
{
  hut_gui_app_open (app, EXAMPLE);
  hut_session_select (app->gui.session, ITEM);
  hut_gui_app_find (app, "u_offset");
}

static const char *
problem_of (HutGuiApp *app,
            const char *id)
{
  return hut_number_entry_get_problem (HUT_NUMBER_ENTRY (hut_gui_app_find (app, id)));
}

/* ---- numbers -------------------------------------------------------------------------------- */

static void
a_number_typed_in_the_inspector_moves_the_opening (void **state)
{
  g_auto(HutGuiApp) app = { 0 };

  open_and_select (&app);
  hut_gui_app_type (&app, "u_offset", "151,5");
  hut_gui_key ("Return");
  hut_gui_wait_for (item_of (&app)->at.u_offset_mm == 151.5);
  assert_string_equal (hut_session_get_undo_label (app.gui.session), "Move");
  hut_gui_key ("ctrl+z");
  hut_gui_wait_for (item_of (&app)->at.u_offset_mm == 140.0);
  hut_gui_key ("ctrl+shift+z");
  hut_gui_wait_for (item_of (&app)->at.u_offset_mm == 151.5);
}

static void
leaving_a_field_applies_it_and_is_one_step (void **state)
{
  g_auto(HutGuiApp) app = { 0 };

  open_and_select (&app);
  hut_gui_app_type (&app, "u_offset", "2 in");
  hut_gui_key ("Tab");
  hut_gui_wait_for (fabs (item_of (&app)->at.u_offset_mm - 50.8) < 1e-9); /* 2 x 25.4 */
  hut_session_undo (app.gui.session);
  assert_near_mm (item_of (&app)->at.u_offset_mm, 140.0, 1e-9);
  assert_false (hut_session_can_undo (app.gui.session));
}

static void
an_arrow_key_steps_by_a_millimetre_and_a_held_one_is_one_step (void **state)
{
  g_auto(HutGuiApp) app = { 0 };

  open_and_select (&app);
  gtk_widget_grab_focus (hut_gui_app_find (&app, "u_offset"));
  hut_gui_hold ("Up", TRUE);
  hut_gui_hold ("Up", FALSE);
  hut_gui_wait_for (item_of (&app)->at.u_offset_mm == 141.0);
  hut_gui_key ("Next"); /* Page Down: ten steps */
  hut_gui_wait_for (item_of (&app)->at.u_offset_mm == 131.0);
  hut_session_undo (app.gui.session);
  hut_session_undo (app.gui.session);
  assert_near_mm (item_of (&app)->at.u_offset_mm, 140.0, 1e-9);
  assert_false (hut_session_can_undo (app.gui.session));
}

static void
what_is_no_number_is_told_at_the_field_and_changes_nothing (void **state)
{
  g_auto(HutGuiApp) app = { 0 };

  open_and_select (&app);
  hut_gui_app_type (&app, "diameter", "wide");
  hut_gui_key ("Return");
  hut_gui_wait_for (problem_of (&app, "diameter") != NULL);
  assert_non_null (
      hut_gui_find (app.gui.window, GTK_TYPE_LABEL, problem_of (&app, "diameter")));
  assert_false (hut_session_can_undo (app.gui.session));
  hut_gui_key ("Escape");
  hut_gui_wait_for (problem_of (&app, "diameter") == NULL);
  assert_near_mm (
      hut_number_entry_get_value (HUT_NUMBER_ENTRY (hut_gui_app_find (&app, "diameter"))),
      item_of (&app)->diameter_mm, 0.0);
}

static void
a_number_out_of_range_is_told_with_the_range (void **state)
{
  g_auto(HutGuiApp) app = { 0 };
  const double before = 18.0; /* of the example */

  open_and_select (&app);
  hut_gui_app_type (&app, "diameter", "-5");
  hut_gui_key ("Return");
  hut_gui_wait_for (problem_of (&app, "diameter") != NULL);
  assert_non_null (strstr (problem_of (&app, "diameter"), "10000"));
  assert_near_mm (item_of (&app)->diameter_mm, before, 0.0);
}

static gboolean
rename_design (HutDesign *design,
               gpointer user_data)
{
  g_free (design->name);
  design->name = g_strdup (user_data);
  return TRUE;
}

static void
typing_survives_that_something_else_changes (void **state)
{
  g_auto(HutGuiApp) app = { 0 };
  HutNumberEntry *entry;

  open_and_select (&app);
  hut_gui_app_type (&app, "u_offset", "77");
  hut_session_edit (app.gui.session, "Name", rename_design, (gpointer) "other");
  entry = HUT_NUMBER_ENTRY (hut_gui_app_find (&app, "u_offset"));
  assert_string_equal (gtk_editable_get_text (hut_number_entry_get_editable (entry)), "77");
  /* Undo takes back what is typed first. */
  hut_gui_key ("ctrl+z");
  hut_gui_wait_for (!hut_number_entry_is_pending (entry));
  assert_string_equal (design_of (&app)->name, "other");
  assert_near_mm (hut_number_entry_get_value (entry), 140.0, 0.0);
}

static void
what_is_typed_belongs_to_the_opening_that_was_selected (void **state)
{
  g_auto(HutGuiApp) app = { 0 };

  open_and_select (&app);
  hut_gui_app_type (&app, "u_offset", "77");
  hut_session_select (app.gui.session, "power-hole");
  assert_near_mm (item_of (&app)->at.u_offset_mm, 77.0, 0.0);
  assert_string_equal (hut_session_get_selected (app.gui.session), "power-hole");
}

static void
inches_are_shown_and_typed_when_asked_for (void **state)
{
  g_auto(HutGuiApp) app = { 0 };

  open_and_select (&app);
  g_object_set (hut_settings_get_default (), "units", HUT_UNITS_INCH, NULL);
  hut_gui_app_type (&app, "u_offset", "3 1/2");
  hut_gui_key ("Return");
  hut_gui_wait_for (fabs (item_of (&app)->at.u_offset_mm - 88.9) < 1e-9); /* 3.5 x 25.4 */
  g_object_set (hut_settings_get_default (), "units", HUT_UNITS_MM, NULL);
}

/* ---- files ---------------------------------------------------------------------------------- */

static HutNotice *
notice_of (HutGuiApp *app)
{
  return HUT_NOTICE (hut_gui_find (app->gui.window, HUT_TYPE_NOTICE, NULL));
}

static void
a_broken_file_is_told_with_file_and_line_and_changes_nothing (void **state)
{
  g_auto(HutGuiApp) app = { 0 };
  g_autofree char *path = NULL;
  g_autoptr(HutDesign) before = NULL;

  hut_gui_app_open (&app, EXAMPLE);
  before = hut_design_copy (design_of (&app));
  path = hut_gui_app_dup_path (&app, "broken.hutch");
  assert_true (g_file_set_contents (path, "<?xml version=\"1.0\"?>\n<enclosure>\n", -1, NULL));
  hut_gui_app_activate (&app, "win.open-path", g_variant_new_string (path));
  hut_gui_wait_for (hut_notice_get_text (notice_of (&app)) != NULL);
  assert_non_null (strstr (hut_notice_get_text (notice_of (&app)), "broken.hutch:"));
  assert_true (hut_design_equal (design_of (&app), before));
  assert_null (hut_session_get_path (app.gui.session));
}

static void
saving_and_opening_again_gives_the_same_design (void **state)
{
  g_auto(HutGuiApp) app = { 0 };
  g_autofree char *path = NULL;
  g_autoptr(HutDesign) saved = NULL;

  open_and_select (&app);
  path = hut_gui_app_dup_path (&app, "saved.hutch");
  /* What is being typed is saved too. */
  hut_gui_app_type (&app, "u_offset", "66");
  hut_gui_app_activate (&app, "win.save-to", g_variant_new_string (path));
  assert_false (hut_session_is_modified (app.gui.session));
  saved = hut_design_copy (design_of (&app));
  hut_gui_app_activate (&app, "win.new", NULL);
  assert_null (hut_session_get_path (app.gui.session));
  hut_gui_app_activate (&app, "win.open-path", g_variant_new_string (path));
  assert_true (hut_design_equal (design_of (&app), saved));
  assert_near_mm (item_of (&app)->at.u_offset_mm, 66.0, 0.0);
}

static void
unsaved_changes_are_asked_about_before_they_are_lost (void **state)
{
  g_auto(HutGuiApp) app = { 0 };

  hut_gui_app_open (&app, EXAMPLE);
  hut_session_edit (app.gui.session, "Name", rename_design, (gpointer) "changed");
  hut_gui_app_activate (&app, "win.new", NULL);
  hut_gui_wait_for (hut_gui_app_count_dialogs (&app) == 1);
  hut_gui_app_close_dialogs (&app);
  assert_string_equal (design_of (&app)->name, "changed");
  hut_gui_app_activate (&app, "win.close", NULL);
  hut_gui_wait_for (hut_gui_app_count_dialogs (&app) == 1);
  assert_true (gtk_widget_get_mapped (app.gui.window));
}

static void
an_export_by_action_writes_the_set (void **state)
{
  g_auto(HutGuiApp) app = { 0 };
  g_autofree char *folder = NULL, *manifest = NULL;

  hut_gui_app_open (&app, EXAMPLE);
  folder = hut_gui_app_dup_path (&app, "set");
  manifest = g_build_filename (folder, "manifest.xml", NULL);
  hut_gui_app_activate (&app, "win.export-to", g_variant_new_string (folder));
  hut_gui_wait_for (hut_gui_app_look_for (&app, "result") != NULL);
  assert_true (g_file_test (manifest, G_FILE_TEST_EXISTS));
  assert_non_null (
      strstr (gtk_label_get_text (GTK_LABEL (hut_gui_app_find (&app, "result"))), folder));
}

static gboolean
throw_item_out (HutDesign *design,
                gpointer user_data)
{
  hut_design_get_opening (design, ITEM)->at.u_offset_mm = -500.0;
  return TRUE;
}

static void
what_blocks_is_exported_only_when_it_is_ticked (void **state)
{
  g_auto(HutGuiApp) app = { 0 };
  g_autofree char *folder = NULL;
  GtkWidget *checks;

  hut_gui_app_open (&app, EXAMPLE);
  folder = hut_gui_app_dup_path (&app, "set");
  hut_session_edit (app.gui.session, "Out", throw_item_out, NULL);
  /* The chooser does not even open. */
  hut_gui_app_activate (&app, "win.export", NULL);
  hut_gui_wait_for (hut_gui_app_look_for (&app, "problem") != NULL);
  assert_int_equal (hut_gui_app_count_dialogs (&app), 0);
  hut_gui_app_activate (&app, "win.export-to", g_variant_new_string (folder));
  hut_gui_wait_for (hut_gui_app_look_for (&app, "export") != NULL);
  assert_false (g_file_test (folder, G_FILE_TEST_EXISTS));
  checks = hut_gui_app_find (&app, "checks");
  for (GtkWidget *check = gtk_widget_get_first_child (checks); check != NULL;
       check = gtk_widget_get_next_sibling (check))
    gtk_check_button_set_active (GTK_CHECK_BUTTON (check), TRUE);
  hut_gui_app_activate (&app, "win.export-to", g_variant_new_string (folder));
  hut_gui_wait_for (hut_gui_app_look_for (&app, "result") != NULL);
  assert_true (g_file_test (folder, G_FILE_TEST_IS_DIR));
}

/* ---- recovery ------------------------------------------------------------------------------- */

static void
what_was_left_behind_is_offered_and_taken_up_as_unsaved (void **state)
{
  g_auto(HutGuiApp) app = { 0 };
  g_autofree char *folder
      = g_build_filename (g_get_user_state_dir (), "hutchwright", "recovery", NULL);
  g_autofree char *path = g_build_filename (folder, "left.hutch", NULL);
  g_autoptr(HutDesign) left = hut_design_new ();
  g_autoptr(GError) error = NULL;
  GtkWidget *yes;

  rename_design (left, (gpointer) "left behind");
  /* On a slow machine an earlier test's window leaves something behind too. */
  hut_scratch_remove_tree (folder);
  assert_int_equal (g_mkdir_with_parents (folder, 0700), 0);
  assert_ok (hut_design_save (left, path, &error), error);
  hut_gui_app_open (&app, NULL);
  hut_main_window_offer_recovery (HUT_MAIN_WINDOW (app.gui.window));
  hut_gui_wait_for (hut_notice_get_text (notice_of (&app)) != NULL);
  yes = hut_gui_find (app.gui.window, GTK_TYPE_LABEL, "Recover");
  assert_non_null (yes);
  g_signal_emit_by_name (gtk_widget_get_ancestor (yes, GTK_TYPE_BUTTON), "clicked");
  hut_gui_wait_for (g_strcmp0 (design_of (&app)->name, "left behind") == 0);
  assert_true (hut_session_is_modified (app.gui.session));
  assert_false (g_file_test (path, G_FILE_TEST_EXISTS));
}

/* ---- findings ------------------------------------------------------------------------------- */

static void
a_chosen_finding_selects_what_it_speaks_of (void **state)
{
  g_auto(HutGuiApp) app = { 0 };
  g_autofree char *counts = NULL;

  hut_gui_app_open (&app, EXAMPLE);
  hut_session_edit (app.gui.session, "Out", throw_item_out, NULL);
  /* It blocks, so it is the first; the list shows it with the next frame. */
  counts = g_strdup_printf ("1 block, 0 warn, %u note",
                            hut_session_get_findings (app.gui.session)->len - 1);
  hut_gui_wait_for (hut_gui_find (app.gui.window, GTK_TYPE_LABEL, counts) != NULL);
  hut_gui_app_activate (&app, "win.next-finding", NULL);
  assert_int_equal (hut_session_get_selected_finding (app.gui.session), 0);
  assert_string_equal (hut_session_get_selected (app.gui.session), ITEM);
  hut_gui_wait_for (hut_gui_app_look_for (&app, "u_offset") != NULL);
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (a_number_typed_in_the_inspector_moves_the_opening),
    cmocka_unit_test (leaving_a_field_applies_it_and_is_one_step),
    cmocka_unit_test (an_arrow_key_steps_by_a_millimetre_and_a_held_one_is_one_step),
    cmocka_unit_test (what_is_no_number_is_told_at_the_field_and_changes_nothing),
    cmocka_unit_test (a_number_out_of_range_is_told_with_the_range),
    cmocka_unit_test (typing_survives_that_something_else_changes),
    cmocka_unit_test (what_is_typed_belongs_to_the_opening_that_was_selected),
    cmocka_unit_test (inches_are_shown_and_typed_when_asked_for),
    cmocka_unit_test (a_broken_file_is_told_with_file_and_line_and_changes_nothing),
    cmocka_unit_test (saving_and_opening_again_gives_the_same_design),
    cmocka_unit_test (unsaved_changes_are_asked_about_before_they_are_lost),
    cmocka_unit_test (an_export_by_action_writes_the_set),
    cmocka_unit_test (what_blocks_is_exported_only_when_it_is_ticked),
    cmocka_unit_test (what_was_left_behind_is_offered_and_taken_up_as_unsaved),
    cmocka_unit_test (a_chosen_finding_selects_what_it_speaks_of),
  };

  setlocale (LC_ALL, "C");
  gtk_init ();
  return cmocka_run_group_tests_name ("window", tests, NULL, NULL);
}

/* tests/app/test-session.c: history, gestures, selection and file state of an open design.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "app/hut-session.h"
#include "design/hut-file.h"
#include "hut-assert.h"
#include <glib/gstdio.h>

static gboolean
set_name (HutDesign *design,
          gpointer user_data)
{
  g_free (design->name);
  design->name = g_strdup (user_data);
  return TRUE;
}

static gboolean
refuse (HutDesign *design,
        gpointer user_data)
{
  g_free (design->name);
  design->name = g_strdup ("refused");
  return FALSE;
}

static void
count (HutSession *session,
       gpointer user_data)
{
  (*(int *)user_data)++;
}

static HutSession *
new_session (void)
{
  HutDesign *design = hut_design_new ();

  set_name (design, (gpointer) "zero");
  return hut_session_new (design);
}

/* A session with a round hole of 30 mm, id "vent", whose middle is 100 mm from the left and 50 mm
 * under the top of the base's front. */
static HutSession *
new_session_with_vent (void)
{
  HutDesign *design = hut_design_new ();
  HutOpening *vent
      = hut_opening_new ("vent", (HutPanelId){ HUT_SHELL_BASE, HUT_SIDE_FRONT }, HUT_SHAPE_ROUND);

  vent->diameter_mm = 30.0;
  vent->at.u_anchor = HUT_ANCHOR_START;
  vent->at.u_offset_mm = 100.0;
  vent->at.v_anchor = HUT_ANCHOR_END;
  vent->at.v_offset_mm = 50.0;
  g_ptr_array_add (design->openings, vent);
  return hut_session_new (design);
}

static const char *
name_of (HutSession *session)
{
  return hut_session_get_design (session)->name;
}

static void
undo_and_redo_walk_through_the_edits (void **state)
{
  g_autoptr (HutSession) session = new_session ();

  assert_false (hut_session_can_undo (session));
  assert_true (hut_session_edit (session, "A", set_name, (gpointer) "one"));
  assert_true (hut_session_edit (session, "B", set_name, (gpointer) "two"));
  assert_string_equal (hut_session_get_undo_label (session), "B");
  hut_session_undo (session);
  assert_string_equal (name_of (session), "one");
  assert_string_equal (hut_session_get_undo_label (session), "A");
  assert_string_equal (hut_session_get_redo_label (session), "B");
  hut_session_undo (session);
  assert_string_equal (name_of (session), "zero");
  assert_false (hut_session_can_undo (session));
  hut_session_redo (session);
  hut_session_redo (session);
  assert_string_equal (name_of (session), "two");
  assert_false (hut_session_can_redo (session));
}

static void
a_new_edit_drops_what_was_undone (void **state)
{
  g_autoptr (HutSession) session = new_session ();

  hut_session_edit (session, "A", set_name, (gpointer) "one");
  hut_session_undo (session);
  hut_session_edit (session, "B", set_name, (gpointer) "two");
  assert_false (hut_session_can_redo (session));
  hut_session_undo (session);
  assert_string_equal (name_of (session), "zero");
}

static void
an_edit_that_is_refused_or_changes_nothing_leaves_no_trace (void **state)
{
  g_autoptr (HutSession) session = new_session ();
  int derived_count = 0;

  g_signal_connect (session, "derived", G_CALLBACK (count), &derived_count);
  assert_false (hut_session_edit (session, "A", refuse, NULL));
  assert_false (hut_session_edit (session, "A", set_name, (gpointer) "zero"));
  assert_string_equal (name_of (session), "zero");
  assert_false (hut_session_can_undo (session));
  assert_int_equal (derived_count, 0);
}

static void
a_gesture_is_one_step_however_many_edits_it_has (void **state)
{
  g_autoptr (HutSession) session = new_session ();

  hut_session_begin_gesture (session, "Drag");
  hut_session_edit (session, "x", set_name, (gpointer) "one");
  hut_session_edit (session, "y", set_name, (gpointer) "two");
  hut_session_end_gesture (session);
  assert_string_equal (hut_session_get_undo_label (session), "Drag");
  hut_session_undo (session);
  assert_string_equal (name_of (session), "zero");
  assert_false (hut_session_can_undo (session));
  hut_session_redo (session);
  assert_string_equal (name_of (session), "two");
}

static void
a_cancelled_gesture_goes_back_to_its_begin (void **state)
{
  g_autoptr (HutSession) session = new_session ();
  int derived_count = 0;

  hut_session_edit (session, "A", set_name, (gpointer) "one");
  g_signal_connect (session, "derived", G_CALLBACK (count), &derived_count);
  hut_session_begin_gesture (session, "Drag");
  hut_session_edit (session, "x", set_name, (gpointer) "two");
  hut_session_cancel_gesture (session);
  assert_string_equal (name_of (session), "one");
  assert_int_equal (derived_count, 2);
  assert_string_equal (hut_session_get_undo_label (session), "A");
}

static void
undo_during_a_gesture_takes_back_the_gesture_only (void **state)
{
  g_autoptr (HutSession) session = new_session ();

  hut_session_edit (session, "A", set_name, (gpointer) "one");
  hut_session_begin_gesture (session, "Drag");
  hut_session_edit (session, "x", set_name, (gpointer) "two");
  hut_session_undo (session);
  hut_session_end_gesture (session);
  assert_string_equal (name_of (session), "one");
  assert_false (hut_session_can_redo (session));
}

static void
a_gesture_without_change_is_no_step (void **state)
{
  g_autoptr (HutSession) session = new_session ();

  hut_session_begin_gesture (session, "Drag");
  hut_session_edit (session, "x", set_name, (gpointer) "two");
  hut_session_edit (session, "x", set_name, (gpointer) "zero");
  hut_session_end_gesture (session);
  assert_false (hut_session_can_undo (session));
}

static void
undoing_to_the_saved_state_is_unmodified (void **state)
{
  g_autoptr (HutSession) session = new_session ();
  int told_count = 0;

  g_signal_connect (session, "file-changed", G_CALLBACK (count), &told_count);
  assert_false (hut_session_is_modified (session));
  hut_session_edit (session, "A", set_name, (gpointer) "one");
  assert_true (hut_session_is_modified (session));
  hut_session_undo (session);
  assert_false (hut_session_is_modified (session));
  assert_int_equal (told_count, 2);
}

static void
saving_writes_what_is_open_and_ends_modified (void **state)
{
  g_autoptr (HutSession) session = new_session ();
  g_autoptr (GError) error = NULL;
  g_autofree char *folder = g_dir_make_tmp ("hut-session-XXXXXX", &error);
  g_autofree char *path = g_build_filename (folder, "a.hutch", NULL);

  hut_session_edit (session, "A", set_name, (gpointer) "one");
  assert_ok (hut_session_save (session, path, &error), error);
  assert_false (hut_session_is_modified (session));
  assert_string_equal (hut_session_get_path (session), path);

  g_autoptr (HutDesign) read = hut_design_load (path, &error);
  assert_ok (read != NULL, error);
  assert_true (hut_design_equal (read, hut_session_get_design (session)));
  g_remove (path);
  g_rmdir (folder);
}

static void
a_save_that_fails_keeps_path_and_modified (void **state)
{
  g_autoptr (HutSession) session = new_session ();
  g_autoptr (GError) error = NULL;

  hut_session_edit (session, "A", set_name, (gpointer) "one");
  assert_false (hut_session_save (session, "/nonexistent/folder/a.hutch", &error));
  assert_true (g_error_matches (error, HUT_FILE_ERROR, HUT_FILE_ERROR_IO));
  assert_null (hut_session_get_path (session));
  assert_true (hut_session_is_modified (session));
}

static void
a_recovered_design_counts_as_modified_and_has_no_history (void **state)
{
  g_autoptr (HutSession) session = new_session ();

  hut_session_edit (session, "A", set_name, (gpointer) "one");
  hut_session_replace (session, hut_design_new (), "/tmp/lost.hutch", TRUE);
  assert_true (hut_session_is_modified (session));
  assert_false (hut_session_can_undo (session));
  assert_string_equal (hut_session_get_path (session), "/tmp/lost.hutch");
}

static void
only_openings_and_windows_can_be_selected (void **state)
{
  g_autoptr (HutSession) session = new_session_with_vent ();
  int told_count = 0;

  g_signal_connect (session, "selection-changed", G_CALLBACK (count), &told_count);
  hut_session_select (session, "vent");
  assert_string_equal (hut_session_get_selected (session), "vent");
  hut_session_select (session, "vent");
  assert_int_equal (told_count, 1);
  hut_session_select (session, "no-such-thing");
  assert_null (hut_session_get_selected (session));
  assert_int_equal (told_count, 2);
}

static void
undoing_an_addition_drops_its_selection (void **state)
{
  g_autoptr (HutSession) session = new_session_with_vent ();

  hut_session_select (session, "vent");
  assert_true (hut_session_duplicate_selected (session));
  assert_string_not_equal (hut_session_get_selected (session), "vent");
  assert_int_equal (hut_session_get_design (session)->openings->len, 2);
  hut_session_undo (session);
  assert_null (hut_session_get_selected (session));
}

static void
a_nudge_to_the_right_and_up_minds_the_anchors (void **state)
{
  g_autoptr (HutSession) session = new_session_with_vent ();
  const HutOpening *vent;

  hut_session_select (session, "vent");
  assert_true (hut_session_nudge_selected (session, 2.5, 4.0));
  vent = hut_design_get_opening (hut_session_get_design (session), "vent");
  /* From the left 2.5 more; from the top 4 less. */
  assert_near_mm (vent->at.u_offset_mm, 102.5, 1e-9);
  assert_near_mm (vent->at.v_offset_mm, 46.0, 1e-9);
}

static void
deleting_the_selected_opening_can_be_undone (void **state)
{
  g_autoptr (HutSession) session = new_session_with_vent ();

  assert_false (hut_session_delete_selected (session));
  hut_session_select (session, "vent");
  assert_true (hut_session_delete_selected (session));
  assert_int_equal (hut_session_get_design (session)->openings->len, 0);
  assert_null (hut_session_get_selected (session));
  hut_session_undo (session);
  assert_non_null (hut_design_get_opening (hut_session_get_design (session), "vent"));
}

static void
moving_keeps_the_anchors_and_puts_the_middle_where_asked (void **state)
{
  g_autoptr (HutSession) session = new_session_with_vent ();
  const HutPanelId panel = { HUT_SHELL_BASE, HUT_SIDE_LEFT };
  const HutOpening *vent;
  HutPoint middle = { 0 };

  assert_true (hut_session_move_item (session, "vent", panel, (HutPoint){ 61.0, 47.0 }));
  vent = hut_design_get_opening (hut_session_get_design (session), "vent");
  assert_true (hut_panel_id_equal (vent->at.panel, panel));
  assert_int_equal (vent->at.v_anchor, HUT_ANCHOR_END);
  assert_true (hut_assembly_locate (hut_session_get_assembly (session), &vent->at, &middle));
  assert_near_mm (middle.u, 61.0, 1e-3);
  assert_near_mm (middle.v, 47.0, 1e-3);
  assert_string_equal (hut_session_get_undo_label (session), "Move");
}

static void
an_added_opening_gets_a_free_id_and_is_selected (void **state)
{
  g_autoptr (HutSession) session = new_session_with_vent ();
  const HutPanelId panel = { HUT_SHELL_BASE, HUT_SIDE_FRONT };
  g_autoptr (HutOpening) model = hut_opening_new ("vent", panel, HUT_SHAPE_ROUND);
  const char *id = hut_session_add_opening (session, model, panel, (HutPoint){ 80.0, 60.0 });

  assert_non_null (id);
  assert_string_not_equal (id, "vent");
  assert_string_equal (hut_session_get_selected (session), id);
  assert_int_equal (hut_session_get_design (session)->openings->len, 2);
}

/* An opening far outside its panel must be found; selecting that finding selects the opening. */
static gboolean
throw_vent_out (HutDesign *design,
                gpointer user_data)
{
  hut_design_get_opening (design, "vent")->at.u_offset_mm = -500.0;
  return TRUE;
}

static void
selecting_a_finding_selects_its_item_and_survives_a_new_derivation (void **state)
{
  g_autoptr (HutSession) session = new_session_with_vent ();
  const GPtrArray *findings;
  int index = -1;

  hut_session_edit (session, "Out", throw_vent_out, NULL);
  findings = hut_session_get_findings (session);
  for (guint i = 0; i < findings->len && index < 0; i++)
    if (g_strcmp0 (((const HutFinding *)g_ptr_array_index (findings, i))->item, "vent") == 0)
      index = (int)i;
  assert_true (index >= 0);
  assert_int_equal (hut_session_get_selected_finding (session), -1);
  hut_session_select_finding (session, index);
  assert_int_equal (hut_session_get_selected_finding (session), index);
  assert_string_equal (hut_session_get_selected (session), "vent");
  hut_session_edit (session, "Name", set_name, (gpointer) "other");
  assert_int_equal (hut_session_get_selected_finding (session), index);
  hut_session_undo (session);
  hut_session_undo (session);
  assert_int_equal (hut_session_get_selected_finding (session), -1);
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (undo_and_redo_walk_through_the_edits),
    cmocka_unit_test (a_new_edit_drops_what_was_undone),
    cmocka_unit_test (an_edit_that_is_refused_or_changes_nothing_leaves_no_trace),
    cmocka_unit_test (a_gesture_is_one_step_however_many_edits_it_has),
    cmocka_unit_test (a_cancelled_gesture_goes_back_to_its_begin),
    cmocka_unit_test (undo_during_a_gesture_takes_back_the_gesture_only),
    cmocka_unit_test (a_gesture_without_change_is_no_step),
    cmocka_unit_test (undoing_to_the_saved_state_is_unmodified),
    cmocka_unit_test (saving_writes_what_is_open_and_ends_modified),
    cmocka_unit_test (a_save_that_fails_keeps_path_and_modified),
    cmocka_unit_test (a_recovered_design_counts_as_modified_and_has_no_history),
    cmocka_unit_test (only_openings_and_windows_can_be_selected),
    cmocka_unit_test (undoing_an_addition_drops_its_selection),
    cmocka_unit_test (a_nudge_to_the_right_and_up_minds_the_anchors),
    cmocka_unit_test (deleting_the_selected_opening_can_be_undone),
    cmocka_unit_test (moving_keeps_the_anchors_and_puts_the_middle_where_asked),
    cmocka_unit_test (an_added_opening_gets_a_free_id_and_is_selected),
    cmocka_unit_test (selecting_a_finding_selects_its_item_and_survives_a_new_derivation),
  };

  return cmocka_run_group_tests_name ("session", tests, NULL, NULL);
}

/* tests/gui/test-canvas.c: the canvas worked with pointer and keys.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "design/hut-file.h"
#include "draw/hut-flat-marks.h"
#include "hut-gui.h"
#include <locale.h>

static void
open_example (HutGui *gui)
{
  g_autoptr (GError) error = NULL;
  HutDesign *design = hut_example_load ("mini-router", &error);

  assert_ok (design != NULL, error);
  hut_gui_open (gui, design);
}

/* The example's first opening of that shape. */
static char *
dup_item (HutGui *gui,
          HutShape shape)
{
  const HutDesign *design = hut_session_get_design (gui->session);

  for (guint i = 0; i < design->openings->len; i++)
    {
      const HutOpening *opening = g_ptr_array_index (design->openings, i);

      if (opening->shape == shape)
        return g_strdup (opening->id);
    }
  fail_msg ("no opening of that shape");
  return NULL;
}

static HutGuiPoint
item_point (HutGui *gui,
            const char *item)
{
  HutPanelId panel;
  const HutPoint at = hut_gui_item_at (gui, item, &panel);

  return hut_gui_panel_point (gui, hut_panel_id_to_string (panel), at, NULL);
}

static void
click_item (HutGui *gui,
            const char *item)
{
  hut_gui_move (item_point (gui, item));
  hut_gui_press ();
  hut_gui_release ();
  hut_gui_wait_for (g_strcmp0 (hut_session_get_selected (gui->session), item) == 0);
}

static double
scale_of (HutGui *gui)
{
  return hut_canvas_get_scale (HUT_CANVAS (gui->canvas));
}

/* ---- view ----------------------------------------------------------------------------------- */

static void
wheel_zooms_and_keeps_the_point_under_the_pointer (void **state)
{
  g_auto (HutGui) gui = { 0 };
  const HutPanelId front = { HUT_SHELL_LID, HUT_SIDE_FRONT };
  double x0, y0, x1, y1;

  open_example (&gui);
  const double before = scale_of (&gui);
  hut_gui_move (hut_gui_panel_point (&gui, "lid-front", (HutPoint){ 40, 30 }, NULL));
  assert_true (hut_canvas_locate (HUT_CANVAS (gui.canvas), front, (HutPoint){ 40, 30 }, &x0, &y0));
  hut_gui_wheel (TRUE);
  hut_gui_wheel (TRUE);
  hut_gui_wait_for (scale_of (&gui) > 1.2 * before);
  assert_true (hut_canvas_locate (HUT_CANVAS (gui.canvas), front, (HutPoint){ 40, 30 }, &x1, &y1));
  assert_near (x1, x0, 1.5); /* the pointer stands on a whole pixel */
  assert_near (y1, y0, 1.5);
}

static void
a_drag_beside_everything_moves_the_view (void **state)
{
  g_auto (HutGui) gui = { 0 };
  const HutPanelId front = { HUT_SHELL_LID, HUT_SIDE_FRONT };
  double x0, y0, x1, y1;

  open_example (&gui);
  assert_true (hut_canvas_locate (HUT_CANVAS (gui.canvas), front, (HutPoint){ 0, 0 }, &x0, &y0));
  const HutGuiPoint from = hut_gui_point (gui.canvas, 40.0, 40.0);
  hut_gui_drag (from, (HutGuiPoint){ from.x + 50, from.y + 40 });
  hut_gui_release ();
  hut_gui_wait_for (hut_canvas_locate (HUT_CANVAS (gui.canvas), front, (HutPoint){ 0, 0 }, &x1, &y1)
                    && fabs (x1 - x0 - 50.0) < 1.0);
  assert_near (y1 - y0, 40.0, 1.0);
  assert_false (hut_session_can_undo (gui.session));
}

static void
a_finding_is_brought_to_the_middle_and_enlarged (void **state)
{
  g_auto (HutGui) gui = { 0 };
  const HutPanelId back = { HUT_SHELL_BASE, HUT_SIDE_BACK };
  const HutPlace place = { TRUE, back, { 20, 30, 40, 50 } }, nowhere = { 0 };
  double x, y;

  open_example (&gui);
  const double before = scale_of (&gui);
  hut_canvas_show_place (HUT_CANVAS (gui.canvas), &nowhere);
  assert_near (scale_of (&gui), before, 0.0);
  hut_canvas_show_place (HUT_CANVAS (gui.canvas), &place);
  assert_true (scale_of (&gui) > 1.5 * before);
  assert_true (hut_canvas_locate (HUT_CANVAS (gui.canvas), back, (HutPoint){ 30, 40 }, &x, &y));
  assert_near (x, gtk_widget_get_width (gui.canvas) / 2.0, 1.0);
  assert_near (y, gtk_widget_get_height (gui.canvas) / 2.0, 1.0);
}

/* ---- select, move, size --------------------------------------------------------------------- */

static void
a_click_selects_and_one_beside_everything_unselects (void **state)
{
  g_auto (HutGui) gui = { 0 };
  g_autofree char *item = NULL;

  open_example (&gui);
  item = dup_item (&gui, HUT_SHAPE_ROUND);
  click_item (&gui, item);
  hut_gui_move (hut_gui_point (gui.canvas, 40.0, 40.0));
  hut_gui_press ();
  hut_gui_release ();
  hut_gui_wait_for (hut_session_get_selected (gui.session) == NULL);
}

static void
a_press_that_hardly_moves_changes_nothing (void **state)
{
  g_auto (HutGui) gui = { 0 };
  g_autofree char *item = NULL;

  open_example (&gui);
  item = dup_item (&gui, HUT_SHAPE_ROUND);
  const HutGuiPoint from = item_point (&gui, item);
  hut_gui_move (from);
  hut_gui_press ();
  hut_gui_move ((HutGuiPoint){ from.x + 2, from.y + 1 });
  hut_gui_release ();
  hut_gui_wait_for (g_strcmp0 (hut_session_get_selected (gui.session), item) == 0);
  assert_false (hut_session_can_undo (gui.session));
}

static void
escape_while_moving_puts_it_back (void **state)
{
  g_auto (HutGui) gui = { 0 };
  g_autofree char *item = NULL;

  open_example (&gui);
  item = dup_item (&gui, HUT_SHAPE_ROUND);
  const HutPoint before = hut_gui_item_at (&gui, item, NULL);
  const HutGuiPoint from = item_point (&gui, item);
  hut_gui_drag (from, (HutGuiPoint){ from.x + 30, from.y - 20 });
  hut_gui_wait_for (fabs (hut_gui_item_at (&gui, item, NULL).u - before.u) > 5.0);
  hut_gui_key ("Escape");
  hut_gui_wait_for (hut_gui_item_at (&gui, item, NULL).u == before.u);
  hut_gui_move ((HutGuiPoint){ from.x + 60, from.y });
  hut_gui_release ();
  assert_near_mm (hut_gui_item_at (&gui, item, NULL).u, before.u, 0.0);
  assert_false (hut_session_can_undo (gui.session));
}

/* The upper right handle lies 5 px off the corner of its bounds. */
static void
a_handle_changes_the_size_about_the_middle (void **state)
{
  g_auto (HutGui) gui = { 0 };
  g_autofree char *item = NULL;

  open_example (&gui);
  item = dup_item (&gui, HUT_SHAPE_ROUND);
  click_item (&gui, item);
  const HutOpening *opening = hut_design_get_opening (hut_session_get_design (gui.session), item);
  const double radius_mm = opening->diameter_mm / 2.0;
  const HutPoint before = hut_gui_item_at (&gui, item, NULL);
  const HutGuiPoint middle = item_point (&gui, item);
  const int off_px = (int)(radius_mm * scale_of (&gui)) + 5;
  const HutGuiPoint handle = { middle.x + off_px, middle.y - off_px };
  hut_gui_drag (handle, (HutGuiPoint){ handle.x + 12, handle.y - 12 });
  hut_gui_release ();
  hut_gui_wait_for (hut_session_can_undo (gui.session));
  opening = hut_design_get_opening (hut_session_get_design (gui.session), item);
  assert_near_mm (opening->diameter_mm, 2.0 * (radius_mm + 12.0 / scale_of (&gui)),
                  2.5 / scale_of (&gui));
  assert_near_mm (hut_gui_item_at (&gui, item, NULL).u, before.u, 1e-9);
  hut_gui_key ("ctrl+z");
  hut_gui_wait_for (!hut_session_can_undo (gui.session));
  opening = hut_design_get_opening (hut_session_get_design (gui.session), item);
  assert_near_mm (opening->diameter_mm, 2.0 * radius_mm, 0.0);
}

static void
a_click_on_a_badge_selects_its_finding (void **state)
{
  g_auto (HutGui) gui = { 0 };
  g_autofree char *item = NULL;
  int index = -1;

  open_example (&gui);
  item = dup_item (&gui, HUT_SHAPE_ROUND);
  hut_session_move_item (gui.session, item, (HutPanelId){ HUT_SHELL_BASE, HUT_SIDE_BACK },
                         (HutPoint){ 5, 200 });
  const GPtrArray *findings = hut_session_get_findings (gui.session);
  for (guint i = 0; i < findings->len && index < 0; i++)
    if (g_strcmp0 (((HutFinding *)g_ptr_array_index (findings, i))->item, item) == 0)
      index = (int)i;
  assert_true (index >= 0);

  /* Where the badge is, by the function that draws it, and the canvas' own view. */
  const HutAssembly *assembly = hut_session_get_assembly (gui.session);
  HutFlatLayout *layout = hut_flat_layout_new (assembly);
  double x, y;
  assert_true (hut_canvas_locate (HUT_CANVAS (gui.canvas),
                                  ((HutPanel *)g_ptr_array_index (assembly->panels, 0))->id,
                                  (HutPoint){ 0, 0 }, &x, &y));
  const double scale = scale_of (&gui);
  const HutFlatView view = { scale, x - layout->at[0].u * scale, y + layout->at[0].v * scale };
  g_autoptr (GArray) marks = hut_flat_marks_new (findings, assembly, layout, &view);
  for (guint i = 0; i < marks->len; i++)
    {
      const HutMark *mark = &g_array_index (marks, HutMark, i);

      if ((int)mark->finding != index)
        continue;
      hut_gui_move (hut_gui_point (gui.canvas, mark->x_px, mark->y_px));
      hut_gui_press ();
      hut_gui_release ();
      break;
    }
  hut_gui_wait_for (hut_session_get_selected_finding (gui.session) == index);
  hut_flat_layout_free (layout);
}

/* ---- keys ----------------------------------------------------------------------------------- */

static void
arrows_move_by_1_10_and_a_tenth_of_a_mm (void **state)
{
  g_auto (HutGui) gui = { 0 };
  g_autofree char *item = NULL;

  open_example (&gui);
  item = dup_item (&gui, HUT_SHAPE_ROUND);
  click_item (&gui, item);
  const HutPoint before = hut_gui_item_at (&gui, item, NULL);
  hut_gui_key ("Right");
  hut_gui_wait_for (fabs (hut_gui_item_at (&gui, item, NULL).u - before.u - 1.0) < 1e-6);
  hut_gui_key ("shift+Up");
  hut_gui_wait_for (fabs (hut_gui_item_at (&gui, item, NULL).v - before.v - 10.0) < 1e-6);
  hut_gui_key ("ctrl+Left");
  hut_gui_wait_for (fabs (hut_gui_item_at (&gui, item, NULL).u - before.u - 0.9) < 1e-6);
}

static void
tab_reaches_every_item_once_and_then_leaves_the_canvas (void **state)
{
  g_auto (HutGui) gui = { 0 };
  g_autoptr (GHashTable) seen = g_hash_table_new_full (g_str_hash, g_str_equal, g_free, NULL);

  open_example (&gui);
  const HutDesign *design = hut_session_get_design (gui.session);
  const guint count = design->windows->len + design->openings->len + design->hardware->len;
  gtk_widget_grab_focus (gui.canvas);
  hut_gui_wait_for (gtk_widget_has_focus (gui.canvas));
  for (guint i = 0; i < count; i++)
    {
      hut_gui_key ("Tab");
      hut_gui_wait_for (hut_session_get_selected (gui.session) != NULL
                        && !g_hash_table_contains (seen, hut_session_get_selected (gui.session)));
      g_hash_table_add (seen, g_strdup (hut_session_get_selected (gui.session)));
      assert_true (gtk_widget_has_focus (gui.canvas));
    }
  hut_gui_key ("Tab");
  hut_gui_wait_for (!gtk_widget_has_focus (gui.canvas));
  assert_int_equal (g_hash_table_size (seen), count);
}

static void
delete_and_duplicate_have_keys (void **state)
{
  g_auto (HutGui) gui = { 0 };
  g_autofree char *item = NULL;

  open_example (&gui);
  item = dup_item (&gui, HUT_SHAPE_ROUND);
  const guint count = hut_session_get_design (gui.session)->openings->len;
  click_item (&gui, item);
  hut_gui_key ("ctrl+d");
  hut_gui_wait_for (hut_session_get_design (gui.session)->openings->len == count + 1);
  assert_string_not_equal (hut_session_get_selected (gui.session), item);
  hut_gui_key ("Delete");
  hut_gui_wait_for (hut_session_get_design (gui.session)->openings->len == count);
  assert_non_null (hut_design_get_opening (hut_session_get_design (gui.session), item));
}

static void
enter_leads_to_the_numbers (void **state)
{
  g_auto (HutGui) gui = { 0 };
  g_autofree char *item = NULL;

  open_example (&gui);
  item = dup_item (&gui, HUT_SHAPE_ROUND);
  click_item (&gui, item);
  hut_gui_wait_for (gtk_widget_has_focus (gui.canvas));
  hut_gui_key ("Return");
  hut_gui_wait_for (!gtk_widget_has_focus (gui.canvas)
                    && gtk_window_get_focus (GTK_WINDOW (gui.window)) != NULL);
  assert_false (
      gtk_widget_is_ancestor (gtk_window_get_focus (GTK_WINDOW (gui.window)), gui.canvas));
}

/* Each named action does what it says. */
static void
actions_work_by_name (void **state)
{
  g_auto (HutGui) gui = { 0 };

  open_example (&gui);
  const double fit = scale_of (&gui);
  assert_true (gtk_widget_activate_action (gui.canvas, "canvas.zoom-in", NULL));
  assert_near (scale_of (&gui), 1.25 * fit, 1e-9);
  assert_true (gtk_widget_activate_action (gui.canvas, "canvas.zoom-out", NULL));
  assert_near (scale_of (&gui), fit, 1e-9);
  gtk_widget_activate_action (gui.canvas, "canvas.zoom-in", NULL);
  assert_true (gtk_widget_activate_action (gui.canvas, "canvas.zoom-fit", NULL));
  assert_near (scale_of (&gui), fit, 1e-9);
  assert_true (gtk_widget_activate_action (gui.canvas, "canvas.next", NULL));
  g_autofree char *first = g_strdup (hut_session_get_selected (gui.session));
  assert_non_null (first);
  gtk_widget_activate_action (gui.canvas, "canvas.next", NULL);
  assert_string_not_equal (hut_session_get_selected (gui.session), first);
  assert_true (gtk_widget_activate_action (gui.canvas, "canvas.previous", NULL));
  assert_string_equal (hut_session_get_selected (gui.session), first);
  assert_true (gtk_widget_activate_action (gui.canvas, "canvas.zoom-selection", NULL));
  assert_true (scale_of (&gui) > fit);
  const guint count = hut_session_get_assembly (gui.session)->holes->len;
  assert_true (gtk_widget_activate_action (gui.canvas, "canvas.duplicate", NULL));
  assert_int_equal (hut_session_get_assembly (gui.session)->holes->len, count + 1);
  assert_true (gtk_widget_activate_action (gui.canvas, "canvas.delete", NULL));
  assert_int_equal (hut_session_get_assembly (gui.session)->holes->len, count);
  hut_session_select (gui.session, first);
  assert_true (gtk_widget_activate_action (gui.canvas, "canvas.unselect", NULL));
  assert_null (hut_session_get_selected (gui.session));
}

/* ---- what is told --------------------------------------------------------------------------- */

static void
a_screen_reader_hears_what_is_selected_and_where (void **state)
{
  g_auto (HutGui) gui = { 0 };
  g_autofree char *item = NULL;

  open_example (&gui);
  assert_int_equal (gtk_accessible_get_accessible_role (GTK_ACCESSIBLE (gui.canvas)),
                    GTK_ACCESSIBLE_ROLE_GROUP);
  gtk_test_accessible_assert_property (gui.canvas, GTK_ACCESSIBLE_PROPERTY_LABEL,
                                       "Panels, unfolded");
  item = dup_item (&gui, HUT_SHAPE_ROUND);
  hut_session_select (gui.session, item);
  hut_session_move_item (gui.session, item, (HutPanelId){ HUT_SHELL_BASE, HUT_SIDE_RIGHT },
                         (HutPoint){ 120, 80.5 });
  const HutOpening *opening = hut_design_get_opening (hut_session_get_design (gui.session), item);
  /* A unit keeps to its number: no-break spaces. */
  g_autofree char *expected = g_strdup_printf (
      "%s, %g\u00a0mm by %g\u00a0mm, on Base right: middle 120\u00a0mm from the left, "
      "80.5\u00a0mm from the bottom",
      opening->name, opening->diameter_mm, opening->diameter_mm);
  gtk_test_accessible_assert_property (gui.canvas, GTK_ACCESSIBLE_PROPERTY_DESCRIPTION, expected);
}

static gboolean
make_impossible (HutDesign *design,
                 gpointer user_data)
{
  design->shell.fitted = FALSE;
  design->shell.inside_mm = (HutVec3){ 0.0, 0.0, 0.0 };
  return TRUE;
}

static void
without_a_box_the_canvas_explains_itself (void **state)
{
  g_auto (HutGui) gui = { 0 };

  open_example (&gui);
  GtkWidget *title = hut_gui_find (gui.canvas, GTK_TYPE_LABEL, "There is no box to draw yet");
  assert_non_null (title);
  assert_false (gtk_widget_get_mapped (title));
  hut_session_edit (gui.session, "test", make_impossible, NULL);
  hut_gui_wait_for (gtk_widget_get_mapped (title));
  hut_session_undo (gui.session);
  hut_gui_wait_for (!gtk_widget_get_mapped (title));
}

static int
set_up (void **state)
{
  setlocale (LC_ALL, "C.UTF-8");
  return gtk_init_check () ? 0 : -1;
}

/* Usage: test-gui-canvas [PATTERN]: only the tests whose names match. */
int
main (int argc,
      char **argv)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (wheel_zooms_and_keeps_the_point_under_the_pointer),
    cmocka_unit_test (a_drag_beside_everything_moves_the_view),
    cmocka_unit_test (a_finding_is_brought_to_the_middle_and_enlarged),
    cmocka_unit_test (a_click_selects_and_one_beside_everything_unselects),
    cmocka_unit_test (a_press_that_hardly_moves_changes_nothing),
    cmocka_unit_test (escape_while_moving_puts_it_back),
    cmocka_unit_test (a_handle_changes_the_size_about_the_middle),
    cmocka_unit_test (a_click_on_a_badge_selects_its_finding),
    cmocka_unit_test (arrows_move_by_1_10_and_a_tenth_of_a_mm),
    cmocka_unit_test (tab_reaches_every_item_once_and_then_leaves_the_canvas),
    cmocka_unit_test (delete_and_duplicate_have_keys),
    cmocka_unit_test (enter_leads_to_the_numbers),
    cmocka_unit_test (actions_work_by_name),
    cmocka_unit_test (a_screen_reader_hears_what_is_selected_and_where),
    cmocka_unit_test (without_a_box_the_canvas_explains_itself),
  };

  if (argc > 1)
    cmocka_set_test_filter (argv[1]);
  return cmocka_run_group_tests (tests, set_up, NULL);
}

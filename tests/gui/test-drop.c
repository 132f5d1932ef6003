/* tests/gui/test-drop.c: an opening is dragged from the shelf onto a panel with a real pointer.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "design/hut-file.h"
#include "hut-gui.h"
#include <glib/gstdio.h>
#include <locale.h>

#define SHELF_ENTRY "Round hole 30"
#define ENTRY_DIAMETER_MM 30.0

static void
open_example (HutGui *gui)
{
  g_autoptr (GError) error = NULL;
  HutDesign *design = hut_example_load ("mini-router", &error);

  assert_ok (design != NULL, error);
  hut_gui_open (gui, design);
}

static guint
count_openings (HutGui *gui)
{
  return hut_session_get_design (gui->session)->openings->len;
}

/* Drags the entry over a place of a panel and leaves it pressed; the preview's id (transfer full).
 */
static char *
hover (HutGui *gui,
       const char *panel,
       HutPoint wanted,
       HutPoint *real)
{
  const guint before = count_openings (gui);
  const HutGuiPoint to = hut_gui_panel_point (gui, panel, wanted, real);

  hut_gui_drag (hut_gui_shelf_point (gui, SHELF_ENTRY), to);
  hut_gui_wait_for (count_openings (gui) == before + 1);
  const HutOpening *added
      = g_ptr_array_index (hut_session_get_design (gui->session)->openings, before);
  return g_strdup (added->id);
}

static gboolean
is_near (HutGui *gui,
         const char *item,
         HutPoint expected,
         double slack_mm)
{
  const HutPoint at = hut_gui_item_at (gui, item, NULL);

  return fabs (at.u - expected.u) <= slack_mm && fabs (at.v - expected.v) <= slack_mm;
}

/* A place on the back panel that is far from every stop: tests say if it is not. */
static const HutPoint free_place = { 118.0, 171.0 };

static void
dropped_opening_is_in_the_saved_file_within_a_pixel (void **state)
{
  g_auto (HutGui) gui = { 0 };
  g_autoptr (GError) error = NULL;
  g_autofree char *folder = g_dir_make_tmp ("hut-drop-XXXXXX", &error);
  g_autofree char *path = NULL, *item = NULL;
  g_autoptr (HutDesign) saved = NULL;
  g_autoptr (HutAssembly) assembly = NULL;
  HutPoint expected, at;

  assert_ok (folder != NULL, error);
  path = g_build_filename (folder, "dropped.hutch", NULL);
  open_example (&gui);
  hut_gui_hold ("ctrl", TRUE); /* suspends snapping */
  item = hover (&gui, "base-back", free_place, &expected);
  const double pixel_mm = 1.0 / hut_canvas_get_scale (HUT_CANVAS (gui.canvas));
  hut_gui_wait_for (is_near (&gui, item, expected, pixel_mm));
  hut_gui_release ();
  hut_gui_wait_for (hut_session_can_undo (gui.session));
  hut_gui_hold ("ctrl", FALSE);
  assert_ok (hut_session_save (gui.session, path, &error), error);

  saved = hut_design_load (path, &error);
  assert_ok (saved != NULL, error);
  const HutOpening *opening = hut_design_get_opening (saved, item);
  assert_non_null (opening);
  assert_int_equal (opening->shape, HUT_SHAPE_ROUND);
  assert_near_mm (opening->diameter_mm, ENTRY_DIAMETER_MM, 0.0);
  assert_string_equal (hut_panel_id_to_string (opening->at.panel), "base-back");
  assembly = hut_assembly_new (saved);
  assert_true (hut_assembly_locate (assembly, &opening->at, &at));
  assert_near_mm (at.u, expected.u, pixel_mm);
  assert_near_mm (at.v, expected.v, pixel_mm);
  g_unlink (path);
  g_rmdir (folder);
}

static void
drag_into_a_joint_raises_a_finding_that_undo_takes_back (void **state)
{
  g_auto (HutGui) gui = { 0 };
  g_autofree char *item = NULL;
  HutPoint dropped;

  open_example (&gui);
  item = hover (&gui, "base-back", free_place, &dropped);
  hut_gui_release ();
  hut_gui_wait_for (hut_session_can_undo (gui.session));
  dropped = hut_gui_item_at (&gui, item, NULL);
  assert_false (hut_gui_has_finding (&gui, "opening.joint", item));

  /* From its middle to where its left side lies 3 mm behind the finger roots, which are 5.86 mm
   * deep, then on into the fingers. Control suspends the stop before them. */
  hut_gui_hold ("ctrl", TRUE);
  /* Held at its lower left, as a finding's mark may lie over its middle. */
  hut_gui_drag (
      hut_gui_panel_point (&gui, "base-back", (HutPoint){ dropped.u - 8.0, dropped.v - 8.0 }, NULL),
      hut_gui_panel_point (&gui, "base-back", (HutPoint){ 16.0, dropped.v - 8.0 }, NULL));
  hut_gui_wait_for (hut_gui_has_finding (&gui, "opening.joint", item)); /* while it is still held */
  hut_gui_move (
      hut_gui_panel_point (&gui, "base-back", (HutPoint){ 5.0, dropped.v - 8.0 }, NULL));
  hut_gui_wait_for (hut_gui_has_finding (&gui, "opening.outside", item));
  hut_gui_release ();
  hut_gui_wait_for (g_strcmp0 (hut_session_get_undo_label (gui.session), "Move") == 0);
  hut_gui_hold ("ctrl", FALSE);
  assert_true (hut_gui_item_at (&gui, item, NULL).u < 20.0);

  hut_gui_key ("ctrl+z");
  hut_gui_wait_for (is_near (&gui, item, dropped, 1e-9));
  assert_false (hut_gui_has_finding (&gui, "opening.joint", item));
  assert_false (hut_gui_has_finding (&gui, "opening.outside", item));
  hut_gui_key ("ctrl+z");
  assert_null (hut_design_get_opening (hut_session_get_design (gui.session), item));
  assert_false (hut_session_can_undo (gui.session)); /* add and move are one step each */
}

static void
hovering_shows_findings_and_leaving_takes_all_back (void **state)
{
  g_auto (HutGui) gui = { 0 };
  g_autofree char *item = NULL;

  open_example (&gui);
  const guint before = count_openings (&gui);
  hut_gui_hold ("ctrl", TRUE);
  item = hover (&gui, "base-back", (HutPoint){ 18.0, 120.0 }, NULL);
  hut_gui_wait_for (hut_gui_has_finding (&gui, "opening.outside", item));
  hut_gui_move (hut_gui_point (gui.canvas, 8.0, 8.0)); /* between the panels */
  hut_gui_wait_for (count_openings (&gui) == before);
  hut_gui_release ();
  for (int i = 0; i < 5; i++)
    hut_gui_spin ();
  hut_gui_hold ("ctrl", FALSE);
  assert_int_equal (count_openings (&gui), before);
  assert_false (hut_session_can_undo (gui.session));
}

static void
escape_gives_up_the_drag (void **state)
{
  g_auto (HutGui) gui = { 0 };
  g_autofree char *item = NULL;

  open_example (&gui);
  const guint before = count_openings (&gui);
  item = hover (&gui, "base-back", free_place, NULL);
  hut_gui_key ("Escape");
  hut_gui_wait_for (count_openings (&gui) == before);
  hut_gui_release ();
  hut_gui_spin ();
  assert_int_equal (count_openings (&gui), before);
  assert_false (hut_session_can_undo (gui.session));
  /* The next drag is as good as the first. */
  g_free (item);
  item = hover (&gui, "base-back", free_place, NULL);
  hut_gui_release ();
  hut_gui_wait_for (hut_session_can_undo (gui.session));
  assert_int_equal (count_openings (&gui), before + 1);
}

static void
near_the_centre_line_a_drop_stops_there_unless_control_is_held (void **state)
{
  for (int held = 0; held < 2; held++)
    {
      g_auto (HutGui) gui = { 0 };
      g_autofree char *item = NULL;
      HutPoint real;

      open_example (&gui);
      const HutAssembly *assembly = hut_session_get_assembly (gui.session);
      const HutPanel *back
          = hut_assembly_get_panel (assembly, (HutPanelId){ HUT_SHELL_BASE, HUT_SIDE_BACK });
      const double middle_mm = back->width_mm / 2.0;

      if (held)
        hut_gui_hold ("ctrl", TRUE);
      item = hover (&gui, "base-back", (HutPoint){ middle_mm + 5.0, free_place.v }, &real);
      hut_gui_wait_for (fabs (hut_gui_item_at (&gui, item, NULL).u - (held ? real.u : middle_mm))
                        < (held ? 1.5 : 0.001));
      hut_gui_release ();
      hut_gui_wait_for (hut_session_can_undo (gui.session));
      assert_near_mm (hut_gui_item_at (&gui, item, NULL).u, held ? real.u : middle_mm,
                      held ? 1.5 : 0.001);
      if (held)
        hut_gui_hold ("ctrl", FALSE);
    }
}

static void
a_drag_can_go_on_to_another_panel (void **state)
{
  g_auto (HutGui) gui = { 0 };
  g_autofree char *item = NULL;
  HutPanelId panel;
  HutPoint real;

  open_example (&gui);
  item = hover (&gui, "base-back", free_place, NULL);
  hut_gui_move (hut_gui_panel_point (&gui, "base-right", (HutPoint){ 70.0, 50.0 }, &real));
  hut_gui_wait_for (hut_gui_item_at (&gui, item, &panel).u > 0.0
                    && g_str_equal (hut_panel_id_to_string (panel), "base-right"));
  hut_gui_release ();
  hut_gui_wait_for (hut_session_can_undo (gui.session));
  hut_gui_item_at (&gui, item, &panel);
  assert_string_equal (hut_panel_id_to_string (panel), "base-right");
}

static int
set_up (void **state)
{
  setlocale (LC_ALL, "C.UTF-8");
  return gtk_init_check () ? 0 : -1;
}

/* Usage: test-gui-drop [PATTERN]: only the tests whose names match. */
int
main (int argc,
      char **argv)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (dropped_opening_is_in_the_saved_file_within_a_pixel),
    cmocka_unit_test (drag_into_a_joint_raises_a_finding_that_undo_takes_back),
    cmocka_unit_test (hovering_shows_findings_and_leaving_takes_all_back),
    cmocka_unit_test (escape_gives_up_the_drag),
    cmocka_unit_test (near_the_centre_line_a_drop_stops_there_unless_control_is_held),
    cmocka_unit_test (a_drag_can_go_on_to_another_panel),
  };

  if (argc > 1)
    cmocka_set_test_filter (argv[1]);
  return cmocka_run_group_tests (tests, set_up, NULL);
}

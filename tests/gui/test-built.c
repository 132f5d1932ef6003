/* tests/gui/test-built.c: the built view worked with pointer and keys.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "app/hut-built-page.h"
#include "design/hut-file.h"
#include "hut-gui.h"

/* Opens an example with the built view in front. */
static HutBuiltArea *
open_built (HutGui *gui,
            const char *example)
{
  g_autoptr (GError) error = NULL;
  HutDesign *design = hut_example_load (example, &error);
  GtkWidget *page;

  assert_ok (design != NULL, error);
  hut_gui_open (gui, design);
  hut_gui_key ("alt+8");
  page = hut_gui_find (gui->window, HUT_TYPE_BUILT_PAGE, NULL);
  assert_non_null (page);
  hut_gui_wait_for (gtk_widget_get_mapped (page)
                    && hut_built_area_get_view (hut_built_page_get_area (HUT_BUILT_PAGE (page)))
                               .scale_px_per_mm
                           > 0.0);
  return hut_built_page_get_area (HUT_BUILT_PAGE (page));
}

static GtkWidget *
find_scale (HutGui *gui)
{
  GtkWidget *page = hut_gui_find (gui->window, HUT_TYPE_BUILT_PAGE, NULL);

  return hut_gui_find (page, GTK_TYPE_SCALE, NULL);
}

static void
a_drag_turns_and_keys_turn_back (void **state)
{
  g_auto (HutGui) gui = { 0 };
  HutBuiltArea *area = open_built (&gui, "engraver");
  const HutBuiltView before = hut_built_area_get_view (area);

  hut_gui_drag (hut_gui_point (GTK_WIDGET (area), 200, 200),
                hut_gui_point (GTK_WIDGET (area), 320, 260));
  hut_gui_release ();
  hut_gui_wait_for (hut_built_area_get_view (area).yaw_rad < before.yaw_rad - 0.3);
  assert_true (hut_built_area_get_view (area).pitch_rad > before.pitch_rad + 0.2);

  const double turned_rad = hut_built_area_get_view (area).yaw_rad;
  hut_gui_key ("Left");
  hut_gui_wait_for (hut_built_area_get_view (area).yaw_rad > turned_rad + 0.1);
  hut_gui_key ("Home");
  hut_gui_wait_for (fabs (hut_built_area_get_view (area).yaw_rad - before.yaw_rad) < 1e-9);
}

static void
the_wheel_and_commands_zoom (void **state)
{
  g_auto (HutGui) gui = { 0 };
  HutBuiltArea *area = open_built (&gui, "mini-router");
  const double fitted = hut_built_area_get_view (area).scale_px_per_mm;

  hut_gui_move (hut_gui_point (GTK_WIDGET (area), 200, 200));
  hut_gui_wheel (TRUE);
  hut_gui_wait_for (hut_built_area_get_view (area).scale_px_per_mm > 1.2 * fitted);
  hut_gui_key ("ctrl+minus");
  hut_gui_wait_for (fabs (hut_built_area_get_view (area).scale_px_per_mm - fitted) < 1e-9);
}

/* The slider goes as far as the lid shall open, and says how near it comes on its way. */
static void
the_lid_opens_by_the_keyboard (void **state)
{
  g_auto (HutGui) gui = { 0 };
  HutBuiltArea *area = open_built (&gui, "engraver");
  GtkWidget *scale = find_scale (&gui), *page = gtk_widget_get_parent (GTK_WIDGET (area));
  GtkAdjustment *lid = gtk_range_get_adjustment (GTK_RANGE (scale));
  const HutShell *shell = &hut_session_get_design (gui.session)->shell;

  hut_gui_wait_for (fabs (gtk_adjustment_get_upper (lid) - shell->opening_angle_deg) < 1e-9);
  gtk_widget_grab_focus (scale);
  hut_gui_wait_for (gtk_widget_is_focus (scale));
  hut_gui_key ("End");
  hut_gui_wait_for (fabs (gtk_adjustment_get_value (lid) - shell->opening_angle_deg) < 1e-9);
  assert_non_null (hut_gui_find (page, GTK_TYPE_CHECK_BUTTON, NULL));
}

static void
cutting_shows_the_sheets_and_leaving_it_the_panels (void **state)
{
  g_auto (HutGui) gui = { 0 };
  HutBuiltArea *area = open_built (&gui, "engraver");

  hut_gui_key ("alt+5");
  hut_gui_wait_for (!gtk_widget_get_mapped (GTK_WIDGET (area)));
  assert_false (gtk_widget_get_mapped (gui.canvas));
  hut_gui_key ("alt+2");
  hut_gui_wait_for (gtk_widget_get_mapped (gui.canvas));
  hut_gui_key ("alt+8");
  hut_gui_wait_for (gtk_widget_get_mapped (GTK_WIDGET (area)));
  /* A step keeps the view, unless it was that of the sheets. */
  hut_gui_key ("alt+3");
  for (int i = 0; i < 5; i++)
    hut_gui_spin ();
  assert_true (gtk_widget_get_mapped (GTK_WIDGET (area)));
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (a_drag_turns_and_keys_turn_back),
    cmocka_unit_test (the_wheel_and_commands_zoom),
    cmocka_unit_test (the_lid_opens_by_the_keyboard),
    cmocka_unit_test (cutting_shows_the_sheets_and_leaving_it_the_panels),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}

/* tests/gui/test-hardware.c: hardware worked with keys, and a finding cured by its button.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "hut-gui.h"
#include "hut-test-item.h"
#include <locale.h>

static const HutPanelId base_back = { HUT_SHELL_BASE, HUT_SIDE_BACK };

/* A fan behind the back wall of a box whose machine stands 20 from it: its body, 25 deep, hits. */
static void
open_fan (HutGui *gui)
{
  HutDesign *design = hut_design_new ();

  design->shell.fitted = FALSE;
  hut_test_put (design, "fan", hut_test_item_new_fan (92, 80, 4, 76, 25), base_back, 186, 72);
  hut_gui_open (gui, design);
  hut_gui_wait_for (hut_gui_has_finding (gui, "depth.machine", "fan"));
}

static HutFace
face (HutGui *gui)
{
  return hut_design_get_hardware (hut_session_get_design (gui->session), "fan")->face;
}

static void
key_flips_the_face_and_the_finding_goes (void **state)
{
  g_auto (HutGui) gui = { 0 };

  open_fan (&gui);
  hut_session_select (gui.session, "fan");
  gtk_widget_grab_focus (gui.canvas);
  hut_gui_spin ();
  hut_gui_key ("f");
  hut_gui_wait_for (face (&gui) == HUT_FACE_INSIDE);
  assert_false (hut_gui_has_finding (&gui, "depth.machine", "fan"));
  hut_gui_key ("f");
  hut_gui_wait_for (face (&gui) == HUT_FACE_OUTSIDE);
  hut_gui_wait_for (hut_gui_has_finding (&gui, "depth.machine", "fan"));
}

/* From the shelf onto the back wall with the pointer, then to the other face by the key. */
static void
a_fan_is_dragged_from_the_shelf_and_flipped_by_the_key (void **state)
{
  static const HutPoint place = { 186, 72 };
  g_auto (HutGui) gui = { 0 };
  HutDesign *design = hut_design_new ();
  g_autofree char *id = NULL;

  design->shell.fitted = FALSE;
  hut_gui_open (&gui, design);
  gtk_editable_set_text (GTK_EDITABLE (hut_gui_find (gui.shelf, GTK_TYPE_SEARCH_ENTRY, NULL)),
                         "fan 80 25");
  for (int i = 0; i < 20; i++) /* until the row stands where it stays */
    hut_gui_spin ();
  hut_gui_drag (hut_gui_shelf_point (&gui, "Axial fan 80 × 25"),
                hut_gui_panel_point (&gui, "base-back", place, NULL));
  hut_gui_wait_for (hut_session_get_design (gui.session)->hardware->len == 1);
  for (int i = 0; i < 10; i++)
    hut_gui_spin ();
  hut_gui_move (hut_gui_panel_point (&gui, "base-back", place, NULL));
  hut_gui_spin ();
  hut_gui_release ();
  hut_gui_wait_for (hut_session_can_undo (gui.session));

  const HutHardware *fan = g_ptr_array_index (hut_session_get_design (gui.session)->hardware, 0);
  const HutFace dropped = fan->face;
  id = g_strdup (fan->id);
  assert_string_equal (hut_panel_id_to_string (fan->at.panel), "base-back");
  /* Outside of the wall its body is in nobody's way; inside it meets the machine. */
  const gboolean hit = hut_gui_has_finding (&gui, "depth.machine", id);
  gtk_widget_grab_focus (gui.canvas);
  hut_gui_spin ();
  hut_gui_key ("f");
  hut_gui_wait_for (
      hut_design_get_hardware (hut_session_get_design (gui.session), id)->face != dropped);
  hut_gui_wait_for (hut_gui_has_finding (&gui, "depth.machine", id) != hit);
}

static void
button_of_the_finding_cures_it_in_one_undo_step (void **state)
{
  g_auto (HutGui) gui = { 0 };
  GtkWidget *button;

  open_fan (&gui);
  hut_gui_wait_for (
      hut_gui_find (gui.window, GTK_TYPE_LABEL, "Mount it from the other face") != NULL);
  button = hut_gui_find (gui.window, GTK_TYPE_LABEL, "Mount it from the other face");
  hut_gui_move (hut_gui_point (button, 5, 5));
  hut_gui_press ();
  hut_gui_release ();
  hut_gui_wait_for (face (&gui) == HUT_FACE_INSIDE);
  assert_false (hut_gui_has_finding (&gui, "depth.machine", "fan"));
  hut_session_undo (gui.session);
  assert_int_equal (face (&gui), HUT_FACE_OUTSIDE);
}

static void
inspector_shows_what_the_hardware_has (void **state)
{
  g_auto (HutGui) gui = { 0 };
  GtkWidget *form;

  open_fan (&gui);
  hut_session_select (gui.session, "fan");
  form = hut_gui_find (gui.window, g_type_from_name ("HutHardwareForm"), NULL);
  assert_non_null (form);
  hut_gui_wait_for (gtk_widget_get_mapped (form));
}

static int
set_up (void **state)
{
  setlocale (LC_ALL, "C.UTF-8");
  return gtk_init_check () ? 0 : -1;
}

int
main (int argc,
      char **argv)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (key_flips_the_face_and_the_finding_goes),
    cmocka_unit_test (a_fan_is_dragged_from_the_shelf_and_flipped_by_the_key),
    cmocka_unit_test (button_of_the_finding_cures_it_in_one_undo_step),
    cmocka_unit_test (inspector_shows_what_the_hardware_has),
  };

  if (argc > 1)
    cmocka_set_test_filter (argv[1]);
  return cmocka_run_group_tests (tests, set_up, NULL);
}

/* tests/gui/test-shelf.c: the shelf without a drag: find, place, and names for those who do not
 * see. SPDX-License-Identifier: GPL-3.0-or-later */
#include "app/hut-ready-opening.h"
#include "app/hut-shelf-row.h"
#include "app/hut-stockroom.h"
#include "design/hut-file.h"
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

static guint
count_openings (HutGui *gui)
{
  return hut_session_get_design (gui->session)->openings->len;
}

static GtkListBox *
find_list (HutGui *gui)
{
  return GTK_LIST_BOX (hut_gui_find (gui->shelf, GTK_TYPE_LIST_BOX, NULL));
}

static guint
count_shown (HutGui *gui)
{
  guint count = 0;
  GtkListBoxRow *row;

  for (int i = 0; (row = gtk_list_box_get_row_at_index (find_list (gui), i)) != NULL; i++)
    count += gtk_widget_get_child_visible (GTK_WIDGET (row)) ? 1 : 0;
  return count;
}

static guint
count_catalog (void)
{
  return hut_catalog_get_count (hut_stockroom_get_catalog (hut_stockroom_get_default ()));
}

static void
typing_finds_an_opening_and_enter_places_it (void **state)
{
  g_auto (HutGui) gui = { 0 };

  open_example (&gui);
  const guint before = count_openings (&gui);
  assert_int_equal (count_shown (&gui), hut_ready_opening_get_count () + count_catalog ());
  hut_shelf_focus_search (HUT_SHELF (gui.shelf));
  hut_gui_wait_for (gtk_window_get_focus (GTK_WINDOW (gui.window)) != NULL);
  hut_gui_enter ("vent p");
  hut_gui_wait_for (count_shown (&gui) == 2); /* two vent patterns */
  hut_gui_key ("Return");
  hut_gui_wait_for (count_openings (&gui) == before + 1);
  const HutOpening *added = hut_design_get_opening (hut_session_get_design (gui.session),
                                                    hut_session_get_selected (gui.session));
  assert_non_null (added);
  assert_int_equal (added->shape, HUT_SHAPE_PATTERN);
}

static void
a_name_that_nobody_has_leaves_an_empty_shelf (void **state)
{
  g_auto (HutGui) gui = { 0 };

  open_example (&gui);
  GtkWidget *search = hut_gui_find (gui.shelf, GTK_TYPE_SEARCH_ENTRY, NULL);
  gtk_editable_set_text (GTK_EDITABLE (search), "no such thing");
  hut_gui_wait_for (count_shown (&gui) == 0);
  hut_gui_wait_for (
      gtk_widget_get_mapped (hut_gui_find (gui.shelf, GTK_TYPE_LABEL, "Nothing of that name")));
}

static void
typing_finds_an_item_and_enter_places_it_with_its_holes (void **state)
{
  g_auto (HutGui) gui = { 0 };

  open_example (&gui);
  const guint before = hut_session_get_design (gui.session)->hardware->len;
  hut_shelf_focus_search (HUT_SHELF (gui.shelf));
  hut_gui_wait_for (gtk_window_get_focus (GTK_WINDOW (gui.window)) != NULL);
  hut_gui_enter ("fan 80");
  hut_gui_wait_for (count_shown (&gui) >= 3 && count_shown (&gui) < 20);
  hut_gui_key ("Return");
  hut_gui_wait_for (hut_session_get_design (gui.session)->hardware->len == before + 1);

  const HutAssembly *assembly = hut_session_get_assembly (gui.session);
  const HutPlacedHole *hole
      = hut_assembly_get_hole (assembly, hut_session_get_selected (gui.session));

  assert_non_null (hole);
  assert_int_equal (hole->paths->len, 5); /* air and four screws */
}

static void
a_group_shows_what_is_in_it (void **state)
{
  g_auto (HutGui) gui = { 0 };

  open_example (&gui);
  GtkWidget *groups = hut_gui_find (gui.shelf, GTK_TYPE_DROP_DOWN, NULL);
  /* "Everything", "Openings", then the groups of the catalogue in their order */
  gtk_drop_down_set_selected (GTK_DROP_DOWN (groups), 1);
  hut_gui_wait_for (count_shown (&gui) == hut_ready_opening_get_count ());
  gtk_drop_down_set_selected (GTK_DROP_DOWN (groups), 2 + HUT_ITEM_LAMP);
  hut_gui_wait_for (count_shown (&gui) == 3); /* two strips and a recessed one */
  hut_gui_wait_for (
      gtk_widget_get_mapped (hut_gui_find (gui.shelf, GTK_TYPE_LABEL, "Recessed lamp 55")));
}

/* The only piece of hardware, as soon as it is within a pixel of a place. */
static gboolean
hardware_is_at (HutGui *gui,
                HutPoint place)
{
  const GPtrArray *hardware = hut_session_get_design (gui->session)->hardware;
  const double pixel_mm = 1.0 / hut_canvas_get_scale (HUT_CANVAS (gui->canvas));
  HutPoint at;

  return hardware->len == 1
         && hut_assembly_locate (hut_session_get_assembly (gui->session),
                                 &((HutHardware *)g_ptr_array_index (hardware, 0))->at, &at)
         && fabs (at.u - place.u) <= pixel_mm && fabs (at.v - place.v) <= pixel_mm;
}

static void
an_item_is_dragged_onto_a_panel_in_one_undo_step (void **state)
{
  g_auto (HutGui) gui = { 0 };
  HutPoint real;

  open_example (&gui);
  GtkWidget *search = hut_gui_find (gui.shelf, GTK_TYPE_SEARCH_ENTRY, NULL);
  gtk_editable_set_text (GTK_EDITABLE (search), "mushroom 22");
  hut_gui_wait_for (count_shown (&gui) == 1);
  for (int i = 0; i < 10; i++) /* until the row stands where it stays */
    hut_gui_spin ();
  hut_gui_hold ("ctrl", TRUE); /* suspends snapping */
  hut_gui_drag (hut_gui_shelf_point (&gui, "Emergency stop 22"),
                hut_gui_panel_point (&gui, "base-right", (HutPoint){ 190, 100 }, &real));
  hut_gui_wait_for (hut_session_get_design (gui.session)->hardware->len == 1);
  for (int i = 0; i < 10; i++) /* its form may have taken room from the canvas */
    hut_gui_spin ();
  hut_gui_move (hut_gui_panel_point (&gui, "base-right", (HutPoint){ 190, 100 }, &real));
  hut_gui_wait_for (hardware_is_at (&gui, real));
  hut_gui_release ();
  hut_gui_wait_for (hut_session_can_undo (gui.session));
  hut_gui_hold ("ctrl", FALSE);

  const HutHardware *hardware
      = g_ptr_array_index (hut_session_get_design (gui.session)->hardware, 0);

  assert_string_equal (hut_panel_id_to_string (hardware->at.panel), "base-right");
  assert_true (hardware_is_at (&gui, real)); /* it stays where the pointer let go */
  hut_session_undo (gui.session);
  assert_int_equal (hut_session_get_design (gui.session)->hardware->len, 0);
}

/* Every ready opening, one after the other: each finds a place where nothing complains about it. */
static void
what_is_placed_by_key_meets_nothing (void **state)
{
  g_auto (HutGui) gui = { 0 };
  GtkListBoxRow *row;
  guint placed = 0;

  open_example (&gui);
  for (int i = 0; (row = gtk_list_box_get_row_at_index (find_list (&gui), i)) != NULL
                  && hut_shelf_row_get_opening (HUT_SHELF_ROW (row)) != NULL;
       i++)
    {
      const guint before = count_openings (&gui);

      gtk_widget_activate (GTK_WIDGET (row));
      hut_gui_wait_for (count_openings (&gui) == before + 1);
      const char *item = hut_session_get_selected (gui.session);
      if (!hut_gui_has_finding (&gui, "opening.overlap", item)
          && !hut_gui_has_finding (&gui, "opening.outside", item)
          && !hut_gui_has_finding (&gui, "opening.joint", item)
          && !hut_gui_has_finding (&gui, "opening.edge", item))
        placed++;
    }
  /* All of them on panels of 282 x 322 mm: some room is left for each. */
  assert_int_equal (placed, hut_ready_opening_get_count ());
}

static void
the_panel_with_the_selected_item_comes_first (void **state)
{
  g_auto (HutGui) gui = { 0 };
  const HutPanelId right = { HUT_SHELL_BASE, HUT_SIDE_RIGHT };

  open_example (&gui);
  const HutDesign *design = hut_session_get_design (gui.session);
  const char *item = NULL;
  for (guint i = 0; i < design->openings->len && item == NULL; i++)
    {
      const HutOpening *opening = g_ptr_array_index (design->openings, i);

      if (hut_panel_id_equal (opening->at.panel, right))
        item = opening->id;
    }
  assert_non_null (item);
  g_autofree char *selected = g_strdup (item);
  hut_session_select (gui.session, selected);
  gtk_widget_activate (GTK_WIDGET (gtk_list_box_get_row_at_index (find_list (&gui), 1)));
  hut_gui_wait_for (g_strcmp0 (hut_session_get_selected (gui.session), selected) != 0);
  design = hut_session_get_design (gui.session);
  assert_true (hut_panel_id_equal (
      hut_design_get_opening (design, hut_session_get_selected (gui.session))->at.panel, right));
}

static void
a_double_click_places_and_a_single_one_does_not (void **state)
{
  g_auto (HutGui) gui = { 0 };

  open_example (&gui);
  const guint before = count_openings (&gui);
  hut_gui_move (hut_gui_shelf_point (&gui, "Round hole 30"));
  hut_gui_press ();
  hut_gui_release ();
  hut_gui_wait_for (gtk_list_box_get_selected_row (find_list (&gui)) != NULL);
  assert_int_equal (count_openings (&gui), before);
  hut_gui_press ();
  hut_gui_release ();
  hut_gui_wait_for (count_openings (&gui) == before + 1);
}

static void
rows_have_names_for_screen_readers (void **state)
{
  g_auto (HutGui) gui = { 0 };
  GtkListBoxRow *row;

  open_example (&gui);
  for (int i = 0; (row = gtk_list_box_get_row_at_index (find_list (&gui), i)) != NULL; i++)
    {
      const HutItem *item = hut_shelf_row_get_item (HUT_SHELF_ROW (row));

      gtk_test_accessible_assert_property (row, GTK_ACCESSIBLE_PROPERTY_LABEL,
                                           item != NULL ? item->name
                                                        : hut_ready_opening_get_name ((guint)i));
      gtk_test_accessible_assert_property (row, GTK_ACCESSIBLE_PROPERTY_DESCRIPTION,
                                           "Drag it onto a panel, or press Enter to place it.");
    }
}

static int
set_up (void **state)
{
  setlocale (LC_ALL, "C.UTF-8");
  return gtk_init_check () ? 0 : -1;
}

/* Usage: test-gui-shelf [PATTERN]: only the tests whose names match. */
int
main (int argc,
      char **argv)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (typing_finds_an_opening_and_enter_places_it),
    cmocka_unit_test (a_name_that_nobody_has_leaves_an_empty_shelf),
    cmocka_unit_test (typing_finds_an_item_and_enter_places_it_with_its_holes),
    cmocka_unit_test (a_group_shows_what_is_in_it),
    cmocka_unit_test (an_item_is_dragged_onto_a_panel_in_one_undo_step),
    cmocka_unit_test (what_is_placed_by_key_meets_nothing),
    cmocka_unit_test (the_panel_with_the_selected_item_comes_first),
    cmocka_unit_test (a_double_click_places_and_a_single_one_does_not),
    cmocka_unit_test (rows_have_names_for_screen_readers),
  };

  if (argc > 1)
    cmocka_set_test_filter (argv[1]);
  return cmocka_run_group_tests (tests, set_up, NULL);
}

/* tests/design/test-design.c: a whole design: made, copied, looked up.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "sample.h"

static void
new_design_has_a_machine_two_stocks_and_a_hood (void **state)
{
  g_autoptr(HutDesign) design = hut_design_new ();

  assert_int_equal (design->machine.bodies->len, 1);
  assert_int_equal (design->stocks->len, 2);
  assert_int_equal (design->shell.lid, HUT_LID_HOOD);
  assert_true (hut_lid_allows_hinge (design->shell.lid, design->shell.hinge));
  assert_int_equal (design->shell.bottom, HUT_BOTTOM_JOINTED);
  assert_true (design->shell.fitted);
  assert_int_equal (design->openings->len + design->windows->len, 0);
  assert_non_null (hut_design_get_stock (design, design->shell.default_stock));
}

static void
new_design_can_be_saved_and_loaded (void **state)
{
  g_autoptr(HutDesign) design = hut_design_new ();
  g_autofree char *text = hut_design_to_xml (design);
  g_autoptr(GError) error = NULL;
  g_autoptr(HutDesign) again = hut_design_from_xml (text, strlen (text), "new.hutch", &error);

  assert_ok (again != NULL, error);
  assert_true (hut_design_equal (design, again));
}

static void
things_are_found_by_their_id (void **state)
{
  g_autoptr(HutDesign) design = new_sample ();

  assert_string_equal (hut_design_get_stock (design, "clear")->name, "Clear");
  assert_string_equal (hut_design_get_opening (design, "slot")->name, "Slot");
  assert_string_equal (hut_design_get_window (design, "pane")->name, "Pane");
  assert_string_equal (hut_design_get_body (design, "loop")->name, "Cable loop");
  assert_string_equal (hut_design_get_service (design, "smoke")->name, "Smoke");
}

static void
what_is_not_there_is_not_found (void **state)
{
  g_autoptr(HutDesign) design = new_sample ();

  assert_null (hut_design_get_stock (design, "pane"));
  assert_null (hut_design_get_stock (design, NULL));
  assert_null (hut_design_get_opening (design, "pane"));
  assert_null (hut_design_get_window (design, "slot"));
  assert_null (hut_design_get_body (design, ""));
  assert_null (hut_design_get_service (design, NULL));
}

static void
panel_has_its_own_stock_or_else_the_default_one (void **state)
{
  g_autoptr(HutDesign) design = new_sample ();
  const HutPanelId top = { HUT_SHELL_LID, HUT_SIDE_TOP }, left = { HUT_SHELL_LID, HUT_SIDE_LEFT };

  assert_string_equal (hut_design_get_panel_stock (design, top)->id, "clear");
  assert_string_equal (hut_design_get_panel_stock (design, left)->id, "wall");
  g_free (design->shell.default_stock);
  design->shell.default_stock = g_strdup ("gone");
  assert_null (hut_design_get_panel_stock (design, left));
}

static void
free_id_is_the_stem_or_the_stem_with_the_next_number (void **state)
{
  g_autoptr(HutDesign) design = new_sample ();
  g_autofree char *fresh = hut_design_dup_free_id (design, "fan");
  g_autofree char *second = hut_design_dup_free_id (design, "vent");
  g_autofree char *third = NULL;

  assert_string_equal (fresh, "fan");
  assert_string_equal (second, "vent-2");
  g_ptr_array_add (design->machine.bodies, hut_body_new ("vent-2", HUT_BODY_STATIC));
  third = hut_design_dup_free_id (design, "vent");
  assert_string_equal (third, "vent-3");
}

static void
copy_shares_nothing_with_its_original (void **state)
{
  HutDesign *design = new_sample ();
  g_autoptr(HutDesign) copy = hut_design_copy (design);
  g_autofree char *before = hut_design_to_xml (design);
  g_autofree char *after = NULL;

  assert_true (hut_design_equal (design, copy));
  hut_design_free (design); /* with MALLOC_PERTURB_ and the sanitizers a shared string shows */
  after = hut_design_to_xml (copy);
  assert_string_equal (before, after);
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (new_design_has_a_machine_two_stocks_and_a_hood),
    cmocka_unit_test (new_design_can_be_saved_and_loaded),
    cmocka_unit_test (things_are_found_by_their_id),
    cmocka_unit_test (what_is_not_there_is_not_found),
    cmocka_unit_test (panel_has_its_own_stock_or_else_the_default_one),
    cmocka_unit_test (free_id_is_the_stem_or_the_stem_with_the_next_number),
    cmocka_unit_test (copy_shares_nothing_with_its_original),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}

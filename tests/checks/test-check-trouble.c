/* tests/checks/test-check-trouble.c: what could not be derived, as findings.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "config.h"
#include "checks/hut-check-case.h"
#include "hut-assert.h"

static void
set_text (char **member,
          const char *text)
{
  g_free (*member);
  *member = g_strdup (text);
}

static void
panel_without_a_stock_blocks (void **state)
{
  HutDesign *design = hut_check_case_design ();
  g_autoptr(HutCheckCase) c = NULL;

  set_text (&design->shell.stock[HUT_SHELL_LID][HUT_SIDE_TOP], "no-such");
  c = hut_check_case_new (design);
  assert_int_equal (hut_check_case_count (c, "stock.missing"), 1);
  hut_check_case_assert (
      hut_check_case_find (
          c, "stock.missing",
          "lid top has no stock: its stock is not in the list (0 found, 1 needed)."),
      HUT_SEVERITY_BLOCKS, 0, 1);
}

static void
window_without_a_stock_blocks_by_its_name (void **state)
{
  HutDesign *design = hut_check_case_design ();
  HutWindow *window
      = hut_check_case_add_window (design, "view", (HutPanelId) { HUT_SHELL_LID, HUT_SIDE_TOP },
                                   (HutRect) { 100, 100, 200, 200 });
  g_autoptr(HutCheckCase) c = NULL;

  set_text (&window->glazing_stock, "no-such");
  set_text (&window->name, "Big view");
  c = hut_check_case_new (design);
  assert_string_equal (hut_check_case_get (c, "stock.missing", 0)->what, "Big view");
  assert_string_equal (hut_check_case_get (c, "stock.missing", 0)->item, "view");
}

static void
walls_that_leave_no_inside_block (void **state)
{
  /* By hand 5 inside between walls of 6. */
  HutDesign *design = hut_check_case_design ();
  g_autoptr(HutCheckCase) c = NULL;

  design->shell.fitted = FALSE;
  design->shell.inside_mm = (HutVec3) { 5, 300, 300 };
  c = hut_check_case_new (design);
  hut_check_case_assert (
      hut_check_case_find (
          c, "shell.inside",
          "The walls leave 5 mm inside; it must be more than the thickest wall, 6 mm."),
      HUT_SEVERITY_BLOCKS, 5, 6);
}

static void
fitted_without_a_machine_blocks (void **state)
{
  HutDesign *design = hut_check_case_design ();
  g_autoptr(HutCheckCase) c = NULL;

  g_ptr_array_set_size (design->machine.bodies, 0);
  c = hut_check_case_new (design);
  hut_check_case_assert (hut_check_case_get (c, "machine.missing", 0), HUT_SEVERITY_BLOCKS, 0, 1);
}

static void
seam_too_low_or_too_high_blocks_with_the_limit_that_it_missed (void **state)
{
  /* Least: floor 6 and twice a wall of 6 = 18. Most: 252 - 1 gap - 3 x 6 = 233. */
  HutDesign *low = hut_check_case_design (), *high = hut_check_case_design ();
  g_autoptr(HutCheckCase) below = NULL, above = NULL;

  low->shell.seam_height_mm = 10.0;
  high->shell.seam_height_mm = 240.0;
  below = hut_check_case_new (low);
  above = hut_check_case_new (high);
  hut_check_case_assert (
      hut_check_case_find (below, "shell.seam",
                           "The seam is 10 mm above the bench; base and lid both keep some wall "
                           "only from 18 mm on."),
      HUT_SEVERITY_BLOCKS, 10, 18);
  hut_check_case_assert (
      hut_check_case_find (above, "shell.seam",
                           "The seam is 240 mm above the bench; base and lid both keep some wall "
                           "only up to 233 mm."),
      HUT_SEVERITY_BLOCKS, 240, 233);
}

static void
opening_on_a_panel_that_is_not_there_blocks (void **state)
{
  HutDesign *design = hut_check_case_design ();
  g_autoptr(HutCheckCase) c = NULL;
  const HutFinding *finding;

  hut_check_case_add_round (design, "vent", (HutPanelId) { HUT_SHELL_BASE, HUT_SIDE_TOP }, 50, 50,
                            20);
  c = hut_check_case_new (design);
  finding = hut_check_case_find (c, "opening.panel",
                                 "vent is placed on the base top, which this enclosure does not have.");
  assert_int_equal (finding->severity, HUT_SEVERITY_BLOCKS);
  assert_string_equal (finding->item, "vent");
  assert_int_equal (finding->places->len, 0);
}

static void
opening_anchored_to_nothing_blocks (void **state)
{
  HutDesign *design = hut_check_case_design ();
  HutOpening *opening = hut_check_case_add_round (
      design, "vent", (HutPanelId) { HUT_SHELL_LID, HUT_SIDE_TOP }, 50, 50, 20);
  g_autoptr(HutCheckCase) c = NULL;
  const HutFinding *finding;

  opening->at.u_anchor = HUT_ANCHOR_BODY;
  opening->at.body = g_strdup ("no-such");
  c = hut_check_case_new (design);
  finding = hut_check_case_find (
      c, "opening.anchor",
      "vent on the lid top is anchored to a part of the machine that does not exist.");
  hut_check_case_assert_place (finding, 0, (HutPanelId) { HUT_SHELL_LID, HUT_SIDE_TOP },
                               (HutRect) { 0, 0, 372, 352 });
}

static void
size_that_no_bench_has_blocks (void **state)
{
  HutDesign *design = hut_check_case_design ();
  g_autoptr(HutCheckCase) c = NULL;

  design->shell.fitted = FALSE;
  design->shell.inside_mm = (HutVec3) { 12000, 300, 300 };
  c = hut_check_case_new (design);
  hut_check_case_assert (
      hut_check_case_find (
          c, "shell.size",
          "The enclosure would be 12012 mm large; no more than 10000 mm can be planned."),
      HUT_SEVERITY_BLOCKS, 12012, 10000);
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (panel_without_a_stock_blocks),
    cmocka_unit_test (window_without_a_stock_blocks_by_its_name),
    cmocka_unit_test (walls_that_leave_no_inside_block),
    cmocka_unit_test (fitted_without_a_machine_blocks),
    cmocka_unit_test (seam_too_low_or_too_high_blocks_with_the_limit_that_it_missed),
    cmocka_unit_test (opening_on_a_panel_that_is_not_there_blocks),
    cmocka_unit_test (opening_anchored_to_nothing_blocks),
    cmocka_unit_test (size_that_no_bench_has_blocks),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}

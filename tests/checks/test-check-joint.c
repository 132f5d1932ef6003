/* tests/checks/test-check-joint.c: fit, butt joints, narrow fingers.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "config.h"
#include "checks/hut-check-case.h"
#include "hut-assert.h"

static const HutPanelId base_front = { HUT_SHELL_BASE, HUT_SIDE_FRONT };
static const HutPanelId base_right = { HUT_SHELL_BASE, HUT_SIDE_RIGHT };

static HutStock *
plywood (HutDesign *design)
{
  return hut_design_get_stock (design, "plywood");
}

static void
fit_inside_the_usual_range_is_not_told (void **state)
{
  g_autoptr(HutCheckCase) c = hut_check_case_new (hut_check_case_design ());

  assert_int_equal (hut_check_case_count (c, "joint.fit"), 0);
  assert_int_equal (hut_check_case_count (c, "joint.butt"), 0);
  assert_int_equal (hut_check_case_count (c, "joint.web"), 0);
}

static void
allowance_outside_the_usual_range_warns (void **state)
{
  HutDesign *loose = hut_check_case_design (), *tight = hut_check_case_design ();
  g_autoptr(HutCheckCase) a = NULL, b = NULL;
  const HutFinding *finding;

  plywood (loose)->allowance_mm = 0.3;
  plywood (tight)->allowance_mm = 0.0;
  a = hut_check_case_new (loose);
  b = hut_check_case_new (tight);
  finding = hut_check_case_find (a, "joint.fit",
                                 "Slots in Plywood 6 mm are set 0.3 mm wider than tongues; for a "
                                 "glued fit at most 0.15 mm is usual.");
  hut_check_case_assert (finding, HUT_SEVERITY_WARNS, 0.3, 0.15);
  assert_string_equal (finding->item, "plywood");
  assert_int_equal (hut_check_case_count (a, "joint.fit"), 1);
  hut_check_case_assert (
      hut_check_case_find (
          b, "joint.fit",
          "Slots in Plywood 6 mm are set 0 mm wider than tongues; for a glued fit "
          "at least 0.05 mm is usual."),
      HUT_SEVERITY_WARNS, 0, 0.05);
}

static void
spread_beyond_the_usual_range_is_a_note (void **state)
{
  /* 0.11 +- 2 x 0.03 by the kerf: 0.17 is likely. With readings 5.98 and 6.02, 0.02 on either
   * panel: sqrt (0.06^2 + 2 x 0.02^2) = 0.0663, at worst 0.06 + 0.04 = 0.1. */
  HutDesign *design = hut_check_case_design ();
  g_autoptr(HutCheckCase) c = NULL;
  const HutFinding *finding;

  plywood (design)->allowance_mm = 0.11;
  plywood (design)->kerf_error_mm = 0.03;
  g_array_index (plywood (design)->readings_mm, double, 0) = 5.98;
  g_array_index (plywood (design)->readings_mm, double, 1) = 6.02;
  c = hut_check_case_new (design);
  finding
      = hut_check_case_find (c, "joint.fit",
                             "Slots in Plywood 6 mm may come out 0.18 mm wider than tongues "
                             "(0.21 mm at worst); for a glued fit at most 0.15 mm is usual. Cut "
                             "the coupon first.");
  hut_check_case_assert (finding, HUT_SEVERITY_NOTES, 0.11 + sqrt (0.0036 + 0.0008), 0.15);
  assert_near (finding->at, 0.21, 1e-9);
}

static void
spread_that_only_the_worst_case_shows_is_a_note_too (void **state)
{
  /* Kerf alone: likely and worst are both 0.1 + 0.04 = 0.14. With 0.01 of thickness on either
   * panel likely 0.1 + sqrt (0.04^2 + 2 x 0.01^2) = 0.1424, worst 0.1 + 0.04 + 0.02 = 0.16. */
  HutDesign *design = hut_check_case_design ();
  g_autoptr(HutCheckCase) c = NULL;

  plywood (design)->kerf_error_mm = 0.02;
  plywood (design)->allowance_mm = 0.101;
  g_array_index (plywood (design)->readings_mm, double, 0) = 5.99;
  g_array_index (plywood (design)->readings_mm, double, 1) = 6.01;
  c = hut_check_case_new (design);
  hut_check_case_assert (hut_check_case_get (c, "joint.fit", 0), HUT_SEVERITY_NOTES, 0.161, 0.15);
}

static void
press_fit_in_acrylic_warns (void **state)
{
  HutDesign *design = hut_check_case_design ();
  HutStock *acrylic = hut_design_get_stock (design, "acrylic");
  g_autoptr(HutCheckCase) c = NULL;

  g_free (design->shell.default_stock);
  design->shell.default_stock = g_strdup ("acrylic");
  acrylic->fit = HUT_FIT_PRESS;
  acrylic->allowance_mm = -0.05;
  c = hut_check_case_new (design);
  hut_check_case_assert (
      hut_check_case_find (c, "joint.fit",
                           "Clear acrylic 3 mm is to have a press fit of -0.05 mm, which cracks "
                           "it; 0 mm or more is usual."),
      HUT_SEVERITY_WARNS, -0.05, 0);
}

static void
two_stocks_that_meet_are_told_as_a_pair (void **state)
{
  /* Only the lid's top is of the second stock: (0.1 + 0.5) / 2 = 0.3 where it meets the first
   * one. */
  HutDesign *design = hut_check_case_design ();
  HutStock *other = hut_stock_new ("other");
  g_autoptr(HutCheckCase) c = NULL;

  other->allowance_mm = 0.5;
  g_ptr_array_add (design->stocks, other);
  g_free (design->shell.stock[HUT_SHELL_LID][HUT_SIDE_TOP]);
  design->shell.stock[HUT_SHELL_LID][HUT_SIDE_TOP] = g_strdup ("other");
  c = hut_check_case_new (design);
  assert_int_equal (hut_check_case_count (c, "joint.fit"), 1);
  hut_check_case_assert (hut_check_case_get (c, "joint.fit", 0), HUT_SEVERITY_WARNS, 0.3, 0.15);
  assert_string_equal (hut_check_case_get (c, "joint.fit", 0)->what, "Plywood 6 mm + other");
}

static void
short_edges_are_butted_and_told (void **state)
{
  /* Seam at 40 over a floor of 6: edges of 34. Three fingers of twice the web, 12, need 36. */
  HutDesign *design = hut_check_case_design ();
  g_autoptr(HutCheckCase) c = NULL;
  const HutFinding *finding;

  design->shell.seam_height_mm = 40.0;
  c = hut_check_case_new (design);
  assert_int_equal (hut_check_case_count (c, "joint.butt"), 4);
  finding = hut_check_case_find (c, "joint.butt",
                                 "The edge of base front and base right is 34 mm, three fingers "
                                 "need 36 mm: it is butted, put a corner block behind it.");
  hut_check_case_assert (finding, HUT_SEVERITY_NOTES, 34, 36);
  hut_check_case_assert_place (finding, 0, base_front, (HutRect) { 366, 6, 372, 40 });
  hut_check_case_assert_place (finding, 1, base_right, (HutRect) { 0, 6, 6, 40 });
}

static void
fingers_under_twice_the_web_warn (void **state)
{
  /* The first finger of the base's front on its lower edge begins behind the left wall, at 6. */
  g_autoptr(HutCheckCase) c = hut_check_case_new (hut_check_case_design ());
  const HutPanel *front = hut_assembly_get_panel (c->assembly, base_front);
  const HutFinding *finding;

  assert_near_mm (g_array_index (front->edges[HUT_EDGE_BOTTOM].cuts_mm, double, 0), 6, 0);
  g_array_index (front->edges[HUT_EDGE_BOTTOM].cuts_mm, double, 1) = 14.0;
  hut_check_case_check (c);
  finding
      = hut_check_case_find (c, "joint.web",
                             "Fingers between base front and base bottom are 8 mm wide; twice "
                             "the smallest web is 12 mm.");
  hut_check_case_assert (finding, HUT_SEVERITY_WARNS, 8, 12);
  hut_check_case_assert_place (finding, 0, base_front, (HutRect) { 6, 0, 14, 6 });
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (fit_inside_the_usual_range_is_not_told),
    cmocka_unit_test (allowance_outside_the_usual_range_warns),
    cmocka_unit_test (spread_beyond_the_usual_range_is_a_note),
    cmocka_unit_test (spread_that_only_the_worst_case_shows_is_a_note_too),
    cmocka_unit_test (press_fit_in_acrylic_warns),
    cmocka_unit_test (two_stocks_that_meet_are_told_as_a_pair),
    cmocka_unit_test (short_edges_are_butted_and_told),
    cmocka_unit_test (fingers_under_twice_the_web_warn),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}

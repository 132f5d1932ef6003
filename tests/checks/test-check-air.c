/* tests/checks/test-check-air.c: fans against openings, as findings.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "config.h"
#include "checks/hut-check-case.h"
#include "hut-assert.h"

static const HutPanelId base_front = { HUT_SHELL_BASE, HUT_SIDE_FRONT };
static const HutPanelId base_back = { HUT_SHELL_BASE, HUT_SIDE_BACK };

/* A fan with a cutout of 60 mm: pi 3^2 = 28.27 cm2. The seam gap of the case is 2 (372 + 352) mm2
 * = 14.5 cm2. */
static HutDesign *
with_fan (double free_m3_h)
{
  const HutFanPoint points[] = { { 0, 60 }, { free_m3_h, 0 } };
  const HutItemCut cut = { .shape = HUT_CUT_ROUND, .diameter_mm = 60 };
  HutDesign *design = hut_check_case_design ();
  HutItem *item = hut_item_new ("fan");

  item->group = HUT_ITEM_FAN;
  g_array_append_vals (item->curve, points, G_N_ELEMENTS (points));
  g_array_append_val (item->cuts, cut);
  g_ptr_array_add (design->items, item);
  g_ptr_array_add (design->hardware, hut_hardware_new ("fan", "fan", base_back));
  return design;
}

static void
without_a_fan_air_is_no_matter (void **state)
{
  g_autoptr(HutCheckCase) c = hut_check_case_new (hut_check_case_design ());

  assert_int_equal (hut_check_case_count (c, "air.intake"), 0);
  assert_int_equal (hut_check_case_count (c, "air.hold"), 0);
}

static void
a_fan_without_a_way_in_warns_and_a_small_one_is_noted (void **state)
{
  HutDesign *small = with_fan (72), *large = with_fan (72);
  g_autoptr(HutCheckCase) none = hut_check_case_new (with_fan (72)), some = NULL, enough = NULL;

  hut_check_case_add_round (small, "vent", base_front, 186, 60, 40);
  hut_check_case_add_round (large, "vent", base_front, 186, 60, 61);
  some = hut_check_case_new (small);
  enough = hut_check_case_new (large);
  hut_check_case_assert (hut_check_case_get (none, "air.intake", 0), HUT_SEVERITY_WARNS, 0,
                         9 * G_PI);
  hut_check_case_assert (hut_check_case_get (some, "air.intake", 0), HUT_SEVERITY_NOTES, 4 * G_PI,
                         9 * G_PI);
  assert_int_equal (hut_check_case_count (enough, "air.intake"), 0);
}

static void
a_weak_fan_does_not_hold_fumes_and_a_strong_one_is_silent (void **state)
{
  /* 28.3 + 14.5 cm2 want 0.5 m/s 0.00427 m2 = 7.7 m3/h: 5 m3/h cannot, 72 m3/h can. */
  HutDesign *weak = with_fan (5), *strong = with_fan (72);
  g_autoptr(HutCheckCase) low = NULL, high = NULL;

  hut_check_case_add_round (weak, "vent", base_front, 186, 60, 60);
  hut_check_case_add_round (strong, "vent", base_front, 186, 60, 60);
  low = hut_check_case_new (weak);
  high = hut_check_case_new (strong);
  assert_int_equal (hut_check_case_get (low, "air.hold", 0)->severity, HUT_SEVERITY_NOTES);
  assert_true (hut_check_case_get (low, "air.hold", 0)->is < 5 / 3600.0 / 0.00427 + 1e-3);
  assert_near (hut_check_case_get (low, "air.hold", 0)->must, 0.5, 0);
  assert_int_equal (hut_check_case_count (high, "air.hold"), 0);
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (without_a_fan_air_is_no_matter),
    cmocka_unit_test (a_fan_without_a_way_in_warns_and_a_small_one_is_noted),
    cmocka_unit_test (a_weak_fan_does_not_hold_fumes_and_a_strong_one_is_silent),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}

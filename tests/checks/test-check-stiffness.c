/* tests/checks/test-check-stiffness.c: tops that sag, by hand.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "config.h"
#include "checks/hut-check-case.h"
#include "hut-assert.h"

static HutCheckCase *
with_density (double density_kg_m3)
{
  HutDesign *design = hut_check_case_design ();
  HutStock *stock = hut_design_get_stock (design, "plywood");

  stock->density_kg_m3 = density_kg_m3;
  stock->material = HUT_MATERIAL_PLYWOOD;
  return hut_check_case_new (design);
}

static void
a_stiff_top_is_no_finding (void **state)
{
  g_autoptr(HutCheckCase) c = with_density (700);

  assert_int_equal (hut_check_case_count (c, "stiffness.sag"), 0);
}

static void
a_top_that_sags_is_told_with_what_is_not_seen (void **state)
{
  /* 372 x 352 x 6: a / b = 1.0568, alpha between 0.0444 (1.0) and 0.0616 (1.2), Roark 11.4 case 1a:
   * 0.0493. Weight less than the whole by the same share as stiffness. y = 1.5 0.0493 rho 9.80665
   * 0.006 0.352^4 / (6.96e9 0.006^3) = 4.44e-8 rho m. Not seen: 352 / 384 = 0.9167; too much: 352 /
   * 240 = 1.4667. */
  g_autoptr(HutCheckCase) seen = with_density (25000), much = with_density (36000);
  const HutFinding *note = hut_check_case_get (seen, "stiffness.sag", 0);
  const HutFinding *warning = hut_check_case_get (much, "stiffness.sag", 0);

  assert_int_equal (note->severity, HUT_SEVERITY_NOTES);
  assert_near (note->is, 1.110, 0.015);
  assert_near (note->must, 0.91667, 1e-4);
  assert_int_equal (warning->severity, HUT_SEVERITY_WARNS);
  assert_near (warning->is, 1.599, 0.02);
  hut_check_case_assert_place (note, 0, (HutPanelId) { HUT_SHELL_LID, HUT_SIDE_TOP },
                               (HutRect) { 0, 0, 372, 352 });
}

static void
walls_do_not_sag (void **state)
{
  g_autoptr(HutCheckCase) c = with_density (36000);

  assert_int_equal (hut_check_case_count (c, "stiffness.sag"), 1);
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (a_stiff_top_is_no_finding),
    cmocka_unit_test (a_top_that_sags_is_told_with_what_is_not_seen),
    cmocka_unit_test (walls_do_not_sag),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}

/* tests/checks/test-check-lid.c: the weight of the lid, by hand.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "config.h"
#include "checks/hut-check-case.h"
#include "hut-assert.h"
#include "physics/hut-physics.h"

/* A lid that is one panel of 372 x 352 x 6, of its own stock. */
static HutDesign *
flat_lid (double lid_kg_m3)
{
  HutDesign *design = hut_check_case_design ();
  HutStock *stock = hut_stock_copy (hut_design_get_stock (design, "plywood"));

  g_free (stock->id);
  stock->id = g_strdup ("heavy");
  stock->density_kg_m3 = lid_kg_m3;
  g_ptr_array_add (design->stocks, stock);
  design->shell.lid = HUT_LID_TOP;
  design->shell.stock[HUT_SHELL_LID][HUT_SIDE_TOP] = g_strdup ("heavy");
  return design;
}

static void
a_light_lid_is_no_finding (void **state)
{
  g_autoptr(HutCheckCase) c = hut_check_case_new (flat_lid (700));

  assert_int_equal (hut_check_case_count (c, "lid.force"), 0);
  assert_int_equal (hut_check_case_count (c, "lid.tip"), 0);
}

static void
a_heavy_lid_is_told_with_half_its_weight (void **state)
{
  /* 0.372 0.352 0.006 20000 = 15.713 kg; half of 154.09 N at the far edge, a trifle more when it is
   * a little open. */
  g_autoptr(HutCheckCase) c = hut_check_case_new (flat_lid (20000));
  const HutFinding *finding = hut_check_case_get (c, "lid.force", 0);

  assert_int_equal (hut_check_case_count (c, "lid.force"), 1);
  assert_int_equal (finding->severity, HUT_SEVERITY_NOTES);
  assert_near (finding->is, 77.05, 0.2);
  assert_near (finding->must, 50, 0);
}

static void
twice_too_heavy_warns (void **state)
{
  /* 26 500: 102.1 N; 25 500: 98.2 N. */
  g_autoptr(HutCheckCase) over = hut_check_case_new (flat_lid (26500));
  g_autoptr(HutCheckCase) under = hut_check_case_new (flat_lid (25500));

  assert_int_equal (hut_check_case_get (over, "lid.force", 0)->severity, HUT_SEVERITY_WARNS);
  assert_int_equal (hut_check_case_get (under, "lid.force", 0)->severity, HUT_SEVERITY_NOTES);
}

static void
a_lid_to_lift_off_counts_with_its_weight (void **state)
{
  /* Outside 372 x 352, 252 - 141 = 111 high; inside 360 x 340 x 105: 1682784 mm3, at 8000: 13.462
   * kg. */
  HutDesign *design = hut_check_case_design ();
  g_autoptr(HutCheckCase) c = NULL;

  design->shell.lid = HUT_LID_LIFT_OFF;
  hut_design_get_stock (design, "plywood")->density_kg_m3 = 8000;
  c = hut_check_case_new (design);
  hut_check_case_assert (hut_check_case_get (c, "lid.force", 0), HUT_SEVERITY_NOTES,
                         1682784e-9 * 8000 * HUT_GRAVITY_M_S2, 100);
  assert_int_equal (hut_check_case_count (c, "lid.tip"), 0);
}

static void
a_lid_that_outweighs_the_rest_tips_it (void **state)
{
  /* Open by half a turn the lid hangs 176 behind the rear edge, the base's middle is 176 before it,
   * and no machine helps: the ratio is that of the masses. Base: 372 x 352 x 245 less 360 x 340 x
   * 239 = 2827680 mm3 with its seam gap; lid 785664 mm3. With 0.7 and 5: 1.9794 / 3.92832 = 0.5039.
   */
  HutDesign *design = flat_lid (5000);
  g_autoptr(HutCheckCase) c = NULL;
  const HutFinding *finding;

  design->machine.mass_kg = 0;
  design->shell.opening_angle_deg = 180;
  hut_design_get_stock (design, "plywood")->density_kg_m3 = 700;
  c = hut_check_case_new (design);
  finding = hut_check_case_get (c, "lid.tip", 0);
  assert_int_equal (finding->severity, HUT_SEVERITY_WARNS);
  assert_near (finding->is, 0.5039, 0.003);
  assert_near (finding->must, 1.5, 0);
  assert_near (finding->at, 180, 2);
}

static void
the_machine_inside_keeps_it_down (void **state)
{
  HutDesign *design = flat_lid (5000);
  g_autoptr(HutCheckCase) c = NULL;

  design->machine.mass_kg = 6;
  design->shell.opening_angle_deg = 180;
  hut_design_get_stock (design, "plywood")->density_kg_m3 = 700;
  c = hut_check_case_new (design);
  assert_int_equal (hut_check_case_count (c, "lid.tip"), 0);
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (a_light_lid_is_no_finding),
    cmocka_unit_test (a_heavy_lid_is_told_with_half_its_weight),
    cmocka_unit_test (twice_too_heavy_warns),
    cmocka_unit_test (a_lid_to_lift_off_counts_with_its_weight),
    cmocka_unit_test (a_lid_that_outweighs_the_rest_tips_it),
    cmocka_unit_test (the_machine_inside_keeps_it_down),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}

/* tests/checks/test-check-engineering.c: figures of the engineering as findings.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "config.h"
#include "checks/hut-check-case.h"
#include "hut-assert.h"
#include <string.h>

static const HutPanelId base_front = { HUT_SHELL_BASE, HUT_SIDE_FRONT };
static const HutPanelId base_back = { HUT_SHELL_BASE, HUT_SIDE_BACK };

/* A hood that opens to 45 degrees only: its weight then still closes it. */
static HutDesign *
falling_lid (void)
{
  HutDesign *design = hut_check_case_design ();

  design->shell.opening_angle_deg = 45;
  return design;
}

/* A fan with a cutout of 60 mm and a curve from 60 Pa to 72 m3/h, and a way in. */
static HutDesign *
with_fan (void)
{
  const HutFanPoint points[] = { { 0, 60 }, { 72, 0 } };
  const HutItemCut cut = { .shape = HUT_CUT_ROUND, .diameter_mm = 60 };
  HutDesign *design = hut_check_case_design ();
  HutItem *item = hut_item_new ("fan");

  item->group = HUT_ITEM_FAN;
  g_array_append_vals (item->curve, points, G_N_ELEMENTS (points));
  g_array_append_val (item->cuts, cut);
  g_ptr_array_add (design->items, item);
  g_ptr_array_add (design->hardware, hut_hardware_new ("fan", "fan", base_back));
  hut_check_case_add_round (design, "vent", base_front, 186, 60, 60);
  return design;
}

static void
a_lid_that_falls_shut_warns_and_springs_cure_it (void **state)
{
  HutDesign *design = falling_lid ();
  g_autoptr(HutDesign) cured = hut_design_copy (design);
  g_autoptr(HutCheckCase) c = hut_check_case_new (design), after = NULL;
  const HutFinding *finding = hut_check_case_get (c, "lid.falls", 0);

  assert_int_equal (finding->severity, HUT_SEVERITY_WARNS);
  assert_true (finding->is > 0);
  assert_int_equal (finding->fix.kind, HUT_FIX_SPRINGS);
  assert_true (hut_finding_apply_fix (finding, cured));
  after = hut_check_case_new (g_steal_pointer (&cured));
  assert_int_equal (hut_check_case_count (after, "lid.falls"), 0);
}

static void
a_stay_holds_it_as_well (void **state)
{
  HutDesign *design = falling_lid ();
  g_autoptr(HutCheckCase) c = NULL;

  design->shell.stay.kind = HUT_STAY_PROP;
  c = hut_check_case_new (design);
  assert_int_equal (hut_check_case_count (c, "lid.falls"), 0);
}

/* The finding is silent while the design does not say what the machine takes. */
static void
heat_over_the_limit_warns_without_a_fan_and_is_noted_with_one (void **state)
{
  HutDesign *still = hut_check_case_design (), *blown = with_fan ();
  HutDesign *const designs[] = { still, blown };
  g_autoptr(HutCheckCase) unknown = hut_check_case_new (hut_check_case_design ());
  g_autoptr(HutCheckCase) none = NULL, some = NULL;

  for (guint i = 0; i < G_N_ELEMENTS (designs); i++)
    {
      designs[i]->machine.work.power_w = 120;
      designs[i]->machine.work.warmest_c = 45;
      designs[i]->room_mm.temperature_c = 25;
      designs[i]->shell.duct.length_mm = 0;
    }
  none = hut_check_case_new (still);
  some = hut_check_case_new (blown);
  assert_int_equal (hut_check_case_count (unknown, "heat.limit"), 0);
  assert_int_equal (hut_check_case_get (none, "heat.limit", 0)->severity, HUT_SEVERITY_WARNS);
  assert_near (hut_check_case_get (none, "heat.limit", 0)->must, 45, 0);
  assert_int_equal (hut_check_case_get (some, "heat.limit", 0)->severity, HUT_SEVERITY_NOTES);
}

/* 72 m3/h at the most through 200 mm: under 0.64 m/s. */
static void
a_duct_that_is_too_wide_lets_smoke_settle (void **state)
{
  HutDesign *design = with_fan ();
  g_autoptr(HutCheckCase) c = NULL;
  const HutFinding *finding;

  design->shell.duct = (HutDuct) { HUT_DUCT_RIGID, 200, 2000, 1, HUT_EXIT_OPEN };
  c = hut_check_case_new (design);
  finding = hut_check_case_get (c, "air.duct", 0);
  assert_true (finding->is < 0.64 && finding->is > 0.3);
  assert_near (finding->must, 5, 0);
}

static void
a_way_in_beside_the_fan_is_a_short_cut (void **state)
{
  HutDesign *far = with_fan (), *near = with_fan ();
  g_autoptr(HutCheckCase) apart = NULL, close = NULL;

  far->shell.duct.length_mm = near->shell.duct.length_mm = 0;
  hut_check_case_add_round (near, "beside", base_back, 80, 60, 30);
  apart = hut_check_case_new (far);
  close = hut_check_case_new (near);
  assert_int_equal (hut_check_case_count (apart, "air.short-cut"), 0);
  assert_string_equal (hut_check_case_get (close, "air.short-cut", 0)->what, "beside");
}

/* The beam through the pupil of 7 mm: lg (10 W / 3.848e-5 m2 / 10 W/m2) = 4.415 at 532 nm from 10 s
 * on, by hand with the limit of ICNIRP 2013; what is scattered is less. */
static void
a_laser_gets_the_least_density_with_the_caution (void **state)
{
  HutDesign *design = hut_check_case_design ();
  const HutRect clear = { 100, 100, 200, 200 };
  g_autoptr(HutCheckCase) c = NULL;
  const HutFinding *finding;

  hut_check_case_add_window (design, "pane", (HutPanelId) { HUT_SHELL_LID, HUT_SIDE_TOP }, clear);
  ((HutBody *) g_ptr_array_index (design->machine.bodies, 0))->kind = HUT_BODY_MOVING;
  design->machine.work.glow = HUT_GLOW_LASER;
  design->machine.work.laser_w = 10;
  design->machine.work.laser_nm = 532;
  design->machine.work.exposure_s = 100;
  c = hut_check_case_new (design);
  finding = hut_check_case_get (c, "light.window", 0);
  assert_near (finding->must, 4.415, 0.001);
  assert_true (finding->is > 0 && finding->is < finding->must);
  assert_non_null (strstr (finding->message, "no laser filter"));
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (a_lid_that_falls_shut_warns_and_springs_cure_it),
    cmocka_unit_test (a_stay_holds_it_as_well),
    cmocka_unit_test (heat_over_the_limit_warns_without_a_fan_and_is_noted_with_one),
    cmocka_unit_test (a_duct_that_is_too_wide_lets_smoke_settle),
    cmocka_unit_test (a_way_in_beside_the_fan_is_a_short_cut),
    cmocka_unit_test (a_laser_gets_the_least_density_with_the_caution),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}

/* tests/physics/test-enclosure-air.c: the fans of a design against its openings, by hand.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "config.h"
#include "hut-assert.h"
#include "hut-box-design.h"
#include "physics/hut-enclosure-air.h"

static const HutPanelId base_front = { HUT_SHELL_BASE, HUT_SIDE_FRONT };
static const HutPanelId base_back = { HUT_SHELL_BASE, HUT_SIDE_BACK };
/* Air of 1.2041 kg/m3, no hose. */
static const HutAirGuess plain = { .mixing_ratio = 1, .temperature_c = 20 };

/* A fan with a straight curve of two points: 60 Pa, 72 m3/h = 0.02 m3/s in air of 1.2 kg/m3. */
static void
add_fan (HutDesign *design,
         double u_offset_mm)
{
  const HutFanPoint points[] = { { 0, 60 }, { 72, 0 } };
  HutItemCut cut = { .shape = HUT_CUT_ROUND, .diameter_mm = 56 };
  char *id = g_strdup_printf ("fan-%u", design->hardware->len);
  HutHardware *hardware = hut_hardware_new (id, "fan", base_back);

  if (design->items->len == 0)
    {
      HutItem *item = hut_item_new ("fan");

      item->group = HUT_ITEM_FAN;
      g_array_append_vals (item->curve, points, G_N_ELEMENTS (points));
      g_array_append_val (item->cuts, cut);
      g_ptr_array_add (design->items, item);
    }
  hardware->at.u_offset_mm = u_offset_mm;
  g_ptr_array_add (design->hardware, hardware);
  g_free (id);
}

static HutDesign *
new_design (double intake_mm)
{
  HutDesign *design = hut_box_design_new ();

  if (intake_mm > 0)
    hut_box_design_add_opening (design, base_front, HUT_SHAPE_ROUND)->diameter_mm = intake_mm;
  return design;
}

static HutEnclosureAir
air_of (HutDesign *design,
        const HutAirGuess *guess)
{
  g_autoptr(HutAssembly) assembly = hut_assembly_new (design);
  const HutEnclosureAir air = hut_enclosure_air_find (assembly, guess);

  hut_design_free (design);
  return air;
}

static void
without_a_fan_nothing_moves (void **state)
{
  const HutEnclosureAir air = air_of (new_design (40), &plain);

  assert_int_equal (air.fans, 0);
  assert_false (air.moves);
  /* 20 mm squared pi; the seam: 2 (312 + 212) mm, 1 mm wide. */
  assert_near (air.intake_m2, G_PI * 0.02 * 0.02, 1e-9);
  assert_near (air.seam_m2, 1048e-6, 1e-12);
  /* 300 x 200 x 150 less the block of 100 x 80 x 60. */
  assert_near (air.free_m3, 0.009 - 0.00048, 1e-12);
}

static void
the_flow_is_the_root_of_the_straight_curve_and_the_square (void **state)
{
  HutDesign *design = new_design (40);
  const double cda_m2 = 0.6 * (G_PI * 0.02 * 0.02 + 1048e-6), rho = 101325 / (287.05287 * 293.15);
  /* 60 rho / 1.2 (1 - Q / 0.02) = rho / 2 (Q / CdA)2: a Q2 + b Q - c = 0. */
  const double a = rho / (2 * cda_m2 * cda_m2), c = 60 * rho / 1.2, b = c / 0.02;
  const double flow_m3_s = (-b + sqrt (b * b + 4 * a * c)) / (2 * a);
  HutEnclosureAir air;

  add_fan (design, 0);
  air = air_of (design, &plain);
  assert_int_equal (air.fans, 1);
  assert_true (air.moves);
  assert_near (air.fan_m2, G_PI * 0.028 * 0.028, 1e-9);
  assert_near (air.point.flow_m3_s, flow_m3_s, 1e-9);
  assert_near (air.suction_pa, a * flow_m3_s * flow_m3_s, 1e-6);
  assert_near (air.face_m_s, flow_m3_s / (cda_m2 / 0.6), 1e-6);
  assert_near (air.changes_count, 3600 * flow_m3_s / 0.00852, 1e-4);
  assert_near (air.purge_s, 0.00852 / flow_m3_s * log (100), 1e-6);
}

static void
each_change_moves_the_flow_the_right_way (void **state)
{
  HutDesign *design = new_design (40), *two, *wide = new_design (60), *shut, *duct;
  HutService *service = hut_service_new ("duct", HUT_SERVICE_DUCT);
  HutAirGuess hose = plain, bent = plain;
  double flow_m3_s;

  add_fan (design, 0);
  add_fan (wide, 0);
  two = hut_design_copy (design);
  add_fan (two, 90);
  shut = hut_design_copy (design);
  service->line_mm = 60;
  duct = hut_design_copy (design);
  g_ptr_array_add (duct->machine.services, service);
  g_ptr_array_add (shut->machine.services, hut_service_copy (service));
  ((HutOpening *)shut->openings->pdata[0])->serves = g_strdup ("duct");
  hose.hose_m = bent.hose_m = 2;
  bent.bends = 2;
  flow_m3_s = air_of (design, &plain).point.flow_m3_s;
  assert_true (air_of (wide, &plain).point.flow_m3_s > flow_m3_s);
  assert_true (air_of (shut, &plain).point.flow_m3_s < flow_m3_s);
  assert_int_equal (air_of (hut_design_copy (two), &plain).fans, 2);
  assert_true (air_of (two, &plain).point.flow_m3_s > flow_m3_s);
  assert_true (air_of (hut_design_copy (duct), &hose).point.flow_m3_s < flow_m3_s);
  assert_true (air_of (hut_design_copy (duct), &bent).point.flow_m3_s
               < air_of (hut_design_copy (duct), &hose).point.flow_m3_s);
  service = duct->machine.services->pdata[0];
  service->line_mm = 90;
  assert_true (air_of (hut_design_copy (duct), &bent).point.flow_m3_s > 0);
  hut_design_free (duct);
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (without_a_fan_nothing_moves),
    cmocka_unit_test (the_flow_is_the_root_of_the_straight_curve_and_the_square),
    cmocka_unit_test (each_change_moves_the_flow_the_right_way),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}

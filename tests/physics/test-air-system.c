/* tests/physics/test-air-system.c: fans against the enclosure and its duct.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "config.h"
#include "hut-assert.h"
#include "hut-random.h"
#include "physics/hut-air-system.h"
#include "physics/hut-fitting.h"
#include "physics/hut-purge.h"

/* What a random case is made of. */
typedef struct
{
  HutFanCurve *fan;
  HutDuctRun run;
  HutAirSystem system;
} Case;

static void
case_init (Case *self,
           HutRandom *random)
{
  const double shut_pa = hut_random_octaves (random, 20, 600),
               free_m3_s = hut_random_octaves (random, 0.01, 0.3);
  const HutPressurePoint points[]
      = { { 0, shut_pa },
          { 0.4 * free_m3_s, hut_random_between (random, 0.6, 0.9) * shut_pa },
          { 0.8 * free_m3_s, hut_random_between (random, 0.1, 0.5) * shut_pa },
          { free_m3_s, 0 } };

  self->fan = hut_fan_curve_new (points, G_N_ELEMENTS (points), HUT_FAN_SMOOTH, HUT_FAN_RATED_KG_M3,
                                 NULL);
  self->run = (HutDuctRun) { .diameter_m = hut_random_between (random, 0.075, 0.2),
                            .length_m = hut_random_octaves (random, 0.5, 10),
                            .roughness_m = hut_random_octaves (random, 1e-5, 3e-3),
                            .loss_ratio = hut_random_between (random, 1, 6) };
  self->system = (HutAirSystem) { .air = hut_air_in_room (hut_random_between (random, 5, 35),
                                                         hut_random_between (random, 0, 2500)),
                                 .intake_m2 = hut_random_octaves (random, 1e-3, 2e-2),
                                 .runs = &self->run,
                                 .n_runs = 1 };
}

static double
flow_of (const Case *self,
         const HutDuctRun *run,
         double intake_m2,
         guint fans_count)
{
  const HutFanCurve *fans[] = { self->fan, self->fan };
  HutAirSystem system = self->system;
  HutOperatingPoint point;

  system.runs = run;
  system.intake_m2 = intake_m2;
  assert_true (hut_operating_point_find (fans, fans_count, &system, &point));
  assert_false (point.beyond);
  assert_near (hut_fans_pressure_pa (fans, fans_count, point.flow_m3_s, system.air.density_kg_m3),
               point.pressure_pa, 1e-6);
  return point.flow_m3_s;
}

static void
each_change_of_the_system_moves_the_flow_the_right_way (void **state)
{
  const guint64 first = hut_random_first_seed (), count = hut_random_seed_count (300);

  for (guint64 seed = first; seed < first + count; seed++)
    {
      HutRandom random;
      Case here;
      HutDuctRun wider, bent, longer, rougher;
      double flow_m3_s;

      hut_random_init (&random, seed);
      case_init (&here, &random);
      wider = bent = longer = rougher = here.run;
      wider.diameter_m *= 1.5;
      bent.loss_ratio += hut_fitting_loss_ratio (HUT_FITTING_ELBOW);
      longer.length_m += 1;
      rougher.roughness_m *= 2;
      flow_m3_s = flow_of (&here, &here.run, here.system.intake_m2, 1);
      if (!(flow_of (&here, &wider, here.system.intake_m2, 1) > flow_m3_s
            && flow_of (&here, &bent, here.system.intake_m2, 1) < flow_m3_s
            && flow_of (&here, &longer, here.system.intake_m2, 1) < flow_m3_s
            && flow_of (&here, &rougher, here.system.intake_m2, 1) <= flow_m3_s
            && flow_of (&here, &here.run, 0.5 * here.system.intake_m2, 1) < flow_m3_s
            && flow_of (&here, &here.run, here.system.intake_m2, 2) > flow_m3_s))
        fail_msg ("seed %" G_GUINT64_FORMAT ": a change moves the flow the wrong way", seed);
      /* More flow clears faster. */
      assert_true (hut_purge_time_s (flow_m3_s * 1.1, 0.2, 0.01, 3)
                   < hut_purge_time_s (flow_m3_s, 0.2, 0.01, 3));
      hut_fan_curve_free (here.fan);
    }
}

/* 100 mm to 150 mm for a small fan, from the published whole system of FAN-05: by halving, without
 * our solver. */
static void
the_root_is_that_of_plain_halving (void **state)
{
  static const HutPressurePoint points[] = { { 0, 180 }, { 0.02, 150 }, { 0.05, 0 } };
  g_autoptr(HutFanCurve) fan = hut_fan_curve_new (points, 3, HUT_FAN_STRAIGHT, 1.2, NULL);
  const HutFanCurve *fans[] = { fan };
  const HutDuctRun run
      = { .diameter_m = 0.1, .length_m = 3, .roughness_m = 0.9e-3, .loss_ratio = 3.3 };
  const HutAirSystem system
      = { .air = { 1.2, 1.81e-5 }, .intake_m2 = 0.006, .runs = &run, .n_runs = 1 };
  double low_m3_s = 0, high_m3_s = 0.05;
  HutOperatingPoint point;

  for (int i = 0; i < 60; i++)
    {
      const double q = 0.5 * (low_m3_s + high_m3_s);
      const double fan_pa = q < 0.02 ? 180 - 30 * q / 0.02 : 150 * (0.05 - q) / 0.03;

      *(fan_pa > hut_air_system_pressure_pa (&system, q) ? &low_m3_s : &high_m3_s) = q;
    }
  assert_true (hut_operating_point_find (fans, 1, &system, &point));
  assert_near (point.flow_m3_s, low_m3_s, 1e-10);
  assert_false (point.several);
}

static void
a_stall_dip_gives_the_largest_stable_flow_and_is_told (void **state)
{
  static const HutPressurePoint points[] = { { 0, 100 }, { 0.02, 40 }, { 0.04, 70 }, { 0.08, 0 } };
  g_autoptr(HutFanCurve) fan = hut_fan_curve_new (points, 4, HUT_FAN_STRAIGHT, 1.2, NULL);
  const HutFanCurve *fans[] = { fan };
  /* Nearly level at 50 Pa: meets the curve three times, the last time where 70 (0.08 - q) / 0.04
   * = 50. */
  const HutAirSystem level = { .air = { 1.2, 1.81e-5 }, .intake_m2 = 10, .fixed_pa = 50 };
  HutOperatingPoint point;

  assert_true (hut_operating_point_find (fans, 1, &level, &point));
  assert_true (point.several);
  assert_near (point.flow_m3_s, 0.08 - 50 * 0.04 / 70, 1e-6);
}

static void
without_fan_intake_or_enough_pressure_nothing_moves (void **state)
{
  static const HutPressurePoint points[] = { { 0, 100 }, { 0.05, 0 } },
                           cut[] = { { 0, 100 }, { 0.05, 50 } };
  g_autoptr(HutFanCurve) fan = hut_fan_curve_new (points, 2, HUT_FAN_STRAIGHT, 1.2, NULL);
  g_autoptr(HutFanCurve) short_fan = hut_fan_curve_new (cut, 2, HUT_FAN_STRAIGHT, 1.2, NULL);
  const HutFanCurve *fans[] = { fan }, *short_fans[] = { short_fan };
  const HutAirSystem open = { .air = { 1.2, 1.81e-5 }, .intake_m2 = 1 };
  HutAirSystem shut = open, held = open;
  HutOperatingPoint point = { 7, 7 };

  shut.intake_m2 = 0;
  held.fixed_pa = 101;
  assert_false (hut_operating_point_find (NULL, 0, &open, &point));
  assert_false (hut_operating_point_find (fans, 1, &shut, &point));
  assert_false (hut_operating_point_find (fans, 1, &held, &point));
  assert_near (point.flow_m3_s, 7, 0);
  assert_true (hut_operating_point_find (short_fans, 1, &open, &point));
  assert_true (point.beyond);
  assert_near (point.flow_m3_s, 0.05, 0);
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (each_change_of_the_system_moves_the_flow_the_right_way),
    cmocka_unit_test (the_root_is_that_of_plain_halving),
    cmocka_unit_test (a_stall_dip_gives_the_largest_stable_flow_and_is_told),
    cmocka_unit_test (without_fan_intake_or_enough_pressure_nothing_moves),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}

/* tests/physics/test-fan.c: fan curves.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "config.h"
#include "hut-assert.h"
#include "hut-random.h"
#include "physics/hut-fan.h"

#define RHO HUT_FAN_RATED_KG_M3

/* An axial fan with a dip. */
static const HutPressurePoint dip[] = { { 0, 100 }, { 0.02, 50 }, { 0.04, 70 }, { 0.08, 0 } };
static const HutPressurePoint falling[] = { { 0, 100 }, { 0.05, 60 }, { 0.1, 0 } };

static HutFanCurve *
curve_of (const HutPressurePoint *points,
          guint n,
          HutFanShape shape)
{
  g_autoptr(GError) error = NULL;
  HutFanCurve *curve = hut_fan_curve_new (points, n, shape, RHO, &error);

  assert_ok (curve != NULL, error);
  return curve;
}

static void
points_that_make_no_curve_are_refused (void **state)
{
  static const struct
  {
    const char *why;
    HutPressurePoint points[3];
    guint n;
    double rated;
  } cases[] = {
    { "one point", { { 0, 1 } }, 1, 1.2 },
    { "same flow twice", { { 0, 3 }, { 0, 2 }, { 1, 0 } }, 3, 1.2 },
    { "flow falls", { { 1, 3 }, { 0, 2 } }, 2, 1.2 },
    { "pressure under 0", { { 0, 3 }, { 1, -1 } }, 2, 1.2 },
    { "not a number", { { 0, NAN }, { 1, 0 } }, 2, 1.2 },
    { "no air", { { 0, 3 }, { 1, 0 } }, 2, 0 },
  };

  for (guint i = 0; i < G_N_ELEMENTS (cases); i++)
    {
      g_autoptr(GError) error = NULL;
      g_autoptr(HutFanCurve) curve
          = hut_fan_curve_new (cases[i].points, cases[i].n, HUT_FAN_SMOOTH, cases[i].rated, &error);

      if (curve != NULL || !g_error_matches (error, HUT_PHYSICS_ERROR, HUT_PHYSICS_ERROR_CURVE))
        fail_msg ("%s: not refused", cases[i].why);
    }
}

static void
both_shapes_meet_every_point_and_never_leave_the_range_between_neighbours (void **state)
{
  HutRandom random;

  hut_random_init (&random, 3);
  for (guint turn = 0; turn < 500; turn++)
    {
      HutPressurePoint points[6];
      const guint n = 2 + hut_random_below (&random, 5);

      for (guint i = 0; i < n; i++)
        points[i] = (HutPressurePoint) {
          (i == 0 ? 0 : points[i - 1].flow_m3_s + hut_random_between (&random, 0.01, 0.1)),
          hut_random_between (&random, 0, 300)
        };
      for (HutFanShape shape = HUT_FAN_STRAIGHT; shape <= HUT_FAN_SMOOTH; shape++)
        {
          g_autoptr(HutFanCurve) curve = curve_of (points, n, shape);

          for (guint i = 0; i < n; i++)
            assert_near (hut_fan_curve_pressure_pa (curve, points[i].flow_m3_s, RHO),
                         points[i].pressure_pa, 1e-9);
          for (guint i = 0; i + 1 < n; i++)
            for (double t = 0; t < 1; t += 0.05)
              {
                const double flow
                    = points[i].flow_m3_s + t * (points[i + 1].flow_m3_s - points[i].flow_m3_s);
                const double pressure = hut_fan_curve_pressure_pa (curve, flow, RHO);

                assert_true (pressure
                             >= MIN (points[i].pressure_pa, points[i + 1].pressure_pa) - 1e-9);
                assert_true (pressure
                             <= MAX (points[i].pressure_pa, points[i + 1].pressure_pa) + 1e-9);
              }
        }
    }
}

static void
flow_is_the_largest_one_with_that_pressure (void **state)
{
  g_autoptr(HutFanCurve) curve = curve_of (dip, G_N_ELEMENTS (dip), HUT_FAN_STRAIGHT);

  assert_false (hut_fan_curve_falls (curve));
  /* 60 Pa: on the last stretch 0.04 + 0.04 (70 - 60) / 70. */
  assert_near (hut_fan_curve_flow_m3_s (curve, 60, RHO), 0.04 + 0.04 * 10 / 70, 1e-12);
  /* 80 Pa: over the hump, on the first stretch 0.02 (100 - 80) / 50. */
  assert_near (hut_fan_curve_flow_m3_s (curve, 80, RHO), 0.008, 1e-12);
  assert_near (hut_fan_curve_flow_m3_s (curve, 0, RHO), 0.08, 0);
  assert_near (hut_fan_curve_flow_m3_s (curve, 101, RHO), 0, 0);
}

static void
thin_air_gives_less_pressure_at_the_same_flow (void **state)
{
  g_autoptr(HutFanCurve) curve = curve_of (falling, G_N_ELEMENTS (falling), HUT_FAN_SMOOTH);

  assert_near (hut_fan_curve_pressure_pa (curve, 0.03, RHO / 2),
               0.5 * hut_fan_curve_pressure_pa (curve, 0.03, RHO), 1e-12);
  assert_true (isnan (hut_fan_curve_pressure_pa (curve, 0.11, RHO)));
  assert_true (isnan (hut_fan_curve_pressure_pa (curve, -0.01, RHO)));
}

static void
equal_fans_side_by_side_share_the_flow (void **state)
{
  g_autoptr(HutFanCurve) curve = curve_of (falling, G_N_ELEMENTS (falling), HUT_FAN_SMOOTH);
  g_autoptr(HutFanCurve) twin = curve_of (falling, G_N_ELEMENTS (falling), HUT_FAN_SMOOTH);
  const HutFanCurve *same[] = { curve, curve }, *twins[] = { curve, twin };

  for (double flow = 0.001; flow < 0.2; flow += 0.01)
    {
      const double one_pa = hut_fan_curve_pressure_pa (curve, flow / 2, RHO);

      assert_near (hut_fans_pressure_pa (same, 2, flow, RHO), one_pa, 1e-12);
      /* The way for different fans gives the same. */
      assert_near (hut_fans_pressure_pa (twins, 2, flow, RHO), one_pa, 1e-6);
    }
  assert_near (hut_fans_free_m3_s (same, 2), 0.2, 1e-15);
  assert_true (isnan (hut_fans_pressure_pa (NULL, 0, 0, RHO)));
}

static void
a_weak_fan_beside_a_strong_one_gives_nothing_above_its_own_pressure (void **state)
{
  static const HutPressurePoint weak_points[] = { { 0, 30 }, { 0.05, 0 } };
  g_autoptr(HutFanCurve) strong = curve_of (falling, G_N_ELEMENTS (falling), HUT_FAN_STRAIGHT);
  g_autoptr(HutFanCurve) weak = curve_of (weak_points, 2, HUT_FAN_STRAIGHT);
  const HutFanCurve *fans[] = { strong, weak };

  /* 60 Pa is the strong one's at 0.05 m3/s. */
  assert_near (hut_fans_pressure_pa (fans, 2, 0.05, RHO), 60, 1e-6);
  /* At 15 Pa: 0.1 - 0.05 15 / 60 = 0.0875, and 0.025 of the weak one. */
  assert_near (hut_fans_pressure_pa (fans, 2, 0.0875 + 0.025, RHO), 15, 1e-6);
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (points_that_make_no_curve_are_refused),
    cmocka_unit_test (both_shapes_meet_every_point_and_never_leave_the_range_between_neighbours),
    cmocka_unit_test (flow_is_the_largest_one_with_that_pressure),
    cmocka_unit_test (thin_air_gives_less_pressure_at_the_same_flow),
    cmocka_unit_test (equal_fans_side_by_side_share_the_flow),
    cmocka_unit_test (a_weak_fan_beside_a_strong_one_gives_nothing_above_its_own_pressure),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}

/* tests/sheets/test-coupon-fit.c: kerf and allowance from what was read off a coupon.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "sheets/hut-coupon-fit.h"
#include "checks/hut-joint-fit.h"
#include "hut-assert.h"
#include "hut-random.h"

#define TRIALS 1000
#define TRIALS_WITHIN 950

static const HutCutter laser = {
  .kind = HUT_CUTTER_LASER, .bed_width_mm = 600, .bed_depth_mm = 400, .margin_mm = 5,
};

static HutStock *
new_stock (HutMaterial material,
           HutFitKind fit,
           double kerf_mm)
{
  HutStock *self = hut_stock_new ("ply-6");

  self->material = material;
  self->fit = fit;
  self->kerf_mm = kerf_mm;
  return self;
}

static HutCouponReadings
readings_of (const double *plays_mm,
             guint count)
{
  HutCouponReadings readings = { plays_mm, count, 0.05, { 0 } };

  for (guint i = 0; i < HUT_FEEL_COUNT; i++)
    readings.first_tooth[i] = HUT_COUPON_NONE;
  return readings;
}

static void
kerf_is_the_play_over_the_number_of_cuts (void **state)
{
  g_autoptr(HutStock) stock = new_stock (HUT_MATERIAL_PLYWOOD, HUT_FIT_GLUE, 0.2);
  const double plays_mm[] = { 2.50, 2.54, 2.58 }; /* mean 2.54 over 11: 0.2309 */
  const HutCouponReadings readings = readings_of (plays_mm, 3);
  HutCouponPlan plan;
  HutCouponResult result;
  g_autoptr(GError) error = NULL;

  hut_coupon_plan_init (&plan, stock, &laser);
  assert_ok (hut_coupon_fit (&plan, stock, HUT_CUTTER_LASER, &readings, &result, &error), error);
  assert_near_mm (result.kerf_mm, 0.231, 1e-9);
  /* s = 0.04; t (0.995, 2) = 9.925 (tables of Student's t): 0.04 x 9.925 / sqrt 3 / 11 = 0.0208;
   * rounded to the grid, and one step of it for the rounding. */
  assert_near_mm (result.kerf_error_mm, 0.022, 0.0005);
  assert_false (result.has_allowance);
}

static void
one_reading_has_the_error_of_the_caliper (void **state)
{
  g_autoptr(HutStock) stock = new_stock (HUT_MATERIAL_PLYWOOD, HUT_FIT_GLUE, 0.2);
  const double play_mm = 2.2;
  const HutCouponReadings readings = readings_of (&play_mm, 1);
  HutCouponPlan plan;
  HutCouponResult result;

  hut_coupon_plan_init (&plan, stock, &laser);
  assert_true (hut_coupon_fit (&plan, stock, HUT_CUTTER_LASER, &readings, &result, NULL));
  assert_near_mm (result.kerf_mm, 0.2, 1e-9);
  /* 0.05 at 95 % is 0.0657 at 99 %, over 11: 0.00597. */
  assert_near_mm (result.kerf_error_mm, 0.007, 1e-6);
}

static void
allowance_is_the_wanted_fit_less_what_the_stock_feels_looser (void **state)
{
  /* Kerf as drawn. The comb runs -0.20, -0.16, ... Press from tooth 2 (-0.12), slip from 5 (0.00),
   * glue from 7 (0.08), loose from 10 (0.20): changes at -0.14, -0.02, 0.06, 0.18. Usual: -0.15,
   * -0.05, 0.05, 0.15. Shifts -0.01, -0.03, -0.01, -0.03: mean -0.02. Glue: 0.10 + 0.02. */
  g_autoptr(HutStock) stock = new_stock (HUT_MATERIAL_PLYWOOD, HUT_FIT_GLUE, 0.2);
  const double play_mm = 2.2;
  HutCouponReadings readings = readings_of (&play_mm, 1);
  HutCouponPlan plan;
  HutCouponResult result;
  const guint first[] = { 2, 5, 7, 10 };

  for (guint i = 0; i < HUT_FEEL_COUNT; i++)
    readings.first_tooth[i] = first[i];
  hut_coupon_plan_init (&plan, stock, &laser);
  assert_true (hut_coupon_fit (&plan, stock, HUT_CUTTER_LASER, &readings, &result, NULL));
  assert_true (result.has_allowance);
  assert_near_mm (result.fit_shift_mm, -0.02, 1e-9);
  assert_near_mm (result.allowance_mm, 0.12, 1e-9);
  /* Half a step 0.02; s = 0.011547, t (0.975, 3) = 3.182: 0.01837; kerf 2 x 0.007; together
   * 0.02 + sqrt (0.01837^2 + 0.014^2) = 0.0431. */
  assert_near_mm (result.allowance_error_mm, 0.043, 0.0006);
}

static void
wrong_kerf_of_the_drawing_is_no_shift (void **state)
{
  /* Drawn for 0.2, cut with 0.24: every clearance is 0.08 more, so all changes come two steps
   * earlier than at a shift of 0; -0.23 is off the comb. */
  g_autoptr(HutStock) stock = new_stock (HUT_MATERIAL_PLYWOOD, HUT_FIT_SLIP, 0.2);
  const double play_mm = 2.64;
  HutCouponReadings readings = readings_of (&play_mm, 1);
  HutCouponPlan plan;
  HutCouponResult result;
  const guint first[] = { 0, 2, 5, 7 }; /* changes at ?, -0.14, -0.02, 0.06: usual -0.05 .. */

  for (guint i = 0; i < HUT_FEEL_COUNT; i++)
    readings.first_tooth[i] = first[i];
  hut_coupon_plan_init (&plan, stock, &laser);
  assert_true (hut_coupon_fit (&plan, stock, HUT_CUTTER_LASER, &readings, &result, NULL));
  /* b - x: 0.09, 0.07, 0.09, mean 0.08333, less 0.08. */
  assert_near_mm (result.fit_shift_mm, 0.003, 1e-9);
  assert_near_mm (result.allowance_mm, -0.003, 1e-9);
}

static void
without_usual_fits_the_middle_of_the_teeth_is_taken (void **state)
{
  g_autoptr(HutStock) stock = new_stock (HUT_MATERIAL_OTHER, HUT_FIT_SLIP, 0.2);
  const double play_mm = 2.2;
  HutCouponReadings readings = readings_of (&play_mm, 1);
  HutCouponPlan plan;
  HutCouponResult result;

  hut_coupon_plan_init (&plan, stock, &laser); /* from -0.16 */
  readings.first_tooth[HUT_FEEL_SLIP] = 4;     /* 0.00, changes at -0.02 */
  readings.first_tooth[HUT_FEEL_GLUE] = 7;     /* 0.12, changes at 0.10 */
  assert_true (hut_coupon_fit (&plan, stock, HUT_CUTTER_LASER, &readings, &result, NULL));
  assert_true (result.has_allowance);
  assert_near_mm (result.allowance_mm, 0.04, 1e-9);
  assert_near_mm (result.fit_shift_mm, 0.0, 0);
  readings.first_tooth[HUT_FEEL_GLUE] = HUT_COUPON_NONE;
  assert_true (hut_coupon_fit (&plan, stock, HUT_CUTTER_LASER, &readings, &result, NULL));
  assert_false (result.has_allowance);
}

static void
what_makes_no_sense_is_refused_and_nothing_written (void **state)
{
  g_autoptr(HutStock) stock = new_stock (HUT_MATERIAL_PLYWOOD, HUT_FIT_GLUE, 0.2);
  const double good_mm = 2.2;
  const double bad_mm[] = { 0.0, -1.0, INFINITY, NAN, 1000.0 };
  HutCouponPlan plan;
  HutCouponResult result = { .kerf_mm = 7.0 };
  HutCouponReadings readings = readings_of (&good_mm, 0);

  hut_coupon_plan_init (&plan, stock, &laser);
  for (guint i = 0; i <= G_N_ELEMENTS (bad_mm) + 3; i++)
    {
      g_autoptr(GError) error = NULL;

      assert_false (hut_coupon_fit (&plan, stock, HUT_CUTTER_LASER, &readings, &result, &error));
      assert_true (g_error_matches (error, HUT_GEOM_ERROR, HUT_GEOM_ERROR_INVALID));
      assert_near_mm (result.kerf_mm, 7.0, 0);
      readings = readings_of (&good_mm, 1);
      if (i < G_N_ELEMENTS (bad_mm))
        readings.plays_mm = &bad_mm[i];
      else if (i == G_N_ELEMENTS (bad_mm))
        readings.reading_error_mm = 0.0;
      else if (i == G_N_ELEMENTS (bad_mm) + 1)
        readings.first_tooth[HUT_FEEL_GLUE] = plan.tooth_count;
      else
        {
          readings.first_tooth[HUT_FEEL_PRESS] = 5;
          readings.first_tooth[HUT_FEEL_SLIP] = 4;
        }
    }
}

static void
readings_that_do_not_go_with_the_drawing_are_refused (void **state)
{
  /* Drawn for 5 mm, cut with 0.2: clearances would be 9.6 less. A file takes allowances up to 2. */
  g_autoptr(HutStock) stock = new_stock (HUT_MATERIAL_PLYWOOD, HUT_FIT_GLUE, 0.2);
  const double play_mm = 2.2;
  HutCouponReadings readings = readings_of (&play_mm, 1);
  HutCouponPlan plan;
  HutCouponResult result = { .kerf_mm = 7.0 };

  hut_coupon_plan_init (&plan, stock, &laser);
  readings.first_tooth[HUT_FEEL_SLIP] = 5;
  plan.kerf_mm = 5.0;
  assert_false (hut_coupon_fit (&plan, stock, HUT_CUTTER_LASER, &readings, &result, NULL));
  plan.kerf_mm = INFINITY;
  assert_false (hut_coupon_fit (&plan, stock, HUT_CUTTER_LASER, &readings, &result, NULL));
  assert_near_mm (result.kerf_mm, 7.0, 0);
}

static void
joints_follow_the_result (void **state)
{
  g_autoptr(HutStock) stock = new_stock (HUT_MATERIAL_PLYWOOD, HUT_FIT_GLUE, 0.2);
  const HutCouponResult result = {
    .kerf_mm = 0.23, .kerf_error_mm = 0.01, .has_allowance = TRUE, .allowance_mm = 0.13,
    .allowance_error_mm = 0.04, .fit_shift_mm = -0.03,
  };
  const HutCouponResult kerf_only = { .kerf_mm = 0.25, .kerf_error_mm = 0.02 };

  hut_coupon_result_apply (&result, stock);

  const HutJointFit fit = hut_joint_fit_find (stock, stock);

  assert_near_mm (stock->kerf_mm, 0.23, 0);
  /* Drawn 0.13 wide, feels like the wanted 0.10; what is uncertain is the coupon's 0.04. */
  assert_near_mm (fit.centre_mm, 0.10, 1e-12);
  assert_near_mm (fit.kerf_mm, 0.04, 1e-12);
  hut_coupon_result_apply (&kerf_only, stock);
  assert_near_mm (stock->kerf_mm, 0.25, 0);
  assert_near_mm (stock->allowance_mm, 0.13, 0);
}

/* ---- simulated readings ---------------------------------------------------------------------- */

/* Normal distribution by the sum of twelve even ones. */
static double
normal (HutRandom *random,
        double deviation)
{
  double sum = -6.0;

  for (guint i = 0; i < 12; i++)
    sum += hut_random_between (random, 0.0, 1.0);
  return sum * deviation;
}

/* What a person feels who takes one tooth after the other; @shift_mm: the stock's true one. */
static void
feel_teeth (HutRandom *random,
            const HutCouponPlan *plan,
            const HutStock *stock,
            double kerf_mm,
            double shift_mm,
            guint first[HUT_FEEL_COUNT])
{
  for (guint feel = 0; feel < HUT_FEEL_COUNT; feel++)
    first[feel] = HUT_COUPON_NONE;
  for (guint tooth = 0; tooth < plan->tooth_count; tooth++)
    {
      const double clearance_mm = hut_coupon_tooth_mm (plan, tooth)
                                  + 2.0 * (kerf_mm - plan->kerf_mm) + shift_mm
                                  + normal (random, 0.006);

      for (guint feel = 0; feel < HUT_FEEL_COUNT; feel++)
        {
          double from_mm;

          if (first[feel] == HUT_COUPON_NONE
              && hut_coupon_feel_mm (stock, HUT_CUTTER_LASER, (HutFeel) feel, &from_mm)
              && clearance_mm >= from_mm)
            first[feel] = tooth;
        }
    }
}

static void
true_kerf_and_allowance_are_within_what_is_stated (void **state)
{
  guint kerf_within = 0, allowance_within = 0, felt = 0;

  for (guint64 seed = 1; seed <= TRIALS; seed++)
    {
      HutRandom random;
      HutCouponPlan plan;
      HutCouponResult result;
      double plays_mm[6];

      hut_random_init (&random, seed);

      const HutFitKind fit = (HutFitKind) hut_random_below (&random, 3);
      const double kerf_mm = hut_random_between (&random, 0.08, 0.45);
      const double shift_mm = hut_random_between (&random, -0.05, 0.05);
      const double start_mm = kerf_mm + hut_random_between (&random, -0.04, 0.04);
      g_autoptr(HutStock) stock = new_stock (HUT_MATERIAL_PLYWOOD, fit, start_mm);
      HutCouponReadings readings = readings_of (plays_mm, 1 + hut_random_below (&random, 6));
      const HutFitRange range = hut_fit_range (HUT_MATERIAL_PLYWOOD, HUT_CUTTER_LASER, fit);
      const double true_mm = (range.low_mm + range.high_mm) / 2.0 - shift_mm;

      hut_coupon_plan_init (&plan, stock, &laser);
      /* One reading in twenty is more than 0.05 off; the caliper shows hundredths. */
      for (guint i = 0; i < readings.play_count; i++)
        plays_mm[i]
            = round ((kerf_mm * hut_coupon_gap_count (&plan) + normal (&random, 0.0255)) * 100.0)
              / 100.0;
      feel_teeth (&random, &plan, stock, kerf_mm, shift_mm, readings.first_tooth);
      assert_true (hut_coupon_fit (&plan, stock, HUT_CUTTER_LASER, &readings, &result, NULL));
      kerf_within += fabs (result.kerf_mm - kerf_mm) <= result.kerf_error_mm ? 1 : 0;
      if (!result.has_allowance)
        continue;
      felt++;
      allowance_within
          += fabs (result.allowance_mm - true_mm) <= result.allowance_error_mm ? 1 : 0;
    }
  print_message ("within the stated error: kerf %u, allowance %u of %u\n", kerf_within,
                 allowance_within, felt);
  assert_int_equal (felt, TRIALS);
  assert_true (kerf_within >= TRIALS_WITHIN);
  assert_true (allowance_within >= TRIALS_WITHIN);
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (kerf_is_the_play_over_the_number_of_cuts),
    cmocka_unit_test (one_reading_has_the_error_of_the_caliper),
    cmocka_unit_test (allowance_is_the_wanted_fit_less_what_the_stock_feels_looser),
    cmocka_unit_test (wrong_kerf_of_the_drawing_is_no_shift),
    cmocka_unit_test (without_usual_fits_the_middle_of_the_teeth_is_taken),
    cmocka_unit_test (what_makes_no_sense_is_refused_and_nothing_written),
    cmocka_unit_test (readings_that_do_not_go_with_the_drawing_are_refused),
    cmocka_unit_test (joints_follow_the_result),
    cmocka_unit_test (true_kerf_and_allowance_are_within_what_is_stated),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}

/* tests/physics/test-laser-light.c: laser light: refusals, and what must always hold.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "config.h"
#include "hut-assert.h"
#include "physics/hut-bounce.h"
#include "physics/hut-gap-sight.h"
#include "physics/hut-laser-light.h"

static void
no_wavelength_or_time_base_is_made_up (void **state)
{
  assert_true (isnan (hut_laser_limit_w_m2 (0, 100)));
  assert_true (isnan (hut_laser_limit_w_m2 (355, 100)));
  assert_true (isnan (hut_laser_limit_w_m2 (2000, 100)));
  assert_true (isnan (hut_laser_limit_w_m2 (445, 0)));
  assert_true (isnan (hut_laser_limit_w_m2 (445, NAN)));
  assert_true (isnan (hut_laser_limit_w_m2 (445, 4e4)));
  assert_true (isnan (hut_window_density_ratio (1e5, NAN, 100)));
}

static void
a_quarter_of_a_second_is_refused_for_light_that_nobody_sees (void **state)
{
  assert_true (isnan (hut_window_density_ratio (1e5, 1064, HUT_TIME_GLANCE_S)));
  assert_true (isnan (hut_window_density_ratio (1e5, 10600, HUT_TIME_GLANCE_S)));
  assert_true (hut_window_density_ratio (1e5, 445, HUT_TIME_GLANCE_S) > 0);
  assert_true (hut_window_density_ratio (1e5, 1064, HUT_TIME_ACCIDENT_S) > 0);
}

static void
longer_looking_never_raises_the_limit_of_one_row (void **state)
{
  static const double wavelengths_nm[] = { 405, 445, 455, 532, 650, 808, 1064, 1300 };

  for (guint i = 0; i < G_N_ELEMENTS (wavelengths_nm); i++)
    for (double time_s = 0.01; time_s * 1.1 < HUT_TIME_WATCHING_S; time_s *= 1.1)
      assert_true (hut_laser_limit_w_m2 (wavelengths_nm[i], time_s * 1.1)
                   <= hut_laser_limit_w_m2 (wavelengths_nm[i], time_s));
}

static void
distance_and_irradiance_undo_each_other (void **state)
{
  const double distance_m = hut_diffuse_distance_m (5, 0.6, 0.3, 1.0);

  assert_near (hut_diffuse_irradiance_w_m2 (5, 0.6, 0.3, distance_m), 1.0, 1e-12);
  assert_true (isnan (hut_diffuse_irradiance_w_m2 (5, 1.1, 0, 1)));
  assert_true (isnan (hut_diffuse_irradiance_w_m2 (5, 1, 0, 0)));
}

static void
a_narrow_beam_counts_as_if_it_filled_the_pupil (void **state)
{
  assert_near (hut_beam_irradiance_w_m2 (10, 2e-3), 2.5984e5, 5);
  assert_near (hut_beam_irradiance_w_m2 (10, 0), hut_beam_irradiance_w_m2 (10, 7e-3), 0);
  assert_true (hut_beam_irradiance_w_m2 (10, 8e-3) < hut_beam_irradiance_w_m2 (10, 7e-3));
}

static void
an_irradiance_of_exactly_a_level_asks_for_that_level (void **state)
{
  for (guint n = 1; n <= 10; n++)
    {
      const double most_w_m2 = hut_en207_irradiance_w_m2 (1064, n);

      assert_int_equal (hut_en207_number (1064, most_w_m2), n);
      assert_int_equal (hut_en207_number (1064, most_w_m2 * 1.01), n + 1);
    }
  assert_int_equal (hut_en207_number (100, 1), -1);
  assert_int_equal (hut_en208_number (1064, 1), -1);
  assert_int_equal (hut_en207_number (1064, INFINITY), -1);
}

static void
dark_paint_leaves_less_after_every_bounce_and_in_the_whole_box (void **state)
{
  for (guint bounces = 1; bounces <= 3; bounces++)
    assert_true (hut_bounces_left_ratio (HUT_REFLECTS_BLACK_RATIO, bounces)
                 < hut_bounces_left_ratio (HUT_REFLECTS_PLYWOOD_RATIO, bounces));
  assert_true (hut_cavity_ratio (HUT_REFLECTS_BLACK_RATIO, 0.01)
               < hut_cavity_ratio (HUT_REFLECTS_WHITE_RATIO, 0.01));
  assert_true (isinf (hut_cavity_ratio (1, 0)));
  assert_true (isnan (hut_bounces_left_ratio (1.5, 1)));
  assert_near (hut_bounces_density_ratio (0.5, 0), 0, 0);
  /* A density and the share that is left say the same. */
  assert_near (hut_transmission_ratio (hut_bounces_density_ratio (0.3, 2)), 0.09, 1e-15);
}

static void
the_view_through_a_slot_is_that_of_a_sum_over_directions (void **state)
{
  /* Another way: mean over the mouth of the cosine-weighted rays that leave by the other one,
   * summed. */
  const double deep = 5;
  const int steps = 2000;
  double sum = 0;

  for (int i = 0; i < steps; i++)
    {
      const double x = (i + 0.5) / steps;

      sum += 0.5 * (sin (atan ((1 - x) / deep)) - sin (atan (-x / deep))) / steps;
    }
  assert_near (hut_gap_view_ratio (1, deep), sum, 1e-6);
  assert_near (hut_gap_view_ratio (1, 0), 1, 0);
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (no_wavelength_or_time_base_is_made_up),
    cmocka_unit_test (a_quarter_of_a_second_is_refused_for_light_that_nobody_sees),
    cmocka_unit_test (longer_looking_never_raises_the_limit_of_one_row),
    cmocka_unit_test (distance_and_irradiance_undo_each_other),
    cmocka_unit_test (a_narrow_beam_counts_as_if_it_filled_the_pupil),
    cmocka_unit_test (an_irradiance_of_exactly_a_level_asks_for_that_level),
    cmocka_unit_test (dark_paint_leaves_less_after_every_bounce_and_in_the_whole_box),
    cmocka_unit_test (the_view_through_a_slot_is_that_of_a_sum_over_directions),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}

/* tests/physics/test-lid-force.c: lids and their springs over the whole way.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "config.h"
#include "hut-assert.h"
#include "physics/hut-lid-force.h"
#include "physics/hut-tip.h"

static const HutStrut strut = { 0.05, -0.25, 0.2, 0 };

static void
a_strut_has_the_levers_lengths_and_forces_worked_out_elsewhere (void **state)
{
  /* Another program, lid 4 kg, centre 0.22 m, two struts: angle, lever, length, force. */
  static const double rows[][4] = { { 0, 0.171499, 0.291548, 25.160 },
                                    { 30, 0.130174, 0.371052, 28.706 },
                                    { 60, 0.078987, 0.426148, 27.314 },
                                    { 80, 0.041435, 0.447222, 18.083 } };

  for (guint i = 0; i < G_N_ELEMENTS (rows); i++)
    {
      const double angle_rad = rows[i][0] * G_PI / 180,
                   lever_m = hut_strut_lever_m (&strut, angle_rad);

      assert_near (lever_m, rows[i][1], 1e-6);
      assert_near (hut_strut_length_m (&strut, angle_rad), rows[i][2], 1e-6);
      assert_near (hut_spring_force_n (hut_hinge_moment_at_nm (4, 0.22, angle_rad), 2, lever_m, 1),
                   rows[i][3], 1e-3);
    }
}

static void
the_most_demanding_angle_lies_between_closed_and_open (void **state)
{
  HutStrutNeed need;

  assert_true (hut_strut_need_find (&strut, 4, 0.22, 2, 80 * G_PI / 180, &need));
  assert_true (need.angle_rad > 30 * G_PI / 180 && need.angle_rad < 60 * G_PI / 180);
  assert_true (need.force_n > 28.706);
  assert_near (need.shortest_m, 0.291548, 1e-6);
  assert_near (need.longest_m, 0.447222, 1e-6);
}

static void
the_lever_is_the_change_of_length_with_the_angle (void **state)
{
  /* Another way to the same number: virtual work, dl / d angle. */
  for (double angle = 0; angle < 1.5; angle += 0.1)
    {
      const double change
          = (hut_strut_length_m (&strut, angle + 1e-6) - hut_strut_length_m (&strut, angle - 1e-6))
            / 2e-6;

      assert_near (hut_strut_lever_m (&strut, angle), fabs (change), 1e-8);
    }
}

static void
a_strut_that_points_at_the_hinge_is_refused (void **state)
{
  const HutStrut idle = { 0.1, 0, 0.2, 0 };
  HutStrutNeed need = { .force_n = 7 };

  assert_false (hut_strut_need_find (&idle, 4, 0.22, 2, 1, &need));
  assert_near (need.force_n, 7, 0);
}

static void
holes_count_as_negative_mass (void **state)
{
  /* 4 kg at 1 m less 1 kg at 2 m: 3 kg at 2/3 m. */
  const HutPointMass masses[] = { { 4, 1 }, { -1, 2 } }, gone[] = { { 1, 1 }, { -1, 2 } };
  HutPointMass sum;

  assert_true (hut_masses_sum (masses, 2, &sum));
  assert_near (sum.mass_kg, 3, 0);
  assert_near (sum.at_m, 2.0 / 3, 1e-15);
  assert_false (hut_masses_sum (gone, 2, &sum));
  assert_false (hut_masses_sum (NULL, 0, &sum));
}

static void
what_hangs_over_the_edge_decides_whether_it_tips (void **state)
{
  assert_true (isinf (hut_tip_ratio (6, 0.25, 2, 0)));
  assert_near (hut_tip_ratio (2, 0.25, 2, 0.5), 0.5, 1e-15);
  /* It tips by itself: the push that just tips it pulls upwards. */
  assert_true (hut_tip_push_down_n (2, 0.25, 2, 0.5, 0.5) < 0);
  assert_true (isnan (hut_tip_push_level_n (1, 1, 0)));
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (a_strut_has_the_levers_lengths_and_forces_worked_out_elsewhere),
    cmocka_unit_test (the_most_demanding_angle_lies_between_closed_and_open),
    cmocka_unit_test (the_lever_is_the_change_of_length_with_the_angle),
    cmocka_unit_test (a_strut_that_points_at_the_hinge_is_refused),
    cmocka_unit_test (holes_count_as_negative_mass),
    cmocka_unit_test (what_hangs_over_the_edge_decides_whether_it_tips),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}

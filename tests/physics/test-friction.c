/* tests/physics/test-friction.c: friction in ducts: two textbook problems in full, and what must
 * always hold. SPDX-License-Identifier: GPL-3.0-or-later */
#include "config.h"
#include "hut-assert.h"
#include "hut-random.h"
#include "physics/hut-friction.h"

static void
tell (const char *what,
      double computed,
      double published)
{
  char is[32], must[32];

  printf ("  %-28s %12s %12s\n", what, g_ascii_formatd (is, sizeof is, "%.6g", computed),
          g_ascii_formatd (must, sizeof must, "%.6g", published));
}

/* Cengel, Cimbala, Fluid Mechanics, McGraw-Hill 2004, example 8-4: air at 35 C and 1 atm in a
 * smooth plastic duct of 150 m, 0.35 m3/s, head loss 20 m. The book: D = 0.267 m, f = 0.0180, v
 * = 6.24 m/s, Re = 100 800. */
static void
textbook_warm_air_in_150_m_of_plastic_duct (void **state)
{
  const HutAir air = { 1.145, 1.655e-5 * 1.145 };
  const double diameter_m = 0.267, gravity_m_s2 = 9.81;
  const double velocity_m_s = hut_duct_velocity_m_s (0.35, diameter_m);
  const double reynolds_ratio = hut_duct_reynolds_ratio (0.35, diameter_m, &air);
  const double friction_ratio = hut_friction_ratio (reynolds_ratio, 0);
  const double loss_pa = hut_duct_friction_pa (0.35, diameter_m, 150, 0, &air);
  const double head_m = loss_pa / (air.density_kg_m3 * gravity_m_s2);

  printf ("Cengel 8-4: A = pi 0.267^2 / 4, v = Q / A, Re = v D / nu, f by Colebrook, h = f L / D "
          "v^2 / 2 g\n");
  tell ("velocity, m/s", velocity_m_s, 6.24);
  tell ("Reynolds number", reynolds_ratio, 100800);
  tell ("friction factor", friction_ratio, 0.0180);
  tell ("head loss, m", head_m, 20);
  assert_near (velocity_m_s, 6.24, 0.02);
  assert_near (reynolds_ratio, 100800, 100);
  assert_near (friction_ratio, 0.0180, 0.0001);
  assert_near (head_m, 20, 0.15);
  /* By hand with the book's numbers: 0.0180 150 / 0.267 6.24^2 / (2 9.81) = 20.07. */
  assert_near (0.0180 * 150 / 0.267 * 6.24 * 6.24 / (2 * 9.81), 20.07, 0.005);
}

/* F. White, Fluid Mechanics, the oil in a cast iron pipe (from memory): rho 900, nu 1e-5, 0.2 m3/s,
 * 500 m of 200 mm with e = 0.26 mm: v = 6.4 m/s, Re = 128 000, e / D = 0.0013, f = 0.0225, h = 117
 * m. */
static void
textbook_oil_in_500_m_of_cast_iron (void **state)
{
  const HutAir oil = { 900, 1e-5 * 900 };
  const double velocity_m_s = hut_duct_velocity_m_s (0.2, 0.2);
  const double reynolds_ratio = hut_duct_reynolds_ratio (0.2, 0.2, &oil);
  const double friction_ratio = hut_friction_ratio (reynolds_ratio, 0.26e-3 / 0.2);
  const double head_m = hut_duct_friction_pa (0.2, 0.2, 500, 0.26e-3, &oil) / (900 * 9.81);

  printf ("White, oil in cast iron (from memory): the same steps\n");
  tell ("velocity, m/s", velocity_m_s, 6.4);
  tell ("Reynolds number", reynolds_ratio, 128000);
  tell ("friction factor", friction_ratio, 0.0225);
  tell ("head loss, m", head_m, 117);
  assert_near (velocity_m_s, 6.4, 0.05);
  assert_near (reynolds_ratio, 128000, 1000);
  assert_near (friction_ratio, 0.0225, 0.0003);
  assert_near (head_m, 117, 1.5);
}

static void
the_colebrook_root_satisfies_its_equation_and_lies_near_the_explicit_ones (void **state)
{
  HutRandom random;

  hut_random_init (&random, 1);
  for (guint i = 0; i < 2000; i++)
    {
      const double re = hut_random_octaves (&random, 5e3, 1e8);
      const double rough = hut_random_octaves (&random, 1e-6, 1e-2);
      const double f = hut_friction_colebrook_ratio (re, rough);
      const double left = 1 / sqrt (f), right = -2 * log10 (rough / 3.7 + 2.51 / (re * sqrt (f)));

      assert_near (left / right, 1, 1e-12);
      /* Their authors state about 1 .. 3 %, and 2 %. */
      assert_near (hut_friction_swamee_jain_ratio (re, rough) / f, 1, 0.035);
      assert_near (hut_friction_haaland_ratio (re, rough) / f, 1, 0.025);
    }
}

static void
smooth_pipes_lie_near_blasius (void **state)
{
  for (double re = 5e3; re < 1e5; re *= 1.1)
    assert_near (hut_friction_colebrook_ratio (re, 0) / hut_friction_blasius_ratio (re), 1, 0.03);
}

static void
the_loss_never_falls_with_flow_length_or_roughness_nor_grows_with_the_diameter (void **state)
{
  HutRandom random;

  hut_random_init (&random, 2);
  for (guint i = 0; i < 2000; i++)
    {
      const HutAir air = hut_air_in_room (hut_random_between (&random, -10, 45),
                                          hut_random_between (&random, 0, 3000));
      const double flow = hut_random_octaves (&random, 1e-4, 1),
                   d = hut_random_octaves (&random, 0.02, 0.5);
      const double length = hut_random_octaves (&random, 0.1, 20),
                   e = hut_random_octaves (&random, 1e-6, 3e-3);
      const double loss = hut_duct_friction_pa (flow, d, length, e, &air);

      assert_true (loss > 0);
      assert_true (hut_duct_friction_pa (flow * 1.05, d, length, e, &air) > loss);
      assert_true (hut_duct_friction_pa (flow, d, length * 1.05, e, &air) > loss);
      assert_true (hut_duct_friction_pa (flow, d * 1.05, length, e, &air) < loss);
      assert_true (hut_duct_friction_pa (flow, d, length, e * 1.05, &air) >= loss);
    }
}

static void
laminar_loss_is_that_of_hagen_and_poiseuille (void **state)
{
  /* 128 mu L Q / (pi D^4); Re = 4 rho Q / (pi mu D) = 844. */
  const HutAir air = { 1.2, 1.81e-5 };
  const double flow_m3_s = 2e-4,
               by_hand_pa = 128 * 1.81e-5 * 2 * flow_m3_s / (G_PI * 0.02 * 0.02 * 0.02 * 0.02);

  assert_near (hut_duct_friction_pa (flow_m3_s, 0.02, 2, 1e-4, &air) / by_hand_pa, 1, 1e-12);
}

static void
a_square_duct_counts_with_its_side (void **state)
{
  assert_near (hut_hydraulic_diameter_m (0.1, 0.1), 0.1, 1e-15);
  assert_near (hut_hydraulic_diameter_m (0.2, 0.1), 4 * 0.02 / 0.6, 1e-15);
}

static void
what_is_no_duct_gives_no_number (void **state)
{
  const HutAir air = { 1.2, 1.81e-5 };

  assert_true (isnan (hut_duct_friction_pa (-1, 0.1, 1, 0, &air)));
  assert_true (isnan (hut_duct_friction_pa (1, 0, 1, 0, &air)));
  assert_true (isnan (hut_duct_friction_pa (1, 0.1, -1, 0, &air)));
  assert_true (isnan (hut_duct_friction_pa (1, 0.1, 1, -1, &air)));
  assert_true (isnan (hut_friction_ratio (0, 0)));
  assert_true (isnan (hut_friction_colebrook_ratio (INFINITY, 0)));
  assert_near (hut_duct_friction_pa (0, 0.1, 1, 0, &air), 0, 0);
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (textbook_warm_air_in_150_m_of_plastic_duct),
    cmocka_unit_test (textbook_oil_in_500_m_of_cast_iron),
    cmocka_unit_test (the_colebrook_root_satisfies_its_equation_and_lies_near_the_explicit_ones),
    cmocka_unit_test (smooth_pipes_lie_near_blasius),
    cmocka_unit_test (
        the_loss_never_falls_with_flow_length_or_roughness_nor_grows_with_the_diameter),
    cmocka_unit_test (laminar_loss_is_that_of_hagen_and_poiseuille),
    cmocka_unit_test (a_square_duct_counts_with_its_side),
    cmocka_unit_test (what_is_no_duct_gives_no_number),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}

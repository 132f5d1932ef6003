/* tests/physics/test-plate-bend.c: plates: two worked in full, and what must always hold.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "config.h"
#include "hut-assert.h"
#include "physics/hut-beam.h"
#include "physics/hut-plate-bend.h"

static void
tell (const char *what,
      double computed,
      double by_hand)
{
  char is[32], must[32];

  printf ("  %-28s %12s %12s\n", what, g_ascii_formatd (is, sizeof is, "%.6g", computed),
          g_ascii_formatd (must, sizeof must, "%.6g", by_hand));
}

/* A window of acrylic, 500 x 500 x 3 mm, on all edges, under its own weight. By hand: q =
 * 1190 9.80665 0.003 = 35.010 Pa; Roark, table 11.4 case 1a: alpha 0.0444, beta 0.2874; y =
 * 0.0444 35.010 0.5^4 / (3e9 0.003^3) = 1.1994 mm; sigma = 0.2874 35.010 0.5^2 / 0.003^2 = 0.2795
 * MPa. */
static void
acrylic_window_worked_in_full (void **state)
{
  const HutPlateSheet window
      = { HUT_PLATE_SUPPORTED, 0.5, 0.5, 0.003, 3e9, HUT_POISSON_TABLE_RATIO };
  const double load_pa = hut_own_weight_pa (1190, 0.003);

  printf ("acrylic 500 x 500 x 3 mm, supported, own weight (Roark 11.4 case 1a)\n");
  tell ("load, Pa", load_pa, 35.010);
  tell ("alpha", hut_plate_sag_ratio (HUT_PLATE_SUPPORTED, 1, 0.3), 0.0444);
  tell ("sag, mm", hut_plate_sag_m (&window, load_pa) * 1e3, 1.1994);
  tell ("stress, MPa", hut_plate_stress_pa (&window, load_pa) / 1e6, 0.2795);
  assert_near (load_pa, 35.010, 0.001);
  assert_near (hut_plate_sag_m (&window, load_pa) * 1e3, 1.1994, 0.002);
  assert_near (hut_plate_stress_pa (&window, load_pa) / 1e6, 0.2795, 0.0003);
}

/* A lid of plywood, 600 x 400 x 6 mm, held round its edges, with 20 N spread over it. By hand: q =
 * 680 9.80665 0.006 + 20 / 0.24 = 123.344 Pa; a / b = 1.5: alpha between 0.0226 (1.4) and 0.0251
 * (1.6), Roark table 11.4 case 8a, from memory: 0.0240; y = 0.0240 123.344 0.4^4 / (8.75e9 0.006^3)
 * = 0.0401 mm. */
static void
plywood_lid_worked_in_full (void **state)
{
  const HutPlateSheet lid = { HUT_PLATE_CLAMPED, 0.6, 0.4, 0.006, 8.75e9, HUT_POISSON_TABLE_RATIO };
  const double load_pa = hut_own_weight_pa (680, 0.006) + 20 / 0.24;

  printf ("plywood 600 x 400 x 6 mm, clamped, own weight and 20 N (Roark 11.4 case 8a)\n");
  tell ("load, Pa", load_pa, 123.344);
  tell ("alpha", hut_plate_sag_ratio (HUT_PLATE_CLAMPED, 1.5, 0.3), 0.0240);
  tell ("sag, mm", hut_plate_sag_m (&lid, load_pa) * 1e3, 0.0401);
  assert_near (load_pa, 123.344, 0.001);
  assert_near (hut_plate_sag_m (&lid, load_pa) * 1e3, 0.0401, 0.0002);
}

/* Timoshenko, Woinowsky-Krieger 1959, table 8, c to three digits; sqrt of nothing: alpha = 12 (1 -
 * nu2) c. */
static void
the_series_meets_the_classical_coefficients (void **state)
{
  static const double rows[][2]
      = { { 1, 0.00406 }, { 1.2, 0.00565 }, { 1.5, 0.00772 }, { 2, 0.01013 },
          { 3, 0.01223 }, { 4, 0.01282 },   { 5, 0.01297 } };

  for (guint i = 0; i < G_N_ELEMENTS (rows); i++)
    assert_near (hut_plate_sag_ratio (HUT_PLATE_SUPPORTED, rows[i][0], 0.3) / 10.92, rows[i][1],
                 6e-6);
}

static void
a_long_plate_is_a_beam_across (void **state)
{
  const HutPlateSheet plate = { HUT_PLATE_SUPPORTED, 4, 0.4, 0.006, 9e9, 0.3 };
  HutPlateSheet held = plate;
  /* A strip of 1 m width of it, stiffer by 1 / (1 - nu2). */
  const double bending = hut_strip_bending_n_m2 (9e9, 1, 0.006) / (1 - 0.3 * 0.3);

  held.edges = HUT_PLATE_CLAMPED;
  held.width_m = 1.6;
  assert_near (hut_plate_sag_m (&plate, 100)
                   / hut_beam_even_sag_m (HUT_BEAM_SUPPORTED, 0.4, 100, bending),
               1, 2e-3);
  assert_near (hut_plate_sag_m (&held, 100)
                   / hut_beam_even_sag_m (HUT_BEAM_FIXED, 0.4, 100, bending),
               1, 0.02);
}

static void
clamped_plates_meet_the_published_alpha_at_all_side_ratios (void **state)
{
  /* Roark, table 11.4 case 8a, from memory, checked by another program's solution. */
  static const double rows[][3]
      = { { 1.2, 0.0188, 0.3834 }, { 1.6, 0.0251, 0.4680 }, { 1.8, 0.0267, 0.4872 } };

  for (guint i = 0; i < G_N_ELEMENTS (rows); i++)
    {
      assert_near (hut_plate_sag_ratio (HUT_PLATE_CLAMPED, rows[i][0], 0.3), rows[i][1], 1e-4);
      assert_near (hut_plate_stress_ratio (HUT_PLATE_CLAMPED, rows[i][0], 0.3), rows[i][2], 1e-3);
    }
}

static void
longer_sides_sag_more_and_clamping_less (void **state)
{
  double supported = 0, clamped = 0;

  /* From about 2.7 on a clamped plate sags a trifle less again, towards that of a strip. */
  for (double side = 1; side < 2.55; side += 0.1)
    {
      const double more = hut_plate_sag_ratio (HUT_PLATE_SUPPORTED, side, 0.3);
      const double held = hut_plate_sag_ratio (HUT_PLATE_CLAMPED, side, 0.3);

      assert_true (more > supported && held > clamped && held < more);
      supported = more;
      clamped = held;
    }
}

static void
what_is_no_plate_gives_no_number (void **state)
{
  const HutPlateSheet flat = { HUT_PLATE_SUPPORTED, 0.5, 0, 0.003, 3e9, 0.3 };

  assert_true (isnan (hut_plate_sag_m (&flat, 1)));
  assert_true (isnan (hut_plate_stress_pa (&flat, 1)));
  assert_true (isnan (hut_plate_sag_ratio (HUT_PLATE_SUPPORTED, 0.5, 0.3)));
  assert_true (isnan (hut_plate_sag_ratio (HUT_PLATE_CLAMPED, 1, 0.6)));
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (acrylic_window_worked_in_full),
    cmocka_unit_test (plywood_lid_worked_in_full),
    cmocka_unit_test (the_series_meets_the_classical_coefficients),
    cmocka_unit_test (a_long_plate_is_a_beam_across),
    cmocka_unit_test (clamped_plates_meet_the_published_alpha_at_all_side_ratios),
    cmocka_unit_test (longer_sides_sag_more_and_clamping_less),
    cmocka_unit_test (what_is_no_plate_gives_no_number),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}

/* tests/geom/test-geom.c: the grid, points and the error domain.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "config.h"
#include "geom/hut-geom.h"
#include "hut-assert.h"
#include <locale.h>

static void
snapping_gives_the_double_of_the_decimal (void **state)
{
  assert_true (hut_snap_mm (0.1 + 0.2) == 0.3);
  assert_true (hut_snap_mm (12.3454) == 12.345);
  assert_true (hut_snap_mm (12.3456) == 12.346);
  assert_true (hut_snap_mm (-7.0004) == -7.0);
  assert_true (hut_snap_mm (99999.9994) == 99999.999); /* 100 m */
}

static void
halves_are_snapped_away_from_zero_so_mirrored_outlines_stay_mirrored (void **state)
{
  assert_true (hut_snap_mm (0.0005) == 0.001);
  assert_true (hut_snap_mm (-0.0005) == -0.001);
}

static void
snapping_never_gives_negative_zero (void **state)
{
  assert_false (signbit (hut_snap_mm (-0.0)));
  assert_false (signbit (hut_snap_mm (-0.0002)));
  assert_true (hut_snap_mm (-0.0002) == 0.0);
}

static void
snapping_is_idempotent_on_a_metre_of_grid (void **state)
{
  for (int i = -1000000; i <= 1000000; i += 7)
    {
      const double value_mm = i / 1000.0;

      if (hut_snap_mm (value_mm) != value_mm)
        fail_msg ("%.17g does not stay", value_mm);
    }
}

static void
not_finite_stays_not_finite (void **state)
{
  assert_true (isnan (hut_snap_mm (NAN)));
  assert_true (isinf (hut_snap_mm (INFINITY)));
}

static void
distance_of_3_and_4_is_5 (void **state)
{
  assert_near_mm (hut_point_distance_mm ((HutPoint) { 1, 2 }, (HutPoint) { 4, -2 }), 5, 0);
  assert_near_mm (hut_point_distance_mm ((HutPoint) { 1, 2 }, (HutPoint) { 1, 2 }), 0, 0);
}

static void
vectors_follow_the_right_hand (void **state)
{
  const HutPoint right = { 1, 0 };
  const HutPoint up = hut_point_left (right);
  const HutPoint unit = hut_point_unit ((HutPoint) { 3, -4 });

  assert_near (up.u, 0, 0);
  assert_near (up.v, 1, 0);
  assert_near (hut_point_cross (right, up), 1, 0);
  assert_near (hut_point_dot (right, up), 0, 0);
  assert_near (unit.u, 0.6, 1e-16);
  assert_near (unit.v, -0.8, 1e-16);
  assert_near_mm (hut_point_along ((HutPoint) { 1, 1 }, unit, 10).v, -7, 1e-14);
  assert_near_mm (hut_point_minus ((HutPoint) { 1, 5 }, (HutPoint) { 4, 1 }).u, -3, 0);
}

static void
place_reads_the_same_in_every_locale (void **state)
{
  static const char *const locales[] = { "C", "de_DE.UTF-8", "fr_FR.UTF-8" };

  for (guint i = 0; i < G_N_ELEMENTS (locales); i++)
    {
      g_autofree char *text = NULL;

      setlocale (LC_ALL, locales[i]); /* a locale that is not installed leaves the one before */
      text = hut_point_dup_text ((HutPoint) { -12.3, 4.0004 });
      assert_string_equal (text, "(-12.300, 4.000) mm");
    }
  setlocale (LC_ALL, "C");
}

static void
error_domain_has_its_name (void **state)
{
  assert_string_equal (g_quark_to_string (HUT_GEOM_ERROR), "hut-geom-error-quark");
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (snapping_gives_the_double_of_the_decimal),
    cmocka_unit_test (halves_are_snapped_away_from_zero_so_mirrored_outlines_stay_mirrored),
    cmocka_unit_test (snapping_never_gives_negative_zero),
    cmocka_unit_test (snapping_is_idempotent_on_a_metre_of_grid),
    cmocka_unit_test (not_finite_stays_not_finite),
    cmocka_unit_test (distance_of_3_and_4_is_5),
    cmocka_unit_test (vectors_follow_the_right_hand),
    cmocka_unit_test (place_reads_the_same_in_every_locale),
    cmocka_unit_test (error_domain_has_its_name),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}

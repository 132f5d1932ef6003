/* tests/geom/test-flatten.c: paths as points.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "config.h"
#include "geom/hut-flatten.h"
#include "hut-assert.h"

static HutPoint
point (const GArray *points,
       guint index)
{
  return g_array_index (points, HutPoint, index % points->len);
}

static void
lines_keep_their_corners_and_do_not_repeat_the_first (void **state)
{
  g_autoptr(HutPath) path = hut_path_new_rect ((HutRect) { 1, 2, 4, 6 }, 0);
  g_autoptr(GArray) points = hut_path_dup_flat (path, NULL);

  assert_int_equal (points->len, 4);
  assert_near_mm (point (points, 0).u, 1, 0);
  assert_near_mm (point (points, 0).v, 2, 0);
  assert_near_mm (point (points, 3).u, 1, 0);
  assert_near_mm (point (points, 3).v, 6, 0);
}

static void
chords_stay_within_the_chord_error_and_points_on_the_circle (void **state)
{
  static const double radii_mm[] = { 0.01, 0.5, 3, 15, 120, 2500 };

  for (guint i = 0; i < G_N_ELEMENTS (radii_mm); i++)
    {
      const HutPoint centre = { 40, -7 };
      g_autoptr(HutPath) path = hut_path_new_circle (centre, radii_mm[i]);
      g_autoptr(GArray) points = hut_path_dup_flat (path, NULL);
      double worst_mm = 0;

      for (guint j = 0; j < points->len; j++)
        {
          const HutPoint a = point (points, j), b = point (points, j + 1);
          const HutPoint middle = { (a.u + b.u) / 2, (a.v + b.v) / 2 };

          assert_near_mm (hut_point_distance_mm (centre, a), radii_mm[i],
                          1e-12 * (radii_mm[i] + 40));
          worst_mm = fmax (worst_mm, radii_mm[i] - hut_point_distance_mm (centre, middle));
        }
      if (worst_mm > HUT_CHORD_MM + 1e-12)
        fail_msg ("radius %g: chord error %g", radii_mm[i], worst_mm);
      /* Nor is it wasteful: one step less would be too coarse, or is an octagon. */
      assert_true (points->len == 8 || worst_mm > HUT_CHORD_MM * 0.8);
    }
}

static void
circle_of_radius_10_has_the_number_of_steps_of_the_formula (void **state)
{
  /* n = ceil (pi / acos (1 - e / r)); e = 0.002, r = 10: pi / 0.0200003 = 157.08; two halves of
   * 79 */
  g_autoptr(HutPath) path = hut_path_new_circle ((HutPoint) { 0, 0 }, 10);
  g_autoptr(GArray) points = hut_path_dup_flat (path, NULL);

  assert_int_equal (points->len, 158);
}

static void
arc_run_the_other_way_has_the_same_points_to_the_bit (void **state)
{
  g_autoptr(HutPath) path = hut_path_new_rect ((HutRect) { 0.1, 0.3, 47.7, 31.9 }, 7.3);
  g_autoptr(HutPath) back = hut_path_copy (path);

  hut_path_reverse (back);

  g_autoptr(GArray) points = hut_path_dup_flat (path, NULL);
  g_autoptr(GArray) back_points = hut_path_dup_flat (back, NULL);
  const guint count = points->len;
  guint offset = 0;

  assert_int_equal (back_points->len, count);
  while (offset < count && (point (back_points, offset).u != point (points, 0).u
                            || point (back_points, offset).v != point (points, 0).v))
    offset++;
  assert_true (offset < count);
  for (guint i = 0; i < count; i++)
    {
      const HutPoint a = point (points, i), b = point (back_points, offset + count - i);

      assert_true (a.u == b.u && a.v == b.v);
    }
}

static void
path_without_corners_has_no_points (void **state)
{
  g_autoptr(HutPath) path = hut_path_new ();
  g_autoptr(GArray) points = hut_path_dup_flat (path, NULL);

  assert_int_equal (points->len, 0);
}

static void
arc_without_chord_is_refused_with_its_place (void **state)
{
  g_autoptr(HutPath) path = hut_path_new_rect ((HutRect) { 1, 2, 4, 6 }, 0);
  g_autoptr(GError) error = NULL;

  hut_path_append (path, (HutPoint) { 1, 2 }, 0.5, HUT_EDGE_PLAIN);
  assert_null (hut_path_dup_flat (path, &error));
  assert_true (g_error_matches (error, HUT_GEOM_ERROR, HUT_GEOM_ERROR_NO_CIRCLE));
  assert_non_null (strstr (error->message, "(1.000, 2.000) mm"));
}

static void
numbers_that_are_not_finite_are_refused (void **state)
{
  static const HutVertex bad[] = {
    { { NAN, 0 }, 0, HUT_EDGE_PLAIN },
    { { 0, INFINITY }, 0, HUT_EDGE_PLAIN },
    { { 0, 0 }, NAN, HUT_EDGE_PLAIN },
  };

  for (guint i = 0; i < G_N_ELEMENTS (bad); i++)
    {
      g_autoptr(HutPath) path = hut_path_new_rect ((HutRect) { 1, 2, 4, 6 }, 0);
      g_autoptr(GError) error = NULL;

      hut_path_append (path, bad[i].p, bad[i].bulge, bad[i].kind);
      assert_null (hut_path_dup_flat (path, &error));
      assert_true (g_error_matches (error, HUT_GEOM_ERROR, HUT_GEOM_ERROR_INVALID));
    }
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (lines_keep_their_corners_and_do_not_repeat_the_first),
    cmocka_unit_test (chords_stay_within_the_chord_error_and_points_on_the_circle),
    cmocka_unit_test (circle_of_radius_10_has_the_number_of_steps_of_the_formula),
    cmocka_unit_test (arc_run_the_other_way_has_the_same_points_to_the_bit),
    cmocka_unit_test (path_without_corners_has_no_points),
    cmocka_unit_test (arc_without_chord_is_refused_with_its_place),
    cmocka_unit_test (numbers_that_are_not_finite_are_refused),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}

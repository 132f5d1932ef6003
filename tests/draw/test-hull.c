/* tests/draw/test-hull.c: the convex hull of points in the plane.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "draw/hut-hull.h"
#include "hut-assert.h"
#include "hut-random.h"

static GArray *
points_of (const HutPoint *points, guint count)
{
  GArray *self = g_array_new (FALSE, FALSE, sizeof (HutPoint));

  g_array_append_vals (self, points, count);
  return self;
}

static void
points_inside_and_on_edges_are_no_corners (void **state)
{
  const HutPoint given[]
      = { { 2, 1 }, { 0, 0 }, { 4, 0 }, { 2, 0 }, { 4, 4 }, { 0, 4 }, { 4, 4 }, { 1, 3 } };
  const HutPoint wanted[] = { { 0, 0 }, { 4, 0 }, { 4, 4 }, { 0, 4 } };
  g_autoptr (GArray) points = points_of (given, G_N_ELEMENTS (given));
  g_autoptr (GArray) hull = hut_hull_new (points, 0.0);

  assert_int_equal (hull->len, G_N_ELEMENTS (wanted));
  for (guint i = 0; i < hull->len; i++)
    {
      assert_near (g_array_index (hull, HutPoint, i).u, wanted[i].u, 0.0);
      assert_near (g_array_index (hull, HutPoint, i).v, wanted[i].v, 0.0);
    }
}

static void
a_grown_square_has_its_corners_further_out (void **state)
{
  const HutPoint given[] = { { -3, -4 }, { 3, -4 }, { 3, 4 }, { -3, 4 } };
  g_autoptr (GArray) points = points_of (given, G_N_ELEMENTS (given));
  g_autoptr (GArray) hull = hut_hull_new (points, 5.0);

  /* 3, 4, 5: each corner is 5 from the middle, so 5 more doubles it. */
  assert_near (g_array_index (hull, HutPoint, 0).u, -6.0, 1e-12);
  assert_near (g_array_index (hull, HutPoint, 0).v, -8.0, 1e-12);
}

static void
points_on_a_line_have_no_inside (void **state)
{
  const HutPoint given[] = { { 0, 0 }, { 1, 1 }, { 2, 2 } };
  g_autoptr (GArray) points = points_of (given, G_N_ELEMENTS (given));
  g_autoptr (GArray) nothing = points_of (NULL, 0);
  g_autoptr (GArray) hull = hut_hull_new (points, 1.0), empty = hut_hull_new (nothing, 1.0);

  assert_true (hull->len < 3);
  assert_int_equal (empty->len, 0);
}

static void
every_point_is_left_of_every_edge (void **state)
{
  HutRandom random;

  hut_random_init (&random, 7);
  for (int round = 0; round < 300; round++)
    {
      g_autoptr (GArray) points = g_array_new (FALSE, FALSE, sizeof (HutPoint));
      g_autoptr (GArray) hull = NULL;

      for (guint i = 0; i < 3 + hut_random_below (&random, 30); i++)
        {
          /* Few values, so that many points share lines. */
          const HutPoint p = { hut_random_below (&random, 9), hut_random_below (&random, 9) };

          g_array_append_val (points, p);
        }
      hull = hut_hull_new (points, 0.0);
      for (guint i = 0; hull->len >= 3 && i < hull->len; i++)
        {
          const HutPoint a = g_array_index (hull, HutPoint, i);
          const HutPoint b = g_array_index (hull, HutPoint, (i + 1) % hull->len);

          for (guint p = 0; p < points->len; p++)
            assert_true (hut_point_cross (hut_point_minus (b, a),
                                          hut_point_minus (g_array_index (points, HutPoint, p), a))
                         >= 0.0);
        }
    }
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (points_inside_and_on_edges_are_no_corners),
    cmocka_unit_test (a_grown_square_has_its_corners_further_out),
    cmocka_unit_test (points_on_a_line_have_no_inside),
    cmocka_unit_test (every_point_is_left_of_every_edge),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}

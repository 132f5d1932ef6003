/* tests/checks/test-border.c: how near two borders come to each other.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "config.h"
#include "checks/hut-border.h"
#include "geom/hut-geos.h"
#include "hut-assert.h"
#include "hut-random.h"

static HutPath *
rect (double u0,
      double v0,
      double u1,
      double v1)
{
  return hut_path_new_rect ((HutRect) { u0, v0, u1, v1 }, 0.0);
}

static double
gap_of (HutPath *a,
        HutPath *b)
{
  g_autoptr(HutPath) p = a, q = b;
  HutWeb gap, back;

  assert_true (hut_border_find_gap (p, q, INFINITY, &gap));
  assert_true (hut_border_find_gap (q, p, INFINITY, &back));
  assert_near_mm (back.width_mm, gap.width_mm, 1e-9);
  assert_near_mm (hut_point_distance_mm (gap.a, gap.b), gap.width_mm, 1e-9);
  return gap.width_mm;
}

static void
gaps_worked_out_by_hand (void **state)
{
  /* side to side; corner to corner 3, 4, 5; circle to side; circle to corner (3, 4, 5 less 2);
   * circle to circle. */
  assert_near_mm (gap_of (rect (0, 0, 10, 10), rect (13, 0, 20, 10)), 3, 1e-12);
  assert_near_mm (gap_of (rect (0, 0, 10, 10), rect (13, 14, 20, 20)), 5, 1e-12);
  assert_near_mm (gap_of (rect (0, 0, 10, 10), hut_path_new_circle ((HutPoint) { 5, 18 }, 3)), 5,
                  1e-9);
  assert_near_mm (gap_of (rect (0, 0, 10, 10), hut_path_new_circle ((HutPoint) { 13, 14 }, 2)), 3,
                  1e-9);
  assert_near_mm (gap_of (hut_path_new_circle ((HutPoint) { 0, 0 }, 2),
                          hut_path_new_circle ((HutPoint) { 6, 8 }, 3)),
                  5, 1e-9);
}

static void
inside_counts_as_the_gap_of_the_borders (void **state)
{
  /* A circle of 3 in one of 10, 4 off its centre: 10 - 4 - 3. In a square: 10 - 3. */
  assert_near_mm (gap_of (hut_path_new_circle ((HutPoint) { 0, 0 }, 10),
                          hut_path_new_circle ((HutPoint) { 4, 0 }, 3)),
                  3, 1e-9);
  assert_near_mm (gap_of (rect (-10, -10, 10, 10), hut_path_new_circle ((HutPoint) { 0, 0 }, 3)),
                  7, 1e-9);
  /* Same centre: all around the same. */
  assert_near_mm (gap_of (hut_path_new_circle ((HutPoint) { 0, 0 }, 10),
                          hut_path_new_circle ((HutPoint) { 0, 0 }, 3)),
                  7, 1e-9);
}

static void
borders_that_cross_or_touch_have_no_gap (void **state)
{
  assert_near_mm (gap_of (rect (0, 0, 10, 10), rect (5, 5, 15, 15)), 0, 0);
  assert_near_mm (gap_of (rect (0, 0, 10, 10), hut_path_new_circle ((HutPoint) { 10, 5 }, 2)), 0,
                  0);
  assert_near_mm (gap_of (hut_path_new_circle ((HutPoint) { 0, 0 }, 5),
                          hut_path_new_circle ((HutPoint) { 6, 0 }, 5)),
                  0, 0);
  assert_near_mm (gap_of (rect (0, 0, 10, 10), rect (10, 2, 15, 4)), 0, 0);
  /* A bar across another one: no corner of either is near. */
  assert_near_mm (gap_of (rect (-50, -1, 50, 1), rect (-1, -50, 1, 50)), 0, 0);
}

static void
limit_leaves_the_gap_untouched (void **state)
{
  g_autoptr(HutPath) a = rect (0, 0, 10, 10), b = rect (13, 0, 20, 10);
  HutWeb gap = { .width_mm = 7 };

  assert_false (hut_border_find_gap (a, b, 3, &gap));
  assert_near_mm (gap.width_mm, 7, 0);
  assert_true (hut_border_find_gap (a, b, 3.001, &gap));
  assert_near_mm (gap.width_mm, 3, 1e-12);
}

static void
empty_path_has_no_gap (void **state)
{
  g_autoptr(HutPath) a = rect (0, 0, 10, 10), b = hut_path_new ();
  HutWeb gap;

  assert_false (hut_border_find_gap (a, b, INFINITY, &gap));
}

static void
segment_against_a_path (void **state)
{
  g_autoptr(HutPath) a = hut_path_new_circle ((HutPoint) { 0, 0 }, 10);
  const HutSegment line = { { 16, -50 }, { 16, 50 }, 0.0, HUT_EDGE_PLAIN };
  const HutSegment through = { { 3, -50 }, { 3, 50 }, 0.0, HUT_EDGE_PLAIN };
  HutWeb gap;

  assert_true (hut_border_find_segment_gap (&line, a, INFINITY, &gap));
  assert_near_mm (gap.width_mm, 6, 1e-9);
  assert_near_mm (gap.a.u, 16, 1e-9);
  assert_near_mm (gap.b.u, 10, 1e-9);
  assert_true (hut_border_find_segment_gap (&through, a, INFINITY, &gap));
  assert_near_mm (gap.width_mm, 0, 0);
}

/* A rectangle with round corners or a circle, turned by any angle. */
static HutPath *
random_path (HutRandom *random)
{
  const double u = hut_random_between (random, -60, 60), v = hut_random_between (random, -60, 60);
  const double w = hut_random_between (random, 2, 60), h = hut_random_between (random, 2, 60);
  const HutPlacement turn = { .turn_rad = hut_random_between (random, 0, 6), .shift = { u, v } };
  g_autoptr(HutPath) plain = hut_random_chance (random, 0.3)
                                  ? hut_path_new_circle ((HutPoint) { 0, 0 }, w / 2)
                                  : hut_path_new_rect ((HutRect) { -w / 2, -h / 2, w / 2, h / 2 },
                                                       hut_random_chance (random, 0.5)
                                                           ? hut_random_between (random, 0.1, 10)
                                                           : 0.0);

  return hut_path_dup_placed (plain, &turn);
}

static void
random_shapes_agree_with_geos (void **state)
{
  guint apart = 0, nested = 0, crossing = 0;
  HutRandom random;

  hut_random_init (&random, 77);
  for (guint i = 0; i < 1500; i++)
    {
      g_autoptr(HutPath) a = random_path (&random), b = random_path (&random);
      g_autoptr(HutRegion) p = hut_region_new (hut_path_copy (a)),
                            q = hut_region_new (hut_path_copy (b));
      const double geos_mm = hut_geos_distance_mm (p, q, NULL);
      HutWeb gap;

      assert_true (hut_border_find_gap (a, b, INFINITY, &gap));
      if (geos_mm > 0.0)
        {
          /* Flattened arcs are up to HUT_CHORD_MM off on either side. */
          if (fabs (gap.width_mm - geos_mm) > 2 * HUT_CHORD_MM)
            fail_msg ("pair %u: gap %g, GEOS %g", i, gap.width_mm, geos_mm);
          apart++;
        }
      else if (gap.width_mm > 2 * HUT_CHORD_MM)
        {
          /* GEOS looks at the areas: one must lie wholly in the other. */
          const double common = hut_geos_op_area_mm2 (p, q, HUT_GEOS_INTERSECTION, NULL);

          assert_near (common, fmin (hut_region_area_mm2 (p), hut_region_area_mm2 (q)), 0.5);
          nested++;
        }
      else
        crossing++;
    }
  assert_true (apart > 200 && nested > 20 && crossing > 200);
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (gaps_worked_out_by_hand),
    cmocka_unit_test (inside_counts_as_the_gap_of_the_borders),
    cmocka_unit_test (borders_that_cross_or_touch_have_no_gap),
    cmocka_unit_test (limit_leaves_the_gap_untouched),
    cmocka_unit_test (empty_path_has_no_gap),
    cmocka_unit_test (segment_against_a_path),
    cmocka_unit_test (random_shapes_agree_with_geos),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}

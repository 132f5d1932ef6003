/* tests/bench/test-tour.c: the bound of a tour is never over the shortest one, and near it.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "bench/hut-tour.h"
#include "hut-assert.h"
#include "hut-random.h"

#define POINTS_MAX 7
#define RANDOM_TOURS 40

/* By trying all orders. */
static double
shortest_mm (HutPoint at,
             const HutPoint *points,
             const guint *groups,
             guint count,
             guint done)
{
  double least_mm = done + 1 == 1u << count ? 0.0 : G_MAXDOUBLE;

  for (guint i = 0; i < count; i++)
    {
      gboolean ready = (done >> i & 1) == 0;

      for (guint k = 0; groups != NULL && k < count; k++)
        ready &= (done >> k & 1) != 0 || groups[k] >= groups[i];
      if (ready)
        least_mm = MIN (least_mm, hut_point_distance_mm (at, points[i])
                                      + shortest_mm (points[i], points, groups, count,
                                                     done | 1u << i));
    }
  return least_mm;
}

/* From (0, 0) along three sides of a square of 10: 30. With its far corner first: 14.14 + 10 + 10. */
static void
square_is_bounded_by_three_sides (void **state)
{
  const HutPoint points[] = { { 10, 0 }, { 10, 10 }, { 0, 10 } };

  assert_near_mm (hut_tour_bound_mm (points, NULL, 3), 30.0, 1e-3);
  assert_near_mm (hut_tour_bound_mm (points, NULL, 0), 0.0, 0.0);
  assert_near_mm (hut_tour_bound_mm (points, NULL, 1), 10.0, 1e-9);
}

/* The far point first, then back to the near one: 10 + 9. */
static void
groups_are_visited_one_after_the_other (void **state)
{
  const HutPoint points[] = { { 1, 0 }, { 10, 0 } };
  const guint groups[] = { 1, 0 };

  assert_near_mm (hut_tour_bound_mm (points, groups, 2), 19.0, 1e-3);
}

static void
bound_of_random_points_is_not_over_the_shortest_way_and_near_it (void **state)
{
  double bounds_mm = 0.0, ways_mm = 0.0;

  for (guint64 seed = 1; seed <= RANDOM_TOURS; seed++)
    {
      HutPoint points[POINTS_MAX];
      guint groups[POINTS_MAX];
      HutRandom random;
      guint count;
      double way_mm, bound_mm;

      hut_random_init (&random, seed);
      count = 2 + hut_random_below (&random, POINTS_MAX - 1);
      for (guint i = 0; i < count; i++)
        {
          points[i] = (HutPoint) { hut_random_between (&random, 0, 100),
                                   hut_random_between (&random, 0, 100) };
          groups[i] = i < 2 ? i : hut_random_below (&random, 2);
        }
      way_mm = shortest_mm ((HutPoint) { 0, 0 }, points, seed % 2 ? groups : NULL, count, 0);
      bound_mm = hut_tour_bound_mm (points, seed % 2 ? groups : NULL, count);
      if (bound_mm > way_mm + 1e-6)
        fail_msg ("seed %" G_GUINT64_FORMAT ": bound %g, way %g", seed, bound_mm, way_mm);
      bounds_mm += bound_mm;
      ways_mm += way_mm;
    }
  assert_true (bounds_mm > 0.97 * ways_mm);
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (square_is_bounded_by_three_sides),
    cmocka_unit_test (groups_are_visited_one_after_the_other),
    cmocka_unit_test (bound_of_random_points_is_not_over_the_shortest_way_and_near_it),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}

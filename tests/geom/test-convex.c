/* tests/geom/test-convex.c: a region as convex pieces, with some room around it.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "geom/hut-convex.h"
#include "hut-assert.h"
#include "hut-random-shape.h"
#include "hut-random.h"

#define RANDOM_SHAPES 60
#define PROBES 200
#define ROUNDING_MM 1e-6

static double
piece_area_mm2 (const HutPoint *points,
                guint count)
{
  double area2_mm2 = 0.0;

  for (guint i = 0; i < count; i++)
    area2_mm2 += hut_point_cross (points[i], points[(i + 1) % count]);
  return area2_mm2 / 2.0;
}

static double
set_area_mm2 (const HutConvexSet *set)
{
  double area_mm2 = 0.0;

  for (guint i = 0; i < hut_convex_set_get_count (set); i++)
    {
      guint count;
      const HutPoint *points = hut_convex_set_get (set, i, &count);

      area_mm2 += piece_area_mm2 (points, count);
    }
  return area_mm2;
}

static gboolean
set_contains (const HutConvexSet *set,
              HutPoint p)
{
  for (guint i = 0; i < hut_convex_set_get_count (set); i++)
    {
      guint count;
      const HutPoint *points = hut_convex_set_get (set, i, &count);
      gboolean inside = TRUE;

      for (guint k = 0; inside && k < count; k++)
        {
          const HutPoint edge = hut_point_minus (points[(k + 1) % count], points[k]);

          inside = hut_point_cross (edge, hut_point_minus (p, points[k]))
                   >= -ROUNDING_MM * hypot (edge.u, edge.v);
        }
      if (inside)
        return TRUE;
    }
  return FALSE;
}

static void
assert_convex (const HutConvexSet *set)
{
  for (guint i = 0; i < hut_convex_set_get_count (set); i++)
    {
      guint count;
      const HutPoint *points = hut_convex_set_get (set, i, &count);

      assert_true (count >= 3);
      for (guint k = 0; k < count; k++)
        assert_true (hut_point_cross (hut_point_minus (points[(k + 1) % count], points[k]),
                                      hut_point_minus (points[(k + 2) % count],
                                                       points[(k + 1) % count]))
                     >= 0.0);
    }
}

static HutRegion *
region_of (const HutPoint *corners,
           guint count)
{
  HutPath *outer = hut_path_new ();

  for (guint i = 0; i < count; i++)
    hut_path_append (outer, corners[i], 0.0, HUT_EDGE_PLAIN);
  return hut_region_new (outer);
}

static void
rectangle_is_one_piece_that_grows_with_mitred_corners (void **state)
{
  g_autoptr(HutRegion) region
      = hut_region_new (hut_path_new_rect ((HutRect) { 0, 0, 30, 20 }, 0.0));
  g_autoptr(HutConvexSet) set = hut_convex_set_new_around (region, 2.5, 0.0);
  const HutRect bounds = hut_convex_set_bounds (set);

  assert_int_equal (hut_convex_set_get_count (set), 1);
  assert_near (set_area_mm2 (set), 35.0 * 25.0, 1e-9);
  assert_near_mm (bounds.u0, -2.5, 1e-9);
  assert_near_mm (bounds.v1, 22.5, 1e-9);
}

/* 200 x 200 with a hole of 160 x 160: 14,400 mm2; grown by 5: 210 x 210 - 150 x 150 = 21,600. */
static void
hole_stays_free_and_shrinks_by_the_room (void **state)
{
  g_autoptr(HutRegion) region
      = hut_region_new (hut_path_new_rect ((HutRect) { 0, 0, 200, 200 }, 0.0));

  hut_region_take_hole (region, hut_path_new_rect ((HutRect) { 20, 20, 180, 180 }, 0.0));

  g_autoptr(HutConvexSet) plain = hut_convex_set_new_around (region, 0.0, 0.0);
  g_autoptr(HutConvexSet) grown = hut_convex_set_new_around (region, 5.0, 0.0);

  assert_near (set_area_mm2 (plain), 14400.0, 1e-6);
  assert_near (set_area_mm2 (grown), 21600.0, 1e-6);
  assert_false (set_contains (grown, (HutPoint) { 100, 100 }));
  assert_true (set_contains (grown, (HutPoint) { 24, 100 }));
}

/* Slots 6 wide are filled by a closing of 4 (up to 8), not by one of 2. A hole of 7 likewise. */
static void
notches_and_holes_narrower_than_twice_the_closing_are_filled (void **state)
{
  const HutPoint corners[] = { { 0, 0 }, { 60, 0 }, { 60, 40 }, { 33, 40 }, { 33, 20 },
                               { 27, 20 }, { 27, 40 }, { 0, 40 } };
  g_autoptr(HutRegion) region = region_of (corners, G_N_ELEMENTS (corners));

  hut_region_take_hole (region, hut_path_new_rect ((HutRect) { 5, 5, 12, 15 }, 0.0));

  g_autoptr(HutConvexSet) filled = hut_convex_set_new_around (region, 0.0, 4.0);
  g_autoptr(HutConvexSet) open = hut_convex_set_new_around (region, 0.0, 2.0);

  assert_int_equal (hut_convex_set_get_count (filled), 1);
  assert_near (set_area_mm2 (filled), 2400.0, 1e-6);
  assert_near (set_area_mm2 (open), 2400.0 - 6.0 * 20.0 - 7.0 * 10.0, 1e-6);
}

/* A corner set back by 3 x 4 is squared off when both are at most the closing. */
static void
short_steps_of_corners_are_squared_off (void **state)
{
  const HutPoint corners[] = { { 0, 0 }, { 60, 0 }, { 60, 36 }, { 57, 36 }, { 57, 40 }, { 0, 40 } };
  g_autoptr(HutRegion) region = region_of (corners, G_N_ELEMENTS (corners));
  g_autoptr(HutConvexSet) squared = hut_convex_set_new_around (region, 0.0, 4.0);
  g_autoptr(HutConvexSet) stepped = hut_convex_set_new_around (region, 0.0, 3.9);

  assert_near (set_area_mm2 (squared), 2400.0, 1e-6);
  assert_near (set_area_mm2 (stepped), 2400.0 - 12.0, 1e-6);
}

/* The step at the end of the ring: whichever corner comes first, the result is the same. */
static void
step_is_squared_off_wherever_the_outline_begins (void **state)
{
  const HutPoint corners[] = { { 0, 0 }, { 60, 0 }, { 60, 36 }, { 57, 36 }, { 57, 40 }, { 0, 40 } };
  const guint count = G_N_ELEMENTS (corners);

  for (guint first = 0; first < count; first++)
    {
      HutPoint turned[G_N_ELEMENTS (corners)];

      for (guint i = 0; i < count; i++)
        turned[i] = corners[(first + i) % count];

      g_autoptr(HutRegion) region = region_of (turned, count);
      g_autoptr(HutConvexSet) set = hut_convex_set_new_around (region, 0.0, 4.0);

      assert_near (set_area_mm2 (set), 2400.0, 1e-6);
    }
}

/* A disc of 10: the tangents of 16 steps are a 32-gon or less around it, at most 2 % larger. */
static void
disc_is_covered_by_few_tangents (void **state)
{
  g_autoptr(HutRegion) region
      = hut_region_new (hut_path_new_circle ((HutPoint) { 0, 0 }, 10.0));
  g_autoptr(HutConvexSet) set = hut_convex_set_new_around (region, 0.0, 0.0);
  const double area_mm2 = set_area_mm2 (set);

  assert_int_equal (hut_convex_set_get_count (set), 1);
  assert_true (area_mm2 >= G_PI * 100.0 && area_mm2 <= 1.02 * G_PI * 100.0);
  for (guint i = 0; i < 360; i++)
    assert_true (set_contains (set, (HutPoint) { 10.0 * cos (i * G_PI / 180.0),
                                                 10.0 * sin (i * G_PI / 180.0) }));
}

static void
placed_set_is_turned_and_shifted (void **state)
{
  g_autoptr(HutRegion) region
      = hut_region_new (hut_path_new_rect ((HutRect) { 0, 0, 30, 20 }, 0.0));
  g_autoptr(HutConvexSet) set = hut_convex_set_new_around (region, 0.0, 0.0);
  const HutPlacement placement = { .turn_rad = G_PI_2, .shift = { 100, 7 } };
  g_autoptr(HutConvexSet) placed = hut_convex_set_dup_placed (set, &placement);
  const HutRect bounds = hut_convex_set_bounds (placed);

  assert_near_mm (bounds.u0, 80.0, 1e-9);
  assert_near_mm (bounds.u1, 100.0, 1e-9);
  assert_near_mm (bounds.v0, 7.0, 1e-9);
  assert_near_mm (bounds.v1, 37.0, 1e-9);
  assert_convex (placed);
}

/* A hole with corners of radius 8: a closing of 10 does not make them sharp. Grown by 3, the
 * nearest free point on the diagonal is 8 - 3 = 5 from the arc's centre (8, 8). */
static void
round_corners_of_a_hole_keep_their_room_when_notches_are_filled (void **state)
{
  g_autoptr(HutRegion) region
      = hut_region_new (hut_path_new_rect ((HutRect) { -50, -50, 150, 150 }, 0.0));
  const double at_mm = 8.0 - 5.0 / sqrt (2.0);

  hut_region_take_hole (region, hut_path_new_rect ((HutRect) { 0, 0, 100, 100 }, 8.0));

  g_autoptr(HutConvexSet) set = hut_convex_set_new_around (region, 3.0, 10.0);

  assert_true (set_contains (set, (HutPoint) { at_mm, at_mm }));
  assert_false (set_contains (set, (HutPoint) { 8.1, 8.1 }));
}

/* Any kind of random shape, off the grid. */
static HutRegion *
random_region (HutRandom *random)
{
  const guint kind = hut_random_below (random, 4);
  g_autoptr(HutRegion) region = kind == 0   ? hut_random_fingers (random, FALSE)
                                : kind == 1 ? hut_random_fingers (random, TRUE)
                                : kind == 2 ? hut_random_plate (random)
                                            : hut_random_bridge (random);

  return hut_random_placed (random, region);
}

/* Any point of the region is in a piece, and so is any point that is nearer than the room. */
static void
random_shapes_are_covered_with_their_room (void **state)
{
  const guint64 count = hut_random_seed_count (RANDOM_SHAPES);

  for (guint64 seed = hut_random_first_seed (); seed < hut_random_first_seed () + count; seed++)
    {
      HutRandom random;

      hut_random_init (&random, seed);

      g_autoptr(HutRegion) region = random_region (&random);
      const double grow_mm = hut_random_between (&random, 0.0, 4.0);
      g_autoptr(HutConvexSet) set
          = hut_convex_set_new_around (region, grow_mm, hut_random_between (&random, 0.0, 10.0));
      const HutRect box = hut_region_bounds (region);

      assert_convex (set);
      for (guint i = 0; i < PROBES; i++)
        {
          const HutPoint p = { hut_random_between (&random, box.u0, box.u1),
                               hut_random_between (&random, box.v0, box.v1) };
          const double turn_rad = hut_random_between (&random, 0.0, 2.0 * G_PI);
          const double by_mm = hut_random_between (&random, 0.0, grow_mm);
          const HutPoint q = { p.u + by_mm * cos (turn_rad), p.v + by_mm * sin (turn_rad) };

          if (hut_region_contains (region, p) && !set_contains (set, q))
            fail_msg ("seed %" G_GUINT64_FORMAT ": (%g, %g) is not covered", seed, q.u, q.v);
        }
    }
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (rectangle_is_one_piece_that_grows_with_mitred_corners),
    cmocka_unit_test (hole_stays_free_and_shrinks_by_the_room),
    cmocka_unit_test (notches_and_holes_narrower_than_twice_the_closing_are_filled),
    cmocka_unit_test (short_steps_of_corners_are_squared_off),
    cmocka_unit_test (step_is_squared_off_wherever_the_outline_begins),
    cmocka_unit_test (disc_is_covered_by_few_tangents),
    cmocka_unit_test (round_corners_of_a_hole_keep_their_room_when_notches_are_filled),
    cmocka_unit_test (placed_set_is_turned_and_shifted),
    cmocka_unit_test (random_shapes_are_covered_with_their_room),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}

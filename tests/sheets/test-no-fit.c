/* tests/sheets/test-no-fit.c: where one shape may not lie beside another one.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "sheets/hut-no-fit.h"
#include "geom/hut-geos.h"
#include "hut-assert.h"
#include "hut-random-shape.h"
#include "hut-random.h"

#define RANDOM_PAIRS 30
#define PROBES 60
/* Overlaps smaller than this are left to rounding, mm2. */
#define TOUCH_MM2 1e-3

static HutConvexSet *
rectangle (double width_mm,
           double height_mm)
{
  HutConvexSet *set = hut_convex_set_new ();
  const HutPoint corners[] = { { 0, 0 }, { width_mm, 0 }, { width_mm, height_mm },
                               { 0, height_mm } };

  hut_convex_set_append (set, corners, G_N_ELEMENTS (corners));
  return set;
}

/* A square of 200 around a free hole of 160. */
static HutConvexSet *
frame (void)
{
  g_autoptr(HutRegion) region
      = hut_region_new (hut_path_new_rect ((HutRect) { 0, 0, 200, 200 }, 0.0));

  hut_region_take_hole (region, hut_path_new_rect ((HutRect) { 20, 20, 180, 180 }, 0.0));
  return hut_convex_set_new_around (region, 0.0, 0.0);
}

/* 30 x 20 beside 100 x 50: forbidden are shifts in (-30, 100) x (-20, 50). */
static void
rectangles_forbid_the_sum_of_their_sizes (void **state)
{
  g_autoptr(HutConvexSet) resting = rectangle (100, 50);
  g_autoptr(HutConvexSet) moving = rectangle (30, 20);
  g_autoptr(HutNoFit) no_fit = hut_no_fit_new (resting, moving);

  assert_near_mm (no_fit->bounds.u0, -30.0, 1e-12);
  assert_near_mm (no_fit->bounds.u1, 100.0, 1e-12);
  assert_near_mm (no_fit->bounds.v0, -20.0, 1e-12);
  assert_near_mm (no_fit->bounds.v1, 50.0, 1e-12);
  assert_int_equal (hut_no_fit_get_walls (no_fit)->len, 4);
  assert_true (hut_no_fit_forbids (no_fit, (HutPoint) { 99.999, 49.999 }));
  assert_false (hut_no_fit_forbids (no_fit, (HutPoint) { 100, 10 }));
  assert_false (hut_no_fit_forbids (no_fit, (HutPoint) { -30, 10 }));
  assert_true (hut_no_fit_forbids (no_fit, (HutPoint) { 0, 0 }));
}

/* 80 x 80 in a hole of 160: its corner may be anywhere in [20, 100] x [20, 100]. */
static void
hole_takes_what_fits_into_it (void **state)
{
  g_autoptr(HutConvexSet) resting = frame ();
  g_autoptr(HutConvexSet) moving = rectangle (80, 80);
  g_autoptr(HutNoFit) no_fit = hut_no_fit_new (resting, moving);

  assert_false (hut_no_fit_forbids (no_fit, (HutPoint) { 20, 20 }));
  assert_false (hut_no_fit_forbids (no_fit, (HutPoint) { 100, 100 }));
  assert_false (hut_no_fit_forbids (no_fit, (HutPoint) { 60, 35 }));
  assert_true (hut_no_fit_forbids (no_fit, (HutPoint) { 19.99, 60 }));
  assert_true (hut_no_fit_forbids (no_fit, (HutPoint) { 60, 100.01 }));
}

/* 160 x 160 fits at one point only, which no area of free shifts would show. */
static void
exact_fit_is_kept_and_has_a_wall_that_leads_to_it (void **state)
{
  g_autoptr(HutConvexSet) resting = frame ();
  g_autoptr(HutConvexSet) moving = rectangle (160, 160);
  g_autoptr(HutNoFit) no_fit = hut_no_fit_new (resting, moving);
  gboolean found = FALSE;

  assert_false (hut_no_fit_forbids (no_fit, (HutPoint) { 20, 20 }));
  assert_true (hut_no_fit_forbids (no_fit, (HutPoint) { 20.001, 20 }));
  for (guint i = 0; i < hut_no_fit_get_walls (no_fit)->len; i++)
    {
      const HutPoint a = g_array_index (hut_no_fit_get_walls (no_fit), HutWall, i).a;

      found |= hut_point_distance_mm (a, (HutPoint) { 20, 20 }) < 1e-5;
    }
  assert_true (found);
}

/* Two squares of 10: the shifts that overlap are 20 x 20 about 0. At (4, 1) the way out is 6 to the
 * right; at (10, 0) they touch. */
static void
depth_is_the_way_out_of_the_piece (void **state)
{
  g_autoptr(HutConvexSet) square = hut_convex_set_new ();
  const HutPoint corners[] = { { 0, 0 }, { 10, 0 }, { 10, 10 }, { 0, 10 } };
  HutPoint out = { 7, 7 };

  hut_convex_set_append (square, corners, G_N_ELEMENTS (corners));

  g_autoptr(HutNoFit) no_fit = hut_no_fit_new (square, square);

  assert_near_mm (hut_no_fit_depth_mm (no_fit, (HutPoint) { 10, 0 }, &out), 0.0, 0.0);
  assert_near_mm (out.u, 7.0, 0.0);
  assert_near_mm (hut_no_fit_depth_mm (no_fit, (HutPoint) { 4, 1 }, &out), 6.0, 1e-9);
  assert_near_mm (out.u, 1.0, 1e-9);
  assert_near_mm (out.v, 0.0, 1e-9);
}

/* No wall runs inside a piece: its middle is a free shift. */
static void
walls_are_free_shifts (void **state)
{
  g_autoptr(HutConvexSet) resting = frame ();
  g_autoptr(HutConvexSet) moving = frame ();
  g_autoptr(HutNoFit) no_fit = hut_no_fit_new (resting, moving);

  assert_true (hut_no_fit_get_walls (no_fit)->len >= 4);
  for (guint i = 0; i < hut_no_fit_get_walls (no_fit)->len; i++)
    {
      const HutWall *wall = &g_array_index (hut_no_fit_get_walls (no_fit), HutWall, i);

      assert_false (hut_no_fit_forbids (no_fit, (HutPoint) { (wall->a.u + wall->b.u) / 2.0,
                                                             (wall->a.v + wall->b.v) / 2.0 }));
    }
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

/* GEOS's intersection of the true regions says the same, but for the slack and the tangents. */
static void
forbidden_shifts_of_random_shapes_are_those_at_which_geos_finds_an_overlap (void **state)
{
  const guint64 count = hut_random_seed_count (RANDOM_PAIRS);
  guint free_count = 0, overlap_count = 0;

  for (guint64 seed = hut_random_first_seed (); seed < hut_random_first_seed () + count; seed++)
    {
      HutRandom random;

      hut_random_init (&random, seed);

      g_autoptr(HutRegion) a = random_region (&random);
      g_autoptr(HutRegion) b = random_region (&random);
      g_autoptr(HutConvexSet) resting = hut_convex_set_new_around (a, 0.0, 0.0);
      g_autoptr(HutConvexSet) moving = hut_convex_set_new_around (b, 0.0, 0.0);
      g_autoptr(HutNoFit) no_fit = hut_no_fit_new (resting, moving);
      const HutRect bounds = no_fit->bounds;

      for (guint i = 0; i < PROBES; i++)
        {
          const HutPlacement placement
              = { .shift = { hut_random_between (&random, bounds.u0 - 1.0, bounds.u1 + 1.0),
                             hut_random_between (&random, bounds.v0 - 1.0, bounds.v1 + 1.0) } };
          g_autoptr(HutRegion) placed = hut_region_dup_placed (b, &placement);
          const double area_mm2 = hut_geos_op_area_mm2 (a, placed, HUT_GEOS_INTERSECTION, NULL);

          assert_true (area_mm2 >= 0.0);
          if (area_mm2 > TOUCH_MM2)
            {
              overlap_count++;
              if (!hut_no_fit_forbids (no_fit, placement.shift))
                fail_msg ("seed %" G_GUINT64_FORMAT ": overlap of %g mm2 is allowed", seed, area_mm2);
            }
          else if (!hut_no_fit_forbids (no_fit, placement.shift))
            free_count++;
        }
    }
  assert_true (free_count > 0 && overlap_count > 0);
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (rectangles_forbid_the_sum_of_their_sizes),
    cmocka_unit_test (hole_takes_what_fits_into_it),
    cmocka_unit_test (exact_fit_is_kept_and_has_a_wall_that_leads_to_it),
    cmocka_unit_test (depth_is_the_way_out_of_the_piece),
    cmocka_unit_test (walls_are_free_shifts),
    cmocka_unit_test (forbidden_shifts_of_random_shapes_are_those_at_which_geos_finds_an_overlap),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}

/* tests/geom/test-region.c: outlines with holes.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "config.h"
#include "geom/hut-region.h"
#include "hut-assert.h"
#include "hut-random-shape.h"

/* 100 x 60 with radius 10 and a hole of radius 15 in the middle. */
static HutRegion *
new_demo (void)
{
  HutRegion *region = hut_region_new (hut_path_new_rect ((HutRect) { 10, 10, 110, 70 }, 10));

  hut_region_take_hole (region, hut_path_new_circle ((HutPoint) { 60, 40 }, 15));
  return region;
}

static void
outlines_are_turned_to_their_roles (void **state)
{
  HutPath *outer = hut_path_new_rect ((HutRect) { 0, 0, 9, 9 }, 0);
  HutPath *hole = hut_path_new_circle ((HutPoint) { 4, 4 }, 1);

  hut_path_reverse (outer);
  g_autoptr(HutRegion) region = hut_region_new (outer);
  hut_region_take_hole (region, hole);
  hut_region_take_hole (region, hut_path_new_circle ((HutPoint) { 7, 7 }, 1));

  assert_near (hut_path_area_mm2 (region->outer), 81, 0);
  assert_near (hut_path_area_mm2 (g_ptr_array_index (region->holes, 0)), -G_PI, 1e-14);
  assert_near (hut_path_area_mm2 (g_ptr_array_index (region->holes, 1)), -G_PI, 1e-14);
}

static void
area_is_without_and_length_with_the_holes (void **state)
{
  g_autoptr(HutRegion) region = new_demo ();

  assert_near (hut_region_area_mm2 (region), 6000 - (4 - G_PI) * 100 - 225 * G_PI, 1e-10);
  assert_near_mm (hut_region_length_mm (region), 302.8318530717959 + 30 * G_PI, 1e-11);
}

static void
bounds_are_those_of_the_outline (void **state)
{
  g_autoptr(HutRegion) region = new_demo ();
  const HutRect bounds = hut_region_bounds (region);

  assert_near_mm (bounds.u0, 10, 0);
  assert_near_mm (bounds.v0, 10, 0);
  assert_near_mm (bounds.u1, 110, 0);
  assert_near_mm (bounds.v1, 70, 0);
}

static void
holes_are_not_contained_but_their_borders_are (void **state)
{
  g_autoptr(HutRegion) region = new_demo ();

  assert_true (hut_region_contains (region, (HutPoint) { 30, 40 }));
  assert_false (hut_region_contains (region, (HutPoint) { 60, 40 }));
  assert_false (hut_region_contains (region, (HutPoint) { 45.001, 40 }));
  assert_true (hut_region_contains (region, (HutPoint) { 45, 40 }));
  assert_true (hut_region_contains (region, (HutPoint) { 10, 40 }));
  assert_false (hut_region_contains (region, (HutPoint) { 9.999, 40 }));
}

static void
copy_lives_without_the_original (void **state)
{
  HutRegion *region = new_demo ();
  const double area_mm2 = hut_region_area_mm2 (region);
  g_autoptr(HutRegion) copy = hut_region_copy (region);

  hut_region_free (region);
  hut_region_free (NULL);
  assert_near (hut_region_area_mm2 (copy), area_mm2, 0);
  assert_int_equal (copy->holes->len, 1);
}

static void
mirrored_and_turned_region_keeps_its_roles (void **state)
{
  for (guint64 seed = 0; seed < 300; seed++)
    {
      HutRandom random;

      hut_random_init (&random, seed);

      g_autoptr(HutRegion) region = hut_random_fingers (&random, TRUE);
      g_autoptr(HutRegion) placed = hut_random_placed (&random, region);

      assert_int_equal (placed->holes->len, region->holes->len);
      assert_true (hut_path_area_mm2 (placed->outer) > 0);
      for (guint i = 0; i < placed->holes->len; i++)
        assert_true (hut_path_area_mm2 (g_ptr_array_index (placed->holes, i)) < 0);
      if (fabs (hut_region_area_mm2 (placed) / hut_region_area_mm2 (region) - 1) > 1e-12
          || fabs (hut_region_length_mm (placed) / hut_region_length_mm (region) - 1) > 1e-12)
        fail_msg ("seed %" G_GUINT64_FORMAT, seed);
    }
}

static void
placed_region_contains_the_placed_points (void **state)
{
  g_autoptr(HutRegion) region = new_demo ();
  const HutPlacement placement = { .mirrored = TRUE, .turn_rad = 0.7, .shift = { -30, 12 } };
  g_autoptr(HutRegion) placed = hut_region_dup_placed (region, &placement);
  HutRandom random;

  hut_random_init (&random, 1);
  for (guint i = 0; i < 5000; i++)
    {
      const HutPoint p = { hut_random_between (&random, 0, 120),
                           hut_random_between (&random, 0, 80) };

      assert_true (hut_region_contains (region, p)
                   == hut_region_contains (placed, hut_placement_apply (&placement, p)));
    }
}

static void
region_without_corners_measures_nothing (void **state)
{
  g_autoptr(HutRegion) region = hut_region_new (hut_path_new ());

  assert_near (hut_region_area_mm2 (region), 0, 0);
  assert_near_mm (hut_region_length_mm (region), 0, 0);
  assert_false (hut_region_contains (region, (HutPoint) { 0, 0 }));
  assert_true (hut_region_bounds (region).u1 < hut_region_bounds (region).u0);
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (outlines_are_turned_to_their_roles),
    cmocka_unit_test (area_is_without_and_length_with_the_holes),
    cmocka_unit_test (bounds_are_those_of_the_outline),
    cmocka_unit_test (holes_are_not_contained_but_their_borders_are),
    cmocka_unit_test (copy_lives_without_the_original),
    cmocka_unit_test (mirrored_and_turned_region_keeps_its_roles),
    cmocka_unit_test (placed_region_contains_the_placed_points),
    cmocka_unit_test (region_without_corners_measures_nothing),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}

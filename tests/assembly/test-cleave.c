/* tests/assembly/test-cleave.c: a region parted along a line.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "config.h"
#include "assembly/hut-cleave.h"
#include "hut-assert.h"

/* 100 x 60 with a window 40 x 20 in the middle, corners sharp or round. */
static HutRegion *
framed (double radius_mm)
{
  HutRegion *region = hut_region_new (hut_path_new_rect ((HutRect) { 0, 0, 100, 60 }, 0));

  hut_region_take_hole (region, hut_path_new_rect ((HutRect) { 30, 20, 70, 40 }, radius_mm));
  return region;
}

static GArray *
zones_new (const HutFingerZone *zones,
           guint count)
{
  GArray *array = g_array_new (FALSE, FALSE, sizeof (HutFingerZone));

  if (count > 0)
    g_array_append_vals (array, zones, count);
  return array;
}

static void
line_through_a_window_has_two_solid_intervals (void **state)
{
  g_autoptr(HutRegion) region = framed (0);
  g_autoptr(GArray) intervals = hut_cleave_intervals (region, TRUE, 50, NULL);

  assert_int_equal (intervals->len, 2);
  assert_near_mm (g_array_index (intervals, HutSolidInterval, 0).from_mm, 0, 0.0);
  assert_near_mm (g_array_index (intervals, HutSolidInterval, 0).to_mm, 20, 0.0);
  assert_near_mm (g_array_index (intervals, HutSolidInterval, 1).from_mm, 40, 0.0);
  assert_near_mm (g_array_index (intervals, HutSolidInterval, 1).to_mm, 60, 0.0);
}

static void
line_beside_the_region_has_none (void **state)
{
  g_autoptr(HutRegion) region = framed (0);
  g_autoptr(GArray) intervals = hut_cleave_intervals (region, TRUE, 150, NULL);

  assert_int_equal (intervals->len, 0);
}

static void
straight_line_through_a_window_gives_two_channels (void **state)
{
  g_autoptr(HutRegion) region = framed (3);
  g_autoptr(GArray) zones = zones_new (NULL, 0);
  g_autoptr(GPtrArray) pieces = hut_region_cleave (region, &(HutSeam) { TRUE, 50, 0, zones }, NULL);
  const HutRegion *left = g_ptr_array_index (pieces, 0), *right = g_ptr_array_index (pieces, 1);
  const double half_mm2 = (6000 - (800 - (4 - G_PI) * 9)) / 2;

  assert_int_equal (pieces->len, 2);
  assert_int_equal (left->holes->len, 0);
  assert_near (hut_region_area_mm2 (left), half_mm2, 1e-9);
  assert_near (hut_region_area_mm2 (right), half_mm2, 1e-9);
  assert_near_mm (hut_region_bounds (left).u1, 50, 0.0);
  assert_near_mm (hut_region_bounds (right).u0, 50, 0.0);
}

static void
fingers_reach_over_the_line_and_change_hands (void **state)
{
  const HutFingerZone zone = { 15, 45, 3 };
  g_autoptr(HutRegion) region = hut_region_new (hut_path_new_rect ((HutRect) { 0, 0, 100, 60 }, 0));
  g_autoptr(GArray) zones = zones_new (&zone, 1);
  g_autoptr(GPtrArray) pieces = hut_region_cleave (region, &(HutSeam) { TRUE, 50, 8, zones }, NULL);
  const HutRegion *left = g_ptr_array_index (pieces, 0), *right = g_ptr_array_index (pieces, 1);

  /* Three fingers of 10 mm: right, left, right of the line: the left piece gains 2 and loses 1 of 10 x 8. */
  assert_near (hut_region_area_mm2 (left), 3000 + 80, 1e-9);
  assert_near (hut_region_area_mm2 (right), 3000 - 80, 1e-9);
  assert_near_mm (hut_region_bounds (left).u1, 58, 0.0);
  assert_near_mm (hut_region_bounds (right).u0, 42, 0.0);
  assert_true (hut_region_contains (left, (HutPoint) { 55, 20 }));
  assert_true (hut_region_contains (right, (HutPoint) { 45, 30 }));
  assert_true (hut_region_contains (left, (HutPoint) { 55, 40 }));
}

static void
level_line_parts_low_from_high (void **state)
{
  g_autoptr(HutRegion) region = framed (0);
  g_autoptr(GArray) zones = zones_new (NULL, 0);
  g_autoptr(GPtrArray) pieces = hut_region_cleave (region, &(HutSeam) { FALSE, 10, 0, zones }, NULL);

  assert_int_equal (pieces->len, 2);
  assert_near (hut_region_area_mm2 (g_ptr_array_index (pieces, 0)), 1000, 1e-9);
  assert_int_equal (((HutRegion *) g_ptr_array_index (pieces, 1))->holes->len, 1); /* the window stays with its piece */
}

static void
splice_edges_are_mating_and_others_keep_their_kind (void **state)
{
  g_autoptr(HutRegion) region = hut_region_new (hut_path_new_rect ((HutRect) { 0, 0, 100, 60 }, 0));
  g_autoptr(GArray) zones = zones_new (NULL, 0);
  g_autoptr(GPtrArray) pieces = hut_region_cleave (region, &(HutSeam) { TRUE, 50, 0, zones }, NULL);

  for (guint i = 0; i < pieces->len; i++)
    {
      const HutRegion *piece = g_ptr_array_index (pieces, i);

      for (guint v = 0; v < hut_path_get_count (piece->outer); v++)
        {
          const HutSegment segment = hut_path_get_segment (piece->outer, v);
          const gboolean on_line = segment.start.u == 50 && segment.end.u == 50;

          assert_int_equal (segment.kind, on_line ? HUT_EDGE_MATING : HUT_EDGE_PLAIN);
        }
    }
}

static void
line_over_an_arc_a_corner_or_a_slant_is_refused (void **state)
{
  g_autoptr(HutRegion) round = framed (10), slanted = NULL;
  g_autoptr(GArray) zones = zones_new (NULL, 0);
  HutPath *triangle = hut_path_new ();
  const struct
  {
    const HutRegion *region;
    double at_mm;
    const char *reason;
  } cases[] = {
    { round, 35, "the window's round corner" },
    { round, 100, "along the outline's own edge" },
    { NULL, 30, "a slanted edge" },
  };

  hut_path_append (triangle, (HutPoint) { 0, 0 }, 0, HUT_EDGE_PLAIN);
  hut_path_append (triangle, (HutPoint) { 100, 0 }, 0, HUT_EDGE_PLAIN);
  hut_path_append (triangle, (HutPoint) { 0, 60 }, 0, HUT_EDGE_PLAIN);
  slanted = hut_region_new (triangle);
  for (guint i = 0; i < G_N_ELEMENTS (cases); i++)
    {
      g_autoptr(GError) error = NULL;
      const HutSeam seam = { TRUE, cases[i].at_mm, 0, zones };
      GPtrArray *pieces = hut_region_cleave (cases[i].region != NULL ? cases[i].region : slanted, &seam, &error);

      if (pieces != NULL)
        fail_msg ("cut in spite of %s", cases[i].reason);
      assert_true (g_error_matches (error, HUT_GEOM_ERROR, HUT_GEOM_ERROR_INVALID));
    }
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (line_through_a_window_has_two_solid_intervals),
    cmocka_unit_test (line_beside_the_region_has_none),
    cmocka_unit_test (straight_line_through_a_window_gives_two_channels),
    cmocka_unit_test (fingers_reach_over_the_line_and_change_hands),
    cmocka_unit_test (level_line_parts_low_from_high),
    cmocka_unit_test (splice_edges_are_mating_and_others_keep_their_kind),
    cmocka_unit_test (line_over_an_arc_a_corner_or_a_slant_is_refused),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}

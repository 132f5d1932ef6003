/* tests/geom/test-relief.c: a round tool reaches every corner.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "geom/hut-offset.h"
#include "geom/hut-relief.h"
#include "hut-assert.h"

#define RADIUS_MM 1.5

static double
distance_mm (const HutPath *path,
             HutPoint p)
{
  double least_mm = G_MAXDOUBLE;

  for (guint i = 0; i < hut_path_get_count (path); i++)
    {
      const HutSegment segment = hut_path_get_segment (path, i);

      least_mm = MIN (least_mm, hut_point_distance_mm (hut_segment_nearest (&segment, p), p));
    }
  return least_mm;
}

/* A plate of 60 x 40 with a notch of 20 x 10 in its upper edge and a square hole of 8. */
static HutRegion *
new_plate (void)
{
  static const HutPoint outer[] = { { 0, 0 },   { 60, 0 },  { 60, 40 }, { 40, 40 },
                                    { 40, 30 }, { 20, 30 }, { 20, 40 }, { 0, 40 } };
  HutPath *path = hut_path_new ();
  HutRegion *region;

  for (guint i = 0; i < G_N_ELEMENTS (outer); i++)
    hut_path_append (path, outer[i], 0, HUT_EDGE_PLAIN);
  region = hut_region_new (path);
  hut_region_take_hole (region, hut_path_new_rect ((HutRect) { 10, 10, 18, 18 }, 0));
  return region;
}

static void
inner_corners_are_touched_and_outer_ones_stay (void **state)
{
  static const HutPoint inner[] = { { 40, 30 }, { 20, 30 } };
  static const HutPoint corners[] = { { 10, 10 }, { 18, 10 }, { 18, 18 }, { 10, 18 } };
  const HutOffset offset = { RADIUS_MM, RADIUS_MM };
  g_autoptr(HutRegion) plate = new_plate ();
  g_autoptr(HutRegion) cut = hut_region_dup_offset (plate, &offset, NULL);
  g_autoptr(HutRegion) relieved = hut_region_dup_relieved (cut, RADIUS_MM);
  const HutPath *hole = g_ptr_array_index (relieved->holes, 0);

  /* By hand: without relief the corner of a right angle is r sqrt 2 away, with it r. */
  for (guint i = 0; i < G_N_ELEMENTS (inner); i++)
    {
      assert_near_mm (distance_mm (cut->outer, inner[i]), RADIUS_MM * G_SQRT2, 1e-9);
      assert_near_mm (distance_mm (relieved->outer, inner[i]), RADIUS_MM, HUT_GRID_MM);
    }
  for (guint i = 0; i < G_N_ELEMENTS (corners); i++)
    assert_near_mm (distance_mm (hole, corners[i]), RADIUS_MM, HUT_GRID_MM);
  /* Two corners more for each relief, and there and back r (sqrt 2 - 1). */
  assert_int_equal (hut_path_get_count (relieved->outer), hut_path_get_count (cut->outer) + 4);
  assert_int_equal (hut_path_get_count (hole), 12);
  assert_near_mm (hut_region_length_mm (relieved),
                  hut_region_length_mm (cut) + 6 * 2 * RADIUS_MM * (G_SQRT2 - 1), 6 * 2 * HUT_GRID_MM);
}

static void
round_corners_and_short_jogs_get_none (void **state)
{
  const HutOffset offset = { RADIUS_MM, RADIUS_MM };
  g_autoptr(HutRegion) plate = hut_region_new (hut_path_new_rect ((HutRect) { 0, 0, 60, 40 }, 0));

  hut_region_take_hole (plate, hut_path_new_rect ((HutRect) { 10, 10, 30, 30 }, 4));
  hut_region_take_hole (plate, hut_path_new_circle ((HutPoint) { 45, 20 }, 6));

  g_autoptr(HutRegion) cut = hut_region_dup_offset (plate, &offset, NULL);
  g_autoptr(HutRegion) relieved = hut_region_dup_relieved (cut, RADIUS_MM);
  HutPath *jog = hut_path_new ();

  assert_near_mm (hut_region_length_mm (relieved), hut_region_length_mm (cut), 0);
  hut_path_append (jog, (HutPoint) { 0, 0 }, 0, HUT_EDGE_PLAIN);
  hut_path_append (jog, (HutPoint) { 20, 0 }, 0, HUT_EDGE_PLAIN);
  hut_path_append (jog, (HutPoint) { 20, 10 }, 0, HUT_EDGE_PLAIN);
  hut_path_append (jog, (HutPoint) { 10, 10 }, 0, HUT_EDGE_MATING);
  hut_path_append (jog, (HutPoint) { 10, 9.9 }, 0, HUT_EDGE_PLAIN); /* 0.1 mm: the fit begins */
  hut_path_append (jog, (HutPoint) { 0, 9.9 }, 0, HUT_EDGE_PLAIN);

  g_autoptr(HutRegion) jogged = hut_region_new (jog);
  g_autoptr(HutRegion) same = hut_region_dup_relieved (jogged, RADIUS_MM);

  assert_int_equal (hut_path_get_count (same->outer), 6);
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (inner_corners_are_touched_and_outer_ones_stay),
    cmocka_unit_test (round_corners_and_short_jogs_get_none),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}

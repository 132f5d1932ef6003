/* tests/catalog/test-item-cut.c: the holes of an item as outlines.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "catalog/hut-item.h"
#include "hut-assert.h"

/* Area of the part of a circle beyond a chord at distance d from its middle: r^2 acos (d / r)
 * - d sqrt (r^2 - d^2). Source: E. Weisstein, MathWorld, "Circular Segment", (11). */
static double
segment_mm2 (double r_mm,
             double d_mm)
{
  return r_mm * r_mm * acos (d_mm / r_mm) - d_mm * sqrt (r_mm * r_mm - d_mm * d_mm);
}

static void
assert_cut (const HutItemCut *cut,
            double area_mm2,
            HutRect box)
{
  g_autoptr(HutPath) path = hut_item_cut_dup_path (cut, 0.0);
  const HutRect bounds = hut_path_bounds (path);

  assert_near (hut_path_area_mm2 (path), area_mm2, 1e-9);
  assert_near_mm (bounds.u0, box.u0, 1e-9);
  assert_near_mm (bounds.v0, box.v0, 1e-9);
  assert_near_mm (bounds.u1, box.u1, 1e-9);
  assert_near_mm (bounds.v1, box.v1, 1e-9);
  for (guint i = 0; i < hut_path_get_count (path); i++)
    assert_true (fabs (hut_path_get (path, i)->bulge) <= 1.0);
}

static void
shapes_have_their_area_and_lie_where_they_shall (void **state)
{
  const HutPoint at = { 10, 20 };

  assert_cut (&(HutItemCut) { .shape = HUT_CUT_ROUND, .at = at, .diameter_mm = 8 }, 16 * G_PI,
              (HutRect) { 6, 16, 14, 24 });
  assert_cut (&(HutItemCut) { .shape = HUT_CUT_RECTANGLE, .at = at, .width_mm = 6, .height_mm = 4 },
              24, (HutRect) { 7, 18, 13, 22 });
  assert_cut (&(HutItemCut) { .shape = HUT_CUT_SLOT, .at = at, .width_mm = 4, .height_mm = 10 },
              4 * 6 + 4 * G_PI, (HutRect) { 8, 15, 12, 25 });
}

static void
flats_and_keys_take_off_and_add_what_they_shall (void **state)
{
  const HutPoint at = { 0, 0 };

  /* radius 6, flat at 11 - 6 = 5 */
  assert_cut (&(HutItemCut) { .shape = HUT_CUT_FLATTED, .at = at, .diameter_mm = 12, .height_mm = 11 },
              36 * G_PI - segment_mm2 (6, 5), (HutRect) { -6, -6, 6, 5 });
  /* flats at +-4 of radius 5 */
  assert_cut (&(HutItemCut) { .shape = HUT_CUT_TWO_FLATS, .at = at, .diameter_mm = 10, .height_mm = 8 },
              25 * G_PI - 2 * segment_mm2 (5, 4), (HutRect) { -5, -4, 5, 4 });
  /* radius 5, notch 6 wide: its shoulder is at 4; top at 11 - 5 = 6, so it adds 6 * 2 less the
   * segment above 4 */
  assert_cut (&(HutItemCut) { .shape = HUT_CUT_KEYED, .at = at, .diameter_mm = 10, .width_mm = 6,
                              .height_mm = 11 },
              25 * G_PI + 12 - segment_mm2 (5, 4), (HutRect) { -5, -5, 5, 6 });
}

static void
sizes_that_make_no_shape_give_no_corners (void **state)
{
  static const HutItemCut cuts[] = {
    { .shape = HUT_CUT_ROUND },
    { .shape = HUT_CUT_RECTANGLE, .width_mm = 5 },
    { .shape = HUT_CUT_FLATTED, .diameter_mm = 10, .height_mm = 10 },
    { .shape = HUT_CUT_FLATTED, .diameter_mm = 10, .height_mm = 0 },
    { .shape = HUT_CUT_TWO_FLATS, .diameter_mm = 10, .height_mm = 10 },
    { .shape = HUT_CUT_KEYED, .diameter_mm = 10, .width_mm = 2, .height_mm = 9 },
    { .shape = HUT_CUT_KEYED, .diameter_mm = 10, .width_mm = 12, .height_mm = 12 },
    { .role = HUT_CUT_SCREW, .thread_mm = 4 }, /* no hole was asked for */
  };

  for (gsize i = 0; i < G_N_ELEMENTS (cuts); i++)
    {
      g_autoptr(HutPath) path = hut_item_cut_dup_path (&cuts[i], 0.0);

      assert_int_equal (hut_path_get_count (path), 0);
    }
}

static void
screw_holes_follow_thread_and_class_and_wood_screws_get_a_pilot (void **state)
{
  HutItemCut cut = { .role = HUT_CUT_SCREW, .thread_mm = 4, .at = { 3, 0 } };
  g_autoptr(HutPath) path = hut_item_cut_dup_path (&cut, 4.5);

  assert_near_mm (hut_path_bounds (path).u1, 3 + 2.25, 1e-9);
  assert_near_mm (hut_item_cut_hole_mm (&cut, HUT_HOLE_MEDIUM), 4.5, 0.0);
  assert_near_mm (hut_item_cut_hole_mm (&cut, HUT_HOLE_COARSE), 4.8, 0.0);
  cut.wood_screw = TRUE;
  assert_near_mm (hut_item_cut_hole_mm (&cut, HUT_HOLE_MEDIUM), 2.5, 0.0);
  cut.wood_screw = FALSE;
  cut.thread_mm = 4.2;
  assert_near_mm (hut_item_cut_hole_mm (&cut, HUT_HOLE_MEDIUM), 0.0, 0.0);
  cut.role = HUT_CUT_PIN;
  assert_near_mm (hut_item_cut_hole_mm (&cut, HUT_HOLE_MEDIUM), 0.0, 0.0);
}

static void
bounds_hold_the_cuts_of_a_leaf_and_the_flange (void **state)
{
  g_autoptr(HutItem) item = hut_item_new ("x");
  const HutItemCut cuts[] = {
    { .shape = HUT_CUT_ROUND, .diameter_mm = 10 },
    { .role = HUT_CUT_SCREW, .thread_mm = 3, .leaf = 1, .at = { 20, 5 } },
  };

  assert_true (hut_item_bounds (item, 0, HUT_HOLE_MEDIUM).u1 < 0);
  g_array_append_vals (item->cuts, cuts, G_N_ELEMENTS (cuts));
  assert_near_mm (hut_item_bounds (item, 0, HUT_HOLE_MEDIUM).u1, 5, 1e-9);
  assert_near_mm (hut_item_bounds (item, 1, HUT_HOLE_MEDIUM).u1, 20 + 1.7, 1e-9); /* 3.4 / 2 */
  assert_near_mm (hut_item_bounds (item, 1, HUT_HOLE_MEDIUM).v0, 5 - 1.7, 1e-9);
  item->flange_width_mm = 16;
  item->flange_height_mm = 8;
  assert_near_mm (hut_item_bounds (item, 0, HUT_HOLE_MEDIUM).u0, -8, 1e-9);
  assert_near_mm (hut_item_bounds (item, 0, HUT_HOLE_MEDIUM).v0, -5, 1e-9);
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (shapes_have_their_area_and_lie_where_they_shall),
    cmocka_unit_test (flats_and_keys_take_off_and_add_what_they_shall),
    cmocka_unit_test (sizes_that_make_no_shape_give_no_corners),
    cmocka_unit_test (screw_holes_follow_thread_and_class_and_wood_screws_get_a_pilot),
    cmocka_unit_test (bounds_hold_the_cuts_of_a_leaf_and_the_flange),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}

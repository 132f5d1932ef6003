/* tests/draw/test-sheet-grid.c: where sheets and parts are in the view of the sheets.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "draw/hut-sheet-grid.h"
#include "hut-assert.h"
#include "hut-hand-part.h"

/* One sheet of 400 x 300 in 436 x (300 + 36 + 38.8): with 10 px text the title takes 2 x 1.45 x 10 + 4
 * = 33 px, so 369 px of height are as much as 436 of width: scale 1, the front at 18 + 33 + 300. */
static void
pixel_of_a_point_and_back (void **state)
{
  HutHandParts hand;
  HutPoint at = { 0, 0 };

  hut_hand_parts_init (&hand);
  hut_hand_parts_add_rect (&hand, "a", 100, 50);

  g_autoptr(HutSheetSet) sheets = hut_sheet_set_new (hand.assembly, hand.parts);
  const HutSheetGrid grid = hut_sheet_grid_find (sheets, 10.0, 436.0, 369.0);
  const HutPoint front = hut_sheet_grid_front (&grid, sheets, 0);

  assert_int_equal (sheets->sheets->len, 1);
  assert_near (grid.scale_px_per_mm, 1.0, 1e-9);
  assert_near (front.u, 18.0, 1e-9);
  assert_near (front.v, 351.0, 1e-9);
  assert_int_equal (
      hut_sheet_grid_pick_sheet (&grid, sheets, (HutPoint) { 18 + 30, 351 - 40 }, &at), 0);
  assert_near_mm (at.u, 30.0, 1e-9);
  assert_near_mm (at.v, 40.0, 1e-9);
  assert_int_equal (hut_sheet_grid_pick_sheet (&grid, sheets, (HutPoint) { 5, 5 }, &at), -1);
  hut_hand_parts_clear (&hand);
}

/* The only part lies in the usable corner (10, 10). */
static void
part_is_picked_by_its_material (void **state)
{
  HutHandParts hand;

  hut_hand_parts_init (&hand);
  hut_hand_parts_add_rect (&hand, "a", 100, 50);

  g_autoptr(HutSheetSet) sheets = hut_sheet_set_new (hand.assembly, hand.parts);
  const HutSheet *sheet = g_ptr_array_index (sheets->sheets, 0);

  assert_int_equal (hut_sheet_pick_part (sheet, hand.parts, (HutPoint) { 30, 30 }), 0);
  assert_int_equal (hut_sheet_pick_part (sheet, hand.parts, (HutPoint) { 200, 200 }), -1);
  hut_hand_parts_clear (&hand);
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (pixel_of_a_point_and_back),
    cmocka_unit_test (part_is_picked_by_its_material),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}

/* tests/export/test-sheet-figures.c: what cutting a sheet takes.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "export/hut-sheet-figures.h"
#include "hut-assert.h"
#include "hut-hand-part.h"

/* Bed 400 x 300, margin 10, kerf 0: a plate of 100 x 50 at (10, 10) with a hole of 20 x 10 whose corner
 * is at (30, 20) then. Used (5000 - 200) / 120000 = 0.04. Cut 300 + 60. Travel: (0, 0) to (30, 20), the
 * nearest corner of the hole, then on to (10, 10), the nearest of the plate. 2 passes at 90 mm/min:
 * 360 * 2 / 90 min = 8 min. */
static void
plate_with_a_hole_is_worked_out_by_hand (void **state)
{
  HutHandParts hand;
  HutSheetFigures figures;
  g_autoptr(GError) error = NULL;

  hut_hand_parts_init (&hand);
  hand.stock->speed_mm_min = 90.0;
  hand.stock->passes = 2;
  hut_region_take_hole (hut_hand_parts_add_rect (&hand, "plate", 100, 50)->region,
                        hut_path_new_rect ((HutRect) { 20, 10, 40, 20 }, 0.0));

  g_autoptr(HutSheetSet) set = hut_sheet_set_new (hand.assembly, hand.parts);

  assert_ok (hut_sheet_get_figures (hand.parts, g_ptr_array_index (set->sheets, 0), &figures,
                                    &error),
             error);
  assert_near (figures.used_ratio, 0.04, 1e-12);
  assert_near_mm (figures.cut_length_mm, 360.0, 1e-9);
  assert_near_mm (figures.travel_mm, sqrt (1300.0) + sqrt (500.0), 1e-9);
  assert_int_equal (figures.pierces, 2);
  assert_near (figures.cutting_s, 480.0, 1e-9);
  hut_hand_parts_clear (&hand);
}

static void
sheet_that_cannot_be_cut_has_no_figures (void **state)
{
  HutHandParts hand;
  HutSheetFigures figures = { .pierces = 7 };
  g_autoptr(GError) error = NULL;

  hut_hand_parts_init (&hand);
  hand.stock->kerf_mm = 0.5;
  hut_region_take_hole (hut_hand_parts_add_rect (&hand, "plate", 100, 50)->region,
                        hut_path_new_rect ((HutRect) { 40, 20, 40.2, 30 }, 0.0));

  g_autoptr(HutSheetSet) set = hut_sheet_set_new (hand.assembly, hand.parts);

  assert_false (hut_sheet_get_figures (hand.parts, g_ptr_array_index (set->sheets, 0), &figures,
                                       &error));
  assert_true (g_error_matches (error, HUT_GEOM_ERROR, HUT_GEOM_ERROR_VANISHED));
  assert_int_equal (figures.pierces, 7);
  hut_hand_parts_clear (&hand);
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (plate_with_a_hole_is_worked_out_by_hand),
    cmocka_unit_test (sheet_that_cannot_be_cut_has_no_figures),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}

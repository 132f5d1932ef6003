/* tests/assembly/test-bed.c: what the cutter's bed takes.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "config.h"
#include "assembly/hut-part.h"
#include "hut-assert.h"

static const HutCutter bed_400_x_300 = { .bed_width_mm = 400, .bed_depth_mm = 300, .margin_mm = 10 };

static void
part_lies_straight_or_turned_by_a_right_angle (void **state)
{
  assert_true (hut_cutter_takes (&bed_400_x_300, 380, 280));
  assert_true (hut_cutter_takes (&bed_400_x_300, 280, 380));
  assert_false (hut_cutter_takes (&bed_400_x_300, 380.001, 280));
  assert_false (hut_cutter_takes (&bed_400_x_300, 290, 290));
}

/* A strip of no width fits along the diagonal: 300 x 400 has one of 500 (Pythagoras, 3-4-5). */
static void
strip_fits_along_the_diagonal_when_any_angle_is_allowed (void **state)
{
  HutCutter cutter = { .bed_width_mm = 400, .bed_depth_mm = 300, .any_angle = TRUE };
  double angle_rad = -1.0;

  assert_true (hut_cutter_takes (&cutter, 499.5, 0.1));
  assert_false (hut_cutter_takes (&cutter, 500.5, 0.1));
  cutter.any_angle = FALSE;
  assert_false (hut_cutter_takes (&cutter, 499.5, 0.1));
  assert_true (hut_rect_fits_turned (499.5, 0.1, 400, 300, &angle_rad));
  assert_near (angle_rad, atan2 (300, 400), 0.05);
}

static void
angle_is_untouched_when_nothing_fits (void **state)
{
  double angle_rad = 7.0;

  assert_false (hut_rect_fits_turned (501, 10, 400, 300, &angle_rad));
  assert_near (angle_rad, 7.0, 0.0);
  assert_true (hut_rect_fits_turned (300, 400, 400, 300, &angle_rad));
  assert_near (angle_rad, G_PI / 2, 0.0); /* a right angle is exact */
}

static void
sheet_is_cut_down_to_the_bed_the_better_way_round (void **state)
{
  static const struct
  {
    double sheet_width_mm, sheet_depth_mm, width_mm, depth_mm;
  } cases[] = {
    { 2440, 1220, 400, 300 }, { 200, 150, 200, 150 }, { 250, 500, 400, 250 }, { 500, 250, 400, 250 }, { 300, 380, 380, 300 },
  };

  for (guint i = 0; i < G_N_ELEMENTS (cases); i++)
    {
      const HutStock stock = { .sheet_width_mm = cases[i].sheet_width_mm, .sheet_depth_mm = cases[i].sheet_depth_mm };
      double width_mm, depth_mm;

      hut_cutter_sheet (&bed_400_x_300, &stock, &width_mm, &depth_mm);
      assert_near_mm (width_mm, cases[i].width_mm, 0.0);
      assert_near_mm (depth_mm, cases[i].depth_mm, 0.0);
    }
}

static void
room_leaves_margin_and_kerf (void **state)
{
  const HutStock stock = { .sheet_width_mm = 1000, .sheet_depth_mm = 1000, .kerf_mm = 0.2 };
  double width_mm, depth_mm;

  hut_cutter_room (&bed_400_x_300, &stock, &width_mm, &depth_mm);
  assert_near_mm (width_mm, 379.8, 1e-9);
  assert_near_mm (depth_mm, 279.8, 1e-9);
  assert_true (hut_cutter_takes_stock (&bed_400_x_300, &stock, 379.8, 279.8));
  assert_false (hut_cutter_takes_stock (&bed_400_x_300, &stock, 379.9, 279.8));
}

static void
bed_smaller_than_its_margin_takes_nothing (void **state)
{
  const HutCutter cutter = { .bed_width_mm = 15, .bed_depth_mm = 15, .margin_mm = 10, .any_angle = TRUE };

  assert_false (hut_cutter_takes (&cutter, 0.1, 0.1));
  assert_near_mm (hut_cutter_usable_width_mm (&cutter), -5, 0.0);
}

static void
tight_fit_grows_the_part_and_takes_room (void **state)
{
  HutStock stock = { .sheet_width_mm = 2440, .sheet_depth_mm = 1220, .kerf_mm = 0.2 };
  double width_mm, depth_mm;

  /* 400 x 300 less 10 on each side; 0.2 of kerf; a loose fit makes parts smaller, but not all of their
   * edges mate. */
  stock.allowance_mm = 0.1;
  hut_cutter_room (&bed_400_x_300, &stock, &width_mm, &depth_mm);
  assert_near_mm (width_mm, 379.8, 1e-9);
  assert_near_mm (depth_mm, 279.8, 1e-9);
  stock.allowance_mm = -0.15;
  hut_cutter_room (&bed_400_x_300, &stock, &width_mm, &depth_mm);
  assert_near_mm (width_mm, 379.65, 1e-9);
  assert_near_mm (depth_mm, 279.65, 1e-9);
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (part_lies_straight_or_turned_by_a_right_angle),
    cmocka_unit_test (strip_fits_along_the_diagonal_when_any_angle_is_allowed),
    cmocka_unit_test (angle_is_untouched_when_nothing_fits),
    cmocka_unit_test (sheet_is_cut_down_to_the_bed_the_better_way_round),
    cmocka_unit_test (room_leaves_margin_and_kerf),
    cmocka_unit_test (tight_fit_grows_the_part_and_takes_room),
    cmocka_unit_test (bed_smaller_than_its_margin_takes_nothing),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}

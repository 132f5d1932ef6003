/* tests/checks/test-check-spot.c: parts laid by hand: room, bed, changes.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "assembly/hut-spot-place.h"
#include "checks/hut-check-case.h"
#include "hut-assert.h"

/* Outside the box is 372 x 352, the base's walls 140 high, kerf 0.2: a cut line is 0.1 outside the
 * part. The base's front and back are 372 x 140 with their fingers. */
static const double FRONT_WIDTH_MM = 372.0, FRONT_HEIGHT_MM = 140.0;

static HutSpot *
keep (HutDesign *design,
      const char *part,
      guint sheet,
      double left_mm,
      double front_mm)
{
  HutSpot *spot = hut_spot_new (part);

  spot->sheet = sheet;
  spot->left_mm = left_mm;
  spot->front_mm = front_mm;
  spot->width_mm = FRONT_WIDTH_MM;
  spot->height_mm = FRONT_HEIGHT_MM;
  spot->kept = TRUE;
  g_ptr_array_add (design->spots, spot);
  return spot;
}

static guint
count_all (const HutCheckCase *c)
{
  return hut_check_case_count (c, "sheet.gap") + hut_check_case_count (c, "sheet.overlap")
         + hut_check_case_count (c, "sheet.outside") + hut_check_case_count (c, "sheet.changed")
         + hut_check_case_count (c, "sheet.gone");
}

static HutDesign *
new_design (void)
{
  HutDesign *design = hut_check_case_design ();

  design->cutter.margin_mm = 5.0;
  design->cutter.part_gap_mm = 4.0;
  return design;
}

/* 10 + 140 + 0.1 + 4 + 0.1 = 154.2 is where the next part's outline may begin. */
static void
parts_with_the_gap_between_their_cuts_are_in_order (void **state)
{
  HutDesign *design = new_design ();

  keep (design, "base-front", 1, 10, 10);
  keep (design, "base-back", 1, 10, 154.2);

  g_autoptr(HutCheckCase) c = hut_check_case_new (design);

  assert_int_equal (count_all (c), 0);
}

/* One millimetre nearer: the cuts are 3 apart. */
static void
too_small_a_gap_blocks_with_both_numbers (void **state)
{
  HutDesign *design = new_design ();

  keep (design, "base-front", 1, 10, 10);
  keep (design, "base-back", 1, 10, 153.2);

  g_autoptr(HutCheckCase) c = hut_check_case_new (design);
  const HutFinding *finding = hut_check_case_find (
      c, "sheet.gap",
      "base-back lies 3 mm from base-front on the sheet; 4 mm between cuts is asked for.");

  hut_check_case_assert (finding, HUT_SEVERITY_BLOCKS, 3.0, 4.0);
  assert_int_equal (count_all (c), 1);
  assert_int_equal (finding->fix.kind, HUT_FIX_RELEASE);
}

static void
parts_on_each_other_block_and_on_two_sheets_do_not (void **state)
{
  HutDesign *design = new_design (), *apart = new_design ();

  keep (design, "base-front", 1, 10, 10);
  keep (design, "base-back", 1, 60, 60);
  keep (apart, "base-front", 1, 10, 10);
  keep (apart, "base-back", 2, 60, 60);

  g_autoptr(HutCheckCase) c = hut_check_case_new (design);
  g_autoptr(HutCheckCase) d = hut_check_case_new (apart);

  hut_check_case_assert (hut_check_case_get (c, "sheet.overlap", 0), HUT_SEVERITY_BLOCKS, 0.0, 4.0);
  assert_int_equal (count_all (c), 1);
  assert_int_equal (count_all (d), 0);
}

/* Margin 5, the cut 0.1 outside the part: at 3.1 the cut is at 3, which is 2 over. */
static void
part_over_the_edge_of_the_bed_blocks (void **state)
{
  HutDesign *design = new_design ();

  keep (design, "base-front", 1, 3.1, 10);

  g_autoptr(HutCheckCase) c = hut_check_case_new (design);

  hut_check_case_assert (hut_check_case_get (c, "sheet.outside", 0), HUT_SEVERITY_BLOCKS, 2.0, 0.0);
  assert_int_equal (count_all (c), 1);
}

static void
part_that_has_grown_is_told (void **state)
{
  HutDesign *design = new_design ();

  keep (design, "base-front", 1, 10, 10)->width_mm = FRONT_WIDTH_MM - 10.0;

  g_autoptr(HutCheckCase) c = hut_check_case_new (design);

  hut_check_case_assert (hut_check_case_get (c, "sheet.changed", 0), HUT_SEVERITY_NOTES,
                         FRONT_WIDTH_MM, FRONT_WIDTH_MM - 10.0);
  assert_int_equal (count_all (c), 1);
}

static void
place_of_a_part_that_is_gone_is_told_and_can_be_released (void **state)
{
  HutDesign *design = new_design ();

  keep (design, "base-front-7", 3, 10, 10);

  g_autoptr(HutCheckCase) c = hut_check_case_new (design);
  const HutFinding *finding = hut_check_case_get (c, "sheet.gone", 0);
  g_autoptr(HutDesign) cured = hut_design_copy (c->assembly->design);

  hut_check_case_assert (finding, HUT_SEVERITY_NOTES, 3.0, 0.0);
  assert_true (hut_finding_apply_fix (finding, cured));
  assert_int_equal (cured->spots->len, 0);
}

/* Only the owner's own moves can be wrong: the rest gives way. */
static void
spot_that_is_not_kept_is_silent (void **state)
{
  HutDesign *design = new_design ();

  keep (design, "base-front", 1, 10, 10)->kept = FALSE;
  keep (design, "base-back", 1, 60, 60)->kept = FALSE;
  keep (design, "nothing", 1, 0, 0)->kept = FALSE;

  g_autoptr(HutCheckCase) c = hut_check_case_new (design);

  assert_int_equal (count_all (c), 0);
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (parts_with_the_gap_between_their_cuts_are_in_order),
    cmocka_unit_test (too_small_a_gap_blocks_with_both_numbers),
    cmocka_unit_test (parts_on_each_other_block_and_on_two_sheets_do_not),
    cmocka_unit_test (part_over_the_edge_of_the_bed_blocks),
    cmocka_unit_test (part_that_has_grown_is_told),
    cmocka_unit_test (place_of_a_part_that_is_gone_is_told_and_can_be_released),
    cmocka_unit_test (spot_that_is_not_kept_is_silent),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}

/* tests/checks/test-check-bed.c: each part against the cutter's bed and its sheet.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "config.h"
#include "checks/hut-check-case.h"
#include "checks/hut-checking.h"
#include "hut-assert.h"

static const HutPanelId base_front = { HUT_SHELL_BASE, HUT_SIDE_FRONT };
static const HutPanelId lid_top = { HUT_SHELL_LID, HUT_SIDE_TOP };

static void
parts_on_the_bed_are_not_told (void **state)
{
  g_autoptr(HutCheckCase) c = hut_check_case_new (hut_check_case_design ());

  assert_int_equal (hut_check_case_count (c, "bed.part"), 0);
  assert_int_equal (hut_check_case_count (c, "bed.size"), 0);
  assert_int_equal (hut_check_case_count (c, "stock.sheet"), 0);
}

/* A bed of 250 x 250, margin 5, kerf 0.2: it takes 239.8 of plywood. */
static HutDesign *
small_bed_design (void)
{
  HutDesign *design = hut_check_case_design ();

  design->cutter.bed_width_mm = 250.0;
  design->cutter.bed_depth_mm = 250.0;
  design->joints.straps = FALSE;
  return design;
}

static void
panel_that_no_splice_can_part_blocks (void **state)
{
  /* A slot of 300 across the base's front, 372 long: every line in reach of the bed would cross
   * it. */
  HutDesign *design = small_bed_design ();
  HutOpening *slot = hut_opening_new ("slot", base_front, HUT_SHAPE_RECTANGLE);
  g_autoptr(HutCheckCase) c = NULL;
  const HutFinding *finding, *reason;

  slot->width_mm = 300.0;
  slot->height_mm = 20.0;
  g_ptr_array_add (design->openings, slot);
  c = hut_check_case_new (design);
  finding = hut_check_case_find (c, "bed.part",
                                 "base front measures 372 mm; the bed takes 239.8 mm.");
  hut_check_case_assert (finding, HUT_SEVERITY_BLOCKS, 372, 239.8);
  hut_check_case_assert_place (finding, 0, base_front, (HutRect) { 0, 0, 372, 140 });
  assert_int_equal (hut_check_case_count (c, "bed.part"), 1);

  reason = hut_check_case_get (c, "splice.place", 0);
  hut_check_case_assert (reason, HUT_SEVERITY_WARNS, 372, 239.8);
  assert_string_equal (reason->what, "base front");
  hut_check_case_assert_place (reason, 0, base_front, (HutRect) { 185, 69, 187, 71 });
}

static void
glazing_larger_than_the_bed_is_to_be_bought (void **state)
{
  /* 260 + 2 x 10 = 280 of acrylic, kerf 0.15: the bed takes 250 - 10 - 0.15. */
  HutDesign *design = small_bed_design ();
  HutWindow *window
      = hut_check_case_add_window (design, "view", lid_top, (HutRect) { 56, 100, 316, 240 });
  HutDesign *bought = NULL;
  g_autoptr(HutCheckCase) cut = NULL, other = NULL;
  const HutFinding *finding;

  hut_design_get_stock (design, "acrylic")->kerf_mm = 0.15;
  bought = hut_design_copy (design);
  window->glazing_bought = FALSE;
  cut = hut_check_case_new (design);
  other = hut_check_case_new (bought);
  finding = hut_check_case_find (cut, "bed.part",
                                 "The glazing of view measures 280 mm, the bed takes 239.85 mm, "
                                 "and it cannot be spliced: buy it cut to size.");
  hut_check_case_assert (finding, HUT_SEVERITY_BLOCKS, 280, 239.85);
  assert_string_equal (finding->item, "view");
  hut_check_case_assert_place (finding, 0, lid_top, (HutRect) { 46, 90, 326, 250 });
  assert_int_equal (hut_check_case_count (other, "bed.part"), 0);
}

/* Bed and sheet of 2 m take every panel either way. Where the grain runs along a sheet of 2000 x 300,
 * upright panels lie turned, and those wider than 300 mm fit only against it. */
static void
panel_that_fits_only_against_the_grain_is_warned_of (void **state)
{
  HutDesign *along = hut_check_case_design (), *against = hut_check_case_design ();
  HutStock *stock = hut_design_get_stock (along, along->shell.default_stock);
  g_autoptr(HutCheckCase) fits = NULL;
  g_autoptr(HutCheckCase) turned = NULL;

  stock->grain = HUT_GRAIN_DEPTH;
  along->cutter.bed_width_mm = along->cutter.bed_depth_mm = 2000;
  stock->sheet_width_mm = stock->sheet_depth_mm = 2000;
  fits = hut_check_case_new (along);
  assert_int_equal (hut_check_case_count (fits, "stock.grain"), 0);

  stock = hut_design_get_stock (against, against->shell.default_stock);
  against->cutter.bed_width_mm = against->cutter.bed_depth_mm = 2000;
  stock->grain = HUT_GRAIN_WIDTH;
  stock->sheet_width_mm = 2000;
  stock->sheet_depth_mm = 300;
  turned = hut_check_case_new (against);
  assert_true (hut_check_case_count (turned, "stock.grain") > 0);
}

static void
glazing_larger_than_its_sheet_names_the_stock (void **state)
{
  /* The bed of 600 x 400 takes it, a sheet of 200 x 200 less twice the margin and the kerf does
   * not. */
  HutDesign *design = hut_check_case_design ();
  HutStock *acrylic = hut_design_get_stock (design, "acrylic");
  HutWindow *window
      = hut_check_case_add_window (design, "view", lid_top, (HutRect) { 56, 150, 316, 200 });
  g_autoptr(HutCheckCase) c = NULL;
  const HutFinding *finding;

  acrylic->kerf_mm = 0.15;
  acrylic->sheet_width_mm = acrylic->sheet_depth_mm = 200.0;
  window->glazing_bought = FALSE;
  c = hut_check_case_new (design);
  finding = hut_check_case_find (
      c, "stock.sheet", "view measures 280 mm; a sheet of Clear acrylic 3 mm takes 189.85 mm.");
  hut_check_case_assert (finding, HUT_SEVERITY_BLOCKS, 280, 189.85);
  assert_int_equal (hut_check_case_count (c, "bed.part"), 0);
}

static void
margins_that_leave_no_bed_block (void **state)
{
  HutDesign *design = hut_check_case_design ();
  g_autoptr(HutCheckCase) c = NULL;

  design->cutter.margin_mm = 210.0; /* 600 x 400: 180 x -20 */
  c = hut_check_case_new (design);
  hut_check_case_assert (
      hut_check_case_find (
          c, "bed.size",
          "The margins leave -20 mm of the cutter's bed; it must be more than 0 mm."),
      HUT_SEVERITY_BLOCKS, -20, 0);
  assert_int_equal (hut_check_case_count (c, "bed.part"), 0);
}

static void
bed_smaller_than_any_part_blocks_once (void **state)
{
  /* 30 x 30 less margins and kerf: 19.8, hardly more than the fingers of one splice (18): panels
   * stay whole. The smallest is a side of the lid, 352 x 111. */
  HutDesign *design = hut_check_case_design ();
  g_autoptr(HutCheckCase) c = NULL;

  design->cutter.bed_width_mm = design->cutter.bed_depth_mm = 30.0;
  design->joints.straps = FALSE;
  c = hut_check_case_new (design);
  hut_check_case_assert (
      hut_check_case_find (
          c, "bed.size",
          "No part goes on the bed: it takes 19.8 mm, and the smallest part is 111 mm."),
      HUT_SEVERITY_BLOCKS, 19.8, 111);
  assert_int_equal (hut_check_case_count (c, "bed.size"), 1);
  assert_int_equal (hut_check_case_count (c, "bed.part"), 0);
  assert_int_equal (hut_check_case_count (c, "splice.place"), 0);
}

static void
turned_strip_may_be_as_long_as_the_diagonal_allows (void **state)
{
  /* 10 broad on 300 x 300: (L + 10) sin 45 = 300, so 414.264. Without turning 300. */
  HutStock *stock = hut_stock_new ("ply");
  HutCutter cutter = { .bed_width_mm = 300, .bed_depth_mm = 300 };
  HutPart part = { .stock = stock };
  double is_mm, must_mm;

  stock->kerf_mm = 0.0;
  stock->sheet_width_mm = stock->sheet_depth_mm = 2000.0;
  part.region = hut_region_new (hut_path_new_rect ((HutRect) { 0, 0, 500, 10 }, 0.0));
  hut_check_bed_numbers (&cutter, &part, &is_mm, &must_mm);
  assert_near_mm (is_mm, 500, 1e-9);
  assert_near_mm (must_mm, 300, 1e-9);
  cutter.any_angle = TRUE;
  hut_check_bed_numbers (&cutter, &part, &is_mm, &must_mm);
  assert_near_mm (must_mm, 300 * sqrt (2) - 10, 0.01);
  hut_region_free (part.region);
  hut_stock_free (stock);
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (parts_on_the_bed_are_not_told),
    cmocka_unit_test (panel_that_no_splice_can_part_blocks),
    cmocka_unit_test (glazing_larger_than_the_bed_is_to_be_bought),
    cmocka_unit_test (panel_that_fits_only_against_the_grain_is_warned_of),
    cmocka_unit_test (glazing_larger_than_its_sheet_names_the_stock),
    cmocka_unit_test (margins_that_leave_no_bed_block),
    cmocka_unit_test (bed_smaller_than_any_part_blocks_once),
    cmocka_unit_test (turned_strip_may_be_as_long_as_the_diagonal_allows),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}

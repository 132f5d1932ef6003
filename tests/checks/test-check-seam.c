/* tests/checks/test-check-seam.c: openings and windows against splices and straps.
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A splice is put in by hand on the lid's top: down the middle, fingers reach 9 to either side.
 * Web 6, so 15 are needed; a strap is 15 x 6 = 90 wide, with 5 more beside it 50 off the splice. */
#include "config.h"
#include "checks/hut-check-case.h"
#include "hut-assert.h"

static const HutPanelId lid_top = { HUT_SHELL_LID, HUT_SIDE_TOP };

static void
add_splice (HutCheckCase *c,
            double from_mm,
            double to_mm)
{
  const HutSplice splice = {
    .panel = (guint)hut_assembly_find_panel (c->assembly, lid_top),
    .of = HUT_PART_PANEL,
    .vertical = TRUE,
    .at_mm = 186,
    .from_mm = from_mm,
    .to_mm = to_mm,
    .finger_count = 5,
    .reach_mm = 9,
  };

  g_array_append_val (c->parts->splices, splice);
}

static HutCheckCase *
with_round_at (double u_mm)
{
  HutDesign *design = hut_check_case_design ();
  HutCheckCase *c;

  hut_check_case_add_round (design, "vent", lid_top, u_mm, 176, 20);
  c = hut_check_case_new (design);
  add_splice (c, 0, 352);
  hut_check_case_check (c);
  return c;
}

static void
opening_in_reach_of_the_fingers_warns (void **state)
{
  /* 205 - 10 - 186 = 9. */
  g_autoptr(HutCheckCase) c = with_round_at (205);
  const HutFinding *finding = hut_check_case_find (
      c, "opening.splice", "vent is 9 mm from a splice of lid top; its fingers need 15 mm.");

  hut_check_case_assert (finding, HUT_SEVERITY_WARNS, 9, 15);
  hut_check_case_assert_place (finding, 0, lid_top, (HutRect) { 185, 175, 196, 177 });
}

static void
opening_on_the_splice_has_no_distance (void **state)
{
  g_autoptr(HutCheckCase) c = with_round_at (190);

  hut_check_case_assert (hut_check_case_get (c, "opening.splice", 0), HUT_SEVERITY_WARNS, 0, 15);
}

static void
opening_in_the_strap_is_a_note (void **state)
{
  /* 240 - 10 - 186 = 44. */
  g_autoptr(HutCheckCase) c = with_round_at (240);

  hut_check_case_assert (
      hut_check_case_find (
          c, "opening.splice",
          "vent is 44 mm from a splice of lid top and interrupts its strap; 50 mm "
          "would leave it whole."),
      HUT_SEVERITY_NOTES, 44, 50);
}

static void
opening_beside_the_strap_is_not_told (void **state)
{
  g_autoptr(HutCheckCase) c = with_round_at (246);

  assert_int_equal (hut_check_case_count (c, "opening.splice"), 0);
}

static void
window_that_a_splice_crosses_is_not_told (void **state)
{
  HutDesign *design = hut_check_case_design ();
  g_autoptr(HutCheckCase) c = NULL;

  hut_check_case_add_window (design, "view", lid_top, (HutRect) { 100, 100, 280, 250 });
  c = hut_check_case_new (design);
  add_splice (c, 0, 100);
  add_splice (c, 250, 352);
  hut_check_case_check (c);
  assert_int_equal (hut_check_case_count (c, "opening.splice"), 0);
}

static void
window_beside_a_splice_is_told (void **state)
{
  /* 196 - 186 = 10. */
  HutDesign *design = hut_check_case_design ();
  g_autoptr(HutCheckCase) c = NULL;

  hut_check_case_add_window (design, "view", lid_top, (HutRect) { 196, 100, 300, 250 });
  c = hut_check_case_new (design);
  add_splice (c, 0, 352);
  hut_check_case_check (c);
  hut_check_case_assert (hut_check_case_get (c, "opening.splice", 0), HUT_SEVERITY_WARNS, 10, 15);
}

static void
strap_over_an_opening_blocks (void **state)
{
  HutDesign *design = hut_check_case_design ();
  HutPart *strap = g_new0 (HutPart, 1);
  g_autoptr(HutCheckCase) c = NULL;
  const HutFinding *finding;

  hut_check_case_add_round (design, "vent", lid_top, 150, 176, 20);
  c = hut_check_case_new (design);
  strap->kind = HUT_PART_STRAP;
  strap->id = g_strdup ("strap");
  strap->label = g_strdup ("STRAP");
  strap->panel = (guint)hut_assembly_find_panel (c->assembly, lid_top);
  strap->stock = hut_design_get_stock (c->assembly->design, "plywood");
  strap->thickness_mm = 6;
  strap->depth_mm = 6;
  strap->region = hut_region_new (hut_path_new_rect ((HutRect) { 141, 50, 231, 300 }, 0.0));
  g_ptr_array_add (c->parts->parts, strap);
  hut_check_case_check (c);
  finding
      = hut_check_case_find (c, "opening.splice",
                             "A strap behind lid top lies over vent: 0 mm are between them, 2 "
                             "mm are wanted.");
  hut_check_case_assert (finding, HUT_SEVERITY_BLOCKS, 0, 2);
  hut_check_case_assert_place (finding, 0, lid_top, (HutRect) { 140, 166, 160, 186 });
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (opening_in_reach_of_the_fingers_warns),
    cmocka_unit_test (opening_on_the_splice_has_no_distance),
    cmocka_unit_test (opening_in_the_strap_is_a_note),
    cmocka_unit_test (opening_beside_the_strap_is_not_told),
    cmocka_unit_test (window_that_a_splice_crosses_is_not_told),
    cmocka_unit_test (window_beside_a_splice_is_told),
    cmocka_unit_test (strap_over_an_opening_blocks),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}

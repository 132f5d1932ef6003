/* tests/checks/test-check-opening.c: openings against edges, finger roots and each other.
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * On the lid's top of hut_check_case_design (), 372 x 352 with fingers 6 deep on all sides, and
 * on the lid's front, 372 x 111, whose lower edge is free. Smallest web 6. */
#include "config.h"
#include "checks/hut-check-case.h"
#include "hut-assert.h"

static const HutPanelId lid_top = { HUT_SHELL_LID, HUT_SIDE_TOP };
static const HutPanelId lid_front = { HUT_SHELL_LID, HUT_SIDE_FRONT };

static HutCheckCase *
with_round (HutPanelId panel,
            double u_mm,
            double v_mm,
            double diameter_mm)
{
  HutDesign *design = hut_check_case_design ();

  hut_check_case_add_round (design, "vent", panel, u_mm, v_mm, diameter_mm);
  return hut_check_case_new (design);
}

static guint
count_openings (const HutCheckCase *c)
{
  const char *const checks[] = {
    "opening.edge",    "opening.joint",  "opening.outside",
    "opening.overlap", "opening.splice", "opening.glazing",
  };
  guint count = 0;

  for (guint i = 0; i < G_N_ELEMENTS (checks); i++)
    count += hut_check_case_count (c, checks[i]);
  return count;
}

static void
opening_in_the_middle_is_not_told (void **state)
{
  g_autoptr(HutCheckCase) c = with_round (lid_top, 186, 176, 40);

  assert_int_equal (count_openings (c), 0);
}

static void
opening_near_a_free_edge_warns (void **state)
{
  /* Radius 10, middle 14 over the edge: 4 are left. */
  g_autoptr(HutCheckCase) c = with_round (lid_front, 186, 14, 20);
  const HutFinding *finding = hut_check_case_find (
      c, "opening.edge", "vent leaves 4 mm to the edge of lid front; its stock holds 6 mm.");

  hut_check_case_assert (finding, HUT_SEVERITY_WARNS, 4, 6);
  assert_string_equal (finding->item, "vent");
  hut_check_case_assert_place (finding, 0, lid_front, (HutRect) { 185, -1, 187, 5 });
  assert_int_equal (count_openings (c), 1);
}

static void
opening_near_finger_roots_warns (void **state)
{
  /* Middle at 24: 24 - 10 - 6 = 8 to the roots, thickness + 5 = 11 are usual; the web of 6 is
   * there. */
  g_autoptr(HutCheckCase) c = with_round (lid_top, 186, 24, 20);
  const HutFinding *finding = hut_check_case_find (
      c, "opening.joint", "vent is 8 mm from the finger roots of lid top; 11 mm are usual.");

  hut_check_case_assert (finding, HUT_SEVERITY_WARNS, 8, 11);
  hut_check_case_assert_place (finding, 0, lid_top, (HutRect) { 176, 6, 196, 14 });
  assert_int_equal (count_openings (c), 1);
}

static void
opening_in_a_corner_tells_both_edges_and_the_nearer_number (void **state)
{
  /* 8 to the roots on the left (24), 9 below (25). */
  g_autoptr(HutCheckCase) c = with_round (lid_top, 24, 25, 20);
  const HutFinding *finding = hut_check_case_get (c, "opening.joint", 0);

  hut_check_case_assert (finding, HUT_SEVERITY_WARNS, 8, 11);
  assert_int_equal (finding->places->len, 2);
  assert_int_equal (hut_check_case_count (c, "opening.joint"), 1);
}

static void
opening_over_a_notch_warns_for_its_web (void **state)
{
  /* The front edge of the top is 360 between its corners: 21 fingers of 360 / 21 = 17.14. The
   * middle one is a notch, because front and back own the ends. Middle at 20: 4 are left over it.
   */
  g_autoptr(HutCheckCase) c = with_round (lid_top, 186, 20, 20);

  hut_check_case_assert (hut_check_case_get (c, "opening.edge", 0), HUT_SEVERITY_WARNS, 4, 6);
  hut_check_case_assert (hut_check_case_get (c, "opening.joint", 0), HUT_SEVERITY_WARNS, 4, 11);
}

static void
opening_over_the_edge_blocks (void **state)
{
  /* Middle 5 over the edge: -5 to 15, the fingers end at 6: 11 too far. On the free edge: 5. */
  g_autoptr(HutCheckCase) jointed = with_round (lid_top, 186, 5, 20);
  g_autoptr(HutCheckCase) free_edge = with_round (lid_front, 186, 5, 20);
  const HutFinding *finding = hut_check_case_find (
      jointed, "opening.outside",
      "vent reaches 11 mm past the solid part of lid top; 0 mm is allowed, so it is not cut.");

  hut_check_case_assert (finding, HUT_SEVERITY_BLOCKS, 11, 0);
  hut_check_case_assert_place (finding, 0, lid_top, (HutRect) { 176, -5, 196, 15 });
  assert_int_equal (count_openings (jointed), 1);
  hut_check_case_assert (hut_check_case_get (free_edge, "opening.outside", 0),
                         HUT_SEVERITY_BLOCKS, 5, 0);
}

static void
opening_too_near_to_be_cut_blocks (void **state)
{
  /* 10.03 - 10: less than the 0.05 that the outline keeps. */
  g_autoptr(HutCheckCase) c = with_round (lid_front, 186, 10.03, 20);

  hut_check_case_assert (
      hut_check_case_find (c, "opening.outside",
                           "vent leaves 0.03 mm to the edge of lid front; with less than 0.05 mm "
                           "it is not cut."),
      HUT_SEVERITY_BLOCKS, 0.03, 0.05);
}

static void
opening_without_a_size_blocks (void **state)
{
  g_autoptr(HutCheckCase) c = with_round (lid_top, 186, 176, 0);

  const HutFinding *finding
      = hut_check_case_find (c, "opening.outside",
                             "vent on lid top has 0 holes that can be cut; 1 or more are needed: "
                             "check its sizes.");

  hut_check_case_assert (finding, HUT_SEVERITY_BLOCKS, 0, 1);
  hut_check_case_assert_place (finding, 0, lid_top, (HutRect) { 185, 175, 187, 177 });
}

static HutCheckCase *
with_two (double u_mm,
          double diameter_mm,
          double other_u_mm,
          double other_diameter_mm)
{
  HutDesign *design = hut_check_case_design ();

  hut_check_case_add_round (design, "vent", lid_top, u_mm, 100, diameter_mm);
  hut_check_case_add_round (design, "plug", lid_top, other_u_mm, 100, other_diameter_mm);
  return hut_check_case_new (design);
}

static void
two_openings_with_little_between_warn (void **state)
{
  /* 100 + 10 to 123 - 10: 3. */
  g_autoptr(HutCheckCase) c = with_two (100, 20, 123, 20);
  const HutFinding *finding = hut_check_case_find (
      c, "opening.overlap", "vent and plug leave 3 mm between them; the stock holds 6 mm.");

  hut_check_case_assert (finding, HUT_SEVERITY_WARNS, 3, 6);
  hut_check_case_assert_place (finding, 0, lid_top, (HutRect) { 109, 99, 114, 101 });
  assert_int_equal (count_openings (c), 1);
}

static void
openings_that_cross_block_once (void **state)
{
  g_autoptr(HutCheckCase) c = with_two (100, 20, 110, 20);

  hut_check_case_assert (
      hut_check_case_find (c, "opening.overlap",
                           "vent runs into plug: 0 mm are left between; the stock holds 6 mm."),
      HUT_SEVERITY_BLOCKS, 0, 6);
  assert_int_equal (count_openings (c), 1);
}

static void
opening_inside_another_one_blocks (void **state)
{
  g_autoptr(HutCheckCase) c = with_two (100, 60, 105, 10);

  hut_check_case_assert (hut_check_case_get (c, "opening.overlap", 0), HUT_SEVERITY_BLOCKS, 0, 6);
}

static void
openings_nearer_than_the_guard_block (void **state)
{
  g_autoptr(HutCheckCase) c = with_two (100, 20, 120.03, 20);

  hut_check_case_assert (hut_check_case_get (c, "opening.overlap", 0), HUT_SEVERITY_BLOCKS, 0.03,
                         6);
  assert_int_equal (count_openings (c), 1);
}

static void
openings_on_two_panels_do_not_meet (void **state)
{
  HutDesign *design = hut_check_case_design ();
  g_autoptr(HutCheckCase) c = NULL;

  hut_check_case_add_round (design, "vent", lid_top, 186, 55, 40);
  hut_check_case_add_round (design, "plug", lid_front, 186, 55, 40);
  c = hut_check_case_new (design);
  assert_int_equal (count_openings (c), 0);
}

static void
holes_of_a_pattern_are_checked_among_themselves (void **state)
{
  /* Two holes of 6 with middles 8 apart: 2 between. 5 apart: they cross. */
  const double apart_mm[] = { 8.0, 5.0 };

  for (guint i = 0; i < G_N_ELEMENTS (apart_mm); i++)
    {
      HutDesign *design = hut_check_case_design ();
      HutOpening *grille = hut_opening_new ("grille", lid_top, HUT_SHAPE_PATTERN);
      const HutPoint holes[] = { { 0, 0 }, { apart_mm[i], 0 } };
      g_autoptr(HutCheckCase) c = NULL;

      grille->diameter_mm = 6.0;
      g_array_set_size (grille->holes, 0);
      g_array_append_vals (grille->holes, holes, G_N_ELEMENTS (holes));
      g_ptr_array_add (design->openings, grille);
      c = hut_check_case_new (design);
      hut_check_case_assert (hut_check_case_get (c, "opening.overlap", 0),
                             i == 0 ? HUT_SEVERITY_WARNS : HUT_SEVERITY_BLOCKS, i == 0 ? 2 : 0,
                             6);
      assert_int_equal (count_openings (c), 1);
    }
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (opening_in_the_middle_is_not_told),
    cmocka_unit_test (opening_near_a_free_edge_warns),
    cmocka_unit_test (opening_near_finger_roots_warns),
    cmocka_unit_test (opening_in_a_corner_tells_both_edges_and_the_nearer_number),
    cmocka_unit_test (opening_over_a_notch_warns_for_its_web),
    cmocka_unit_test (opening_over_the_edge_blocks),
    cmocka_unit_test (opening_too_near_to_be_cut_blocks),
    cmocka_unit_test (opening_without_a_size_blocks),
    cmocka_unit_test (two_openings_with_little_between_warn),
    cmocka_unit_test (openings_that_cross_block_once),
    cmocka_unit_test (opening_inside_another_one_blocks),
    cmocka_unit_test (openings_nearer_than_the_guard_block),
    cmocka_unit_test (openings_on_two_panels_do_not_meet),
    cmocka_unit_test (holes_of_a_pattern_are_checked_among_themselves),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}

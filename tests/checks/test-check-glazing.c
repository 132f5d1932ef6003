/* tests/checks/test-check-glazing.c: glazing and frames against what is beside them.
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Glazing of 3 and frame of 6 reach 10 over the clear opening; walls are 6. */
#include "config.h"
#include "checks/hut-check-case.h"
#include "hut-assert.h"

static const HutPanelId lid_top = { HUT_SHELL_LID, HUT_SIDE_TOP };
static const HutPanelId lid_front = { HUT_SHELL_LID, HUT_SIDE_FRONT };
static const HutPanelId lid_left = { HUT_SHELL_LID, HUT_SIDE_LEFT };

static void
window_with_room_around_is_not_told (void **state)
{
  HutDesign *design = hut_check_case_design ();
  g_autoptr(HutCheckCase) c = NULL;

  hut_check_case_add_window (design, "view", lid_top, (HutRect) { 100, 100, 200, 180 });
  c = hut_check_case_new (design);
  assert_int_equal (hut_check_case_count (c, "opening.glazing"), 0);
}

static void
opening_under_the_glazing_blocks (void **state)
{
  /* The plates begin at 90, the opening ends at 94. To the clear opening at 100 it keeps its web
   * of 6. */
  HutDesign *design = hut_check_case_design ();
  g_autoptr(HutCheckCase) c = NULL;
  const HutFinding *finding;

  hut_check_case_add_window (design, "view", lid_top, (HutRect) { 100, 100, 200, 180 });
  hut_check_case_add_round (design, "vent", lid_top, 84, 140, 20);
  c = hut_check_case_new (design);
  assert_int_equal (hut_check_case_count (c, "opening.overlap"), 0);
  assert_int_equal (hut_check_case_count (c, "opening.glazing"), 1);
  finding = hut_check_case_find (
      c, "opening.glazing",
      "The glazing of view lies 4 mm over vent and closes it; 0 mm is allowed.");
  hut_check_case_assert (finding, HUT_SEVERITY_BLOCKS, 4, 0);
  assert_string_equal (finding->item, "view");
  hut_check_case_assert_place (finding, 0, lid_top, (HutRect) { 74, 130, 94, 150 });
}

static void
glazing_past_a_free_edge_blocks (void **state)
{
  /* The front's lower edge is the seam: the clear opening begins 5 over it, the plates 5 under
   * it. */
  HutDesign *design = hut_check_case_design ();
  g_autoptr(HutCheckCase) c = NULL;

  hut_check_case_add_window (design, "view", lid_front, (HutRect) { 100, 5, 200, 60 });
  c = hut_check_case_new (design);
  hut_check_case_assert (
      hut_check_case_find (
          c, "opening.glazing",
          "The glazing of view reaches 5 mm past the edge of lid front; 0 mm is allowed."),
      HUT_SEVERITY_BLOCKS, 5, 0);
}

static void
glazing_in_the_next_wall_blocks (void **state)
{
  /* The clear opening begins at 14, the plates at 4: 2 in the left wall, which ends at 6. */
  HutDesign *design = hut_check_case_design ();
  g_autoptr(HutCheckCase) c = NULL;
  const HutFinding *finding;

  hut_check_case_add_window (design, "view", lid_top, (HutRect) { 14, 100, 100, 180 });
  c = hut_check_case_new (design);
  finding = hut_check_case_find (c, "opening.glazing",
                                 "The glazing of view runs 2 mm into lid left; 0 mm is allowed.");
  hut_check_case_assert (finding, HUT_SEVERITY_BLOCKS, 2, 0);
  hut_check_case_assert_place (finding, 0, lid_top, (HutRect) { 4, 90, 110, 190 });
}

static void
frames_that_meet_in_a_corner_block_once (void **state)
{
  /* On the front the plates begin 10 from the left, on the left side they end 10 from the front.
   * The frames lie 9 .. 15 behind the outer faces, so both fill the 10 .. 15 square of the
   * corner: 5 deep. The glazings, 6 .. 9 behind the faces, do not meet. */
  HutDesign *design = hut_check_case_design ();
  g_autoptr(HutCheckCase) c = NULL;
  double deep_mm;

  design->machine.clearance_mm.left = design->machine.clearance_mm.front = 60.0;
  hut_check_case_add_window (design, "view", lid_front, (HutRect) { 20, 30, 100, 80 });
  hut_check_case_add_window (design, "side", lid_left, (HutRect) { 100, 30, 200, 80 });
  c = hut_check_case_new (design);
  {
    /* The left side's u runs to the front and ends there, whatever the depth came to. */
    HutDesign *moved = hut_design_copy (c->assembly->design);
    const double depth_mm = c->assembly->outer_mm.y;

    hut_design_get_window (moved, "side")->at.u_offset_mm = depth_mm - 20.0 - 50.0;
    hut_check_case_free (g_steal_pointer (&c));
    c = hut_check_case_new (moved);
  }
  assert_int_equal (hut_check_case_count (c, "opening.glazing"), 1);
  deep_mm = hut_check_case_get (c, "opening.glazing", 0)->is;
  assert_near_mm (deep_mm, 5, 1e-9);
  hut_check_case_find (c, "opening.glazing",
                       "The glazing of view runs 5 mm into that of side; 0 mm is allowed.");
}

static void
frame_that_reaches_past_its_glazing_is_told_as_the_frame (void **state)
{
  /* M3: holes of 3.4. The frame reaches 2 x (6 + 1.7) past the glazing, and a step of the grid: its
   * left side lies at 100 - 10 - 15.402 = 74.598, the vent's right one at 76. */
  HutDesign *design = hut_check_case_design ();
  g_autoptr(HutCheckCase) c = NULL;
  const HutFinding *finding;

  hut_check_case_add_window (design, "view", lid_top, (HutRect) { 100, 100, 200, 180 })->screw_mm
      = 3.0;
  hut_check_case_add_round (design, "vent", lid_top, 66, 140, 20);
  c = hut_check_case_new (design);
  finding = hut_check_case_find (
      c, "opening.glazing",
      "The frame of view lies 1.4 mm over vent and closes it; 0 mm is allowed.");
  assert_near_mm (finding->is, 1.402, 1e-6);
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (window_with_room_around_is_not_told),
    cmocka_unit_test (opening_under_the_glazing_blocks),
    cmocka_unit_test (frame_that_reaches_past_its_glazing_is_told_as_the_frame),
    cmocka_unit_test (glazing_past_a_free_edge_blocks),
    cmocka_unit_test (glazing_in_the_next_wall_blocks),
    cmocka_unit_test (frames_that_meet_in_a_corner_block_once),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}

/* tests/checks/test-check-room.c: the enclosure in the room that it gets.
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The enclosure of hut_check_case_design () is 252 high. */
#include "config.h"
#include "checks/hut-check-case.h"
#include "hut-assert.h"

static void
shelf_lower_than_the_enclosure_blocks (void **state)
{
  HutDesign *design = hut_check_case_design ();
  g_autoptr(HutCheckCase) c = NULL;
  const HutFinding *finding;

  design->room_mm.above = 250.0;
  c = hut_check_case_new (design);
  finding = hut_check_case_find (
      c, "clearance.room",
      "The enclosure is 252 mm high; the shelf above leaves 250 mm over the bench.");
  hut_check_case_assert (finding, HUT_SEVERITY_BLOCKS, 252, 250);
  hut_check_case_assert_place (finding, 0, (HutPanelId) { HUT_SHELL_LID, HUT_SIDE_TOP },
                               (HutRect) { 0, 0, 372, 352 });
  /* The lid is in the shelf before it moves: that is told once. */
  assert_int_equal (hut_check_case_count (c, "lid.swing"), 0);
}

static void
shelf_right_on_the_enclosure_is_enough_and_none_is_too (void **state)
{
  const double above_mm[] = { 252.0, HUT_ROOM_FREE };

  for (guint i = 0; i < G_N_ELEMENTS (above_mm); i++)
    {
      HutDesign *design = hut_check_case_design ();
      g_autoptr(HutCheckCase) c = NULL;

      design->room_mm.above = above_mm[i];
      c = hut_check_case_new (design);
      assert_int_equal (hut_check_case_count (c, "clearance.room"), 0);
    }
}

static void
lid_without_a_hinge_must_be_lifted_over_the_machine (void **state)
{
  /* The machine ends at 226, 86 over the seam at 140: the lid's top gets to 252 + 86 = 338. */
  HutDesign *design = hut_check_case_design (), *more;
  g_autoptr(HutCheckCase) tight = NULL, enough = NULL;

  design->shell.lid = HUT_LID_LIFT_OFF;
  design->room_mm.above = 300.0;
  more = hut_design_copy (design);
  more->room_mm.above = 338.0;
  tight = hut_check_case_new (design);
  enough = hut_check_case_new (more);
  hut_check_case_assert (
      hut_check_case_find (tight, "clearance.room",
                           "Lifted off over the machine, the lid reaches 338 mm over the bench; "
                           "the shelf above leaves 300 mm."),
      HUT_SEVERITY_WARNS, 338, 300);
  assert_int_equal (hut_check_case_count (enough, "clearance.room"), 0);
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (shelf_lower_than_the_enclosure_blocks),
    cmocka_unit_test (shelf_right_on_the_enclosure_is_enough_and_none_is_too),
    cmocka_unit_test (lid_without_a_hinge_must_be_lifted_over_the_machine),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}

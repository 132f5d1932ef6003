/* tests/checks/test-check-trap.c: light traps: the way of the air, and what stands in their way.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "config.h"
#include "checks/hut-check-case.h"
#include "hut-assert.h"

static const HutPanelId left = { HUT_SHELL_BASE, HUT_SIDE_LEFT };

/* A hole of 30 with its middle at 176, 80 in the left panel, which is 352 x 140; web 6, walls 6. */
static HutOpening *
add (HutDesign *design)
{
  HutOpening *opening = hut_check_case_add_round (design, "vent", left, 176, 80, 30);

  opening->trap_mm = 60.0;
  return opening;
}

static void
a_trap_with_room_is_no_finding (void **state)
{
  HutDesign *design = hut_check_case_design ();
  g_autoptr(HutCheckCase) c = NULL;

  add (design);
  c = hut_check_case_new (design);
  assert_int_equal (hut_check_case_count (c, "trap.place"), 0);
  assert_int_equal (hut_check_case_count (c, "trap.opening"), 0);
  assert_int_equal (hut_check_case_count (c, "trap.flow"), 0);
}

static void
slots_that_are_narrower_than_the_hole_are_told (void **state)
{
  /* Depth 30: slots of 10 x (30 + 12) = 420 mm2; the hole has pi 15^2 = 706.86 mm2. */
  HutDesign *design = hut_check_case_design ();
  g_autoptr(HutCheckCase) c = NULL;

  add (design)->trap_mm = 30.0;
  c = hut_check_case_new (design);
  hut_check_case_assert (hut_check_case_get (c, "trap.flow", 0), HUT_SEVERITY_WARNS, 4.2,
                         G_PI * 2.25);
}

static void
a_hole_under_the_box_is_told (void **state)
{
  /* The box reaches 15 + 6 + 6 = 27 to the right of the middle: to 203. A hole of 20 at 208 begins at
   * 198. */
  HutDesign *design = hut_check_case_design ();
  g_autoptr(HutCheckCase) c = NULL;

  add (design);
  hut_check_case_add_round (design, "other", left, 208, 80, 20);
  c = hut_check_case_new (design);
  hut_check_case_assert (hut_check_case_get (c, "trap.opening", 0), HUT_SEVERITY_WARNS, 5, 0);
}

static void
a_box_in_the_floor_blocks (void **state)
{
  /* Middle at 45: the box goes down to 45 - 21 - 12 - 20 = -8, past the bottom's 6. */
  HutDesign *design = hut_check_case_design ();
  g_autoptr(HutCheckCase) c = NULL;

  add (design)->at.v_offset_mm = 45.0;
  c = hut_check_case_new (design);
  assert_int_equal (hut_check_case_count (c, "trap.place"), 1);
  assert_int_equal (hut_check_case_get (c, "trap.place", 0)->severity, HUT_SEVERITY_BLOCKS);
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (a_trap_with_room_is_no_finding),
    cmocka_unit_test (slots_that_are_narrower_than_the_hole_are_told),
    cmocka_unit_test (a_hole_under_the_box_is_told),
    cmocka_unit_test (a_box_in_the_floor_blocks),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}

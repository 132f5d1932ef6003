/* tests/checks/test-check-depth.c: what hardware takes up inside.
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * hut_check_case_design () with its size set by hand: 360 x 340 x 240 inside, walls 6. The machine, 320
 * x 300 x 220, stands 20 from each wall; 20 are wanted. base-back is seen from behind: u = 372 - x. */
#include "config.h"
#include "hut-cure.h"

static const HutPanelId base_back = { HUT_SHELL_BASE, HUT_SIDE_BACK };
static const HutPanelId base_left = { HUT_SHELL_BASE, HUT_SIDE_LEFT };

static HutDesign *
new_design (void)
{
  HutDesign *design = hut_check_case_design ();

  design->shell.fitted = FALSE;
  design->shell.inside_mm = (HutVec3) { 360, 340, 240 };
  return design;
}

/* The machine 100 wide: it stands at x = 6 + 20 + (360 - 140) / 2 = 136 .. 236. */
static HutDesign *
new_narrow_machine (HutBodyKind kind)
{
  HutDesign *design = new_design ();
  HutBody *body = g_ptr_array_index (design->machine.bodies, 0);

  body->kind = kind;
  body->box.max.x = body->box.min.x + 100.0;
  return design;
}

static HutItem *
new_box (const char *id,
         double half_mm,
         double depth_mm)
{
  HutItem *item = hut_test_item_new (id);

  hut_test_item_add_round (item, 12.0);
  hut_test_item_add_body (item, HUT_ITEM_BEHIND, 0,
                          (HutRect) { -half_mm, -half_mm, half_mm, half_mm }, depth_mm, FALSE);
  return item;
}

static void
body_near_the_machine_goes_to_the_other_face (void **state)
{
  HutDesign *design = new_design ();

  /* 20 - 15 */
  hut_test_put (design, "plug", new_box ("plug", 20, 15), base_back, 186, 70);
  assert_cured (design, "depth.machine", HUT_SEVERITY_WARNS, 5.0, 20.0, HUT_FIX_FACE);
}

static void
body_that_goes_from_outside_only_moves_beside_the_machine (void **state)
{
  HutDesign *design = new_narrow_machine (HUT_BODY_MOVING);
  HutItem *item = new_box ("plug", 20, 25);

  item->from_inside = FALSE;
  hut_test_put (design, "plug", item, base_back, 186, 70);
  {
    g_autoptr(HutCheckCase) c = hut_check_case_new (hut_design_copy (design));
    const HutFinding *finding = hut_check_case_find (
        c, "depth.motion", "Machine moves 5 mm into plug; 20 mm of free room are wanted.");
    g_autofree char *fix = hut_finding_dup_fix_text (finding, NULL, ".");

    /* Shadow 136 .. 236, grown by 20: 116 .. 256. The body's right side comes from 206 to 116. */
    assert_near_mm (finding->fix.du_mm, -90.0, 1e-9);
    assert_near_mm (finding->fix.dv_mm, 0.0, 0.0);
    assert_string_equal (fix, "Move it 90 mm to the left");
  }
  assert_cured (design, "depth.motion", HUT_SEVERITY_BLOCKS, 5.0, 20.0, HUT_FIX_MOVE);
}

static void
leads_may_come_up_to_the_machine_and_into_other_soft_room (void **state)
{
  HutDesign *design = new_narrow_machine (HUT_BODY_KEEP_OUT);
  HutItem *item = hut_test_item_new ("plug");
  g_autoptr(HutCheckCase) c = NULL;

  hut_test_item_add_round (item, 12.0);
  hut_test_item_add_body (item, HUT_ITEM_BEHIND, 0, (HutRect) { -10, -10, 10, 10 }, 30.0, TRUE);
  hut_test_put (design, "plug", item, base_back, 186, 70);
  c = hut_check_case_new (design);
  assert_int_equal (count_told (c), 0);
}

static void
leads_in_the_machine_warn (void **state)
{
  HutDesign *design = new_narrow_machine (HUT_BODY_STATIC);
  HutItem *item = hut_test_item_new ("plug");

  hut_test_item_add_round (item, 12.0);
  hut_test_item_add_body (item, HUT_ITEM_BEHIND, 0, (HutRect) { -10, -10, 10, 10 }, 30.0, TRUE);
  hut_test_put (design, "plug", item, base_back, 186, 70);
  assert_cured (design, "depth.machine", HUT_SEVERITY_WARNS, 10.0, 0.0, HUT_FIX_FACE);
}

static void
two_bodies_in_one_place_are_told_once (void **state)
{
  HutDesign *design = new_design ();
  HutItem *first = new_box ("first", 20, 10), *second = new_box ("second", 20, 10);

  /* 30 from middle to middle: 40 - 30 = 10 deep along u, and 10 along the depth. Both are too near to
   * the machine unless that stands further off. */
  design->machine.clearance_mm.front = design->machine.clearance_mm.back = 5.0;
  first->from_inside = second->from_inside = FALSE;
  hut_test_put (design, "one", first, base_back, 150, 70);
  hut_test_put (design, "two", second, base_back, 180, 70);
  assert_cured (design, "depth.hardware", HUT_SEVERITY_BLOCKS, 10.0, 0.0, HUT_FIX_MOVE);
}

static void
body_round_the_corner_runs_into_the_wall (void **state)
{
  HutDesign *design = new_design ();
  HutItem *item = new_box ("plug", 24, 10);

  /* The left wall is seen with its front on the right, at u = 352. Middle at 30: the body begins at 6;
   * 24 further left than the back wall's inner face at u = 6 there is none; at 26 it is 4 deep. */
  design->machine.clearance_mm.left = design->machine.clearance_mm.right = 5.0;
  item->from_inside = FALSE;
  hut_test_put (design, "plug", item, base_left, 26, 70);
  assert_cured (design, "depth.solid", HUT_SEVERITY_BLOCKS, 4.0, 0.0, HUT_FIX_MOVE);
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (body_near_the_machine_goes_to_the_other_face),
    cmocka_unit_test (body_that_goes_from_outside_only_moves_beside_the_machine),
    cmocka_unit_test (leads_may_come_up_to_the_machine_and_into_other_soft_room),
    cmocka_unit_test (leads_in_the_machine_warn),
    cmocka_unit_test (two_bodies_in_one_place_are_told_once),
    cmocka_unit_test (body_round_the_corner_runs_into_the_wall),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}

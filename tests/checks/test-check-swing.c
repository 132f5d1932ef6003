/* tests/checks/test-check-swing.c: what is told about the opening lid.
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The numbers are derived in test-swing.c; here it is told, and told once. */
#include "config.h"
#include "checks/hut-check-case.h"
#include "hut-assert.h"

static const HutPanelId lid_front = { HUT_SHELL_LID, HUT_SIDE_FRONT };

static void
lid_with_all_its_room_is_not_told (void **state)
{
  g_autoptr(HutCheckCase) c = hut_check_case_new (hut_check_case_design ());

  assert_int_equal (hut_check_case_count (c, "lid.swing"), 0);
  assert_int_equal (hut_check_case_count (c, "lid.hinge"), 0);
}

static void
lid_that_comes_too_near_warns_with_both_numbers_and_the_angle (void **state)
{
  /* 8.9748 mm at atan (85.5 / 326) - atan (0.5 / 346) = 14.6138 degrees. */
  HutDesign *design = hut_check_case_design ();
  g_autoptr(HutCheckCase) c = NULL;
  const HutFinding *finding;

  design->shell.swing_clearance_mm = 10.0;
  c = hut_check_case_new (design);
  finding = hut_check_case_find (c, "lid.swing",
                                 "lid front comes within 8.97 mm of Machine when opened by 14.61 "
                                 "degrees; 10 mm are wanted.");
  hut_check_case_assert (finding, HUT_SEVERITY_WARNS, hypot (346, 0.5) - hypot (326, 85.5), 10);
  assert_string_equal (finding->item, "machine");
  hut_check_case_assert_place (finding, 0, lid_front, (HutRect) { 0, 0, 372, 111 });
}

static void
lid_that_hits_the_machine_blocks_with_both_angles (void **state)
{
  /* Seam 90: 11.03 degrees by test-swing.c; it shall open by 90. */
  HutDesign *design = hut_check_case_design ();
  g_autoptr(HutCheckCase) c = NULL;
  const double expected_deg = (atan2 (135.5, 326) - acos (346 / hypot (326, 135.5))) * 180 / G_PI;
  const HutFinding *finding;

  design->shell.seam_height_mm = 90.0;
  c = hut_check_case_new (design);
  finding = hut_check_case_get (c, "lid.swing", 0);
  assert_int_equal (hut_check_case_count (c, "lid.swing"), 1);
  assert_string_equal (finding->what, "lid front");
  assert_string_equal (finding->other, "Machine");
  assert_int_equal (finding->severity, HUT_SEVERITY_BLOCKS);
  assert_near (finding->is, expected_deg, 0.01);
  assert_near (finding->must, 90, 0);
}

static void
wall_behind_is_told_by_its_name (void **state)
{
  HutDesign *design = hut_check_case_design ();
  g_autoptr(HutCheckCase) c = NULL;

  design->room_mm.back = 115.0; /* 111.5 are needed, 3.5 are left, 5 are wanted */
  c = hut_check_case_new (design);
  hut_check_case_assert (
      hut_check_case_find (c, "lid.swing",
                           "lid back comes within 3.5 mm of the wall behind when opened by 90 "
                           "degrees; 5 mm are wanted."),
      HUT_SEVERITY_WARNS, 3.5, 5);
}

static void
shelf_that_is_hit_blocks (void **state)
{
  /* Shelf at 300: 159.5 over the hinge. The front upper edge, 369.237 from it and atan (111.5 /
   * 352) = 17.5754 degrees up, gets there after asin (159.5 / 369.237) - 17.5754 = 8.0151
   * degrees. */
  HutDesign *design = hut_check_case_design ();
  g_autoptr(HutCheckCase) c = NULL;
  const HutFinding *finding;

  design->room_mm.above = 300.0;
  c = hut_check_case_new (design);
  finding = hut_check_case_get (c, "lid.swing", 0);
  assert_string_equal (finding->other, "the shelf above");
  assert_int_equal (finding->severity, HUT_SEVERITY_BLOCKS);
  assert_near (finding->is, 8.0151, 0.01);
}

static void
base_wants_half_the_seam (void **state)
{
  /* At 130 degrees the folded seam is cos (65 deg) = 0.4226 wide, under 0.5. */
  HutDesign *design = hut_check_case_design ();
  g_autoptr(HutCheckCase) c = NULL;
  const HutFinding *finding;

  design->shell.opening_angle_deg = 130.0;
  c = hut_check_case_new (design);
  finding = hut_check_case_find (c, "lid.swing",
                                 "lid back comes within 0.42 mm of base back when opened by 130 "
                                 "degrees; 0.5 mm are wanted.");
  hut_check_case_assert (finding, HUT_SEVERITY_WARNS, cos (65 * G_PI / 180), 0.5);
  assert_int_equal (finding->places->len, 2);
}

static void
hinge_inside_the_wall_blocks (void **state)
{
  HutDesign *design = hut_check_case_design ();
  g_autoptr(HutCheckCase) c = NULL;
  const HutFinding *finding;

  design->shell.hinge_offset_mm = -3.0;
  c = hut_check_case_new (design);
  finding = hut_check_case_get (c, "lid.swing", 0);
  assert_string_equal (finding->other, "base back");
  assert_int_equal (finding->severity, HUT_SEVERITY_BLOCKS);
  assert_near (finding->is, 2 * atan (0.5 / 3) * 180 / G_PI, 0.05);
}

static void
closed_lid_in_the_machine_is_the_clearance_check_s_business (void **state)
{
  /* Too low by hand: the machine is in the lid's top. Nothing more is hit while opening. */
  HutDesign *design = hut_check_case_design ();
  g_autoptr(HutCheckCase) c = NULL;

  design->shell.fitted = FALSE;
  design->shell.inside_mm = (HutVec3) { 360, 500, 218 };
  design->machine.clearance_mm.front = 150.0;
  c = hut_check_case_new (design);
  assert_true (hut_check_case_count (c, "clearance.static") > 0);
  for (guint i = 0; i < hut_check_case_count (c, "lid.swing"); i++)
    assert_true (hut_check_case_get (c, "lid.swing", i)->is > 0.0);
}

static void
lid_that_is_in_the_machine_is_told_where_it_also_hits_it_later (void **state)
{
  /* Inside 218 high: the lid's top is 2 deep in the machine when closed. Seam at 90: the front
   * hits it at 11.03 degrees as well, and that is told here. */
  HutDesign *design = hut_check_case_design ();
  g_autoptr(HutCheckCase) c = NULL;
  const double expected_deg = (atan2 (135.5, 326) - acos (346 / hypot (326, 135.5))) * 180 / G_PI;
  const HutFinding *finding;

  design->shell.fitted = FALSE;
  design->shell.inside_mm = (HutVec3) { 360, 340, 218 };
  design->shell.seam_height_mm = 90.0;
  c = hut_check_case_new (design);
  hut_check_case_assert (
      hut_check_case_find (c, "clearance.static",
                           "Machine reaches 2 mm into lid top; 20 mm of free room are wanted."),
      HUT_SEVERITY_BLOCKS, 2, 20);
  finding = hut_check_case_get (c, "lid.swing", 0);
  assert_string_equal (finding->what, "lid front");
  assert_near (finding->is, expected_deg, 0.01);
}

static void
hinge_line_that_the_lid_has_not_blocks (void **state)
{
  HutDesign *design = hut_check_case_design ();
  g_autoptr(HutCheckCase) c = NULL;

  design->shell.hinge = HUT_HINGE_TOP;
  c = hut_check_case_new (design);
  assert_int_equal (hut_check_case_get (c, "lid.hinge", 0)->severity, HUT_SEVERITY_BLOCKS);
  assert_int_equal (hut_check_case_count (c, "lid.swing"), 0);
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (lid_with_all_its_room_is_not_told),
    cmocka_unit_test (lid_that_comes_too_near_warns_with_both_numbers_and_the_angle),
    cmocka_unit_test (lid_that_hits_the_machine_blocks_with_both_angles),
    cmocka_unit_test (wall_behind_is_told_by_its_name),
    cmocka_unit_test (shelf_that_is_hit_blocks),
    cmocka_unit_test (base_wants_half_the_seam),
    cmocka_unit_test (hinge_inside_the_wall_blocks),
    cmocka_unit_test (closed_lid_in_the_machine_is_the_clearance_check_s_business),
    cmocka_unit_test (lid_that_is_in_the_machine_is_told_where_it_also_hits_it_later),
    cmocka_unit_test (hinge_line_that_the_lid_has_not_blocks),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}

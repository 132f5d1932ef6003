/* tests/checks/test-check-clearance.c: the machine against the inside of the enclosure.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "config.h"
#include "checks/hut-check-case.h"
#include "hut-assert.h"
#include "hut-random-design.h"

static const HutPanelId base_left = { HUT_SHELL_BASE, HUT_SIDE_LEFT };
static const HutPanelId base_right = { HUT_SHELL_BASE, HUT_SIDE_RIGHT };
static const HutPanelId lid_front = { HUT_SHELL_LID, HUT_SIDE_FRONT };
static const HutPanelId lid_left = { HUT_SHELL_LID, HUT_SIDE_LEFT };
static const HutPanelId lid_right = { HUT_SHELL_LID, HUT_SIDE_RIGHT };

static HutDesign *
design_by_hand (double width_mm,
                double depth_mm,
                double height_mm)
{
  HutDesign *design = hut_check_case_design ();

  design->shell.fitted = FALSE;
  design->shell.inside_mm = (HutVec3) { width_mm, depth_mm, height_mm };
  return design;
}

static void
fitted_enclosure_has_all_the_room_that_is_wanted (void **state)
{
  g_autoptr(HutCheckCase) fitted = hut_check_case_new (hut_check_case_design ());
  g_autoptr(HutCheckCase) exact = hut_check_case_new (design_by_hand (360, 340, 240));

  assert_int_equal (hut_check_case_count (fitted, "clearance.static"), 0);
  assert_int_equal (hut_check_case_count (exact, "clearance.static"), 0);
}

static void
ten_too_narrow_is_five_less_on_each_side (void **state)
{
  /* Wanted inside 20 + 320 + 20 = 360; the missing 10 are shared: 15 on each side. */
  g_autoptr(HutCheckCase) c = hut_check_case_new (design_by_hand (350, 340, 240));
  const HutFinding *left = hut_check_case_find (
      c, "clearance.static", "Machine comes within 15 mm of base left; 20 mm are wanted.");
  const HutFinding *right = hut_check_case_find (
      c, "clearance.static", "Machine comes within 15 mm of base right; 20 mm are wanted.");

  assert_int_equal (hut_check_case_count (c, "clearance.static"), 2);
  hut_check_case_assert (left, HUT_SEVERITY_WARNS, 15, 20);
  hut_check_case_assert (right, HUT_SEVERITY_WARNS, 15, 20);
  assert_string_equal (left->item, "machine");

  /* The left panel's u runs from the back (y 352) to the front: the machine's 26 .. 326 is u 26
   * .. 326. It stands on the floor at 6 and ends at 226; the base reaches to 140, the lid begins
   * at 141. */
  hut_check_case_assert_place (left, 0, base_left, (HutRect) { 26, 6, 326, 140 });
  hut_check_case_assert_place (left, 1, lid_left, (HutRect) { 26, 0, 326, 85 });
  hut_check_case_assert_place (right, 0, base_right, (HutRect) { 26, 6, 326, 140 });
  hut_check_case_assert_place (right, 1, lid_right, (HutRect) { 26, 0, 326, 85 });
}

static void
too_small_by_hand_tells_the_exact_shortfall (void **state)
{
  /* Inside 300: 60 are missing, the gap is 20 - 30 = -10: the machine is 10 deep in the wall.
   * Inside height 210: its top at 6 + 220 is 10 over the top's lower face at 216. */
  g_autoptr(HutCheckCase) c = hut_check_case_new (design_by_hand (300, 340, 210));
  const HutFinding *left = hut_check_case_find (
      c, "clearance.static",
      "Machine reaches 10 mm into base left; 20 mm of free room are wanted.");
  const HutFinding *top = hut_check_case_find (
      c, "clearance.static",
      "Machine reaches 10 mm into lid top; 20 mm of free room are wanted.");

  hut_check_case_assert (left, HUT_SEVERITY_BLOCKS, 10, 20);
  hut_check_case_assert (top, HUT_SEVERITY_BLOCKS, 10, 20);
  assert_int_equal (hut_check_case_count (c, "clearance.static"), 3);
  assert_true (hut_findings_block (c->findings, NULL));
}

static void
touching_a_wall_is_not_a_collision (void **state)
{
  /* Inside 320: exactly the machine. */
  g_autoptr(HutCheckCase) c = hut_check_case_new (design_by_hand (320, 340, 240));

  hut_check_case_assert (hut_check_case_get (c, "clearance.static", 0), HUT_SEVERITY_WARNS, 0,
                         20);
}

static HutBody *
add_body (HutDesign *design,
          HutBodyKind kind,
          HutBox3 box,
          HutVec3 travel)
{
  HutBody *body = hut_body_new ("more", kind);

  body->box = box;
  body->travel = travel;
  g_free (body->name);
  body->name = g_strdup ("");
  g_ptr_array_add (design->machine.bodies, body);
  return body;
}

static void
motion_counts_with_all_of_its_travel (void **state)
{
  /* A gantry 0 .. 100 that travels by 250 needs 0 .. 350, so the whole machine is 350 wide and
   * needs 390. Inside 360: -15 on each side, 5 are left. The static body has 360 - 5 - 320 = 35
   * on the right. */
  HutDesign *design = design_by_hand (360, 340, 240);
  g_autoptr(HutCheckCase) c = NULL;

  add_body (design, HUT_BODY_MOVING, (HutBox3) { { 0, 50, 150 }, { 100, 100, 200 } },
            (HutVec3) { 250, 0, 0 });
  c = hut_check_case_new (design);
  assert_int_equal (hut_check_case_count (c, "clearance.motion"), 2);
  assert_int_equal (hut_check_case_count (c, "clearance.static"), 1);
  hut_check_case_assert (hut_check_case_get (c, "clearance.static", 0), HUT_SEVERITY_WARNS, 5,
                         20);
  /* No name was given: the id stands for it. */
  hut_check_case_assert (
      hut_check_case_find (c, "clearance.motion",
                           "more moves to within 5 mm of lid left; 20 mm are wanted."),
      HUT_SEVERITY_WARNS, 5, 20);
  hut_check_case_assert (
      hut_check_case_find (c, "clearance.motion",
                           "more moves to within 5 mm of lid right; 20 mm are wanted."),
      HUT_SEVERITY_WARNS, 5, 20);
}

static void
keep_out_that_a_wall_takes_blocks (void **state)
{
  /* A cable loop 80 long behind a machine of 300: with both clearances 420 are needed, 340 are
   * there. Each side lacks 40, so the loop is 20 in the back wall, and the machine 20 in the
   * front wall. */
  HutDesign *design = design_by_hand (360, 340, 240);
  g_autoptr(HutCheckCase) c = NULL;

  add_body (design, HUT_BODY_KEEP_OUT, (HutBox3) { { 100, 300, 10 }, { 150, 380, 60 } },
            (HutVec3) { 0 });
  c = hut_check_case_new (design);
  hut_check_case_assert (
      hut_check_case_find (c, "clearance.keep-out",
                           "base back takes 20 mm of more; it and 20 mm around must be free."),
      HUT_SEVERITY_BLOCKS, 20, 20);
  hut_check_case_assert (
      hut_check_case_find (
          c, "clearance.static",
          "Machine reaches 20 mm into base front; 20 mm of free room are wanted."),
      HUT_SEVERITY_BLOCKS, 20, 20);
}

static void
keep_out_near_a_wall_warns (void **state)
{
  /* The loop's top at 6 + 235 is 5 under the lid's lower face at 246. */
  HutDesign *design = design_by_hand (360, 340, 240);
  g_autoptr(HutCheckCase) c = NULL;

  add_body (design, HUT_BODY_KEEP_OUT, (HutBox3) { { 100, 100, 100 }, { 150, 150, 235 } },
            (HutVec3) { 0 });
  c = hut_check_case_new (design);
  hut_check_case_assert (
      hut_check_case_find (c, "clearance.keep-out",
                           "lid top is 5 mm from more; 20 mm around it are to stay free."),
      HUT_SEVERITY_WARNS, 5, 20);
}

static void
frame_behind_a_window_takes_room (void **state)
{
  /* 3 glazing and 6 frame behind the front: with 9 + 20 + 300 + 20 = 349 wanted and 340
   * there, 4.5 are missing on either side: 15.5 to the frame and 15.5 to the back. The glazing
   * under the frame is not told as well. */
  HutDesign *design = design_by_hand (360, 340, 240);
  g_autoptr(HutCheckCase) c = NULL;
  const HutFinding *finding;

  hut_check_case_add_window (design, "view", lid_front, (HutRect) { 100, 30, 200, 80 });
  c = hut_check_case_new (design);
  assert_int_equal (hut_check_case_count (c, "clearance.static"), 2);
  finding = hut_check_case_find (c, "clearance.static",
                                 "Machine comes within 15.5 mm of view; 20 mm are wanted.");
  hut_check_case_assert (finding, HUT_SEVERITY_WARNS, 15.5, 20);
  hut_check_case_assert_place (finding, 0, lid_front, (HutRect) { 90, 20, 210, 90 });
  hut_check_case_assert (
      hut_check_case_find (c, "clearance.static",
                           "Machine comes within 15.5 mm of base back; 20 mm are wanted."),
      HUT_SEVERITY_WARNS, 15.5, 20);
}

static void
straps_take_room_and_are_told_together (void **state)
{
  /* Base front is 372 x 140 on a bed of 210 - 10: one or more splices, each with a strap of 6
   * behind the wall, and the same at the back: what is missing is shared, so the walls are 20 off
   * and straps 14. */
  HutDesign *design = design_by_hand (360, 340, 240);
  g_autoptr(HutCheckCase) c = NULL;
  const HutFinding *finding;

  design->cutter.bed_width_mm = 210.0;
  design->cutter.bed_depth_mm = 210.0;
  c = hut_check_case_new (design);
  finding = hut_check_case_find (
      c, "clearance.static",
      "Machine comes within 14 mm of a strap on base front; 20 mm are wanted.");
  hut_check_case_assert (finding, HUT_SEVERITY_WARNS, 14, 20);
  assert_string_equal (
      hut_panel_id_to_string (g_array_index (finding->places, HutPlace, 0).panel), "base-front");
  assert_true (finding->places->len >= 1);
}

static void
ledge_under_the_floor_needs_no_room (void **state)
{
  HutDesign *design = hut_check_case_design ();
  g_autoptr(HutCheckCase) c = NULL;

  design->shell.bottom = HUT_BOTTOM_INSET;
  c = hut_check_case_new (design);
  assert_int_equal (hut_check_case_count (c, "clearance.static"), 0);
}

static void
body_under_the_bench_line_collides_with_floor_and_ledge (void **state)
{
  /* A leg 8 deeper than the machine's feet: 8 in the floor of 6, and 2 in the ledge under that.
   * The ledge is 20 wide from the wall on, the leg stands 10 from it. */
  HutDesign *design = hut_check_case_design ();
  g_autoptr(HutCheckCase) c = NULL;
  const HutFinding *floor;

  design->shell.bottom = HUT_BOTTOM_INSET;
  design->machine.clearance_mm.left = 10.0;
  add_body (design, HUT_BODY_STATIC, (HutBox3) { { 0, 100, -8 }, { 30, 130, 10 } },
            (HutVec3) { 0 });
  c = hut_check_case_new (design);
  floor = hut_check_case_find (
      c, "clearance.static", "more reaches 8 mm into base bottom; 0 mm of free room are wanted.");
  hut_check_case_assert (floor, HUT_SEVERITY_BLOCKS, 8, 0);
  assert_string_equal (hut_panel_id_to_string (g_array_index (floor->places, HutPlace, 0).panel),
                       "base-bottom");
  hut_check_case_assert (
      hut_check_case_find (
          c, "clearance.static",
          "more reaches 2 mm into the ledge on base left; 0 mm of free room are wanted."),
      HUT_SEVERITY_BLOCKS, 2, 0);
}

static void
random_fitted_designs_need_no_more_room (void **state)
{
  for (guint seed = 0; seed < 150; seed++)
    {
      HutDesign *design = hut_random_design_with (seed, HUT_RANDOM_FITTED | HUT_RANDOM_WINDOWS
                                                            | HUT_RANDOM_OPENINGS);
      g_autoptr(HutCheckCase) c = hut_check_case_new (design);
      const char *const checks[]
          = { "clearance.static", "clearance.motion", "clearance.keep-out" };

      for (guint i = 0; i < G_N_ELEMENTS (checks); i++)
        if (hut_check_case_count (c, checks[i]) > 0)
          {
            g_autofree char *text
                = hut_finding_dup_text (hut_check_case_get (c, checks[i], 0), NULL, ".");

            fail_msg ("seed %u: %s", seed, text);
          }
    }
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (fitted_enclosure_has_all_the_room_that_is_wanted),
    cmocka_unit_test (ten_too_narrow_is_five_less_on_each_side),
    cmocka_unit_test (too_small_by_hand_tells_the_exact_shortfall),
    cmocka_unit_test (touching_a_wall_is_not_a_collision),
    cmocka_unit_test (motion_counts_with_all_of_its_travel),
    cmocka_unit_test (keep_out_that_a_wall_takes_blocks),
    cmocka_unit_test (keep_out_near_a_wall_warns),
    cmocka_unit_test (frame_behind_a_window_takes_room),
    cmocka_unit_test (straps_take_room_and_are_told_together),
    cmocka_unit_test (ledge_under_the_floor_needs_no_room),
    cmocka_unit_test (body_under_the_bench_line_collides_with_floor_and_ledge),
    cmocka_unit_test (random_fitted_designs_need_no_more_room),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}

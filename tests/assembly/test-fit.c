/* tests/assembly/test-fit.c: inside size from machine, clearance and what the enclosure puts inside.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "config.h"
#include "assembly/hut-fit.h"
#include "hut-assert.h"
#include "hut-box-design.h"
#include "hut-test-item.h"

static HutFit
fit_of (const HutDesign *design)
{
  const HutIntrusion intrusion = hut_fit_intrusion (design);

  return hut_fit_find (design, &intrusion);
}

static void
inside_is_the_swept_machine_and_its_clearances (void **state)
{
  g_autoptr(HutDesign) design = hut_box_design_new ();
  HutBody *head = hut_body_new ("head", HUT_BODY_MOVING);
  HutFit fit;

  head->box = (HutBox3) { { 10, 10, 60 }, { 30, 30, 90 } };
  head->travel = (HutVec3) { 120, -15, 0 }; /* sweeps x 10 .. 150, y -5 .. 30 */
  g_ptr_array_add (design->machine.bodies, head);
  design->machine.clearance_mm = (HutClearance) { .left = 5, .right = 7, .front = 11, .back = 13, .top = 17 };
  design->shell.fitted = TRUE;
  fit = fit_of (design);

  /* by hand: x 0 .. 150 + 5 + 7; y -5 .. 80 + 11 + 13; z 0 .. 90 + 17; walls 6 all round */
  assert_near_mm (fit.inside.max.x - fit.inside.min.x, 162, 1e-9);
  assert_near_mm (fit.inside.max.y - fit.inside.min.y, 109, 1e-9);
  assert_near_mm (fit.inside.max.z - fit.inside.min.z, 107, 1e-9);
  assert_near_mm (fit.outer.x, 174, 1e-9);
  assert_near_mm (fit.outer.y, 121, 1e-9);
  assert_near_mm (fit.outer.z, 119, 1e-9);
  assert_near_mm (fit.machine_at.x, 6 + 5, 1e-9);
  assert_near_mm (fit.machine_at.y, 6 + 11 + 5, 1e-9);
  assert_near_mm (fit.machine_at.z, 6, 1e-9);
}

static void
keep_out_counts_like_a_body (void **state)
{
  g_autoptr(HutDesign) design = hut_box_design_new ();
  HutBody *loop = hut_body_new ("loop", HUT_BODY_KEEP_OUT);

  loop->box = (HutBox3) { { 0, 0, 60 }, { 40, 130, 150 } };
  g_ptr_array_add (design->machine.bodies, loop);
  design->shell.fitted = TRUE;
  assert_near_mm (fit_of (design).outer.y, 130 + 40 + 12, 1e-9);
  assert_near_mm (fit_of (design).outer.z, 150 + 20 + 12, 1e-9);
}

static void
size_by_hand_shares_the_spare_room (void **state)
{
  g_autoptr(HutDesign) design = hut_box_design_new ();
  const HutFit fit = fit_of (design);

  assert_near_mm (fit.outer.x, 312, 1e-9);
  assert_near_mm (fit.outer.y, 212, 1e-9);
  assert_near_mm (fit.outer.z, 162, 1e-9);
  /* 300 - 100 leaves 200: 100 each side, as both clearances are the same; 200 - 80: 60 each */
  assert_near_mm (fit.machine_at.x, 6 + 100, 1e-9);
  assert_near_mm (fit.machine_at.y, 6 + 60, 1e-9);
}

static void
window_plates_take_room_on_their_side_only (void **state)
{
  g_autoptr(HutDesign) design = hut_box_design_new ();
  HutFit before, after;

  design->shell.fitted = TRUE;
  before = fit_of (design);
  hut_box_design_add_window (design, (HutPanelId) { HUT_SHELL_LID, HUT_SIDE_FRONT });
  after = fit_of (design);
  assert_near_mm (after.outer.y - before.outer.y, 12, 1e-9); /* glazing 6 and frame 6 */
  assert_near_mm (after.outer.x - before.outer.x, 0, 1e-9);
  assert_near_mm (after.machine_at.y - before.machine_at.y, 12, 1e-9);
}

static void
straps_take_room_where_a_panel_is_larger_than_the_bed (void **state)
{
  g_autoptr(HutDesign) design = hut_box_design_new ();
  HutIntrusion intrusion;

  /* Bed 200 x 250: the sides (212 deep, under 90 high) lie on it turned; front and back (312 wide) and
   * top and bottom (312 x 212) do not. */
  design->cutter.bed_width_mm = 200;
  design->cutter.bed_depth_mm = 250;
  intrusion = hut_fit_intrusion (design);
  assert_near_mm (intrusion.side[HUT_SIDE_LEFT], 0, 0.0);
  assert_near_mm (intrusion.side[HUT_SIDE_RIGHT], 0, 0.0);
  assert_near_mm (intrusion.side[HUT_SIDE_FRONT], 6, 0.0);
  assert_near_mm (intrusion.side[HUT_SIDE_BACK], 6, 0.0);
  assert_near_mm (intrusion.side[HUT_SIDE_TOP], 6, 0.0);
  assert_near_mm (intrusion.side[HUT_SIDE_BOTTOM], 6, 0.0);
  design->joints.straps = FALSE;
  intrusion = hut_fit_intrusion (design);
  assert_near_mm (intrusion.side[HUT_SIDE_FRONT], 0, 0.0);
}

static void
floor_height_follows_the_bottom_kind (void **state)
{
  static const struct
  {
    HutBottomKind bottom;
    double floor_mm;
  } cases[] = {
    { HUT_BOTTOM_JOINTED, 6 }, { HUT_BOTTOM_UNDER, 6 }, { HUT_BOTTOM_BOUGHT, 6 },
    { HUT_BOTTOM_INSET, 15 + 6 }, { HUT_BOTTOM_OPEN, 0 },
  };

  for (guint i = 0; i < G_N_ELEMENTS (cases); i++)
    {
      g_autoptr(HutDesign) design = hut_box_design_new ();

      design->shell.bottom = cases[i].bottom;
      assert_near_mm (hut_fit_floor_mm (design), cases[i].floor_mm, 1e-9);
      assert_near_mm (fit_of (design).machine_at.z, cases[i].floor_mm, 1e-9);
    }
}

static void
inside_begins_behind_the_thicker_of_base_and_lid (void **state)
{
  g_autoptr(HutDesign) design = hut_box_design_new ();
  HutStock *thick = hut_stock_copy (hut_design_get_stock (design, "wall"));

  g_free (thick->id);
  thick->id = g_strdup ("thick");
  g_array_index (thick->readings_mm, double, 0) = 9.5;
  g_ptr_array_add (design->stocks, thick);
  design->shell.stock[HUT_SHELL_LID][HUT_SIDE_LEFT] = g_strdup ("thick");
  assert_near_mm (hut_fit_wall_mm (design, HUT_SIDE_LEFT), 9.5, 1e-9);
  assert_near_mm (hut_fit_wall_mm (design, HUT_SIDE_RIGHT), 6, 1e-9);
  assert_near_mm (fit_of (design).outer.x, 300 + 9.5 + 6, 1e-9);
}

/* The fan of 25 takes 25; a switch of 15 sinks 3.3 into its pocket; from the other face both stand
 * outside. Leads may use the machine's clearance. */
static void
hardware_takes_the_room_that_it_reaches_into (void **state)
{
  g_autoptr(HutDesign) design = hut_box_design_new ();
  const HutPanelId back = { HUT_SHELL_BASE, HUT_SIDE_BACK };
  HutHardware *hardware;
  double clear_mm;

  hut_design_get_stock (design, "wall")->density_kg_m3 = 680;
  hardware = hut_test_put (design, "switch", hut_test_item_new_switch (), back, 60, 40);
  design->shell.fitted = FALSE; /* by hand: the machine does not step aside */
  assert_near_mm (hut_fit_intrusion (design).side[HUT_SIDE_BACK], 0.0, 0.0);
  design->shell.fitted = TRUE;
  assert_near_mm (hut_fit_intrusion (design).side[HUT_SIDE_BACK], 15 - 3.3, 1e-9);
  assert_near_mm (hut_fit_intrusion (design).side[HUT_SIDE_FRONT], 0.0, 0.0);
  hut_test_put (design, "fan", hut_test_item_new_fan (60, 50, 4, 50, 25), back, 150, 40);
  assert_near_mm (hut_fit_intrusion (design).side[HUT_SIDE_BACK], 25, 1e-9);
  hut_design_get_hardware (design, "fan")->face = HUT_FACE_INSIDE;
  hardware->face = HUT_FACE_INSIDE;
  assert_near_mm (hut_fit_intrusion (design).side[HUT_SIDE_BACK], 0.0, 0.0);

  hardware->face = HUT_FACE_OUTSIDE;
  clear_mm = design->machine.clearance_mm.back;
  hut_test_item_add_body (hut_design_get_hardware_item (design, hardware), HUT_ITEM_BEHIND, 0,
                          (HutRect) { -5, -5, 5, 5 }, clear_mm + 40, TRUE);
  assert_near_mm (hut_fit_intrusion (design).side[HUT_SIDE_BACK], 40 - 3.3, 1e-9);
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (inside_is_the_swept_machine_and_its_clearances),
    cmocka_unit_test (keep_out_counts_like_a_body),
    cmocka_unit_test (size_by_hand_shares_the_spare_room),
    cmocka_unit_test (window_plates_take_room_on_their_side_only),
    cmocka_unit_test (straps_take_room_where_a_panel_is_larger_than_the_bed),
    cmocka_unit_test (floor_height_follows_the_bottom_kind),
    cmocka_unit_test (inside_begins_behind_the_thicker_of_base_and_lid),
    cmocka_unit_test (hardware_takes_the_room_that_it_reaches_into),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}

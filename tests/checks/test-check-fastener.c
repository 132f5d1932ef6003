/* tests/checks/test-check-fastener.c: screws and bolts of the hardware.
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * On the lid's front of hut_check_case_design (), 372 x 111 x 6, whose lower edge is free; its grain
 * runs along u. Smallest web 6. */
#include "config.h"
#include "checks/hut-check-fastener.h"
#include "hut-cure.h"

static const HutPanelId lid_front = { HUT_SHELL_LID, HUT_SIDE_FRONT };

static HutDesign *
new_design (void)
{
  HutDesign *design = hut_check_case_design ();

  design->shell.fitted = FALSE;
  design->shell.inside_mm = (HutVec3) { 360, 340, 240 };
  design->machine.clearance_mm = (HutClearance) { 5, 5, 5, 5, 5 };
  return design;
}

static void
set_thickness (HutDesign *design,
               double thickness_mm)
{
  HutStock *stock = hut_design_get_stock (design, "plywood");

  g_array_set_size (stock->readings_mm, 1);
  g_array_index (stock->readings_mm, double, 0) = thickness_mm;
}

static void
fan_of_40_leaves_too_little_wood_and_a_smaller_opening_cures_it (void **state)
{
  HutDesign *design = new_design ();

  /* 32 / sqrt 2 - 37 / 2 - 3.4 / 2 (M3, ISO 273 medium) = 2.427: less than half of 6. */
  hut_test_put (design, "fan", hut_test_item_new_fan (40, 32, 3, 37, 10), lid_front, 186, 60)
      ->face
      = HUT_FACE_INSIDE; /* its body stands outside */
  assert_cured (design, "fastener.web", HUT_SEVERITY_BLOCKS, 16.0 * sqrt (2.0) - 18.5 - 1.7, 6.0,
                HUT_FIX_NARROW);
}

static void
opening_of_a_connector_is_never_narrowed_and_a_plate_cures_it (void **state)
{
  HutDesign *design = new_design ();
  HutItem *item = hut_test_item_new_fan (40, 32, 3, 37, 10);

  /* The same holes, but a body goes through the large one. The acrylic holds webs of 2. */
  hut_design_get_stock (design, "acrylic")->smallest_web_mm = 2.0;
  item->group = HUT_ITEM_CONNECTOR;
  item->thickness_max_mm = 6.0;
  hut_test_put (design, "fan", item, lid_front, 186, 54)->face = HUT_FACE_INSIDE;
  assert_cured (design, "fastener.web", HUT_SEVERITY_BLOCKS, 16.0 * sqrt (2.0) - 18.5 - 1.7, 6.0,
                HUT_FIX_PLATE);
}

static void
fan_that_would_lose_half_of_its_air_is_not_narrowed (void **state)
{
  HutDesign *design = new_design ();

  /* 2 x (9 - 2.427) = 13.2 of 37 are more than 0.3; no stock holds 2.427. */
  hut_design_get_stock (design, "plywood")->smallest_web_mm = 9.0;
  hut_test_put (design, "fan", hut_test_item_new_fan (40, 32, 3, 37, 10), lid_front, 186, 60)
      ->face
      = HUT_FACE_INSIDE;
  assert_cured (design, "fastener.web", HUT_SEVERITY_BLOCKS, 16.0 * sqrt (2.0) - 18.5 - 1.7, 9.0,
                HUT_FIX_NONE);
}

static void
fan_of_120_leaves_enough_wood (void **state)
{
  HutDesign *design = new_design ();
  g_autoptr(HutCheckCase) c = NULL;

  /* 105 / sqrt 2 - 116 / 2 - 4.5 / 2 = 14.0 */
  hut_test_put (design, "fan", hut_test_item_new_fan (100, 80, 4, 80, 10), lid_front, 186, 56);
  c = hut_check_case_new (design);
  assert_int_equal (hut_check_case_count (c, "fastener.web"), 0);
}

static HutItem *
new_plate_with_screw (double thread_mm,
                      gboolean wood)
{
  HutItem *item = hut_test_item_new ("holder");

  hut_test_item_add_screw (item, 0, 0, 0, thread_mm)->wood_screw = wood;
  return item;
}

static void
screw_near_an_edge_moves_off (void **state)
{
  HutDesign *design = new_design ();

  /* Along the grain 3 x 3 = 9 and 8 at least; the hole still leaves 8.5 - 1.7 = 6.8 of wood. */
  hut_test_put (design, "holder", new_plate_with_screw (3, FALSE), lid_front, 186, 8.5);
  assert_cured (design, "fastener.edge", HUT_SEVERITY_WARNS, 8.5, 9.0, HUT_FIX_MOVE);
}

static void
end_of_the_grain_wants_more (void **state)
{
  HutFastener fastener = { .thread_mm = 3.0, .hole_mm = 3.4, .wood = TRUE };
  const HutFastener bolt = { .thread_mm = 3.0, .hole_mm = 3.4 };
  g_autoptr(HutCheckCase) c = hut_check_case_new (new_design ());
  const HutPanel *panel = hut_assembly_get_panel (c->assembly, lid_front);
  HutStock acrylic = *panel->stock, mdf = *panel->stock;
  HutPanel other = *panel;

  assert_near_mm (hut_fastener_edge_mm (&fastener, panel, HUT_EDGE_BOTTOM), 9.0, 0.0);
  assert_near_mm (hut_fastener_edge_mm (&fastener, panel, HUT_EDGE_LEFT), 15.0, 0.0);
  assert_near_mm (hut_fastener_edge_mm (&bolt, panel, HUT_EDGE_LEFT), 9.0, 0.0);
  fastener.thread_mm = 2.0; /* 6 and 10, at least 8 and 10 */
  assert_near_mm (hut_fastener_edge_mm (&fastener, panel, HUT_EDGE_TOP), 8.0, 0.0);
  assert_near_mm (hut_fastener_edge_mm (&fastener, panel, HUT_EDGE_RIGHT), 10.0, 0.0);
  mdf.material = HUT_MATERIAL_MDF;
  other.stock = &mdf;
  assert_near_mm (hut_fastener_edge_mm (&fastener, &other, HUT_EDGE_RIGHT), 8.0, 0.0);
  acrylic.material = HUT_MATERIAL_ACRYLIC;
  other.stock = &acrylic;
  assert_near_mm (hut_fastener_edge_mm (&fastener, &other, HUT_EDGE_RIGHT), 6.8, 1e-12);
}

static void
wood_screw_comes_through_thin_sheet_and_bolts_do_not_care (void **state)
{
  HutDesign *design = new_design ();

  /* Flange 1 + sheet 6 - point 1.5 = 5.5; the shortest is 10. */
  hut_test_put (design, "holder", new_plate_with_screw (3, TRUE), lid_front, 186, 56);
  assert_cured (design, "fastener.through", HUT_SEVERITY_BLOCKS, 5.5, 10.0, HUT_FIX_BOLTS);
}

static void
thick_wood_screw_finds_no_hold_in_12_mm (void **state)
{
  HutDesign *design = new_design ();

  /* 1 + 12 - 1.5 = 11.5: the screw of 10 has 9 in the wood, 4 x 5 hold. */
  set_thickness (design, 12.0);
  hut_test_put (design, "holder", new_plate_with_screw (5, TRUE), lid_front, 186, 56);
  assert_cured (design, "fastener.short", HUT_SEVERITY_WARNS, 9.0, 20.0, HUT_FIX_BOLTS);
}

static void
countersunk_head_is_deeper_than_the_sheet (void **state)
{
  HutDesign *design = new_design ();

  /* ISO 7046 M5: 2.7 high, and 1 of wood under it. */
  set_thickness (design, 3.0);
  hut_test_put (design, "holder", new_plate_with_screw (5, FALSE), lid_front, 186, 56)->sunk = TRUE;
  assert_cured (design, "fastener.sunk", HUT_SEVERITY_BLOCKS, 3.0, 3.7, HUT_FIX_PLAIN_HEADS);
}

static void
nut_on_the_plates_of_a_window_moves_off (void **state)
{
  HutDesign *design = new_design ();

  /* The window's plates end at u = 110; the washer of M4, 9 across, begins at 112 - 4.5. The hole
   * itself, from 109.75, lies under the plates: with M4 at 113 it does not. */
  hut_check_case_add_window (design, "pane", lid_front, (HutRect) { 40, 40, 100, 80 });
  hut_test_put (design, "holder", new_plate_with_screw (4, FALSE), lid_front, 113, 60);
  assert_cured (design, "fastener.window", HUT_SEVERITY_BLOCKS, 3.0, 4.5, HUT_FIX_MOVE);
}

static void
bolt_longer_than_any_standard_one_is_told (void **state)
{
  HutDesign *design = new_design ();
  HutItem *item = new_plate_with_screw (2, FALSE);

  g_array_index (item->cuts, HutItemCut, 0).grip_mm = 90.0;
  hut_test_put (design, "holder", item, lid_front, 186, 56);
  {
    g_autoptr(HutCheckCase) c = hut_check_case_new (design);
    const HutFinding *finding = hut_check_case_get (c, "fastener.length", 0);

    /* 90 + 6 + washer 0.3 + nut 1.6 + 2 */
    assert_near_mm (finding->must, 99.9, 1e-9);
    assert_true (finding->is < finding->must && finding->is > 0.0);
    assert_int_equal (count_told (c), 1);
  }
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (fan_of_40_leaves_too_little_wood_and_a_smaller_opening_cures_it),
    cmocka_unit_test (opening_of_a_connector_is_never_narrowed_and_a_plate_cures_it),
    cmocka_unit_test (fan_that_would_lose_half_of_its_air_is_not_narrowed),
    cmocka_unit_test (fan_of_120_leaves_enough_wood),
    cmocka_unit_test (screw_near_an_edge_moves_off),
    cmocka_unit_test (end_of_the_grain_wants_more),
    cmocka_unit_test (wood_screw_comes_through_thin_sheet_and_bolts_do_not_care),
    cmocka_unit_test (thick_wood_screw_finds_no_hold_in_12_mm),
    cmocka_unit_test (countersunk_head_is_deeper_than_the_sheet),
    cmocka_unit_test (nut_on_the_plates_of_a_window_moves_off),
    cmocka_unit_test (bolt_longer_than_any_standard_one_is_told),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}

/* tests/checks/test-check-mount.c: thickness, pockets, face plates.
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The switch holds in 1 .. 3 mm, its nut is 18 over the corners. The lid's front is 372 x 111 x 6. */
#include "config.h"
#include "assembly/hut-pocket.h"
#include "hut-cure.h"

static const HutPanelId lid_front = { HUT_SHELL_LID, HUT_SIDE_FRONT };

static HutDesign *
new_design (double density_kg_m3)
{
  HutDesign *design = hut_check_case_design ();
  HutStock *acrylic = hut_stock_new ("clear");

  design->shell.fitted = FALSE;
  design->shell.inside_mm = (HutVec3) { 360, 380, 240 };
  hut_design_get_stock (design, "plywood")->density_kg_m3 = density_kg_m3;
  acrylic->material = HUT_MATERIAL_ACRYLIC;
  acrylic->smallest_web_mm = 3.0;
  g_array_index (acrylic->readings_mm, double, 0) = 2.9;
  g_ptr_array_add (design->stocks, acrylic);
  return design;
}

static void
pocket_takes_the_next_bit_and_says_its_way (void **state)
{
  HutDesign *design = new_design (680);
  g_autoptr(HutCheckCase) c = NULL;
  const HutFinding *finding;

  hut_test_put (design, "switch", hut_test_item_new_switch (), lid_front, 186, 56);
  c = hut_check_case_new (design);
  assert_int_equal (count_told (c), 0);
  /* 18 + 2 x 3 = 24; 6 - (3 - 0.3) = 3.3 */
  finding = hut_check_case_find (c, "mount.way",
                                 "switch on lid front: put the waste disc back into the cut hole "
                                 "before its pocket is bored, 24 mm across and 3.3 mm deep: the "
                                 "bit's spur needs wood.");
  hut_check_case_assert (finding, HUT_SEVERITY_NOTES, 24.0, 3.3);
}

static void
floor_in_poplar_is_too_thin_and_a_face_plate_cures_it (void **state)
{
  HutDesign *design = new_design (430);

  /* 3 - 0.3 = 2.7; poplar keeps 3. */
  hut_test_put (design, "switch", hut_test_item_new_switch (), lid_front, 186, 56);
  assert_cured (design, "mount.floor", HUT_SEVERITY_BLOCKS, 2.7, 3.0, HUT_FIX_PLATE);
}

static void
struck_switch_keeps_a_thicker_floor (void **state)
{
  HutDesign *design = new_design (680);
  HutItem *item = hut_test_item_new_switch ();

  item->strained = TRUE;
  hut_test_put (design, "switch", item, lid_front, 186, 56);
  assert_cured (design, "mount.floor", HUT_SEVERITY_BLOCKS, 2.7, 3.0, HUT_FIX_PLATE);
}

static void
owner_without_a_wide_bit_gets_a_face_plate (void **state)
{
  HutDesign *design = new_design (680);
  const double own_mm[] = { 15, 20 };

  g_array_set_size (design->bits_mm, 0);
  g_array_append_vals (design->bits_mm, own_mm, 2);
  hut_test_put (design, "switch", hut_test_item_new_switch (), lid_front, 186, 56);
  assert_cured (design, "mount.bit", HUT_SEVERITY_BLOCKS, 20.0, 24.0, HUT_FIX_PLATE);
}

static void
switch_rattles_in_a_panel_under_its_range (void **state)
{
  HutDesign *design = new_design (680);
  HutItem *item = hut_test_item_new_switch ();

  item->thickness_min_mm = 8.0;
  item->thickness_max_mm = 0.0;
  hut_test_put (design, "switch", item, lid_front, 186, 56);
  assert_cured (design, "mount.thin", HUT_SEVERITY_WARNS, 6.0, 8.0, HUT_FIX_NONE);
}

static void
pocket_near_a_free_edge_moves_off (void **state)
{
  HutDesign *design = new_design (680);

  /* Rim at 17 - 12 = 5 over the free lower edge; 6 are usual. The hole has 17 - 6 = 11. */
  hut_test_put (design, "switch", hut_test_item_new_switch (), lid_front, 186, 17);
  assert_cured (design, "mount.pocket", HUT_SEVERITY_WARNS, 5.0, 6.0, HUT_FIX_MOVE);
}

static void
pockets_near_each_other_move_apart (void **state)
{
  HutDesign *design = new_design (680);

  /* 28 from middle to middle - 24 = 4. */
  hut_test_put (design, "one", hut_test_item_new_switch (), lid_front, 172, 56);
  hut_test_put (design, "two", hut_test_item_new_switch (), lid_front, 200, 56);
  assert_cured (design, "mount.pocket", HUT_SEVERITY_WARNS, 4.0, 6.0, HUT_FIX_MOVE);
}

static void
face_plate_that_is_too_thick_is_told (void **state)
{
  HutDesign *design = new_design (680);
  HutHardware *hardware
      = hut_test_put (design, "switch", hut_test_item_new_switch (), lid_front, 186, 56);

  hardware->pocket_way = HUT_POCKET_PLATE;
  hardware->plate_stock = g_strdup ("plywood");
  assert_cured (design, "mount.plate", HUT_SEVERITY_BLOCKS, 6.0, 3.0, HUT_FIX_PLATE);
}

static void
item_on_the_wrong_face_is_turned (void **state)
{
  HutDesign *design = new_design (680);
  HutItem *item = hut_test_item_new_switch ();

  item->from_inside = FALSE;
  item->bodies->len = 0;
  hut_test_put (design, "switch", item, lid_front, 186, 56)->face = HUT_FACE_INSIDE;
  assert_cured (design, "mount.face", HUT_SEVERITY_BLOCKS, 0.0, 1.0, HUT_FIX_FACE);
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (pocket_takes_the_next_bit_and_says_its_way),
    cmocka_unit_test (floor_in_poplar_is_too_thin_and_a_face_plate_cures_it),
    cmocka_unit_test (struck_switch_keeps_a_thicker_floor),
    cmocka_unit_test (owner_without_a_wide_bit_gets_a_face_plate),
    cmocka_unit_test (switch_rattles_in_a_panel_under_its_range),
    cmocka_unit_test (pocket_near_a_free_edge_moves_off),
    cmocka_unit_test (pockets_near_each_other_move_apart),
    cmocka_unit_test (face_plate_that_is_too_thick_is_told),
    cmocka_unit_test (item_on_the_wrong_face_is_turned),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}

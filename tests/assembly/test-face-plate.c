/* tests/assembly/test-face-plate.c: a thinner plate over a larger opening.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "config.h"
#include "assembly/hut-part.h"
#include "checks/hut-check-case.h"
#include "hut-assert.h"
#include "hut-test-item.h"

static const HutPanelId lid_front = { HUT_SHELL_LID, HUT_SIDE_FRONT };

static HutDesign *
new_design (void)
{
  HutDesign *design = hut_check_case_design ();
  HutStock *acrylic = hut_stock_new ("clear");
  HutHardware *hardware
      = hut_test_put (design, "switch", hut_test_item_new_switch (), lid_front, 186, 56);

  g_array_index (acrylic->readings_mm, double, 0) = 2.9;
  g_ptr_array_add (design->stocks, acrylic);
  hardware->pocket_way = HUT_POCKET_PLATE;
  hardware->plate_stock = g_strdup ("clear");
  return design;
}

static void
plate_lies_over_a_larger_opening_with_four_screws (void **state)
{
  g_autoptr(HutDesign) design = new_design ();
  g_autoptr(HutAssembly) assembly = hut_assembly_new (design);
  g_autoptr(HutPartSet) parts = hut_part_set_new (assembly);
  const HutPlacedHole *hole = hut_assembly_get_hole (assembly, "switch");
  const HutPart *plate = NULL;
  HutRect bounds;

  for (guint i = 0; i < parts->parts->len; i++)
    if (((HutPart *) g_ptr_array_index (parts->parts, i))->kind == HUT_PART_FACE_PLATE)
      plate = g_ptr_array_index (parts->parts, i);
  assert_non_null (plate);
  assert_string_equal (plate->id, "face-plate-switch");
  assert_string_equal (plate->stock->id, "clear");
  assert_near_mm (plate->depth_mm, -2.9, 1e-9); /* before the panel */

  /* Nut 18 + 2 x 2 round it; the plate 16 over that, on all sides: 54 square. */
  assert_int_equal (hole->paths->len, 5);
  bounds = hut_path_bounds (g_ptr_array_index (hole->paths, 0));
  assert_near_mm (bounds.u1 - bounds.u0, 22.0, 1e-9);
  bounds = hut_region_bounds (plate->region);
  assert_near_mm (bounds.u0, 186 - 27, 1e-9);
  assert_near_mm (bounds.v1, 56 + 27, 1e-9);
  /* The switch's own hole of 12, and four of M3. */
  assert_int_equal (plate->region->holes->len, 5);
  bounds = hut_path_bounds (g_ptr_array_index (plate->region->holes, 0));
  assert_near_mm (bounds.u1 - bounds.u0, 12.0, 1e-9);
  bounds = hut_path_bounds (g_ptr_array_index (plate->region->holes, 1));
  assert_near_mm (bounds.u0, 186 - 19 - 1.7, 1e-9); /* 8 from the plate's edge */
  assert_false (hut_assembly_get_hardware (assembly, "switch")->bored);
}

static void
item_on_a_plate_holds_in_the_plate (void **state)
{
  g_autoptr(HutDesign) design = new_design ();
  g_autoptr(HutAssembly) assembly = hut_assembly_new (design);
  const HutPlacedHardware *placed = hut_assembly_get_hardware (assembly, "switch");
  const HutSolid *body = NULL;

  for (guint i = 0; i < assembly->solids->len; i++)
    if (g_array_index (assembly->solids, HutSolid, i).kind == HUT_SOLID_HARDWARE)
      body = &g_array_index (assembly->solids, HutSolid, i);
  assert_non_null (body);
  assert_false (placed->need.needed);
  assert_near_mm (body->box.min.y, 0.0, 1e-9); /* from the plate's back on */
  assert_near_mm (body->box.max.y, 15.0, 1e-9);
}

static void
plate_of_a_stock_that_is_missing_is_told (void **state)
{
  g_autoptr(HutDesign) design = new_design ();
  g_autoptr(HutAssembly) assembly = NULL;

  g_ptr_array_set_size (design->stocks, 1);
  assembly = hut_assembly_new (design);
  assert_int_equal (assembly->plates->len, 0);
  assert_int_equal (assembly->troubles->len, 1);
  assert_int_equal (g_array_index (assembly->troubles, HutTrouble, 0).kind,
                    HUT_TROUBLE_STOCK_MISSING);
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (plate_lies_over_a_larger_opening_with_four_screws),
    cmocka_unit_test (item_on_a_plate_holds_in_the_plate),
    cmocka_unit_test (plate_of_a_stock_that_is_missing_is_told),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}

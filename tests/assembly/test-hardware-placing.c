/* tests/assembly/test-hardware-placing.c: hardware with all that belongs to it.
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * hut_check_case_design (): outside 372 x 352 x 252, walls 6, base 140 high, seam gap 1. The lid's front
 * is 372 x 111. */
#include "config.h"
#include "assembly/hut-part.h"
#include "checks/hut-check-case.h"
#include "hut-assert.h"
#include "hut-test-item.h"

static const HutPanelId lid_front = { HUT_SHELL_LID, HUT_SIDE_FRONT };
static const HutPanelId base_back = { HUT_SHELL_BASE, HUT_SIDE_BACK };

static HutDesign *
new_design (void)
{
  HutDesign *design = hut_check_case_design ();

  design->shell.fitted = FALSE;
  design->shell.inside_mm = (HutVec3) { 360, 340, 240 };
  return design;
}

static guint
count_solids (const HutAssembly *assembly,
              HutSolidKind kind,
              HutBox3 *last)
{
  guint count = 0;

  for (guint i = 0; i < assembly->solids->len; i++)
    if (g_array_index (assembly->solids, HutSolid, i).kind == kind)
      {
        *last = g_array_index (assembly->solids, HutSolid, i).box;
        count++;
      }
  return count;
}

static void
fan_makes_its_opening_its_four_holes_and_its_body (void **state)
{
  g_autoptr(HutDesign) design = new_design ();
  g_autoptr(HutAssembly) assembly = NULL;
  const HutPlacedHole *hole;
  HutRect bounds;
  HutBox3 box = { { 0, 0, 0 }, { 0, 0, 0 } };

  hut_test_put (design, "fan", hut_test_item_new_fan (92, 82.5, 4, 80, 25), lid_front, 186, 56);
  assembly = hut_assembly_new (design);
  hole = hut_assembly_get_hole (assembly, "fan");
  assert_true (hole->cut);
  assert_int_equal (hole->paths->len, 5);
  bounds = hut_path_bounds (g_ptr_array_index (hole->paths, 0));
  assert_near_mm (bounds.u1 - bounds.u0, 80.0, 1e-9);
  bounds = hut_path_bounds (g_ptr_array_index (hole->paths, 2)); /* M4 medium: 4.5 */
  assert_near_mm (bounds.u0, 186 + 41.25 - 2.25, 1e-9);
  assert_near_mm (bounds.v1, 56 - 41.25 + 2.25, 1e-9);
  /* Behind the front wall: y from 6 to 31. */
  assert_int_equal (count_solids (assembly, HUT_SOLID_HARDWARE, &box), 1);
  assert_near_mm (box.min.y, 6.0, 1e-9);
  assert_near_mm (box.max.y, 31.0, 1e-9);
  assert_near_mm (box.min.x, 186 - 46, 1e-9);
  assert_near (hut_assembly_hardware_mass_kg (assembly, HUT_SHELL_LID), 0.1, 1e-12);
  assert_near (hut_assembly_hardware_mass_kg (assembly, HUT_SHELL_BASE), 0.0, 0.0);
}

static void
from_inside_all_is_seen_mirrored (void **state)
{
  g_autoptr(HutDesign) design = new_design ();
  HutItem *item = hut_test_item_new ("holder");
  g_autoptr(HutAssembly) assembly = NULL;
  HutBox3 box = { { 0, 0, 0 }, { 0, 0, 0 } };

  hut_test_item_add_screw (item, 0, 30, 5, 3);
  hut_test_item_add_body (item, HUT_ITEM_BEHIND, 0, (HutRect) { 0, 0, 20, 10 }, 8.0, FALSE);
  hut_test_put (design, "holder", item, lid_front, 186, 56)->face = HUT_FACE_INSIDE;
  assembly = hut_assembly_new (design);
  assert_near_mm (hut_assembly_get_hole (assembly, "holder")->bounds.u0, 186 - 30 - 1.7, 1e-9);
  count_solids (assembly, HUT_SOLID_HARDWARE, &box);
  assert_near_mm (box.min.y, -8.0, 1e-9); /* behind is outside now */
  assert_near_mm (box.max.y, 0.0, 1e-9);
  assert_near_mm (box.min.x, 166.0, 1e-9);
}

static void
turn_goes_counter_clockwise_seen_from_outside (void **state)
{
  g_autoptr(HutDesign) design = new_design ();
  HutItem *item = hut_test_item_new ("holder");
  g_autoptr(HutAssembly) assembly = NULL;
  const HutPlacedHole *hole;

  hut_test_item_add_screw (item, 0, 30, 0, 3);
  hut_test_put (design, "holder", item, lid_front, 186, 56)->turn_deg = 90.0;
  assembly = hut_assembly_new (design);
  hole = hut_assembly_get_hole (assembly, "holder");
  assert_near_mm (hole->bounds.u0, 186 - 1.7, 1e-9);
  assert_near_mm (hole->bounds.v1, 86 + 1.7, 1e-9);
}

static void
pocket_lets_the_body_sink_into_the_panel (void **state)
{
  g_autoptr(HutDesign) design = new_design ();
  g_autoptr(HutAssembly) assembly = NULL;
  const HutPlacedHardware *placed;
  HutBox3 box = { { 0, 0, 0 }, { 0, 0, 0 } };

  hut_test_put (design, "switch", hut_test_item_new_switch (), lid_front, 186, 56);
  assembly = hut_assembly_new (design);
  placed = hut_assembly_get_hardware (assembly, "switch");
  assert_true (placed->bored);
  count_solids (assembly, HUT_SOLID_HARDWARE, &box);
  assert_near_mm (box.min.y, 6.0 - 3.3, 1e-9);
  assert_near_mm (box.max.y, 6.0 - 3.3 + 15.0, 1e-9);
}

static void
hinge_lies_on_base_and_lid_and_moves_with_the_seam (void **state)
{
  g_autoptr(HutDesign) design = new_design ();

  hut_test_put (design, "hinge", hut_test_item_new_hinge (), base_back, 80, 5);
  for (guint i = 0; i < 2; i++)
    {
      const double seam_mm = i == 0 ? 140.0 : 120.0;
      g_autoptr(HutAssembly) assembly = NULL;
      const HutPlacedHole *base, *lid;

      design->shell.seam_height_mm = seam_mm;
      assembly = hut_assembly_new (design);
      assert_int_equal (assembly->hardware->len, 2);
      base = g_ptr_array_index (assembly->holes, 0);
      lid = g_ptr_array_index (assembly->holes, 1);
      /* Half of the gap of 1 lies between the line and each panel. */
      assert_near_mm ((base->bounds.v0 + base->bounds.v1) / 2.0, seam_mm + 0.5 - 10.0, 1e-9);
      assert_near_mm ((lid->bounds.v0 + lid->bounds.v1) / 2.0, 10.0 - 0.5, 1e-9);
      assert_near_mm ((base->bounds.u0 + base->bounds.u1) / 2.0, 80.0, 1e-9);
      assert_near_mm ((lid->bounds.u0 + lid->bounds.u1) / 2.0, 80.0, 1e-9);
      assert_near (hut_assembly_hardware_mass_kg (assembly, HUT_SHELL_LID), 0.03, 1e-12);
    }
}

static void
hinge_follows_the_hinge_line_to_another_side (void **state)
{
  g_autoptr(HutDesign) design = new_design ();
  g_autoptr(HutAssembly) assembly = NULL;

  hut_test_put (design, "hinge", hut_test_item_new_hinge (), base_back, 80, 5);
  design->shell.hinge = HUT_HINGE_LEFT;
  assembly = hut_assembly_new (design);
  assert_int_equal (((const HutPanel *) g_ptr_array_index (
                         assembly->panels,
                         ((HutPlacedHardware *) g_ptr_array_index (assembly->hardware, 1))->panel))
                        ->id.side,
                    HUT_SIDE_LEFT);
  assert_int_equal (assembly->troubles->len, 0);
}

static void
hinge_of_a_top_is_folded_under_it (void **state)
{
  g_autoptr(HutDesign) design = new_design ();
  g_autoptr(HutAssembly) assembly = NULL;
  const HutPlacedHardware *lid;
  const HutPlacedHole *hole;

  hut_test_put (design, "hinge", hut_test_item_new_hinge (), base_back, 80, 5);
  design->shell.lid = HUT_LID_TOP;
  assembly = hut_assembly_new (design);
  lid = g_ptr_array_index (assembly->hardware, 1);
  hole = g_ptr_array_index (assembly->holes, 1);
  assert_int_equal (lid->face, HUT_FACE_INSIDE);
  /* The top is 352 deep; 80 from the right seen from behind is x = 372 - 80. */
  assert_near_mm ((hole->bounds.v0 + hole->bounds.v1) / 2.0, 342.0, 1e-9);
  assert_near_mm ((hole->bounds.u0 + hole->bounds.u1) / 2.0, 292.0, 1e-9);
}

static void
hinge_without_a_hinged_lid_is_told (void **state)
{
  g_autoptr(HutDesign) design = new_design ();
  g_autoptr(HutAssembly) assembly = NULL;

  hut_test_put (design, "hinge", hut_test_item_new_hinge (), base_back, 80, 5);
  design->shell.lid = HUT_LID_LIFT_OFF;
  assembly = hut_assembly_new (design);
  assert_int_equal (assembly->hardware->len, 0);
  assert_int_equal (assembly->troubles->len, 1);
  assert_int_equal (g_array_index (assembly->troubles, HutTrouble, 0).kind, HUT_TROUBLE_LEAF);
}

static void
narrower_cutout_leaves_the_screws_where_they_are (void **state)
{
  g_autoptr(HutDesign) design = new_design ();
  g_autoptr(HutAssembly) assembly = NULL;
  const HutPlacedHole *hole;
  HutRect bounds;

  hut_test_put (design, "fan", hut_test_item_new_fan (40, 32, 3, 37, 10), lid_front, 186, 56)
      ->narrow_mm
      = 7.2;
  assembly = hut_assembly_new (design);
  hole = hut_assembly_get_hole (assembly, "fan");
  bounds = hut_path_bounds (g_ptr_array_index (hole->paths, 0));
  assert_near_mm (bounds.u1 - bounds.u0, 29.8, 1e-9);
  assert_near_mm (hole->bounds.u0, 186 - 16 - 1.7, 1e-9);
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (fan_makes_its_opening_its_four_holes_and_its_body),
    cmocka_unit_test (from_inside_all_is_seen_mirrored),
    cmocka_unit_test (turn_goes_counter_clockwise_seen_from_outside),
    cmocka_unit_test (pocket_lets_the_body_sink_into_the_panel),
    cmocka_unit_test (hinge_lies_on_base_and_lid_and_moves_with_the_seam),
    cmocka_unit_test (hinge_follows_the_hinge_line_to_another_side),
    cmocka_unit_test (hinge_of_a_top_is_folded_under_it),
    cmocka_unit_test (hinge_without_a_hinged_lid_is_told),
    cmocka_unit_test (narrower_cutout_leaves_the_screws_where_they_are),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}

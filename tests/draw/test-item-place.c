/* tests/draw/test-item-place.c: a place for what nobody has pointed at.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "draw/hut-item-place.h"
#include "catalog/hut-catalog.h"
#include "hut-assert.h"

/* Puts the item where hut_item_place_find () says, as the shelf does. */
static void
place (HutDesign *design,
       const HutItem *item,
       const char *id)
{
  g_autoptr (HutAssembly) assembly = hut_assembly_new (design);
  HutHardware *hardware;
  const HutPanel *panel;
  HutPoint at;
  guint index;

  assert_true (hut_item_place_find (assembly, item, -1, &index, &at));
  panel = g_ptr_array_index (assembly->panels, index);
  hardware = hut_hardware_new (id, hut_design_keep_item (design, item), panel->id);
  assert_true (hut_assembly_position_for (assembly, at, &hardware->at));
  g_ptr_array_add (design->hardware, hardware);
}

static HutRect
footprint (const HutAssembly *assembly,
           const char *id)
{
  const HutPlacedHardware *placed = hut_assembly_get_hardware (assembly, id);

  assert_non_null (placed);
  return placed->footprint;
}

static void
an_item_on_a_panel_keeps_free_of_the_one_before (void **state)
{
  g_autoptr (HutDesign) design = hut_design_new ();
  g_autoptr (HutCatalog) catalog = hut_catalog_new ();
  const HutItem *fan = hut_catalog_get (catalog, "fan-80x25");

  place (design, fan, "one");
  place (design, fan, "two");

  g_autoptr (HutAssembly) assembly = hut_assembly_new (design);
  const HutRect a = footprint (assembly, "one"), b = footprint (assembly, "two");

  assert_true (hut_assembly_get_hardware (assembly, "one")->panel
                   != hut_assembly_get_hardware (assembly, "two")->panel
               || a.u1 <= b.u0 || b.u1 <= a.u0 || a.v1 <= b.v0 || b.v1 <= a.v0);
}

static void
two_hinges_stand_a_sixth_from_the_ends_of_the_hinge_line (void **state)
{
  g_autoptr (HutDesign) design = hut_design_new (); /* a hood, hinged at the back */
  g_autoptr (HutCatalog) catalog = hut_catalog_new ();
  const HutItem *hinge = hut_catalog_get (catalog, "hg-50");

  place (design, hinge, "one");
  place (design, hinge, "two");

  g_autoptr (HutAssembly) assembly = hut_assembly_new (design);
  const HutPlacedHardware *one = hut_assembly_get_hardware (assembly, "one"),
                          *two = hut_assembly_get_hardware (assembly, "two");
  const HutPanel *panel = g_ptr_array_index (assembly->panels, one->panel);

  assert_string_equal (hut_panel_id_to_string (panel->id), "base-back");
  assert_int_equal (one->panel, two->panel);
  assert_near_mm ((one->footprint.u0 + one->footprint.u1) / 2, panel->width_mm / 6, 0.01);
  assert_near_mm ((two->footprint.u0 + two->footprint.u1) / 2, panel->width_mm * 5 / 6, 0.01);
}

static void
a_latch_lies_in_the_middle_of_the_front (void **state)
{
  g_autoptr (HutDesign) design = hut_design_new ();
  g_autoptr (HutCatalog) catalog = hut_catalog_new ();

  place (design, hut_catalog_get (catalog, "lt-toggle-s"), "latch");

  g_autoptr (HutAssembly) assembly = hut_assembly_new (design);
  const HutPlacedHardware *latch = hut_assembly_get_hardware (assembly, "latch");
  const HutPanel *panel = g_ptr_array_index (assembly->panels, latch->panel);

  assert_string_equal (hut_panel_id_to_string (panel->id), "base-front");
  assert_near_mm ((latch->footprint.u0 + latch->footprint.u1) / 2, panel->width_mm / 2, 0.01);
}

static void
without_a_hinge_line_there_is_no_place_for_a_hinge (void **state)
{
  g_autoptr (HutDesign) design = hut_design_new ();
  g_autoptr (HutCatalog) catalog = hut_catalog_new ();
  HutPoint at;
  guint index;

  design->shell.lid = HUT_LID_LIFT_OFF;

  g_autoptr (HutAssembly) assembly = hut_assembly_new (design);

  assert_false (
      hut_item_place_find (assembly, hut_catalog_get (catalog, "hg-50"), -1, &index, &at));
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (an_item_on_a_panel_keeps_free_of_the_one_before),
    cmocka_unit_test (two_hinges_stand_a_sixth_from_the_ends_of_the_hinge_line),
    cmocka_unit_test (a_latch_lies_in_the_middle_of_the_front),
    cmocka_unit_test (without_a_hinge_line_there_is_no_place_for_a_hinge),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}

/* tests/assembly/test-catalogue-items.c: each shipped item on panels of usual thicknesses.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "config.h"
#include "assembly/hut-assembly.h"
#include "catalog/hut-catalog.h"
#include "checks/hut-check-case.h"
#include "geom/hut-geos.h"
#include "hut-assert.h"
#include "hut-test-item.h"

static const HutPanelId base_back = { HUT_SHELL_BASE, HUT_SIDE_BACK };

/* ISO 273, medium, by hand from a copy of the standard: thread, hole, mm. */
static const double medium_mm[][2] = { { 2, 2.4 }, { 2.5, 2.9 }, { 3, 3.4 }, { 3.5, 3.9 },
                                       { 4, 4.5 }, { 5, 5.5 },   { 6, 6.6 }, { 8, 9.0 } };

static HutDesign *
new_large (double sheet_mm)
{
  HutDesign *design = hut_check_case_design ();
  HutStock *stock = hut_design_get_stock (design, "plywood");

  design->shell.fitted = FALSE;
  design->shell.inside_mm = (HutVec3) { 2400, 900, 1400 };
  design->shell.seam_height_mm = 700;
  design->cutter.bed_width_mm = design->cutter.bed_depth_mm = 4000;
  g_array_set_size (stock->readings_mm, 1);
  g_array_index (stock->readings_mm, double, 0) = sheet_mm;
  return design;
}

static void
assert_holes (const HutPlacedHardware *placed)
{
  for (guint i = 0; i < placed->item->cuts->len; i++)
    {
      const HutItemCut *cut = &g_array_index (placed->item->cuts, HutItemCut, i);

      for (guint k = 0; cut->role == HUT_CUT_SCREW && !cut->wood_screw
                        && k < G_N_ELEMENTS (medium_mm);
           k++)
        if (cut->thread_mm == medium_mm[k][0])
          assert_near_mm (hut_item_cut_hole_mm (cut, placed->hardware->hole_class),
                          medium_mm[k][1], 0.0);
    }
}

static void
place_one (const HutItem *item,
           double sheet_mm)
{
  g_autoptr(HutDesign) design = new_large (sheet_mm);
  g_autoptr(HutAssembly) assembly = NULL;
  const guint leaves = item->span == HUT_SPAN_PANEL ? 1 : 2;

  hut_test_put (design, "thing", hut_item_copy (item), base_back, 1200, 350)->face
      = item->from_outside ? HUT_FACE_OUTSIDE : HUT_FACE_INSIDE;
  assembly = hut_assembly_new (design);
  if (assembly->troubles->len != 0 || assembly->hardware->len != leaves)
    fail_msg ("%s on %g mm: %u troubles, %u leaves", item->id, sheet_mm, assembly->troubles->len,
              assembly->hardware->len);
  for (guint i = 0; i < leaves; i++)
    {
      const HutPlacedHardware *placed = g_ptr_array_index (assembly->hardware, i);
      const HutPanel *panel = g_ptr_array_index (assembly->panels, placed->panel);
      const gboolean too_thick
          = item->thickness_max_mm > 0.0 && sheet_mm > item->thickness_max_mm;
      g_autoptr(GError) error = NULL;

      assert_ok (hut_geos_is_valid (panel->region, &error), error);
      assert_int_equal (placed->need.needed, too_thick);
      assert_int_equal (placed->need.thin, sheet_mm < item->thickness_min_mm);
      if (too_thick) /* deep enough that it holds, whatever bit there is */
        assert_near_mm (sheet_mm - placed->need.depth_mm, item->thickness_max_mm - 0.3, 1e-3);
      assert_holes (placed);
    }
}

static void
each_item_on_each_sheet_has_valid_outlines_and_its_pocket_or_none (void **state)
{
  static const double sheets_mm[] = { 3, 6, 9, 12, 18 };
  g_autoptr(HutCatalog) catalog = hut_catalog_new ();
  const guint count = hut_catalog_get_count (catalog);

  assert_true (count >= 80);
  for (guint i = 0; i < count; i++)
    for (guint k = 0; k < G_N_ELEMENTS (sheets_mm); k++)
      place_one (hut_catalog_get_nth (catalog, i), sheets_mm[k]);
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (each_item_on_each_sheet_has_valid_outlines_and_its_pocket_or_none),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}

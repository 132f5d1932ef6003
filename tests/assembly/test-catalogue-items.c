/* tests/assembly/test-catalogue-items.c: each shipped item on panels of usual thicknesses.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "config.h"
#include "assembly/hut-assembly.h"
#include "assembly/hut-part.h"
#include "catalog/hut-catalog.h"
#include "checks/hut-check-case.h"
#include "checks/hut-checking.h"
#include "geom/hut-geos.h"
#include "hut-assert.h"
#include "hut-test-item.h"
#include <string.h>

static const HutPanelId base_back = { HUT_SHELL_BASE, HUT_SIDE_BACK };

/* ISO 273 by hand from a copy of the standard: thread; hole fine, medium, coarse, mm. */
static const double iso_273_mm[][4]
    = { { 2, 2.2, 2.4, 2.6 }, { 2.5, 2.7, 2.9, 3.1 }, { 3, 3.2, 3.4, 3.6 }, { 3.5, 3.7, 3.9, 4.2 },
        { 4, 4.3, 4.5, 4.8 }, { 5, 5.3, 5.5, 5.8 },   { 6, 6.4, 6.6, 7.0 }, { 8, 8.4, 9.0, 10.0 } };

/* Room round what stands in a pocket, both sides together, mm, and the floor that a pocket leaves less
 * than the item's greatest thickness: common practice, no source. */
#define ROUND_NUT_MM 6.0
#define ROUND_BODY_MM 2.0
#define ROUND_CLAWS_MM 4.0
#define FLOOR_RESERVE_MM 0.3
/* Floors of birch plywood, and of any sheet under what is struck or pulled, mm: likewise. */
#define FLOOR_BIRCH_MM 2.5
#define FLOOR_STRAINED_MM 3.0
/* Of the bits that a new design begins with, mm. */
#define WIDEST_BIT_MM 50.0

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

/* ---- holes ---------------------------------------------------------------------------------- */

static const HutPlacedHole *
hole_of (const HutAssembly *assembly,
         const HutPlacedHardware *placed)
{
  for (guint i = 0; i < assembly->holes->len; i++)
    {
      const HutPlacedHole *hole = g_ptr_array_index (assembly->holes, i);

      if (hole->panel == placed->panel && strcmp (hole->item, placed->hardware->id) == 0)
        return hole;
    }
  return NULL;
}

/* The paths are in the order of the leaf's cuts. */
static void
assert_holes (const HutAssembly *assembly,
              const HutPlacedHardware *placed,
              double sheet_mm)
{
  const HutPlacedHole *hole = hole_of (assembly, placed);
  const HutPanel *panel = g_ptr_array_index (assembly->panels, placed->panel);
  guint path = 0;

  for (guint i = 0; i < placed->item->cuts->len; i++)
    {
      const HutItemCut *cut = &g_array_index (placed->item->cuts, HutItemCut, i);
      HutRect rect;

      if (cut->leaf != placed->leaf)
        continue;
      assert_non_null (hole);
      rect = hut_path_bounds (g_ptr_array_index (hole->paths, path));
      if (!hut_geos_path_is_simple (g_ptr_array_index (hole->paths, path)) || rect.u0 <= 0.0
          || rect.v0 <= 0.0 || rect.u1 >= panel->width_mm || rect.v1 >= panel->height_mm)
        fail_msg ("%s on %g mm: cut %u crosses itself or leaves the panel", placed->item->id,
                  sheet_mm, i);
      path++;
      for (guint k = 0; cut->role == HUT_CUT_SCREW && !cut->wood_screw
                        && k < G_N_ELEMENTS (iso_273_mm);
           k++)
        if (cut->thread_mm == iso_273_mm[k][0])
          {
            const double must_mm = iso_273_mm[k][1 + placed->hardware->hole_class];

            assert_near_mm (rect.u1 - rect.u0, must_mm, 1e-9);
            assert_near_mm (rect.v1 - rect.v0, must_mm, 1e-9);
          }
    }
  assert_int_equal (hole != NULL ? hole->paths->len : 0, path);
}

/* ---- pocket or block -------------------------------------------------------------------------- */

/* The widest of its cutouts, corner to corner, mm: of the shape that was cut. */
static double
cutout_mm (const HutItem *item)
{
  double widest_mm = 0.0;

  for (guint i = 0; i < item->cuts->len; i++)
    {
      const HutItemCut *cut = &g_array_index (item->cuts, HutItemCut, i);
      const double corners_mm = hypot (cut->width_mm, cut->height_mm);

      if (cut->role != HUT_CUT_BODY)
        continue;
      if (cut->shape == HUT_CUT_RECTANGLE)
        widest_mm = MAX (widest_mm, corners_mm);
      else if (cut->shape == HUT_CUT_SLOT)
        widest_mm = MAX (widest_mm, MAX (cut->width_mm, cut->height_mm));
      else if (cut->shape == HUT_CUT_KEYED) /* the key's bottom from the middle, to both sides */
        widest_mm = MAX (widest_mm, 2.0 * (cut->height_mm - cut->diameter_mm / 2.0));
      else
        widest_mm = MAX (widest_mm, cut->diameter_mm);
    }
  return widest_mm;
}

static double
pocket_across_mm (const HutItem *item)
{
  switch (item->hold)
    {
    case HUT_HOLD_NUT:
      return item->nut_corners_mm + ROUND_NUT_MM;
    case HUT_HOLD_BODY:
      return item->body_diagonal_mm + ROUND_BODY_MM;
    case HUT_HOLD_SNAP:
      return cutout_mm (item) + ROUND_CLAWS_MM;
    default:
      return cutout_mm (item) + ROUND_BODY_MM;
    }
}

static gboolean
is_told (const HutChecking *checking,
         const char *check)
{
  for (guint i = 0; i < checking->findings->len; i++)
    if (strcmp (((const HutFinding *) g_ptr_array_index (checking->findings, i))->check, check) == 0)
      return TRUE;
  return FALSE;
}

/* What the item's own data say of that sheet is what is bored, or what blocks. */
static void
assert_mount (const HutAssembly *assembly,
              const HutItem *item,
              double sheet_mm)
{
  g_autoptr(GPtrArray) findings
      = g_ptr_array_new_with_free_func ((GDestroyNotify) hut_finding_free);
  /* A wall that is not split has no straps. */
  g_autoptr(GPtrArray) no_parts = g_ptr_array_new ();
  g_autoptr(GArray) no_straps = g_array_new (FALSE, FALSE, sizeof (HutSolid));
  const HutPartSet parts = { .parts = no_parts, .solids = no_straps };
  HutChecking checking = { assembly, &parts, findings };
  const HutPlacedHardware *placed = g_ptr_array_index (assembly->hardware, 0);
  const gboolean too_thick = item->thickness_max_mm > 0.0 && sheet_mm > item->thickness_max_mm;
  const double floor_mm = item->thickness_max_mm - FLOOR_RESERVE_MM;
  const double must_mm = MAX (MAX (FLOOR_BIRCH_MM, item->thickness_min_mm),
                              item->strained ? FLOOR_STRAINED_MM : 0.0);
  const gboolean no_floor = too_thick && floor_mm < must_mm - 1e-9;
  const gboolean no_bit = too_thick && pocket_across_mm (item) > WIDEST_BIT_MM;

  hut_check_mount (&checking);
  if (is_told (&checking, "mount.thin") != (sheet_mm < item->thickness_min_mm)
      || is_told (&checking, "mount.floor") != no_floor
      || is_told (&checking, "mount.bit") != (no_bit && !no_floor)
      || is_told (&checking, "mount.way") != (too_thick && !no_bit))
    fail_msg ("%s on %g mm: floor %g of %g, bit %g: not what is told", item->id, sheet_mm, floor_mm,
              must_mm, pocket_across_mm (item));
  if (placed->bored)
    assert_true (placed->need.bit_mm >= pocket_across_mm (item) - 1e-9);
}

/* ---- one item on one sheet --------------------------------------------------------------------- */

static void
place_one (const HutItem *item,
           double sheet_mm,
           HutHoleClass hole_class)
{
  HutHardware *thing;
  g_autoptr(HutDesign) design = new_large (sheet_mm);
  g_autoptr(HutAssembly) assembly = NULL;
  const guint leaves = item->span == HUT_SPAN_PANEL ? 1 : 2;

  thing = hut_test_put (design, "thing", hut_item_copy (item), base_back, 1200, 350);
  thing->face = item->from_outside ? HUT_FACE_OUTSIDE : HUT_FACE_INSIDE;
  thing->hole_class = hole_class;
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
      assert_holes (assembly, placed, sheet_mm);
    }
  assert_mount (assembly, item, sheet_mm);
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
      place_one (hut_catalog_get_nth (catalog, i), sheets_mm[k], (HutHoleClass) (k % 3));
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (each_item_on_each_sheet_has_valid_outlines_and_its_pocket_or_none),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}

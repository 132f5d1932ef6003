/* tests/assembly/test-pocket.c: the rule of relief pockets, by hand.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "config.h"
#include "assembly/hut-pocket.h"
#include "hut-assert.h"
#include "hut-test-item.h"

static HutStock *
new_stock (HutMaterial material,
           double density_kg_m3,
           double thin_mm,
           double thick_mm)
{
  HutStock *stock = hut_stock_new ("sheet");
  const double readings_mm[] = { thin_mm, thick_mm };

  stock->material = material;
  stock->density_kg_m3 = density_kg_m3;
  g_array_set_size (stock->readings_mm, 0);
  g_array_append_vals (stock->readings_mm, readings_mm, 2);
  return stock;
}

static HutPocketNeed
need_of (const HutItem *item,
         HutMaterial material,
         double density_kg_m3,
         double thin_mm,
         double thick_mm)
{
  g_autoptr(HutStock) stock = new_stock (material, density_kg_m3, thin_mm, thick_mm);
  g_autoptr(GArray) bits = hut_bits_new_common ();
  HutPocketNeed need;

  hut_pocket_find_need (item, stock, bits, &need);
  return need;
}

static void
panel_within_the_range_needs_no_pocket (void **state)
{
  g_autoptr(HutItem) item = hut_test_item_new_switch ();
  HutPocketNeed need = need_of (item, HUT_MATERIAL_PLYWOOD, 680, 2.8, 3.0);

  assert_false (need.needed);
  assert_false (need.thin);
  need = need_of (item, HUT_MATERIAL_PLYWOOD, 680, 0.9, 1.1);
  assert_true (need.thin);
  item->thickness_max_mm = 0.0; /* any */
  need = need_of (item, HUT_MATERIAL_MDF, 760, 18.0, 18.2);
  assert_false (need.needed);
}

static void
depth_is_taken_from_the_thickest_reading (void **state)
{
  g_autoptr(HutItem) item = hut_test_item_new_switch ();
  const HutPocketNeed need = need_of (item, HUT_MATERIAL_PLYWOOD, 680, 5.8, 6.25);

  assert_true (need.needed);
  assert_near_mm (need.floor_mm, 2.7, 1e-9);      /* 3 - 0.3 */
  assert_near_mm (need.floor_must_mm, 2.5, 1e-9); /* birch */
  assert_near_mm (need.depth_mm, 3.55, 1e-9);     /* 6.25 - 2.7 */
}

static void
nut_body_and_snap_in_differ (void **state)
{
  g_autoptr(HutItem) item = hut_test_item_new_switch ();
  HutItemCut *cut = &g_array_index (item->cuts, HutItemCut, 0);
  HutPocketNeed need = need_of (item, HUT_MATERIAL_PLYWOOD, 680, 6, 6);

  assert_near_mm (need.least_bit_mm, 24.0, 1e-9); /* 18 + 2 x 3 */
  assert_near_mm (need.bit_mm, 24.0, 0.0);
  item->hold = HUT_HOLD_BODY;
  item->body_diagonal_mm = 15.5; /* a toggle of 13.2 x 8.1 */
  need = need_of (item, HUT_MATERIAL_PLYWOOD, 680, 6, 6);
  assert_near_mm (need.least_bit_mm, 17.5, 1e-9); /* + 2 */
  assert_near_mm (need.bit_mm, 18.0, 0.0);
  item->hold = HUT_HOLD_SNAP; /* rocker of 19.2 x 13.0: sqrt (368.64 + 169) = 23.187, + 4 */
  cut->shape = HUT_CUT_RECTANGLE;
  cut->width_mm = 19.2;
  cut->height_mm = 13.0;
  need = need_of (item, HUT_MATERIAL_PLYWOOD, 680, 6, 6);
  assert_near_mm (need.least_bit_mm, 27.187, 0.001);
  assert_near_mm (need.bit_mm, 28.0, 0.0);
}

static void
each_material_keeps_its_floor (void **state)
{
  static const struct
  {
    HutMaterial material;
    double density_kg_m3, floor_mm;
  } cases[] = {
    { HUT_MATERIAL_PLYWOOD, 680, 2.5 }, { HUT_MATERIAL_PLYWOOD, 430, 3.0 },
    { HUT_MATERIAL_MDF, 760, 3.0 },     { HUT_MATERIAL_HDF, 880, 2.5 },
    { HUT_MATERIAL_ACRYLIC, 1190, 2.0 },
  };
  g_autoptr(HutItem) item = hut_test_item_new_switch ();

  for (guint i = 0; i < G_N_ELEMENTS (cases); i++)
    {
      item->strained = FALSE;
      assert_near_mm (
          need_of (item, cases[i].material, cases[i].density_kg_m3, 6, 6).floor_must_mm,
          cases[i].floor_mm, 0.0);
      item->strained = TRUE; /* struck or pulled: 3 */
      assert_near_mm (
          need_of (item, cases[i].material, cases[i].density_kg_m3, 6, 6).floor_must_mm, 3.0, 0.0);
    }
}

static void
owner_without_a_bit_has_none (void **state)
{
  g_autoptr(HutItem) item = hut_test_item_new_switch ();

  item->nut_corners_mm = 60.0;
  assert_near_mm (need_of (item, HUT_MATERIAL_PLYWOOD, 680, 6, 6).bit_mm, 0.0, 0.0);
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (panel_within_the_range_needs_no_pocket),
    cmocka_unit_test (depth_is_taken_from_the_thickest_reading),
    cmocka_unit_test (nut_body_and_snap_in_differ),
    cmocka_unit_test (each_material_keeps_its_floor),
    cmocka_unit_test (owner_without_a_bit_has_none),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}

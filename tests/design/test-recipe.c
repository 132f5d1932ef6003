/* tests/design/test-recipe.c: where a recipe begins before anything was measured.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "design/hut-recipe.h"
#include "hut-assert.h"

static HutRecipe
start (HutMaterial material,
       double thickness_mm,
       HutCutterKind cutter)
{
  HutRecipe recipe = { 0 };

  assert_true (hut_recipe_start (material, thickness_mm, cutter, &recipe));
  return recipe;
}

static void
thicker_stock_is_cut_no_faster_and_no_narrower (void **state)
{
  for (int material = 0; material <= HUT_MATERIAL_ACRYLIC; material++)
    for (int cutter = 0; cutter <= HUT_CUTTER_ROUTER; cutter++)
      {
        HutRecipe before = start ((HutMaterial) material, 0.5, (HutCutterKind) cutter);

        for (double thickness_mm = 1.0; thickness_mm < 60.0; thickness_mm += 0.5)
          {
            const HutRecipe recipe
                = start ((HutMaterial) material, thickness_mm, (HutCutterKind) cutter);

            assert_true (recipe.speed_mm_min / recipe.passes
                         <= before.speed_mm_min / before.passes);
            assert_true (recipe.kerf_mm >= before.kerf_mm && recipe.kerf_error_mm > 0.0);
            assert_true (recipe.power_percent > 0.0 && recipe.power_percent <= 100.0);
            before = recipe;
          }
      }
}

static void
start_values_are_the_usual_ones (void **state)
{
  /* Common practice, no source. */
  const HutRecipe thin = start (HUT_MATERIAL_PLYWOOD, 3.0, HUT_CUTTER_LASER);
  const HutRecipe thick = start (HUT_MATERIAL_MDF, 6.0, HUT_CUTTER_LASER);
  const HutRecipe routed = start (HUT_MATERIAL_PLYWOOD, 6.0, HUT_CUTTER_ROUTER);

  assert_near_mm (thin.kerf_mm, 0.12, 0);
  assert_true (thin.speed_mm_min >= 500 && thin.speed_mm_min <= 700);
  assert_true (thick.speed_mm_min >= 120 && thick.speed_mm_min <= 160);
  assert_int_equal (thick.passes, 2);
  assert_true (routed.kerf_mm > 3.0); /* the cutter and its runout */
}

static void
unknown_stock_and_polycarbonate_under_a_laser_have_none (void **state)
{
  HutRecipe recipe = { .kerf_mm = 7.0 };
  g_autoptr(HutStock) stock = hut_stock_new ("other");

  stock->material = HUT_MATERIAL_OTHER;
  assert_false (hut_recipe_start (HUT_MATERIAL_OTHER, 3.0, HUT_CUTTER_ROUTER, &recipe));
  assert_false (hut_recipe_start (HUT_MATERIAL_POLYCARBONATE, 3.0, HUT_CUTTER_LASER, &recipe));
  assert_near_mm (recipe.kerf_mm, 7.0, 0);
  assert_true (hut_recipe_start (HUT_MATERIAL_POLYCARBONATE, 3.0, HUT_CUTTER_ROUTER, &recipe));
  assert_false (hut_recipe_is_start (stock, HUT_CUTTER_LASER));
}

static void
changed_or_measured_recipe_is_no_start (void **state)
{
  g_autoptr(HutStock) stock = hut_stock_new ("ply");
  const HutRecipe first = start (stock->material, hut_stock_mean_mm (stock), HUT_CUTTER_LASER);

  stock->allowance_error_mm = 0.04;
  stock->fit_shift_mm = 0.02;
  hut_recipe_apply (&first, stock);
  assert_true (hut_recipe_is_start (stock, HUT_CUTTER_LASER));
  assert_false (hut_recipe_is_start (stock, HUT_CUTTER_ROUTER));
  assert_near_mm (stock->fit_shift_mm, 0.0, 0);
  stock->allowance_error_mm = 0.04; /* a coupon was read */
  assert_false (hut_recipe_is_start (stock, HUT_CUTTER_LASER));
  stock->allowance_error_mm = 0.0;
  stock->speed_mm_min += 1;
  assert_false (hut_recipe_is_start (stock, HUT_CUTTER_LASER));
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (thicker_stock_is_cut_no_faster_and_no_narrower),
    cmocka_unit_test (start_values_are_the_usual_ones),
    cmocka_unit_test (unknown_stock_and_polycarbonate_under_a_laser_have_none),
    cmocka_unit_test (changed_or_measured_recipe_is_no_start),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}

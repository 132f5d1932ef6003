/* src/design/hut-recipe.h: where a recipe begins before anything was measured.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "design/hut-design.h"

/* How a cutter cuts a stock. */
typedef struct
{
  double kerf_mm, kerf_error_mm;
  double speed_mm_min, power_percent;
  guint passes;
} HutRecipe;

/**
 * hut_recipe_start:
 * @material: of the stock
 * @thickness_mm: as measured
 * @cutter: laser or router
 * @recipe: (out): the start values
 *
 * Common practice of small shops, no source for most of it; differs much from machine to machine.
 * It is where an owner starts to try on waste, never what a part is cut with: that is what the
 * coupon is for. A laser is taken for a blue diode of 20 W; acrylic, which such light passes
 * through when it is clear, for a CO2 tube of 40 W. A router is taken to have a cutter of 3 mm.
 * There is none for what nobody knows, and none for polycarbonate under a laser: most lists tell
 * not to do that, because of what it gives off.
 *
 * Returns: FALSE, with nothing written, when there are no start values
 */
gboolean hut_recipe_start (HutMaterial material,
                           double thickness_mm,
                           HutCutterKind cutter,
                           HutRecipe *recipe);

/* TRUE while the recipe of @stock still is the one to start with: nothing was measured yet. */
gboolean hut_recipe_is_start (const HutStock *stock, HutCutterKind cutter);
/* Puts it into @stock, and takes what a coupon said out. */
void hut_recipe_apply (const HutRecipe *self, HutStock *stock);

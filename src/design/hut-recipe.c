/* src/design/hut-recipe.c: where a recipe begins before anything was measured.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-design"
#include "config.h"
#include "design/hut-recipe.h"

/* A row holds up to its thickness. */
typedef struct
{
  double up_to_mm;
  HutRecipe recipe;
} Row;

#define END_MM G_MAXDOUBLE /* thicker than anything in the table: as slow as its last row */

/* All rows: common practice of the trade, no source. Kerf, its error, mm/min, %, passes. */
static const Row diode_wood[] = {
  { 3.5, { 0.12, 0.04, 600, 100, 1 } }, /* 500 .. 700 */
  { 5.5, { 0.16, 0.05, 300, 100, 1 } }, /* 250 .. 350 */
  { 8.5, { 0.22, 0.06, 170, 100, 2 } }, /* 150 .. 200, 1 .. 2 passes */
  { END_MM, { 0.25, 0.08, 120, 100, 2 } },
};
static const Row diode_fibreboard[] = {
  { 3.5, { 0.14, 0.05, 350, 100, 1 } }, /* 300 .. 400 */
  { 6.5, { 0.20, 0.06, 140, 100, 2 } }, /* 120 .. 160 */
  { END_MM, { 0.25, 0.08, 100, 100, 3 } },
};
static const Row tube_plastic[] = {
  { 3.5, { 0.15, 0.05, 720, 60, 1 } }, /* 10 .. 15 mm/s at 40 W */
  { 6.5, { 0.18, 0.05, 360, 70, 1 } },
  { END_MM, { 0.25, 0.08, 180, 80, 1 } },
};
/* Cutter of 3 mm and its runout; a pass every 2 mm. Power says nothing here. */
static const Row router_wood[] = {
  { 3.5, { 3.05, 0.05, 1200, 100, 2 } },
  { 6.5, { 3.05, 0.05, 1200, 100, 3 } },
  { 12.5, { 3.05, 0.05, 1200, 100, 6 } },
  { END_MM, { 3.05, 0.05, 1000, 100, 9 } },
};
static const Row router_plastic[] = {
  { 3.5, { 3.05, 0.05, 1000, 100, 2 } }, /* 800 .. 1500, 1 .. 2 deep */
  { 6.5, { 3.05, 0.05, 1000, 100, 4 } },
  { END_MM, { 3.05, 0.05, 800, 100, 8 } },
};

static const Row *
rows_for (HutMaterial material,
          HutCutterKind cutter)
{
  const gboolean laser = cutter == HUT_CUTTER_LASER;

  switch (material)
    {
    case HUT_MATERIAL_MDF:
    case HUT_MATERIAL_HDF:
      return laser ? diode_fibreboard : router_wood;
    case HUT_MATERIAL_ACRYLIC:
      return laser ? tube_plastic : router_plastic;
    case HUT_MATERIAL_POLYCARBONATE:
      return laser ? NULL : router_plastic;
    case HUT_MATERIAL_PLYWOOD:
      return laser ? diode_wood : router_wood;
    default:
      return NULL;
    }
}

gboolean
hut_recipe_start (HutMaterial material,
                  double thickness_mm,
                  HutCutterKind cutter,
                  HutRecipe *recipe)
{
  g_return_val_if_fail (recipe != NULL, FALSE);

  const Row *row = rows_for (material, cutter);

  if (row == NULL)
    return FALSE;
  while (row->up_to_mm < thickness_mm)
    row++;
  *recipe = row->recipe;
  return TRUE;
}

gboolean
hut_recipe_is_start (const HutStock *stock,
                     HutCutterKind cutter)
{
  g_return_val_if_fail (stock != NULL, FALSE);

  HutRecipe start;

  return hut_recipe_start (stock->material, hut_stock_mean_mm (stock), cutter, &start)
         && stock->kerf_mm == start.kerf_mm && stock->kerf_error_mm == start.kerf_error_mm
         && stock->speed_mm_min == start.speed_mm_min
         && stock->power_percent == start.power_percent && stock->passes == start.passes
         && stock->allowance_error_mm == 0.0;
}

void
hut_recipe_apply (const HutRecipe *self,
                  HutStock *stock)
{
  g_return_if_fail (self != NULL && stock != NULL);

  stock->kerf_mm = self->kerf_mm;
  stock->kerf_error_mm = self->kerf_error_mm;
  stock->speed_mm_min = self->speed_mm_min;
  stock->power_percent = self->power_percent;
  stock->passes = self->passes;
  stock->allowance_error_mm = stock->fit_shift_mm = 0.0;
}

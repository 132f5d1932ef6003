/* src/assembly/hut-pocket.c: relief pockets, where a panel is thicker than an item can hold.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-assembly"
#include "config.h"
#include "assembly/hut-pocket.h"
#include <math.h>

/* Thicknesses nearer than this are the same, mm: own choice, half of what a caliper shows. */
#define SAME_THICKNESS_MM 0.005

/* Least floors, mm: common practice, no source. Parts that are struck or pulled want STRAINED. */
#define FLOOR_DENSE_PLYWOOD_MM 2.5 /* birch: at least two veneers */
#define FLOOR_LIGHT_PLYWOOD_MM 3.0 /* poplar, spruce */
#define FLOOR_MDF_MM 3.0
#define FLOOR_HDF_MM 2.5
#define FLOOR_ACRYLIC_MM 2.0
#define FLOOR_OTHER_MM 3.0 /* own choice: the thickest of the known ones */
#define FLOOR_STRAINED_MM 3.0

/* Between the densities of spruce (520) and birch (650) plywood, kg/m3: own choice. */
#define DENSE_PLYWOOD_KG_M3 585.0

static double
material_floor_mm (const HutStock *stock)
{
  switch (stock->material)
    {
    case HUT_MATERIAL_PLYWOOD:
      return stock->density_kg_m3 >= DENSE_PLYWOOD_KG_M3 ? FLOOR_DENSE_PLYWOOD_MM
                                                         : FLOOR_LIGHT_PLYWOOD_MM;
    case HUT_MATERIAL_MDF:
      return FLOOR_MDF_MM;
    case HUT_MATERIAL_HDF:
      return FLOOR_HDF_MM;
    case HUT_MATERIAL_ACRYLIC:
    case HUT_MATERIAL_POLYCARBONATE:
      return FLOOR_ACRYLIC_MM;
    case HUT_MATERIAL_OTHER:
    default:
      return FLOOR_OTHER_MM;
    }
}

double
hut_pocket_floor_must_mm (const HutStock *stock,
                          const HutItem *item)
{
  const double floor_mm = MAX (material_floor_mm (stock), item->thickness_min_mm);

  return item->strained ? MAX (floor_mm, FLOOR_STRAINED_MM) : floor_mm;
}

static double
cut_breadth_mm (const HutItemCut *cut)
{
  switch (cut->shape)
    {
    case HUT_CUT_RECTANGLE:
      return hypot (cut->width_mm, cut->height_mm);
    case HUT_CUT_SLOT:
      return MAX (cut->width_mm, cut->height_mm);
    case HUT_CUT_KEYED: /* from the middle to the bottom of the notch, to both sides */
      return MAX (cut->diameter_mm, 2.0 * cut->height_mm - cut->diameter_mm);
    default:
      return cut->diameter_mm;
    }
}

double
hut_pocket_cutout_mm (const HutItem *item)
{
  double breadth_mm = 0.0;

  for (guint i = 0; i < item->cuts->len; i++)
    {
      const HutItemCut *cut = &g_array_index (item->cuts, HutItemCut, i);

      if (cut->role == HUT_CUT_BODY)
        breadth_mm = MAX (breadth_mm, cut_breadth_mm (cut));
    }
  return breadth_mm;
}

/* What stands in the pocket, with the room that it needs round it. */
static double
least_bit_mm (const HutItem *item)
{
  switch (item->hold)
    {
    case HUT_HOLD_NUT:
      return item->nut_corners_mm + 2.0 * HUT_POCKET_SOCKET_MM;
    case HUT_HOLD_BODY:
      return item->body_diagonal_mm + 2.0 * HUT_POCKET_BODY_MM;
    case HUT_HOLD_SNAP:
      return hut_pocket_cutout_mm (item) + 2.0 * HUT_POCKET_CLAWS_MM;
    case HUT_HOLD_SCREWS:
    case HUT_HOLD_GLUE:
    default: /* its body goes through the cutout */
      return hut_pocket_cutout_mm (item) + 2.0 * HUT_POCKET_BODY_MM;
    }
}

void
hut_pocket_find_need (const HutItem *item,
                      const HutStock *stock,
                      const GArray *bits_mm,
                      HutPocketNeed *need)
{
  const double thinnest_mm = hut_stock_min_mm (stock), thickest_mm = hut_stock_max_mm (stock);

  *need = (HutPocketNeed) { .thin = thinnest_mm < item->thickness_min_mm - SAME_THICKNESS_MM };
  if (item->thickness_max_mm <= 0.0 || thickest_mm <= item->thickness_max_mm + SAME_THICKNESS_MM)
    return;
  need->needed = TRUE;
  need->floor_mm = item->thickness_max_mm - HUT_POCKET_RESERVE_MM;
  need->floor_must_mm = hut_pocket_floor_must_mm (stock, item);
  need->depth_mm = hut_snap_mm (thickest_mm - need->floor_mm);
  need->least_bit_mm = least_bit_mm (item);
  need->bit_mm = hut_bits_next_mm (bits_mm, need->least_bit_mm);
}

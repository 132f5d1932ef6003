/* src/checks/hut-joint-fit.c: how loose a tongue is in its slot, and what is usual.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-checks"
#include "config.h"
#include "checks/hut-joint-fit.h"
#include <math.h>

/* What is uncertain of a flank's two edges. A coupon measures the clearance, kerf included. */
static double
cut_error_mm (const HutStock *stock)
{
  return stock->allowance_error_mm > 0.0 ? stock->allowance_error_mm / 2.0 : stock->kerf_error_mm;
}

HutJointFit
hut_joint_fit_find (const HutStock *tongue,
                    const HutStock *slot)
{
  const gboolean same = tongue == slot;
  const double tongue_spread_mm = (hut_stock_max_mm (tongue) - hut_stock_min_mm (tongue)) / 2.0;
  const double slot_spread_mm = (hut_stock_max_mm (slot) - hut_stock_min_mm (slot)) / 2.0;
  const double tongue_error_mm = cut_error_mm (tongue), slot_error_mm = cut_error_mm (slot);
  const double kerf_rss_mm = same ? 2.0 * tongue_error_mm : hypot (tongue_error_mm, slot_error_mm);
  const double spread_rss_mm = hypot (tongue_spread_mm, slot_spread_mm);
  HutJointFit fit = {
    .centre_mm = (tongue->allowance_mm + tongue->fit_shift_mm + slot->allowance_mm
                  + slot->fit_shift_mm)
                 / 2.0,
    .kerf_mm = tongue_error_mm + slot_error_mm,
    .thickness_mm = tongue_spread_mm + slot_spread_mm,
  };

  fit.worst_mm = fit.kerf_mm + fit.thickness_mm;
  fit.rss_mm = hypot (kerf_rss_mm, spread_rss_mm);
  return fit;
}

/* ---- what is usual ------------------------------------------------------------------------- */

typedef enum
{
  GROUP_PLYWOOD,
  GROUP_FIBREBOARD,
  GROUP_ACRYLIC,
  GROUP_COUNT
} Group;

#define FIT_COUNT 3
#define CUTTER_COUNT 2

/* Slot minus tongue after kerf compensation, mm. Every row: common practice of the trade, no
 * source; differs from machine to machine, which is why findings ask for a coupon. Glued acrylic
 * spans the thin film of a solvent (0.05 .. 0.1) and that of a cement (0.1 .. 0.3). Routed
 * acrylic: no figure known. */
static const HutFitRange usual[GROUP_COUNT][CUTTER_COUNT][FIT_COUNT] = {
  [GROUP_PLYWOOD] = {
    [HUT_CUTTER_LASER] = { [HUT_FIT_PRESS] = { TRUE, FALSE, -0.15, -0.05 },
                           [HUT_FIT_SLIP] = { TRUE, FALSE, -0.05, 0.05 },
                           [HUT_FIT_GLUE] = { TRUE, FALSE, 0.05, 0.15 } },
    [HUT_CUTTER_ROUTER] = { [HUT_FIT_PRESS] = { TRUE, FALSE, -0.10, 0.0 },
                            [HUT_FIT_SLIP] = { TRUE, FALSE, 0.0, 0.10 },
                            [HUT_FIT_GLUE] = { TRUE, FALSE, 0.10, 0.20 } },
  },
  [GROUP_FIBREBOARD] = {
    [HUT_CUTTER_LASER] = { [HUT_FIT_PRESS] = { TRUE, FALSE, -0.15, -0.05 },
                           [HUT_FIT_SLIP] = { TRUE, FALSE, -0.05, 0.05 },
                           [HUT_FIT_GLUE] = { TRUE, FALSE, 0.05, 0.15 } },
    [HUT_CUTTER_ROUTER] = { [HUT_FIT_PRESS] = { TRUE, FALSE, -0.10, 0.0 },
                            [HUT_FIT_SLIP] = { TRUE, FALSE, 0.0, 0.10 },
                            [HUT_FIT_GLUE] = { TRUE, FALSE, 0.10, 0.20 } },
  },
  [GROUP_ACRYLIC] = {
    [HUT_CUTTER_LASER] = { [HUT_FIT_PRESS] = { TRUE, TRUE, 0.0, 0.0 },
                           [HUT_FIT_SLIP] = { TRUE, FALSE, 0.0, 0.05 },
                           [HUT_FIT_GLUE] = { TRUE, FALSE, 0.05, 0.30 } },
  },
};

HutFitRange
hut_fit_range (HutMaterial material,
               HutCutterKind cutter,
               HutFitKind fit)
{
  const HutFitRange unknown = { .known = FALSE };
  Group group;

  g_return_val_if_fail ((guint)cutter < CUTTER_COUNT && (guint)fit < FIT_COUNT, unknown);

  switch (material)
    {
    case HUT_MATERIAL_PLYWOOD:
      group = GROUP_PLYWOOD;
      break;
    case HUT_MATERIAL_MDF:
    case HUT_MATERIAL_HDF:
      group = GROUP_FIBREBOARD;
      break;
    case HUT_MATERIAL_ACRYLIC:
      group = GROUP_ACRYLIC;
      break;
    default:
      return unknown;
    }
  return usual[group][cutter][fit];
}

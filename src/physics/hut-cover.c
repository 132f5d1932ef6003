/* src/physics/hut-cover.c: how much paint, wax and glue to buy.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-physics"
#include "config.h"
#include "physics/hut-cover.h"

#define LITRES_PER_M3 1000.0

double
hut_spreading_m2_l (double solids_ratio,
                    double dry_m)
{
  if (!(solids_ratio >= 0 && solids_ratio <= 1) || !(dry_m > 0))
    return NAN;
  return solids_ratio / dry_m / LITRES_PER_M3;
}

double
hut_spreading_by_mass_m2_l (double density_kg_m3,
                            double mass_kg_m2)
{
  return mass_kg_m2 > 0 ? density_kg_m3 / mass_kg_m2 / LITRES_PER_M3 : NAN;
}

double
hut_litres_for (double area_m2,
                guint coats,
                double rate_m2_l,
                double waste_ratio)
{
  return rate_m2_l > 0 ? area_m2 * coats / rate_m2_l * (1 + waste_ratio) : NAN;
}

/* src/physics/hut-tip.c: whether the enclosure tips over.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-physics"
#include "config.h"
#include "physics/hut-tip.h"

double
hut_tip_ratio (double holding_kg,
               double holding_m,
               double tipping_kg,
               double tipping_m)
{
  const double tipping_kg_m = tipping_kg * tipping_m;

  if (!(tipping_kg_m >= 0))
    return NAN;
  return tipping_kg_m > 0 ? holding_kg * holding_m / tipping_kg_m : INFINITY;
}

double
hut_tip_push_down_n (double holding_kg,
                     double holding_m,
                     double tipping_kg,
                     double tipping_m,
                     double push_m)
{
  if (!(push_m > 0))
    return NAN;
  return HUT_GRAVITY_M_S2 * (holding_kg * holding_m - tipping_kg * tipping_m) / push_m;
}

double
hut_tip_push_level_n (double mass_kg,
                      double arm_m,
                      double height_m)
{
  return height_m > 0 ? mass_kg * HUT_GRAVITY_M_S2 * arm_m / height_m : NAN;
}

/* src/physics/hut-heat.c: how warm it gets inside.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-physics"
#include "config.h"
#include "physics/hut-heat.h"

double
hut_wall_u_w_m2k (double thickness_m,
                  double conductivity_w_mk,
                  double inner_m2k_w,
                  double outer_m2k_w)
{
  const double resistance_m2k_w = inner_m2k_w + thickness_m / conductivity_w_mk + outer_m2k_w;

  if (!(thickness_m >= 0) || !(conductivity_w_mk > 0) || !(inner_m2k_w >= 0) || !(outer_m2k_w >= 0)
      || !(resistance_m2k_w > 0))
    return NAN;
  return 1 / resistance_m2k_w;
}

double
hut_heat_rise_k (double heat_w,
                 double flow_m3_s,
                 double walls_w_k,
                 double density_kg_m3)
{
  if (!(heat_w >= 0) || !(flow_m3_s >= 0) || !(walls_w_k >= 0) || !(density_kg_m3 > 0))
    return NAN;
  if (heat_w == 0)
    return 0;
  return heat_w / (density_kg_m3 * HUT_AIR_HEAT_CAPACITY * flow_m3_s + walls_w_k);
}

double
hut_heat_flow_m3_s (double heat_w,
                    double rise_k,
                    double walls_w_k,
                    double density_kg_m3)
{
  if (!(heat_w >= 0) || !(rise_k > 0) || !(walls_w_k >= 0) || !(density_kg_m3 > 0))
    return NAN;
  return MAX (heat_w / rise_k - walls_w_k, 0) / (density_kg_m3 * HUT_AIR_HEAT_CAPACITY);
}

/* src/physics/hut-purge.c: how fast moving air clears a box.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-physics"
#include "config.h"
#include "physics/hut-purge.h"

#define SECONDS_PER_HOUR 3600.0

double
hut_air_changes_count (double flow_m3_s,
                       double volume_m3)
{
  if (!(flow_m3_s >= 0) || !(volume_m3 > 0))
    return NAN;
  return SECONDS_PER_HOUR * flow_m3_s / volume_m3;
}

double
hut_purge_time_s (double flow_m3_s,
                  double volume_m3,
                  double remaining_ratio,
                  double mixing_ratio)
{
  if (!(flow_m3_s >= 0) || !(volume_m3 > 0) || !(mixing_ratio >= 1)
      || !(remaining_ratio >= 0 && remaining_ratio <= 1))
    return NAN;
  if (remaining_ratio == 1)
    return 0;
  return -mixing_ratio * volume_m3 / flow_m3_s * log (remaining_ratio);
}

double
hut_buildup_kg_m3 (double source_kg_s,
                   double flow_m3_s,
                   double volume_m3,
                   double mixing_ratio,
                   double time_s)
{
  const double clearing_m3_s = flow_m3_s / mixing_ratio;

  if (!(source_kg_s >= 0) || !(flow_m3_s >= 0) || !(volume_m3 > 0) || !(mixing_ratio >= 1)
      || !(time_s >= 0))
    return NAN;
  if (flow_m3_s == 0)
    return source_kg_s * time_s / volume_m3;
  return source_kg_s / clearing_m3_s * -expm1 (-clearing_m3_s * time_s / volume_m3);
}

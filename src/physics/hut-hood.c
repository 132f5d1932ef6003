/* src/physics/hut-hood.c: how far the pull of an opening reaches.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-physics"
#include "config.h"
#include "physics/hut-hood.h"

/* ACGIH hood figure. */
#define SPREAD_RATIO 10.0
#define FLANGE_RATIO 0.75
#define SLOT_RATIO 3.7
#define SLOT_FLANGED_RATIO 2.6

double
hut_hood_entry_ratio (double loss_ratio)
{
  return loss_ratio >= 0 ? 1 / sqrt (1 + loss_ratio) : NAN;
}

double
hut_hood_loss_ratio (double suction_pa,
                     double velocity_pressure_pa)
{
  if (!(velocity_pressure_pa > 0) || !(suction_pa >= velocity_pressure_pa))
    return NAN;
  return suction_pa / velocity_pressure_pa - 1;
}

double
hut_hood_flow_m3_s (double entry_ratio,
                    double area_m2,
                    double suction_pa,
                    double density_kg_m3)
{
  if (!(entry_ratio > 0 && entry_ratio <= 1) || !(area_m2 >= 0) || !(suction_pa >= 0)
      || !(density_kg_m3 > 0))
    return NAN;
  return entry_ratio * area_m2 * sqrt (2 * suction_pa / density_kg_m3);
}

double
hut_hood_capture_m3_s (HutHoodKind kind,
                       double size,
                       double distance_m,
                       double velocity_m_s)
{
  if (!(size >= 0) || !(distance_m >= 0) || !(velocity_m_s >= 0))
    return NAN;

  const double open_m2 = SPREAD_RATIO * distance_m * distance_m + size;

  switch (kind)
    {
    case HUT_HOOD_PLAIN:
      return velocity_m_s * open_m2;
    case HUT_HOOD_FLANGED:
      return FLANGE_RATIO * velocity_m_s * open_m2;
    case HUT_HOOD_SLOT:
      return SLOT_RATIO * size * velocity_m_s * distance_m;
    case HUT_HOOD_SLOT_FLANGED:
      return SLOT_FLANGED_RATIO * size * velocity_m_s * distance_m;
    default:
      return NAN;
    }
}

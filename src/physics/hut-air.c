/* src/physics/hut-air.c: air as it is at a place.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-physics"
#include "config.h"
#include "physics/hut-air.h"

/* US Standard Atmosphere 1976. */
#define EARTH_RADIUS_M 6356766.0
#define SEA_LEVEL_K 288.15
#define LAPSE_K_M 0.0065
#define PRESSURE_EXPONENT 5.25588
#define TROPOSPHERE_M 11000.0
#define DEEPEST_M (-1000.0)
#define SUTHERLAND_PA_S_SQRT_K 1.458e-6
#define SUTHERLAND_K 110.4

double
hut_air_density_kg_m3 (double temperature_k,
                       double pressure_pa)
{
  if (!(temperature_k > 0) || !(pressure_pa >= 0))
    return NAN;
  return pressure_pa / (HUT_AIR_GAS_CONSTANT * temperature_k);
}

double
hut_air_viscosity_pa_s (double temperature_k)
{
  if (!(temperature_k > 0))
    return NAN;
  return SUTHERLAND_PA_S_SQRT_K * temperature_k * sqrt (temperature_k)
         / (temperature_k + SUTHERLAND_K);
}

HutAtmosphere
hut_atmosphere_at (double altitude_m)
{
  const double height_m = EARTH_RADIUS_M * altitude_m / (EARTH_RADIUS_M + altitude_m);
  const double temperature_k = SEA_LEVEL_K - LAPSE_K_M * height_m;

  if (!(altitude_m >= DEEPEST_M && altitude_m <= TROPOSPHERE_M))
    return (HutAtmosphere) { NAN, NAN };
  return (HutAtmosphere) {
    .temperature_k = temperature_k,
    .pressure_pa = HUT_SEA_LEVEL_PA * pow (temperature_k / SEA_LEVEL_K, PRESSURE_EXPONENT),
  };
}

HutAir
hut_air_in_room (double temperature_c,
                 double altitude_m)
{
  const double temperature_k = temperature_c + HUT_ZERO_CELSIUS_K;

  return (HutAir) {
    .density_kg_m3
    = hut_air_density_kg_m3 (temperature_k, hut_atmosphere_at (altitude_m).pressure_pa),
    .viscosity_pa_s = hut_air_viscosity_pa_s (temperature_k),
  };
}

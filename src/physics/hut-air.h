/* src/physics/hut-air.h: air as it is at a place: density and viscosity.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "physics/hut-physics.h"

typedef struct
{
  double density_kg_m3;
  double viscosity_pa_s; /* dynamic */
} HutAir;

typedef struct
{
  double temperature_k;
  double pressure_pa;
} HutAtmosphere;

/**
 * hut_air_density_kg_m3:
 * @temperature_k: > 0
 * @pressure_pa: absolute, >= 0
 *
 * Source: ideal gas, rho = p / (R T), dry air. Returns: kg/m3; NAN outside of that range
 */
double hut_air_density_kg_m3 (double temperature_k, double pressure_pa);

/**
 * hut_air_viscosity_pa_s:
 * @temperature_k: 100 .. 1000
 *
 * Source: Sutherland's law, mu = 1.458e-6 T^1.5 / (T + 110.4), US Standard Atmosphere 1976, eq. 51.
 *
 * Returns: dynamic viscosity, Pa s; NAN for a temperature that is not > 0
 */
double hut_air_viscosity_pa_s (double temperature_k);

/**
 * hut_atmosphere_at:
 * @altitude_m: geometric height over sea level, -1000 .. 11000 m
 *
 * Source: US Standard Atmosphere 1976: T = 288.15 - 0.0065 H, p = 101325 (T / 288.15)^5.25588, with
 * the geopotential height H = 6356766 Z / (6356766 + Z). Returns: NAN in both members outside of
 * the range
 */
HutAtmosphere hut_atmosphere_at (double altitude_m);

/* Air of a room, from its temperature (deg C) and the height of the place over sea level, m. */
HutAir hut_air_in_room (double temperature_c, double altitude_m);

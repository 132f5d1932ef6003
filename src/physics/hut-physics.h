/* src/physics/hut-physics.h: constants of nature, and the rules of this layer.
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Everything here is in SI units: metres, kilograms, seconds, pascals, watts, kelvins; angles in
 * radians. Wavelengths are in nanometres, as on every label of a laser. Results are estimates for
 * planning.
 *
 * A function that gets what it does not cover (a negative length, a wavelength without a limit)
 * gives NAN, never a number that looks right; each says where that begins. */
#pragma once
#include <glib.h>
#include <math.h>

/* Standard gravity, m/s2. Source: 3rd CGPM, 1901; exact. */
#define HUT_GRAVITY_M_S2 9.80665
/* Gas constant of dry air, J/(kg K). Source: US Standard Atmosphere 1976. */
#define HUT_AIR_GAS_CONSTANT 287.05287
/* Heat capacity of dry air at constant pressure, J/(kg K): common practice for 0 .. 60 C. */
#define HUT_AIR_HEAT_CAPACITY 1005.0
/* Pressure at sea level, Pa. Source: US Standard Atmosphere 1976. */
#define HUT_SEA_LEVEL_PA 101325.0
/* 0 degrees Celsius, K; exact. */
#define HUT_ZERO_CELSIUS_K 273.15

typedef enum
{
  HUT_PHYSICS_ERROR_CURVE, /* points that make no fan curve */
} HutPhysicsError;

#define HUT_PHYSICS_ERROR (hut_physics_error_quark ())
GQuark hut_physics_error_quark (void);

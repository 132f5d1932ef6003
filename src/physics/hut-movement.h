/* src/physics/hut-movement.h: how sheet moves with warmth and damp.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "physics/hut-physics.h"

/* Thermal expansion, 1/K. Source: property pages of sheet makers. */
#define HUT_EXPANDS_ACRYLIC_RATIO 7.2e-5
#define HUT_EXPANDS_POLYCARBONATE_RATIO 7e-5
#define HUT_EXPANDS_PLYWOOD_RATIO 4.5e-6
/* Plywood in its plane, for the whole way from 0 to 1 of relative humidity. Source: APA, 0.0002 for
 * a tenth. */
#define HUT_SWELLS_PLYWOOD_RATIO 0.002

/* How much a length (m) of one stuff grows more than that of another one over a difference in
 * temperature, K. */
double hut_growth_difference_m (double length_m, double a_ratio, double b_ratio, double warmer_k);
/* How much a length (m) of plywood grows for a rise in relative humidity, 0 .. 1. */
double hut_plywood_swelling_m (double length_m, double damper_ratio);

/**
 * hut_wood_moisture_ratio:
 * @temperature_c: 0 .. 100 deg C
 * @humidity_ratio: relative, 0 .. 1
 *
 * Moisture of wood that has long been in such air. Source: Hailwood and Horrobin as used by the US
 * Forest Products Laboratory, W. Simpson, FPL-RN-0268, 1998 (coefficients from memory, in degrees
 * F). Returns: a share of dry mass; NAN outside of the ranges
 */
double hut_wood_moisture_ratio (double temperature_c, double humidity_ratio);

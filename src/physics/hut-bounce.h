/* src/physics/hut-bounce.h: what is left of light that has met walls.
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Reflectances hold for one wavelength: many black paints are bright in the near infrared. */
#pragma once
#include "physics/hut-physics.h"

/* Diffuse reflectance at 445 nm, from memory, no source at hand: matt black paint 0.03 .. 0.06, raw
 * birch plywood 0.4 .. 0.6, white paint 0.8 .. 0.9; the upper ends. */
#define HUT_REFLECTS_BLACK_RATIO 0.06
#define HUT_REFLECTS_PLYWOOD_RATIO 0.6
#define HUT_REFLECTS_WHITE_RATIO 0.9

/* Share of light (a ratio) after a number of diffuse bounces, rho^n: an upper bound, without
 * spreading. */
double hut_bounces_left_ratio (double reflectance_ratio, guint bounces_count);
/* The same as an optical density, a ratio: -n log10 rho; INFINITY off what reflects nothing. */
double hut_bounces_density_ratio (double reflectance_ratio, guint bounces_count);

/**
 * hut_cavity_ratio:
 * @open_ratio: share of the inner area that is open, 0 .. 1
 *
 * How many times brighter the walls of a box are than light spread over them once. Source:
 * integrating sphere, M = rho / (1 - rho (1 - f)): sum of all bounces.
 *
 * Returns: a ratio; INFINITY for a closed box that reflects everything
 */
double hut_cavity_ratio (double reflectance_ratio, double open_ratio);
/* Background irradiance (W/m2) on the walls: P / A M; @area_m2 > 0. */
double hut_cavity_irradiance_w_m2 (double power_w,
                                   double area_m2,
                                   double reflectance_ratio,
                                   double open_ratio);

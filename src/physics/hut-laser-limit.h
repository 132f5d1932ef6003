/* src/physics/hut-laser-limit.h: exposure limits of the eye to laser light.
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Source: ICNIRP, Health Physics 105 (3) 2013, tables 2 .. 5, and EU Directive 2006/25/EC, annex
 * II: transcribed, confirm against your copy. Continuous light and a small source (up to 1.5 mrad).
 * A number from here says nothing about fire, fumes or the skin, and nothing below a limit is
 * thereby declared harmless. */
#pragma once
#include "physics/hut-physics.h"

/* Time bases, s. A quarter of a second relies on the eye turning away: visible light only. */
#define HUT_TIME_GLANCE_S 0.25
#define HUT_TIME_ACCIDENT_S 100.0 /* AS/NZS IEC 60825.14:2011, clause 5.1 */
#define HUT_TIME_WATCHING_S 3e4   /* looking on for a working day */

/* The pupil, over which light up to 1400 nm is collected, m: ICNIRP 2013. */
#define HUT_PUPIL_M 7e-3

/**
 * hut_laser_limit_w_m2:
 * @wavelength_nm: 400 .. 1400, or 2600 .. 1e6
 * @time_s: 1e-3 .. 3e4
 *
 * Returns: irradiance at the eye, W/m2, averaged over the limiting aperture; NAN where this has no
 *   limit to give: ask the standard
 */
double hut_laser_limit_w_m2 (double wavelength_nm, double time_s);

/* TRUE for 400 .. 700 nm. */
gboolean hut_wavelength_is_visible (double wavelength_nm);

/* Factors of the tables. C_A and C_B (ratios) by wavelength; T1 (s) at 450 .. 500 nm; C_E (ratio)
 * and T2 (s) by the angle that the source subtends, rad. */
double hut_laser_ca_ratio (double wavelength_nm);
double hut_laser_cb_ratio (double wavelength_nm);
double hut_laser_t1_s (double wavelength_nm);
double hut_laser_ce_ratio (double subtense_rad);
double hut_laser_t2_s (double subtense_rad);

/* Power (W) through the pupil at an irradiance, W/m2. */
double hut_pupil_power_w (double irradiance_w_m2);

/* src/physics/hut-laser-light.h: how bright laser light is where an eye may be, and what a filter must do.
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * An optical density from here is the least to ask the supplier's certificate for, at the exact
 * wavelength. Coloured sheet is no laser filter until its maker certifies it. Nothing here declares
 * anything harmless. */
#pragma once
#include "physics/hut-laser-limit.h"

/**
 * hut_diffuse_irradiance_w_m2:
 * @power_w: of the beam
 * @reflectance_ratio: of what it meets, 0 .. 1
 * @angle_rad: of the eye from the surface's normal, 0 .. pi / 2
 * @distance_m: from the spot, > 0, much larger than it
 *
 * Source: Lambert, E = rho P cos / (pi r2). Bare metal, foil and gloss reflect like mirrors: then
 * this does not apply. Returns: W/m2; NAN outside of the ranges
 */
double hut_diffuse_irradiance_w_m2 (double power_w,
                                    double reflectance_ratio,
                                    double angle_rad,
                                    double distance_m);
/* Distance (m) at which that irradiance falls to a limit > 0: sqrt (rho P cos / (pi E)). */
double hut_diffuse_distance_m (double power_w,
                               double reflectance_ratio,
                               double angle_rad,
                               double limit_w_m2);

/* Irradiance (W/m2) of a beam at the eye: all of its power through the pupil when it is narrower
 * than that. @diameter_m >= 0 */
double hut_beam_irradiance_w_m2 (double power_w, double diameter_m);

/**
 * hut_beam_distance_m:
 * @diameter_m: of the beam where it leaves, at 1/e of the middle
 * @divergence_rad: full angle, at 1/e, > 0
 * @limit_w_m2: > 0
 *
 * Nominal ocular hazard distance of the bare beam. Source: IEC 60825-1 and ANSI Z136.1: (sqrt (4 P
 * / (pi E)) - a) / phi. Values at 1/e2 have to be divided by sqrt 2. Returns: m, not under 0; NAN
 * outside of the ranges
 */
double hut_beam_distance_m (double power_w,
                            double diameter_m,
                            double divergence_rad,
                            double limit_w_m2);

/* log10 (E / limit), a ratio, never under 0; densities of filters one behind the other add. */
double hut_optical_density_ratio (double irradiance_w_m2, double limit_w_m2);
/* Share of the light (a ratio) that a density lets through. */
double hut_transmission_ratio (double density_ratio);

/**
 * hut_window_density_ratio:
 * @irradiance_w_m2: in front of the window
 * @wavelength_nm: of the laser; there is no default
 * @time_s: time base; there is no default. Under 10 s only for visible light, which the eye turns
 *   away from
 *
 * Returns: the least optical density to ask for, a ratio; NAN without a limit for wavelength and
 *   time
 */
double hut_window_density_ratio (double irradiance_w_m2, double wavelength_nm, double time_s);

/* EN 207, continuous (D): the irradiance (W/m2) up to which a filter of that number holds, and the
 * number that an irradiance asks for. Source: open copies of the EN 207 table. @wavelength_nm: 180
 * .. 1e6, else NAN, -1. */
double hut_en207_irradiance_w_m2 (double wavelength_nm, guint number);
int hut_en207_number (double wavelength_nm, double irradiance_w_m2);
/* EN 208 (adjusting, 400 .. 700 nm, lets some light through on purpose: not for a window): the
 * number for an irradiance, W/m2; -1 outside. */
int hut_en208_number (double wavelength_nm, double irradiance_w_m2);

/* src/physics/hut-laser-limit.c: exposure limits of the eye to laser light.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-physics"
#include "config.h"
#include "physics/hut-laser-limit.h"

#define VISIBLE_FROM_NM 400.0
#define VISIBLE_TO_NM 700.0
#define BLUE_TO_NM 600.0
#define NEAR_NM 1050.0
#define RETINA_TO_NM 1400.0
#define FAR_FROM_NM 2600.0
#define FAR_TO_NM 1e6
#define SHORTEST_S 1e-3 /* own choice: pulses have limits of their own */
#define LONG_S 10.0     /* where the tables change */
#define BLUE_LONG_S 100.0
#define SMALLEST_RAD 1.5e-3
#define LARGEST_RAD 100e-3

gboolean
hut_wavelength_is_visible (double wavelength_nm)
{
  return wavelength_nm >= VISIBLE_FROM_NM && wavelength_nm <= VISIBLE_TO_NM;
}

double
hut_laser_ca_ratio (double wavelength_nm)
{
  if (!(wavelength_nm >= VISIBLE_FROM_NM && wavelength_nm <= RETINA_TO_NM))
    return NAN;
  if (wavelength_nm <= VISIBLE_TO_NM)
    return 1;
  return wavelength_nm < NEAR_NM ? pow (10, 0.002 * (wavelength_nm - VISIBLE_TO_NM)) : 5;
}

double
hut_laser_cb_ratio (double wavelength_nm)
{
  if (!(wavelength_nm >= VISIBLE_FROM_NM && wavelength_nm <= BLUE_TO_NM))
    return NAN;
  return pow (10, 0.02 * MAX (wavelength_nm - 450, 0));
}

double
hut_laser_t1_s (double wavelength_nm)
{
  if (!(wavelength_nm >= 450 && wavelength_nm <= 500))
    return NAN;
  return 10 * pow (10, 0.02 * (wavelength_nm - 450));
}

double
hut_laser_ce_ratio (double subtense_rad)
{
  if (!(subtense_rad >= 0))
    return NAN;
  return CLAMP (subtense_rad, SMALLEST_RAD, LARGEST_RAD) / SMALLEST_RAD;
}

double
hut_laser_t2_s (double subtense_rad)
{
  if (!(subtense_rad >= 0))
    return NAN;
  return 10
         * pow (10, (CLAMP (subtense_rad, SMALLEST_RAD, LARGEST_RAD) - SMALLEST_RAD)
                        / (LARGEST_RAD - SMALLEST_RAD));
}

/* C_C. From 1200 nm on the two sources differ; this is the lower one. */
static double
cc_ratio (double wavelength_nm)
{
  if (wavelength_nm <= 1150)
    return 1;
  return wavelength_nm <= 1200 ? pow (10, 0.018 * (wavelength_nm - 1150)) : 8;
}

/* Heat on the retina. */
static double
thermal_w_m2 (double wavelength_nm,
              double time_s)
{
  const double shrinking_ratio = pow (time_s, -0.25);

  if (wavelength_nm <= NEAR_NM)
    return hut_laser_ca_ratio (wavelength_nm) * (time_s < LONG_S ? 18 * shrinking_ratio : 10);
  return cc_ratio (wavelength_nm)
         * (time_s < LONG_S ? 90 * shrinking_ratio : 10 * hut_laser_ca_ratio (wavelength_nm));
}

/* What blue light does to the retina in the long run. */
static double
photochemical_w_m2 (double wavelength_nm,
                    double time_s)
{
  if (!(wavelength_nm <= BLUE_TO_NM) || time_s < LONG_S)
    return INFINITY;
  return hut_laser_cb_ratio (wavelength_nm) * BLUE_LONG_S / MIN (time_s, BLUE_LONG_S);
}

double
hut_laser_limit_w_m2 (double wavelength_nm,
                      double time_s)
{
  if (!(time_s >= SHORTEST_S && time_s <= HUT_TIME_WATCHING_S))
    return NAN;
  if (wavelength_nm >= VISIBLE_FROM_NM && wavelength_nm <= RETINA_TO_NM)
    return fmin (thermal_w_m2 (wavelength_nm, time_s), photochemical_w_m2 (wavelength_nm, time_s));
  if (wavelength_nm >= FAR_FROM_NM && wavelength_nm <= FAR_TO_NM)
    return time_s < LONG_S ? 5600 * pow (time_s, -0.75) : 1000;
  return NAN;
}

double
hut_pupil_power_w (double irradiance_w_m2)
{
  return irradiance_w_m2 * 0.25 * G_PI * HUT_PUPIL_M * HUT_PUPIL_M;
}

/* src/physics/hut-laser-light.c: how bright laser light is, and what a filter must do.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-physics"
#include "config.h"
#include "physics/hut-laser-light.h"

/* Time bases under this are for light that the eye turns away from, s. */
#define LONG_S 10.0
/* A rounding of log10 under this is no further step of a standard's number, ratio; own choice. */
#define STEP_RATIO 1e-9

static gboolean
is_diffuse (double power_w,
            double reflectance_ratio,
            double angle_rad)
{
  return power_w >= 0 && reflectance_ratio >= 0 && reflectance_ratio <= 1 && angle_rad >= 0
         && angle_rad <= G_PI_2;
}

double
hut_diffuse_irradiance_w_m2 (double power_w,
                             double reflectance_ratio,
                             double angle_rad,
                             double distance_m)
{
  if (!is_diffuse (power_w, reflectance_ratio, angle_rad) || !(distance_m > 0))
    return NAN;
  return reflectance_ratio * power_w * cos (angle_rad) / (G_PI * distance_m * distance_m);
}

double
hut_diffuse_distance_m (double power_w,
                        double reflectance_ratio,
                        double angle_rad,
                        double limit_w_m2)
{
  if (!is_diffuse (power_w, reflectance_ratio, angle_rad) || !(limit_w_m2 > 0))
    return NAN;
  return sqrt (reflectance_ratio * power_w * cos (angle_rad) / (G_PI * limit_w_m2));
}

double
hut_beam_irradiance_w_m2 (double power_w,
                          double diameter_m)
{
  const double wide_m = MAX (diameter_m, HUT_PUPIL_M);

  if (!(power_w >= 0) || !(diameter_m >= 0))
    return NAN;
  return power_w / (0.25 * G_PI * wide_m * wide_m);
}

double
hut_beam_distance_m (double power_w,
                     double diameter_m,
                     double divergence_rad,
                     double limit_w_m2)
{
  if (!(power_w >= 0) || !(diameter_m >= 0) || !(divergence_rad > 0) || !(limit_w_m2 > 0))
    return NAN;
  return MAX (sqrt (4 * power_w / (G_PI * limit_w_m2)) - diameter_m, 0) / divergence_rad;
}

double
hut_optical_density_ratio (double irradiance_w_m2,
                           double limit_w_m2)
{
  if (!(irradiance_w_m2 >= 0) || !(limit_w_m2 > 0))
    return NAN;
  return irradiance_w_m2 > limit_w_m2 ? log10 (irradiance_w_m2 / limit_w_m2) : 0;
}

double
hut_transmission_ratio (double density_ratio)
{
  return density_ratio >= 0 ? pow (10, -density_ratio) : NAN;
}

double
hut_window_density_ratio (double irradiance_w_m2,
                          double wavelength_nm,
                          double time_s)
{
  if (time_s < LONG_S && !hut_wavelength_is_visible (wavelength_nm))
    return NAN;
  return hut_optical_density_ratio (irradiance_w_m2, hut_laser_limit_w_m2 (wavelength_nm, time_s));
}

/* EN 207, D: the power of ten by which the row of a wavelength differs from its number. */
static gboolean
find_shift (double wavelength_nm,
            int *shift)
{
  if (!(wavelength_nm >= 180 && wavelength_nm <= 1e6))
    return FALSE;
  *shift = wavelength_nm <= 315 ? -3 : wavelength_nm <= 1400 ? 1 : 3;
  return TRUE;
}

/* Smallest number n >= 1 with E <= 10^(n + shift). */
static int
number_for (double irradiance_w_m2,
            int shift)
{
  if (!(irradiance_w_m2 > 0) || !isfinite (irradiance_w_m2))
    return irradiance_w_m2 == 0 ? 1 : -1;
  return MAX ((int)ceil (log10 (irradiance_w_m2) - shift - STEP_RATIO), 1);
}

double
hut_en207_irradiance_w_m2 (double wavelength_nm,
                           guint number)
{
  int shift;

  return find_shift (wavelength_nm, &shift) ? pow (10, (int)number + shift) : NAN;
}

int
hut_en207_number (double wavelength_nm,
                  double irradiance_w_m2)
{
  int shift;

  return find_shift (wavelength_nm, &shift) ? number_for (irradiance_w_m2, shift) : -1;
}

int
hut_en208_number (double wavelength_nm,
                  double irradiance_w_m2)
{
  return hut_wavelength_is_visible (wavelength_nm) ? number_for (irradiance_w_m2, 3) : -1;
}

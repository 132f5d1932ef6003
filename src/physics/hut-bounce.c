/* src/physics/hut-bounce.c: what is left of light that has met walls.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-physics"
#include "config.h"
#include "physics/hut-bounce.h"

static gboolean
is_ratio (double value_ratio)
{
  return value_ratio >= 0 && value_ratio <= 1;
}

double
hut_bounces_left_ratio (double reflectance_ratio,
                        guint bounces_count)
{
  return is_ratio (reflectance_ratio) ? pow (reflectance_ratio, bounces_count) : NAN;
}

double
hut_bounces_density_ratio (double reflectance_ratio,
                           guint bounces_count)
{
  if (!is_ratio (reflectance_ratio))
    return NAN;
  return bounces_count == 0 ? 0 : -(double)bounces_count * log10 (reflectance_ratio);
}

double
hut_cavity_ratio (double reflectance_ratio,
                  double open_ratio)
{
  if (!is_ratio (reflectance_ratio) || !is_ratio (open_ratio))
    return NAN;
  return reflectance_ratio / (1 - reflectance_ratio * (1 - open_ratio));
}

double
hut_cavity_irradiance_w_m2 (double power_w,
                            double area_m2,
                            double reflectance_ratio,
                            double open_ratio)
{
  if (!(power_w >= 0) || !(area_m2 > 0))
    return NAN;
  return power_w / area_m2 * hut_cavity_ratio (reflectance_ratio, open_ratio);
}

/* src/physics/hut-movement.c: how sheet moves with warmth and damp.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-physics"
#include "config.h"
#include "physics/hut-movement.h"

double
hut_growth_difference_m (double length_m,
                         double a_ratio,
                         double b_ratio,
                         double warmer_k)
{
  return length_m * (a_ratio - b_ratio) * warmer_k;
}

double
hut_plywood_swelling_m (double length_m,
                        double damper_ratio)
{
  return length_m * HUT_SWELLS_PLYWOOD_RATIO * damper_ratio;
}

double
hut_wood_moisture_ratio (double temperature_c,
                         double humidity_ratio)
{
  if (!(temperature_c >= 0 && temperature_c <= 100)
      || !(humidity_ratio >= 0 && humidity_ratio <= 1))
    return NAN;

  const double f = temperature_c * 9 / 5 + 32, f2 = f * f;
  const double w = 330 + 0.452 * f + 0.00415 * f2;
  const double k = 0.791 + 4.63e-4 * f - 8.44e-7 * f2;
  const double k1 = 6.34 + 7.75e-4 * f - 9.35e-5 * f2;
  const double k2 = 1.09 + 2.84e-2 * f - 9.04e-5 * f2;
  const double x = k * humidity_ratio;

  return 18 / w * (x / (1 - x) + (k1 * x + 2 * k1 * k2 * x * x) / (1 + k1 * x + k1 * k2 * x * x));
}

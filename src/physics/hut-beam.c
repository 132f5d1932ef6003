/* src/physics/hut-beam.c: how far a strip of sheet sags.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-physics"
#include "config.h"
#include "physics/hut-beam.h"

#define STEPS_COUNT 1000

/* Sag = load L^n / (divisor E I) * factor. */
static const struct
{
  double even_ratio, point_ratio;
} factors[] = {
  [HUT_BEAM_SUPPORTED] = { 5.0 / 384, 1.0 / 48 },
  [HUT_BEAM_FIXED] = { 1.0 / 384, 1.0 / 192 },
  [HUT_BEAM_CANTILEVER] = { 1.0 / 8, 1.0 / 3 },
};

static gboolean
is_beam (HutBeamEnds ends,
         double span_m,
         double bending_n_m2)
{
  return (guint)ends < G_N_ELEMENTS (factors) && span_m >= 0 && bending_n_m2 > 0;
}

double
hut_strip_bending_n_m2 (double modulus_pa,
                        double width_m,
                        double thickness_m)
{
  return modulus_pa * width_m * thickness_m * thickness_m * thickness_m / 12;
}

double
hut_beam_even_sag_m (HutBeamEnds ends,
                     double span_m,
                     double load_n_m,
                     double bending_n_m2)
{
  if (!is_beam (ends, span_m, bending_n_m2))
    return NAN;
  return factors[ends].even_ratio * load_n_m * span_m * span_m * span_m * span_m / bending_n_m2;
}

double
hut_beam_point_sag_m (HutBeamEnds ends,
                      double span_m,
                      double load_n,
                      double bending_n_m2)
{
  if (!is_beam (ends, span_m, bending_n_m2))
    return NAN;
  return factors[ends].point_ratio * load_n * span_m * span_m * span_m / bending_n_m2;
}

double
hut_strap_stiffness_nm (double modulus_pa,
                        double width_m,
                        double thickness_m,
                        double stretch_m)
{
  if (!(modulus_pa > 0) || !(width_m > 0) || !(thickness_m > 0) || !(stretch_m > 0))
    return NAN;
  return hut_strip_bending_n_m2 (modulus_pa, width_m, thickness_m) / stretch_m;
}

static double
kinked_sag_m (double x_m,
              double span_m,
              double load_n_m,
              const HutSpliceHinge *splices,
              guint n)
{
  double sum_m = 0;

  for (guint i = 0; i < n; i++)
    {
      const double at_m = splices[i].at_m, rest_m = span_m - at_m;
      const double kink_rad = 0.5 * load_n_m * at_m * rest_m / splices[i].stiffness_nm;

      sum_m += kink_rad / span_m * (x_m <= at_m ? x_m * rest_m : at_m * (span_m - x_m));
    }
  return sum_m;
}

double
hut_beam_spliced_sag_m (double span_m,
                        double load_n_m,
                        double bending_n_m2,
                        const HutSpliceHinge *splices,
                        guint n)
{
  g_return_val_if_fail (splices != NULL || n == 0, NAN);

  double most_m = 0;

  if (!is_beam (HUT_BEAM_SUPPORTED, span_m, bending_n_m2) || span_m == 0)
    return NAN;
  for (guint i = 0; i < n; i++)
    if (!(splices[i].stiffness_nm > 0) || !(splices[i].at_m >= 0 && splices[i].at_m <= span_m))
      return NAN;
  for (guint i = 0; i <= STEPS_COUNT; i++)
    {
      const double x_m = span_m * i / STEPS_COUNT;
      const double own_m = load_n_m * x_m
                           * (span_m * span_m * span_m - 2 * span_m * x_m * x_m + x_m * x_m * x_m)
                           / (24 * bending_n_m2);

      most_m = MAX (most_m, own_m + kinked_sag_m (x_m, span_m, load_n_m, splices, n));
    }
  return most_m;
}

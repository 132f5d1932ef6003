/* src/physics/hut-friction.c: friction of air in a straight duct.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-physics"
#include "config.h"
#include "physics/hut-friction.h"

/* Colebrook's equation is solved by Newton's method in x = 1 / sqrt f, which gains digits so fast
 * from Haaland's start that this many steps are far more than enough. Own choice. */
#define NEWTON_STEPS 20
#define NEWTON_END_RATIO 1e-14

static gboolean
is_covered (double reynolds_ratio,
            double roughness_ratio)
{
  return reynolds_ratio > 0 && isfinite (reynolds_ratio) && roughness_ratio >= 0
         && isfinite (roughness_ratio);
}

double
hut_velocity_pressure_pa (double velocity_m_s,
                          double density_kg_m3)
{
  return 0.5 * density_kg_m3 * velocity_m_s * velocity_m_s;
}

double
hut_velocity_for_m_s (double pressure_pa,
                      double density_kg_m3)
{
  if (!(pressure_pa >= 0) || !(density_kg_m3 > 0))
    return NAN;
  return sqrt (2 * pressure_pa / density_kg_m3);
}

double
hut_friction_laminar_ratio (double reynolds_ratio)
{
  return is_covered (reynolds_ratio, 0) ? 64.0 / reynolds_ratio : NAN;
}

double
hut_friction_blasius_ratio (double reynolds_ratio)
{
  return is_covered (reynolds_ratio, 0) ? 0.3164 * pow (reynolds_ratio, -0.25) : NAN;
}

double
hut_friction_swamee_jain_ratio (double reynolds_ratio,
                                double roughness_ratio)
{
  if (!is_covered (reynolds_ratio, roughness_ratio))
    return NAN;

  const double log_ratio = log10 (roughness_ratio / 3.7 + 5.74 / pow (reynolds_ratio, 0.9));

  return 0.25 / (log_ratio * log_ratio);
}

double
hut_friction_haaland_ratio (double reynolds_ratio,
                            double roughness_ratio)
{
  if (!is_covered (reynolds_ratio, roughness_ratio))
    return NAN;

  const double x = -1.8 * log10 (pow (roughness_ratio / 3.7, 1.11) + 6.9 / reynolds_ratio);

  return 1 / (x * x);
}

double
hut_friction_colebrook_ratio (double reynolds_ratio,
                              double roughness_ratio)
{
  if (!is_covered (reynolds_ratio, roughness_ratio))
    return NAN;

  const double rough = roughness_ratio / 3.7, smooth = 2.51 / reynolds_ratio;
  double x = 1 / sqrt (hut_friction_haaland_ratio (reynolds_ratio, roughness_ratio));

  for (guint i = 0; i < NEWTON_STEPS; i++)
    {
      const double argument = rough + smooth * x;
      const double step = (x + 2 * log10 (argument)) / (1 + 2 * smooth / (M_LN10 * argument));

      x -= step;
      if (fabs (step) <= NEWTON_END_RATIO * x)
        break;
    }
  return 1 / (x * x);
}

double
hut_friction_ratio (double reynolds_ratio,
                    double roughness_ratio)
{
  if (!is_covered (reynolds_ratio, roughness_ratio))
    return NAN;
  if (reynolds_ratio <= HUT_LAMINAR_RATIO)
    return hut_friction_laminar_ratio (reynolds_ratio);
  if (reynolds_ratio >= HUT_TURBULENT_RATIO)
    return hut_friction_colebrook_ratio (reynolds_ratio, roughness_ratio);

  const double share_ratio
      = (reynolds_ratio - HUT_LAMINAR_RATIO) / (HUT_TURBULENT_RATIO - HUT_LAMINAR_RATIO);

  return (1 - share_ratio) * hut_friction_laminar_ratio (HUT_LAMINAR_RATIO)
         + share_ratio * hut_friction_colebrook_ratio (HUT_TURBULENT_RATIO, roughness_ratio);
}

double
hut_duct_velocity_m_s (double flow_m3_s,
                       double diameter_m)
{
  if (!(diameter_m > 0))
    return NAN;
  return flow_m3_s / (0.25 * G_PI * diameter_m * diameter_m);
}

double
hut_duct_reynolds_ratio (double flow_m3_s,
                         double diameter_m,
                         const HutAir *air)
{
  g_return_val_if_fail (air != NULL, NAN);

  return air->density_kg_m3 * hut_duct_velocity_m_s (flow_m3_s, diameter_m) * diameter_m
         / air->viscosity_pa_s;
}

double
hut_duct_friction_pa (double flow_m3_s,
                      double diameter_m,
                      double length_m,
                      double roughness_m,
                      const HutAir *air)
{
  g_return_val_if_fail (air != NULL, NAN);

  if (!(flow_m3_s >= 0) || !(diameter_m > 0) || !(length_m >= 0) || !(roughness_m >= 0))
    return NAN;
  if (flow_m3_s == 0 || length_m == 0)
    return 0;

  const double velocity_m_s = hut_duct_velocity_m_s (flow_m3_s, diameter_m);
  const double friction_ratio = hut_friction_ratio (
      hut_duct_reynolds_ratio (flow_m3_s, diameter_m, air), roughness_m / diameter_m);

  return friction_ratio * length_m / diameter_m
         * hut_velocity_pressure_pa (velocity_m_s, air->density_kg_m3);
}

double
hut_hydraulic_diameter_m (double width_m,
                          double height_m)
{
  if (!(width_m > 0) || !(height_m > 0))
    return NAN;
  return 2 * width_m * height_m / (width_m + height_m);
}

/* src/physics/hut-fan.c: what pressure a fan makes at a flow.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-physics"
#include "config.h"
#include "physics/hut-fan.h"
#include <gsl/gsl_interp.h>

/* Halvings of a bracket: 2^-60 of a flow or pressure is under any digit that counts. Own choice. */
#define HALVINGS 60

struct _HutFanCurve
{
  double *flows_m3_s, *pressures_pa; /* (array length=n) */
  guint n;
  double rated_kg_m3;
  double peak_pa;
  gboolean falls;
  gsl_interp *interpolation;
};

static gboolean
check_points (const HutPressurePoint *points,
              guint n,
              double rated_kg_m3,
              GError **error)
{
  gboolean good = n >= 2 && rated_kg_m3 > 0 && isfinite (rated_kg_m3);

  for (guint i = 0; good && i < n; i++)
    good = isfinite (points[i].flow_m3_s) && isfinite (points[i].pressure_pa)
           && points[i].flow_m3_s >= 0 && points[i].pressure_pa >= 0
           && (i == 0 || points[i].flow_m3_s > points[i - 1].flow_m3_s);
  if (!good)
    g_set_error_literal (error, HUT_PHYSICS_ERROR, HUT_PHYSICS_ERROR_CURVE,
                         "the points make no fan curve; allowed are two or more, flows rising, "
                         "nothing negative");
  return good;
}

HutFanCurve *
hut_fan_curve_new (const HutPressurePoint *points,
                   guint n,
                   HutFanShape shape,
                   double rated_kg_m3,
                   GError **error)
{
  g_return_val_if_fail (points != NULL || n == 0, NULL);

  if (!check_points (points, n, rated_kg_m3, error))
    return NULL;

  HutFanCurve *self = g_new0 (HutFanCurve, 1);
  const gboolean smooth
      = shape == HUT_FAN_SMOOTH && n >= gsl_interp_type_min_size (gsl_interp_steffen);

  self->n = n;
  self->rated_kg_m3 = rated_kg_m3;
  self->falls = TRUE;
  self->flows_m3_s = g_new (double, n);
  self->pressures_pa = g_new (double, n);
  for (guint i = 0; i < n; i++)
    {
      self->flows_m3_s[i] = points[i].flow_m3_s;
      self->pressures_pa[i] = points[i].pressure_pa;
      self->peak_pa = MAX (self->peak_pa, points[i].pressure_pa);
      if (i > 0 && points[i].pressure_pa > points[i - 1].pressure_pa)
        self->falls = FALSE;
    }
  self->interpolation = gsl_interp_alloc (smooth ? gsl_interp_steffen : gsl_interp_linear, n);
  gsl_interp_init (self->interpolation, self->flows_m3_s, self->pressures_pa, n);
  return self;
}

void
hut_fan_curve_free (HutFanCurve *self)
{
  if (self == NULL)
    return;
  g_clear_pointer (&self->interpolation, gsl_interp_free);
  g_clear_pointer (&self->flows_m3_s, g_free);
  g_clear_pointer (&self->pressures_pa, g_free);
  g_free (self);
}

double
hut_fan_curve_free_m3_s (const HutFanCurve *self)
{
  g_return_val_if_fail (self != NULL, NAN);

  return self->flows_m3_s[self->n - 1];
}

double
hut_fan_curve_peak_pa (const HutFanCurve *self)
{
  g_return_val_if_fail (self != NULL, NAN);

  return self->peak_pa;
}

gboolean
hut_fan_curve_falls (const HutFanCurve *self)
{
  g_return_val_if_fail (self != NULL, FALSE);

  return self->falls;
}

/* In rated air, within the points. */
static double
rated_pressure_pa (const HutFanCurve *self,
                   double flow_m3_s)
{
  if (flow_m3_s <= self->flows_m3_s[0])
    return self->pressures_pa[0];
  return gsl_interp_eval (self->interpolation, self->flows_m3_s, self->pressures_pa, flow_m3_s,
                          NULL);
}

double
hut_fan_curve_pressure_pa (const HutFanCurve *self,
                           double flow_m3_s,
                           double density_kg_m3)
{
  g_return_val_if_fail (self != NULL, NAN);

  if (!(flow_m3_s >= 0 && flow_m3_s <= hut_fan_curve_free_m3_s (self)) || !(density_kg_m3 > 0))
    return NAN;
  return rated_pressure_pa (self, flow_m3_s) * density_kg_m3 / self->rated_kg_m3;
}

/* Largest flow of one stretch with that pressure; the pressure at its left end is high enough.
 * Between two points the curve never turns. */
static double
stretch_flow_m3_s (const HutFanCurve *self,
                   guint left,
                   double pressure_pa)
{
  double low_m3_s = self->flows_m3_s[left], high_m3_s = self->flows_m3_s[left + 1];

  for (guint i = 0; i < HALVINGS; i++)
    {
      const double middle_m3_s = 0.5 * (low_m3_s + high_m3_s);

      if (rated_pressure_pa (self, middle_m3_s) >= pressure_pa)
        low_m3_s = middle_m3_s;
      else
        high_m3_s = middle_m3_s;
    }
  return low_m3_s;
}

double
hut_fan_curve_flow_m3_s (const HutFanCurve *self,
                         double pressure_pa,
                         double density_kg_m3)
{
  g_return_val_if_fail (self != NULL, NAN);

  if (!(pressure_pa >= 0) || !(density_kg_m3 > 0))
    return NAN;

  const double wanted_pa = pressure_pa * self->rated_kg_m3 / density_kg_m3;

  if (self->pressures_pa[self->n - 1] >= wanted_pa)
    return hut_fan_curve_free_m3_s (self);
  for (guint i = self->n - 1; i-- > 0;)
    if (self->pressures_pa[i] >= wanted_pa)
      return stretch_flow_m3_s (self, i, wanted_pa);
  return 0;
}

double
hut_fans_free_m3_s (const HutFanCurve *const *fans,
                    guint n)
{
  double sum_m3_s = 0;

  for (guint i = 0; i < n; i++)
    sum_m3_s += hut_fan_curve_free_m3_s (fans[i]);
  return sum_m3_s;
}

static double
flow_at_m3_s (const HutFanCurve *const *fans,
              guint n,
              double pressure_pa,
              double density_kg_m3)
{
  double sum_m3_s = 0;

  for (guint i = 0; i < n; i++)
    sum_m3_s += hut_fan_curve_flow_m3_s (fans[i], pressure_pa, density_kg_m3);
  return sum_m3_s;
}

double
hut_fans_pressure_pa (const HutFanCurve *const *fans,
                      guint n,
                      double flow_m3_s,
                      double density_kg_m3)
{
  g_return_val_if_fail (fans != NULL || n == 0, NAN);

  gboolean same = TRUE;
  double low_pa = 0, high_pa = 0;

  if (n == 0 || !(flow_m3_s >= 0 && flow_m3_s <= hut_fans_free_m3_s (fans, n))
      || !(density_kg_m3 > 0))
    return NAN;
  for (guint i = 0; i < n; i++)
    {
      same = same && fans[i] == fans[0];
      high_pa = MAX (high_pa, fans[i]->peak_pa * density_kg_m3 / fans[i]->rated_kg_m3);
    }
  if (same)
    return hut_fan_curve_pressure_pa (fans[0], flow_m3_s / n, density_kg_m3);
  for (guint i = 0; i < HALVINGS; i++)
    {
      const double middle_pa = 0.5 * (low_pa + high_pa);

      if (flow_at_m3_s (fans, n, middle_pa, density_kg_m3) >= flow_m3_s)
        low_pa = middle_pa;
      else
        high_pa = middle_pa;
    }
  return low_pa;
}

double
hut_air_power_w (double flow_m3_s,
                 double pressure_pa)
{
  return flow_m3_s * pressure_pa;
}

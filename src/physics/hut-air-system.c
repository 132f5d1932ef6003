/* src/physics/hut-air-system.c: what it takes to draw air through an enclosure and its duct.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-physics"
#include "config.h"
#include "physics/hut-air-system.h"
#include "physics/hut-orifice.h"
#include <gsl/gsl_roots.h>

/* Own choice: finer than any dip that a maker's points show. */
#define GRID_COUNT 256
/* Brent's method ends at this share of the flow; own choice. */
#define ROOT_RATIO 1e-12
#define ROOT_STEPS 100

double
hut_air_system_suction_pa (const HutAirSystem *self,
                           double flow_m3_s)
{
  g_return_val_if_fail (self != NULL, NAN);

  return hut_orifice_pressure_pa (self->intake_m2, 1.0, flow_m3_s, self->air.density_kg_m3);
}

double
hut_air_system_pressure_pa (const HutAirSystem *self,
                            double flow_m3_s)
{
  g_return_val_if_fail (self != NULL, NAN);

  double sum_pa = self->fixed_pa + hut_air_system_suction_pa (self, flow_m3_s);

  for (guint i = 0; i < self->n_runs; i++)
    {
      const HutDuctRun *run = &self->runs[i];
      const double velocity_m_s = hut_duct_velocity_m_s (flow_m3_s, run->diameter_m);

      sum_pa
          += hut_duct_friction_pa (flow_m3_s, run->diameter_m, run->length_m, run->roughness_m,
                                   &self->air)
             + run->loss_ratio * hut_velocity_pressure_pa (velocity_m_s, self->air.density_kg_m3);
    }
  return sum_pa;
}

typedef struct
{
  const HutFanCurve *const *fans;
  guint n;
  const HutAirSystem *system;
} Meeting;

/* What the fans make over what the system takes. */
static double
surplus_pa (double flow_m3_s,
            void *data)
{
  const Meeting *self = data;

  return hut_fans_pressure_pa (self->fans, self->n, flow_m3_s, self->system->air.density_kg_m3)
         - hut_air_system_pressure_pa (self->system, flow_m3_s);
}

/* @low has a surplus, @high has none. */
static double
close_in_m3_s (Meeting *meeting,
               double low_m3_s,
               double high_m3_s)
{
  gsl_function function = { surplus_pa, meeting };
  gsl_root_fsolver *solver = gsl_root_fsolver_alloc (gsl_root_fsolver_brent);
  double root_m3_s;

  gsl_root_fsolver_set (solver, &function, low_m3_s, high_m3_s);
  for (guint i = 0; i < ROOT_STEPS; i++)
    {
      gsl_root_fsolver_iterate (solver);
      if (gsl_root_fsolver_x_upper (solver) - gsl_root_fsolver_x_lower (solver)
          <= ROOT_RATIO * high_m3_s)
        break;
    }
  root_m3_s = gsl_root_fsolver_root (solver);
  gsl_root_fsolver_free (solver);
  return root_m3_s;
}

gboolean
hut_operating_point_find (const HutFanCurve *const *fans,
                          guint n,
                          const HutAirSystem *system,
                          HutOperatingPoint *point)
{
  g_return_val_if_fail (system != NULL && point != NULL, FALSE);
  g_return_val_if_fail (fans != NULL || n == 0, FALSE);

  Meeting meeting = { fans, n, system };
  const double free_m3_s = hut_fans_free_m3_s (fans, n), step_m3_s = free_m3_s / GRID_COUNT;
  HutOperatingPoint found = { 0 };
  guint crossings = 0;
  double above_m3_s = free_m3_s;

  if (n == 0 || !(system->intake_m2 > 0) || isnan (surplus_pa (free_m3_s, &meeting)))
    return FALSE;
  if (surplus_pa (free_m3_s, &meeting) >= 0)
    {
      found.flow_m3_s = free_m3_s;
      found.beyond = surplus_pa (free_m3_s, &meeting) > 0;
      crossings = 1;
    }
  for (guint i = GRID_COUNT; i-- > 0;)
    {
      const double flow_m3_s = i * step_m3_s;
      const gboolean has = surplus_pa (flow_m3_s, &meeting) > 0;

      if (has && surplus_pa (above_m3_s, &meeting) < 0)
        if (crossings++ == 0)
          found.flow_m3_s = close_in_m3_s (&meeting, flow_m3_s, above_m3_s);
      above_m3_s = flow_m3_s;
    }
  if (crossings == 0 || found.flow_m3_s <= 0)
    return FALSE;
  found.several = crossings > 1;
  found.pressure_pa = hut_air_system_pressure_pa (system, found.flow_m3_s);
  *point = found;
  return TRUE;
}

double
hut_parabola_meets_m3_s (double shut_pa,
                         double free_m3_s,
                         double loss)
{
  if (!(shut_pa >= 0) || !(free_m3_s > 0) || !(loss >= 0))
    return NAN;
  return sqrt (shut_pa / (loss + shut_pa / (free_m3_s * free_m3_s)));
}

/* src/physics/hut-lid-force.c: what it takes to lift and to hold a lid.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-physics"
#include "config.h"
#include "physics/hut-lid-force.h"

#define STEP_RAD (G_PI / 180.0)
/* A strut whose lever is under this share of its length pushes on the hinge only; own choice. */
#define LEAST_LEVER_RATIO 0.01

double
hut_sheet_mass_kg (double density_kg_m3,
                   double area_m2,
                   double thickness_m)
{
  return density_kg_m3 >= 0 && thickness_m >= 0 ? density_kg_m3 * area_m2 * thickness_m : NAN;
}

gboolean
hut_masses_sum (const HutPointMass *masses,
                guint n,
                HutPointMass *sum)
{
  g_return_val_if_fail (masses != NULL || n == 0, FALSE);
  g_return_val_if_fail (sum != NULL, FALSE);

  double mass_kg = 0, moment_kg_m = 0;

  for (guint i = 0; i < n; i++)
    {
      mass_kg += masses[i].mass_kg;
      moment_kg_m += masses[i].mass_kg * masses[i].at_m;
    }
  if (!(mass_kg > 0))
    return FALSE;
  *sum = (HutPointMass) { mass_kg, moment_kg_m / mass_kg };
  return TRUE;
}

double
hut_hinge_moment_nm (double mass_kg,
                     double level_m)
{
  return mass_kg * HUT_GRAVITY_M_S2 * level_m;
}

double
hut_hinge_moment_at_nm (double mass_kg,
                        double arm_m,
                        double angle_rad)
{
  return hut_hinge_moment_nm (mass_kg, arm_m * cos (angle_rad));
}

double
hut_hand_force_n (double moment_nm,
                  double handle_m)
{
  return handle_m > 0 ? moment_nm / handle_m : NAN;
}

double
hut_spring_force_n (double moment_nm,
                    guint count,
                    double lever_m,
                    double margin_ratio)
{
  if (count == 0 || !(lever_m > 0) || !(margin_ratio >= 1))
    return NAN;
  return margin_ratio * moment_nm / (count * lever_m);
}

static void
get_lid_end (const HutStrut *self,
             double angle_rad,
             double *x_m,
             double *y_m)
{
  const double c = cos (angle_rad), s = sin (angle_rad);

  *x_m = c * self->lid_x_m - s * self->lid_y_m;
  *y_m = s * self->lid_x_m + c * self->lid_y_m;
}

double
hut_strut_length_m (const HutStrut *self,
                    double angle_rad)
{
  g_return_val_if_fail (self != NULL, NAN);

  double x_m, y_m;

  get_lid_end (self, angle_rad, &x_m, &y_m);
  return hypot (x_m - self->base_x_m, y_m - self->base_y_m);
}

double
hut_strut_lever_m (const HutStrut *self,
                   double angle_rad)
{
  g_return_val_if_fail (self != NULL, NAN);

  const double length_m = hut_strut_length_m (self, angle_rad);
  double x_m, y_m;

  if (!(length_m > 0))
    return NAN;
  get_lid_end (self, angle_rad, &x_m, &y_m);
  return fabs (self->base_x_m * y_m - self->base_y_m * x_m) / length_m;
}

gboolean
hut_strut_need_find (const HutStrut *self,
                     double mass_kg,
                     double arm_m,
                     guint count,
                     double end_rad,
                     HutStrutNeed *need)
{
  g_return_val_if_fail (self != NULL && need != NULL, FALSE);

  const guint steps = (guint)ceil (CLAMP (end_rad, 0, G_PI) / STEP_RAD);
  HutStrutNeed found = { .force_n = -INFINITY, .shortest_m = INFINITY };

  for (guint i = 0; i <= steps; i++)
    {
      const double angle_rad = MIN (i * STEP_RAD, end_rad);
      const double length_m = hut_strut_length_m (self, angle_rad);
      const double lever_m = hut_strut_lever_m (self, angle_rad);
      const double force_n = hut_spring_force_n (hut_hinge_moment_at_nm (mass_kg, arm_m, angle_rad),
                                                 count, lever_m, 1.0);

      if (!(lever_m > LEAST_LEVER_RATIO * length_m) || isnan (force_n))
        return FALSE;
      if (force_n > found.force_n)
        {
          found.force_n = force_n;
          found.angle_rad = angle_rad;
        }
      found.shortest_m = MIN (found.shortest_m, length_m);
      found.longest_m = MAX (found.longest_m, length_m);
    }
  *need = found;
  return TRUE;
}

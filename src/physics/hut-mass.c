/* src/physics/hut-mass.c: mass, centre of gravity and inertia of real parts.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-physics"
#include "config.h"
#include "physics/hut-mass.h"
#include "physics/hut-moment.h"

#define M_PER_MM 1e-3
#define M2_PER_MM2 1e-6
#define M3_PER_MM3 1e-9
#define M4_PER_MM4 1e-12

void
hut_mass_add (HutMass *self,
              const HutMass *other)
{
  g_return_if_fail (self != NULL && other != NULL);

  self->mass_kg += other->mass_kg;
  for (guint i = 0; i < 3; i++)
    {
      self->first[i] += other->first[i];
      for (guint j = 0; j < 3; j++)
        self->second[i][j] += other->second[i][j];
    }
}

HutMass
hut_mass_point (double mass_kg,
                double x_m,
                double y_m,
                double z_m)
{
  const double at[3] = { x_m, y_m, z_m };
  HutMass self = { .mass_kg = mass_kg };

  for (guint i = 0; i < 3; i++)
    {
      self.first[i] = mass_kg * at[i];
      for (guint j = 0; j < 3; j++)
        self.second[i][j] = mass_kg * at[i] * at[j];
    }
  return self;
}

/* Moments in the part's own frame, its origin on the outer face, w outwards: the sheet lies from -t
 * to 0. */
static HutMass
own_mass (const HutPart *part)
{
  const HutMoments area = hut_region_moments (part->region, (HutPoint) { 0, 0 });
  const double t_m = part->thickness_mm * M_PER_MM, density = part->stock->density_kg_m3;
  const double w1 = -t_m * t_m / 2, w2 = t_m * t_m * t_m / 3; /* of w and w2 from -t to 0 */
  const double u = area.u_mm3 * M3_PER_MM3, v = area.v_mm3 * M3_PER_MM3;
  const double uv = area.uv_mm4 * M4_PER_MM4;
  const double a_m2 = area.area_mm2 * M2_PER_MM2;
  HutMass own = {
    .mass_kg = density * a_m2 * t_m,
    .first = { density * u * t_m, density * v * t_m, density * a_m2 * w1 },
    .second = {
      { density * area.uu_mm4 * M4_PER_MM4 * t_m, density * uv * t_m, density * u * w1 },
      { density * uv * t_m, density * area.vv_mm4 * M4_PER_MM4 * t_m, density * v * w1 },
      { density * u * w1, density * v * w1, density * a_m2 * w2 },
    },
  };

  return own;
}

HutMass
hut_part_mass (const HutPart *part,
               const HutAssembly *assembly)
{
  g_return_val_if_fail (part != NULL && assembly != NULL, (HutMass) { 0 });

  const HutMass own = own_mass (part);
  HutMass self = { .mass_kg = own.mass_kg };
  double matrix[16];

  hut_part_get_matrix (part, assembly, matrix);
  for (guint i = 0; i < 3; i++)
    {
      self.first[i] = matrix[4 * i + 3] * M_PER_MM * own.mass_kg;
      for (guint k = 0; k < 3; k++)
        self.first[i] += matrix[4 * i + k] * own.first[k];
    }
  for (guint i = 0; i < 3; i++)
    for (guint j = 0; j < 3; j++)
      {
        const double at_i = matrix[4 * i + 3] * M_PER_MM, at_j = matrix[4 * j + 3] * M_PER_MM;

        /* With x = at + R u: x x' = at x' + x at' - at at' + R (u u') R'. */
        self.second[i][j] = at_i * self.first[j] + at_j * self.first[i] - at_i * at_j * own.mass_kg;
        for (guint k = 0; k < 3; k++)
          for (guint l = 0; l < 3; l++)
            self.second[i][j] += matrix[4 * i + k] * own.second[k][l] * matrix[4 * j + l];
      }
  return self;
}

HutMass
hut_shell_mass (const HutAssembly *assembly,
                const HutPartSet *parts,
                HutShellId shell)
{
  g_return_val_if_fail (assembly != NULL && parts != NULL, (HutMass) { 0 });

  HutMass sum = { 0 };

  for (guint i = 0; i < parts->parts->len; i++)
    {
      const HutPart *part = g_ptr_array_index (parts->parts, i);

      /* Plates that the user has drawn are no part of the enclosure. */
      if (part->shell == shell && part->kind != HUT_PART_EXTRA)
        {
          const HutMass mass = hut_part_mass (part, assembly);

          hut_mass_add (&sum, &mass);
        }
    }
  return sum;
}

HutMass
hut_hardware_mass (const HutAssembly *assembly,
                   HutShellId shell)
{
  g_return_val_if_fail (assembly != NULL, (HutMass) { 0 });

  HutMass sum = { 0 };

  for (guint i = 0; i < assembly->hardware->len; i++)
    {
      const HutPlacedHardware *placed = g_ptr_array_index (assembly->hardware, i);
      const HutPanel *panel = g_ptr_array_index (assembly->panels, placed->panel);
      const HutRect covers = placed->footprint;
      const HutVec3 at = hut_frame3_to_world (
          &panel->frame, 0.5 * (covers.u0 + covers.u1), 0.5 * (covers.v0 + covers.v1),
          placed->face == HUT_FACE_OUTSIDE ? 0 : -panel->thickness_mm);
      const double share = placed->item->span == HUT_SPAN_PANEL ? 1 : 0.5;
      const HutMass leaf = hut_mass_point (share * placed->item->mass_kg, at.x * M_PER_MM,
                                           at.y * M_PER_MM, at.z * M_PER_MM);

      if (panel->id.shell == shell)
        hut_mass_add (&sum, &leaf);
    }
  return sum;
}

gboolean
hut_mass_centre (const HutMass *self,
                 double centre_m[3])
{
  g_return_val_if_fail (self != NULL, FALSE);

  if (!(self->mass_kg > 0))
    return FALSE;
  for (guint i = 0; i < 3; i++)
    centre_m[i] = self->first[i] / self->mass_kg;
  return TRUE;
}

double
hut_mass_inertia (const HutMass *self,
                  HutVec3 point,
                  HutVec3 axis)
{
  g_return_val_if_fail (self != NULL, NAN);

  const double p[3] = { point.x * M_PER_MM, point.y * M_PER_MM, point.z * M_PER_MM };
  const double a[3] = { axis.x, axis.y, axis.z };
  double sum = 0;

  for (guint i = 0; i < 3; i++)
    for (guint j = 0; j < 3; j++)
      {
        const double about_point = self->second[i][j] - p[i] * self->first[j]
                                   - p[j] * self->first[i] + p[i] * p[j] * self->mass_kg;

        sum += about_point * ((i == j ? 1 : 0) - a[i] * a[j]);
      }
  return sum;
}

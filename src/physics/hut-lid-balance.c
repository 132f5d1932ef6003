/* src/physics/hut-lid-balance.c: the real lid on its hinge.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-physics"
#include "config.h"
#include "physics/hut-lid-balance.h"
#include "physics/hut-lid-force.h"
#include "physics/hut-tip.h"

#define MM_PER_M 1000.0

static HutVec3
minus (HutVec3 a,
       HutVec3 b)
{
  return hut_vec3_add (a, hut_vec3_scale (b, -1));
}

static HutVec3
cross (HutVec3 a,
       HutVec3 b)
{
  return (HutVec3) { a.y * b.z - a.z * b.y, a.z * b.x - a.x * b.z, a.x * b.y - a.y * b.x };
}

/* Distance of a point from the hinge line, mm. */
static double
off_hinge_mm (const HutAssembly *assembly,
              HutVec3 p)
{
  const HutVec3 arm = cross (minus (p, assembly->hinge_point), assembly->hinge_axis);

  return sqrt (hut_vec3_dot (arm, arm));
}

static double
farthest_mm (const HutAssembly *assembly)
{
  double farthest = 0;

  for (guint i = 0; i < assembly->solids->len; i++)
    {
      const HutSolid *solid = &g_array_index (assembly->solids, HutSolid, i);
      const HutVec3 lo = solid->box.min, hi = solid->box.max;

      if (solid->shell != HUT_SHELL_LID)
        continue;
      for (guint k = 0; k < 8; k++)
        {
          const HutVec3 corner = { k & 1 ? hi.x : lo.x, k & 2 ? hi.y : lo.y, k & 4 ? hi.z : lo.z };

          farthest = MAX (farthest, off_hinge_mm (assembly, corner));
        }
    }
  return farthest;
}

static HutBox3
machine_box (const HutAssembly *assembly)
{
  const GPtrArray *bodies = assembly->design->machine.bodies;
  HutBox3 box = { { 0, 0, 0 }, { -1, -1, -1 } };

  for (guint pass = 0; pass < 2 && hut_box3_is_empty (&box); pass++)
    for (guint i = 0; i < bodies->len; i++)
      {
        const HutBody *body = g_ptr_array_index (bodies, i);
        const HutBox3 at = hut_assembly_body_box (assembly, body);

        if (body->kind == (pass == 0 ? HUT_BODY_STATIC : HUT_BODY_MOVING))
          box = hut_box3_union (&box, &at);
      }
  return box;
}

static HutMass
whole_mass (const HutAssembly *assembly,
            const HutPartSet *parts,
            HutShellId shell)
{
  const HutMass hardware = hut_hardware_mass (assembly, shell);
  HutMass sum = hut_shell_mass (assembly, parts, shell);

  hut_mass_add (&sum, &hardware);
  return sum;
}

HutLidBalance
hut_lid_balance_new (const HutAssembly *assembly,
                     const HutPartSet *parts)
{
  g_return_val_if_fail (assembly != NULL && parts != NULL, (HutLidBalance) { 0 });

  const HutBox3 box = machine_box (assembly);
  HutLidBalance self = {
    .lid = whole_mass (assembly, parts, HUT_SHELL_LID),
    .base = whole_mass (assembly, parts, HUT_SHELL_BASE),
    .machine_at_mm = hut_vec3_scale (hut_vec3_add (box.min, box.max), 0.5),
  };

  if (assembly->hinged)
    self.lever_m = farthest_mm (assembly) / MM_PER_M;
  if (assembly->design->shell.bottom != HUT_BOTTOM_OPEN && !hut_box3_is_empty (&box))
    self.machine_kg = assembly->design->machine.mass_kg;
  return self;
}

HutVec3
hut_lid_balance_centre_mm (const HutLidBalance *self,
                           const HutAssembly *assembly,
                           double angle_rad)
{
  const HutVec3 nowhere = { NAN, NAN, NAN };

  g_return_val_if_fail (self != NULL && assembly != NULL, nowhere);

  double centre_m[3];

  if (!hut_mass_centre (&self->lid, centre_m))
    return nowhere;

  const HutVec3 closed = { centre_m[0] * MM_PER_M, centre_m[1] * MM_PER_M, centre_m[2] * MM_PER_M };
  const HutVec3 axis = assembly->hinge_axis, arm = minus (closed, assembly->hinge_point);
  const HutVec3 along = hut_vec3_scale (axis, hut_vec3_dot (axis, arm));
  const HutVec3 turned
      = hut_vec3_add (hut_vec3_add (along, hut_vec3_scale (minus (arm, along), cos (angle_rad))),
                      hut_vec3_scale (cross (axis, arm), sin (angle_rad)));

  return assembly->hinged ? hut_vec3_add (assembly->hinge_point, turned) : closed;
}

double
hut_lid_balance_hand_n (const HutLidBalance *self,
                        const HutAssembly *assembly,
                        double angle_rad)
{
  g_return_val_if_fail (self != NULL && assembly != NULL, NAN);

  const HutVec3 centre = hut_lid_balance_centre_mm (self, assembly, angle_rad);
  const HutVec3 arm = minus (centre, assembly->hinge_point);
  /* How far the centre rises for a radian: the level distance from the hinge line. */
  const double level_m = cross (assembly->hinge_axis, arm).z / MM_PER_M;

  if (!assembly->hinged || !(self->lever_m > 0))
    return NAN;
  return hut_hand_force_n (hut_hinge_moment_nm (self->lid.mass_kg, level_m), self->lever_m);
}

/* Adds a weight at a signed distance outside of an edge. */
static void
weigh (double mass_kg,
       double beyond_mm,
       double *holding,
       double *tipping)
{
  *(beyond_mm < 0 ? holding : tipping) += mass_kg * fabs (beyond_mm);
}

double
hut_lid_balance_tip_ratio (const HutLidBalance *self,
                           const HutAssembly *assembly,
                           double angle_rad)
{
  g_return_val_if_fail (self != NULL && assembly != NULL, NAN);

  /* Outward direction of each lower edge, and how far out it lies, mm. */
  const HutVec3 outer = assembly->outer_mm;
  const struct
  {
    HutVec3 out;
    double at_mm;
  } edges[] = {
    { { 0, -1, 0 }, 0 }, { { 0, 1, 0 }, outer.y }, { { -1, 0, 0 }, 0 }, { { 1, 0, 0 }, outer.x }
  };
  const HutVec3 lid = hut_lid_balance_centre_mm (self, assembly, angle_rad);
  double centre_m[3] = { 0 }, least = INFINITY;
  const gboolean has_base = hut_mass_centre (&self->base, centre_m);
  const HutVec3 base = { centre_m[0] * MM_PER_M, centre_m[1] * MM_PER_M, centre_m[2] * MM_PER_M };

  if (isnan (lid.x))
    return INFINITY;
  for (guint i = 0; i < G_N_ELEMENTS (edges); i++)
    {
      double holding = 0, tipping = 0;

      if (has_base)
        weigh (self->base.mass_kg, hut_vec3_dot (base, edges[i].out) - edges[i].at_mm, &holding,
               &tipping);
      if (self->machine_kg > 0)
        weigh (self->machine_kg, hut_vec3_dot (self->machine_at_mm, edges[i].out) - edges[i].at_mm,
               &holding, &tipping);
      weigh (self->lid.mass_kg, hut_vec3_dot (lid, edges[i].out) - edges[i].at_mm, &holding,
             &tipping);
      least = MIN (least, hut_tip_ratio (holding, 1, tipping, 1));
    }
  return least;
}

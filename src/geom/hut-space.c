/* src/geom/hut-space.c: boxes and frames in space.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-geom"
#include "config.h"
#include "geom/hut-space.h"
#include <math.h>

#define CORNERS 8 /* count: of a box */

HutVec3
hut_vec3_add (HutVec3 a,
              HutVec3 b)
{
  return (HutVec3) { a.x + b.x, a.y + b.y, a.z + b.z };
}

HutVec3
hut_vec3_scale (HutVec3 a,
                double factor_ratio)
{
  return (HutVec3) { a.x * factor_ratio, a.y * factor_ratio, a.z * factor_ratio };
}

double
hut_vec3_dot (HutVec3 a,
              HutVec3 b)
{
  return a.x * b.x + a.y * b.y + a.z * b.z;
}

HutVec3
hut_vec3_cross (HutVec3 a,
                HutVec3 b)
{
  return (HutVec3) { a.y * b.z - a.z * b.y, a.z * b.x - a.x * b.z, a.x * b.y - a.y * b.x };
}

HutVec3
hut_vec3_turn (HutVec3 a,
               HutVec3 axis,
               double angle_rad)
{
  const HutVec3 across = hut_vec3_scale (hut_vec3_cross (axis, a), sin (angle_rad));
  const HutVec3 along
      = hut_vec3_scale (axis, hut_vec3_dot (axis, a) * (1.0 - cos (angle_rad)));

  return hut_vec3_add (hut_vec3_add (hut_vec3_scale (a, cos (angle_rad)), across), along);
}

HutFrame3
hut_frame3_turn (const HutFrame3 *self,
                 HutVec3 point,
                 HutVec3 axis,
                 double angle_rad)
{
  const HutVec3 arm = hut_vec3_add (self->origin, hut_vec3_scale (point, -1.0));

  return (HutFrame3) {
    .origin = hut_vec3_add (point, hut_vec3_turn (arm, axis, angle_rad)),
    .u = hut_vec3_turn (self->u, axis, angle_rad),
    .v = hut_vec3_turn (self->v, axis, angle_rad),
    .w = hut_vec3_turn (self->w, axis, angle_rad),
  };
}

HutVec3
hut_frame3_to_world (const HutFrame3 *self,
                     double u_mm,
                     double v_mm,
                     double w_mm)
{
  const HutVec3 u = hut_vec3_scale (self->u, u_mm);
  const HutVec3 v = hut_vec3_scale (self->v, v_mm);
  const HutVec3 w = hut_vec3_scale (self->w, w_mm);

  return hut_vec3_add (self->origin, hut_vec3_add (hut_vec3_add (u, v), w));
}

HutBox3
hut_frame3_box (const HutFrame3 *self,
                HutRect rect,
                double w0_mm,
                double w1_mm)
{
  if (!(rect.u1 >= rect.u0 && rect.v1 >= rect.v0))
    return (HutBox3) { { 0, 0, 0 }, { -1, -1, -1 } };

  const HutVec3 a = hut_frame3_to_world (self, rect.u0, rect.v0, w0_mm);
  const HutVec3 b = hut_frame3_to_world (self, rect.u1, rect.v1, w1_mm);

  return (HutBox3) {
    .min = { fmin (a.x, b.x), fmin (a.y, b.y), fmin (a.z, b.z) },
    .max = { fmax (a.x, b.x), fmax (a.y, b.y), fmax (a.z, b.z) },
  };
}

HutRect
hut_frame3_shadow (const HutFrame3 *self,
                   const HutBox3 *box)
{
  HutRect shadow = { INFINITY, INFINITY, -INFINITY, -INFINITY };

  if (hut_box3_is_empty (box))
    return (HutRect) { 0, 0, -1, -1 };
  for (guint i = 0; i < CORNERS; i++)
    {
      const HutVec3 corner = {
        (i & 1) ? box->max.x : box->min.x,
        (i & 2) ? box->max.y : box->min.y,
        (i & 4) ? box->max.z : box->min.z,
      };
      const HutVec3 from_origin = hut_vec3_add (corner, hut_vec3_scale (self->origin, -1));
      const double u = hut_vec3_dot (from_origin, self->u);
      const double v = hut_vec3_dot (from_origin, self->v);

      shadow.u0 = fmin (shadow.u0, u);
      shadow.v0 = fmin (shadow.v0, v);
      shadow.u1 = fmax (shadow.u1, u);
      shadow.v1 = fmax (shadow.v1, v);
    }
  return shadow;
}

gboolean
hut_box3_is_empty (const HutBox3 *self)
{
  /* Written so that a box with a NaN is empty too. */
  return !(self->max.x >= self->min.x && self->max.y >= self->min.y && self->max.z >= self->min.z);
}

HutBox3
hut_box3_union (const HutBox3 *a,
                const HutBox3 *b)
{
  if (hut_box3_is_empty (a))
    return *b;
  if (hut_box3_is_empty (b))
    return *a;
  return (HutBox3) {
    .min = { fmin (a->min.x, b->min.x), fmin (a->min.y, b->min.y), fmin (a->min.z, b->min.z) },
    .max = { fmax (a->max.x, b->max.x), fmax (a->max.y, b->max.y), fmax (a->max.z, b->max.z) },
  };
}

HutBox3
hut_box3_sweep (const HutBox3 *self,
                HutVec3 travel)
{
  const HutBox3 moved = hut_box3_shift (self, travel);

  return hut_box3_is_empty (self) ? *self : hut_box3_union (self, &moved);
}

HutBox3
hut_box3_shift (const HutBox3 *self,
                HutVec3 by)
{
  return (HutBox3) { hut_vec3_add (self->min, by), hut_vec3_add (self->max, by) };
}

/* Gap of two spans, mm: > 0 apart, < 0 the smaller of the two moves that part them. */
static double
gap_mm (double min_a_mm,
        double max_a_mm,
        double min_b_mm,
        double max_b_mm)
{
  return fmax (min_b_mm - max_a_mm, min_a_mm - max_b_mm);
}

static HutVec3
gaps (const HutBox3 *a,
      const HutBox3 *b)
{
  return (HutVec3) {
    gap_mm (a->min.x, a->max.x, b->min.x, b->max.x),
    gap_mm (a->min.y, a->max.y, b->min.y, b->max.y),
    gap_mm (a->min.z, a->max.z, b->min.z, b->max.z),
  };
}

double
hut_box3_distance_mm (const HutBox3 *a,
                      const HutBox3 *b)
{
  if (hut_box3_is_empty (a) || hut_box3_is_empty (b))
    return INFINITY;

  const HutVec3 gap = gaps (a, b);
  const HutVec3 apart = { fmax (gap.x, 0), fmax (gap.y, 0), fmax (gap.z, 0) };

  return sqrt (hut_vec3_dot (apart, apart));
}

double
hut_box3_overlap_mm (const HutBox3 *a,
                     const HutBox3 *b)
{
  if (hut_box3_is_empty (a) || hut_box3_is_empty (b))
    return 0;

  const HutVec3 gap = gaps (a, b);

  return fmax (0, -fmax (gap.x, fmax (gap.y, gap.z)));
}

double
hut_box3_volume_mm3 (const HutBox3 *self)
{
  if (hut_box3_is_empty (self))
    return 0;
  return (self->max.x - self->min.x) * (self->max.y - self->min.y) * (self->max.z - self->min.z);
}

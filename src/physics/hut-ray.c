/* src/physics/hut-ray.c: whether a ray through the enclosure meets sheet.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-physics"
#include "config.h"
#include "physics/hut-ray.h"
#include "physics/hut-region-line.h"

/* What lies less deep in a box is a touch, mm: a thousandth of the grid. */
#define TOUCH_MM 1e-6

/* Cuts the shares s0 .. s1 of a way to a slab of one coordinate; FALSE when nothing is left. */
static gboolean
cut_to_slab (double from,
             double to,
             double lo,
             double hi,
             double *s0,
             double *s1)
{
  const double way = to - from;

  if (way == 0)
    return from > lo && from < hi;
  *s0 = MAX (*s0, MIN ((lo - from) / way, (hi - from) / way));
  *s1 = MIN (*s1, MAX ((lo - from) / way, (hi - from) / way));
  return *s1 > *s0;
}

static gboolean
meets_box (const HutBox3 *box,
           HutVec3 from,
           HutVec3 to)
{
  double s0 = 0, s1 = 1;

  return cut_to_slab (from.x, to.x, box->min.x + TOUCH_MM, box->max.x - TOUCH_MM, &s0, &s1)
         && cut_to_slab (from.y, to.y, box->min.y + TOUCH_MM, box->max.y - TOUCH_MM, &s0, &s1)
         && cut_to_slab (from.z, to.z, box->min.z + TOUCH_MM, box->max.z - TOUCH_MM, &s0, &s1);
}

static HutVec3
to_frame (const HutFrame3 *frame,
          HutVec3 p)
{
  const HutVec3 off = hut_vec3_add (p, hut_vec3_scale (frame->origin, -1));

  return (HutVec3) { hut_vec3_dot (off, frame->u), hut_vec3_dot (off, frame->v),
                    hut_vec3_dot (off, frame->w) };
}

static gboolean
meets_sheet (const HutFrame3 *frame,
             const HutRegion *region,
             double depth0_mm,
             double depth1_mm,
             HutVec3 from,
             HutVec3 to)
{
  const HutVec3 a = to_frame (frame, from), b = to_frame (frame, to);
  double s0 = 0, s1 = 1;

  if (!cut_to_slab (a.z, b.z, -depth1_mm + TOUCH_MM, -depth0_mm - TOUCH_MM, &s0, &s1))
    return FALSE;
  return hut_region_line_meets (region,
                                (HutPoint) { a.x + s0 * (b.x - a.x), a.y + s0 * (b.y - a.y) },
                                (HutPoint) { a.x + s1 * (b.x - a.x), a.y + s1 * (b.y - a.y) });
}

static gboolean
meets_solids (const GArray *solids,
              HutVec3 from,
              HutVec3 to)
{
  for (guint i = 0; i < solids->len; i++)
    {
      const HutSolid *solid = &g_array_index (solids, HutSolid, i);

      /* Panels and plates are no boxes, and are there already; hardware has holes of its own. */
      if ((solid->kind == HUT_SOLID_STRAP || solid->kind == HUT_SOLID_LEDGE
           || solid->kind == HUT_SOLID_BAFFLE || solid->kind == HUT_SOLID_TRAP)
          && meets_box (&solid->box, from, to))
        return TRUE;
    }
  return FALSE;
}

gboolean
hut_ray_is_free (const HutAssembly *assembly,
                 const HutPartSet *parts,
                 HutVec3 from,
                 HutVec3 to)
{
  g_return_val_if_fail (assembly != NULL && parts != NULL, FALSE);

  for (guint i = 0; i < assembly->panels->len; i++)
    {
      const HutPanel *panel = g_ptr_array_index (assembly->panels, i);

      if (meets_sheet (&panel->frame, panel->region, 0, panel->thickness_mm, from, to))
        return FALSE;
    }
  for (guint i = 0; i < assembly->plates->len; i++)
    {
      const HutPlate *plate = g_ptr_array_index (assembly->plates, i);
      const HutPanel *panel = g_ptr_array_index (assembly->panels, plate->panel);

      if (meets_sheet (&panel->frame, plate->region, plate->depth0_mm, plate->depth1_mm, from, to))
        return FALSE;
    }
  return !meets_solids (assembly->solids, from, to) && !meets_solids (parts->solids, from, to);
}

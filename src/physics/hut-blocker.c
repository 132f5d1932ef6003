/* src/physics/hut-blocker.c: what stands in the way of light.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-physics"
#include "config.h"
#include "physics/hut-blocker.h"
#include "physics/hut-region-line.h"

/* What lies less deep in a box is a touch, mm: a thousandth of the grid. */
#define TOUCH_MM 1e-6

/* ---- all of a design ----------------------------------------------------------------------- */

static void
add_sheet (GArray *blockers,
           const HutFrame3 *frame,
           const HutRegion *region,
           double depth0_mm,
           double depth1_mm,
           gboolean is_panel)
{
  const HutRect bounds = hut_region_bounds (region);
  const HutBlocker blocker = {
    .box = hut_frame3_box (frame, bounds, -depth1_mm, -depth0_mm),
    .frame = frame,
    .region = region,
    .depth0_mm = depth0_mm,
    .depth1_mm = depth1_mm,
    .is_panel = is_panel,
  };

  g_array_append_val (blockers, blocker);
}

static void
add_solids (GArray *blockers,
            const GArray *solids)
{
  for (guint i = 0; i < solids->len; i++)
    {
      const HutSolid *solid = &g_array_index (solids, HutSolid, i);
      const HutBlocker blocker = { .box = solid->box };

      /* Panels and plates are no boxes, and are there already; hardware has holes of its own. */
      if (solid->kind == HUT_SOLID_STRAP || solid->kind == HUT_SOLID_LEDGE
          || solid->kind == HUT_SOLID_BAFFLE || solid->kind == HUT_SOLID_TRAP)
        g_array_append_val (blockers, blocker);
    }
}

GArray *
hut_blockers_new (const HutAssembly *assembly,
                  const HutPartSet *parts)
{
  g_return_val_if_fail (assembly != NULL && parts != NULL, NULL);

  GArray *blockers = g_array_new (FALSE, FALSE, sizeof (HutBlocker));

  for (guint i = 0; i < assembly->panels->len; i++)
    {
      const HutPanel *panel = g_ptr_array_index (assembly->panels, i);

      add_sheet (blockers, &panel->frame, panel->region, 0, panel->thickness_mm, TRUE);
    }
  for (guint i = 0; i < assembly->plates->len; i++)
    {
      const HutPlate *plate = g_ptr_array_index (assembly->plates, i);
      const HutPanel *panel = g_ptr_array_index (assembly->panels, plate->panel);

      add_sheet (blockers, &panel->frame, plate->region, plate->depth0_mm, plate->depth1_mm, FALSE);
    }
  add_solids (blockers, assembly->solids);
  add_solids (blockers, parts->solids);
  return blockers;
}

/* ---- one way ------------------------------------------------------------------------------- */

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

/* FALSE only when the way is wholly on one side of the box. */
static gboolean
comes_near_box (const HutBox3 *box,
                HutVec3 from,
                HutVec3 to)
{
  return !(MAX (from.x, to.x) < box->min.x || MIN (from.x, to.x) > box->max.x
           || MAX (from.y, to.y) < box->min.y || MIN (from.y, to.y) > box->max.y
           || MAX (from.z, to.z) < box->min.z || MIN (from.z, to.z) > box->max.z);
}

static HutVec3
to_frame (const HutFrame3 *frame,
          HutVec3 p)
{
  const HutVec3 off = hut_vec3_add (p, hut_vec3_scale (frame->origin, -1));

  return (HutVec3) { hut_vec3_dot (off, frame->u), hut_vec3_dot (off, frame->v),
                    hut_vec3_dot (off, frame->w) };
}

gboolean
hut_blocker_meets (const HutBlocker *self,
                   HutVec3 from,
                   HutVec3 to)
{
  HutVec3 a, b;
  double s0 = 0, s1 = 1;

  if (!comes_near_box (&self->box, from, to))
    return FALSE;
  if (self->frame == NULL)
    return meets_box (&self->box, from, to);
  a = to_frame (self->frame, from);
  b = to_frame (self->frame, to);
  if (!cut_to_slab (a.z, b.z, -self->depth1_mm + TOUCH_MM, -self->depth0_mm - TOUCH_MM, &s0, &s1))
    return FALSE;
  return hut_region_line_meets (self->region,
                                (HutPoint) { a.x + s0 * (b.x - a.x), a.y + s0 * (b.y - a.y) },
                                (HutPoint) { a.x + s1 * (b.x - a.x), a.y + s1 * (b.y - a.y) });
}

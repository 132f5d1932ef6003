/* src/physics/hut-section.c: the enclosure cut by a plane across a world axis.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-physics"
#include "config.h"
#include "physics/hut-section.h"
#include "physics/hut-region-line.h"

/* How deep the bench goes in a section, mm; own choice: any depth does. */
#define BENCH_MM 1000.0

double
hut_axis_of_mm (HutAxis axis,
                HutVec3 p)
{
  return axis == HUT_AXIS_X ? p.x : axis == HUT_AXIS_Y ? p.y : p.z;
}

HutPoint
hut_section_point (HutAxis axis,
                   HutVec3 p)
{
  return (HutPoint) { axis == HUT_AXIS_X ? p.y : p.x, axis == HUT_AXIS_Z ? p.y : p.z };
}

HutVec3
hut_section_world (HutAxis axis,
                   double at_mm,
                   HutPoint p)
{
  switch (axis)
    {
    case HUT_AXIS_X:
      return (HutVec3) { at_mm, p.u, p.v };
    case HUT_AXIS_Y:
      return (HutVec3) { p.u, at_mm, p.v };
    case HUT_AXIS_Z:
      return (HutVec3) { p.u, p.v, at_mm };
    default:
      g_return_val_if_reached ((HutVec3) { 0 });
    }
}

static const HutRect empty_rect = { 0, 0, -1, -1 };

HutRect
hut_section_box (HutAxis axis,
                 double at_mm,
                 const HutBox3 *box)
{
  const HutPoint lo = hut_section_point (axis, box->min), hi = hut_section_point (axis, box->max);

  if (hut_box3_is_empty (box) || at_mm < hut_axis_of_mm (axis, box->min)
      || at_mm > hut_axis_of_mm (axis, box->max))
    return empty_rect;
  return (HutRect) { lo.u, lo.v, hi.u, hi.v };
}

typedef struct
{
  HutAxis axis;
  double at_mm;
  GArray *walls;
} Cutting;

static void
add_box (const Cutting *self,
         const HutBox3 *box)
{
  const HutRect rect = hut_section_box (self->axis, self->at_mm, box);

  if (rect.u1 > rect.u0 && rect.v1 > rect.v0)
    g_array_append_val (self->walls, rect);
}

/* Whether the plane runs through the inside of the blocker's bounds, or it has none across it. */
static gboolean
may_cut (const Cutting *self,
         const HutBlocker *blocker)
{
  return !(self->at_mm < hut_axis_of_mm (self->axis, blocker->box.min)
           || self->at_mm > hut_axis_of_mm (self->axis, blocker->box.max));
}

static void
add_sheet (const Cutting *self,
           const HutBlocker *sheet,
           const HutRegion *region)
{
  const HutFrame3 *frame = sheet->frame;
  const HutRect bounds = hut_frame3_shadow (frame, &sheet->box);
  const double along_u = hut_axis_of_mm (self->axis, frame->u);
  const double along_v = hut_axis_of_mm (self->axis, frame->v);
  const double off_mm = self->at_mm - hut_axis_of_mm (self->axis, frame->origin);
  HutPoint from = { bounds.u0, bounds.v0 }, to = { bounds.u1, bounds.v1 };
  g_autoptr(GArray) shares = NULL;

  if (along_u == 0 && along_v == 0)
    {
      add_box (self, &sheet->box);
      return;
    }
  if (along_u != 0)
    from.u = to.u = off_mm / along_u;
  else
    from.v = to.v = off_mm / along_v;
  shares = hut_region_line_shares (region, from, to);
  for (guint i = 0; i < shares->len; i++)
    {
      const HutShare *share = &g_array_index (shares, HutShare, i);
      const HutRect rect = {
        from.u + share->from * (to.u - from.u),
        from.v + share->from * (to.v - from.v),
        from.u + share->to * (to.u - from.u),
        from.v + share->to * (to.v - from.v),
      };
      const HutBox3 box = hut_frame3_box (frame, rect, -sheet->depth1_mm, -sheet->depth0_mm);
      HutBox3 thick = box;

      /* The plane cuts it, whatever rounding says. */
      thick.min = hut_vec3_add (box.min, (HutVec3) { self->axis == HUT_AXIS_X ? -1 : 0,
                                                    self->axis == HUT_AXIS_Y ? -1 : 0,
                                                    self->axis == HUT_AXIS_Z ? -1 : 0 });
      thick.max = hut_vec3_add (box.max, (HutVec3) { self->axis == HUT_AXIS_X ? 1 : 0,
                                                    self->axis == HUT_AXIS_Y ? 1 : 0,
                                                    self->axis == HUT_AXIS_Z ? 1 : 0 });
      add_box (self, &thick);
    }
}

GArray *
hut_section_walls (const HutAssembly *assembly,
                   const GArray *blockers,
                   HutAxis axis,
                   double at_mm,
                   gboolean holes)
{
  g_return_val_if_fail (assembly != NULL && blockers != NULL, NULL);

  const Cutting self = { axis, at_mm, g_array_new (FALSE, FALSE, sizeof (HutRect)) };
  g_autoptr(GPtrArray) none = g_ptr_array_new ();
  const HutVec3 outer = assembly->outer_mm;
  const HutBox3 bench = { { 0, 0, -BENCH_MM }, { outer.x, outer.y, 0 } };

  for (guint i = 0; i < blockers->len; i++)
    {
      const HutBlocker *blocker = &g_array_index (blockers, HutBlocker, i);

      if (!may_cut (&self, blocker))
        continue;
      if (blocker->frame == NULL)
        add_box (&self, &blocker->box);
      else
        {
          const HutRegion whole = { blocker->region->outer, none };

          add_sheet (&self, blocker, holes || !blocker->is_panel ? blocker->region : &whole);
        }
    }
  if (axis != HUT_AXIS_Z)
    add_box (&self, &bench);
  return self.walls;
}

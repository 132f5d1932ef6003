/* src/physics/hut-finish.c: how much surface there is to paint, wax and glue.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-physics"
#include "config.h"
#include "physics/hut-finish.h"

#define M_PER_MM 1e-3
#define M2_PER_MM2 1e-6

static void
add_edges (HutFinish *self,
           const HutPath *path,
           double thickness_mm)
{
  for (guint i = 0; i < hut_path_get_count (path); i++)
    {
      const HutSegment segment = hut_path_get_segment (path, i);
      const double length_mm = hut_segment_length_mm (&segment);

      if (segment.kind == HUT_EDGE_MATING)
        {
          self->joint_m += 0.5 * length_mm * M_PER_MM;
          self->joint_m2 += 0.5 * length_mm * thickness_mm * M2_PER_MM2;
        }
      else
        self->edge_m2 += length_mm * thickness_mm * M2_PER_MM2;
    }
}

static void
add_part (HutFinish *self,
          const HutPart *part)
{
  const double face_m2 = hut_region_area_mm2 (part->region) * M2_PER_MM2;

  if (part->kind == HUT_PART_GLAZING)
    return;
  add_edges (self, part->region->outer, part->thickness_mm);
  for (guint i = 0; i < part->region->holes->len; i++)
    add_edges (self, part->region->holes->pdata[i], part->thickness_mm);
  if (part->kind == HUT_PART_PANEL)
    {
      self->outside_m2 += face_m2;
      self->inside_m2 += face_m2;
    }
  else
    self->strap_m2 += face_m2;
}

HutFinish
hut_finish_of (const HutPartSet *parts)
{
  g_return_val_if_fail (parts != NULL, (HutFinish) { 0 });

  HutFinish finish = { 0 };

  for (guint i = 0; i < parts->parts->len; i++)
    add_part (&finish, g_ptr_array_index (parts->parts, i));
  return finish;
}

/* src/geom/hut-region.c: an outline with holes.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-geom"
#include "config.h"
#include "geom/hut-region.h"

static void
free_path (gpointer path)
{
  hut_path_free (path);
}

HutRegion *
hut_region_new (HutPath *outer)
{
  g_return_val_if_fail (outer != NULL, NULL);

  HutRegion *self = g_new0 (HutRegion, 1);

  if (hut_path_area_mm2 (outer) < 0)
    hut_path_reverse (outer);
  self->outer = outer;
  self->holes = g_ptr_array_new_with_free_func (free_path);
  return self;
}

HutRegion *
hut_region_copy (const HutRegion *self)
{
  HutRegion *copy = hut_region_new (hut_path_copy (self->outer));

  for (guint i = 0; i < self->holes->len; i++)
    hut_region_take_hole (copy, hut_path_copy (g_ptr_array_index (self->holes, i)));
  return copy;
}

void
hut_region_free (HutRegion *self)
{
  if (self == NULL)
    return;
  hut_path_free (self->outer);
  g_ptr_array_unref (self->holes);
  g_free (self);
}

void
hut_region_take_hole (HutRegion *self,
                      HutPath *hole)
{
  g_return_if_fail (self != NULL && hole != NULL);
  if (hut_path_area_mm2 (hole) > 0)
    hut_path_reverse (hole);
  g_ptr_array_add (self->holes, hole);
}

double
hut_region_area_mm2 (const HutRegion *self)
{
  double area_mm2 = hut_path_area_mm2 (self->outer);

  for (guint i = 0; i < self->holes->len; i++)
    area_mm2 += hut_path_area_mm2 (g_ptr_array_index (self->holes, i)); /* clockwise: negative */
  return area_mm2;
}

double
hut_region_length_mm (const HutRegion *self)
{
  double length_mm = hut_path_length_mm (self->outer);

  for (guint i = 0; i < self->holes->len; i++)
    length_mm += hut_path_length_mm (g_ptr_array_index (self->holes, i));
  return length_mm;
}

HutRect
hut_region_bounds (const HutRegion *self)
{
  return hut_path_bounds (self->outer);
}

gboolean
hut_region_contains (const HutRegion *self,
                     HutPoint p)
{
  const HutPathSide place = hut_path_locate (self->outer, p);

  if (place != HUT_PATH_SIDE_INSIDE)
    return place == HUT_PATH_SIDE_BORDER;
  for (guint i = 0; i < self->holes->len; i++)
    {
      if (hut_path_locate (g_ptr_array_index (self->holes, i), p) == HUT_PATH_SIDE_INSIDE)
        return FALSE;
    }
  return TRUE;
}

HutRegion *
hut_region_dup_placed (const HutRegion *self,
                       const HutPlacement *placement)
{
  HutRegion *placed = hut_region_new (hut_path_dup_placed (self->outer, placement));

  for (guint i = 0; i < self->holes->len; i++)
    hut_region_take_hole (placed,
                          hut_path_dup_placed (g_ptr_array_index (self->holes, i), placement));
  return placed;
}

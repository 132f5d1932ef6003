/* src/assembly/hut-opening-shape.c: outlines of openings about their own middle.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-assembly"
#include "config.h"
#include "assembly/hut-assembly.h"
#include <math.h>

#define DEG_TO_RAD (G_PI / 180.0)

static HutPath *
centred_rect (double width_mm,
              double height_mm,
              double radius_mm)
{
  const double half_width_mm = hut_snap_mm (width_mm / 2.0),
               half_height_mm = hut_snap_mm (height_mm / 2.0);

  return hut_path_new_rect (
      (HutRect) { -half_width_mm, -half_height_mm, half_width_mm, half_height_mm }, radius_mm);
}

/**
 * hut_opening_dup_paths:
 * @self: an opening
 *
 * Returns: (transfer full) (element-type HutPath): its holes about (0, 0), counter-clockwise,
 * turned by   its own turn; empty for a pattern without holes
 */
GPtrArray *
hut_opening_dup_paths (const HutOpening *self)
{
  GPtrArray *paths = g_ptr_array_new_with_free_func ((GDestroyNotify) hut_path_free);
  const HutPlacement turn = { .turn_rad = self->turn_deg * DEG_TO_RAD };

  switch (self->shape)
    {
    case HUT_SHAPE_ROUND:
      g_ptr_array_add (paths, hut_path_new_circle ((HutPoint) { 0, 0 }, self->diameter_mm / 2.0));
      break;
    case HUT_SHAPE_RECTANGLE:
    case HUT_SHAPE_SLOT:
      {
        const double radius_mm = self->shape == HUT_SHAPE_SLOT
                                     ? MIN (self->width_mm, self->height_mm) / 2.0
                                     : self->radius_mm;
        g_autoptr(HutPath) straight = centred_rect (self->width_mm, self->height_mm, radius_mm);

        g_ptr_array_add (paths, hut_path_dup_placed (straight, &turn));
        break;
      }
    case HUT_SHAPE_PATTERN:
      for (guint i = 0; self->holes != NULL && i < self->holes->len; i++)
        g_ptr_array_add (paths,
                         hut_path_new_circle (
                             hut_placement_apply (&turn, g_array_index (self->holes, HutPoint, i)),
                             self->diameter_mm / 2.0));
      break;
    }
  return paths;
}

/* src/catalog/hut-item-cut.c: the holes of an item as outlines.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-catalog"
#include "config.h"
#include "catalog/hut-item.h"
#include <math.h>

static void
append (HutPath *path,
        HutPoint at,
        double u_mm,
        double v_mm,
        double turn_rad)
{
  hut_path_append (path, (HutPoint) { at.u + u_mm, at.v + v_mm }, tan (turn_rad / 4.0),
                   HUT_EDGE_PLAIN);
}

/* A circle with a flat above, at v = flat_mm. Its arc is halved below, so that no bulge is over 1.
 * */
static void
append_flatted (HutPath *path,
                HutPoint at,
                double radius_mm,
                double flat_mm)
{
  const double half_mm = sqrt (radius_mm * radius_mm - flat_mm * flat_mm);
  const double turn_rad = G_PI - acos (flat_mm / radius_mm);

  append (path, at, -half_mm, flat_mm, turn_rad);
  append (path, at, 0.0, -radius_mm, turn_rad);
  append (path, at, half_mm, flat_mm, 0.0);
}

/* A circle with a flat above and one below, at v = +-flat_mm. */
static void
append_two_flats (HutPath *path,
                  HutPoint at,
                  double radius_mm,
                  double flat_mm)
{
  const double half_mm = sqrt (radius_mm * radius_mm - flat_mm * flat_mm);
  const double turn_rad = 2.0 * asin (flat_mm / radius_mm);

  append (path, at, half_mm, -flat_mm, turn_rad);
  append (path, at, half_mm, flat_mm, 0.0);
  append (path, at, -half_mm, flat_mm, turn_rad);
  append (path, at, -half_mm, -flat_mm, 0.0);
}

/* A circle with a notch above, 2 half_mm wide, up to v = top_mm. */
static void
append_keyed (HutPath *path,
              HutPoint at,
              double radius_mm,
              double half_mm,
              double top_mm)
{
  const double shoulder_mm = sqrt (radius_mm * radius_mm - half_mm * half_mm);
  const double turn_rad = G_PI - asin (half_mm / radius_mm);

  append (path, at, -half_mm, shoulder_mm, turn_rad);
  append (path, at, 0.0, -radius_mm, turn_rad);
  append (path, at, half_mm, shoulder_mm, 0.0);
  append (path, at, half_mm, top_mm, 0.0);
  append (path, at, -half_mm, top_mm, 0.0);
}

static HutPath *
new_rect (const HutItemCut *self,
          double radius_mm)
{
  const double half_width_mm = self->width_mm / 2.0, half_height_mm = self->height_mm / 2.0;

  return hut_path_new_rect ((HutRect) { self->at.u - half_width_mm, self->at.v - half_height_mm,
                                        self->at.u + half_width_mm, self->at.v + half_height_mm },
                            radius_mm);
}

/* A circle with something cut off or added; without corners where that is not possible. */
static HutPath *
new_altered_circle (const HutItemCut *self)
{
  HutPath *path = hut_path_new ();
  const double radius_mm = self->diameter_mm / 2.0;
  const double top_mm = self->height_mm - radius_mm; /* of what is measured from the far side */

  if (!(radius_mm > 0.0) || !isfinite (radius_mm))
    return path;
  if (self->shape == HUT_CUT_FLATTED && fabs (top_mm) < radius_mm)
    append_flatted (path, self->at, radius_mm, top_mm);
  else if (self->shape == HUT_CUT_TWO_FLATS && self->height_mm > 0.0
           && self->height_mm < self->diameter_mm)
    append_two_flats (path, self->at, radius_mm, self->height_mm / 2.0);
  else if (self->shape == HUT_CUT_KEYED && self->width_mm > 0.0
           && self->width_mm < self->diameter_mm && top_mm > radius_mm && isfinite (top_mm))
    append_keyed (path, self->at, radius_mm, self->width_mm / 2.0, top_mm);
  return path;
}

HutPath *
hut_item_cut_dup_path (const HutItemCut *self,
                       double screw_hole_mm)
{
  g_return_val_if_fail (self != NULL, NULL);

  if (self->role == HUT_CUT_SCREW)
    return hut_path_new_circle (self->at, screw_hole_mm / 2.0);
  switch (self->shape)
    {
    case HUT_CUT_RECTANGLE:
      return new_rect (self, self->radius_mm);
    case HUT_CUT_SLOT:
      return new_rect (self, MIN (self->width_mm, self->height_mm) / 2.0);
    case HUT_CUT_FLATTED:
    case HUT_CUT_TWO_FLATS:
    case HUT_CUT_KEYED:
      return new_altered_circle (self);
    case HUT_CUT_ROUND:
    default:
      return hut_path_new_circle (self->at, self->diameter_mm / 2.0);
    }
}

double
hut_item_cut_hole_mm (const HutItemCut *self,
                      HutHoleClass hole_class)
{
  g_return_val_if_fail (self != NULL && hole_class <= HUT_HOLE_COARSE, 0.0);

  const HutScrew *screw = hut_screw_get (self->thread_mm);

  if (self->role != HUT_CUT_SCREW)
    return 0.0;
  if (self->wood_screw)
    return hut_screw_pilot_mm (self->thread_mm);
  return screw != NULL ? screw->hole_mm[hole_class] : 0.0;
}

HutRect
hut_item_bounds (const HutItem *self,
                 guint leaf,
                 HutHoleClass hole_class)
{
  HutRect bounds = { 0.0, 0.0, -1.0, -1.0 };

  g_return_val_if_fail (self != NULL, bounds);

  if (leaf == 0 && self->flange_width_mm > 0.0 && self->flange_height_mm > 0.0)
    bounds = (HutRect) { -self->flange_width_mm / 2.0, -self->flange_height_mm / 2.0,
                         self->flange_width_mm / 2.0, self->flange_height_mm / 2.0 };
  for (guint i = 0; i < self->cuts->len; i++)
    {
      const HutItemCut *cut = &g_array_index (self->cuts, HutItemCut, i);
      g_autoptr(HutPath) path
          = hut_item_cut_dup_path (cut, hut_item_cut_hole_mm (cut, hole_class));
      const HutRect box = hut_path_bounds (path);

      if (cut->leaf != leaf || hut_path_get_count (path) == 0)
        continue;
      bounds = bounds.u1 < bounds.u0
                   ? box
                   : (HutRect) { MIN (bounds.u0, box.u0), MIN (bounds.v0, box.v0),
                                 MAX (bounds.u1, box.u1), MAX (bounds.v1, box.v1) };
    }
  return bounds;
}

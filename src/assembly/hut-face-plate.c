/* src/assembly/hut-face-plate.c: a thinner plate that carries an item over a larger opening.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-assembly"
#include "config.h"
#include "assembly/hut-face-plate.h"
#include <math.h>

static void
grow (HutRect *rect,
      HutRect by)
{
  if (rect->u1 < rect->u0)
    *rect = by;
  *rect = (HutRect) { MIN (rect->u0, by.u0), MIN (rect->v0, by.v0), MAX (rect->u1, by.u1),
                      MAX (rect->v1, by.v1) };
}

static HutRect
square_about (HutPoint at,
              double half_mm)
{
  return (HutRect) { at.u - half_mm, at.v - half_mm, at.u + half_mm, at.v + half_mm };
}

/* What a hole is for, with the nut behind it. */
static HutRect
cut_bounds (const HutItemCut *cut)
{
  const HutScrew *screw = cut->role == HUT_CUT_SCREW ? hut_screw_get (cut->thread_mm) : NULL;
  g_autoptr(HutPath) path = NULL;

  if (screw != NULL)
    return square_about (cut->at, MAX (screw->nut_corners_mm, screw->washer_outer_mm) / 2.0);
  path = hut_item_cut_dup_path (cut, cut->thread_mm);
  return hut_path_bounds (path);
}

/* All that stands behind the plate. */
static HutRect
behind_bounds (const HutItem *item,
               gboolean *round)
{
  HutRect rect = { 0, 0, -1, -1 };
  guint bodies = 0;

  *round = TRUE;
  for (guint i = 0; i < item->cuts->len; i++)
    {
      const HutItemCut *cut = &g_array_index (item->cuts, HutItemCut, i);

      grow (&rect, cut_bounds (cut));
      bodies += cut->role == HUT_CUT_BODY;
      if (cut->role == HUT_CUT_SCREW || cut->shape == HUT_CUT_RECTANGLE
          || cut->shape == HUT_CUT_SLOT)
        *round = FALSE;
    }
  if (bodies > 1)
    *round = FALSE;
  return rect;
}

void
hut_face_plate_find (const HutItem *item,
                     HutFacePlate *plate)
{
  HutRect behind = behind_bounds (item, &plate->round);
  double across_mm = 0.0, half_u_mm, half_v_mm;

  if (behind.u1 < behind.u0)
    behind = (HutRect) { 0, 0, 0, 0 };
  plate->middle = (HutPoint) { (behind.u0 + behind.u1) / 2.0, (behind.v0 + behind.v1) / 2.0 };
  if (item->hold == HUT_HOLD_NUT)
    across_mm = item->nut_corners_mm;
  else if (item->hold == HUT_HOLD_BODY)
    across_mm = item->body_diagonal_mm;
  plate->round = plate->round || across_mm > 0.0;
  plate->width_mm = MAX (behind.u1 - behind.u0, across_mm) + 2.0 * HUT_PLATE_ROOM_MM;
  plate->height_mm = MAX (behind.v1 - behind.v0, across_mm) + 2.0 * HUT_PLATE_ROOM_MM;
  if (plate->round)
    plate->width_mm = plate->height_mm = MAX (plate->width_mm, plate->height_mm);
  half_u_mm = MAX (plate->width_mm, item->flange_width_mm) / 2.0 + HUT_PLATE_OVERLAP_MM;
  half_v_mm = MAX (plate->height_mm, item->flange_height_mm) / 2.0 + HUT_PLATE_OVERLAP_MM;
  plate->rect = (HutRect) { plate->middle.u - half_u_mm, plate->middle.v - half_v_mm,
                            plate->middle.u + half_u_mm, plate->middle.v + half_v_mm };
  for (guint i = 0; i < HUT_PLATE_SCREWS; i++)
    plate->screws[i] = (HutPoint) {
      i % 2 == 0 ? plate->rect.u0 + HUT_PLATE_SCREW_MM : plate->rect.u1 - HUT_PLATE_SCREW_MM,
      i < 2 ? plate->rect.v0 + HUT_PLATE_SCREW_MM : plate->rect.v1 - HUT_PLATE_SCREW_MM,
    };
}

HutPath *
hut_face_plate_dup_opening (const HutFacePlate *self)
{
  const double half_u_mm = self->width_mm / 2.0, half_v_mm = self->height_mm / 2.0;

  if (self->round)
    return hut_path_new_circle (self->middle, half_u_mm);
  return hut_path_new_rect ((HutRect) { self->middle.u - half_u_mm, self->middle.v - half_v_mm,
                                        self->middle.u + half_u_mm, self->middle.v + half_v_mm },
                            HUT_PLATE_ROOM_MM);
}

HutPath *
hut_face_plate_dup_outline (const HutFacePlate *self)
{
  return hut_path_new_rect (self->rect, HUT_PLATE_RADIUS_MM);
}

HutPath *
hut_face_plate_dup_screw (const HutFacePlate *self,
                          guint index,
                          HutHoleClass hole_class)
{
  const HutScrew *screw = hut_screw_get (HUT_PLATE_THREAD_MM);

  g_return_val_if_fail (index < HUT_PLATE_SCREWS && screw != NULL, NULL);

  return hut_path_new_circle (self->screws[index], screw->hole_mm[hole_class] / 2.0);
}

/* src/assembly/hut-spot-place.c: where a spot puts its part, and whether the part has room there.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-assembly"
#include "config.h"
#include "assembly/hut-spot-place.h"
#include "geom/hut-geos.h"
#include <math.h>

#define DEGREE_RAD (G_PI / 180.0)
#define FULL_TURN_DEG 360.0
/* Turns are rounded to this, degrees, so that quarter turns stay exact. Own choice: a tenth of a
 * thousandth of a degree moves the end of a 1 m part by 2 um. */
#define TURN_STEP_DEG 1e-4

const HutPart *
hut_spot_get_part (const HutSpot *self,
                   const HutPartSet *parts,
                   guint *index)
{
  g_return_val_if_fail (self != NULL && parts != NULL, NULL);

  for (guint i = 0; i < parts->parts->len; i++)
    {
      const HutPart *part = g_ptr_array_index (parts->parts, i);

      if (part->bought || g_strcmp0 (part->id, self->part) != 0)
        continue;
      if (index != NULL)
        *index = i;
      return part;
    }
  return NULL;
}

gboolean
hut_spot_has_size (const HutSpot *self,
                   const HutPart *part)
{
  g_return_val_if_fail (self != NULL && part != NULL, FALSE);

  const HutRect box = hut_region_bounds (part->region);

  return fabs (box.u1 - box.u0 - self->width_mm) < HUT_GRID_MM
         && fabs (box.v1 - box.v0 - self->height_mm) < HUT_GRID_MM;
}

static HutRect
turned_box (const HutPart *part,
            double turn_rad)
{
  const HutPlacement turn = { .turn_rad = turn_rad };
  g_autoptr(HutPath) outer = hut_path_dup_placed (part->region->outer, &turn);

  return hut_path_bounds (outer);
}

HutPlacement
hut_spot_placement (const HutSpot *self,
                    const HutPart *part)
{
  g_return_val_if_fail (self != NULL && part != NULL, ((HutPlacement) { 0 }));

  const double turn_rad = self->turn_deg * DEGREE_RAD;
  const HutRect box = turned_box (part, turn_rad);

  return (HutPlacement) {
    .turn_rad = turn_rad,
    .shift = { self->left_mm - box.u0, self->front_mm - box.v0 },
  };
}

HutSpot *
hut_spot_new_at (const HutPart *part,
                 guint sheet,
                 const HutPlacement *placement,
                 gboolean kept)
{
  g_return_val_if_fail (part != NULL && placement != NULL, NULL);

  HutSpot *self = hut_spot_new (part->id);
  const HutRect plain = hut_region_bounds (part->region);
  const HutRect box = turned_box (part, placement->turn_rad);
  const double turn_deg
      = round (placement->turn_rad / DEGREE_RAD / TURN_STEP_DEG) * TURN_STEP_DEG;

  self->sheet = sheet;
  self->left_mm = hut_snap_mm (box.u0 + placement->shift.u);
  self->front_mm = hut_snap_mm (box.v0 + placement->shift.v);
  self->turn_deg = turn_deg - FULL_TURN_DEG * floor (turn_deg / FULL_TURN_DEG);
  self->width_mm = hut_snap_mm (plain.u1 - plain.u0);
  self->height_mm = hut_snap_mm (plain.v1 - plain.v0);
  self->kept = kept;
  return self;
}

/* ---- room ------------------------------------------------------------------------------------ */

void
hut_laid_cut_init (HutLaidCut *self,
                   const HutPart *part,
                   const HutPlacement *placement)
{
  g_return_if_fail (self != NULL && part != NULL && placement != NULL);

  g_autoptr(HutRegion) cut = hut_part_dup_cut (part, NULL);

  self->cut = hut_region_dup_placed (cut != NULL ? cut : part->region, placement);
  self->box = hut_region_bounds (self->cut);
}

void
hut_laid_cut_clear (HutLaidCut *self)
{
  g_clear_pointer (&self->cut, hut_region_free);
}

static double
box_gap_mm (HutRect a,
            HutRect b)
{
  const double across_mm = MAX (a.u0 - b.u1, b.u0 - a.u1);
  const double along_mm = MAX (a.v0 - b.v1, b.v0 - a.v1);

  return MAX (across_mm, along_mm);
}

double
hut_laid_cut_gap_mm (const HutLaidCut *a,
                     const HutLaidCut *b,
                     double enough_mm)
{
  g_return_val_if_fail (a != NULL && b != NULL, 0.0);

  const double boxes_mm = box_gap_mm (a->box, b->box);

  if (boxes_mm > enough_mm)
    return boxes_mm;
  /* What the engine refuses counts as lying on each other: that is seen, and blocks. */
  return MAX (hut_geos_distance_mm (a->cut, b->cut, NULL), 0.0);
}

double
hut_laid_cut_out_mm (const HutLaidCut *self,
                     HutRect usable)
{
  g_return_val_if_fail (self != NULL, 0.0);

  return MAX (MAX (usable.u0 - self->box.u0, self->box.u1 - usable.u1),
              MAX (usable.v0 - self->box.v0, self->box.v1 - usable.v1));
}

HutRect
hut_cutter_usable (const HutCutter *self,
                   const HutStock *stock)
{
  g_return_val_if_fail (self != NULL && stock != NULL, ((HutRect) { 0, 0, -1, -1 }));

  double width_mm, depth_mm;

  hut_cutter_sheet (self, stock, &width_mm, &depth_mm);
  return (HutRect) { self->margin_mm, self->margin_mm, width_mm - self->margin_mm,
                     depth_mm - self->margin_mm };
}

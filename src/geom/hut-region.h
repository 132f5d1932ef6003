/* src/geom/hut-region.h: an outline with holes.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "geom/hut-path.h"

/* One connected piece of sheet: outer counter-clockwise, holes (of HutPath) clockwise and inside
 * it. */
typedef struct
{
  HutPath *outer;
  GPtrArray *holes;
} HutRegion;

/* @outer: (transfer full): turned counter-clockwise if it is not */
HutRegion *hut_region_new (HutPath *outer) G_GNUC_WARN_UNUSED_RESULT;
HutRegion *hut_region_copy (const HutRegion *self) G_GNUC_WARN_UNUSED_RESULT;
void hut_region_free (HutRegion *self);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (HutRegion, hut_region_free)

/* @hole: (transfer full): turned clockwise if it is not */
void hut_region_take_hole (HutRegion *self, HutPath *hole);
double hut_region_area_mm2 (const HutRegion *self);
/* Sum of all outlines, mm: what a cutter has to travel. */
double hut_region_length_mm (const HutRegion *self);
HutRect hut_region_bounds (const HutRegion *self);
/* TRUE in the material or on its border, which is HUT_BORDER_MM wide to each side. */
gboolean hut_region_contains (const HutRegion *self, HutPoint p);
HutRegion *hut_region_dup_placed (const HutRegion *self,
                                  const HutPlacement *placement) G_GNUC_WARN_UNUSED_RESULT;

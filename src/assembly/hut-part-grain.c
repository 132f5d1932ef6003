/* src/assembly/hut-part-grain.c: how a part may lie on a sheet with grain.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-assembly"
#include "config.h"
#include "assembly/hut-part-grain.h"

HutGrainRule
hut_part_grain_rule (const HutPart *self)
{
  g_return_val_if_fail (self != NULL, HUT_GRAIN_RULE_FREE);

  return self->kind == HUT_PART_PANEL && self->stock->grain != HUT_GRAIN_NONE
             ? self->stock->grain_rule
             : HUT_GRAIN_RULE_FREE;
}

/* Whether the part, which has a rule, keeps it at an odd number of quarter turns; else it does at
 * an even one. */
static gboolean
turns_by_odd_quarters (const HutPart *self,
                       const HutCutter *cutter)
{
  const gboolean turned = hut_cutter_turns_sheet (cutter, self->stock);
  const gboolean grain_runs_deep = (self->stock->grain == HUT_GRAIN_DEPTH) != turned;

  return grain_runs_deep == (hut_part_grain_rule (self) == HUT_GRAIN_RULE_ACROSS);
}

gboolean
hut_part_keeps_grain (const HutPart *self,
                      const HutCutter *cutter)
{
  g_return_val_if_fail (self != NULL && cutter != NULL, TRUE);

  const HutRect box = hut_region_bounds (self->region);
  double room_width_mm, room_depth_mm;

  if (hut_part_grain_rule (self) == HUT_GRAIN_RULE_FREE)
    return TRUE;
  hut_cutter_room (cutter, self->stock, &room_width_mm, &room_depth_mm);
  return turns_by_odd_quarters (self, cutter)
             ? box.v1 - box.v0 <= room_width_mm && box.u1 - box.u0 <= room_depth_mm
             : box.u1 - box.u0 <= room_width_mm && box.v1 - box.v0 <= room_depth_mm;
}

gboolean
hut_part_may_turn (const HutPart *self,
                   const HutCutter *cutter,
                   guint quarters)
{
  g_return_val_if_fail (self != NULL && cutter != NULL, FALSE);

  return hut_part_grain_rule (self) == HUT_GRAIN_RULE_FREE || !hut_part_keeps_grain (self, cutter)
         || (quarters % 2 != 0) == turns_by_odd_quarters (self, cutter);
}

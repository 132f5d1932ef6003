/* src/sheets/hut-sheet-pin.c: a part that stays where its owner laid it on a sheet.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-sheets"
#include "config.h"
#include "sheets/hut-sheet-pin.h"

static HutRect
turned_box (const HutPart *part,
            double turn_rad)
{
  const HutPlacement turn = { .turn_rad = turn_rad };
  g_autoptr(HutPath) outer = hut_path_dup_placed (part->region->outer, &turn);

  return hut_path_bounds (outer);
}

HutSheetPin
hut_sheet_pin_at (const HutPart *part,
                  guint part_index,
                  guint number,
                  const HutPlacement *placement)
{
  g_return_val_if_fail (part != NULL && placement != NULL, ((HutSheetPin) { 0 }));

  const HutRect box = turned_box (part, placement->turn_rad);

  return (HutSheetPin) {
    part_index,
    number,
    placement->turn_rad,
    { box.u0 + placement->shift.u, box.v0 + placement->shift.v },
  };
}

HutPlacement
hut_sheet_pin_placement (const HutSheetPin *self,
                         const HutPart *part)
{
  g_return_val_if_fail (self != NULL && part != NULL, ((HutPlacement) { 0 }));

  const HutRect box = turned_box (part, self->turn_rad);

  return (HutPlacement) {
    .turn_rad = self->turn_rad,
    .shift = { self->corner.u - box.u0, self->corner.v - box.v0 },
  };
}

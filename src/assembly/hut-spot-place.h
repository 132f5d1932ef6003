/* src/assembly/hut-spot-place.h: where a spot puts its part, and whether the part has room there.
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A spot is of a part by its id. When the part is gone, nothing lies there, and the spot waits: it
 * holds again when the part comes back. When the part has another size, its box keeps the corner that
 * it had at the front left. Neither is an error; the checks say it of spots that are kept. */
#pragma once
#include "assembly/hut-part.h"

/* (transfer none) (nullable): the part that is cut and lies there; NULL when there is none. */
const HutPart *hut_spot_get_part (const HutSpot *self, const HutPartSet *parts, guint *index);
/* TRUE when the part's box is as large as it was when it was laid, to the grid. */
gboolean hut_spot_has_size (const HutSpot *self, const HutPart *part);
/* Panel frame -> sheet frame. */
HutPlacement hut_spot_placement (const HutSpot *self, const HutPart *part);
/* (transfer full): the spot of a part that lies so on that sheet; its corner is on the grid. */
HutSpot *hut_spot_new_at (const HutPart *part,
                          guint sheet,
                          const HutPlacement *placement,
                          gboolean kept) G_GNUC_WARN_UNUSED_RESULT;

/* A part where it lies, ready to be compared with others. */
typedef struct
{
  HutRegion *cut; /* the tool's path; where kerf swallows something of it the part's outline */
  HutRect box;    /* of it, mm, sheet frame */
} HutLaidCut;

/* Reckons the part's cut line where the placement puts it. */
void hut_laid_cut_init (HutLaidCut *self, const HutPart *part, const HutPlacement *placement);
/* Frees what is in it; all-zero is fine. */
void hut_laid_cut_clear (HutLaidCut *self);
G_DEFINE_AUTO_CLEANUP_CLEAR_FUNC (HutLaidCut, hut_laid_cut_clear)

/**
 * hut_laid_cut_gap_mm:
 * @enough_mm: more need not be told apart
 *
 * Returns: the distance of two cut lines, mm, 0 when they meet or one part lies on the other; any
 *   value over @enough_mm when they are further apart than that
 */
double hut_laid_cut_gap_mm (const HutLaidCut *a, const HutLaidCut *b, double enough_mm);
/* How far the cut line sticks out of the usable rectangle, mm; <= 0 inside. */
double hut_laid_cut_out_mm (const HutLaidCut *self, HutRect usable);

/* Where cut lines may run on a sheet of that stock: inside it by the cutter's margin, mm, sheet
 * frame. */
HutRect hut_cutter_usable (const HutCutter *self, const HutStock *stock);

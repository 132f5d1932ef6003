/* src/sheets/hut-sheet.h: parts laid on sheets that the bed takes.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "assembly/hut-part.h"

typedef struct
{
  guint part;             /* index in the part set */
  HutPlacement placement; /* panel frame -> sheet frame; never mirrored: outside face up */
} HutLaidPart;

typedef struct
{
  const HutStock *stock;     /* lent */
  guint number;              /* 1.. within its stock */
  double width_mm, depth_mm; /* the sheet as it lies on the bed; (0,0) its front left corner */
  GArray *laid;              /* HutLaidPart */
} HutSheet;

typedef struct
{
  GPtrArray *sheets;   /* HutSheet */
  GArray *unplaced;    /* guint part indices that fit no sheet */
} HutSheetSet;

/* Simple shelf packing. Pure; @parts must outlive the result. Bought parts are left out.
 * A sheet is hut_cutter_sheet (). Spacing: the cutter's part gap between cut lines; cut lines stay
 * inside the sheet by the cutter's margin: see hut_sheet_usable (). */
HutSheetSet *hut_sheet_set_new (const HutAssembly *assembly,
                                const HutPartSet *parts) G_GNUC_WARN_UNUSED_RESULT;
void hut_sheet_set_free (HutSheetSet *self);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (HutSheetSet, hut_sheet_set_free)

/**
 * hut_sheet_usable:
 * @cutter: the bed
 * @stock: the sheet, lying on the bed with its front left corner in the bed's
 *
 * Where cut lines may run: inside the sheet by the cutter's margin. It is one kerf wider than
 * hut_cutter_room (), which is for the parts themselves.
 *
 * Returns: mm, sheet frame; empty (u1 < u0 or v1 < v0) when the sheet is too small for anything
 */
HutRect hut_sheet_usable (const HutCutter *cutter, const HutStock *stock);

/* (transfer full): the tool's path round a laid part, sheet frame; NULL when kerf or fit swallow
 * something (HUT_GEOM_ERROR_*). */
HutRegion *hut_laid_part_dup_cut (const HutLaidPart *self,
                                  const HutPartSet *parts,
                                  GError **error) G_GNUC_WARN_UNUSED_RESULT;

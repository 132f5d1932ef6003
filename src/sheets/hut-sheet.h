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
 * A sheet is the smaller of stock sheet and bed on each axis. Spacing: the cutter's part gap between
 * cut lines; cut lines stay inside the sheet by the cutter's margin (bed) and by the kerf. */
HutSheetSet *hut_sheet_set_new (const HutAssembly *assembly, const HutPartSet *parts) G_GNUC_WARN_UNUSED_RESULT;
void hut_sheet_set_free (HutSheetSet *self);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (HutSheetSet, hut_sheet_set_free)

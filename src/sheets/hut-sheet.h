/* src/sheets/hut-sheet.h: parts laid on sheets that the bed takes.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "assembly/hut-part.h"
#include "sheets/hut-outline-pack.h"
#include "sheets/hut-sheet-pin.h"

typedef struct
{
  guint part;             /* index in the part set */
  HutPlacement placement; /* panel frame -> sheet frame; never mirrored: outside face up */
  gboolean pinned;        /* it lies where the owner put it: see HutSheetPin */
} HutLaidPart;

typedef struct
{
  const HutStock *stock;     /* lent */
  const HutCutter *cutter;   /* lent */
  guint number;              /* 1.. within its stock */
  double width_mm, depth_mm; /* the sheet as it lies on the bed; (0,0) its front left corner */
  GArray *laid;              /* HutLaidPart */
} HutSheet;

typedef struct
{
  GPtrArray *sheets;   /* HutSheet */
  GArray *unplaced;    /* guint part indices that fit no sheet */
} HutSheetSet;

/* An empty sheet as the cutter takes it. */
HutSheet *hut_sheet_new (const HutCutter *cutter,
                         const HutStock *stock,
                         guint number) G_GNUC_WARN_UNUSED_RESULT;
void hut_sheet_free (HutSheet *self);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (HutSheet, hut_sheet_free)

/* Work that hut_sheet_set_new () does at most, in the units of hut_outline_pack_run (). Own choice:
 * well under a second. */
#define HUT_SHEET_WORK G_GUINT64_CONSTANT (3000000)

/**
 * hut_sheet_set_new_within:
 * @parts: must outlive the result; bought parts are left out
 * @work_limit: shared evenly by the stocks: see hut_outline_pack_run ()
 * @watch: (nullable): told how far it is; may stop it, and then the best so far is returned
 *
 * Parts are packed by their true outlines, small ones also in the waste of windows, at right angles,
 * or as the cutter allows, and as their grain asks for where they fit that way. A sheet is hut_cutter_sheet (). Spacing: the cutter's part gap between cut
 * lines; cut lines stay inside the sheet by the cutter's margin: see hut_sheet_usable ().
 * Pure while @watch does not stop it: same design, same sheets. Never more sheets than
 * hut_shelf_pack ().
 *
 * Returns: (transfer full): whole in any case
 */
HutSheetSet *hut_sheet_set_new_within (const HutAssembly *assembly,
                                       const HutPartSet *parts,
                                       guint64 work_limit,
                                       const HutPackWatch *watch) G_GNUC_WARN_UNUSED_RESULT;
/**
 * hut_sheet_set_new_pinned:
 * @pins: (nullable) (element-type HutSheetPin): what the owner laid by hand; those of bought or
 *   unknown parts, and second ones of the same part, are passed over
 *
 * The same around parts that stay where they are pinned, even where they overlap each other or leave
 * the sheet: what is not pinned keeps clear of them, and fills their windows' waste. Sheets that stay
 * empty are left out and the ones behind them numbered anew: a pin's sheet may so get a lower number.
 * Sheets may be more than hut_shelf_pack () needs.
 */
HutSheetSet *hut_sheet_set_new_pinned (const HutAssembly *assembly,
                                       const HutPartSet *parts,
                                       const GArray *pins,
                                       guint64 work_limit,
                                       const HutPackWatch *watch) G_GNUC_WARN_UNUSED_RESULT;
/* The same within HUT_SHEET_WORK: what the whole program shows and writes. */
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

/* (transfer full): hut_part_dup_cut () round a laid part, sheet frame; NULL when kerf or fit swallow
 * something (HUT_GEOM_ERROR_*). */
HutRegion *hut_laid_part_dup_cut (const HutLaidPart *self,
                                  const HutPartSet *parts,
                                  GError **error) G_GNUC_WARN_UNUSED_RESULT;

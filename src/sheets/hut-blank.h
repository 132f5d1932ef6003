/* src/sheets/hut-blank.h: how bought sheets are sawn down to what the bed takes.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "assembly/hut-part.h"

/* Width of a saw cut, mm. Common practice, no source: blades of panel saws and hand-held circular saws
 * cut 2.2 to 4. */
#define HUT_SAW_KERF_MM 4.0

/* A straight cut through one piece from edge to edge: its middle, mm, sheet frame. */
typedef struct
{
  HutPoint from, to;
} HutSawCut;

/* The sheet as it is bought: width along u, depth along v, (0, 0) in its corner. */
typedef struct
{
  double width_mm, depth_mm; /* of a blank, as it lies on the bed */
  GArray *blanks;            /* HutRect: where they lie on the bought sheet */
  GArray *cuts;              /* HutSawCut, in order: each goes through a piece that the ones before left */
} HutBlankPlan;

/**
 * hut_blank_plan_new:
 * @cutter: the bed
 * @stock: its bought sheet
 *
 * Blanks are hut_cutter_sheet (). As many as can be found are sawn from a sheet by cuts from edge to edge,
 * in both directions unless the stock has grain. A sheet that goes on the bed whole is one blank
 * without a cut. Not promised: the most where they are small (over 60 on a sheet, they lie in rows).
 *
 * Returns: (transfer full): at least one blank
 */
HutBlankPlan *hut_blank_plan_new (const HutCutter *cutter,
                                  const HutStock *stock) G_GNUC_WARN_UNUSED_RESULT;
void hut_blank_plan_free (HutBlankPlan *self);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (HutBlankPlan, hut_blank_plan_free)

/* Sheets to buy for so many blanks (count). */
guint hut_blank_plan_count_sheets (const HutBlankPlan *self, guint blank_count);

/* src/export/hut-sheet-figures.h: what cutting a sheet takes.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "sheets/hut-sheet.h"

typedef struct
{
  double used_ratio;    /* area of its parts, holes left out, to that of the sheet */
  double cut_length_mm; /* all that is cut, once */
  double travel_mm;     /* between the cuts, from the front left corner to the last start */
  double cutting_s;     /* cuts in all passes at the stock's speed; no travel, no scoring; 0 unknown */
  guint pierces;        /* cuts that the tool starts anew, per pass */
} HutSheetFigures;

/**
 * hut_sheet_get_figures:
 * @figures: (out caller-allocates): untouched on error
 * @error: as hut_sheet_dup_tool_paths (): then there is nothing that could be cut
 *
 * Returns: FALSE on error
 */
gboolean hut_sheet_get_figures (const HutPartSet *parts,
                                const HutSheet *sheet,
                                HutSheetFigures *figures,
                                GError **error);

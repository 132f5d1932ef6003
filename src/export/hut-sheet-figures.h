/* src/export/hut-sheet-figures.h: what cutting a sheet takes.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "sheets/hut-sheet.h"

typedef struct
{
  double used_ratio;    /* area of its parts, holes left out, to that of the sheet */
  double cut_length_mm; /* all that is cut, once */
  double travel_mm;     /* between the cuts, from the front left corner to the last start */
  double cutting_s;     /* cuts in all passes at the stock's speed; no travel, no scoring; 0
                         * unknown */
  double time_s;        /* all moves with the cutter's acceleration: see hut_tool_program_time_s ()
                         * */
  guint pierces;        /* cuts that the tool starts anew, per pass */
  guint tabs;
} HutSheetFigures;

/* What all sheets take. */
typedef struct
{
  guint sheets;         /* as they lie on the bed */
  guint unknown;        /* of these, sheets that cannot be cut: left out of all that follows but
                         * price */
  double used_ratio;    /* area of the parts to that of the sheets */
  double cut_length_mm;
  double time_s;
  double price;         /* of the stock sheets to buy, in the owner's currency, no unit */
  gboolean price_known; /* FALSE: a stock that is needed has no price */
  guint pierces;
} HutSheetTotals;

/**
 * hut_stock_sheets_to_buy:
 * @count: sheets of that stock as they lie on the bed
 *
 * As many as hut_blank_plan_new () saws from each stock sheet; the rest of it is waste.
 *
 * Returns: stock sheets
 */
guint hut_stock_sheets_to_buy (const HutStock *stock, const HutCutter *cutter, guint count);
/* (out caller-allocates) @totals */
void hut_sheet_set_get_totals (const HutPartSet *parts,
                               const HutSheetSet *sheets,
                               HutSheetTotals *totals);

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

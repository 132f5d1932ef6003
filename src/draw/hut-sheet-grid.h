/* src/draw/hut-sheet-grid.h: where each sheet is in the view of the sheets.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "sheets/hut-sheet.h"

/* Rows and columns of equal cells, each with a title over its sheet. */
typedef struct
{
  guint columns; /* 0: there is nothing to see */
  double scale_px_per_mm;
  double cell_width_px, cell_height_px;
  double left_px, top_px;
  double title_px, gap_px;
  double foot_px; /* what is below all sheets; 0: nothing is told there */
} HutSheetGrid;

/* The number of columns that gives the largest scale. @text_px: height of normal text */
HutSheetGrid hut_sheet_grid_find (const HutSheetSet *sheets,
                                  double text_px,
                                  double width_px,
                                  double height_px);
/* The pixel of a sheet's front left corner; its v runs upwards from there. */
HutPoint hut_sheet_grid_front (const HutSheetGrid *self, const HutSheetSet *sheets, guint index);
/* The sheet under a pixel, and which of its points, mm; -1 when there is none. */
int hut_sheet_grid_pick_sheet (const HutSheetGrid *self,
                               const HutSheetSet *sheets,
                               HutPoint px,
                               HutPoint *at_mm);
/* The laid part whose material is at a point of a sheet, the topmost first; -1 when there is none. */
int hut_sheet_pick_part (const HutSheet *sheet, const HutPartSet *parts, HutPoint at_mm);

/* src/sheets/hut-sheet-pin.h: a part that stays where its owner laid it on a sheet.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "assembly/hut-part.h"

/* Sheets of one stock that a pin can name (count); higher numbers are taken as this. Own choice: more
 * than anybody cuts for one enclosure. */
#define HUT_SHEET_PIN_NUMBER_MAX 999

/* All-zero: the first part in the corner of the first sheet. */
typedef struct
{
  guint part;       /* index in the part set */
  guint number;     /* of the sheet within the part's stock, 1..; 0 is taken as 1 */
  double turn_rad;  /* counter-clockwise from the panel frame; quarter turns, or any */
  HutPoint corner;  /* where the left lower corner of the turned part's box lies on the sheet, mm */
} HutSheetPin;

/* The pin that keeps a part where @placement puts it on sheet @number. @part_index: of @part */
HutSheetPin hut_sheet_pin_at (const HutPart *part,
                              guint part_index,
                              guint number,
                              const HutPlacement *placement);
/* Panel frame -> sheet frame. @part: the pinned one */
HutPlacement hut_sheet_pin_placement (const HutSheetPin *self, const HutPart *part);

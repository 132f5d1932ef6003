/* src/sheets/hut-spot-pin.h: which of the design's spots the packing has to respect.
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Spots that are kept always hold, wherever they are. The others are how a stock's parts lay when the
 * owner last moved one or took a layout over: they hold together or not at all. They do while each
 * part of the stock that a sheet takes has a spot and the size that it had, and they keep the part
 * gap from each other inside the usable area; then one that is in the way of a kept part gives way
 * alone. Else the whole stock is laid out anew, around what is kept. */
#pragma once
#include "sheets/hut-sheet-pin.h"

/* (transfer full) (element-type HutSheetPin): pins of the spots that hold, in the order of the
 * parts. */
GArray *hut_sheet_pins_new_from_spots (const HutAssembly *assembly,
                                       const HutPartSet *parts) G_GNUC_WARN_UNUSED_RESULT;

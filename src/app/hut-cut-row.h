/* src/app/hut-cut-row.h: one hole of an item that is being measured.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "app/hut-draft-row.h"

#define HUT_TYPE_CUT_ROW (hut_cut_row_get_type ())
G_DECLARE_FINAL_TYPE (HutCutRow, hut_cut_row, HUT, CUT_ROW, HutDraftRow)

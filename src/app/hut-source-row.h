/* src/app/hut-source-row.h: where some numbers of an item come from.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "app/hut-draft-row.h"

#define HUT_TYPE_SOURCE_ROW (hut_source_row_get_type ())
G_DECLARE_FINAL_TYPE (HutSourceRow, hut_source_row, HUT, SOURCE_ROW, HutDraftRow)

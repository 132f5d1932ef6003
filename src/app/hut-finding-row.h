/* src/app/hut-finding-row.h: one finding: severity as shape and word, number as on the canvas,
 * sentence. SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "app/hut-list-row.h"

#define HUT_TYPE_FINDING_ROW (hut_finding_row_get_type ())
G_DECLARE_FINAL_TYPE (HutFindingRow, hut_finding_row, HUT, FINDING_ROW, HutListRow)

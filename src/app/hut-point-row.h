/* src/app/hut-point-row.h: one point of a fan's curve, while it is being measured.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "app/hut-draft-row.h"

#define HUT_TYPE_POINT_ROW (hut_point_row_get_type ())
G_DECLARE_FINAL_TYPE (HutPointRow, hut_point_row, HUT, POINT_ROW, HutDraftRow)

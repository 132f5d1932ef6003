/* src/app/hut-space-row.h: one space that an item takes, while it is being measured.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "app/hut-draft-row.h"

#define HUT_TYPE_SPACE_ROW (hut_space_row_get_type ())
G_DECLARE_FINAL_TYPE (HutSpaceRow, hut_space_row, HUT, SPACE_ROW, HutDraftRow)

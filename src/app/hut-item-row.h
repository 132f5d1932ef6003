/* src/app/hut-item-row.h: one opening or window in a list: its shape, name, and where it is.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "app/hut-list-row.h"

#define HUT_TYPE_ITEM_ROW (hut_item_row_get_type ())
G_DECLARE_FINAL_TYPE (HutItemRow, hut_item_row, HUT, ITEM_ROW, HutListRow)

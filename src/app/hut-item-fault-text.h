/* src/app/hut-item-fault-text.h: what is wrong with an item that is being measured, in plain words.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "app/hut-units.h"
#include "catalog/hut-item-format.h"

/* (transfer full): one translated sentence; NULL for HUT_ITEM_FAULT_NONE. */
char *hut_item_fault_dup_text (const HutItem *item,
                               const HutItemFault *fault,
                               HutUnits units) G_GNUC_WARN_UNUSED_RESULT;

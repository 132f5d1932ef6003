/* src/catalog/hut-item-format.h: <item> as a table, for the catalogue's files and for designs.
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * catalog.rng and design.rng say the same in RELAX NG. */
#pragma once
#include "catalog/hut-item.h"
#include "format/hut-format.h"

/* Its struct is a HutItem. The reader refuses an item whose numbers cannot all be right: see
 * hut_item_dup_fault (). */
extern const HutElementFormat hut_item_format;

/* `new_item` of a row that holds items. (transfer full) */
gpointer hut_item_format_new (void) G_GNUC_WARN_UNUSED_RESULT;

/* What is wrong with an item whose members are within their ranges: a cut that makes no hole or
 * lies outside the flange, a thickness range that runs backwards, a fan without a falling curve,
 * ... Returns: (transfer full) (nullable): "what is wrong; allowed: ..." */
char *hut_item_dup_fault (const HutItem *self) G_GNUC_WARN_UNUSED_RESULT;

/* The word of a group in files: "fan". (transfer none) */
const char *hut_item_group_to_string (HutItemGroup group);

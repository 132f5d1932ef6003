/* src/sheets/hut-shelf-pack.h: boxes of parts on shelves.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "sheets/hut-sheet.h"

/**
 * hut_shelf_pack:
 * @indices: (element-type guint): the parts, all of @stock
 *
 * The plain way to lay parts out, which takes no time: what hut_sheet_set_new () must not do worse
 * than. Parts that fit no sheet are left out.
 *
 * Returns: (transfer full) (element-type HutSheet): numbered from 1
 */
GPtrArray *hut_shelf_pack (const HutPartSet *parts,
                           const GArray *indices,
                           const HutCutter *cutter,
                           const HutStock *stock) G_GNUC_WARN_UNUSED_RESULT;

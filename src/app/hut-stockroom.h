/* src/app/hut-stockroom.h: the catalogue with the user's own items, for all windows.
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Signal "changed": own items came or went; pointers to items are no longer good. */
#pragma once
#include "catalog/hut-catalog.h"
#include <glib-object.h>

#define HUT_TYPE_STOCKROOM (hut_stockroom_get_type ())
G_DECLARE_FINAL_TYPE (HutStockroom, hut_stockroom, HUT, STOCKROOM, GObject)

/* @folder: where the user's items lie */
HutStockroom *hut_stockroom_new (const char *folder) G_GNUC_WARN_UNUSED_RESULT;
/* (transfer none): the one of the program, in the user's data folder; main thread only. */
HutStockroom *hut_stockroom_get_default (void);

/* (transfer none), valid until "changed". */
const HutCatalog *hut_stockroom_get_catalog (HutStockroom *self);
/* (transfer none) (element-type utf8), valid until "changed": what could not be read of the user's
 * own items. */
const GPtrArray *hut_stockroom_get_problems (HutStockroom *self);

/* See hut_catalog_save_own () and hut_catalog_remove_own (). */
gboolean hut_stockroom_save (HutStockroom *self, const HutItem *item, GError **error);
gboolean hut_stockroom_remove (HutStockroom *self, const char *id, GError **error);

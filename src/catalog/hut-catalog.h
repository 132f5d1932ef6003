/* src/catalog/hut-catalog.h: all items that can be placed: the shipped ones and the user's own.
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Own items lie one to a file, ID.xml, in a folder that the caller names. */
#pragma once
#include "catalog/hut-item.h"

typedef struct _HutCatalog HutCatalog;

/* The shipped items. */
HutCatalog *hut_catalog_new (void) G_GNUC_WARN_UNUSED_RESULT;
void hut_catalog_free (HutCatalog *self);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (HutCatalog, hut_catalog_free)

/**
 * hut_catalog_add_folder:
 * @path: a folder; one that is not there holds nothing
 * @problems: (element-type utf8): gets "FILE:LINE: what is wrong; allowed: ..." for each item or file
 *   that cannot be used; the rest is loaded
 *
 * Adds the items of all *.xml in it, by name. An own item takes the place of a shipped one of its id;
 * of two own items of one id the first is taken, and the other one is a problem.
 */
void hut_catalog_add_folder (HutCatalog *self, const char *path, GPtrArray *problems);

/* How many items; they come by group, then in the order of the catalogue, own ones last. */
guint hut_catalog_get_count (const HutCatalog *self);
/* (transfer none), valid as long as the catalogue; NULL when there is none. */
const HutItem *hut_catalog_get_nth (const HutCatalog *self, guint index);
const HutItem *hut_catalog_get (const HutCatalog *self, const char *id);
/* TRUE for an item that came from the user's folder. */
gboolean hut_catalog_is_own (const HutCatalog *self, const HutItem *item);

/* The heading of a group, marked for translation: its caller translates. (transfer none) */
const char *hut_item_group_title (HutItemGroup group);

/**
 * hut_catalog_save_own:
 * @folder: made when it is not there
 * @error: HUT_FILE_ERROR_VALUE when the item could not be loaded again; HUT_FILE_ERROR_IO
 *
 * Writes FOLDER/ID.xml whole or not at all.
 */
gboolean hut_catalog_save_own (const char *folder, const HutItem *item, GError **error);

/* Removes FOLDER/ID.xml; HUT_FILE_ERROR_IO. */
gboolean hut_catalog_remove_own (const char *folder, const char *id, GError **error);

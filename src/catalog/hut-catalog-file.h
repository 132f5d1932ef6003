/* src/catalog/hut-catalog-file.h: items of hardware as XML, from and to memory.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "catalog/hut-item.h"
#include "format/hut-file-error.h"
#include "format/hut-format.h"

#define HUT_CATALOG_NS "urn:hutchwright:catalog:1"
#define HUT_CATALOG_VERSION 1

/* Root element <catalog>, whose struct is this one. */
typedef struct
{
  GPtrArray *items; /* HutItem */
} HutCatalogFile;

extern const HutElementFormat hut_catalog_format;

/**
 * hut_catalog_file_read:
 * @data: (array length=size): the bytes of a file
 * @name: what messages call the file
 * @problems: (element-type utf8): gets one line for each item that cannot be used, in the order of
 *   the file: "NAME:LINE: what is wrong; allowed: ..."
 *
 * One item that is wrong costs no other. Of two items with one id the first is taken.
 *
 * Returns: (transfer full) (element-type HutItem): the items that are right; frees its members
 */
GPtrArray *hut_catalog_file_read (const char *data,
                                  gsize size,
                                  const char *name,
                                  GPtrArray *problems) G_GNUC_WARN_UNUSED_RESULT;

/* A whole file with these items. (transfer full) */
char *hut_catalog_file_to_xml (GPtrArray *items) G_GNUC_WARN_UNUSED_RESULT;

/* tests/catalog/hut-item-text.h: small catalogues as text.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "catalog/hut-catalog-file.h"
#include <string.h>

#define CATALOG_HEAD "<catalog xmlns=\"" HUT_CATALOG_NS "\" version=\"1\">\n"
#define CATALOG_TAIL "\n</catalog>\n"

/* Reads a catalogue whose items, from line 2 on, are @inside. (transfer full) */
static inline GPtrArray *
read_catalog (const char *inside,
              GPtrArray *problems)
{
  g_autofree char *text = g_strconcat (CATALOG_HEAD, inside, CATALOG_TAIL, NULL);

  return hut_catalog_file_read (text, strlen (text), "f", problems);
}

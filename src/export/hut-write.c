/* src/export/hut-write.c: what the writers of single files share.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-export"
#include "config.h"
#include "export/hut-write.h"

char *
hut_sheet_dup_stem (const HutSheet *sheet)
{
  g_return_val_if_fail (sheet != NULL, NULL);

  return g_strdup_printf ("%s-sheet-%u", sheet->stock->id, sheet->number);
}

/* src/export/hut-write.c: what the writers of single files share.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-export"
#include "config.h"
#include "export/hut-write.h"

char *
hut_sheet_dup_stem (const HutSheet *sheet)
{
  g_return_val_if_fail (sheet != NULL, NULL);

  return g_strdup_printf ("%s-sheet-%02u", sheet->stock->id, sheet->number);
}

const char *
hut_write_entry_note (const HutCutter *cutter)
{
  const gboolean used = cutter->tabs || cutter->lead_in_mm > 0.0;

  if (!used)
    return NULL;
  return cutter->kind == HUT_CUTTER_LASER
             ? "Lead-ins and gaps for tabs are in them."
             : "Whole outlines: depths, lead-ins and tabs are in the G-code only, or are set in "
               "the router's own software.";
}

GBytes *
hut_write_sheet_page (const HutAssembly *assembly,
                      const HutPartSet *parts,
                      const HutSheet *sheet,
                      const char *mark,
                      HutPageWriter writer,
                      GError **error)
{
  g_return_val_if_fail (assembly != NULL && parts != NULL && sheet != NULL, NULL);

  g_autoptr(GPtrArray) paths = hut_sheet_dup_tool_paths (parts, sheet, error);
  g_autofree char *stem = hut_sheet_dup_stem (sheet);
  const HutWritePage page = {
    .paths = paths,
    .width_mm = sheet->width_mm,
    .depth_mm = sheet->depth_mm,
    .design_name = assembly->design->name,
    .name = stem,
    .mark = mark,
    .stock = sheet->stock,
    .cutter = &assembly->design->cutter,
  };

  return paths != NULL ? writer (&page, error) : NULL;
}

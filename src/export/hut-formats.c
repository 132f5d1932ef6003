/* src/export/hut-formats.c: the files that a set can hold, and who writes them.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-export"
#include "config.h"
#include "export/hut-formats.h"
#include "export/hut-dxf-r12.h"
#include "export/hut-gcode.h"
#include "export/hut-pdf.h"

#define CSV_NAME "csv"

static const HutSheetFormat SHEET_FORMATS[] = {
  { "svg", HUT_FORMAT_SVG, ".svg", hut_write_page_svg },
  { "dxf", HUT_FORMAT_DXF, ".dxf", hut_write_page_dxf },
  { "gcode", HUT_FORMAT_GCODE, ".gcode", hut_write_page_gcode },
  { "dxf-r12", HUT_FORMAT_DXF_R12, "-r12.dxf", hut_write_page_dxf_r12 },
  { "pdf-a4", HUT_FORMAT_PDF_A4, "-a4.pdf", hut_write_page_pdf_a4 },
  { "pdf-a3", HUT_FORMAT_PDF_A3, "-a3.pdf", hut_write_page_pdf_a3 },
  { "pdf-letter", HUT_FORMAT_PDF_LETTER, "-letter.pdf", hut_write_page_pdf_letter },
};

const HutSheetFormat *
hut_sheet_formats (guint *count)
{
  g_return_val_if_fail (count != NULL, NULL);

  *count = G_N_ELEMENTS (SHEET_FORMATS);
  return SHEET_FORMATS;
}

/* "svg, dxf, csv, ..." (transfer full) */
static char *
dup_names (void)
{
  GString *names = g_string_new (NULL);

  for (guint i = 0; i < G_N_ELEMENTS (SHEET_FORMATS); i++)
    {
      g_string_append_printf (names, "%s, ", SHEET_FORMATS[i].name);
      if (SHEET_FORMATS[i].format == HUT_FORMAT_DXF)
        g_string_append (names, CSV_NAME ", ");
    }
  g_string_truncate (names, names->len - 2);
  return g_string_free (names, FALSE);
}

static HutFormats
find_format (const char *name)
{
  if (g_str_equal (name, CSV_NAME))
    return HUT_FORMAT_CSV;
  for (guint i = 0; i < G_N_ELEMENTS (SHEET_FORMATS); i++)
    if (g_str_equal (name, SHEET_FORMATS[i].name))
      return SHEET_FORMATS[i].format;
  return (HutFormats) 0;
}

gboolean
hut_formats_parse (const char *list,
                   HutFormats *formats,
                   GError **error)
{
  g_return_val_if_fail (list != NULL && formats != NULL, FALSE);

  g_auto(GStrv) words = g_strsplit (list, ",", -1);
  g_autofree char *names = dup_names ();
  guint found = 0;

  for (guint i = 0; words[i] != NULL; i++)
    {
      const HutFormats format = find_format (g_strstrip (words[i]));

      if (format == 0)
        {
          g_set_error (error, HUT_EXPORT_ERROR, HUT_EXPORT_ERROR_FORMAT,
                       "no format is called “%s”; allowed: %s, separated by commas", words[i],
                       names);
          return FALSE;
        }
      found |= format;
    }
  if (found == 0)
    {
      g_set_error (error, HUT_EXPORT_ERROR, HUT_EXPORT_ERROR_FORMAT,
                   "no format is named; allowed: %s, separated by commas", names);
      return FALSE;
    }
  *formats = (HutFormats) found;
  return TRUE;
}

HutFormats
hut_formats_usual (const HutDesign *design)
{
  g_return_val_if_fail (design != NULL, HUT_FORMAT_PLAIN);

  for (guint i = 0; i < design->stocks->len && design->cutter.kind == HUT_CUTTER_LASER; i++)
    if (!(((const HutStock *) g_ptr_array_index (design->stocks, i))->power_percent > 0.0))
      return HUT_FORMAT_PLAIN;
  return (HutFormats) (HUT_FORMAT_PLAIN | HUT_FORMAT_GCODE);
}

gboolean
hut_formats_check (HutFormats formats,
                   GError **error)
{
  guint known = HUT_FORMAT_CSV;

  for (guint i = 0; i < G_N_ELEMENTS (SHEET_FORMATS); i++)
    known |= SHEET_FORMATS[i].format;
  if ((formats & known) == 0)
    {
      g_autofree char *names = dup_names ();

      g_set_error (error, HUT_EXPORT_ERROR, HUT_EXPORT_ERROR_FORMAT,
                   "no format is chosen; allowed: %s", names);
      return FALSE;
    }
  return TRUE;
}

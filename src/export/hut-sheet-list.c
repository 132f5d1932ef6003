/* src/export/hut-sheet-list.c: the sheets as a table, CSV.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-export"
#include "config.h"
#include "export/hut-sheet-figures.h"
#include "export/hut-write.h"
#include "format/hut-number.h"

#define HEAD                                                                                     \
  "sheet,stock,width_mm,depth_mm,parts,used_percent,cut_length_mm,pierces,tabs,travel_mm,time_s," \
  "stock_sheets_to_buy,price,note\r\n"

static void
append_number (GString *table,
               double value,
               guint decimals)
{
  char buffer[HUT_NUMBER_SIZE];

  g_string_append_printf (table, ",%s", hut_number_fixed (buffer, value, decimals));
}

/* Ids have no blanks, commas or quotes. */
static void
append_parts (GString *table,
              const HutPartSet *parts,
              const HutSheet *sheet)
{
  g_string_append_c (table, ',');
  for (guint i = 0; i < sheet->laid->len; i++)
    {
      const guint part = g_array_index (sheet->laid, HutLaidPart, i).part;

      g_string_append_printf (table, "%s%s", i > 0 ? " " : "",
                              ((const HutPart *) g_ptr_array_index (parts->parts, part))->id);
    }
}

static void
append_sheet (GString *table,
              const HutPartSet *parts,
              const HutSheet *sheet,
              const char *mark)
{
  g_autofree char *stem = hut_sheet_dup_stem (sheet);
  HutSheetFigures figures;

  g_string_append_printf (table, "%s,%s", stem, sheet->stock->id);
  append_number (table, sheet->width_mm, 3);
  append_number (table, sheet->depth_mm, 3);
  append_parts (table, parts, sheet);
  if (hut_sheet_get_figures (parts, sheet, &figures, NULL))
    {
      append_number (table, figures.used_ratio * 100.0, 1);
      append_number (table, figures.cut_length_mm, 3);
      g_string_append_printf (table, ",%u,%u", figures.pierces, figures.tabs);
      append_number (table, figures.travel_mm, 3);
      append_number (table, figures.time_s, 0);
    }
  else
    g_string_append (table, ",,,,,,");
  g_string_append_printf (table, ",,,%s\r\n", mark != NULL ? mark : "");
}

static guint
count_to_buy (const HutSheetSet *sheets)
{
  guint to_buy = 0;

  for (guint i = 0; i < sheets->sheets->len;)
    {
      const HutSheet *first = g_ptr_array_index (sheets->sheets, i);
      guint count = 0;

      /* The sheets of a stock stand together. */
      for (; i < sheets->sheets->len
             && ((const HutSheet *) g_ptr_array_index (sheets->sheets, i))->stock == first->stock;
           i++)
        count++;
      to_buy += hut_stock_sheets_to_buy (first->stock, first->cutter, count);
    }
  return to_buy;
}

GBytes *
hut_write_marked_sheet_list (const HutPartSet *parts,
                             const HutSheetSet *sheets,
                             const char *mark)
{
  g_return_val_if_fail (parts != NULL && sheets != NULL, NULL);

  GString *table = g_string_new (HEAD);
  g_autofree char *field = mark != NULL ? g_strdup_printf ("\"%s\"", mark) : NULL;
  HutSheetTotals totals;

  for (guint i = 0; i < sheets->sheets->len; i++)
    append_sheet (table, parts, g_ptr_array_index (sheets->sheets, i), field);
  hut_sheet_set_get_totals (parts, sheets, &totals);
  g_string_append (table, "all,,,,");
  append_number (table, totals.used_ratio * 100.0, 1);
  append_number (table, totals.cut_length_mm, 3);
  g_string_append_printf (table, ",%u,,", totals.pierces);
  append_number (table, totals.time_s, 0);
  g_string_append_printf (table, ",%u", count_to_buy (sheets));
  if (totals.price_known)
    append_number (table, totals.price, 2);
  else
    g_string_append_c (table, ',');
  g_string_append_printf (table, ",%s\r\n", field != NULL ? field : "");
  return g_string_free_to_bytes (table);
}

/* src/export/hut-blank-list.c: the sheets to buy and how they are sawn down, CSV.
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Source of the format: RFC 4180. Per stock one line with the sheets to buy; where they are larger
 * than the bed, a line for each saw cut in its order and one for each blank, all on one sheet. */
#define G_LOG_DOMAIN "hut-export"
#include "config.h"
#include "export/hut-write.h"
#include "format/hut-number.h"
#include "sheets/hut-blank.h"
#include <string.h>

#define LENGTH_DECIMALS 2 /* a saw keeps less than that */

static const char HEAD[]
    = "stock,what,number,width_mm,depth_mm,from_left_mm,from_front_mm,note\r\n";

static const char SAW_NOTE[]
    = "sawn by hand or by the supplier, before the sheet goes on the bed";

static void
append_field (GString *table,
              const char *field)
{
  g_autoptr(GString) quoted = g_string_new (field);

  if (strpbrk (field, ",\"\r\n") == NULL)
    {
      g_string_append (table, field);
      return;
    }
  g_string_replace (quoted, "\"", "\"\"", 0);
  g_string_append_printf (table, "\"%s\"", quoted->str);
}

static void
append_line (GString *table,
             const HutStock *stock,
             const char *what,
             guint number,
             HutRect box,
             const char *note)
{
  const double values_mm[] = { box.u1 - box.u0, box.v1 - box.v0, box.u0, box.v0 };
  char buffer[HUT_NUMBER_SIZE];

  append_field (table, stock->id);
  g_string_append_printf (table, ",%s,%u", what, number);
  for (guint i = 0; i < G_N_ELEMENTS (values_mm); i++)
    g_string_append_printf (table, ",%s",
                            hut_number_fixed (buffer, values_mm[i], LENGTH_DECIMALS));
  g_string_append_c (table, ',');
  append_field (table, note);
  g_string_append (table, "\r\n");
}

static void
append_stock (GString *table,
              const HutCutter *cutter,
              const HutStock *stock,
              guint sheet_count,
              const char *mark)
{
  g_autoptr(HutBlankPlan) plan = hut_blank_plan_new (cutter, stock);
  const char *note = mark != NULL ? mark : "";

  append_line (table, stock, "sheets to buy", hut_blank_plan_count_sheets (plan, sheet_count),
               (HutRect) { 0, 0, stock->sheet_width_mm, stock->sheet_depth_mm }, note);
  for (guint i = 0; i < plan->cuts->len; i++)
    {
      const HutSawCut cut = g_array_index (plan->cuts, HutSawCut, i);

      append_line (table, stock, "saw cut", i + 1,
                   (HutRect) { cut.from.u, cut.from.v, cut.to.u, cut.to.v }, SAW_NOTE);
    }
  for (guint i = 0; plan->cuts->len > 0 && i < plan->blanks->len; i++)
    append_line (table, stock, "blank", i + 1, g_array_index (plan->blanks, HutRect, i), note);
}

GBytes *
hut_write_marked_blank_list (const HutAssembly *assembly,
                             const HutSheetSet *sheets,
                             const char *mark)
{
  g_return_val_if_fail (assembly != NULL && sheets != NULL, NULL);

  const HutDesign *design = assembly->design;
  GString *table;

  if (sheets->sheets->len == 0)
    return NULL;
  table = g_string_new (HEAD);
  for (guint i = 0; i < design->stocks->len; i++)
    {
      const HutStock *stock = g_ptr_array_index (design->stocks, i);
      guint count = 0;

      for (guint k = 0; k < sheets->sheets->len; k++)
        count += ((const HutSheet *) g_ptr_array_index (sheets->sheets, k))->stock == stock;
      if (count > 0)
        append_stock (table, &design->cutter, stock, count, mark);
    }
  return g_string_free_to_bytes (table);
}

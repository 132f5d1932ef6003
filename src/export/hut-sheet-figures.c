/* src/export/hut-sheet-figures.c: what cutting a sheet takes.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-export"
#include "config.h"
#include "export/hut-sheet-figures.h"
#include "export/hut-tool-program.h"
#include "export/hut-tool-time.h"
#include "sheets/hut-blank.h"

#define SECONDS_PER_MINUTE 60.0

static double
parts_area_mm2 (const HutPartSet *parts,
                const HutSheet *sheet)
{
  double area_mm2 = 0.0;

  for (guint i = 0; i < sheet->laid->len; i++)
    {
      const HutLaidPart *laid = &g_array_index (sheet->laid, HutLaidPart, i);
      const HutPart *part = g_ptr_array_index (parts->parts, laid->part);

      area_mm2 += hut_region_area_mm2 (part->region);
    }
  return area_mm2;
}

static void
add_time (HutSheetFigures *figures,
          const GPtrArray *paths,
          const HutSheet *sheet)
{
  g_autoptr(GArray) moves = hut_tool_program_new (paths, sheet->stock, sheet->cutter);

  if (sheet->stock->speed_mm_min > 0.0 && sheet->cutter->acceleration_mm_s2 > 0.0)
    figures->time_s = hut_tool_program_time_s (moves, sheet->cutter->acceleration_mm_s2);
}

gboolean
hut_sheet_get_figures (const HutPartSet *parts,
                       const HutSheet *sheet,
                       HutSheetFigures *figures,
                       GError **error)
{
  g_return_val_if_fail (parts != NULL && sheet != NULL && figures != NULL, FALSE);

  g_autoptr(GPtrArray) paths = hut_sheet_dup_tool_paths (parts, sheet, error);
  const HutStock *stock = sheet->stock;
  HutPoint at = { 0.0, 0.0 };

  if (paths == NULL)
    return FALSE;
  *figures = (HutSheetFigures) {
    .used_ratio = parts_area_mm2 (parts, sheet) / (sheet->width_mm * sheet->depth_mm),
  };
  for (guint i = 0; i < paths->len; i++)
    {
      const HutToolPath *path = g_ptr_array_index (paths, i);
      HutPoint start;

      /* Scores are lines, and no tool follows the outline of a pocket. */
      if (path->layer == HUT_LAYER_SCORE || path->layer == HUT_LAYER_POCKET)
        continue;
      start = hut_path_get (path->closed, 0)->p;
      figures->cut_length_mm += hut_tool_path_length_mm (path, sheet->cutter->kind);
      figures->travel_mm += hut_point_distance_mm (at, path->has_lead ? path->lead : start);
      figures->pierces++;
      if (path->tabs != NULL)
        figures->tabs += path->tabs->len;
      at = start;
    }
  if (sheet->cutter->kind == HUT_CUTTER_LASER)
    figures->pierces += figures->tabs; /* it begins anew behind each gap */
  add_time (figures, paths, sheet);
  if (stock->speed_mm_min > 0.0)
    figures->cutting_s
        = figures->cut_length_mm * stock->passes / stock->speed_mm_min * SECONDS_PER_MINUTE;
  return TRUE;
}

guint
hut_stock_sheets_to_buy (const HutStock *stock,
                         const HutCutter *cutter,
                         guint count)
{
  g_return_val_if_fail (stock != NULL && cutter != NULL, 0);

  g_autoptr(HutBlankPlan) plan = hut_blank_plan_new (cutter, stock);

  return count > 0 ? hut_blank_plan_count_sheets (plan, count) : 0;
}

/* Sheets of the stock of sheet @index; 0 when an earlier one has counted them. */
static guint
count_of_stock (const HutSheetSet *sheets,
                guint index)
{
  const HutStock *stock = ((const HutSheet *) g_ptr_array_index (sheets->sheets, index))->stock;
  guint count = 0;

  for (guint i = 0; i < sheets->sheets->len; i++)
    if (((const HutSheet *) g_ptr_array_index (sheets->sheets, i))->stock == stock)
      {
        if (i < index)
          return 0;
        count++;
      }
  return count;
}

void
hut_sheet_set_get_totals (const HutPartSet *parts,
                          const HutSheetSet *sheets,
                          HutSheetTotals *totals)
{
  g_return_if_fail (parts != NULL && sheets != NULL && totals != NULL);

  double area_mm2 = 0.0;

  *totals = (HutSheetTotals) { .sheets = sheets->sheets->len, .price_known = TRUE };
  for (guint i = 0; i < sheets->sheets->len; i++)
    {
      const HutSheet *sheet = g_ptr_array_index (sheets->sheets, i);
      const guint of_stock = count_of_stock (sheets, i); /* 0 unless the first one of its stock */
      HutSheetFigures figures;

      totals->price += hut_stock_sheets_to_buy (sheet->stock, sheet->cutter, of_stock)
                       * sheet->stock->price;
      totals->price_known = totals->price_known && sheet->stock->price > 0.0;
      if (!hut_sheet_get_figures (parts, sheet, &figures, NULL))
        {
          totals->unknown++;
          continue;
        }
      area_mm2 += sheet->width_mm * sheet->depth_mm;
      totals->used_ratio += figures.used_ratio * sheet->width_mm * sheet->depth_mm;
      totals->cut_length_mm += figures.cut_length_mm;
      totals->time_s += figures.time_s;
      totals->pierces += figures.pierces;
    }
  totals->used_ratio = area_mm2 > 0.0 ? totals->used_ratio / area_mm2 : 0.0;
}

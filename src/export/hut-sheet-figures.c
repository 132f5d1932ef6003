/* src/export/hut-sheet-figures.c: what cutting a sheet takes.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-export"
#include "config.h"
#include "export/hut-sheet-figures.h"
#include "export/hut-tool-path.h"

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
      figures->cut_length_mm += hut_path_length_mm (path->closed);
      figures->travel_mm += hut_point_distance_mm (at, start);
      figures->pierces++;
      at = start;
    }
  if (stock->speed_mm_min > 0.0)
    figures->cutting_s
        = figures->cut_length_mm * stock->passes / stock->speed_mm_min * SECONDS_PER_MINUTE;
  return TRUE;
}

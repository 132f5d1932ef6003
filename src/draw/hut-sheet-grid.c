/* src/draw/hut-sheet-grid.c: where each sheet is in the view of the sheets.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-draw"
#include "config.h"
#include "draw/hut-sheet-grid.h"

/* Own choice, px. */
#define BORDER_PX 18.0
#define GAP_PX 22.0
#define TITLE_LINES 2
#define TITLE_LINE_RATIO 1.45 /* height of a line in text heights */
#define TITLE_GAP_PX 4.0
#define FOOT_PX 26.0

static void
largest_sheet (const HutSheetSet *sheets,
               double *width_mm,
               double *depth_mm)
{
  *width_mm = 1.0;
  *depth_mm = 1.0;
  for (guint i = 0; i < sheets->sheets->len; i++)
    {
      const HutSheet *sheet = g_ptr_array_index (sheets->sheets, i);

      *width_mm = MAX (*width_mm, sheet->width_mm);
      *depth_mm = MAX (*depth_mm, sheet->depth_mm);
    }
}

HutSheetGrid
hut_sheet_grid_find (const HutSheetSet *sheets,
                     double text_px,
                     double width_px,
                     double height_px)
{
  g_return_val_if_fail (sheets != NULL, ((HutSheetGrid){ 0 }));

  const guint count = sheets->sheets->len;
  const double foot_px = sheets->unplaced->len > 0 || count == 0 ? FOOT_PX : 0.0;
  const double title_px = TITLE_LINES * TITLE_LINE_RATIO * text_px + TITLE_GAP_PX;
  const double free_px = height_px - foot_px;
  double width_mm, depth_mm;
  HutSheetGrid best = { .title_px = title_px, .gap_px = GAP_PX, .foot_px = foot_px };

  largest_sheet (sheets, &width_mm, &depth_mm);
  for (guint columns = 1; columns <= count; columns++)
    {
      const guint rows = (count + columns - 1) / columns;
      const double free_x_px = (width_px - 2.0 * BORDER_PX - GAP_PX * (columns - 1)) / columns;
      const double free_y_px = (free_px - 2.0 * BORDER_PX - GAP_PX * (rows - 1)) / rows - title_px;
      const double scale = MIN (free_x_px / width_mm, free_y_px / depth_mm);

      if (scale <= best.scale_px_per_mm)
        continue;
      best.columns = columns;
      best.scale_px_per_mm = scale;
      best.cell_width_px = scale * width_mm;
      best.cell_height_px = scale * depth_mm + title_px;
      best.left_px = (width_px - columns * best.cell_width_px - GAP_PX * (columns - 1)) / 2.0;
      best.top_px = (free_px - rows * best.cell_height_px - GAP_PX * (rows - 1)) / 2.0;
    }
  return best;
}

HutPoint
hut_sheet_grid_front (const HutSheetGrid *self,
                      const HutSheetSet *sheets,
                      guint index)
{
  g_return_val_if_fail (self != NULL && self->columns > 0 && index < sheets->sheets->len,
                        ((HutPoint){ 0, 0 }));

  const HutSheet *sheet = g_ptr_array_index (sheets->sheets, index);

  return (HutPoint){
    self->left_px + (index % self->columns) * (self->cell_width_px + GAP_PX),
    self->top_px + (double)(index / self->columns) * (self->cell_height_px + GAP_PX)
        + self->title_px + sheet->depth_mm * self->scale_px_per_mm,
  };
}

int
hut_sheet_grid_pick_sheet (const HutSheetGrid *self,
                           const HutSheetSet *sheets,
                           HutPoint px,
                           HutPoint *at_mm)
{
  g_return_val_if_fail (self != NULL && sheets != NULL && at_mm != NULL, -1);

  for (guint i = 0; i < sheets->sheets->len && self->columns > 0; i++)
    {
      const HutSheet *sheet = g_ptr_array_index (sheets->sheets, i);
      const HutPoint front_px = hut_sheet_grid_front (self, sheets, i);
      const HutPoint at = { (px.u - front_px.u) / self->scale_px_per_mm,
                            (front_px.v - px.v) / self->scale_px_per_mm };

      if (at.u < 0.0 || at.v < 0.0 || at.u > sheet->width_mm || at.v > sheet->depth_mm)
        continue;
      *at_mm = at;
      return (int)i;
    }
  return -1;
}

int
hut_sheet_pick_part (const HutSheet *sheet,
                     const HutPartSet *parts,
                     HutPoint at_mm)
{
  g_return_val_if_fail (sheet != NULL && parts != NULL, -1);

  for (guint i = sheet->laid->len; i > 0; i--)
    {
      const HutLaidPart *laid = &g_array_index (sheet->laid, HutLaidPart, i - 1);
      const HutPart *part = g_ptr_array_index (parts->parts, laid->part);
      g_autoptr (HutRegion) placed = hut_region_dup_placed (part->region, &laid->placement);

      if (hut_region_contains (placed, at_mm))
        return (int)i - 1;
    }
  return -1;
}

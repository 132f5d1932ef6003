/* src/draw/hut-sheet-view.c: sheets side by side, drawn with Cairo.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-draw"
#include "config.h"
#include "draw/hut-sheet-view.h"
#include "draw/hut-ink.h"
#include <glib/gi18n-lib.h>
#include <math.h>

/* Own choice, px. */
#define BORDER_PX 18.0
#define GAP_PX 22.0
#define TITLE_PX 22.0
#define SHEET_LINE_PX 1.4
#define MARGIN_LINE_PX 1.0
#define PART_LINE_PX 1.1
#define LABEL_PAD_PX 4.0
#define FOOT_PX 26.0

/* Rows and columns of equal cells. */
typedef struct
{
  guint columns;
  double scale_px_per_mm;
  double cell_width_px, cell_height_px;
  double left_px, top_px;
} Grid;

static void
largest_sheet (const HutSheetSet *sheets, double *width_mm, double *depth_mm)
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

/* The number of columns that gives the largest scale. */
static Grid
find_grid (const HutSheetSet *sheets, double width_px, double height_px)
{
  const guint count = sheets->sheets->len;
  double width_mm, depth_mm;
  Grid best = { 0 };

  largest_sheet (sheets, &width_mm, &depth_mm);
  for (guint columns = 1; columns <= count; columns++)
    {
      const guint rows = (count + columns - 1) / columns;
      const double free_x_px = (width_px - 2.0 * BORDER_PX - GAP_PX * (columns - 1)) / columns;
      const double free_y_px
          = (height_px - 2.0 * BORDER_PX - GAP_PX * (rows - 1)) / rows - TITLE_PX;
      const double scale = MIN (free_x_px / width_mm, free_y_px / depth_mm);

      if (scale <= best.scale_px_per_mm)
        continue;
      best = (Grid){
        .columns = columns,
        .scale_px_per_mm = scale,
        .cell_width_px = scale * width_mm,
        .cell_height_px = scale * depth_mm + TITLE_PX,
      };
      best.left_px = (width_px - columns * best.cell_width_px - GAP_PX * (columns - 1)) / 2.0;
      best.top_px = (height_px - rows * best.cell_height_px - GAP_PX * (rows - 1)) / 2.0;
    }
  return best;
}

static guint
count_of_stock (const HutSheetSet *sheets, const HutStock *stock)
{
  guint count = 0;

  for (guint i = 0; i < sheets->sheets->len; i++)
    {
      const HutSheet *sheet = g_ptr_array_index (sheets->sheets, i);

      count += sheet->stock == stock ? 1 : 0;
    }
  return count;
}

static void
draw_title (HutInk *ink,
            const HutSheetSet *sheets,
            const HutSheet *sheet,
            double x_px,
            double y_px,
            double room_px)
{
  g_autofree char *width = hut_ink_dup_length (ink, sheet->width_mm, 1);
  g_autofree char *depth = hut_ink_dup_length (ink, sheet->depth_mm, 1);
  const char *stock = sheet->stock->name != NULL ? sheet->stock->name : sheet->stock->id;
  const guint count = count_of_stock (sheets, sheet->stock);
  /* Translators: stock, number of the sheet, how many sheets of that stock, width and depth in mm
   */
  g_autofree char *title
      = g_strdup_printf (hut_ink_tr (ink, N_ ("%s, sheet %u of %u, %s × %s %s")), stock,
                         sheet->number, count, width, depth, hut_ink_unit (ink));
  g_autofree char *brief
      = g_strdup_printf (hut_ink_tr (ink, N_ ("Sheet %u of %u")), sheet->number, count);
  double width_px, height_px;

  hut_ink_measure (ink, title, 0.0, TRUE, &width_px, &height_px);
  hut_ink_text (ink, width_px <= room_px ? title : brief,
                &(HutInkText){ .x_px = x_px,
                               .y_px = y_px + TITLE_PX / 2.0 - 2.0,
                               .bold = TRUE,
                               .colour = ink->palette->text });
}

static void
draw_label (HutInk *ink,
            const HutPart *part,
            const HutRegion *placed,
            HutPoint origin_px,
            double scale_px_per_mm)
{
  const HutRect b = hut_region_bounds (placed);
  const double part_x_px = (b.u1 - b.u0) * scale_px_per_mm,
               part_y_px = (b.v1 - b.v0) * scale_px_per_mm;
  const char *text = part->label != NULL ? part->label : part->id;
  const double size_px = ink->text_px - 1.0;
  double width_px, height_px;

  hut_ink_measure (ink, text, size_px, FALSE, &width_px, &height_px);
  const gboolean turned = width_px + LABEL_PAD_PX > part_x_px;
  const double along_px = turned ? part_y_px : part_x_px,
               across_px = turned ? part_x_px : part_y_px;
  if (width_px + LABEL_PAD_PX > along_px || height_px > across_px)
    return;
  hut_ink_text (ink, text,
                &(HutInkText){
                    .x_px = origin_px.u + (b.u0 + b.u1) / 2.0 * scale_px_per_mm,
                    .y_px = origin_px.v - (b.v0 + b.v1) / 2.0 * scale_px_per_mm,
                    .size_px = size_px,
                    .align = HUT_TEXT_MIDDLE,
                    .turned = turned,
                    .plate = TRUE,
                    .colour = ink->palette->text,
                });
}

static void
draw_parts (HutInk *ink,
            const HutPartSet *parts,
            const HutSheet *sheet,
            HutPoint origin_px,
            double scale_px_per_mm)
{
  for (guint i = 0; i < sheet->laid->len; i++)
    {
      const HutLaidPart *laid = &g_array_index (sheet->laid, HutLaidPart, i);
      const HutPart *part = g_ptr_array_index (parts->parts, laid->part);
      g_autoptr (HutRegion) placed = hut_region_dup_placed (part->region, &laid->placement);

      hut_ink_region (ink, placed, origin_px.u, origin_px.v, scale_px_per_mm);
      cairo_set_fill_rule (ink->cr, CAIRO_FILL_RULE_EVEN_ODD);
      hut_ink_colour (ink, ink->palette->machine_fill);
      cairo_fill_preserve (ink->cr);
      cairo_set_fill_rule (ink->cr, CAIRO_FILL_RULE_WINDING);
      hut_ink_line (ink, HUT_LINE_SOLID, PART_LINE_PX);
      hut_ink_colour (ink, ink->palette->outline);
      cairo_stroke (ink->cr);
      draw_label (ink, part, placed, origin_px, scale_px_per_mm);
    }
}

static void
draw_sheet (HutInk *ink,
            const HutAssembly *assembly,
            const HutPartSet *parts,
            const HutSheet *sheet,
            HutPoint corner_px,
            double scale_px_per_mm)
{
  const double width_px = sheet->width_mm * scale_px_per_mm,
               depth_px = sheet->depth_mm * scale_px_per_mm;
  const double margin_px = assembly->design->cutter.margin_mm * scale_px_per_mm;

  cairo_rectangle (ink->cr, corner_px.u, corner_px.v, width_px, depth_px);
  hut_ink_colour (ink, ink->palette->sheet);
  cairo_fill_preserve (ink->cr);
  hut_ink_line (ink, HUT_LINE_SOLID, SHEET_LINE_PX);
  hut_ink_colour (ink, ink->palette->text_dim);
  cairo_stroke (ink->cr);
  if (margin_px > 0.0)
    {
      hut_ink_line (ink, HUT_LINE_KEEP_OUT, MARGIN_LINE_PX);
      hut_ink_colour (ink, ink->palette->keep_out_line);
      cairo_rectangle (ink->cr, corner_px.u + margin_px, corner_px.v + margin_px,
                       width_px - 2.0 * margin_px, depth_px - 2.0 * margin_px);
      cairo_stroke (ink->cr);
    }
  draw_parts (ink, parts, sheet, (HutPoint){ corner_px.u, corner_px.v + depth_px },
              scale_px_per_mm);
}

/* How many parts fit no sheet, or that there is nothing to see. Returns the height it takes, px. */
static double
draw_foot (HutInk *ink, const HutSheetSet *sheets)
{
  g_autofree char *unplaced = g_strdup_printf (
      hut_ink_tr (ink, N_ ("Parts that fit on no sheet: %u")), sheets->unplaced->len);

  if (sheets->unplaced->len == 0 && sheets->sheets->len > 0)
    return 0.0;
  hut_ink_text (ink,
                sheets->unplaced->len > 0 ? unplaced
                                          : hut_ink_tr (ink, N_ ("There is nothing to cut yet.")),
                &(HutInkText){
                    .x_px = ink->width_px / 2.0,
                    .y_px = ink->height_px - FOOT_PX / 2.0,
                    .align = HUT_TEXT_MIDDLE,
                    .bold = TRUE,
                    .colour = ink->palette->text,
                });
  return FOOT_PX;
}

void
hut_sheet_view_draw (cairo_t *cr,
                     const HutAssembly *assembly,
                     const HutPartSet *parts,
                     const HutSheetSet *sheets,
                     const HutFlatStyle *style,
                     double width_px,
                     double height_px)
{
  HutInk ink;

  hut_ink_begin (&ink, cr, hut_palette_get (style->dark, style->high_contrast), width_px, height_px,
                 style->text_px);
  ink.translate = style->translate;
  if (style->decimal_point != NULL)
    ink.decimal_point = style->decimal_point;
  ink.inches = style->inches;
  cairo_rectangle (cr, 0.0, 0.0, width_px, height_px);
  cairo_clip_preserve (cr);
  hut_ink_colour (&ink, ink.palette->background);
  cairo_fill (cr);

  const double foot_px = draw_foot (&ink, sheets);
  const Grid grid = find_grid (sheets, width_px, height_px - foot_px);
  for (guint i = 0; i < sheets->sheets->len && grid.columns > 0; i++)
    {
      const HutSheet *sheet = g_ptr_array_index (sheets->sheets, i);
      const double x_px = grid.left_px + (i % grid.columns) * (grid.cell_width_px + GAP_PX);
      const double y_px = grid.top_px + (double)(i / grid.columns) * (grid.cell_height_px + GAP_PX);

      draw_title (&ink, sheets, sheet, x_px, y_px, grid.cell_width_px + GAP_PX / 2.0);
      draw_sheet (&ink, assembly, parts, sheet, (HutPoint){ x_px, y_px + TITLE_PX },
                  grid.scale_px_per_mm);
    }
  hut_ink_end (&ink);
}

/* src/draw/hut-sheet-view.c: sheets side by side, drawn with Cairo.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-draw"
#include "config.h"
#include "draw/hut-sheet-view.h"
#include "draw/hut-ink.h"
#include "draw/hut-sheet-grid.h"
#include "sheets/hut-label.h"
#include <glib/gi18n-lib.h>
#include <math.h>

/* Own choice, px. */
#define TITLE_LINE_RATIO 1.45 /* height of a line in text heights */
#define LABEL_LEAST_PX 8.0 /* smaller scored letters are shown as plain text */
#define LABEL_LINE_PX 1.0
#define LABEL_LETTERS_LEAST 3.0 /* room that a name needs, in text heights */
#define SHEET_LINE_PX 1.4
#define MARGIN_LINE_PX 1.0
#define PART_LINE_PX 1.1
#define LABEL_PAD_PX 4.0
#define CHOSEN_LINE_PX 3.0
#define WRONG_STEP_PX 7.0 /* between the lines over a part that lies wrong */
#define PIN_PX 4.0        /* radius of a pin's head */

static guint
count_of_stock (const HutSheetSet *sheets,
                const HutStock *stock)
{
  guint count = 0;

  for (guint i = 0; i < sheets->sheets->len; i++)
    {
      const HutSheet *sheet = g_ptr_array_index (sheets->sheets, i);

      count += sheet->stock == stock ? 1 : 0;
    }
  return count;
}

/* Name of the stock, and under it which sheet it is and its size. */
static void
draw_title (HutInk *ink,
            const HutSheetSet *sheets,
            const HutSheet *sheet,
            HutPoint corner_px,
            double room_px)
{
  const char *stock = sheet->stock->name != NULL ? sheet->stock->name : sheet->stock->id;
  const double line_px = TITLE_LINE_RATIO * ink->text_px;
  g_autofree char *width = hut_ink_dup_length (ink, sheet->width_mm, 1);
  g_autofree char *depth = hut_ink_dup_length (ink, sheet->depth_mm, 1);
  /* Translators: number of the sheet, how many sheets of that stock, width, depth, mm or in */
  g_autofree char *which
      = g_strdup_printf (hut_ink_tr (ink, N_ ("sheet %u of %u, %s × %s %s")), sheet->number,
                         count_of_stock (sheets, sheet->stock), width, depth, hut_ink_unit (ink));

  hut_ink_text (ink, stock,
                &(HutInkText){
                    .x_px = corner_px.u,
                    .y_px = corner_px.v + line_px / 2.0,
                    .room_px = room_px,
                    .bold = TRUE,
                    .colour = ink->palette->text,
                });
  hut_ink_text (ink, which,
                &(HutInkText){
                    .x_px = corner_px.u,
                    .y_px = corner_px.v + 1.5 * line_px,
                    .room_px = room_px,
                    .colour = ink->palette->text_dim,
                });
}

/* The room that the scored label has found, panel frame; the part's bounds when it found none. */
static HutRect
label_room (const HutPart *part,
            const HutLabel *label)
{
  HutRect b = { INFINITY, INFINITY, -INFINITY, -INFINITY };

  if (label == NULL)
    return hut_region_bounds (part->region);
  for (guint i = 0; i < label->strokes->len; i++)
    {
      const GArray *stroke = g_ptr_array_index (label->strokes, i);

      for (guint k = 0; k < stroke->len; k++)
        {
          const HutPoint p = g_array_index (stroke, HutPoint, k);

          b.u0 = MIN (b.u0, p.u);
          b.v0 = MIN (b.v0, p.v);
          b.u1 = MAX (b.u1, p.u);
          b.v1 = MAX (b.v1, p.v);
        }
    }
  return b;
}

/* The letters as they will be scored. */
static void
draw_strokes (HutInk *ink,
              const HutLabel *label,
              const HutPlacement *placement,
              HutPoint origin_px,
              double scale_px_per_mm)
{
  for (guint i = 0; i < label->strokes->len; i++)
    {
      const GArray *stroke = g_ptr_array_index (label->strokes, i);

      for (guint k = 0; k < stroke->len; k++)
        {
          const HutPoint p = hut_placement_apply (placement, g_array_index (stroke, HutPoint, k));
          const double x = origin_px.u + p.u * scale_px_per_mm,
                       y = origin_px.v - p.v * scale_px_per_mm;

          if (k == 0)
            cairo_move_to (ink->cr, x, y);
          else
            cairo_line_to (ink->cr, x, y);
        }
    }
  hut_ink_line (ink, HUT_LINE_SOLID, LABEL_LINE_PX);
  hut_ink_colour (ink, ink->palette->text_dim);
  cairo_stroke (ink->cr);
}

/* The part's name in letters that can be read, where it will be scored, along the longer side of
 * that. */
static void
draw_name (HutInk *ink,
           const HutPart *part,
           HutRect room,
           const HutPlacement *placement,
           HutPoint origin_px,
           double scale_px_per_mm)
{
  const HutRect part_box = hut_region_bounds (part->region);
  const HutPoint middle = hut_placement_apply (
      placement, (HutPoint){ (room.u0 + room.u1) / 2.0, (room.v0 + room.v1) / 2.0 });
  const double right_angle_rad = G_PI_2, size_px = ink->text_px - 1.0;
  const gboolean swapped = lround (placement->turn_rad / right_angle_rad) % 2 != 0;
  const gboolean upright = room.v1 - room.v0 > room.u1 - room.u0;
  const double along_mm = upright ? part_box.v1 - part_box.v0 : part_box.u1 - part_box.u0;
  const double across_mm = upright ? part_box.u1 - part_box.u0 : part_box.v1 - part_box.v0;
  const double room_px = along_mm * scale_px_per_mm - LABEL_PAD_PX;

  if (room_px < LABEL_LETTERS_LEAST * size_px || across_mm * scale_px_per_mm < size_px)
    return;
  hut_ink_text (ink, part->label != NULL ? part->label : part->id,
                &(HutInkText){
                    .x_px = origin_px.u + middle.u * scale_px_per_mm,
                    .y_px = origin_px.v - middle.v * scale_px_per_mm,
                    .size_px = size_px,
                    .room_px = room_px,
                    .align = HUT_TEXT_MIDDLE,
                    .turned = upright != swapped,
                    .plate = TRUE,
                    .colour = ink->palette->text,
                });
}

static void
draw_label (HutInk *ink,
            const HutPart *part,
            const HutPlacement *placement,
            HutPoint origin_px,
            double scale_px_per_mm)
{
  g_autoptr (HutLabel) label = hut_label_new (part);

  if (label != NULL && label->height_mm * scale_px_per_mm >= LABEL_LEAST_PX)
    draw_strokes (ink, label, placement, origin_px, scale_px_per_mm);
  else
    draw_name (ink, part, label_room (part, label), placement, origin_px, scale_px_per_mm);
}

/* A pin at the upper left of the part: it stays where its owner laid it. */
static void
draw_pin (HutInk *ink,
          HutRect box,
          HutPoint origin_px,
          double scale_px_per_mm)
{
  const double x = origin_px.u + box.u0 * scale_px_per_mm + 2.0 * PIN_PX;
  const double y = origin_px.v - box.v1 * scale_px_per_mm + 2.0 * PIN_PX;

  hut_ink_colour (ink, ink->palette->text);
  hut_ink_line (ink, HUT_LINE_SOLID, PART_LINE_PX);
  cairo_move_to (ink->cr, x, y);
  cairo_line_to (ink->cr, x, y + 2.5 * PIN_PX);
  cairo_stroke (ink->cr);
  cairo_arc (ink->cr, x, y, PIN_PX, 0.0, 2.0 * G_PI);
  cairo_fill (ink->cr);
}

/* Slanted lines over a part that has not the room it needs. Its outline is the current path. */
static void
draw_wrong (HutInk *ink,
            HutRect box,
            HutPoint origin_px,
            double scale_px_per_mm)
{
  cairo_save (ink->cr);
  cairo_set_fill_rule (ink->cr, CAIRO_FILL_RULE_EVEN_ODD);
  cairo_clip (ink->cr);
  hut_ink_colour (ink, ink->palette->mark_fill[HUT_SEVERITY_BLOCKS]);
  hut_ink_line (ink, HUT_LINE_SOLID, SHEET_LINE_PX);
  hut_ink_hatch (ink, origin_px.u + box.u0 * scale_px_per_mm,
                 origin_px.v - box.v1 * scale_px_per_mm, (box.u1 - box.u0) * scale_px_per_mm,
                 (box.v1 - box.v0) * scale_px_per_mm, WRONG_STEP_PX);
  cairo_restore (ink->cr);
}

static void
draw_part (HutInk *ink,
           const HutPart *part,
           const HutLaidPart *laid,
           const HutSheetMarks *marks,
           HutPoint origin_px,
           double scale_px_per_mm)
{
  const gboolean wrong = marks != NULL && marks->wrong != NULL && marks->wrong[laid->part];
  const gboolean chosen = marks != NULL && g_strcmp0 (marks->chosen, part->id) == 0;
  const HutSpot *spot = marks != NULL && marks->design != NULL
                            ? hut_design_get_spot (marks->design, part->id)
                            : NULL;
  g_autoptr (HutRegion) placed = hut_region_dup_placed (part->region, &laid->placement);
  const HutRect box = hut_region_bounds (placed);

  hut_ink_region (ink, placed, origin_px.u, origin_px.v, scale_px_per_mm);
  cairo_set_fill_rule (ink->cr, CAIRO_FILL_RULE_EVEN_ODD);
  hut_ink_colour (ink, ink->palette->sheet);
  cairo_fill_preserve (ink->cr);
  cairo_set_fill_rule (ink->cr, CAIRO_FILL_RULE_WINDING);
  hut_ink_line (ink, HUT_LINE_SOLID, chosen ? CHOSEN_LINE_PX : PART_LINE_PX);
  hut_ink_colour (ink, chosen ? ink->palette->selection : ink->palette->outline);
  cairo_stroke_preserve (ink->cr);
  if (wrong)
    draw_wrong (ink, box, origin_px, scale_px_per_mm);
  cairo_new_path (ink->cr);
  draw_label (ink, part, &laid->placement, origin_px, scale_px_per_mm);
  if (spot != NULL && spot->kept)
    draw_pin (ink, box, origin_px, scale_px_per_mm);
}

static void
draw_parts (HutInk *ink,
            const HutPartSet *parts,
            const HutSheet *sheet,
            const HutSheetMarks *marks,
            HutPoint origin_px,
            double scale_px_per_mm)
{
  for (guint i = 0; i < sheet->laid->len; i++)
    {
      const HutLaidPart *laid = &g_array_index (sheet->laid, HutLaidPart, i);

      draw_part (ink, g_ptr_array_index (parts->parts, laid->part), laid, marks, origin_px,
                 scale_px_per_mm);
    }
}

static void
draw_sheet (HutInk *ink,
            const HutAssembly *assembly,
            const HutPartSet *parts,
            const HutSheet *sheet,
            const HutSheetMarks *marks,
            HutPoint corner_px,
            double scale_px_per_mm)
{
  const double width_px = sheet->width_mm * scale_px_per_mm,
               depth_px = sheet->depth_mm * scale_px_per_mm;
  const double margin_px = assembly->design->cutter.margin_mm * scale_px_per_mm;

  cairo_rectangle (ink->cr, corner_px.u, corner_px.v, width_px, depth_px);
  hut_ink_colour (ink, ink->palette->waste);
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
  draw_parts (ink, parts, sheet, marks, (HutPoint){ corner_px.u, corner_px.v + depth_px },
              scale_px_per_mm);
}

/* How many parts fit no sheet, or that there is nothing to see. */
static void
draw_foot (HutInk *ink,
           const HutSheetSet *sheets,
           double foot_px)
{
  g_autofree char *unplaced = g_strdup_printf (
      hut_ink_tr (ink, N_ ("Parts that fit on no sheet: %u")), sheets->unplaced->len);

  if (foot_px <= 0.0)
    return;
  hut_ink_text (ink,
                sheets->unplaced->len > 0 ? unplaced
                                          : hut_ink_tr (ink, N_ ("There is nothing to cut yet.")),
                &(HutInkText){
                    .x_px = ink->width_px / 2.0,
                    .y_px = ink->height_px - foot_px / 2.0,
                    .align = HUT_TEXT_MIDDLE,
                    .bold = TRUE,
                    .colour = ink->palette->text,
                });
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
  hut_sheet_view_draw_marked (cr, assembly, parts, sheets, style, NULL, width_px, height_px);
}

void
hut_sheet_view_draw_marked (cairo_t *cr,
                            const HutAssembly *assembly,
                            const HutPartSet *parts,
                            const HutSheetSet *sheets,
                            const HutFlatStyle *style,
                            const HutSheetMarks *marks,
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

  const HutSheetGrid grid = hut_sheet_grid_find (sheets, ink.text_px, width_px, height_px);

  draw_foot (&ink, sheets, grid.foot_px);
  for (guint i = 0; i < sheets->sheets->len && grid.columns > 0; i++)
    {
      const HutSheet *sheet = g_ptr_array_index (sheets->sheets, i);
      const HutPoint front_px = hut_sheet_grid_front (&grid, sheets, i);
      const HutPoint back_px
          = { front_px.u, front_px.v - sheet->depth_mm * grid.scale_px_per_mm };

      draw_title (&ink, sheets, sheet, (HutPoint){ back_px.u, back_px.v - grid.title_px },
                  grid.cell_width_px + grid.gap_px / 2.0);
      draw_sheet (&ink, assembly, parts, sheet, marks, back_px, grid.scale_px_per_mm);
    }
  hut_ink_end (&ink);
}

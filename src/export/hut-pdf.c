/* src/export/hut-pdf.c: a page in full size on paper, for cutting by hand.
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Text is drawn with the letters that are scored on parts: no font is needed, and the file is the
 * same on any machine. */
#define G_LOG_DOMAIN "hut-export"
#include "config.h"
#include "export/hut-pdf.h"
#include "draw/hut-ink.h"
#include "draw/hut-tiling.h"
#include "export/hut-tool-path.h"
#include "format/hut-number.h"
#include "sheets/hut-stroke-font.h"
#include <cairo-pdf.h>

#define PT_PER_MM (72.0 / 25.4)
/* Curves keep to their arcs within this, pt: far under what a printer shows. */
#define TOLERANCE_PT 0.002
/* What Cairo would take from the clock. */
#define CREATED "2000-01-01T00:00:00Z"
#define BAR_MM 100.0
/* Own choice, all of them: layout of the pages, mm. */
#define BORDER_MM 1.0 /* round the work */
#define TEXT_MM 2.5
#define TITLE_MM 5.0
#define LINE_STEP_MM 6.0
#define BAR_ABOVE_MM 5.0 /* of the lower edge of the paper */

/* Width and dashes of the lines of a layer, mm: widths tell inside from outside without colour. */
static const struct
{
  double width_mm, dash_mm;
} LINES[HUT_LAYER_COUNT] = {
  [HUT_LAYER_SCORE] = { 0.15, 1.0 },
  [HUT_LAYER_POCKET] = { 0.15, 2.0 },
  [HUT_LAYER_DRILL] = { 0.15, 0.0 },
  [HUT_LAYER_CUT_INSIDE] = { 0.15, 0.0 },
  [HUT_LAYER_CUT_OUTSIDE] = { 0.3, 0.0 },
};

static const char *const NOTES[] = {
  "Print at 100 percent / actual size. Measure bar and square first.",
  "If they are not 100 mm wide and high - do not cut.",
  "Lines are the middle of the cut - half of a blade or bit on either side.",
  "Thick lines - outlines. Thin lines - openings - cut first. Dashes - marks.",
  "Lay the papers on each other so that the crosses meet - then glue.",
  "Dust and blades hurt - eyes - lungs - ears - hands. Local rules come first.",
  NULL,
};

/* A PDF that is being drawn. */
typedef struct
{
  const HutWritePage *page;
  HutTiling tiling;
  GByteArray *bytes;
  cairo_surface_t *surface;
  cairo_t *cr;
  HutInk ink;
} Pdf;

static cairo_status_t
append_bytes (void *closure,
              const unsigned char *data,
              unsigned int length)
{
  g_byte_array_append (closure, data, length);
  return CAIRO_STATUS_SUCCESS;
}

/* @at: lower left corner of the text, page frame. */
static void
draw_text (Pdf *self,
           const char *text,
           HutPoint at,
           double height_mm)
{
  g_autoptr(GPtrArray) strokes = hut_stroke_text_new (text, height_mm);

  cairo_new_path (self->cr);
  for (guint i = 0; i < strokes->len; i++)
    {
      const GArray *stroke = g_ptr_array_index (strokes, i);

      for (guint k = 0; k < stroke->len; k++)
        {
          const HutPoint p = g_array_index (stroke, HutPoint, k);

          (k == 0 ? cairo_move_to : cairo_line_to) (self->cr, at.u + p.u, at.v - p.v);
        }
    }
  cairo_set_dash (self->cr, NULL, 0, 0.0);
  cairo_set_line_width (self->cr, height_mm / 12.0);
  cairo_stroke (self->cr);
}

/* Letters that the font has. (transfer full) */
static char *
dup_plain (const char *text)
{
  char *plain = g_str_to_ascii (text, "C");

  for (char *at = plain; *at != '\0'; at++)
    if (!g_ascii_isalnum (*at) && *at != '.' && *at != '/' && *at != ' ')
      *at = '-';
  return plain;
}

/* ---- lines ----------------------------------------------------------------------------------- */

/* (0, 0) of the drawing is at @origin. */
static void
trace (Pdf *self,
       const HutToolPath *path,
       HutPoint origin,
       double scale_ratio)
{
  if (path->closed != NULL)
    {
      hut_ink_path (&self->ink, path->closed, origin.u, origin.v, scale_ratio);
      return;
    }
  for (guint i = 0; i < path->strokes->len; i++)
    {
      const GArray *stroke = g_ptr_array_index (path->strokes, i);

      for (guint k = 0; k < stroke->len; k++)
        {
          const HutPoint p = g_array_index (stroke, HutPoint, k);

          (k == 0 ? cairo_move_to : cairo_line_to) (self->cr, origin.u + p.u * scale_ratio,
                                                    origin.v - p.v * scale_ratio);
        }
    }
}

static HutRect
path_bounds (const HutToolPath *path)
{
  HutRect box = { G_MAXDOUBLE, G_MAXDOUBLE, -G_MAXDOUBLE, -G_MAXDOUBLE };

  if (path->closed != NULL)
    return hut_path_bounds (path->closed);
  for (guint i = 0; i < path->strokes->len; i++)
    {
      const GArray *stroke = g_ptr_array_index (path->strokes, i);

      for (guint k = 0; k < stroke->len; k++)
        {
          const HutPoint p = g_array_index (stroke, HutPoint, k);

          box = (HutRect) { MIN (box.u0, p.u), MIN (box.v0, p.v), MAX (box.u1, p.u),
                            MAX (box.v1, p.v) };
        }
    }
  return box;
}

static gboolean
meets (const HutToolPath *path,
       HutRect tile)
{
  const HutRect box = path_bounds (path);

  return box.u0 <= tile.u1 && box.u1 >= tile.u0 && box.v0 <= tile.v1 && box.v1 >= tile.v0;
}

static gboolean
tile_has_lines (const Pdf *self,
                HutRect tile)
{
  for (guint i = 0; i < self->page->paths->len; i++)
    if (meets (g_ptr_array_index (self->page->paths, i), tile))
      return TRUE;
  return FALSE;
}

static void
draw_lines (Pdf *self,
            HutRect tile,
            HutPoint origin)
{
  for (guint i = 0; i < self->page->paths->len; i++)
    {
      const HutToolPath *path = g_ptr_array_index (self->page->paths, i);
      const double dash_mm = LINES[path->layer].dash_mm;

      if (!meets (path, tile))
        continue;
      cairo_new_path (self->cr);
      trace (self, path, origin, 1.0);
      cairo_set_line_width (self->cr, LINES[path->layer].width_mm);
      cairo_set_dash (self->cr, &dash_mm, dash_mm > 0.0 ? 1 : 0, 0.0);
      cairo_stroke (self->cr);
    }
  cairo_set_dash (self->cr, NULL, 0, 0.0);
}

/* ---- pages ----------------------------------------------------------------------------------- */

static void
draw_tile (Pdf *self,
           guint column,
           guint row)
{
  const HutTiling *tiling = &self->tiling;
  const HutRect tile = hut_tiling_tile (tiling, column, row);
  const double below_mm = tiling->paper_height_mm - BAR_ABOVE_MM;
  HutPoint marks[HUT_TILE_MARKS_MAX];
  const guint mark_count = hut_tiling_marks (tiling, column, row, marks);
  g_autofree char *name = dup_plain (self->page->name);
  g_autofree char *label = g_strdup_printf ("%s  row %u/%u  column %u/%u", name, row + 1,
                                            tiling->rows, column + 1, tiling->columns);

  cairo_save (self->cr);
  cairo_rectangle (self->cr, tiling->margin_mm, tiling->margin_mm, tile.u1 - tile.u0,
                   tile.v1 - tile.v0);
  cairo_clip (self->cr);
  draw_lines (self, tile, hut_tiling_to_page (tiling, column, row, (HutPoint) { 0, 0 }));
  cairo_restore (self->cr);
  for (guint i = 0; i < mark_count; i++)
    hut_tile_mark_draw (self->cr, marks[i]);
  hut_scale_bar_draw (self->cr, (HutPoint) { tiling->margin_mm, below_mm }, BAR_MM);
  draw_text (self, "100 mm", (HutPoint) { tiling->margin_mm + BAR_MM + TEXT_MM, below_mm },
             TEXT_MM);
  draw_text (self, label, (HutPoint) { tiling->margin_mm, tiling->margin_mm - TEXT_MM }, TEXT_MM);
  cairo_show_page (self->cr);
}

/* All papers with their rows and columns, small. */
static void
draw_map (Pdf *self,
          HutRect box)
{
  const HutTiling *tiling = &self->tiling;
  const HutRect last = hut_tiling_tile (tiling, tiling->columns - 1, tiling->rows - 1);
  const double width_mm = last.u1 - tiling->area.u0, height_mm = tiling->area.v1 - last.v0;
  const double scale_ratio
      = MIN ((box.u1 - box.u0) / width_mm, (box.v1 - box.v0) / height_mm);
  const HutPoint origin = { box.u0 - tiling->area.u0 * scale_ratio,
                            box.v0 + tiling->area.v1 * scale_ratio };

  cairo_new_path (self->cr);
  for (guint i = 0; i < self->page->paths->len; i++)
    trace (self, g_ptr_array_index (self->page->paths, i), origin, scale_ratio);
  for (guint i = 0; i < tiling->rows * tiling->columns; i++)
    {
      const HutRect tile = hut_tiling_tile (tiling, i % tiling->columns, i / tiling->columns);

      cairo_rectangle (self->cr, origin.u + tile.u0 * scale_ratio,
                       origin.v - tile.v1 * scale_ratio, (tile.u1 - tile.u0) * scale_ratio,
                       (tile.v1 - tile.v0) * scale_ratio);
    }
  cairo_set_line_width (self->cr, LINES[HUT_LAYER_SCORE].width_mm);
  cairo_stroke (self->cr);
}

static void
draw_cover (Pdf *self)
{
  const double left_mm = self->tiling.margin_mm;
  const double right_mm = self->tiling.paper_width_mm - left_mm;
  const double bottom_mm = self->tiling.paper_height_mm - left_mm;
  double v = left_mm + TITLE_MM;
  char number[HUT_NUMBER_SIZE];
  const HutWritePage *page = self->page;
  const char *const *notes = page->notes != NULL ? page->notes : NOTES;
  g_autofree char *title
      = dup_plain (page->design_name != NULL ? page->design_name : page->name);
  g_autofree char *stock = g_strdup_printf (
      "%s  %s  %s mm", page->name, page->stock->name,
      hut_number_fixed (number, hut_stock_mean_mm (page->stock), 2));
  g_autofree char *plain_stock = dup_plain (stock);
  g_autofree char *mark = page->mark != NULL ? dup_plain (page->mark) : NULL;

  draw_text (self, title, (HutPoint) { left_mm, v }, TITLE_MM);
  draw_text (self, plain_stock, (HutPoint) { left_mm, v += LINE_STEP_MM }, TEXT_MM);
  if (mark != NULL)
    draw_text (self, mark, (HutPoint) { left_mm, v += LINE_STEP_MM }, TEXT_MM);
  for (guint i = 0; notes[i] != NULL; i++)
    {
      g_autofree char *note = dup_plain (notes[i]);

      draw_text (self, note, (HutPoint) { left_mm, v += LINE_STEP_MM }, TEXT_MM);
    }
  v += LINE_STEP_MM;
  hut_scale_bar_draw (self->cr, (HutPoint) { left_mm, v }, BAR_MM);
  draw_text (self, "100 mm", (HutPoint) { left_mm + BAR_MM + TEXT_MM, v }, TEXT_MM);
  cairo_rectangle (self->cr, left_mm, v + TEXT_MM, BAR_MM, BAR_MM);
  cairo_stroke (self->cr);
  v += TEXT_MM;
  /* In the square or under it, whichever leaves more. */
  if (bottom_mm - v - BAR_MM > right_mm - left_mm - BAR_MM)
    draw_map (self, (HutRect) { left_mm, v + BAR_MM + TEXT_MM, right_mm, bottom_mm });
  else
    draw_map (self, (HutRect) { left_mm + BAR_MM + TEXT_MM, v, right_mm, bottom_mm });
  cairo_show_page (self->cr);
}

static void
draw (Pdf *self)
{
  draw_cover (self);
  for (guint row = 0; row < self->tiling.rows; row++)
    for (guint column = 0; column < self->tiling.columns; column++)
      if (tile_has_lines (self, hut_tiling_tile (&self->tiling, column, row)))
        draw_tile (self, column, row);
}

static GBytes *
write_pdf (const HutWritePage *page,
           HutPaper paper,
           GError **error)
{
  g_return_val_if_fail (page != NULL && page->paths != NULL && page->stock != NULL, NULL);

  const HutRect work = hut_tool_paths_bounds (page->paths);
  const HutRect area = work.u1 < work.u0
                           ? (HutRect) { 0, 0, page->width_mm, page->depth_mm }
                           : (HutRect) { work.u0 - BORDER_MM, work.v0 - BORDER_MM,
                                         work.u1 + BORDER_MM, work.v1 + BORDER_MM };
  Pdf self = { .page = page, .bytes = g_byte_array_new () };
  cairo_status_t status;

  hut_tiling_init (&self.tiling, paper, area);
  self.surface = cairo_pdf_surface_create_for_stream (
      append_bytes, self.bytes, self.tiling.paper_width_mm * PT_PER_MM,
      self.tiling.paper_height_mm * PT_PER_MM);
  cairo_pdf_surface_set_metadata (self.surface, CAIRO_PDF_METADATA_CREATE_DATE, CREATED);
  cairo_pdf_surface_set_metadata (self.surface, CAIRO_PDF_METADATA_TITLE, page->name);
  self.cr = cairo_create (self.surface);
  cairo_set_tolerance (self.cr, TOLERANCE_PT);
  cairo_scale (self.cr, PT_PER_MM, PT_PER_MM);
  hut_ink_begin (&self.ink, self.cr, hut_palette_get (FALSE, TRUE), self.tiling.paper_width_mm,
                 self.tiling.paper_height_mm, 0.0);
  cairo_set_source_rgb (self.cr, 0.0, 0.0, 0.0);
  draw (&self);
  hut_ink_end (&self.ink);
  cairo_destroy (self.cr);
  cairo_surface_finish (self.surface);
  status = cairo_surface_status (self.surface);
  cairo_surface_destroy (self.surface);
  if (status == CAIRO_STATUS_SUCCESS)
    return g_byte_array_free_to_bytes (self.bytes);
  g_byte_array_unref (self.bytes);
  g_set_error (error, HUT_EXPORT_ERROR, HUT_EXPORT_ERROR_IO, "the PDF cannot be made: %s",
               cairo_status_to_string (status));
  return NULL;
}

GBytes *
hut_write_page_pdf_a4 (const HutWritePage *page,
                       GError **error)
{
  return write_pdf (page, HUT_PAPER_A4, error);
}

GBytes *
hut_write_page_pdf_a3 (const HutWritePage *page,
                       GError **error)
{
  return write_pdf (page, HUT_PAPER_A3, error);
}

GBytes *
hut_write_page_pdf_letter (const HutWritePage *page,
                           GError **error)
{
  return write_pdf (page, HUT_PAPER_LETTER, error);
}

/* src/draw/hut-tiling.c: a drawing in full size over several sheets of paper.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-draw"
#include "config.h"
#include "draw/hut-tiling.h"

/* Common printers leave some 5 mm white; own choice: twice that, and a line of text. */
#define MARGIN_MM 14.0
#define OVERLAP_MM 10.0
/* Own choice: seen from where one stands, and small enough for the overlap. */
#define CROSS_MM 8.0
#define CIRCLE_MM 4.0
#define LINE_MM 0.15
#define TICK_EVERY_MM 10.0
#define TICK_MM 2.0

/* ISO 216; ANSI/ASME Y14.1 (from memory): 8.5 x 11 in. */
static const double PAPERS_MM[HUT_PAPER_COUNT][2] = {
  [HUT_PAPER_A4] = { 210.0, 297.0 },
  [HUT_PAPER_A3] = { 297.0, 420.0 },
  [HUT_PAPER_LETTER] = { 215.9, 279.4 },
};

static double
usable_width_mm (const HutTiling *self)
{
  return self->paper_width_mm - 2.0 * self->margin_mm;
}

static double
usable_height_mm (const HutTiling *self)
{
  return self->paper_height_mm - 2.0 * self->margin_mm;
}

static guint
count_tiles (double length_mm,
             double usable_mm,
             double overlap_mm)
{
  /* Within the border of the grid, so that what fits to the hair takes one. */
  const double tiles = (length_mm - overlap_mm - HUT_GRID_MM / 2.0) / (usable_mm - overlap_mm);

  return (guint) MAX (ceil (tiles), 1.0);
}

static HutTiling
tiling_on (double width_mm,
           double height_mm,
           HutRect area)
{
  HutTiling self = {
    .paper_width_mm = width_mm,
    .paper_height_mm = height_mm,
    .margin_mm = MARGIN_MM,
    .overlap_mm = OVERLAP_MM,
    .area = area,
  };

  self.columns = count_tiles (area.u1 - area.u0, usable_width_mm (&self), OVERLAP_MM);
  self.rows = count_tiles (area.v1 - area.v0, usable_height_mm (&self), OVERLAP_MM);
  return self;
}

void
hut_tiling_init (HutTiling *self,
                 HutPaper paper,
                 HutRect area)
{
  g_return_if_fail (self != NULL && (guint) paper < HUT_PAPER_COUNT);
  g_return_if_fail (area.u1 >= area.u0 && area.v1 >= area.v0);

  const double *size_mm = PAPERS_MM[paper];
  const HutTiling upright = tiling_on (size_mm[0], size_mm[1], area);
  const HutTiling across = tiling_on (size_mm[1], size_mm[0], area);

  *self = across.columns * across.rows < upright.columns * upright.rows ? across : upright;
}

HutRect
hut_tiling_tile (const HutTiling *self,
                 guint column,
                 guint row)
{
  const double width_mm = usable_width_mm (self), height_mm = usable_height_mm (self);
  const double u0 = self->area.u0 + column * (width_mm - self->overlap_mm);
  const double v1 = self->area.v1 - row * (height_mm - self->overlap_mm);

  return (HutRect) { u0, v1 - height_mm, u0 + width_mm, v1 };
}

HutPoint
hut_tiling_to_page (const HutTiling *self,
                    guint column,
                    guint row,
                    HutPoint p)
{
  const HutRect tile = hut_tiling_tile (self, column, row);

  return (HutPoint) { self->margin_mm + p.u - tile.u0, self->margin_mm + tile.v1 - p.v };
}

guint
hut_tiling_marks (const HutTiling *self,
                  guint column,
                  guint row,
                  HutPoint marks[HUT_TILE_MARKS_MAX])
{
  const double near_mm = self->margin_mm + self->overlap_mm / 2.0;
  const double across[2] = { near_mm, self->paper_width_mm - near_mm };
  const double down[2] = { near_mm, self->paper_height_mm - near_mm };
  const gboolean beside[2] = { column > 0, column + 1 < self->columns };
  const gboolean over[2] = { row > 0, row + 1 < self->rows };
  guint count = 0;

  for (guint i = 0; i < 2; i++)
    for (guint k = 0; k < 2; k++)
      if (beside[i] || over[k])
        marks[count++] = (HutPoint) { across[i], down[k] };
  return count;
}

void
hut_tile_mark_draw (cairo_t *cr,
                    HutPoint at)
{
  cairo_new_path (cr);
  cairo_move_to (cr, at.u - CROSS_MM / 2.0, at.v);
  cairo_line_to (cr, at.u + CROSS_MM / 2.0, at.v);
  cairo_move_to (cr, at.u, at.v - CROSS_MM / 2.0);
  cairo_line_to (cr, at.u, at.v + CROSS_MM / 2.0);
  cairo_new_sub_path (cr);
  cairo_arc (cr, at.u, at.v, CIRCLE_MM / 2.0, 0.0, 2.0 * G_PI);
  cairo_set_line_width (cr, LINE_MM);
  cairo_stroke (cr);
}

void
hut_scale_bar_draw (cairo_t *cr,
                    HutPoint at,
                    double length_mm)
{
  cairo_new_path (cr);
  cairo_move_to (cr, at.u, at.v);
  cairo_line_to (cr, at.u + length_mm, at.v);
  for (double tick_mm = 0.0; tick_mm <= length_mm; tick_mm += TICK_EVERY_MM)
    {
      cairo_move_to (cr, at.u + tick_mm, at.v - TICK_MM);
      cairo_line_to (cr, at.u + tick_mm, at.v);
    }
  cairo_set_line_width (cr, LINE_MM);
  cairo_stroke (cr);
}

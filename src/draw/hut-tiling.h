/* src/draw/hut-tiling.h: a drawing in full size over several sheets of paper.
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The page frame is in mm with y down; drawings have v up. Neighbours overlap, and the registration
 * marks in the overlap are drawn on both, so that they can be laid or held to the light on each
 * other. */
#pragma once
#include "geom/hut-geom.h"
#include <cairo.h>

typedef enum
{
  HUT_PAPER_A4,
  HUT_PAPER_A3,
  HUT_PAPER_LETTER,
  HUT_PAPER_COUNT
} HutPaper;

#define HUT_TILE_MARKS_MAX 4

typedef struct
{
  double paper_width_mm, paper_height_mm; /* as it is printed */
  double margin_mm;                       /* that printers leave white */
  double overlap_mm;                      /* of neighbours */
  HutRect area;                           /* of the drawing, mm */
  guint columns, rows;                    /* row 0 is the uppermost */
} HutTiling;

/* Upright or across, whichever takes fewer sheets. @area: not empty */
void hut_tiling_init (HutTiling *self, HutPaper paper, HutRect area);
/* What a tile shows of the drawing, mm. */
HutRect hut_tiling_tile (const HutTiling *self, guint column, guint row);
/* A point of the drawing in the page frame of a tile, mm. */
HutPoint hut_tiling_to_page (const HutTiling *self, guint column, guint row, HutPoint p);
/* Where a tile has registration marks, page frame, mm. Returns: how many */
guint hut_tiling_marks (const HutTiling *self,
                        guint column,
                        guint row,
                        HutPoint marks[HUT_TILE_MARKS_MAX]);

/* A cross in a circle; user space in mm. */
void hut_tile_mark_draw (cairo_t *cr, HutPoint at);
/* A line with a tick every 10 mm, from @at to the right; user space in mm. */
void hut_scale_bar_draw (cairo_t *cr, HutPoint at, double length_mm);

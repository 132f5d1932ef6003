/* src/draw/hut-sheet-view.h: sheets side by side, drawn with Cairo.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "draw/hut-flat.h"
#include "sheets/hut-sheet.h"

/**
 * hut_sheet_view_draw:
 * @cr: user space in pixels, y down; (0,0) .. (@width_px, @height_px) is what is visible
 *
 * All sheets at one scale, in as many rows as make them largest; each with its stock, number and
 * size as title, the border that the cutter keeps free, and its parts with their labels. Parts that
 * fit no sheet are counted below.
 */
void hut_sheet_view_draw (cairo_t *cr,
                          const HutAssembly *assembly,
                          const HutPartSet *parts,
                          const HutSheetSet *sheets,
                          const HutFlatStyle *style,
                          double width_px,
                          double height_px);

/* What is shown besides. All pointers are lent. */
typedef struct
{
  const HutDesign *design; /* (nullable): whose kept parts get a pin */
  const char *chosen;      /* (nullable): id of the part that is selected */
  const gboolean *wrong;   /* (nullable) (array): per part of the set: it has not the room it needs */
} HutSheetMarks;

/* The same with marks: a thick outline, a pin, slanted lines. @marks: (nullable) */
void hut_sheet_view_draw_marked (cairo_t *cr,
                                 const HutAssembly *assembly,
                                 const HutPartSet *parts,
                                 const HutSheetSet *sheets,
                                 const HutFlatStyle *style,
                                 const HutSheetMarks *marks,
                                 double width_px,
                                 double height_px);

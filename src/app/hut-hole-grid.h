/* src/app/hut-hole-grid.h: the holes of a pattern as columns and rows, and as text.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "app/hut-units.h"
#include "assembly/hut-assembly.h"

/* Own choice: a vent with more holes takes longer to cut than anybody waits. */
#define HUT_HOLES_MAX 1600

/* A regular pattern about its middle. */
typedef struct
{
  guint columns, rows;                  /* 0 when the holes are no regular pattern */
  double column_pitch_mm, row_pitch_mm; /* 0 for a single column or row */
} HutHoleGrid;

/* (element-type HutPoint) @holes: offsets from the middle of the opening, mm. */
HutHoleGrid hut_hole_grid_read (const GArray *holes);
/* (transfer full) (element-type HutPoint): row by row from the bottom left, mm, on the grid. */
GArray *hut_hole_grid_dup_holes (const HutHoleGrid *self) G_GNUC_WARN_UNUSED_RESULT;

/* (transfer full): "0 0; 12 0": across and up, in the displayed unit. */
char *hut_holes_dup_text (const GArray *holes, HutUnits units) G_GNUC_WARN_UNUSED_RESULT;
/**
 * hut_holes_parse:
 * @text: pairs "across up", parted by semicolons
 * @error: HUT_UNITS_ERROR_*; the message is translated
 *
 * Returns: (transfer full) (element-type HutPoint): 1 to HUT_HOLES_MAX holes; NULL on error
 */
GArray *
hut_holes_parse (const char *text, HutUnits units, GError **error) G_GNUC_WARN_UNUSED_RESULT;

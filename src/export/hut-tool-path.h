/* src/export/hut-tool-path.h: what the tool does on a sheet, in the order in which it does it.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "sheets/hut-sheet.h"

/* Operations, first to last: a part is loose only when all of its other work is done. */
typedef enum
{
  HUT_LAYER_SCORE,
  HUT_LAYER_POCKET, /* outlines of pockets and countersinks: no tool follows them, a hand bores inside */
  HUT_LAYER_DRILL,  /* centre marks, cut through */
  HUT_LAYER_CUT_INSIDE,
  HUT_LAYER_CUT_OUTSIDE,
  HUT_LAYER_COUNT
} HutLayer;

/* One piece of work; sheet frame, mm. */
typedef struct
{
  HutLayer layer;
  char *id;           /* XML name, unique on the sheet */
  HutPath *closed;    /* cut layers: the tool's centre line; pockets: their outline; else NULL */
  gboolean outline;   /* whether that is the outer outline of a part */
  GPtrArray *strokes; /* score layer: GArray of HutPoint, open lines; else NULL */
} HutToolPath;

void hut_tool_path_free (HutToolPath *self);

/**
 * hut_sheet_dup_tool_paths:
 * @parts: the parts that the sheet carries
 * @sheet: the sheet
 * @error: HUT_GEOM_ERROR_* when kerf or fit swallow something of a part; the message names the part
 *
 * A part that lies in a hole of another one is cut whole before the hole, with the inside cuts.
 *
 * Returns: (transfer full) (element-type HutToolPath): by layer, cuts as hut_cut_order_new () has
 *   them; NULL on error
 */
GPtrArray *hut_sheet_dup_tool_paths (const HutPartSet *parts,
                                     const HutSheet *sheet,
                                     GError **error) G_GNUC_WARN_UNUSED_RESULT;

/* TRUE when the path is one full circle. */
gboolean hut_path_get_circle (const HutPath *self, HutPoint *centre, double *radius_mm);
/* The smallest rectangle around all work, mm; empty when there is none. */
HutRect hut_tool_paths_bounds (const GPtrArray *paths);
/* Way of the tool in one layer, mm. */
double hut_tool_paths_length_mm (const GPtrArray *paths, HutLayer layer);

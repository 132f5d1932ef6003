/* src/export/hut-tool-path.h: what the tool does on a sheet, in the order in which it does it.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "sheets/hut-sheet.h"

/* Operations, first to last: a part is loose only when all of its other work is done. */
typedef enum
{
  HUT_LAYER_SCORE,
  HUT_LAYER_POCKET, /* outlines of pockets and countersinks: no tool follows them, a hand bores
                     * inside */
  HUT_LAYER_DRILL,  /* centre marks, cut through */
  HUT_LAYER_CUT_INSIDE,
  HUT_LAYER_CUT_OUTSIDE,
  HUT_LAYER_COUNT
} HutLayer;

/* A bridge that holds what is cut: a stretch of the tool's way, from the start of the closed path,
 * mm. */
typedef struct
{
  double from_mm, to_mm;
} HutTab;

/* One piece of work; sheet frame, mm. */
typedef struct
{
  HutLayer layer;
  char *id;           /* XML name, unique on the sheet */
  HutPath *closed;    /* cut layers: the tool's centre line; pockets: their outline; else NULL */
  gboolean outline;   /* whether that is the outer outline of a part */
  GPtrArray *strokes; /* score layer: GArray of HutPoint, open lines; else NULL */
  gboolean has_lead;  /* the cut begins at `lead`, in the waste, and goes straight to the path */
  HutPoint lead;
  GArray *tabs;       /* HutTab, ascending, none over the start; NULL: none */
} HutToolPath;

void hut_tool_path_free (HutToolPath *self);

/**
 * hut_sheet_dup_tool_paths:
 * @parts: the parts that the sheet carries
 * @sheet: the sheet
 * @error: HUT_GEOM_ERROR_* when kerf or fit swallow something of a part; the message names the part
 *
 * A part that lies in a hole of another one is cut whole before the hole, with the inside cuts.
 * Where no
 * tabs hold the parts, small ones are cut before large ones, so that none of them lies loose for
 * long.
 * Lead-ins and tabs as the sheet's cutter has them.
 *
 * Returns: (transfer full) (element-type HutToolPath): by layer, cuts as hut_cut_order_new () has
 *   them; NULL on error
 */
GPtrArray *hut_sheet_dup_tool_paths (const HutPartSet *parts,
                                     const HutSheet *sheet,
                                     GError **error) G_GNUC_WARN_UNUSED_RESULT;

/**
 * hut_tool_path_dup_chains:
 * @self: a closed path
 *
 * What a beam cuts, piece by piece: the lead-in goes before the first, tabs are left out. A router
 * does not leave its tabs out but goes over them less deep, and its lead-in belongs to how it goes
 * down: both
 * are in its G-code only, and its other files have the whole outline.
 *
 * Returns: (transfer full) (nullable) (element-type GArray): GArrays of HutSegment, each one's end
 * the   next one's start; NULL for a path that is cut whole
 */
GPtrArray *hut_tool_path_dup_chains (const HutToolPath *self,
                                     HutCutterKind cutter) G_GNUC_WARN_UNUSED_RESULT;
/* The stretch of a closed path between two lengths from its start, 0 <= @from_mm < @to_mm <= its
 * length: appends its segments (of HutSegment) to @segments. */
void hut_path_append_stretch (const HutPath *self,
                              double from_mm,
                              double to_mm,
                              GArray *segments);

/* TRUE when the path is one full circle. */
gboolean hut_path_get_circle (const HutPath *self, HutPoint *centre, double *radius_mm);
/* The smallest rectangle around all work, mm; empty when there is none. */
HutRect hut_tool_paths_bounds (const GPtrArray *paths);
/* Way of the tool in one layer, mm: with lead-ins, without tabs that a beam leaves out. */
double hut_tool_paths_length_mm (const GPtrArray *paths, HutLayer layer, HutCutterKind cutter);
/* The same for one path; see hut_tool_path_dup_chains () for what a router has. */
double hut_tool_path_length_mm (const HutToolPath *self, HutCutterKind cutter);

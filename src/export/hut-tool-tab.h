/* src/export/hut-tool-tab.h: bridges that hold parts while they are cut.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "export/hut-tool-path.h"

/* What the tabs of a stock are like. */
typedef struct
{
  double width_mm;  /* of the bridge that stays */
  double height_mm; /* of it, from the lower face up; of a laser the whole thickness */
  double gap_mm;    /* of the tool's way: the width and a kerf */
  double spacing_mm; /* along an outline there is one about so often */
  guint least_count; /* of an outline */
} HutTabSize;

/**
 * hut_tab_size:
 *
 * By thickness: a beam leaves a bridge that the hand snaps, a router one that holds against the
 * tool and
 * is sawn. Common practice, no source: laser 0.4 to 1.2 mm, router 4 to 8 mm wide and a quarter of
 * the thickness, 0.8 to 2 mm, high.
 */
HutTabSize hut_tab_size (const HutStock *stock, HutCutterKind cutter);

/* How far a router goes forwards for each millimetre downwards: in a lead-in and behind a tab, and
 * along a
 * cut without a lead-in (ratio). Common practice: ramps of 3 to 15 degrees. */
#define HUT_RAMP_RATIO 4.0
#define HUT_RAMP_ALONG_RATIO 10.0

/* How deep a router goes in all, and in each pass, mm: the thickest reading and under the sheet. */
double hut_tool_depth_mm (const HutStock *stock, const HutCutter *cutter);
/* The stretch at the start of a cut without lead-in along which a router goes down in each pass,
 * mm; for
 * a closed path shorter than that whole rounds. */
double hut_tool_ramp_mm (const HutStock *stock, const HutCutter *cutter);

/**
 * hut_tool_paths_add_tabs:
 * @paths: (element-type HutToolPath): as they are cut, lead-ins in place
 *
 * Outlines of parts and large holes get tabs, as evenly round as their straight runs allow: in the
 * middle of an edge, never on the flank or at the foot of a finger or on a splice, not on arcs of
 * less than
 * 20 mm radius, and none on a hole whose waste is small. What has no such run gets none.
 */
void hut_tool_paths_add_tabs (GPtrArray *paths, const HutCutter *cutter, const HutStock *stock);

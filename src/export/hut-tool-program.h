/* src/export/hut-tool-program.h: every move of the tool on a sheet, with its height, speed and
 * power.
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What the G-code says and what the time is reckoned from. */
#pragma once
#include "export/hut-tool-path.h"

/* Scoring, to cutting. Own choice: under a tenth of the energy that one pass puts into a
 * millimetre; to be
 * tried on waste first, which the file says. */
#define HUT_SCORE_SPEED_RATIO 3.0
#define HUT_SCORE_POWER_RATIO 0.3

/* So near to the sheet a router travels down before it feeds, mm. Own choice: clear of chips. */
#define HUT_APPROACH_MM 1.0

/* Z is 0 on the upper face of the sheet, and for a beam always. */
typedef struct
{
  guint path;          /* index in the paths */
  gboolean cuts;       /* else a travel: beam off, or tool over the sheet or straight up */
  HutSegment way;      /* in the plane; without length when the move is straight up or down */
  double z0_mm, z1_mm; /* linear along the way */
  double speed_mm_min; /* along the way in space */
  double power_ratio;  /* of a beam, of its full power; 0 when it travels */
} HutToolMove;

/**
 * hut_tool_program_new:
 * @paths: (element-type HutToolPath): in the order of the work
 *
 * All passes of a path before the next path. A beam scores once and leaves tabs out. A router cuts
 * with its
 * middle at -depth k / passes; it goes down in the lead-in on a ramp to and fro, without one on a
 * ramp along
 * the cut, and flattens that; it goes over tabs at their height and down behind them on a ramp. It
 * does not
 * score: its tool is wider than the letters. Outlines of pockets are nobody's work here.
 *
 * Returns: (transfer full) (element-type HutToolMove): begins and ends with the tool at rest; a
 * beam starts
 *   from (0, 0), a router from there at its safe height
 */
GArray *hut_tool_program_new (const GPtrArray *paths,
                              const HutStock *stock,
                              const HutCutter *cutter) G_GNUC_WARN_UNUSED_RESULT;

/* Length of a move in space, mm. */
double hut_tool_move_length_mm (const HutToolMove *self);

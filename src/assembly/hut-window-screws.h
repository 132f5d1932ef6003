/* src/assembly/hut-window-screws.h: where the screws of a window's frame go.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "design/hut-design.h"

/* Farthest apart, mm: common practice is 80 .. 120, no source. */
#define HUT_WINDOW_SCREWS_APART_MM 100.0

/* What a screwed frame of a window comes to. All zero for a bonded one. */
typedef struct
{
  double hole_mm;   /* clearance holes, ISO 273 medium */
  double rim_mm;    /* how far the frame reaches past the glazing: room for the row of screws */
  guint across, up; /* how many spaces along the width and along the height */
  guint count;      /* of screws: 2 (across + up) */
  double least_mm;  /* length that they need: panel, glazing, frame, two washers, nut and what
                     * stands out of it */
  double length_mm; /* the next one that is sold; 0 when there is none */
} HutWindowScrews;

/* Pure. @window: of @design */
HutWindowScrews hut_window_screws_find (const HutDesign *design, const HutWindow *window);

/* Their holes about the window's middle. (transfer full) (element-type HutPath): empty for a bonded
 * frame */
GPtrArray *hut_window_screws_dup_paths (const HutDesign *design,
                                        const HutWindow *window) G_GNUC_WARN_UNUSED_RESULT;

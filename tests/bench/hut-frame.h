/* tests/bench/hut-frame.h: one frame of a design, with the time of each of its stages.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "assembly/hut-part.h"
#include <cairo.h>

#define HUT_FRAME_MS (1000.0 / 60.0)   /* of a screen that shows 60 frames a second */
#define HUT_FRAME_CANVAS_WIDTH_PX 1100 /* own choice: the canvas of a window of 1366 x 768 */
#define HUT_FRAME_CANVAS_HEIGHT_PX 680

typedef enum
{
  HUT_STAGE_ASSEMBLY,
  HUT_STAGE_SPLIT,
  HUT_STAGE_CHECKS,
  HUT_STAGE_DRAW,
  HUT_STAGE_FRAME, /* the four above */
  HUT_STAGE_SHEETS,
  HUT_STAGE_COUNT
} HutStage;

const char *hut_stage_name (HutStage stage);

/**
 * hut_frame_run:
 * @cr: of an image of the canvas's size
 * @selected: (nullable): id of what is dragged
 * @sheets: packs the sheets as well, which no frame does
 * @times_ms: (out caller-allocates): processor time of this thread, so that other programs on the
 *   machine do not count; no stage waits or has threads
 */
void hut_frame_run (const HutDesign *design,
                    cairo_t *cr,
                    const char *selected,
                    gboolean sheets,
                    double times_ms[HUT_STAGE_COUNT]);

/* src/draw/hut-flat-marks.h: findings marked at their places.
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The shape tells the severity: octagon blocks, triangle warns, circle notes. The number is the
 * finding's place in the list, from 1. */
#pragma once
#include "draw/hut-flat-scene.h"

/* One place of one finding. */
typedef struct
{
  guint finding; /* index in the list */
  HutSeverity severity;
  guint panel;       /* index in the assembly */
  HutRect rect;      /* mm, panel frame */
  double x_px, y_px; /* middle of its badge */
} HutMark;

#define HUT_MARK_RADIUS_PX 9.0 /* own choice: room for two digits of small text */

/**
 * hut_flat_marks_new:
 * @findings: (nullable) (element-type HutFinding)
 *
 * Badges keep off each other as long as there is room beside them. The most severe ones choose
 * first.
 *
 * Returns: (transfer full) (element-type HutMark): one per place that has a panel of @assembly
 */
GArray *hut_flat_marks_new (const GPtrArray *findings,
                            const HutAssembly *assembly,
                            const HutFlatLayout *layout,
                            const HutFlatView *view) G_GNUC_WARN_UNUSED_RESULT;
/* Index of the finding whose badge is under a pixel, or -1. */
int hut_flat_marks_pick (const GArray *marks, double x_px, double y_px);
void hut_flat_marks_draw (const HutFlatScene *scene);
/* The badge alone, for lists: its middle at (x, y). @number: 0 draws none. */
void
hut_flat_mark_badge (HutInk *ink, HutSeverity severity, guint number, double x_px, double y_px);

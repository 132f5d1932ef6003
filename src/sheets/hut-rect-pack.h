/* src/sheets/hut-rect-pack.h: rectangles in as few equal bins as may be.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "sheets/hut-rect-bound.h"

/* Where a rectangle lies. */
typedef struct
{
  guint bin; /* 0.. */
  gint32 x, y; /* of its lower left corner in the bin, in the unit of the sizes */
  gboolean turned; /* by 90 degrees */
} HutRectPlace;

/**
 * hut_rect_pack:
 * @sizes: (array length=count): each > 0, and fits the bin in one of the allowed ways
 * @bin: the size of every bin
 * @may_turn: whether they may lie turned by 90 degrees
 * @work_limit: how much may be tried, in looks at a free rectangle: some 100 million a second
 * @bin_count: (out): bins used
 *
 * Edges stay parallel to the bin. Deterministic: the same input gives the same places.
 *
 * Returns: (transfer full) (array length=count): a place for each; NULL when one fits no way
 */
HutRectPlace *hut_rect_pack (const HutRectSize *sizes,
                             guint count,
                             HutRectSize bin,
                             gboolean may_turn,
                             guint64 work_limit,
                             guint *bin_count) G_GNUC_WARN_UNUSED_RESULT;

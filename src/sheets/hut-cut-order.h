/* src/sheets/hut-cut-order.h: in which order closed paths are cut, and where each begins.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "geom/hut-path.h"

/* One path to cut. It is cut whole, from its start corner to its start corner. */
typedef struct
{
  guint path;  /* index */
  guint start; /* corner of the path */
} HutCutStep;

/**
 * hut_cut_order_new:
 * @paths: (element-type HutPath): closed, at least one corner each; none crosses another
 * @ranks: (array): one for each path: all of a lower rank are cut first
 * @from: where the tool is before, mm
 *
 * What lies inside a path is cut before it: a part in a hole before the hole, a hole before its
 * outline. Within that, the way from end to start is short: the nearest path next, then single paths
 * and short runs are moved, runs reversed and start corners changed while that makes it shorter.
 *
 * Returns: (transfer full) (element-type HutCutStep): each path once; no longer a way than always
 *   going to the nearest allowed path
 */
GArray *hut_cut_order_new (const GPtrArray *paths,
                           const guint *ranks,
                           HutPoint from) G_GNUC_WARN_UNUSED_RESULT;
/* Way of the tool between the paths, from @from to the last start, mm. */
double hut_cut_order_travel_mm (const GPtrArray *paths, const GArray *steps, HutPoint from);

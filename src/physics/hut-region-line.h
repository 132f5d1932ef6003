/* src/physics/hut-region-line.h: where a straight line runs through the material of a region.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "geom/hut-region.h"

/* A stretch of a line, in shares of the way from its start to its end: a ratio. */
typedef struct
{
  double from, to;
} HutShare;

/**
 * hut_region_line_shares:
 * @from, @to: two points, mm; the line ends there
 *
 * Crossings with lines and arcs are exact; between two neighbouring ones the line is inside or
 * outside all along. A line that only touches the border is outside. When both points are one, the
 * line is a point.
 *
 * Returns: (transfer full) (element-type HutShare): what lies in the material, ascending
 */
GArray *hut_region_line_shares (const HutRegion *region, HutPoint from, HutPoint to) G_GNUC_WARN_UNUSED_RESULT;
/* TRUE when any of the line lies in the material. */
gboolean hut_region_line_meets (const HutRegion *region, HutPoint from, HutPoint to);

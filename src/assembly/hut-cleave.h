/* src/assembly/hut-cleave.h: a region parted along a line, exactly.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "assembly/hut-part.h"

/* A stretch of a seam line with fingers, along the line, mm. Elsewhere the seam is straight. */
typedef struct
{
  double from_mm, to_mm;
  guint count; /* odd, >= 3 */
} HutFingerZone;

typedef struct
{
  gboolean vertical; /* TRUE: the line is u = at_mm and runs along v */
  double at_mm;
  double reach_mm;   /* fingers swing this far to both sides */
  const GArray *zones; /* HutFingerZone, ascending, not touching each other */
} HutSeam;

/* A stretch of the line that lies in material, mm along the line. */
typedef struct
{
  double from_mm, to_mm;
} HutSolidInterval;

/* (transfer full) (element-type HutSolidInterval): ascending. @error: HUT_GEOM_ERROR_INVALID when the line
 * meets the outline anywhere but straight across a line segment. */
GArray *hut_cleave_intervals (const HutRegion *region, gboolean vertical, double at_mm, GError **error) G_GNUC_WARN_UNUSED_RESULT;

/**
 * hut_region_cleave:
 * @region: a valid region
 * @seam: the line; its zones must lie inside the solid intervals
 *
 * Strategy: the crossings of line and outlines become corners; each solid interval is a chord between
 * two of them. A chord between two different outlines joins them into one (a slit), a chord within one
 * outline parts it into two. Both sides of a chord get the very same points, so the pieces partition the
 * region to the bit. Edges along the chord are MATING.
 *
 * Returns: (transfer full) (element-type HutRegion): the pieces, lowest across-coordinate first; NULL
 *   with HUT_GEOM_ERROR_INVALID as above
 */
GPtrArray *hut_region_cleave (const HutRegion *region, const HutSeam *seam, GError **error) G_GNUC_WARN_UNUSED_RESULT;

/* src/geom/hut-offset.h: exact parallel outlines, for kerf and fit.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "geom/hut-region.h"

/* How far the tool's centre line lies outside the material, mm (> 0 away from the material). */
typedef struct
{
  double plain_mm;  /* kerf / 2 */
  double mating_mm; /* kerf / 2 - allowance / 4: see hut_offset_for_fit () */
} HutOffset;

/**
 * hut_offset_for_fit:
 * @kerf_mm: width that the tool removes, mm, >= 0
 * @allowance_mm: slot minus tongue that is wanted, mm; > 0 loose
 *
 * A tongue and its slot have two flanks, each flank is two mating edges: each edge gives a quarter.
 */
HutOffset hut_offset_for_fit (double kerf_mm, double allowance_mm);

/**
 * hut_region_dup_offset:
 * @self: a valid region
 * @offset: distances per kind of edge, mm
 * @error: HUT_GEOM_ERROR_VANISHED when an edge, hole, slot or web would be lost; the message names
 *   the place (u, v) in mm. HUT_GEOM_ERROR_INVALID when @self is not valid or @offset not finite.
 *   HUT_GEOM_ERROR_NO_CIRCLE when an arc of @self has no chord
 *
 * Outer outlines grow, holes shrink. Lines stay lines, arcs stay arcs with the same centre, corners
 * are mitred; where two edges in line have different distances, a plain edge across is put in.
 * Doubled points are dropped. Nothing is rounded to the grid: the result is a tool path, not an
 * outline.
 *
 * Returns: (transfer full): NULL on error
 */
HutRegion *hut_region_dup_offset (const HutRegion *self,
                                  const HutOffset *offset,
                                  GError **error) G_GNUC_WARN_UNUSED_RESULT;

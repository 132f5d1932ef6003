/* src/geom/hut-width.h: the narrowest web of a region, at any angle.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "geom/hut-region.h"

/* A web: the two border points whose distance it is. */
typedef struct
{
  HutPoint a, b;   /* mm */
  double width_mm;
} HutWeb;

/**
 * hut_region_find_web:
 * @self: a valid region
 * @limit_mm: only webs narrower than this are looked for, mm
 * @web: (out caller-allocates): the narrowest one
 *
 * A web is a chord through the material that is shortest among its neighbours: it cannot be made
 * shorter by moving either end along the border. The corner of a rectangle is no web, a slanted
 * bridge between two holes is one, a tongue that tapers to its tip is none. Edges that the grid has
 * bent apart by less than a thousandth count as parallel, so a tongue between them is one.
 *
 * Returns: TRUE and @web when one is narrower than @limit_mm; FALSE with @web untouched otherwise
 */
gboolean hut_region_find_web (const HutRegion *self, double limit_mm, HutWeb *web);

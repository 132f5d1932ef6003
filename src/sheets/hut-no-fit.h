/* src/sheets/hut-no-fit.h: where one shape may not lie beside another one.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "geom/hut-convex.h"

/* Shapes may run into each other by this much, mm. Own choice: a thousandth of the grid, takes up
 * rounding, so that what fits exactly fits. */
#define HUT_NO_FIT_SLACK_MM 1e-6

/* A piece of border that the moved shape may touch along, mm. */
typedef struct
{
  HutPoint a, b;
} HutWall;

/* A side of a piece: inside is where u * p.u + v * p.v - least_mm > 0, which is the depth, mm. */
typedef struct
{
  double u, v; /* unit vector, ratio */
  double least_mm;
} HutHalfPlane;

/* Every shift of the moving shape at which it overlaps the resting one lies inside a piece. */
typedef struct
{
  HutConvexSet *pieces;
  HutRect bounds;   /* of the pieces, mm */
  GArray *boxes;    /* HutRect of each piece */
  GArray *sides;    /* HutHalfPlane: from each point of the pieces to the next one */
  GArray *walls;    /* HutWall, or NULL as long as nobody asked: hut_no_fit_get_walls () */
} HutNoFit;

/**
 * hut_no_fit_new:
 * @resting: a shape, where it lies
 * @moving: another shape, before it is moved
 *
 * The pieces are the Minkowski sums of a convex piece of @resting and the negative of one of @moving:
 * the open shapes meet when the shift is inside one of them, and only then. Source: M. de Berg,
 * O. Cheong, M. van Kreveld, M. Overmars, "Computational Geometry", 3rd ed. 2008, theorem 13.5.
 */
HutNoFit *hut_no_fit_new (const HutConvexSet *resting,
                          const HutConvexSet *moving) G_GNUC_WARN_UNUSED_RESULT;
void hut_no_fit_free (HutNoFit *self);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (HutNoFit, hut_no_fit_free)

/* The parts of the pieces' edges that are inside no other piece. (element-type HutWall), lent */
const GArray *hut_no_fit_get_walls (HutNoFit *self);
/* TRUE when the shapes overlap by more than HUT_NO_FIT_SLACK_MM after a shift by @p, mm. */
gboolean hut_no_fit_forbids (const HutNoFit *self, HutPoint p);

/**
 * hut_no_fit_depth_mm:
 * @p: shift of the moving shape, mm
 * @out: (out) (nullable): unit vector along which it leaves the piece that it is deepest in
 *
 * How deep the shapes are in each other: the greatest, over the pieces, of the ways out of a piece. A
 * shift by it along @out leaves that piece; others may still hold the point.
 *
 * Returns: mm; 0, with @out untouched, for shapes that hut_no_fit_forbids () allows
 */
double hut_no_fit_depth_mm (const HutNoFit *self, HutPoint p, HutPoint *out);

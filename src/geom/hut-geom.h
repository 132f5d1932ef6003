/* src/geom/hut-geom.h: points, the grid and the error domain of plane geometry.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include <glib.h>
#include <math.h>

/* Every coordinate of a derived outline lies on this grid, mm. Own choice: far under any cutter's
 * repeatability, and coarse enough that doubles hold grid points of a 100 m sheet exactly
 * enough. */
#define HUT_GRID_MM 0.001

/* Chord error of arcs that are flattened for GEOS, mm. Own choice: a tenth of a thin kerf's
 * error. */
#define HUT_CHORD_MM 0.002

typedef enum
{
  HUT_GEOM_ERROR_NO_CIRCLE, /* an arc without chord or with a radius too small for its ends */
  HUT_GEOM_ERROR_VANISHED,  /* an offset would swallow an edge, a hole, a slot or a web */
  HUT_GEOM_ERROR_INVALID,   /* an outline that is not simple, not closed, or not finite */
  HUT_GEOM_ERROR_ENGINE,    /* GEOS refused */
} HutGeomError;

#define HUT_GEOM_ERROR (hut_geom_error_quark ())
GQuark hut_geom_error_quark (void);

/* A point in a panel or sheet frame, mm: u to the right, v up. */
typedef struct
{
  double u, v;
} HutPoint;

/* An axis-parallel rectangle, mm; empty when u1 < u0. */
typedef struct
{
  double u0, v0, u1, v1;
} HutRect;

/**
 * hut_snap_mm:
 * @value_mm: a coordinate, mm
 *
 * Returns: the nearest point of the HUT_GRID_MM grid, mm; never negative zero
 */
double hut_snap_mm (double value_mm);

/* Distance of two points, mm. */
double hut_point_distance_mm (HutPoint a, HutPoint b);

/* (transfer full): "(12.300, 4.000) mm", the same in every locale: for messages. */
char *hut_point_dup_text (HutPoint p) G_GNUC_WARN_UNUSED_RESULT;

/* Points as vectors, mm. */
static inline HutPoint
hut_point_minus (HutPoint a,
                 HutPoint b)
{
  return (HutPoint) { a.u - b.u, a.v - b.v };
}

/* Inner product: mm2 for two lengths, mm for a length on a unit vector. */
static inline double
hut_point_dot (HutPoint a,
               HutPoint b)
{
  return a.u * b.u + a.v * b.v;
}

/* Outer product, mm2: > 0 when @b points left of @a. */
static inline double
hut_point_cross (HutPoint a,
                 HutPoint b)
{
  return a.u * b.v - a.v * b.u;
}

/* The point @by_mm from @from in a unit direction. */
static inline HutPoint
hut_point_along (HutPoint from,
                 HutPoint direction,
                 double by_mm)
{
  return (HutPoint) { from.u + direction.u * by_mm, from.v + direction.v * by_mm };
}

/* Same direction, length 1; not a number for a vector without length. */
static inline HutPoint
hut_point_unit (HutPoint vector)
{
  const double length_mm = hypot (vector.u, vector.v);

  return (HutPoint) { vector.u / length_mm, vector.v / length_mm };
}

/* A quarter turn counter-clockwise. */
static inline HutPoint
hut_point_left (HutPoint direction)
{
  return (HutPoint) { -direction.v, direction.u };
}

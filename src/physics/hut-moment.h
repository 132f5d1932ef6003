/* src/physics/hut-moment.h: area and its moments of a path or region, arcs included.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "geom/hut-region.h"

/* Integrals over the area, about a given origin; they add up. Those of a clockwise path are
 * negative. */
typedef struct
{
  double area_mm2;
  double u_mm3, v_mm3;            /* of u and v: number in mm3 */
  double uu_mm4, vv_mm4, uv_mm4;  /* of u2, v2 and u v: number in mm4 */
} HutMoments;

/**
 * hut_path_moments:
 * @origin: what u and v are counted from, mm
 *
 * Source: Green's theorem: area = 1/2 of the integral of u dv - v du along the path, that of u =
 * 1/2 u2 dv, of u2 = 1/3 u3 dv, of u v = 1/2 u2 v dv, and the like for v. Along a line these are
 * polynomials and along an arc trigonometric ones of degree 4, for which Gauss and Legendre's rule
 * with 20 points is exact to rounding.
 */
HutMoments hut_path_moments (const HutPath *path, HutPoint origin);
/* The same for a region: outline and holes. */
HutMoments hut_region_moments (const HutRegion *region, HutPoint origin);

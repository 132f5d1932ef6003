/* src/physics/hut-plate-bend.h: how far a rectangular plate sags.
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Thin (thickness under a tenth of the shorter side) and even; sag under half of the thickness:
 * beyond that it is stiffer than this says. y = alpha q b4 / (E t3), sigma = beta q b2 / t2, b the
 * shorter side. */
#pragma once
#include "physics/hut-physics.h"

typedef enum
{
  HUT_PLATE_SUPPORTED, /* lies on all four edges, corners held down */
  HUT_PLATE_CLAMPED,   /* all four edges held so that they cannot turn */
} HutPlateEdges;

/* Poisson's ratio that the published tables assume. */
#define HUT_POISSON_TABLE_RATIO 0.3

/**
 * hut_plate_sag_ratio:
 * @side_ratio: longer over shorter side, >= 1
 * @poisson_ratio: 0 .. 0.5
 *
 * alpha, by another way than the tables: Navier's double series (S. Timoshenko, S.
 * Woinowsky-Krieger, Theory of Plates and Shells, 1959, art. 30) for a supported plate; Ritz's
 * method with polynomials for a clamped one.
 */
double hut_plate_sag_ratio (HutPlateEdges edges, double side_ratio, double poisson_ratio);

/* beta of the largest stress: in the middle (supported), or at the middle of the longer side
 * (clamped). */
double hut_plate_stress_ratio (HutPlateEdges edges, double side_ratio, double poisson_ratio);

typedef struct
{
  HutPlateEdges edges;
  double width_m, height_m, thickness_m;
  double modulus_pa; /* the low end of what is published; half of it for plastics in the long run */
  double poisson_ratio;
} HutPlateSheet;

/* Largest sag (m) and stress (Pa) under an even load, Pa; NAN for sizes that are not > 0. */
double hut_plate_sag_m (const HutPlateSheet *self, double load_pa);
double hut_plate_stress_pa (const HutPlateSheet *self, double load_pa);
/* Own weight as a load, Pa: rho g t. */
double hut_own_weight_pa (double density_kg_m3, double thickness_m);

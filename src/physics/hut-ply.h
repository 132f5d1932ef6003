/* src/physics/hut-ply.h: plywood: its stiffness from its plies, its thickness from the sheet's
 * standard. SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "physics/hut-physics.h"

/* Birch veneer along its grain, Pa, and a ply as sanded, m: with 0 across the grain they give every
 * printed value of the Handbook of Finnish Plywood (from memory; the formula reproduces its table).
 * */
#define HUT_BIRCH_PA 17500e6
#define HUT_BIRCH_INNER_M 1.4e-3
#define HUT_BIRCH_OUTER_M 1.1e-3

/* Bending moduli of a balanced lay-up, Pa: along the outer grain and across; they add up to the
 * veneer's. */
typedef struct
{
  double along_pa, across_pa;
} HutPlyStiffness;

/* Source: classical laminate theory, sum of E (z1^3 - z0^3) over the plies of each direction.
 * @plies: odd, >= 3; else NAN. */
HutPlyStiffness hut_ply_stiffness (double veneer_pa, guint plies, double outer_m, double inner_m);

/* Range of thickness that a standard allows, m. */
typedef struct
{
  double least_m, most_m;
} HutThicknessRange;

/* Sanded plywood of a nominal thickness: +(0.2 mm + 0.03 t), -(0.4 mm + 0.03 t). Source: EN
 * 315:2000 (from memory; the same formula seen in GB/T 9846). */
HutThicknessRange hut_plywood_range (double nominal_m);
/* Medium density board: +-0.2 mm up to 19 mm (makers, EN 324-1), +-0.3 mm above (EN 622-1, from
 * memory). */
HutThicknessRange hut_mdf_range (double nominal_m);

/* A birch sheet as sold. Source: data sheet "Birch Plywood" of a distributor in the UK. */
typedef struct
{
  double nominal_m, mean_m, least_m, most_m, density_kg_m3; /* density 0: not given */
  guint plies;
} HutBirchSheet;

/* (transfer none) (nullable): the row of a nominal thickness; static. */
const HutBirchSheet *hut_birch_sheet (double nominal_m);

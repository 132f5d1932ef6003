/* src/physics/hut-beam.h: how far a strip of sheet sags.
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Thin and linear elastic: span over 10 thicknesses, small sag. Standard results of any text on
 * strength of materials. @bending_n_m2 is E I > 0, else NAN. */
#pragma once
#include "physics/hut-physics.h"

typedef enum
{
  HUT_BEAM_SUPPORTED, /* lies on both ends */
  HUT_BEAM_FIXED,     /* both ends held so that they cannot turn */
  HUT_BEAM_CANTILEVER, /* one end held, the other free */
} HutBeamEnds;

/* E I of a strip, N m2: E b t3 / 12. */
double hut_strip_bending_n_m2 (double modulus_pa, double width_m, double thickness_m);
/* Largest sag (m) under an even load, N/m. */
double hut_beam_even_sag_m (HutBeamEnds ends, double span_m, double load_n_m, double bending_n_m2);
/* Largest sag (m) under one load in the middle, or at the free end, N. */
double hut_beam_point_sag_m (HutBeamEnds ends, double span_m, double load_n, double bending_n_m2);

/* A splice as a hinge that resists turning. */
typedef struct
{
  double at_m;          /* along the span */
  double stiffness_nm;  /* moment per radian, N m/rad, > 0 */
} HutSpliceHinge;

/* Stiffness (N m/rad) of a strap glued over a splice: it bends over the stretch that the fingers
 * take up, E b t3 / (12 s). All > 0, else NAN. Own derivation: the glued fingers themselves count
 * for nothing. */
double hut_strap_stiffness_nm (double modulus_pa, double width_m, double thickness_m, double stretch_m);

/**
 * hut_beam_spliced_sag_m:
 * @splices: (array length=n): at 0 .. span
 *
 * Largest sag (m) of a beam on two supports under an even load, its splices giving way. The moment
 * does not depend on the stiffness there, so each splice at a adds the kink M(a) / k, M = w a (L -
 * a) / 2, and a triangle of sag to the beam's own curve w x (L3 - 2 L x2 + x3) / (24 E I). Looked
 * at in 1/1000 of the span (own choice).
 */
double hut_beam_spliced_sag_m (double span_m,
                               double load_n_m,
                               double bending_n_m2,
                               const HutSpliceHinge *splices,
                               guint n);

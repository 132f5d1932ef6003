/* src/physics/hut-fitting.h: what entries, bends, grilles and exits of a duct cost.
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * dp = K rho v2 / 2, v in the duct named. Handbooks differ by up to a factor of two for the same
 * thing. */
#pragma once
#include "physics/hut-physics.h"

typedef enum
{
  HUT_FITTING_ENTRY_FLUSH,   /* sharp-edged, flush with a wall */
  HUT_FITTING_ENTRY_FLANGED, /* end of a duct with a flange, as a hood */
  HUT_FITTING_ENTRY_PLAIN,   /* end of a duct without one */
  HUT_FITTING_ENTRY_BELL,    /* bell mouth */
  HUT_FITTING_EXIT,          /* into a room, or the open */
  HUT_FITTING_ELBOW,         /* 90 degrees, the usual tight one */
  HUT_FITTING_MITRE,         /* 90 degrees, two straight cuts, no vanes */
  HUT_FITTING_MITRE_HALF,    /* 45 degrees */
  HUT_FITTING_COUNT
} HutFitting;

/* K, a ratio. Source: beside each row of the table in hut-fitting.c; NAN for what is no fitting. */
double hut_fitting_loss_ratio (HutFitting fitting);

/**
 * hut_bend_loss_ratio:
 * @radius_ratio: radius of the middle line over the duct's diameter, > 0
 * @angle_rad: 0 .. pi
 *
 * A smooth round bend in clean pipe. Source: Crane TP 410 as in the documentation of a pipe flow
 * program, 14, 12, 12 fT at r / D of 1.5, 2, 3, with fT 0.0166; tighter than 1 it counts as the
 * elbow; in proportion to the angle (own choice: a bend of half the angle costs a little over
 * half).
 *
 * Returns: K; NAN outside of the ranges
 */
double hut_bend_loss_ratio (double radius_ratio, double angle_rad);

/* K on the velocity before a sudden enlargement, (1 - (D1 / D2)2)2. Source: Borda and Carnot.
 * @diameter_ratio: D1 / D2, 0 .. 1. */
double hut_enlargement_loss_ratio (double diameter_ratio);

/* K on the velocity of approach; @free_ratio: open share of the area, 0 < f <= 1. Source: Idelchik,
 * Handbook of Hydraulic Resistance: thin sharp-edged plate (0.707 sqrt (1 - f) + 1 - f)2 / f2;
 * screen of round wire 1.3 (1 - f) + (1 / f - 1)2. */
double hut_thin_guard_loss_ratio (double free_ratio);
double hut_wire_guard_loss_ratio (double free_ratio);
/* The same for a grille thicker than its holes are wide: entry and exit, (0.5 (1 - f) + (1 - f)2) /
 * f2. */
double hut_thick_grille_loss_ratio (double free_ratio);

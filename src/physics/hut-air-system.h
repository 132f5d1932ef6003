/* src/physics/hut-air-system.h: what it takes to draw air through an enclosure and its duct.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "physics/hut-fan.h"
#include "physics/hut-friction.h"

/* A length of duct or hose with what lies in it; a guard at the fan is a run without length. */
typedef struct
{
  double diameter_m;
  double length_m;
  double roughness_m;
  double loss_ratio; /* sum of K of its fittings, on its own velocity pressure */
} HutDuctRun;

typedef struct
{
  HutAir air;
  double intake_m2;       /* sum of Cd A of all that lets air in: intakes, gaps, the seam */
  const HutDuctRun *runs; /* (array length=n_runs): one after the other */
  guint n_runs;
  double fixed_pa;        /* does not depend on the flow, such as a flap */
} HutAirSystem;

/* Pressure (Pa) that a flow (m3/s, >= 0) takes; INFINITY without intake; NAN where a run is none.
 * It never falls with the flow. Source: sum of orifice, friction and fittings, as in hut-orifice.h
 * and hut-friction.h. */
double hut_air_system_pressure_pa (const HutAirSystem *self, double flow_m3_s);
/* The share of it that the intakes take: how far the inside is under the room's pressure, Pa. */
double hut_air_system_suction_pa (const HutAirSystem *self, double flow_m3_s);

typedef struct
{
  double flow_m3_s, pressure_pa;
  gboolean several; /* the curves cross more than once (a stall dip): this is the largest stable flow */
  gboolean beyond;  /* they do not cross within the fan's points: this is the last point */
} HutOperatingPoint;

/**
 * hut_operating_point_find:
 * @fans: (array length=n): see hut_fans_pressure_pa ()
 * @point: (out caller-allocates): untouched when FALSE is returned
 *
 * Where the fans' curve meets the system's from above, at the largest flow. Strategy: the
 * difference is looked at on a fine grid of flows from the free flow down, and the first change of
 * sign is closed in on by Brent's method. Two crossings between neighbours of the grid are not
 * promised to be seen.
 *
 * Returns: FALSE when no air moves: no fans, no intake, or a fixed pressure above the fans'
 */
gboolean hut_operating_point_find (const HutFanCurve *const *fans,
                                   guint n,
                                   const HutAirSystem *system,
                                   HutOperatingPoint *point);

/* The flow where a parabolic fan dp0 (1 - (Q / Qm)2) meets K Q2: sqrt (dp0 / (K + dp0 / Qm2)),
 * m3/s. @loss: K, Pa/(m3/s)2, as a number. */
double hut_parabola_meets_m3_s (double shut_pa, double free_m3_s, double loss);

/* src/physics/hut-orifice.h: air through an opening or a gap.
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Q = Cd A sqrt (2 dp / rho). An area by another definition (such as a leakage area at 4 Pa with Cd
 * 1) must not be mixed in. */
#pragma once
#include "physics/hut-physics.h"

/* Discharge of a sharp edge: common practice 0.60 .. 0.61; the same fact as ACGIH's orifice loss
 * 1.78. */
#define HUT_DISCHARGE_SHARP_RATIO 0.6

/* Flow, m3/s; everything >= 0, density > 0, else NAN. */
double hut_orifice_flow_m3_s (double area_m2, double discharge_ratio, double pressure_pa, double density_kg_m3);
/* Pressure (Pa) that drives a flow through it; INFINITY through no area. */
double hut_orifice_pressure_pa (double area_m2, double discharge_ratio, double flow_m3_s, double density_kg_m3);
/* Area (m2) that lets a flow through at that pressure, Pa. */
double hut_orifice_area_m2 (double discharge_ratio, double flow_m3_s, double pressure_pa, double density_kg_m3);
/* Mean velocity over an open area, Q / A, m/s; NAN without area. */
double hut_face_velocity_m_s (double flow_m3_s, double area_m2);

/**
 * hut_stack_pressure_pa:
 * @height_m: of warm air under the place
 *
 * How much warm air inside pushes outwards at a gap near the top, Pa: the box holds fumes at that
 * gap only while the fan's suction is greater. Source: hydrostatics, (rho outside - rho inside) g
 * h.
 */
double hut_stack_pressure_pa (double height_m, double outside_kg_m3, double inside_kg_m3);

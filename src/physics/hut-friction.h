/* src/physics/hut-friction.h: friction of air in a straight duct.
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Friction factors are Darcy's: four times Fanning's. @reynolds_ratio > 0, @roughness_ratio = e / D
 * >= 0; what is not so gives NAN. */
#pragma once
#include "physics/hut-air.h"

/* Laminar below, turbulent above, Reynolds number: Moody (1944). In between nothing is certain. */
#define HUT_LAMINAR_RATIO 2300.0
#define HUT_TURBULENT_RATIO 4000.0

/* Roughness e of ducts, m. Source: ASHRAE duct roughness table, as reproduced by engineering sites;
 * the last one from memory: hoses that are not pulled out straight lose twice as much or worse. */
#define HUT_ROUGHNESS_SMOOTH_PLASTIC_M 0.0457e-3
#define HUT_ROUGHNESS_GALVANISED_M 0.15e-3
#define HUT_ROUGHNESS_HOSE_EXTENDED_M 0.914e-3
#define HUT_ROUGHNESS_HOSE_SLACK_M 3.0e-3

/* Velocity pressure rho v2 / 2, Pa. */
double hut_velocity_pressure_pa (double velocity_m_s, double density_kg_m3);

/* The velocity (m/s) whose velocity pressure that is; @pressure_pa >= 0. */
double hut_velocity_for_m_s (double pressure_pa, double density_kg_m3);

/* Source: 64 / Re, Hagen and Poiseuille. */
double hut_friction_laminar_ratio (double reynolds_ratio);

/* Source: Blasius, 0.3164 Re^-0.25; smooth pipes, 4e3 < Re < 1e5. */
double hut_friction_blasius_ratio (double reynolds_ratio);

/* Source: P. Swamee, A. Jain, Explicit equations for pipe-flow problems, J. Hydraulics Div. ASCE
 * 102 (1976): 0.25 / log10 (e / 3.7 D + 5.74 / Re^0.9)^2; 5e3 <= Re <= 1e8, e / D <= 0.01. */
double hut_friction_swamee_jain_ratio (double reynolds_ratio, double roughness_ratio);

/* Source: S. Haaland, J. Fluids Eng. 105 (1983): 1 / sqrt f = -1.8 log10 ((e / 3.7 D)^1.11 + 6.9 /
 * Re); 4e3 <= Re <= 1e8, e / D <= 0.05. */
double hut_friction_haaland_ratio (double reynolds_ratio, double roughness_ratio);

/* Source: C. Colebrook, J. Inst. Civil Eng. 11 (1939): 1 / sqrt f = -2 log10 (e / 3.7 D + 2.51 /
 * (Re sqrt f)), solved to the last digits; Re > 4000. */
double hut_friction_colebrook_ratio (double reynolds_ratio, double roughness_ratio);

/* The one to use: laminar, Colebrook, and between them a straight line in Re, so that the loss
 * never falls when the flow grows. */
double hut_friction_ratio (double reynolds_ratio, double roughness_ratio);

/**
 * hut_duct_friction_pa:
 * @flow_m3_s: >= 0
 * @diameter_m: of a round duct, or 4 A / perimeter of another one, > 0
 * @length_m: >= 0
 * @roughness_m: e, >= 0
 *
 * Source: Darcy and Weisbach, dp = f L / D rho v2 / 2. Returns: Pa; NAN outside of the ranges
 */
double hut_duct_friction_pa (double flow_m3_s,
                             double diameter_m,
                             double length_m,
                             double roughness_m,
                             const HutAir *air);

/* Mean velocity in a round duct, m/s, and its Reynolds number rho v D / mu. */
double hut_duct_velocity_m_s (double flow_m3_s, double diameter_m);
double hut_duct_reynolds_ratio (double flow_m3_s, double diameter_m, const HutAir *air);

/* Diameter (m) of the round duct that loses as much: 4 A / perimeter of a rectangle. */
double hut_hydraulic_diameter_m (double width_m, double height_m);

/* src/physics/hut-heat.h: how warm it gets inside.
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Steady state, well mixed: the air that leaves has the mean temperature; near a lamp or motor it
 * is hotter. */
#pragma once
#include "physics/hut-air.h"

/* Still air on a wall, radiation included, m2 K/W: 0.68 h ft2 F/Btu, ASHRAE Fundamentals as
 * reproduced in R-value tables. */
#define HUT_FILM_STILL_M2K_W 0.12
/* Conductivity, W/(m K). Source: plywood 0.62 h ft2 F/Btu a half inch (ASHRAE Fundamentals 1997,
 * ch. 24); medium density board 0.53 a half inch; acrylic and polycarbonate, makers' property
 * pages. */
#define HUT_CONDUCTS_PLYWOOD_W_MK 0.12
#define HUT_CONDUCTS_BOARD_W_MK 0.136
#define HUT_CONDUCTS_ACRYLIC_W_MK 0.19
#define HUT_CONDUCTS_POLYCARBONATE_W_MK 0.2

/* U of a wall, W/(m2 K): 1 / (inner film + t / k + outer film), all m, W/(m K), m2 K/W; NAN for a
 * wall that does not conduct or without any resistance. */
double hut_wall_u_w_m2k (double thickness_m, double conductivity_w_mk, double inner_m2k_w, double outer_m2k_w);

/**
 * hut_heat_rise_k:
 * @heat_w: released inside: machine, lamps, laser; nearly all of the electric power that goes in
 * @flow_m3_s: of air through it, >= 0
 * @walls_w_k: sum of U A of all walls, >= 0
 *
 * Source: energy balance, dT = P / (rho cp Q + sum U A). Returns: K; INFINITY when nothing carries
 * it off
 */
double hut_heat_rise_k (double heat_w, double flow_m3_s, double walls_w_k, double density_kg_m3);

/* Flow (m3/s) that keeps the rise at @rise_k > 0: (P / dT - sum U A) / (rho cp), never negative. */
double hut_heat_flow_m3_s (double heat_w, double rise_k, double walls_w_k, double density_kg_m3);

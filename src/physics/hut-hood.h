/* src/physics/hut-hood.h: how far the pull of an opening reaches.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "physics/hut-physics.h"

/* Least velocity (m/s) at which air has to enter an opening so that fumes stay inside: common
 * practice of local exhaust; rooms with draughts want more. */
#define HUT_HOLD_VELOCITY_M_S 0.5

typedef enum
{
  HUT_HOOD_PLAIN,        /* end of a duct in the open */
  HUT_HOOD_FLANGED,      /* the same in a wall */
  HUT_HOOD_SLOT,         /* at most a fifth as high as long */
  HUT_HOOD_SLOT_FLANGED,
} HutHoodKind;

/* Coefficient of entry Ce = 1 / sqrt (1 + F), a ratio; F >= 0: what the entry loses, in velocity
 * pressures. Source: ACGIH, Industrial Ventilation. */
double hut_hood_entry_ratio (double loss_ratio);
/* F of an entry from the suction behind it and the velocity pressure in the duct, Pa: SP / pv - 1.
 * */
double hut_hood_loss_ratio (double suction_pa, double velocity_pressure_pa);
/* Flow (m3/s) from the suction measured behind an entry, Q = Ce A sqrt (2 SP / rho). */
double hut_hood_flow_m3_s (double entry_ratio, double area_m2, double suction_pa, double density_kg_m3);

/**
 * hut_hood_capture_m3_s:
 * @size: the opening's area, m2 (plain, flanged), or the slot's length, m
 * @distance_m: to the place where it shall pull, >= 0; up to 1.5 diameters
 * @velocity_m_s: wanted there
 *
 * Source: DallaValle's family, ACGIH hood figure: plain v (10 x2 + A), flanged 0.75 of it, slot 3.7
 * l v x, flanged slot 2.6 l v x. Returns: flow, m3/s; NAN for negative input
 */
double hut_hood_capture_m3_s (HutHoodKind kind, double size, double distance_m, double velocity_m_s);

/* src/physics/hut-cover.h: how much paint, wax and glue to buy.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "physics/hut-physics.h"

/* Rates in common use, m2 per litre: interior paint, clear varnish (makers' pages), wood glue at
 * 150 g/m2 and 1.1 kg/l (common practice). Raw board edges take twice as much the first time. */
#define HUT_COVERS_PAINT_M2_L 11.0
#define HUT_COVERS_VARNISH_M2_L 10.0
#define HUT_COVERS_GLUE_M2_L 7.3

/* Area that a litre covers (m2/l): 10 x volume solids in % / dry film in um, here in SI: solids /
 * film / 1000. Source: theoretical spreading rate of paint makers. @dry_m > 0 */
double hut_spreading_m2_l (double solids_ratio, double dry_m);
/* The same for a mass per area (kg/m2) of a liquid: density / mass / 1000. */
double hut_spreading_by_mass_m2_l (double density_kg_m3, double mass_kg_m2);
/* Litres (a number) for an area: area x coats / rate x (1 + waste). @rate_m2_l > 0 */
double hut_litres_for (double area_m2, guint coats, double rate_m2_l, double waste_ratio);

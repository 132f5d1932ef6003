/* src/assembly/hut-strap.h: backing plates over splices.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "assembly/hut-part.h"

/* A strap is at least as wide as its splice's fingers and this many thicknesses on each side of them
 * (common practice, no source). */
#define HUT_STRAP_SIDE_RATIO 5.0
/* A strap ends one thickness and this before the neighbouring panel (common practice, no source). */
#define HUT_STRAP_END_MM 1.0
/* Room between a strap and a plate, an opening or another strap, mm; own choice. */
#define HUT_STRAP_GAP_MM 2.0
/* A strap shorter than this many thicknesses holds nothing; own choice. */
#define HUT_STRAP_LEAST_RATIO 3.0

/* Width of a panel's straps, mm: as wanted, or what the bed takes of it. */
double hut_strap_width_mm (const HutDesign *design, const HutPanel *panel);

/* Appends straps behind the splices of one panel to the set's parts and solids: where plates, openings or
 * straps across are in the way they stop short; what is longer than the bed is divided evenly. */
void hut_strap_add (const HutAssembly *assembly, guint panel, HutPartSet *set);

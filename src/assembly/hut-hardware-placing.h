/* src/assembly/hut-hardware-placing.h: hardware put on its panels with all that belongs to it.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "assembly/hut-assembly.h"

/* Cutout and screw holes, pocket or face plate of one piece of hardware, on each panel that it joins;
 * a trouble for what cannot be made. @hardware: of the assembly's design. */
void hut_hardware_place (HutAssembly *assembly, const HutHardware *hardware);
/* The bodies of one leaf where they stand, also of a leaf that is only thought of. (element-type HutSolid) */
void hut_hardware_append_solids (const HutAssembly *assembly, const HutPlacedHardware *placed, GArray *solids);
/* Box round all holes of a leaf, panel frame, mm; empty without holes. */
HutRect hut_hardware_cut_bounds (const HutPlacedHardware *placed);
/* Appends the bodies of all placed hardware to `solids`. */
void hut_hardware_add_solids (HutAssembly *assembly);

/* Hole of a screw cut, mm: ISO 273 by the hardware's class, or the pilot of a wood screw. */
double hut_hardware_hole_mm (const HutHardware *hardware, const HutItemCut *cut);
/* An outline of the item as this hardware has it cut (see narrow_mm), item frame. (transfer full) */
HutPath *hut_hardware_dup_cut (const HutHardware *hardware, const HutItemCut *cut) G_GNUC_WARN_UNUSED_RESULT;

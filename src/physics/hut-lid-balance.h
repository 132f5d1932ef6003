/* src/physics/hut-lid-balance.h: the real lid on its hinge: force of a hand, and whether all of it
 * tips. SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "physics/hut-mass.h"

typedef struct
{
  HutMass lid, base;     /* their sheet and hardware, lid closed */
  double lever_m;        /* of the lid's point that is farthest from the hinge line; 0: not hinged */
  double machine_kg;     /* that stands in the base; 0 when the bottom is open */
  HutVec3 machine_at_mm; /* middle of its bodies, world */
} HutLidBalance;

/* Of an assembly that is whole. The machine's weight is put in the middle of the box round its
 * bodies that stand still, as nobody weighs where it is. */
HutLidBalance hut_lid_balance_new (const HutAssembly *assembly, const HutPartSet *parts);

/* Where the lid's centre of gravity is when it is open by an angle, mm, world. A rotation by the
 * right hand rule about the hinge line (O. Rodrigues). */
HutVec3 hut_lid_balance_centre_mm (const HutLidBalance *self, const HutAssembly *assembly, double angle_rad);

/* Force (N) of a hand at right angles to its lever, at the far end of the lid, to hold it at an
 * angle; < 0 when it falls open. 0 for a lid that turns level. */
double hut_lid_balance_hand_n (const HutLidBalance *self, const HutAssembly *assembly, double angle_rad);

/* The moment that holds the enclosure on its feet over the one that tips it, about the worst of its
 * four lower edges, a ratio; INFINITY while no weight is beyond any edge. */
double hut_lid_balance_tip_ratio (const HutLidBalance *self, const HutAssembly *assembly, double angle_rad);

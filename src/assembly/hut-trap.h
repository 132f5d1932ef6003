/* src/assembly/hut-trap.h: light traps: boxes of plates behind openings that air passes and light does not.
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Inside, behind an opening, stands a box with a clear depth d. A partition on the panel leaves a slot
 * of d / 3 under the cover; beyond it a chamber as wide as the slot ends at a wall that hangs from the
 * cover and leaves a slot of d / 3 over the panel, where the air comes out, downwards (on a floor or
 * top: to the front). The way has three right-angle bends. A straight line goes either up or down all
 * the way: one that has come in through the opening and passed the first slot, over d - d / 3, never
 * comes back to the second one, under d / 3. So no light passes without two reflections. */
#pragma once
#include "assembly/hut-assembly.h"
#include "assembly/hut-part.h"

/* Slots as a share of the clear depth. Own choice: the most that leaves the partition twice a slot. */
#define HUT_TRAP_SLOT_RATIO (1.0 / 3.0)
/* Room beside the opening, mm, when its stock's smallest web is less. Own choice: room for glue. */
#define HUT_TRAP_MARGIN_MM 6.0

typedef enum
{
  HUT_TRAP_COVER,
  HUT_TRAP_LEFT,
  HUT_TRAP_RIGHT,
  HUT_TRAP_BACK,      /* across from the way out */
  HUT_TRAP_PARTITION,
  HUT_TRAP_LIP,       /* hangs over the way out */
  HUT_TRAP_PLATE_COUNT
} HutTrapPlate;

/* One plate of a trap: a rectangle from (0,0) in a frame of its own, w = 0 at its outer face. */
typedef struct
{
  HutFrame3 frame; /* world */
  double width_mm, height_mm;
} HutTrapPiece;

typedef struct
{
  const HutOpening *opening; /* lent */
  const HutStock *stock;     /* lent */
  guint panel;
  HutRect footprint; /* mm, panel frame */
  double slot_mm;    /* both slots' height */
  double way_mm2;    /* area of the narrowest slot */
  double open_mm2;   /* of the opening */
  HutTrapPiece pieces[HUT_TRAP_PLATE_COUNT];
} HutTrap;

/* FALSE when the opening has no trap, no stock for it, or is not cut. */
gboolean hut_trap_find (const HutAssembly *assembly, const HutPlacedHole *hole, HutTrap *trap);
/* Appends the solids of all traps to the assembly's. */
void hut_trap_run (HutAssembly *assembly);
/* Appends the parts of all traps. */
void hut_trap_add_parts (const HutAssembly *assembly, HutPartSet *set);
/* How far the deepest trap of a side reaches inwards of its panel, mm. */
double hut_trap_intrusion_mm (const HutDesign *design, HutSide side);

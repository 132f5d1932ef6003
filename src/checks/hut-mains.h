/* src/checks/hut-mains.h: openings for mains stay away from those for signals.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "assembly/hut-assembly.h"

/* Least distance between the two, mm: common practice, no source. */
#define HUT_MAINS_APART_MM 100.0

typedef enum
{
  HUT_WIRING_NONE,   /* no leads, or nobody says which */
  HUT_WIRING_MAINS,  /* hardware whose item carries mains */
  HUT_WIRING_SIGNAL, /* connectors that do not, and what serves a thin lead */
} HutWiring;

/* What goes through the hole; pure. */
HutWiring hut_wiring_of (const HutAssembly *assembly, const HutPlacedHole *hole);
/* Distance of two holes, by the boxes that they cut out of their panels, lid closed, mm. */
double hut_wiring_apart_mm (const HutAssembly *assembly, const HutPlacedHole *a, const HutPlacedHole *b);

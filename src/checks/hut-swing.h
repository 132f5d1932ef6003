/* src/checks/hut-swing.h: how near the opening lid comes to what stands around it.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "assembly/hut-part.h"

typedef enum
{
  HUT_AROUND_MACHINE,
  HUT_AROUND_BASE,
  HUT_AROUND_WALL,
  HUT_AROUND_SHELF,
  HUT_AROUND_COUNT
} HutAround;

typedef struct
{
  gboolean exists;
  double distance_mm; /* smallest over the whole swing; 0 when it collides */
  double angle_rad;   /* where the smallest occurs (the first collision when it collides) */
  HutSolid solid;     /* the lid's solid that comes nearest */
  const char *other;  /* id of the machine body, "wall" or "shelf", panel name for the base; lent or static */
} HutApproach;

/* Certified to 0.01 mm by the speed bound of the farthest lid point. Angle 0 is the closed lid, the
 * end is design->shell.opening_angle_deg. For the base, the closed seam itself does not count. */
void hut_swing_find (const HutAssembly *assembly,
                     const HutPartSet *parts,
                     HutApproach approaches[HUT_AROUND_COUNT]);

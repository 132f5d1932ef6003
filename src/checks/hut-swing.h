/* src/checks/hut-swing.h: how near the opening lid comes to what stands around it.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "assembly/hut-part.h"

typedef enum
{
  HUT_AROUND_MACHINE,
  HUT_AROUND_BASE,   /* the base without its baffles, against the lid without its own */
  HUT_AROUND_BAFFLE, /* baffles of either shell against the other shell */
  HUT_AROUND_WALL,
  HUT_AROUND_SHELF,
  HUT_AROUND_COUNT
} HutAround;

typedef struct
{
  gboolean exists;
  gboolean collides;  /* a touch is no collision */
  double distance_mm; /* smallest over the whole swing; 0 when it collides */
  double angle_rad;   /* where the smallest occurs (the first collision when it collides) */
  HutSolid solid;     /* the lid's solid that comes nearest */
  const char *other;  /* id of the machine body, "wall" or "shelf", panel or hardware of the base; lent or static */
  HutSolidKind kind;  /* of the base's solid */
  HutSide side;       /* which wall of the room; side of the panel for the base */
  HutBox3 box;        /* world, mm: what it comes near to; walls and shelf reach very far */
} HutApproach;

/* How far the walls and the shelf of the room reach, mm. Own choice: far beyond HUT_SIZE_MAX_MM. */
#define HUT_SWING_FAR_MM 1e6

/**
 * hut_swing_find:
 * @approaches: (out caller-allocates): one for each kind of thing around; `exists` is FALSE when
 *   there is none of it or the lid is not hinged
 *
 * Angle 0 is the closed lid, the end is design->shell.opening_angle_deg. The result is exact up to
 * rounding, see hut-turn.h.
 *
 * Machine: keep-outs and motions count as if they were solid. What already is near when the lid is
 * closed belongs to the clearance checks, so a solid that comes nearer than swing_clearance_mm
 * *while it moves* goes before one that is nearer, but only as long as the lid is closed.
 *
 * Base: the closed seam counts like any other distance; it is the seam gap, and checks want half
 * of it.
 */
void hut_swing_find (const HutAssembly *assembly,
                     const HutPartSet *parts,
                     HutApproach approaches[HUT_AROUND_COUNT]);

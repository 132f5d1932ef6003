/* src/physics/hut-finish.h: how much surface there is to paint, wax and glue.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "assembly/hut-part.h"

/* Sums over the parts of sheet that are no glazing, m2 and m. */
typedef struct
{
  double outside_m2; /* outer faces of panels */
  double inside_m2;  /* their inner faces, as if nothing lay on them */
  double edge_m2;    /* edges that lie against nothing: holes, rims */
  double joint_m;    /* length of joints: edges that mate, each joint once */
  double joint_m2;   /* the same, times the thickness */
  double strap_m2;   /* straps, window frames, baffles and other plates */
} HutFinish;

/* Adds up all parts; a joint has two edges, so each counts half. */
HutFinish hut_finish_of (const HutPartSet *parts);

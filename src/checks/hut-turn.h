/* src/checks/hut-turn.h: a rectangle that turns about the origin, against one that stands still.
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The section across a hinge line: the hinge is the origin, a solid of the lid is the turning
 * rectangle, and a solid of anything else is the fixed one. u and v are the two world axes across
 * the hinge. */
#pragma once
#include "geom/hut-geom.h"

/* A touch that is not deeper than this is no collision, mm: one step of the grid that sizes lie
 * on. */
#define HUT_TURN_TOUCH_MM HUT_GRID_MM

#define HUT_TURN_SECTORS 4 /* count; own choice: the fastest of 1 .. 24 on large designs */

typedef struct
{
  HutRect rect;     /* mm, at angle 0 */
  double end_rad;   /* it turns counter-clockwise from 0 to here, 0 .. 2 pi */
  HutPoint corners[4];
  double corner_rad[4];            /* direction of each corner at angle 0 */
  HutRect swept[HUT_TURN_SECTORS]; /* bounds of what it sweeps in each equal share of the angle */
} HutTurn;

typedef struct
{
  gboolean collides;
  double distance_mm; /* smallest over all angles; 0 when it collides */
  double angle_rad;   /* where; the first angle of the overlap when it collides */
} HutTurnNearest;

/* @end_rad: cut to 0 .. 2 pi; not a number counts as 0 */
void hut_turn_init (HutTurn *self, HutRect rect, double end_rad);

/* Distance at one angle, mm; 0 when they touch or overlap. */
double hut_turn_distance_mm (const HutTurn *self, const HutRect *fixed, double angle_rad);

/* A quick lower bound of the smallest distance, mm. */
double hut_turn_bound_mm (const HutTurn *self, const HutRect *fixed);

/**
 * hut_turn_find_nearest:
 * @fixed: mm; may reach very far (a wall)
 * @limit_mm: distances from here on are of no interest, mm; INFINITY for none
 * @nearest: (out): untouched when FALSE is returned
 *
 * Not sampled: the angles where the distance can be smallest, and those where a touch can begin,
 * are known in closed form (see hut-turn.c), so the result is exact up to rounding.
 *
 * Returns: TRUE when they collide or come nearer than @limit_mm
 */
gboolean hut_turn_find_nearest (const HutTurn *self,
                                const HutRect *fixed,
                                double limit_mm,
                                HutTurnNearest *nearest);

/* src/engineering/hut-spring.h: gas springs for the lid: force, stroke, and where they are mounted.
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Statics in the plane across the hinge line, without friction. Gas springs are strong and can fly
 * off: fit them as their maker says. */
#pragma once
#include "physics/hut-lid-balance.h"
#include "physics/hut-lid-force.h"

/* A spring that is pushed together is stronger: force at the end of the stroke over that at its
 * start. Common practice 1.2 .. 1.5, no source. */
#define HUT_SPRING_PROGRESSION_RATIO 1.3
/* So much more than the lid needs at its open end: a tenth is the habit of one maker. */
#define HUT_SPRING_MARGIN_RATIO 1.1

/* The lid, as springs meet it. */
typedef struct
{
  const HutAssembly *assembly; /* lent */
  HutLidBalance balance;
  double end_rad; /* how far it opens */
} HutSpringLid;

typedef struct
{
  gboolean found;     /* FALSE: no spring on the list and no place for it */
  guint count;
  double force_n;     /* of each, stretched, as they are sold */
  double stroke_mm;
  double long_mm;     /* between the ends, stretched */
  HutStrut mount;     /* base and lid points, m from the hinge line: see hut-lid-force.h */
  double hand_most_n; /* largest force of a hand either way, at the lid's far end */
  double hand_most_rad; /* where that is */
  gboolean holds;     /* it stays open by itself */
  gboolean shut;      /* closed, it stays closed by itself */
} HutSpring;

/* TRUE when the hinge line lies level, so that weight turns the lid. */
gboolean hut_spring_lid_is_heavy (const HutAssembly *assembly);
/* Moment (N m) that closes the lid at an angle; < 0 when it falls open. */
double hut_spring_lid_moment_nm (const HutSpringLid *lid, double angle_rad);

/**
 * hut_spring_choose:
 * @count: of springs side by side, >= 1
 * @force_n: HUT_UNKNOWN: the smallest step of the list that holds the lid open; else that one
 *
 * Strategy: mounting points on a grid that the room at the side walls allows, strokes of the list;
 * the spring is stretched just when the lid is open, and is not pushed together further than its
 * stroke when it is closed. Of all, the one counts that asks least of a hand, the smaller force
 * first among equals.
 *
 * Returns: found FALSE when no place is left for any
 */
HutSpring hut_spring_choose (const HutSpringLid *lid, guint count, double force_n);
/* Force (N) of a hand at the lid's far end with the springs: > 0 it must lift, < 0 it must pull
 * down. */
double hut_spring_hand_n (const HutSpring *self, const HutSpringLid *lid, double angle_rad);

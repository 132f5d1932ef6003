/* src/assembly/hut-seam-plan.h: where a plate that is larger than the bed is parted.
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The lines of one direction are chosen together, by dynamic programming over a grid of allowed
 * positions: every piece must fit the bed, and the sum of these costs is least (own choices):
 *   uneven     HUT_COST_UNEVEN   x (distance from the even division / bed length)^2
 *   window     HUT_COST_WINDOW   for each window that the line crosses
 *   aligned    HUT_COST_ALIGNED  x how much of the wanted stagger to the neighbour's line is missing
 *   near strap HUT_COST_STRAP    for each opening that would notch the strap behind the line
 * Ties go to the line nearest the left or bottom. */
#pragma once
#include "assembly/hut-cleave.h"

#define HUT_COST_UNEVEN 40.0
#define HUT_COST_WINDOW 2.0
#define HUT_COST_ALIGNED 6.0
#define HUT_COST_STRAP 1.0

/* Something that a line must keep away from, or may cross in its straight part (a window). */
typedef struct
{
  HutRect rect; /* mm */
  gboolean crossable;
  double corner_mm; /* crossable: not within this of its sides' ends */
} HutObstacle;

/* A line of a neighbour that a line should not continue. */
typedef struct
{
  gboolean vertical;
  double at_mm;
} HutAlignment;

typedef struct
{
  const HutRegion *region;
  HutRect rect;               /* bounds of the plate */
  double depth_mm[HUT_EDGE_COUNT];        /* of its edge joints, else 0 */
  const GArray *borders[HUT_EDGE_COUNT];  /* double: finger borders of each edge, or NULL */
  GArray *obstacles;          /* HutObstacle */
  GArray *alignments;         /* HutAlignment */
  double stagger_mm;          /* wanted distance to an alignment */
  double web_mm;              /* nothing may become narrower */
  double finger_mm;           /* wanted width of splice fingers */
  double reach_mm;            /* half their length */
  double strap_half_mm;       /* half the strap's width; 0 without straps */
  double room_u_mm, room_v_mm; /* usable bed less kerf, as it lies */
  gboolean may_turn;          /* pieces may lie turned by 90 degrees */
} HutSeamJob;

typedef struct
{
  GArray *vertical;   /* double: u of each line, ascending */
  GArray *horizontal; /* double: v of each line, ascending */
  double shortfall_mm; /* how much the bed is too small when there is no plan */
} HutSeamPlan;

/* Returns: FALSE when no allowed set of lines exists; the plan is empty then. No lines are needed when
 * the plate fits: TRUE and empty. */
gboolean hut_seam_plan_find (const HutSeamJob *job, HutSeamPlan *plan);
void hut_seam_plan_clear (HutSeamPlan *plan);

/* Missing part of the wanted stagger at a line: 0 none .. 1 in line. */
double hut_seam_plan_misaligned_ratio (const HutSeamJob *job, gboolean vertical, double at_mm);

/* Shortest solid interval that holds a finger zone away from all else, mm: fewest fingers of the
 * least width, and a web at each end. */
double hut_seam_plan_shortest_mm (const HutSeamJob *job);

/* (transfer full) (element-type HutFingerZone): fingers of a line on a piece that holds these solid
 * intervals; zones keep clear of the ends, of edge joints, and of @crossings (double, lines the other way). */
GArray *hut_seam_plan_zones (const HutSeamJob *job, gboolean vertical, const GArray *intervals, const GArray *crossings) G_GNUC_WARN_UNUSED_RESULT;

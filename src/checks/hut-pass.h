/* src/checks/hut-pass.h: whether the head of a lead, hose or duct passes an opening.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "design/hut-design.h"

/* What a head needs over its own size, mm, in each direction: common practice, no source. */
#define HUT_PASS_PLAY_MM 1.0

/* The largest thing that must go through, end on. Lengths mm. */
typedef struct
{
  gboolean round;
  double width_mm, height_mm; /* round: both its diameter */
} HutHead;

/* Hoses and ducts are round, the heads of leads rectangles. */
HutHead hut_head_of (const HutService *service);

/* The least round hole that it passes, mm: its diameter, or its diagonal, and the play. */
double hut_head_hole_mm (HutHead head);

/* A hole in a wall that things are put through: round, or a rectangle with rounded corners. */
typedef struct
{
  gboolean round;
  double width_mm, height_mm, radius_mm; /* round: width is the diameter */
} HutGate;

/* Of a pattern one hole; a slot is a rectangle with the largest radius. */
HutGate hut_gate_of (const HutOpening *opening);

/**
 * hut_pass_lets:
 *
 * The head may be turned as it goes through, by any angle: a gate is symmetric about its middle and
 * convex, so a head that passes anywhere passes in the middle, and does so when its four corners
 * are inside. Angles are tried in steps of a quarter of a degree.
 *
 * Returns: TRUE when the head, with its play, goes through
 */
gboolean hut_pass_lets (const HutGate *gate, HutHead head);

/**
 * hut_pass_numbers:
 * @is_mm: (out): of a round gate, or for a round head: the gate's least breadth. Else: as long as the
 *   longer side of a head of that shape may be to pass
 * @must_mm: (out): what @is_mm must be at least
 */
void hut_pass_numbers (const HutGate *gate, HutHead head, double *is_mm, double *must_mm);

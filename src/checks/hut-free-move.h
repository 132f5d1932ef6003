/* src/checks/hut-free-move.h: the shortest move after which rectangles keep off each other.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "geom/hut-geom.h"

/* A move is told in whole steps of this, mm, where such a one will do. Own choice: what a person
 * types. */
#define HUT_MOVE_STEP_MM 0.1

/* What a thing must keep to. All things move together. */
typedef struct
{
  HutRect moving;  /* mm, where it is now */
  HutRect fixed;   /* mm */
  gboolean inside; /* TRUE: stays in `fixed`; FALSE: does not overlap it. A touch is neither */
} HutMoveRule;

/* @rules: (element-type HutMoveRule) */
gboolean hut_free_move_is_allowed (const GArray *rules, HutPoint by);

/**
 * hut_free_move_find:
 * @rules: (element-type HutMoveRule)
 * @by: (out caller-allocates): mm
 *
 * The shortest allowed move touches a border in each direction in which it goes: only the moves that
 * do are looked at.
 *
 * Returns: FALSE with @by untouched when no move will do
 */
gboolean hut_free_move_find (const GArray *rules, HutPoint *by);

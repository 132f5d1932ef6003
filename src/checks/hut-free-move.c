/* src/checks/hut-free-move.c: the shortest move after which rectangles keep off each other.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-checks"
#include "config.h"
#include "checks/hut-free-move.h"

/* A touch is not deeper than this, mm: under the grid, over rounding. */
#define TOUCH_MM (HUT_GRID_MM / 2.0)

/* More borders than these in one direction are not looked at: the nearest ones are. Own choice: the
 * moves are their pairs, and a frame has 16 ms. */
#define MOST_MOVES 64u

static gboolean
obeys (const HutMoveRule *rule,
       HutPoint by)
{
  const HutRect a = { rule->moving.u0 + by.u, rule->moving.v0 + by.v, rule->moving.u1 + by.u,
                      rule->moving.v1 + by.v };
  const HutRect *b = &rule->fixed;

  if (rule->inside)
    return a.u0 >= b->u0 - TOUCH_MM && a.v0 >= b->v0 - TOUCH_MM && a.u1 <= b->u1 + TOUCH_MM
           && a.v1 <= b->v1 + TOUCH_MM;
  return a.u1 <= b->u0 + TOUCH_MM || a.u0 >= b->u1 - TOUCH_MM || a.v1 <= b->v0 + TOUCH_MM
         || a.v0 >= b->v1 - TOUCH_MM;
}

gboolean
hut_free_move_is_allowed (const GArray *rules,
                          HutPoint by)
{
  for (guint i = 0; i < rules->len; i++)
    if (!obeys (&g_array_index (rules, HutMoveRule, i), by))
      return FALSE;
  return TRUE;
}

static int
compare_length (gconstpointer a,
                gconstpointer b)
{
  const double x_mm = *(const double *) a, y_mm = *(const double *) b;

  if (fabs (x_mm) != fabs (y_mm))
    return fabs (x_mm) < fabs (y_mm) ? -1 : 1;
  return (x_mm > y_mm) - (x_mm < y_mm);
}

/* To the next whole step away from 0. */
static double
stepped_mm (double move_mm,
            gboolean whole)
{
  const double steps = ceil (fabs (move_mm) / HUT_MOVE_STEP_MM - HUT_GRID_MM);

  return whole ? copysign (hut_snap_mm (steps * HUT_MOVE_STEP_MM), move_mm) : move_mm;
}

/* Moves along one axis that bring a border to a border, shortest first. */
static GArray *
list_moves (const GArray *rules,
            gboolean along_u,
            gboolean whole)
{
  GArray *moves = g_array_new (FALSE, FALSE, sizeof (double));
  const double none_mm = 0.0;

  g_array_append_val (moves, none_mm);
  for (guint i = 0; i < rules->len; i++)
    {
      const HutMoveRule *rule = &g_array_index (rules, HutMoveRule, i);
      const HutRect *a = &rule->moving, *b = &rule->fixed;
      const double low_mm = along_u ? a->u0 : a->v0, high_mm = along_u ? a->u1 : a->v1;
      const double from_mm = along_u ? b->u0 : b->v0, to_mm = along_u ? b->u1 : b->v1;
      const double both_mm[2]
          = { stepped_mm (rule->inside ? from_mm - low_mm : from_mm - high_mm, whole),
              stepped_mm (rule->inside ? to_mm - high_mm : to_mm - low_mm, whole) };

      g_array_append_vals (moves, both_mm, G_N_ELEMENTS (both_mm));
    }
  g_array_sort (moves, compare_length);
  if (moves->len > MOST_MOVES)
    g_array_set_size (moves, MOST_MOVES);
  return moves;
}

static gboolean
find (const GArray *rules,
      gboolean whole,
      HutPoint *by)
{
  g_autoptr(GArray) us = list_moves (rules, TRUE, whole);
  g_autoptr(GArray) vs = list_moves (rules, FALSE, whole);
  double best_mm = INFINITY;

  for (guint i = 0; i < us->len; i++)
    for (guint k = 0; k < vs->len; k++)
      {
        const HutPoint move = { g_array_index (us, double, i), g_array_index (vs, double, k) };
        const double length_mm = hypot (move.u, move.v);

        if (length_mm >= best_mm)
          break; /* the further ones are longer still */
        if (hut_free_move_is_allowed (rules, move))
          {
            best_mm = length_mm;
            *by = (HutPoint) { hut_snap_mm (move.u), hut_snap_mm (move.v) };
          }
      }
  return best_mm < INFINITY;
}

gboolean
hut_free_move_find (const GArray *rules,
                    HutPoint *by)
{
  g_return_val_if_fail (rules != NULL && by != NULL, FALSE);

  HutPoint exact, whole;

  if (!find (rules, FALSE, &exact))
    return FALSE;
  *by = exact;
  /* A step more in both directions, not another way round. */
  if (find (rules, TRUE, &whole)
      && hypot (whole.u, whole.v) <= hypot (exact.u, exact.v) + 2.0 * HUT_MOVE_STEP_MM)
    *by = whole;
  return TRUE;
}

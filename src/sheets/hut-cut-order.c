/* src/sheets/hut-cut-order.c: in which order closed paths are cut, and where each begins.
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Strategy: nearest neighbour, then or-opt and 2-opt on the order and the best start corner between
 * two neighbours, in turns, as long as the way gets shorter. A move is kept only when it is shorter
 * and breaks no rule, so the result is never longer than the nearest neighbour's.
 * Not promised: the shortest way. */
#define G_LOG_DOMAIN "hut-sheets"
#include "config.h"
#include "sheets/hut-cut-order.h"

/* A way is shorter when it is so by more than this, mm. Own choice: the grid's thousandth. */
#define GAIN_MM 1e-6
/* Longest run of paths that is moved as one (count), as is usual for or-opt. */
#define RUN_MAX 3
/* Most rounds of improvement (count). Own choice: later ones find next to nothing. */
#define ROUNDS_MAX 12
/* More paths than this are not tried in all ways, since that grows with the cube (count). */
#define SEARCH_MAX 300

typedef struct
{
  const GPtrArray *paths;
  HutPoint from;
  guint count;
  guint8 *before;   /* before[a * count + b]: a must be cut before b */
  HutCutStep *steps, *trial;
} Order;

static HutPoint
start_point (const Order *self,
             const HutCutStep *step)
{
  return hut_path_get (g_ptr_array_index (self->paths, step->path), step->start)->p;
}

static double
way_mm (const Order *self,
        const HutCutStep *steps)
{
  HutPoint at = self->from;
  double sum_mm = 0.0;

  for (guint i = 0; i < self->count; i++)
    {
      const HutPoint next = start_point (self, &steps[i]);

      sum_mm += hut_point_distance_mm (at, next);
      at = next;
    }
  return sum_mm;
}

/* Of two boxes that are the same, neither is inside: so the rules never run in a circle. */
static gboolean
is_inside (const HutPath *inner,
           const HutPath *outer)
{
  const HutRect a = hut_path_bounds (inner), b = hut_path_bounds (outer);

  return a.u0 >= b.u0 && a.v0 >= b.v0 && a.u1 <= b.u1 && a.v1 <= b.v1
         && (a.u0 > b.u0 || a.v0 > b.v0 || a.u1 < b.u1 || a.v1 < b.v1)
         && hut_path_contains (outer, hut_path_get (inner, 0)->p);
}

static void
find_rules (Order *self,
            const guint *ranks)
{
  for (guint a = 0; a < self->count; a++)
    for (guint b = 0; b < self->count; b++)
      self->before[a * self->count + b]
          = a != b
            && (ranks[a] < ranks[b]
                || (ranks[a] == ranks[b]
                    && is_inside (g_ptr_array_index (self->paths, a),
                                  g_ptr_array_index (self->paths, b))));
}

static gboolean
keeps_rules (const Order *self,
             const HutCutStep *steps)
{
  for (guint i = 0; i < self->count; i++)
    for (guint k = i + 1; k < self->count; k++)
      if (self->before[steps[k].path * self->count + steps[i].path] != 0)
        return FALSE;
  return TRUE;
}

/* ---- nearest neighbour ----------------------------------------------------------------------- */

/* TRUE when all that must be cut before @path is done. */
static gboolean
is_ready (const Order *self,
          const guint8 *done,
          guint path)
{
  for (guint i = 0; i < self->count; i++)
    if (done[i] == 0 && self->before[i * self->count + path] != 0)
      return FALSE;
  return TRUE;
}

static void
go_to_the_nearest (Order *self)
{
  g_autofree guint8 *done = g_new0 (guint8, self->count);
  HutPoint at = self->from;

  for (guint i = 0; i < self->count; i++)
    {
      double best_mm = G_MAXDOUBLE;

      for (guint k = 0; k < self->count; k++)
        {
          const HutPath *path = g_ptr_array_index (self->paths, k);

          if (done[k] != 0 || !is_ready (self, done, k))
            continue;
          for (guint corner = 0; corner < hut_path_get_count (path); corner++)
            {
              const double mm = hut_point_distance_mm (at, hut_path_get (path, corner)->p);

              if (mm < best_mm)
                {
                  best_mm = mm;
                  self->steps[i] = (HutCutStep) { k, corner };
                }
            }
        }
      done[self->steps[i].path] = 1;
      at = start_point (self, &self->steps[i]);
    }
}

/* ---- improvement ----------------------------------------------------------------------------- */

/* Takes the trial when it is shorter and allowed. */
static gboolean
keep_if_better (Order *self,
                double *best_mm)
{
  const double mm = way_mm (self, self->trial);

  if (mm >= *best_mm - GAIN_MM || !keeps_rules (self, self->trial))
    return FALSE;
  memcpy (self->steps, self->trial, self->count * sizeof *self->steps);
  *best_mm = mm;
  return TRUE;
}

/* Moves the run [at, at + length) so that it begins at @to in what is left. */
static void
move_run (Order *self,
          guint at,
          guint length,
          guint to)
{
  guint kept = 0;

  for (guint i = 0; i < self->count; i++)
    if (i < at || i >= at + length)
      {
        const guint place = kept < to ? kept : kept + length;

        self->trial[place] = self->steps[i];
        kept++;
      }
  memcpy (&self->trial[to], &self->steps[at], length * sizeof *self->trial);
}

static void
reverse_run (HutCutStep *steps,
             guint length)
{
  for (guint i = 0; i < length / 2; i++)
    {
      const HutCutStep swap = steps[i];

      steps[i] = steps[length - 1 - i];
      steps[length - 1 - i] = swap;
    }
}

static gboolean
try_moves (Order *self,
           double *best_mm)
{
  gboolean gained = FALSE;

  for (guint length = 1; length <= MIN (RUN_MAX, self->count - 1); length++)
    for (guint at = 0; at + length <= self->count; at++)
      for (guint to = 0; to + length <= self->count; to++)
        {
          if (to == at)
            continue;
          move_run (self, at, length, to);
          gained |= keep_if_better (self, best_mm);
        }
  return gained;
}

static gboolean
try_reversals (Order *self,
               double *best_mm)
{
  gboolean gained = FALSE;

  for (guint at = 0; at + 1 < self->count; at++)
    for (guint length = 2; at + length <= self->count; length++)
      {
        memcpy (self->trial, self->steps, self->count * sizeof *self->trial);
        reverse_run (&self->trial[at], length);
        gained |= keep_if_better (self, best_mm);
      }
  return gained;
}

static gboolean
try_starts (Order *self,
            double *best_mm)
{
  gboolean gained = FALSE;

  for (guint i = 0; i < self->count; i++)
    {
      const HutPath *path = g_ptr_array_index (self->paths, self->steps[i].path);
      const HutPoint last = i > 0 ? start_point (self, &self->steps[i - 1]) : self->from;
      guint best = self->steps[i].start;
      double least_mm = G_MAXDOUBLE;

      for (guint corner = 0; corner < hut_path_get_count (path); corner++)
        {
          const HutPoint p = hut_path_get (path, corner)->p;
          double mm = hut_point_distance_mm (last, p);

          if (i + 1 < self->count)
            mm += hut_point_distance_mm (p, start_point (self, &self->steps[i + 1]));
          if (mm < least_mm)
            {
              least_mm = mm;
              best = corner;
            }
        }
      memcpy (self->trial, self->steps, self->count * sizeof *self->trial);
      self->trial[i].start = best;
      gained |= keep_if_better (self, best_mm);
    }
  return gained;
}

GArray *
hut_cut_order_new (const GPtrArray *paths,
                   const guint *ranks,
                   HutPoint from)
{
  g_return_val_if_fail (paths != NULL && (ranks != NULL || paths->len == 0), NULL);

  const guint count = paths->len;
  g_autofree guint8 *before = g_new0 (guint8, (gsize) count * count + 1);
  g_autofree HutCutStep *trial = g_new0 (HutCutStep, count + 1);
  GArray *steps = g_array_new (FALSE, TRUE, sizeof (HutCutStep));
  Order self = { paths, from, count, before, NULL, trial };
  gboolean gained = count > 1 && count <= SEARCH_MAX;
  double best_mm;

  g_array_set_size (steps, count);
  self.steps = (HutCutStep *) (void *) steps->data;
  find_rules (&self, ranks);
  go_to_the_nearest (&self);
  best_mm = way_mm (&self, self.steps);
  for (guint round = 0; gained && round < ROUNDS_MAX; round++)
    {
      gained = try_starts (&self, &best_mm);
      gained |= try_moves (&self, &best_mm);
      gained |= try_reversals (&self, &best_mm);
    }
  return steps;
}

double
hut_cut_order_travel_mm (const GPtrArray *paths,
                         const GArray *steps,
                         HutPoint from)
{
  g_return_val_if_fail (paths != NULL && steps != NULL, 0.0);

  const Order self = {
    .paths = paths,
    .from = from,
    .count = steps->len,
  };

  return way_mm (&self, (const HutCutStep *) (const void *) steps->data);
}

/* src/assembly/hut-seam-plan.c: where a plate that is larger than the bed is parted.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-assembly"
#include "config.h"
#include "assembly/hut-seam-plan.h"
#include "assembly/hut-finger.h"
#include <math.h>

#define HUT_PLAN_STEP_MM 1.0  /* grid of positions that are tried; own choice */
#define HUT_PLAN_MAX_PIECES 40 /* per direction; own choice: more is a mistake in the input */
#define HUT_PLAN_EXTRA_PIECES                                                                      \
  3 /* tried beyond the least number when that finds no place; own choice */
#define HUT_PLAN_SLACK_MM 1e-9  /* rounding of sums of grid numbers */

/* ---- one direction of the plate -------------------------------------------------------------- */

typedef struct
{
  const HutSeamJob *job;
  gboolean vertical;      /* lines u = const */
  double low_mm, high_mm; /* extent of the plate across the lines */
  HutEdge low_edge, high_edge, side_a,
      side_b; /* edges parallel to the lines, and crossed by them */
  double room_mm;
} Direction;

static Direction
direction_of (const HutSeamJob *job,
              gboolean vertical,
              double room_mm)
{
  return vertical ? (Direction) { job,           TRUE,           job->rect.u0,    job->rect.u1,
                                 HUT_EDGE_LEFT, HUT_EDGE_RIGHT, HUT_EDGE_BOTTOM, HUT_EDGE_TOP,
                                 room_mm }
                  : (Direction) { job,           FALSE,           job->rect.v0,
                                 job->rect.v1,  HUT_EDGE_BOTTOM, HUT_EDGE_TOP,
                                 HUT_EDGE_LEFT, HUT_EDGE_RIGHT,  room_mm };
}

static gboolean
clear_of_borders (const Direction *self,
                  HutEdge edge,
                  double at_mm)
{
  const GArray *borders = self->job->borders[edge];

  for (guint i = 0; borders != NULL && i < borders->len; i++)
    if (fabs (g_array_index (borders, double, i) - at_mm) < self->job->web_mm - HUT_PLAN_SLACK_MM)
      return FALSE;
  return TRUE;
}

/* Cost of a line there, or -1 where none may be. */
static double
line_cost (const Direction *self,
           double at_mm)
{
  const HutSeamJob *job = self->job;
  const double keep_mm = job->reach_mm + job->web_mm;
  double cost = HUT_COST_ALIGNED * hut_seam_plan_misaligned_ratio (job, self->vertical, at_mm);

  if (at_mm < self->low_mm + job->depth_mm[self->low_edge] + keep_mm
      || at_mm > self->high_mm - job->depth_mm[self->high_edge] - keep_mm
      || !clear_of_borders (self, self->side_a, at_mm)
      || !clear_of_borders (self, self->side_b, at_mm))
    return -1.0;
  for (guint i = 0; i < job->obstacles->len; i++)
    {
      const HutObstacle *obstacle = &g_array_index (job->obstacles, HutObstacle, i);
      const double from_mm = self->vertical ? obstacle->rect.u0 : obstacle->rect.v0;
      const double to_mm = self->vertical ? obstacle->rect.u1 : obstacle->rect.v1;

      if (at_mm <= from_mm - keep_mm || at_mm >= to_mm + keep_mm)
        {
          if (job->strap_half_mm > 0.0 && at_mm > from_mm - job->strap_half_mm
              && at_mm < to_mm + job->strap_half_mm)
            cost += HUT_COST_STRAP;
        }
      else if (obstacle->crossable && at_mm >= from_mm + obstacle->corner_mm + keep_mm
               && at_mm <= to_mm - obstacle->corner_mm - keep_mm)
        cost += HUT_COST_WINDOW;
      else
        return -1.0;
    }
  return cost;
}

double
hut_seam_plan_misaligned_ratio (const HutSeamJob *job,
                                gboolean vertical,
                                double at_mm)
{
  double worst_ratio = 0.0;

  for (guint i = 0; i < job->alignments->len && job->stagger_mm > 0.0; i++)
    {
      const HutAlignment *other = &g_array_index (job->alignments, HutAlignment, i);

      if (other->vertical == vertical)
        worst_ratio = MAX (worst_ratio, 1.0 - fabs (other->at_mm - at_mm) / job->stagger_mm);
    }
  return worst_ratio;
}

/* ---- candidates and their best choice -------------------------------------------------------- */

typedef struct
{
  double at_mm, cost;
} Candidate;

static int
compare_candidates (gconstpointer a,
                    gconstpointer b)
{
  const double x = ((const Candidate *) a)->at_mm, y = ((const Candidate *) b)->at_mm;

  return (x > y) - (x < y);
}

static void
add_candidate (const Direction *self,
               GArray *candidates,
               double at_mm)
{
  const Candidate candidate = { hut_snap_mm (at_mm), line_cost (self, hut_snap_mm (at_mm)) };

  if (candidate.cost >= 0.0)
    g_array_append_val (candidates, candidate);
}

/* The grid, and the middle of each finger: with webs of half a finger only that is allowed. */
static GArray *
candidates_new (const Direction *self)
{
  GArray *candidates = g_array_new (FALSE, FALSE, sizeof (Candidate));
  const HutEdge sides[] = { self->side_a, self->side_b };

  for (double at_mm = ceil (self->low_mm); at_mm < self->high_mm; at_mm += HUT_PLAN_STEP_MM)
    add_candidate (self, candidates, at_mm);
  for (guint s = 0; s < G_N_ELEMENTS (sides); s++)
    {
      const GArray *borders = self->job->borders[sides[s]];

      for (guint i = 0; borders != NULL && i + 1 < borders->len; i++)
        add_candidate (self, candidates,
                       (g_array_index (borders, double, i) + g_array_index (borders, double, i + 1))
                           / 2.0);
    }
  g_array_sort (candidates, compare_candidates);
  return candidates;
}

/* Length of a piece between two lines or ends, with the fingers that stick out. */
static double
piece_mm (const Direction *self,
          double from_mm,
          double to_mm)
{
  const double reach_mm = self->job->reach_mm;

  /* One grid step more, so that a full bed is never missed by the rounding of a sum. */
  return to_mm - from_mm + HUT_GRID_MM + (from_mm > self->low_mm ? reach_mm : 0.0)
         + (to_mm < self->high_mm ? reach_mm : 0.0);
}

/* Least distance of two neighbouring lines: their fingers keep a web between them. */
static double
least_gap_mm (const Direction *self)
{
  return 2.0 * self->job->reach_mm + self->job->web_mm;
}

static double
candidate_mm (const GArray *candidates,
              guint index)
{
  return g_array_index (candidates, Candidate, index).at_mm;
}

/* Best sums with line @k at each candidate, from those of line @k - 1. The line before must lie in
 * a window that only moves up: the least sum in it is kept at the head of a queue of rising
 * sums. */
static void
extend_lines (const Direction *self,
              const GArray *candidates,
              const double *before,
              double *costs,
              guint *from)
{
  const guint n = candidates->len;
  g_autofree guint *queue = g_new (guint, MAX (n, 1));
  guint head = 0, tail = 0, next = 0;

  for (guint i = 0; i < n; i++)
    {
      const double here_mm = candidate_mm (candidates, i);

      for (; next < i && here_mm - candidate_mm (candidates, next) >= least_gap_mm (self); next++)
        {
          while (tail > head && before[queue[tail - 1]] > before[next])
            tail--;
          queue[tail++] = next;
        }
      while (head < tail
             && piece_mm (self, candidate_mm (candidates, queue[head]), here_mm) > self->room_mm)
        head++;
      costs[i] = head < tail ? before[queue[head]] : INFINITY;
      from[i] = head < tail ? queue[head] : 0;
    }
}

/* Chooses @line_count lines with the least sum of costs. */
static gboolean
choose_lines (const Direction *self,
              const GArray *candidates,
              guint line_count,
              GArray *lines)
{
  const guint n = candidates->len;
  g_autofree double *costs = g_new (double, (gsize) line_count * MAX (n, 1));
  g_autofree guint *from = g_new0 (guint, (gsize) line_count * MAX (n, 1));
  const double *last = costs + (gsize) (line_count - 1) * n;
  double best = INFINITY;
  guint best_index = 0;

  for (guint k = 0; k < line_count; k++)
    {
      const double even_mm
          = self->low_mm + (self->high_mm - self->low_mm) * (k + 1) / (line_count + 1);
      double *row = costs + (gsize) k * n;

      if (k > 0)
        extend_lines (self, candidates, row - n, row, from + (gsize) k * n);
      for (guint i = 0; i < n; i++)
        {
          const Candidate *here = &g_array_index (candidates, Candidate, i);
          const double off_ratio = (here->at_mm - even_mm) / self->room_mm;

          if (k == 0)
            row[i] = piece_mm (self, self->low_mm, here->at_mm) <= self->room_mm ? 0.0 : INFINITY;
          row[i] += here->cost + HUT_COST_UNEVEN * off_ratio * off_ratio;
        }
    }
  for (guint i = 0; i < n; i++)
    if (last[i] < best
        && piece_mm (self, candidate_mm (candidates, i), self->high_mm) <= self->room_mm)
      {
        best = last[i];
        best_index = i;
      }
  if (!isfinite (best))
    return FALSE;
  g_array_set_size (lines, line_count);
  for (guint k = line_count; k > 0; k--)
    {
      g_array_index (lines, double, k - 1) = candidate_mm (candidates, best_index);
      best_index = from[(gsize) (k - 1) * n + best_index];
    }
  return TRUE;
}

/* Least number of pieces for which their lengths can add up; 0 when no number does. */
static guint
least_pieces (const Direction *self)
{
  const double length_mm = self->high_mm - self->low_mm, reach_mm = self->job->reach_mm;
  double pieces;

  if (length_mm <= self->room_mm)
    return 1;
  if (self->room_mm <= 2.0 * reach_mm)
    return 0;
  pieces
      = ceil ((length_mm - 2.0 * reach_mm) / (self->room_mm - 2.0 * reach_mm) - HUT_PLAN_SLACK_MM);
  return pieces > HUT_PLAN_MAX_PIECES ? 0 : MAX ((guint) pieces, 2);
}

static gboolean
plan_direction (const Direction *self,
                GArray *lines)
{
  const guint least = least_pieces (self);
  g_autoptr(GArray) candidates = NULL;

  g_array_set_size (lines, 0);
  if (least <= 1)
    return least == 1;
  candidates = candidates_new (self);
  for (guint pieces = least; pieces <= least + HUT_PLAN_EXTRA_PIECES; pieces++)
    if (choose_lines (self, candidates, pieces - 1, lines))
      return TRUE;
  return FALSE;
}

/* ---- both directions ------------------------------------------------------------------------- */

static gboolean
plan_both (const HutSeamJob *job,
           double room_u_mm,
           double room_v_mm,
           HutSeamPlan *plan)
{
  const Direction u = direction_of (job, TRUE, room_u_mm), v = direction_of (job, FALSE, room_v_mm);

  return room_u_mm > 0.0 && room_v_mm > 0.0 && plan_direction (&u, plan->vertical)
         && plan_direction (&v, plan->horizontal);
}

/* Number of pieces and length of seams of a plan, to compare the two ways to lie on the bed. */
static double
plan_price (const HutSeamJob *job,
            const HutSeamPlan *plan)
{
  const double pieces = (plan->vertical->len + 1.0) * (plan->horizontal->len + 1.0);
  const double seams_mm = plan->vertical->len * (job->rect.v1 - job->rect.v0)
                          + plan->horizontal->len * (job->rect.u1 - job->rect.u0);

  return pieces + seams_mm / HUT_SIZE_MAX_MM / HUT_PLAN_MAX_PIECES;
}

static HutSeamPlan
plan_new (void)
{
  return (HutSeamPlan) { g_array_new (FALSE, TRUE, sizeof (double)),
                        g_array_new (FALSE, TRUE, sizeof (double)), 0.0 };
}

gboolean
hut_seam_plan_find (const HutSeamJob *job,
                    HutSeamPlan *plan)
{
  HutSeamPlan turned = plan_new ();
  gboolean found, found_turned;

  *plan = plan_new ();
  found = plan_both (job, job->room_u_mm, job->room_v_mm, plan);
  found_turned = job->may_turn && plan_both (job, job->room_v_mm, job->room_u_mm, &turned);
  if (found_turned && (!found || plan_price (job, &turned) < plan_price (job, plan)))
    {
      const HutSeamPlan kept = *plan;

      *plan = turned;
      turned = kept;
      found = TRUE;
    }
  hut_seam_plan_clear (&turned);
  if (!found)
    {
      g_array_set_size (plan->vertical, 0);
      g_array_set_size (plan->horizontal, 0);
      plan->shortfall_mm = MAX (job->rect.u1 - job->rect.u0, job->rect.v1 - job->rect.v0)
                           - MAX (job->room_u_mm, job->room_v_mm);
    }
  return found;
}

void
hut_seam_plan_clear (HutSeamPlan *plan)
{
  g_clear_pointer (&plan->vertical, g_array_unref);
  g_clear_pointer (&plan->horizontal, g_array_unref);
}

/* ---- fingers on a line ----------------------------------------------------------------------- */

/* Own choice: a seam that is to hold its pieces in line needs a finger and a slot on each side. */
#define FINGERS_MIN 3

static double
finger_least_mm (const HutSeamJob *job)
{
  return MAX (2.0 * job->web_mm, HUT_GRID_MM);
}

double
hut_seam_plan_shortest_mm (const HutSeamJob *job)
{
  return FINGERS_MIN * finger_least_mm (job) + 2.0 * job->web_mm;
}

static void
add_zone (const HutSeamJob *job,
          double from_mm,
          double to_mm,
          GArray *zones)
{
  const double least_mm = finger_least_mm (job);
  const guint count = to_mm > from_mm ? hut_finger_count (to_mm - from_mm,
                                                          MAX (job->finger_mm, least_mm), least_mm)
                                      : 1;
  const HutFingerZone zone = { hut_snap_mm (from_mm), hut_snap_mm (to_mm), count };

  if (count >= FINGERS_MIN)
    g_array_append_val (zones, zone);
}

GArray *
hut_seam_plan_zones (const HutSeamJob *job,
                     gboolean vertical,
                     const GArray *intervals,
                     const GArray *crossings)
{
  const Direction self = direction_of (job, vertical, 0.0);
  const double low_mm = (vertical ? job->rect.v0 : job->rect.u0) + job->depth_mm[self.side_a];
  const double high_mm = (vertical ? job->rect.v1 : job->rect.u1) - job->depth_mm[self.side_b];
  const double cross_mm = job->reach_mm + job->web_mm;
  GArray *zones = g_array_new (FALSE, FALSE, sizeof (HutFingerZone));

  for (guint i = 0; i < intervals->len; i++)
    {
      const HutSolidInterval *interval = &g_array_index (intervals, HutSolidInterval, i);
      double from_mm = MAX (interval->from_mm, low_mm) + job->web_mm;
      const double end_mm = MIN (interval->to_mm, high_mm) - job->web_mm;

      for (guint c = 0; c < crossings->len; c++)
        {
          const double at_mm = g_array_index (crossings, double, c);

          if (at_mm + cross_mm <= from_mm || at_mm - cross_mm >= end_mm)
            continue;
          add_zone (job, from_mm, at_mm - cross_mm, zones);
          from_mm = at_mm + cross_mm;
        }
      add_zone (job, from_mm, end_mm, zones);
    }
  return zones;
}

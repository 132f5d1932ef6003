/* tests/bench/hut-tour.c: how long the way of a tool is at least, and by a plain rule.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "bench/hut-tour.h"

/* Rounds of the ascent (count), its first step (ratio), how that shrinks after rounds without gain. */
#define ROUNDS 1500
#define FIRST_STEP 2.0
#define STEP_RATIO 0.7
#define STEP_IDLE_ROUNDS 25
/* What a link between groups costs more, and one that is forbidden, mm: longer than any way. */
#define LINK_MM 1e7
#define NEVER_MM 1e15

double
hut_tour_nearest_mm (const GPtrArray *paths,
                     const guint *ranks)
{
  g_autofree gboolean *done = g_new0 (gboolean, paths->len + 1);
  HutPoint at = { 0, 0 };
  double way_mm = 0.0;

  for (guint i = 0; i < paths->len; i++)
    {
      double best_mm = G_MAXDOUBLE;
      guint best = 0;
      HutPoint best_at = at;

      for (guint k = 0; k < paths->len; k++)
        {
          gboolean ready = !done[k];

          for (guint m = 0; ready && m < paths->len; m++)
            if (m != k && !done[m])
              ready = ranks[m] > ranks[k]
                      || (ranks[m] == ranks[k]
                          && !hut_path_contains (paths->pdata[k],
                                                 hut_path_get (paths->pdata[m], 0)->p));
          for (guint corner = 0; ready && corner < hut_path_get_count (paths->pdata[k]); corner++)
            {
              const HutPoint p = hut_path_get (paths->pdata[k], corner)->p;

              if (hut_point_distance_mm (at, p) < best_mm)
                {
                  best_mm = hut_point_distance_mm (at, p);
                  best = k;
                  best_at = p;
                }
            }
        }
      done[best] = TRUE;
      way_mm += best_mm;
      at = best_at;
    }
  return way_mm;
}

/* ---- the bound ------------------------------------------------------------------------------- */

/* Node 0 is where the way begins; the points follow. */
typedef struct
{
  guint count; /* nodes */
  guint groups;
  double *apart_mm; /* node * count + node */
  guint *group;     /* per node; node 0 is of the first */
  double *price_mm; /* per node: what a visit costs more */
  guint *degree;
} Tour;

static void
tour_init (Tour *self,
           const HutPoint *points,
           const guint *groups,
           guint count)
{
  self->count = count + 1;
  self->groups = 1;
  self->apart_mm = g_new0 (double, (gsize) self->count * self->count);
  self->group = g_new0 (guint, self->count);
  self->price_mm = g_new0 (double, self->count);
  self->degree = g_new0 (guint, self->count);
  for (guint i = 1; groups != NULL && i < self->count; i++)
    {
      self->group[i] = groups[i - 1];
      self->groups = MAX (self->groups, groups[i - 1] + 1);
    }
  for (guint i = 0; i < self->count; i++)
    for (guint k = 0; k < self->count; k++)
      {
        const HutPoint a = i > 0 ? points[i - 1] : (HutPoint) { 0, 0 };
        const HutPoint b = k > 0 ? points[k - 1] : (HutPoint) { 0, 0 };
        const guint from = self->group[i], to = self->group[k];
        const guint steps = from > to ? from - to : to - from;

        self->apart_mm[i * self->count + k]
            = steps > 1 ? NEVER_MM : hut_point_distance_mm (a, b) + steps * LINK_MM;
      }
}

static void
tour_clear (Tour *self)
{
  g_free (self->apart_mm);
  g_free (self->group);
  g_free (self->price_mm);
  g_free (self->degree);
}

G_DEFINE_AUTO_CLEANUP_CLEAR_FUNC (Tour, tour_clear)

/* The shortest tree over all nodes with their prices, which is closed by the last point without
 * length: from the cheapest node of the last group to node 0. Sets degrees. Returns: the bound, mm */
static double
close_tree_mm (Tour *self)
{
  g_autofree gboolean *in = g_new0 (gboolean, self->count);
  g_autofree double *near_mm = g_new (double, self->count);
  g_autofree guint *to = g_new0 (guint, self->count);
  double sum_mm = 0.0;
  guint at = 0, last = 0;

  for (guint i = 0; i < self->count; i++)
    {
      near_mm[i] = G_MAXDOUBLE;
      self->degree[i] = 0;
    }
  for (guint round = 1; round < self->count; round++)
    {
      guint next = 0;

      in[at] = TRUE;
      for (guint i = 0; i < self->count; i++)
        {
          const double mm = self->apart_mm[at * self->count + i] + self->price_mm[at]
                            + self->price_mm[i];

          if (!in[i] && mm < near_mm[i])
            {
              near_mm[i] = mm;
              to[i] = at;
            }
          if (!in[i] && (next == 0 || near_mm[i] < near_mm[next]))
            next = i;
        }
      sum_mm += near_mm[next];
      self->degree[next]++;
      self->degree[to[next]]++;
      at = next;
    }
  for (guint i = 1; i < self->count; i++)
    if (self->group[i] == self->groups - 1
        && (last == 0 || self->price_mm[i] < self->price_mm[last]))
      last = i;
  self->degree[last]++;
  self->degree[0]++;
  sum_mm += self->price_mm[last] + self->price_mm[0] - (self->groups - 1) * LINK_MM;
  for (guint i = 0; i < self->count; i++)
    sum_mm -= 2.0 * self->price_mm[i];
  return sum_mm;
}

double
hut_tour_bound_mm (const HutPoint *points,
                   const guint *groups,
                   guint count)
{
  g_auto(Tour) tour = { 0 };
  double best_mm = 0.0, ratio = FIRST_STEP, scale_mm = 0.0;
  guint idle = 0;

  if (count == 0)
    return 0.0;
  tour_init (&tour, points, groups, count);
  for (guint round = 0; round < ROUNDS; round++)
    {
      const double bound_mm = close_tree_mm (&tour);
      guint excess = 0;

      idle = bound_mm > best_mm ? 0 : idle + 1;
      best_mm = MAX (best_mm, bound_mm);
      if (round == 0)
        scale_mm = 0.1 * bound_mm; /* about what the way is longer */
      if (idle > STEP_IDLE_ROUNDS)
        {
          ratio *= STEP_RATIO;
          idle = 0;
        }
      for (guint i = 0; i < tour.count; i++)
        excess += (tour.degree[i] > 2 ? tour.degree[i] - 2 : 2 - tour.degree[i])
                  * (tour.degree[i] > 2 ? tour.degree[i] - 2 : 2 - tour.degree[i]);
      if (excess == 0)
        return best_mm; /* a way: the bound is met */
      for (guint i = 0; i < tour.count; i++)
        tour.price_mm[i] += ratio * scale_mm / excess * ((double) tour.degree[i] - 2.0);
    }
  return best_mm;
}

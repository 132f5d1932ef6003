/* src/export/hut-tool-lead.c: where cuts begin in the waste.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-export"
#include "config.h"
#include "export/hut-tool-lead.h"
#include <math.h>

/* Points of a lead-in that are looked at lie so far apart, mm. Own choice: less than any web. */
#define STEP_MM 0.5
/* A point of the lead-in is at least this share of its distance from the start away from its own
 * path.
 * Own choice: a corner of 60 degrees halved. */
#define OWN_RATIO 0.45
/* Shares of the wanted length that are tried. */
static const double SHARES[] = { 1.0, 0.5, 0.25 };
/* Shorter lines are not begun in their middle, mm. Own choice. */
#define MIDDLE_MIN_MM 4.0
/* A path has no more candidates than this: the nearest ones (count). */
#define CANDIDATES_MAX 40

/* A start that a path could have. */
typedef struct
{
  guint corner;    /* of the path */
  gboolean middle; /* of the line that begins there, not the corner itself */
  HutPoint at;
  double away_mm;  /* from where it began */
} Candidate;

static HutPoint
end_normal (const HutSegment *segment,
            gboolean at_end)
{
  HutPoint centre, direction;
  double radius_mm;

  if (segment->bulge == 0.0 || !hut_segment_get_circle (segment, &centre, &radius_mm))
    {
      direction = hut_point_unit (hut_point_minus (segment->end, segment->start));
      return (HutPoint) { direction.v, -direction.u };
    }
  direction = hut_point_unit (hut_point_minus (at_end ? segment->end : segment->start, centre));
  return segment->bulge > 0.0 ? direction : (HutPoint) { -direction.u, -direction.v };
}

/* The direction into the waste, which lies on the right; FALSE where the path turns back. */
static gboolean
find_direction (const HutPath *path,
                const Candidate *candidate,
                HutPoint *direction)
{
  const guint count = hut_path_get_count (path);
  const HutSegment out = hut_path_get_segment (path, candidate->corner);
  const HutSegment in = hut_path_get_segment (path, (candidate->corner + count - 1) % count);
  const HutPoint a = end_normal (candidate->middle ? &out : &in, TRUE);
  const HutPoint b = end_normal (&out, FALSE);
  const HutPoint sum = { a.u + b.u, a.v + b.v };

  if (!(hypot (sum.u, sum.v) > OWN_RATIO))
    return FALSE;
  *direction = hut_point_unit (sum);
  return TRUE;
}

static double
distance_mm (const HutPath *path,
             HutPoint p)
{
  double least_mm = G_MAXDOUBLE;

  for (guint i = 0; i < hut_path_get_count (path); i++)
    {
      const HutSegment segment = hut_path_get_segment (path, i);

      least_mm = MIN (least_mm, hut_point_distance_mm (hut_segment_nearest (&segment, p), p));
    }
  return least_mm;
}

static gboolean
is_near_box (HutRect box,
             HutPoint p,
             double by_mm)
{
  return p.u >= box.u0 - by_mm && p.u <= box.u1 + by_mm && p.v >= box.v0 - by_mm
         && p.v <= box.v1 + by_mm;
}

/* Whether a lead-in of that length is in the room, off its own path and clear of all others. */
static gboolean
is_free (const GPtrArray *paths,
         const HutToolPath *own,
         HutPoint start,
         HutPoint direction,
         double length_mm,
         HutRect room)
{
  const guint steps = (guint) ceil (length_mm / STEP_MM);

  for (guint k = 1; k <= steps; k++)
    {
      const double away_mm = length_mm * k / steps;
      const HutPoint p = hut_point_along (start, direction, away_mm);

      if (!is_near_box (room, p, 0.0) || distance_mm (own->closed, p) < OWN_RATIO * away_mm)
        return FALSE;
      for (guint i = 0; i < paths->len; i++)
        {
          const HutToolPath *other = g_ptr_array_index (paths, i);

          if (other != own && other->layer != HUT_LAYER_POCKET
              && is_near_box (hut_path_bounds (other->closed), p, HUT_LEAD_CLEAR_MM)
              && distance_mm (other->closed, p) < HUT_LEAD_CLEAR_MM)
            return FALSE;
        }
    }
  return TRUE;
}

static int
compare_candidates (gconstpointer a,
                    gconstpointer b)
{
  const Candidate *x = a, *y = b;

  /* Corners first: there the end of the cut shows least. */
  if (x->middle != y->middle)
    return x->middle ? 1 : -1;
  if (x->away_mm != y->away_mm)
    return x->away_mm < y->away_mm ? -1 : 1;
  return x->corner < y->corner ? -1 : x->corner > y->corner;
}

/* (transfer full) (element-type Candidate): the best first */
static GArray *
candidates_new (const HutPath *path)
{
  GArray *candidates = g_array_new (FALSE, FALSE, sizeof (Candidate));
  const HutPoint from = hut_path_get (path, 0)->p;

  for (guint i = 0; i < hut_path_get_count (path); i++)
    {
      const HutSegment segment = hut_path_get_segment (path, i);
      const HutPoint middle = { (segment.start.u + segment.end.u) / 2.0,
                                (segment.start.v + segment.end.v) / 2.0 };
      Candidate candidate = { i, FALSE, segment.start,
                              hut_point_distance_mm (segment.start, from) };

      g_array_append_val (candidates, candidate);
      candidate = (Candidate) { i, TRUE, middle, hut_point_distance_mm (middle, from) };
      if (segment.bulge == 0.0 && segment.kind == HUT_EDGE_PLAIN
          && hut_segment_length_mm (&segment) >= MIDDLE_MIN_MM)
        g_array_append_val (candidates, candidate);
    }
  g_array_sort (candidates, compare_candidates);
  return candidates;
}

/* (transfer full) */
static HutPath *
dup_begun_at (const HutPath *path,
              const Candidate *start)
{
  const guint count = hut_path_get_count (path);
  HutPath *begun = hut_path_new ();

  if (start->middle)
    hut_path_append (begun, start->at, 0.0, hut_path_get (path, start->corner)->kind);
  for (guint i = 0; i < count; i++)
    {
      const guint corner = (start->corner + i + (start->middle ? 1 : 0)) % count;
      const HutVertex *vertex = hut_path_get (path, corner);

      hut_path_append (begun, vertex->p, vertex->bulge, vertex->kind);
    }
  return begun;
}

static void
add_lead (const GPtrArray *paths,
          HutToolPath *self,
          double wanted_mm,
          HutRect room)
{
  g_autoptr(GArray) candidates = candidates_new (self->closed);

  for (guint share = 0; share < G_N_ELEMENTS (SHARES); share++)
    for (guint i = 0; i < MIN (candidates->len, CANDIDATES_MAX); i++)
      {
        const Candidate *candidate = &g_array_index (candidates, Candidate, i);
        const double length_mm = wanted_mm * SHARES[share];
        HutPoint direction;

        if (!find_direction (self->closed, candidate, &direction)
            || !is_free (paths, self, candidate->at, direction, length_mm, room))
          continue;

        HutPath *begun = dup_begun_at (self->closed, candidate);

        self->has_lead = TRUE;
        self->lead = hut_point_along (candidate->at, direction, length_mm);
        g_clear_pointer (&self->closed, hut_path_free);
        self->closed = begun;
        return;
      }
}

void
hut_tool_paths_add_leads (GPtrArray *paths,
                          const HutCutter *cutter,
                          HutRect room)
{
  g_return_if_fail (paths != NULL && cutter != NULL);

  if (!(cutter->lead_in_mm > 0.0))
    return;
  for (guint i = 0; i < paths->len; i++)
    {
      HutToolPath *path = g_ptr_array_index (paths, i);

      if (path->closed != NULL && path->layer != HUT_LAYER_POCKET)
        add_lead (paths, path, cutter->lead_in_mm, room);
    }
}

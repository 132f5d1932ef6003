/* src/physics/hut-sight.c: straight lines of sight in a section, exact.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-physics"
#include "config.h"
#include "physics/hut-sight.h"

/* A line through a corner touches it, whatever the rounding, mm: far above the rounding of doubles
 * on a 10 m box, far under the grid. */
#define TOUCH_MM 1e-7

/* Where a line is inside of something, mm along it; empty when to <= from. */
typedef struct
{
  double from, to;
} Stretch;

static const Stretch everywhere = { -INFINITY, INFINITY };

static HutRect
grown (const HutRect *rect,
       double by_mm)
{
  return (HutRect) { rect->u0 - by_mm, rect->v0 - by_mm, rect->u1 + by_mm, rect->v1 + by_mm };
}

/* Cuts the stretch to a slab lo .. hi of one coordinate. */
static void
cut_to_slab (Stretch *stretch,
             double at,
             double step,
             double lo,
             double hi)
{
  if (step == 0)
    {
      if (at <= lo || at >= hi)
        stretch->to = -INFINITY;
      return;
    }

  const double a = (lo - at) / step, b = (hi - at) / step;

  stretch->from = MAX (stretch->from, MIN (a, b));
  stretch->to = MIN (stretch->to, MAX (a, b));
}

static Stretch
inside_of (const HutSightLine *line,
           const HutRect *rect)
{
  Stretch stretch = everywhere;

  cut_to_slab (&stretch, line->from.u, line->direction.u, rect->u0, rect->u1);
  cut_to_slab (&stretch, line->from.v, line->direction.v, rect->v0, rect->v1);
  return stretch;
}

static gboolean
is_empty (const Stretch *stretch)
{
  return !(stretch->to > stretch->from);
}

/* ---- one line ------------------------------------------------------------------------------ */

typedef struct
{
  const HutSightSection *section;
  const HutRect *target; /* NULL: away without end */
  GArray *walls;         /* HutRect: grown, but for the touch */
  GArray *corners;       /* HutPoint */
  guint *met;            /* of a way ahead and back: index of the wall that stopped the last one;
                          * mostly it stops the next one, too */
} Search;

static gboolean
stops (const Search *self,
       guint wall,
       const HutSightLine *line,
       double from_mm,
       double to_mm)
{
  const Stretch stretch = inside_of (line, &g_array_index (self->walls, HutRect, wall));

  return !is_empty (&stretch) && stretch.from < to_mm && stretch.to > from_mm;
}

/* TRUE when no wall lies on the line between two places on it. */
static gboolean
is_clear (const Search *self,
          const HutSightLine *line,
          double from_mm,
          double to_mm)
{
  guint *met = &self->met[to_mm == INFINITY ? 0 : 1];

  if (*met < self->walls->len && stops (self, *met, line, from_mm, to_mm))
    return FALSE;
  for (guint i = 0; i < self->walls->len; i++)
    if (stops (self, i, line, from_mm, to_mm))
      {
        *met = i;
        return FALSE;
      }
  return TRUE;
}

/* Away from a source stretch in one of the two directions of the line. */
static gboolean
gets_away (const Search *self,
           const HutSightLine *line,
           const Stretch *source,
           HutSightLine *found)
{
  const gboolean ahead = is_clear (self, line, source->to, INFINITY);

  if (!ahead && !is_clear (self, line, -INFINITY, source->from))
    return FALSE;
  found->from = hut_point_along (line->from, line->direction, ahead ? source->to : source->from);
  found->direction = ahead ? line->direction : hut_point_minus ((HutPoint) { 0 }, line->direction);
  return TRUE;
}

static gboolean
meets_target (const Search *self,
              const HutSightLine *line,
              const Stretch *source,
              HutSightLine *found)
{
  const HutRect wide = grown (self->target, TOUCH_MM);
  const Stretch target = inside_of (line, &wide);
  const gboolean ahead = target.from > source->to, behind = target.to < source->from;

  if (is_empty (&target))
    return FALSE;
  if (ahead && !is_clear (self, line, source->to, target.from))
    return FALSE;
  if (behind && !is_clear (self, line, target.to, source->from))
    return FALSE;
  found->from = hut_point_along (line->from, line->direction, behind ? source->from : source->to);
  found->direction
      = behind ? (HutPoint) { -line->direction.u, -line->direction.v } : line->direction;
  return TRUE;
}

static gboolean
try_line (const Search *self,
          HutPoint a,
          HutPoint b,
          HutSightLine *found)
{
  const HutSightLine line = { a, hut_point_unit (hut_point_minus (b, a)) };

  for (guint i = 0; i < self->section->n_sources; i++)
    {
      const HutRect wide = grown (&self->section->sources[i], TOUCH_MM);
      const Stretch source = inside_of (&line, &wide);

      if (is_empty (&source))
        continue;
      if (self->target == NULL ? gets_away (self, &line, &source, found)
                               : meets_target (self, &line, &source, found))
        return TRUE;
    }
  return FALSE;
}

/* ---- all lines ----------------------------------------------------------------------------- */

static gboolean
lies_in_a_wall (const Search *self,
                HutPoint p)
{
  for (guint i = 0; i < self->walls->len; i++)
    {
      const HutRect *wall = &g_array_index (self->walls, HutRect, i);

      if (p.u > wall->u0 && p.u < wall->u1 && p.v > wall->v0 && p.v < wall->v1)
        return TRUE;
    }
  return FALSE;
}

static void
add_corners (GArray *corners,
             const HutRect *rect)
{
  const HutPoint all[] = {
    { rect->u0, rect->v0 }, { rect->u1, rect->v0 }, { rect->u1, rect->v1 }, { rect->u0, rect->v1 }
  };

  g_array_append_vals (corners, all, G_N_ELEMENTS (all));
}

/* A free way runs past the corners that it touches: those that another wall covers are none. */
static void
add_bare_corners (const Search *self,
                  const HutRect *rect)
{
  const HutPoint all[] = {
    { rect->u0, rect->v0 }, { rect->u1, rect->v0 }, { rect->u1, rect->v1 }, { rect->u0, rect->v1 }
  };

  for (guint i = 0; i < G_N_ELEMENTS (all); i++)
    if (!lies_in_a_wall (self, all[i]))
      g_array_append_val (self->corners, all[i]);
}

/* FALSE only when the line through two points has all of the rectangle on one side: told by outer
 * products, without a division. */
static gboolean
comes_near (HutPoint a,
            HutPoint b,
            const HutRect *rect)
{
  const HutPoint way = hut_point_minus (b, a);
  /* Of the least and the greatest outer product of the way with a corner less @a, half the sum and
   * half the difference. */
  const HutPoint middle = { 0.5 * (rect->u0 + rect->u1) - a.u, 0.5 * (rect->v0 + rect->v1) - a.v };
  const double half_u = 0.5 * (rect->u1 - rect->u0) + 2 * TOUCH_MM;
  const double half_v = 0.5 * (rect->v1 - rect->v0) + 2 * TOUCH_MM;

  return fabs (hut_point_cross (way, middle)) <= fabs (way.u) * half_v + fabs (way.v) * half_u;
}

static gboolean
comes_near_a_source (const HutSightSection *section,
                     HutPoint a,
                     HutPoint b)
{
  for (guint i = 0; i < section->n_sources; i++)
    if (comes_near (a, b, &section->sources[i]))
      return TRUE;
  return FALSE;
}

static gboolean
search (const HutSightSection *section,
        const HutRect *target,
        HutSightLine *line)
{
  const double grow_mm = 0.5 * HUT_SIGHT_CLOSED_MM;
  g_autoptr(GArray) walls = g_array_new (FALSE, FALSE, sizeof (HutRect));
  g_autoptr(GArray) corners = g_array_new (FALSE, FALSE, sizeof (HutPoint));
  guint met[2] = { 0, 0 };
  const Search self = { section, target, walls, corners, met };

  for (guint i = 0; i < section->n_walls; i++)
    {
      const HutRect opaque = grown (&section->walls[i], grow_mm - TOUCH_MM);

      g_array_append_val (walls, opaque);
    }
  for (guint i = 0; i < section->n_sources; i++)
    add_corners (corners, &section->sources[i]);
  if (target != NULL)
    add_corners (corners, target);
  for (guint i = 0; i < section->n_walls; i++)
    {
      const HutRect border = grown (&section->walls[i], grow_mm);

      add_bare_corners (&self, &border);
    }
  for (guint i = 0; i < corners->len; i++)
    for (guint j = i + 1; j < corners->len; j++)
      {
        const HutPoint a = g_array_index (corners, HutPoint, i);
        const HutPoint b = g_array_index (corners, HutPoint, j);

        if (comes_near_a_source (section, a, b) && hut_point_distance_mm (a, b) > TOUCH_MM
            && try_line (&self, a, b, line))
          return TRUE;
      }
  return FALSE;
}

gboolean
hut_sight_find (const HutSightSection *section,
                HutSightLine *line)
{
  g_return_val_if_fail (section != NULL && line != NULL, FALSE);

  if (section->n_sources > 0 && section->n_walls == 0)
    {
      const HutRect *source = &section->sources[0];

      *line = (HutSightLine) { { source->u0, source->v0 }, { 1, 0 } };
      return TRUE;
    }
  return search (section, NULL, line);
}

gboolean
hut_sight_find_to (const HutSightSection *section,
                   const HutRect *target,
                   HutSightLine *line)
{
  g_return_val_if_fail (section != NULL && target != NULL && line != NULL, FALSE);

  return search (section, target, line);
}

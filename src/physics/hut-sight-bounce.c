/* src/physics/hut-sight-bounce.c: how often light has to meet a wall before it gets out.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-physics"
#include "config.h"
#include "physics/hut-sight-bounce.h"

/* Points lie this far before their wall, mm: a wall is grown by half of this when sight is looked
 * for. */
#define BEFORE_MM HUT_SIGHT_CLOSED_MM
/* The last point of a way lies this far outside, mm; own choice: far enough to be drawn. */
#define OUT_MM 1000.0
/* Points of one edge of a wall; own choice: walls reach no further than some metres. */
#define EDGE_POINTS_MAX 2000

typedef struct
{
  HutPoint at;
  int from;     /* index of the point that lights it, -1: a source */
  int bounces;  /* how often light has bounced when it leaves here; 0: dark so far */
  HutPoint lit; /* point of the source that lights it, when from is -1 */
} Spot;

static gboolean
lies_in_a_wall (const HutSightSection *section,
                HutPoint p)
{
  const double grow_mm = 0.5 * HUT_SIGHT_CLOSED_MM;

  for (guint i = 0; i < section->n_walls; i++)
    {
      const HutRect *wall = &section->walls[i];

      if (p.u > wall->u0 - grow_mm && p.u < wall->u1 + grow_mm && p.v > wall->v0 - grow_mm
          && p.v < wall->v1 + grow_mm)
        return TRUE;
    }
  return FALSE;
}

static void
add_edge (GArray *spots,
          const HutSightSection *section,
          HutPoint a,
          HutPoint b,
          double pitch_mm)
{
  const double length_mm = hut_point_distance_mm (a, b);
  const guint count = (guint)CLAMP (ceil (length_mm / pitch_mm), 1, EDGE_POINTS_MAX);

  for (guint i = 0; i < count; i++)
    {
      const double share = (i + 0.5) / count;
      const Spot spot = { .at = { a.u + share * (b.u - a.u), a.v + share * (b.v - a.v) } };

      if (!lies_in_a_wall (section, spot.at))
        g_array_append_val (spots, spot);
    }
}

static GArray *
spots_of (const HutSightSection *section,
          double pitch_mm)
{
  GArray *spots = g_array_new (FALSE, FALSE, sizeof (Spot));

  for (guint i = 0; i < section->n_walls; i++)
    {
      const HutRect r = { section->walls[i].u0 - BEFORE_MM, section->walls[i].v0 - BEFORE_MM,
                          section->walls[i].u1 + BEFORE_MM, section->walls[i].v1 + BEFORE_MM };

      add_edge (spots, section, (HutPoint) { r.u0, r.v0 }, (HutPoint) { r.u1, r.v0 }, pitch_mm);
      add_edge (spots, section, (HutPoint) { r.u1, r.v0 }, (HutPoint) { r.u1, r.v1 }, pitch_mm);
      add_edge (spots, section, (HutPoint) { r.u1, r.v1 }, (HutPoint) { r.u0, r.v1 }, pitch_mm);
      add_edge (spots, section, (HutPoint) { r.u0, r.v1 }, (HutPoint) { r.u0, r.v0 }, pitch_mm);
    }
  return spots;
}

/* TRUE when nothing stands between two points. */
static gboolean
see_each_other (const HutSightSection *section,
                HutPoint a,
                HutPoint b)
{
  const double grow_mm = 0.5 * HUT_SIGHT_CLOSED_MM;

  for (guint i = 0; i < section->n_walls; i++)
    {
      const HutRect *w = &section->walls[i];
      const double lo[2] = { w->u0 - grow_mm, w->v0 - grow_mm };
      const double hi[2] = { w->u1 + grow_mm, w->v1 + grow_mm };
      const double at[2] = { a.u, a.v }, way[2] = { b.u - a.u, b.v - a.v };
      double from = 0, to = 1;

      for (guint k = 0; k < 2; k++)
        if (way[k] != 0)
          {
            const double s = (lo[k] - at[k]) / way[k], e = (hi[k] - at[k]) / way[k];

            from = MAX (from, MIN (s, e));
            to = MIN (to, MAX (s, e));
          }
        else if (at[k] <= lo[k] || at[k] >= hi[k])
          to = -1;
      if (to > from)
        return FALSE;
    }
  return TRUE;
}

static gboolean
gets_out (const HutSightSection *section,
          HutPoint at,
          HutSightLine *line)
{
  const HutRect spot = { at.u, at.v, at.u, at.v };
  const HutSightSection from_here = { section->walls, section->n_walls, &spot, 1 };

  return hut_sight_find (&from_here, line);
}

static HutBouncePath
path_to (const GArray *spots,
         int last,
         const HutSightLine *line)
{
  HutBouncePath path = { .bounces = (guint)g_array_index (spots, Spot, last).bounces };
  guint at = path.bounces;

  path.n_points = path.bounces + 2;
  path.points[path.n_points - 1] = hut_point_along (line->from, line->direction, OUT_MM);
  for (int i = last; i >= 0; i = g_array_index (spots, Spot, i).from)
    {
      const Spot *spot = &g_array_index (spots, Spot, i);

      path.points[at--] = spot->at;
      if (spot->from < 0)
        path.points[0] = spot->lit;
    }
  return path;
}

/* Lights what the sources see. */
static void
light_from_sources (const HutSightSection *section,
                    GArray *spots)
{
  for (guint i = 0; i < spots->len; i++)
    {
      Spot *spot = &g_array_index (spots, Spot, i);
      const HutRect target = { spot->at.u, spot->at.v, spot->at.u, spot->at.v };
      HutSightLine line;

      if (hut_sight_find_to (section, &target, &line))
        {
          spot->bounces = 1;
          spot->from = -1;
          spot->lit = line.from;
        }
    }
}

/* Lights what points of one generation see that was dark. */
static void
light_from_spots (const HutSightSection *section,
                  GArray *spots,
                  int generation)
{
  for (guint i = 0; i < spots->len; i++)
    {
      Spot *dark = &g_array_index (spots, Spot, i);

      for (guint j = 0; dark->bounces == 0 && j < spots->len; j++)
        {
          const Spot *spot = &g_array_index (spots, Spot, j);

          if (spot->bounces == generation && see_each_other (section, spot->at, dark->at))
            {
              dark->bounces = generation + 1;
              dark->from = (int)j;
            }
        }
    }
}

HutBouncePath
hut_sight_bounce_find (const HutSightSection *section,
                       double pitch_mm)
{
  HutBouncePath none = { .bounces = HUT_BOUNCES_MAX + 1 };
  HutSightLine line;

  g_return_val_if_fail (section != NULL && pitch_mm > 0, none);

  if (hut_sight_find (section, &line))
    return (HutBouncePath) {
      .points = { line.from, hut_point_along (line.from, line.direction, OUT_MM) },
      .n_points = 2,
    };

  g_autoptr(GArray) spots = spots_of (section, pitch_mm);

  light_from_sources (section, spots);
  for (int generation = 1; generation <= (int)HUT_BOUNCES_MAX; generation++)
    {
      for (guint i = 0; i < spots->len; i++)
        {
          const Spot *spot = &g_array_index (spots, Spot, i);

          if (spot->bounces == generation && gets_out (section, spot->at, &line))
            return path_to (spots, (int)i, &line);
        }
      light_from_spots (section, spots, generation);
    }
  return none;
}

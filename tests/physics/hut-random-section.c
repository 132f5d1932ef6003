/* tests/physics/hut-random-section.c: random sections of boxes with gaps, lips and things inside.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "config.h"
#include "physics/hut-random-section.h"

static void
add_wall (HutRandomSection *self,
          HutRect wall)
{
  if (wall.u1 > wall.u0 && wall.v1 > wall.v0 && self->section.n_walls < HUT_RANDOM_WALLS_MAX)
    self->walls[self->section.n_walls++] = wall;
}

/* A wall along one axis with a gap, and a lip over it. @flip: the wall runs along v. */
static void
add_side (HutRandomSection *self,
          HutRandom *random,
          gboolean flip,
          double from,
          double to,
          double near,
          double far)
{
  const double gap = hut_random_chance (random, 0.5) ? hut_random_octaves (random, 0.1, 40) : 0;
  const double at = hut_random_between (random, from, to - gap), t = far - near;
  const double lip = hut_random_between (random, 0, 6),
               apart = hut_random_octaves (random, 0.1, 10);
  const double over = hut_random_octaves (random, 0.5, 40);
  const gboolean inside = hut_random_chance (random, 0.5),
                 has_lip = gap > 0 && hut_random_chance (random, 0.6);
  const double lip0 = inside == (near < 0) ? far + apart : near - apart - lip;
  const HutRect rects[] = {
    { from, near, gap > 0 ? at : to, far },
    { at + gap, near, gap > 0 ? to : at, far },
    { at - over, lip0, has_lip ? at + gap + over : at - over, lip0 + MAX (lip, 0.2 * t) },
  };

  for (guint i = 0; i < G_N_ELEMENTS (rects); i++)
    {
      const HutRect r = rects[i];

      add_wall (self, flip ? (HutRect) { r.v0, r.u0, r.v1, r.u1 } : r);
    }
}

void
hut_random_section_init (HutRandomSection *self,
                         guint64 seed)
{
  HutRandom random;
  double w, h, t;

  hut_random_init (&random, seed);
  *self = (HutRandomSection) { 0 };
  w = hut_random_between (&random, 100, 400);
  h = hut_random_between (&random, 100, 400);
  t = hut_random_between (&random, 3, 18);
  add_side (self, &random, FALSE, -t, w + t, -t, 0);
  add_side (self, &random, FALSE, -t, w + t, h, h + t);
  add_side (self, &random, TRUE, 0, h, -t, 0);
  add_side (self, &random, TRUE, 0, h, w, w + t);
  self->source.u0 = hut_random_between (&random, 0.15, 0.5) * w;
  self->source.v0 = hut_random_between (&random, 0.15, 0.5) * h;
  self->source.u1
      = self->source.u0
        + (hut_random_chance (&random, 0.2) ? 0 : hut_random_between (&random, 0, 0.35) * w);
  self->source.v1
      = self->source.v0
        + (hut_random_chance (&random, 0.2) ? 0 : hut_random_between (&random, 0, 0.35) * h);
  for (guint i = hut_random_below (&random, 4); i > 0; i--)
    {
      const double u = hut_random_between (&random, 0, w), v = hut_random_between (&random, 0, h);

      add_wall (self, (HutRect) { u, v, u + hut_random_between (&random, 1, 30),
                                 v + hut_random_between (&random, 1, 30) });
    }
  self->section.walls = self->walls;
  self->section.sources = &self->source;
  self->section.n_sources = 1;
}

/* Does the ray cross the piece between two points? Signs of the outer product, and which way along
 * the ray. */
static gboolean
crosses (HutPoint from,
         HutPoint direction,
         HutPoint a,
         HutPoint b)
{
  const HutPoint pa = hut_point_minus (a, from), pb = hut_point_minus (b, from);
  const double sa = hut_point_cross (direction, pa), sb = hut_point_cross (direction, pb);
  double along;

  if ((sa > 0) == (sb > 0))
    return FALSE;
  along = (hut_point_dot (direction, pa) * sb - hut_point_dot (direction, pb) * sa) / (sb - sa);
  return along > 0;
}

gboolean
hut_ray_escapes (const HutSightSection *section,
                 HutPoint from,
                 HutPoint direction)
{
  for (guint i = 0; i < section->n_walls; i++)
    {
      const HutRect *r = &section->walls[i];
      const HutPoint c[]
          = { { r->u0, r->v0 }, { r->u1, r->v0 }, { r->u1, r->v1 }, { r->u0, r->v1 } };

      for (guint k = 0; k < 4; k++)
        if (crosses (from, direction, c[k], c[(k + 1) % 4]))
          return FALSE;
      if (from.u > r->u0 && from.u < r->u1 && from.v > r->v0 && from.v < r->v1)
        return FALSE;
    }
  return TRUE;
}

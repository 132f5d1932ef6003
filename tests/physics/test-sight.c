/* tests/physics/test-sight.c: lines of sight in sections, against brute rays.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "config.h"
#include "hut-assert.h"
#include "physics/hut-gap-sight.h"
#include "physics/hut-random-section.h"

#define SECTIONS_DEFAULT 600
#define PLACES 5
#define DIRECTIONS 720

/* A closed ring of walls 10 mm thick round 0 .. 100, with a slot of the given height in its right
 * wall. */
static guint
ring_with_slot (HutRect walls[8],
                double slot0,
                double slot1)
{
  const HutRect all[] = { { -10, -10, 110, 0 },
                          { -10, 100, 110, 110 },
                          { -10, 0, 0, 100 },
                          { 100, 0, 110, slot0 },
                          { 100, slot1, 110, 100 } };

  for (guint i = 0; i < G_N_ELEMENTS (all); i++)
    walls[i] = all[i];
  return G_N_ELEMENTS (all);
}

static gboolean
point_is_seen (const HutRect *walls,
               guint n,
               double u,
               double v,
               HutSightLine *line)
{
  const HutRect source = { u, v, u, v };

  return hut_sight_find (&(HutSightSection) { walls, n, &source, 1 }, line);
}

static void
a_slot_is_seen_within_its_half_angle_only (void **state)
{
  /* Slot from 49 to 51 through 10 mm: from 90 mm before it the line through the far edges reaches 2
   * / 10 90 further. */
  HutRect walls[8];
  const guint n = ring_with_slot (walls, 49, 51);
  HutSightLine line;

  assert_true (point_is_seen (walls, n, 10, 50, &line));
  assert_true (point_is_seen (walls, n, 10, 51 + 0.2 * 90 - 0.02, &line));
  assert_false (point_is_seen (walls, n, 10, 51 + 0.2 * 90 + 0.02, &line));
  assert_true (point_is_seen (walls, n, 10, 49 - 0.2 * 90 + 0.02, &line));
  assert_false (point_is_seen (walls, n, 10, 49 - 0.2 * 90 - 0.02, &line));
  assert_near (hut_gap_half_angle_rad (2, 10), atan (0.2), 1e-15);
}

static void
touching_walls_are_closed_and_a_hair_is_not (void **state)
{
  HutRect walls[8];
  HutSightLine line = { { 7, 7 }, { 7, 7 } };

  assert_false (point_is_seen (walls, ring_with_slot (walls, 50, 50), 10, 50, &line));
  assert_false (point_is_seen (walls, ring_with_slot (walls, 50, 50 + 0.9 * HUT_SIGHT_CLOSED_MM),
                               10, 50, &line));
  assert_near (line.from.u, 7, 0);
  assert_true (point_is_seen (walls, ring_with_slot (walls, 50, 50 + 3 * HUT_SIGHT_CLOSED_MM), 10,
                              50.0015, &line));
}

static void
a_gap_with_a_corner_follows_the_corner_rule (void **state)
{
  /* An inner corner at (0, 0), a leg of width g1 along -u and one of width g2 along -v; the source
   * is the whole mouth. */
  HutRandom random;
  guint seen = 0;

  hut_random_init (&random, 11);
  for (guint i = 0; i < 500; i++)
    {
      const double g1 = hut_random_between (&random, 0.5, 5),
                   g2 = hut_random_between (&random, 0.5, 5);
      const double l1 = hut_random_between (&random, 0.5, 8),
                   l2 = hut_random_between (&random, 0.5, 8);
      const HutRect walls[] = {
        { -l1, -l2, 0, 0 },            /* the inner corner */
        { -l1, g1, g2 + 100, g1 + 1 }, /* outer side of the first leg */
        { g2, -l2, g2 + 1, g1 },       /* outer side of the second leg */
        { -l1 - 50, -l2 - 50, -l1 - 49, g1 + 50 },
        { -l1 - 50, -l2 - 50, g2 + 50, -l2 - 49 },
      };
      /* From the first mouth into the second: a line to the mouth's far plane. */
      const HutRect mouth = { -l1, 0, -l1, g1 }, target = { 0, -l2, g2, -l2 };
      const HutSightSection section = { walls, 3, &mouth, 1 };
      HutSightLine line;
      const gboolean sighted = hut_sight_find_to (&section, &target, &line);

      if (fabs (g1 * g2 - l1 * l2) < 0.02)
        continue;
      if (sighted != hut_corner_is_sighted (g1, g2, l1, l2))
        fail_msg ("g %g %g, legs %g %g: %s", g1, g2, l1, l2, sighted ? "sighted" : "not sighted");
      seen += sighted;
    }
  assert_true (seen > 50 && seen < 450);
}

static gboolean
any_ray_escapes (const HutRandomSection *self,
                 HutPoint *from,
                 HutPoint *direction)
{
  for (guint i = 0; i < PLACES * PLACES; i++)
    {
      const double su = (double)(i % PLACES) / (PLACES - 1),
                   sv = (double)(i / PLACES) / (PLACES - 1);

      from->u = self->source.u0 + su * (self->source.u1 - self->source.u0);
      from->v = self->source.v0 + sv * (self->source.v1 - self->source.v0);
      for (guint k = 0; k < DIRECTIONS; k++)
        {
          const double angle = 2 * G_PI * (k + 0.37) / DIRECTIONS;

          *direction = (HutPoint) { cos (angle), sin (angle) };
          if (hut_ray_escapes (&self->section, *from, *direction))
            return TRUE;
        }
    }
  return FALSE;
}

static gboolean
lies_in_source (const HutRandomSection *self,
                HutPoint p)
{
  const double room_mm = 1e-6;

  return p.u >= self->source.u0 - room_mm && p.u <= self->source.u1 + room_mm
         && p.v >= self->source.v0 - room_mm && p.v <= self->source.v1 + room_mm;
}

static void
brute_rays_find_no_leak_that_is_missed_and_can_use_each_that_is_named (void **state)
{
  const guint64 first = hut_random_first_seed ();
  const guint64 count = MAX (hut_random_seed_count (SECTIONS_DEFAULT), 500);
  guint named = 0, by_rays = 0;

  for (guint64 seed = first; seed < first + count; seed++)
    {
      HutRandomSection here;
      HutSightLine line;
      HutPoint from, direction;
      gboolean found, escaped;

      hut_random_section_init (&here, seed);
      found = hut_sight_find (&here.section, &line);
      escaped = any_ray_escapes (&here, &from, &direction);
      if (escaped && !found)
        fail_msg ("seed %" G_GUINT64_FORMAT
                  ": a ray from (%g, %g) towards (%g, %g) gets out, and no leak is named",
                  seed, from.u, from.v, direction.u, direction.v);
      if (found
          && !(lies_in_source (&here, line.from)
               && hut_ray_escapes (&here.section, line.from, line.direction)))
        fail_msg ("seed %" G_GUINT64_FORMAT
                  ": no ray can use the leak from (%g, %g) towards (%g, %g)",
                  seed, line.from.u, line.from.v, line.direction.u, line.direction.v);
      named += found;
      by_rays += escaped;
    }
  printf ("%" G_GUINT64_FORMAT " sections: %u leaks named, %u of them found by %d rays each\n",
          count, named, by_rays, PLACES * PLACES * DIRECTIONS);
  /* Both answers have to be common, and rays must find most of the leaks, or this proves little. */
  assert_true (named > count / 5 && named < count - count / 5);
  assert_true (by_rays > named / 2);
}

static void
nothing_shines_without_a_source_and_everything_without_walls (void **state)
{
  const HutRect source = { 0, 0, 1, 1 }, wall = { 5, 5, 6, 6 };
  HutSightLine line;

  assert_false (hut_sight_find (&(HutSightSection) { &wall, 1, NULL, 0 }, &line));
  assert_true (hut_sight_find (&(HutSightSection) { NULL, 0, &source, 1 }, &line));
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (a_slot_is_seen_within_its_half_angle_only),
    cmocka_unit_test (touching_walls_are_closed_and_a_hair_is_not),
    cmocka_unit_test (a_gap_with_a_corner_follows_the_corner_rule),
    cmocka_unit_test (nothing_shines_without_a_source_and_everything_without_walls),
    cmocka_unit_test (brute_rays_find_no_leak_that_is_missed_and_can_use_each_that_is_named),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}

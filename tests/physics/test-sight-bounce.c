/* tests/physics/test-sight-bounce.c: bounces on the way out.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "config.h"
#include "hut-assert.h"
#include "physics/hut-random-section.h"
#include "physics/hut-sight-bounce.h"

/* A closed ring of walls round 0 .. 100 but for a slot in the right wall from 49 to 51, with a
 * screen before it inside and, when told, a second one before that. */
static HutBouncePath
bounces_behind (double screen0,
                double screen1)
{
  const HutRect walls[] = {
    { -10, -10, 110, 0 }, { -10, 100, 110, 110 }, { -10, 0, 0, 100 },
    { 100, 0, 110, 49 },  { 100, 51, 110, 100 },  { 80, screen0, 82, screen1 },
  };
  const HutRect source = { 10, 49, 10, 51 };
  const HutSightSection section = { walls, G_N_ELEMENTS (walls), &source, 1 };

  return hut_sight_bounce_find (&section, 0.7);
}

static void
an_open_slot_needs_none (void **state)
{
  const HutBouncePath path = bounces_behind (90, 95);

  assert_int_equal (path.bounces, 0);
  assert_int_equal (path.n_points, 2);
}

static void
a_screen_before_the_slot_costs_at_least_one (void **state)
{
  /* Out of the slot see only its own sides and the back of the screen, and the source sees neither
   * of them. */
  const HutBouncePath path = bounces_behind (20, 80);

  assert_int_equal (path.bounces, 2);
  assert_int_equal (path.n_points, 4);
  /* Last bounce: the back of the screen, or a side of the slot. */
  assert_true (path.points[2].u > 81.9 && path.points[2].u < 110);
  /* Out through the slot, to the right. */
  assert_true (path.points[3].u > 110);
}

static void
a_screen_from_wall_to_wall_lets_nothing_out (void **state)
{
  assert_int_equal (bounces_behind (0, 100).bounces, HUT_BOUNCES_MAX + 1);
}

static void
each_way_named_is_free_from_point_to_point (void **state)
{
  const guint64 first = hut_random_first_seed (), count = MIN (hut_random_seed_count (40), 60);
  guint with[HUT_BOUNCES_MAX + 2] = { 0 };

  for (guint64 seed = first; seed < first + count; seed++)
    {
      HutRandomSection here;
      HutBouncePath path;
      HutSightLine line;

      hut_random_section_init (&here, seed);
      path = hut_sight_bounce_find (&here.section, 8);
      with[path.bounces]++;
      assert_true ((path.bounces == 0) == hut_sight_find (&here.section, &line));
      for (guint i = 0; i + 1 < path.n_points; i++)
        for (guint w = 0; w < here.section.n_walls; w++)
          for (double s = 0; s <= 1; s += 1 / 512.0)
            {
              const HutRect *r = &here.walls[w];
              const double u = path.points[i].u + s * (path.points[i + 1].u - path.points[i].u);
              const double v = path.points[i].v + s * (path.points[i + 1].v - path.points[i].v);

              if (u > r->u0 + 1e-6 && u < r->u1 - 1e-6 && v > r->v0 + 1e-6 && v < r->v1 - 1e-6)
                fail_msg ("seed %" G_GUINT64_FORMAT ": the way runs through a wall at (%g, %g)",
                          seed, u, v);
            }
    }
  assert_true (with[0] > 0 && with[1] > 0);
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (an_open_slot_needs_none),
    cmocka_unit_test (a_screen_before_the_slot_costs_at_least_one),
    cmocka_unit_test (a_screen_from_wall_to_wall_lets_nothing_out),
    cmocka_unit_test (each_way_named_is_free_from_point_to_point),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}

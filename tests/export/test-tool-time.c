/* tests/export/test-tool-time.c: how long the tool needs, by hand and by small steps.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "export/hut-tool-program.h"
#include "export/hut-tool-time.h"
#include "hut-assert.h"
#include "hut-random.h"
#include <math.h>

static void
add (GArray *moves,
     HutPoint from,
     HutPoint to,
     double bulge,
     double speed_mm_min,
     gboolean cuts)
{
  const HutToolMove move = { .cuts = cuts, .way = { from, to, bulge, HUT_EDGE_PLAIN },
                             .speed_mm_min = speed_mm_min };

  g_array_append_val (moves, move);
}

static void
long_line_is_a_trapezoid_and_a_short_one_a_triangle (void **state)
{
  g_autoptr(GArray) moves = g_array_new (FALSE, FALSE, sizeof (HutToolMove));

  /* 50 mm/s, 500 mm/s2: 0.1 s and 2.5 mm at each end; 95 mm at 50 mm/s are 1.9 s. */
  add (moves, (HutPoint) { 0, 0 }, (HutPoint) { 100, 0 }, 0, 3000, TRUE);
  assert_near (hut_tool_program_time_s (moves, 500), 2.1, 1e-12);
  /* 2 mm: up to sqrt (500 * 2) = 31.6 mm/s and down: 2 * 31.6 / 500. */
  g_array_set_size (moves, 0);
  add (moves, (HutPoint) { 0, 0 }, (HutPoint) { 2, 0 }, 0, 3000, TRUE);
  assert_near (hut_tool_program_time_s (moves, 500), 2 * sqrt (1000.0) / 500, 1e-12);
}

static void
straight_joins_cost_nothing_and_turning_back_costs_a_stop (void **state)
{
  g_autoptr(GArray) moves = g_array_new (FALSE, FALSE, sizeof (HutToolMove));

  for (int i = 0; i < 10; i++)
    add (moves, (HutPoint) { 10 * i, 0 }, (HutPoint) { 10 * i + 10, 0 }, 0, 3000, TRUE);
  assert_near (hut_tool_program_time_s (moves, 500), 2.1, 1e-9);
  g_array_set_size (moves, 0);
  add (moves, (HutPoint) { 0, 0 }, (HutPoint) { 50, 0 }, 0, 3000, TRUE);
  add (moves, (HutPoint) { 50, 0 }, (HutPoint) { 0, 0 }, 0, 3000, TRUE);
  assert_near (hut_tool_program_time_s (moves, 500), 2 * 1.1, 1e-9); /* each 0.2 s + 45 / 50 s */
  g_array_set_size (moves, 0);
  add (moves, (HutPoint) { 0, 0 }, (HutPoint) { 50, 0 }, 0, 3000, FALSE);
  add (moves, (HutPoint) { 50, 0 }, (HutPoint) { 100, 0 }, 0, 3000, TRUE);
  assert_near (hut_tool_program_time_s (moves, 500), 2 * 1.1, 1e-9); /* the beam goes on at rest */
}

/* Another route: the highest speed at each of many small steps, limited from both sides, then the sum of
 * step / mean speed. Corners: the circle is built from its centre on the line that halves the corner. */
static double
time_by_steps_s (const GArray *moves,
                 double acceleration_mm_s2)
{
  const double step_mm = 0.002;
  g_autoptr(GArray) limits = g_array_new (FALSE, FALSE, sizeof (double)); /* speed squared */
  double stop = 0.0, time_s = 0.0;

  g_array_append_val (limits, stop);
  for (guint i = 0; i < moves->len; i++)
    {
      const HutToolMove *move = &g_array_index (moves, HutToolMove, i);
      const double length_mm = hut_tool_move_length_mm (move);
      const guint count = (guint) round (length_mm / step_mm);
      double top = pow (move->speed_mm_min / 60.0, 2);
      double end = 0.0;

      if (move->way.bulge != 0.0)
        top = MIN (top, acceleration_mm_s2 * length_mm / (4.0 * atan (fabs (move->way.bulge))));
      if (i + 1 < moves->len)
        {
          const HutToolMove *next = &g_array_index (moves, HutToolMove, i + 1);
          const HutSegment a = hut_segment_between (&move->way, 1.0 - 1e-6, 1.0);
          const HutSegment b = hut_segment_between (&next->way, 0.0, 1e-6);
          const double turn_rad = fabs (remainder (atan2 (b.end.v - b.start.v, b.end.u - b.start.u)
                                                       - atan2 (a.end.v - a.start.v, a.end.u - a.start.u),
                                                   2.0 * G_PI));
          const double half_rad = (G_PI - turn_rad) / 2.0; /* between a leg and the halving line */
          /* The centre is r / sin (half) from the corner, and that is r + 0.01. */
          const double radius_mm = 0.01 / (1.0 / sin (MAX (half_rad, 1e-9)) - 1.0);

          end = move->cuts == next->cuts
                    ? MIN (acceleration_mm_s2 * radius_mm,
                           MIN (top, pow (next->speed_mm_min / 60.0, 2)))
                    : 0.0;
          if (next->way.bulge != 0.0)
            end = MIN (end, acceleration_mm_s2 * hut_segment_length_mm (&next->way)
                                / (4.0 * atan (fabs (next->way.bulge))));
        }
      for (guint k = 1; k <= count; k++)
        g_array_append_vals (limits, k == count ? &end : &top, 1);
    }
  for (guint i = limits->len - 1; i-- > 0;)
    g_array_index (limits, double, i)
        = MIN (g_array_index (limits, double, i),
               g_array_index (limits, double, i + 1) + 2 * acceleration_mm_s2 * step_mm);
  for (guint i = 1; i < limits->len; i++)
    {
      double *now = &g_array_index (limits, double, i);
      const double before = g_array_index (limits, double, i - 1);

      *now = MIN (*now, before + 2 * acceleration_mm_s2 * step_mm);
      time_s += 2.0 * step_mm / (sqrt (*now) + sqrt (before));
    }
  return time_s;
}

static void
time_is_that_of_many_small_steps (void **state)
{
  for (guint64 seed = 1; seed <= 25; seed++)
    {
      g_autoptr(GArray) moves = g_array_new (FALSE, FALSE, sizeof (HutToolMove));
      const double acceleration_mm_s2 = 100.0 * (double) seed;
      HutPoint at = { 0, 0 };
      HutRandom random;

      hut_random_init (&random, seed);
      for (guint i = 0; i < 12; i++)
        {
          /* Whole steps, so that both routes have the same lengths. */
          const double length_mm = 0.2 + 0.002 * hut_random_below (&random, 6000);
          const double angle_rad = hut_random_between (&random, 0.0, 6.2);
          const gboolean arc = hut_random_below (&random, 3) == 0;
          const double turn_rad = arc ? hut_random_between (&random, 0.3, 2.5) : 0.0;
          const double chord_mm
              = arc ? 2.0 * length_mm / turn_rad * sin (turn_rad / 2.0) : length_mm;
          const HutPoint to = { at.u + chord_mm * cos (angle_rad), at.v + chord_mm * sin (angle_rad) };

          add (moves, at, to, tan (turn_rad / 4.0), i % 5 == 4 ? 6000 : 900, i % 5 != 4);
          at = to;
        }

      const double must_s = time_by_steps_s (moves, acceleration_mm_s2);

      if (fabs (hut_tool_program_time_s (moves, acceleration_mm_s2) / must_s - 1.0) > 0.005)
        fail_msg ("seed %d: %.6f s, by steps %.6f s", (int) seed,
                  hut_tool_program_time_s (moves, acceleration_mm_s2), must_s);
    }
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (long_line_is_a_trapezoid_and_a_short_one_a_triangle),
    cmocka_unit_test (straight_joins_cost_nothing_and_turning_back_costs_a_stop),
    cmocka_unit_test (time_is_that_of_many_small_steps),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}

/* tests/checks/test-turn.c: a turning rectangle against a fixed one.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "config.h"
#include "checks/hut-turn.h"
#include "hut-assert.h"
#include "hut-random.h"

#define DEG (G_PI / 180.0)
#define STEP_DEG 0.25
#define SEED 20240

/* ---- an independent route: sampled angles, polygons as rows of edges
 * ---------------------------- */

static double
dist_to_edge (HutPoint p,
              HutPoint a,
              HutPoint b)
{
  const double du = b.u - a.u, dv = b.v - a.v, len2 = du * du + dv * dv;
  double t = len2 > 0.0 ? ((p.u - a.u) * du + (p.v - a.v) * dv) / len2 : 0.0;

  t = t < 0.0 ? 0.0 : t > 1.0 ? 1.0 : t;
  return hypot (p.u - a.u - t * du, p.v - a.v - t * dv);
}

/* How deep two convex quadrangles overlap (> 0), by the separation along every edge's normal. */
static double
overlap_depth (const HutPoint a[4],
               const HutPoint b[4])
{
  double depth = INFINITY;

  for (int side = 0; side < 2; side++)
    for (int i = 0; i < 4; i++)
      {
        const HutPoint *q = side == 0 ? a : b, *r = side == 0 ? b : a;
        const double du = q[(i + 1) % 4].u - q[i].u, dv = q[(i + 1) % 4].v - q[i].v;
        double nearest = INFINITY;

        for (int k = 0; k < 4; k++)
          nearest = fmin (nearest,
                          ((r[k].u - q[i].u) * dv - (r[k].v - q[i].v) * du) / hypot (du, dv));
        depth = fmin (depth, -nearest);
      }
  return depth;
}

static double
quad_distance (const HutPoint a[4],
               const HutPoint b[4])
{
  double least = INFINITY;

  if (overlap_depth (a, b) > 0.0)
    return 0.0;
  for (int i = 0; i < 4; i++)
    for (int k = 0; k < 4; k++)
      {
        least = fmin (least, dist_to_edge (a[i], b[k], b[(k + 1) % 4]));
        least = fmin (least, dist_to_edge (b[i], a[k], a[(k + 1) % 4]));
      }
  return least;
}

static void
quad (HutRect r,
      double deg,
      HutPoint out[4])
{
  const HutPoint in[4] = { { r.u0, r.v0 }, { r.u1, r.v0 }, { r.u1, r.v1 }, { r.u0, r.v1 } };

  for (int i = 0; i < 4; i++)
    out[i] = (HutPoint) { in[i].u * cos (deg * DEG) - in[i].v * sin (deg * DEG),
                         in[i].u * sin (deg * DEG) + in[i].v * cos (deg * DEG) };
}

static double
farthest (HutRect r)
{
  return hypot (fmax (fabs (r.u0), fabs (r.u1)), fmax (fabs (r.v0), fabs (r.v1)));
}

static HutRect
random_rect (HutRandom *random)
{
  const double u = hut_random_between (random, -300, 300),
               v = hut_random_between (random, -300, 300);
  const gboolean slab = hut_random_chance (random, 0.6);
  const double w = hut_random_between (random, 1, slab ? 12 : 300),
               h = hut_random_between (random, 1, 300);

  return hut_random_chance (random, 0.5) ? (HutRect) { u, v, u + w, v + h }
                                         : (HutRect) { u, v, u + h, v + w };
}

static void
check_against_samples (guint64 seed)
{
  HutRandom random;
  HutRect rect, fixed;
  double end_deg, least = INFINITY, deepest = -INFINITY, first_deg = -1.0, reach;
  HutTurn turn;
  HutTurnNearest nearest;
  HutPoint a[4], b[4];

  hut_random_init (&random, seed);
  rect = random_rect (&random);
  fixed = random_rect (&random);
  end_deg = STEP_DEG * (1 + hut_random_below (&random, 800));
  reach
      = farthest (rect) * STEP_DEG * DEG; /* no point goes further from one sample to the next */

  quad (fixed, 0.0, b);
  for (double deg = 0.0; deg <= end_deg; deg += STEP_DEG)
    {
      double depth;

      quad (rect, deg, a);
      depth = overlap_depth (a, b);
      least = fmin (least, quad_distance (a, b));
      deepest = fmax (deepest, depth);
      if (depth > 0.01 && first_deg < 0.0)
        first_deg = deg;
    }

  hut_turn_init (&turn, rect, end_deg * DEG);
  assert_true (hut_turn_find_nearest (&turn, &fixed, INFINITY, &nearest));
  if (first_deg >= 0.0)
    {
      if (!nearest.collides)
        fail_msg ("seed %" G_GUINT64_FORMAT ": the samples overlap by %g mm, no collision found",
                  seed, deepest);
      if (nearest.angle_rad > first_deg * DEG + 1e-9)
        fail_msg ("seed %" G_GUINT64_FORMAT ": overlap at %g deg already", seed, first_deg);
      /* Before the reported angle nothing may overlap; just after it something must. */
      quad (rect, nearest.angle_rad / DEG, a);
      assert_true (overlap_depth (a, b) < 0.05 || nearest.angle_rad == 0.0);
    }
  else if (nearest.collides)
    {
      if (least > reach)
        fail_msg ("seed %" G_GUINT64_FORMAT ": collides, but the samples stay %g mm away", seed,
                  least);
    }
  else if (nearest.distance_mm > least + 1e-9 || nearest.distance_mm < least - reach)
    fail_msg ("seed %" G_GUINT64_FORMAT ": nearest %g mm, samples %g mm, step %g mm", seed,
              nearest.distance_mm, least, reach);
  if (!nearest.collides)
    assert_near_mm (hut_turn_distance_mm (&turn, &fixed, nearest.angle_rad), nearest.distance_mm,
                    1e-9);
  assert_true (hut_turn_bound_mm (&turn, &fixed) <= nearest.distance_mm + 1e-9);
}

static void
nearest_agrees_with_samples_of_a_quarter_degree (void **state)
{
  for (guint i = 0; i < 3000; i++)
    check_against_samples (SEED + i);
}

/* ---- by hand ------------------------------------------------------------------------------- */

static HutTurnNearest
find (HutRect rect,
      double end_deg,
      HutRect fixed)
{
  HutTurn turn;
  HutTurnNearest nearest = { 0 };

  hut_turn_init (&turn, rect, end_deg * DEG);
  assert_true (hut_turn_find_nearest (&turn, &fixed, INFINITY, &nearest));
  return nearest;
}

static void
bar_of_100_sweeps_its_diagonal (void **state)
{
  /* The far corner (100, 10) is on a circle of radius sqrt (10100) = 100.4988; it points straight
   * up after 90 deg - atan (10 / 100) = 84.2894 deg. A ceiling at 103 is then 2.5012 above it. */
  const HutTurnNearest nearest
      = find ((HutRect) { 0, 0, 100, 10 }, 90, (HutRect) { -500, 103, 500, 200 });

  assert_false (nearest.collides);
  assert_near_mm (nearest.distance_mm, 103 - sqrt (10100), 1e-9);
  assert_near (nearest.angle_rad, 90 * DEG - atan2 (10, 100), 1e-9);
}

static void
bar_that_ends_early_is_nearest_at_its_end (void **state)
{
  /* At 30 deg the upper far corner is at 100 sin 30 + 10 cos 30 = 58.6603. */
  const HutTurnNearest nearest
      = find ((HutRect) { 0, 0, 100, 10 }, 30, (HutRect) { -500, 103, 500, 200 });

  assert_near_mm (nearest.distance_mm, 103 - 50 - 10 * sqrt (0.75), 1e-9);
  assert_near (nearest.angle_rad, 30 * DEG, 1e-12);
}

static void
bar_hits_a_ceiling_at_the_angle_of_its_corner (void **state)
{
  /* Ceiling at 60: 100 sin a + 10 cos a = 60, so a = asin (60 / sqrt (10100)) - atan (0.1). */
  const HutTurnNearest nearest
      = find ((HutRect) { 0, 0, 100, 10 }, 90, (HutRect) { -500, 60, 500, 200 });

  assert_true (nearest.collides);
  assert_near_mm (nearest.distance_mm, 0, 0);
  assert_near (nearest.angle_rad, asin (60 / sqrt (10100)) - atan (0.1), 1e-4);
}

static void
corner_passes_a_post_on_its_circle (void **state)
{
  /* The post's nearest corner is (60, 80), 100 from the hinge. The bar's far upper corner is
   * sqrt (97^2 + 20^2) = 99.0404 from it and passes at 0.9596; its far face stays further away.
   */
  const HutTurnNearest nearest
      = find ((HutRect) { 0, 0, 97, 20 }, 90, (HutRect) { 60, 80, 70, 90 });

  assert_false (nearest.collides);
  assert_near_mm (nearest.distance_mm, 100 - hypot (97, 20), 1e-9);
  assert_near (nearest.angle_rad, atan2 (80, 60) - atan2 (20, 97), 1e-9);
}

static void
touch_is_no_collision (void **state)
{
  /* The far corner (80, 60) is 100 from the hinge, and each wall is half a step of the grid
   * nearer. */
  const double corner_rad = atan2 (60, 80);
  const struct
  {
    HutRect wall;
    double at_rad;
  } cases[] = {
    { { -500, 99.9995, 500, 200 }, 90 * DEG - corner_rad },
    { { -200, -500, -99.9995, 500 }, 180 * DEG - corner_rad },
    { { -500, -200, 500, -99.9995 }, 270 * DEG - corner_rad },
    { { 99.9995, -500, 200, 500 }, 360 * DEG - corner_rad },
  };

  for (guint i = 0; i < G_N_ELEMENTS (cases); i++)
    {
      const HutTurnNearest nearest = find ((HutRect) { 0, 0, 80, 60 }, 360, cases[i].wall);

      assert_false (nearest.collides);
      assert_near_mm (nearest.distance_mm, 0, 1e-9);
      assert_near (nearest.angle_rad, cases[i].at_rad, 1e-6);
    }
}

static void
cross_without_a_corner_inside_is_a_collision (void **state)
{
  /* A long bar across another one: no corner of either is inside the other. */
  const HutTurnNearest nearest
      = find ((HutRect) { -100, -5, 100, 5 }, 0, (HutRect) { -5, -100, 5, 100 });

  assert_true (nearest.collides);
  assert_near (nearest.angle_rad, 0, 0);
}

static void
limit_leaves_the_result_untouched (void **state)
{
  HutTurn turn;
  HutTurnNearest nearest = { .distance_mm = 7 };

  hut_turn_init (&turn, (HutRect) { 0, 0, 100, 10 }, 90 * DEG);
  assert_false (hut_turn_find_nearest (&turn, &(HutRect) { -500, 103, 500, 200 }, 2.5, &nearest));
  assert_near_mm (nearest.distance_mm, 7, 0);
  assert_true (hut_turn_find_nearest (&turn, &(HutRect) { -500, 103, 500, 200 }, 2.51, &nearest));
}

static void
odd_end_angles_count_as_none_or_a_full_turn (void **state)
{
  HutTurn turn;

  hut_turn_init (&turn, (HutRect) { 0, 0, 100, 10 }, NAN);
  assert_near (turn.end_rad, 0, 0);
  hut_turn_init (&turn, (HutRect) { 0, 0, 100, 10 }, -3);
  assert_near (turn.end_rad, 0, 0);
  hut_turn_init (&turn, (HutRect) { 0, 0, 100, 10 }, 100);
  assert_near (turn.end_rad, 2 * G_PI, 0);
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (nearest_agrees_with_samples_of_a_quarter_degree),
    cmocka_unit_test (bar_of_100_sweeps_its_diagonal),
    cmocka_unit_test (bar_that_ends_early_is_nearest_at_its_end),
    cmocka_unit_test (bar_hits_a_ceiling_at_the_angle_of_its_corner),
    cmocka_unit_test (corner_passes_a_post_on_its_circle),
    cmocka_unit_test (touch_is_no_collision),
    cmocka_unit_test (cross_without_a_corner_inside_is_a_collision),
    cmocka_unit_test (limit_leaves_the_result_untouched),
    cmocka_unit_test (odd_end_angles_count_as_none_or_a_full_turn),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}

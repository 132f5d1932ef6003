/* tests/physics/test-moment.c: areas and moments with arcs.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "config.h"
#include "hut-assert.h"
#include "hut-random.h"
#include "physics/hut-moment.h"

static const HutPoint zero = { 0, 0 };

static void
rectangle_from_1_2_to_4_8 (void **state)
{
  /* By hand: 18; u 18 2.5; v 18 5; u2 6 (64 - 1) / 3; v2 3 (512 - 8) / 3; uv 18 2.5 5. */
  g_autoptr(HutPath) path = hut_path_new_rect ((HutRect) { 1, 2, 4, 8 }, 0);
  const HutMoments m = hut_path_moments (path, zero);

  assert_near (m.area_mm2, 18, 1e-12);
  assert_near (m.u_mm3, 45, 1e-12);
  assert_near (m.v_mm3, 90, 1e-12);
  assert_near (m.uu_mm4, 126, 1e-11);
  assert_near (m.vv_mm4, 504, 1e-11);
  assert_near (m.uv_mm4, 225, 1e-11);
}

static void
circle_of_radius_3_about_5_7 (void **state)
{
  /* pi r2; about its centre pi r4 / 4 each, and the parallel axis theorem. */
  g_autoptr(HutPath) path = hut_path_new_circle ((HutPoint) { 5, 7 }, 3);
  const double area = 9 * G_PI, own = 81 * G_PI / 4;
  const HutMoments m = hut_path_moments (path, zero);

  assert_near (m.area_mm2, area, 1e-11);
  assert_near (m.u_mm3, 5 * area, 1e-10);
  assert_near (m.v_mm3, 7 * area, 1e-10);
  assert_near (m.uu_mm4, own + 25 * area, 1e-9);
  assert_near (m.vv_mm4, own + 49 * area, 1e-9);
  assert_near (m.uv_mm4, 35 * area, 1e-9);
}

static void
half_disc_has_its_centre_at_4_r_over_3_pi (void **state)
{
  g_autoptr(HutPath) path = hut_path_new ();
  HutMoments m;

  hut_path_append (path, (HutPoint) { 10, 0 }, 1, HUT_EDGE_PLAIN);
  hut_path_append (path, (HutPoint) { -10, 0 }, 0, HUT_EDGE_PLAIN);
  m = hut_path_moments (path, zero);
  assert_near (m.area_mm2, 50 * G_PI, 1e-11);
  assert_near (m.u_mm3, 0, 1e-9);
  assert_near (m.v_mm3 / m.area_mm2, 40 / (3 * G_PI), 1e-12);
}

static void
a_hole_takes_its_moments_away (void **state)
{
  g_autoptr(HutRegion) region = hut_region_new (hut_path_new_rect ((HutRect) { 0, 0, 20, 20 }, 0));
  HutMoments m;

  hut_region_take_hole (region, hut_path_new_circle ((HutPoint) { 15, 10 }, 2));
  m = hut_region_moments (region, zero);
  assert_near (m.area_mm2, 400 - 4 * G_PI, 1e-10);
  assert_near (m.u_mm3, 4000 - 60 * G_PI, 1e-9);
  assert_near (m.uu_mm4, 20 * 8000 / 3.0 - (4 * G_PI + 225 * 4 * G_PI), 1e-8);
}

/* Random rounded rectangles: the area of hut_path_area_mm2 (), which counts caps; and every moment
 * from a picture of small squares, roughly. */
static void
random_rounded_rectangles_agree_with_small_squares (void **state)
{
  HutRandom random;

  hut_random_init (&random, 5);
  for (guint turn = 0; turn < 20; turn++)
    {
      const double w = hut_random_between (&random, 5, 20), h = hut_random_between (&random, 5, 20);
      const HutRect rect = { -3, 2, w - 3, h + 2 };
      g_autoptr(HutPath) path = hut_path_new_rect (rect, hut_random_between (&random, 0.5, 2.4));
      const HutPoint about = { 1, -1 };
      const HutMoments m = hut_path_moments (path, about);
      double sums[6] = { 0 };
      const int n = 200;

      assert_near (m.area_mm2, hut_path_area_mm2 (path), 1e-10);
      for (int i = 0; i < n; i++)
        for (int j = 0; j < n; j++)
          {
            const HutPoint p = { rect.u0 + (i + 0.5) * w / n, rect.v0 + (j + 0.5) * h / n };
            const double u = p.u - about.u, v = p.v - about.v, cell = w * h / (n * n);

            if (!hut_path_contains (path, p))
              continue;
            sums[0] += u * cell;
            sums[1] += v * cell;
            sums[2] += u * u * cell;
            sums[3] += v * v * cell;
            sums[4] += u * v * cell;
            sums[5] += (u * u + v * v) * cell;
          }
      assert_near (m.u_mm3, sums[0], 2e-3 * sums[5]);
      assert_near (m.v_mm3, sums[1], 2e-3 * sums[5]);
      assert_near (m.uu_mm4, sums[2], 2e-3 * sums[5]);
      assert_near (m.vv_mm4, sums[3], 2e-3 * sums[5]);
      assert_near (m.uv_mm4, sums[4], 2e-3 * sums[5]);
    }
}

static void
an_empty_path_has_nothing (void **state)
{
  g_autoptr(HutPath) path = hut_path_new ();

  assert_near (hut_path_moments (path, zero).area_mm2, 0, 0);
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (rectangle_from_1_2_to_4_8),
    cmocka_unit_test (circle_of_radius_3_about_5_7),
    cmocka_unit_test (half_disc_has_its_centre_at_4_r_over_3_pi),
    cmocka_unit_test (a_hole_takes_its_moments_away),
    cmocka_unit_test (random_rounded_rectangles_agree_with_small_squares),
    cmocka_unit_test (an_empty_path_has_nothing),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}

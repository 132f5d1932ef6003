/* tests/geom/test-offset-random.c: offsets of random outlines, against GEOS and against themselves.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "config.h"
#include "geom/hut-geos.h"
#include "geom/hut-offset.h"
#include "hut-assert.h"
#include "hut-random-shape.h"

#define LINE_SEEDS 2000
#define ARC_SEEDS 700
/* A seed given in the environment is the only one that runs. */
#define ONLY_SEED "HUT_SEED"

typedef void (*Property) (guint64 seed, HutRandom *random);

static void
for_each_seed (guint count,
               Property property)
{
  const char *only = g_getenv (ONLY_SEED);
  const guint64 first = only != NULL ? g_ascii_strtoull (only, NULL, 10) : 0;

  for (guint64 seed = first; seed < (only != NULL ? first + 1 : count); seed++)
    {
      HutRandom random;

      hut_random_init (&random, seed);
      property (seed, &random);
    }
}

static HutRegion *
new_placed_fingers (HutRandom *random,
                    gboolean arcs)
{
  g_autoptr(HutRegion) region = hut_random_fingers (random, arcs);

  return hut_random_placed (random, region);
}

static double
random_offset_mm (HutRandom *random,
                  double most_mm)
{
  return hut_random_between (random, 0.01, most_mm) * (hut_random_chance (random, 0.5) ? 1 : -1);
}

static void
lines_agree (guint64 seed,
             HutRandom *random)
{
  g_autoptr(HutRegion) region = new_placed_fingers (random, FALSE);
  const double by_mm = random_offset_mm (random, 0.35 * HUT_RANDOM_LEAST_MM);
  g_autoptr(GError) error = NULL;
  g_autoptr(HutRegion) moved = hut_region_dup_offset (region, &(HutOffset) { by_mm, by_mm },
                                                      &error);

  if (moved == NULL)
    fail_msg ("seed %" G_GUINT64_FORMAT " by %g: %s", seed, by_mm, error->message);

  const double geos_mm2 = hut_geos_buffer_area_mm2 (region, by_mm, &error);
  const double ours_mm2 = hut_region_area_mm2 (moved);

  if (!(fabs (geos_mm2 / ours_mm2 - 1) <= 1e-9))
    fail_msg ("seed %" G_GUINT64_FORMAT " by %g: GEOS %.9f, ours %.9f mm2", seed, by_mm, geos_mm2,
              ours_mm2);
}

static void
area_of_lines_is_that_of_a_mitred_buffer_by_geos (void **state)
{
  for_each_seed (LINE_SEEDS, lines_agree);
}

static void
arcs_agree (guint64 seed,
            HutRandom *random)
{
  g_autoptr(HutRegion) region = new_placed_fingers (random, TRUE);
  const double by_mm = random_offset_mm (random, 0.15);
  g_autoptr(GError) error = NULL;
  g_autoptr(HutRegion) moved = hut_region_dup_offset (region, &(HutOffset) { by_mm, by_mm },
                                                      &error);

  if (moved == NULL)
    fail_msg ("seed %" G_GUINT64_FORMAT " by %g: %s", seed, by_mm, error->message);

  const double geos_mm2 = hut_geos_buffer_area_mm2 (region, by_mm, &error);
  const double ours_mm2 = hut_region_area_mm2 (moved);
  double arcs_mm = 0;

  for (guint i = 0; i <= moved->holes->len; i++)
    {
      const HutPath *path = i > 0 ? g_ptr_array_index (moved->holes, i - 1) : moved->outer;

      for (guint j = 0; j < hut_path_get_count (path); j++)
        {
          const HutSegment segment = hut_path_get_segment (path, j);

          arcs_mm += segment.bulge != 0 ? hut_segment_length_mm (&segment) : 0;
        }
    }
  if (!(fabs (geos_mm2 - ours_mm2) <= HUT_CHORD_MM * arcs_mm + 1e-9 * ours_mm2))
    fail_msg ("seed %" G_GUINT64_FORMAT " by %g: GEOS %.9f, ours %.9f mm2", seed, by_mm, geos_mm2,
              ours_mm2);
}

static void
area_with_arcs_is_that_of_geos_within_the_chord_error (void **state)
{
  for_each_seed (ARC_SEEDS, arcs_agree);
}

static void
assert_same_path (guint64 seed,
                  const HutPath *is,
                  const HutPath *must_be)
{
  if (hut_path_get_count (is) != hut_path_get_count (must_be))
    fail_msg ("seed %" G_GUINT64_FORMAT ": %u corners, must be %u", seed, hut_path_get_count (is),
              hut_path_get_count (must_be));
  for (guint i = 0; i < hut_path_get_count (is); i++)
    {
      const HutVertex *a = hut_path_get (is, i);
      const HutVertex *b = hut_path_get (must_be, i);

      if (!(hut_point_distance_mm (a->p, b->p) < 1e-9) || !(fabs (a->bulge - b->bulge) < 1e-9)
          || a->kind != b->kind)
        fail_msg ("seed %" G_GUINT64_FORMAT ": corner %u is (%.12f, %.12f), must be (%.12f, %.12f)",
                  seed, i, a->p.u, a->p.v, b->p.u, b->p.v);
    }
}

static void
comes_back (guint64 seed,
            HutRandom *random)
{
  g_autoptr(HutRegion) region = new_placed_fingers (random, seed % 2);
  const HutOffset there = { random_offset_mm (random, 0.15), random_offset_mm (random, 0.15) };
  const HutOffset back = { -there.plain_mm, -there.mating_mm };
  g_autoptr(GError) error = NULL;
  g_autoptr(HutRegion) moved = hut_region_dup_offset (region, &there, &error);
  g_autoptr(HutRegion) returned = moved != NULL ? hut_region_dup_offset (moved, &back, &error)
                                                : NULL;

  if (returned == NULL)
    fail_msg ("seed %" G_GUINT64_FORMAT ": %s", seed, error->message);
  assert_same_path (seed, returned->outer, region->outer);
  for (guint i = 0; i < region->holes->len; i++)
    assert_same_path (seed, g_ptr_array_index (returned->holes, i),
                      g_ptr_array_index (region->holes, i));
}

static void
there_and_back_is_the_same_outline (void **state)
{
  for_each_seed (LINE_SEEDS, comes_back);
}

/* Half the bottom of the narrowest gap between two fingers, mm: an edge with right turns at both
 * ends. */
static double
narrowest_gap_mm (const HutPath *path)
{
  const guint count = hut_path_get_count (path);
  double narrowest_mm = INFINITY;

  for (guint i = 0; i < count; i++)
    {
      const HutPoint a = hut_path_get (path, (i + count - 1) % count)->p,
                     b = hut_path_get (path, i)->p;
      const HutPoint c = hut_path_get (path, (i + 1) % count)->p,
                     d = hut_path_get (path, (i + 2) % count)->p;

      if (hut_point_cross (hut_point_minus (b, a), hut_point_minus (c, b)) < 0
          && hut_point_cross (hut_point_minus (c, b), hut_point_minus (d, c)) < 0)
        narrowest_mm = fmin (narrowest_mm, hut_point_distance_mm (b, c) / 2);
    }
  return narrowest_mm;
}

/* Radius of the largest disc in a triangle or rectangle, mm. */
static double
inner_radius_mm (const HutPath *path)
{
  const double area_mm2 = fabs (hut_path_area_mm2 (path));
  double shortest_mm = INFINITY;

  if (hut_path_get_count (path) == 3)
    return 2 * area_mm2 / hut_path_length_mm (path);
  for (guint i = 0; i < hut_path_get_count (path); i++)
    {
      const HutSegment segment = hut_path_get_segment (path, i);

      shortest_mm = fmin (shortest_mm, hut_segment_length_mm (&segment));
    }
  return shortest_mm / 2;
}

static void
vanishes_in_time (guint64 seed,
                  HutRandom *random)
{
  g_autoptr(HutRegion) region = new_placed_fingers (random, FALSE);
  g_autoptr(GError) error = NULL;
  double most_mm = narrowest_gap_mm (region->outer);

  for (guint i = 0; i < region->holes->len; i++)
    most_mm = fmin (most_mm, inner_radius_mm (g_ptr_array_index (region->holes, i)));
  if (isinf (most_mm))
    return; /* no gap and no hole: grows without end */

  const double by_mm = most_mm * hut_random_between (random, 0.01, 2);
  g_autoptr(HutRegion) moved = hut_region_dup_offset (region, &(HutOffset) { by_mm, by_mm },
                                                      &error);

  if (fabs (by_mm - most_mm) < HUT_GRID_MM)
    return;
  if ((moved != NULL) != (by_mm < most_mm))
    fail_msg ("seed %" G_GUINT64_FORMAT " by %g: room for %g, but %s", seed, by_mm, most_mm,
              moved != NULL ? "nothing was missed" : error->message);
  if (moved == NULL)
    assert_true (g_error_matches (error, HUT_GEOM_ERROR, HUT_GEOM_ERROR_VANISHED));
}

static void
growing_fails_exactly_when_a_gap_or_hole_has_no_room_for_the_tool (void **state)
{
  for_each_seed (1000, vanishes_in_time);
}

static void
never_silently_wrong (guint64 seed,
                      HutRandom *random)
{
  g_autoptr(HutRegion) plain = seed % 2 ? hut_random_bridge (random)
                                        : hut_random_fingers (random, FALSE);
  g_autoptr(HutRegion) region = hut_random_placed (random, plain);
  const double by_mm = random_offset_mm (random, 8);
  g_autoptr(GError) error = NULL;
  g_autoptr(HutRegion) moved = hut_region_dup_offset (region, &(HutOffset) { by_mm, by_mm },
                                                      &error);

  if (moved == NULL)
    {
      if (!g_error_matches (error, HUT_GEOM_ERROR, HUT_GEOM_ERROR_VANISHED))
        fail_msg ("seed %" G_GUINT64_FORMAT " by %g: %s", seed, by_mm, error->message);
      return;
    }

  const double geos_mm2 = hut_geos_buffer_area_mm2 (region, by_mm, &error);
  const double ours_mm2 = hut_region_area_mm2 (moved);

  if (!(fabs (geos_mm2 / ours_mm2 - 1) <= 1e-9))
    fail_msg ("seed %" G_GUINT64_FORMAT " by %g: GEOS %.9f, ours %.9f mm2", seed, by_mm, geos_mm2,
              ours_mm2);
}

static void
large_offset_is_right_or_an_error_but_never_silently_wrong (void **state)
{
  for_each_seed (1000, never_silently_wrong);
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (area_of_lines_is_that_of_a_mitred_buffer_by_geos),
    cmocka_unit_test (area_with_arcs_is_that_of_geos_within_the_chord_error),
    cmocka_unit_test (there_and_back_is_the_same_outline),
    cmocka_unit_test (growing_fails_exactly_when_a_gap_or_hole_has_no_room_for_the_tool),
    cmocka_unit_test (large_offset_is_right_or_an_error_but_never_silently_wrong),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}

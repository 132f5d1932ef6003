/* tests/sheets/test-cut-order.c: in which order closed paths are cut, and where each begins.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "sheets/hut-cut-order.h"
#include "bench/hut-tour.h"
#include "hut-assert.h"
#include "hut-random.h"

#define RANDOM_SHEETS 60
#define PITCH_MM 60.0
#define ROUNDING_MM 1e-5

static GPtrArray *
paths_new (void)
{
  return g_ptr_array_new_with_free_func ((GDestroyNotify) hut_path_free);
}

static void
add_rect (GPtrArray *paths,
          double u0_mm,
          double v0_mm,
          double u1_mm,
          double v1_mm)
{
  g_ptr_array_add (paths, hut_path_new_rect ((HutRect) { u0_mm, v0_mm, u1_mm, v1_mm }, 0.0));
}

static guint
place_of (const GArray *steps,
          guint path)
{
  for (guint i = 0; i < steps->len; i++)
    if (g_array_index (steps, HutCutStep, i).path == path)
      return i;
  fail_msg ("path %u is not cut", path);
  return 0;
}

static void
nothing_to_cut_gives_no_steps (void **state)
{
  g_autoptr(GPtrArray) paths = paths_new ();
  g_autoptr(GArray) steps = hut_cut_order_new (paths, NULL, (HutPoint) { 0, 0 });

  assert_int_equal (steps->len, 0);
  assert_near_mm (hut_cut_order_travel_mm (paths, steps, (HutPoint) { 0, 0 }), 0.0, 0.0);
}

/* A part in the hole of a frame: its hole, it, the frame's hole, the frame, all of one rank. */
static void
what_lies_inside_is_cut_first (void **state)
{
  g_autoptr(GPtrArray) paths = paths_new ();
  const guint ranks[] = { 0, 0, 0, 0 };

  add_rect (paths, 0, 0, 200, 200);
  add_rect (paths, 20, 20, 180, 180);
  add_rect (paths, 50, 50, 150, 150);
  add_rect (paths, 90, 90, 110, 110);

  g_autoptr(GArray) steps = hut_cut_order_new (paths, ranks, (HutPoint) { 0, 0 });

  for (guint i = 0; i < 4; i++)
    assert_int_equal (g_array_index (steps, HutCutStep, i).path, 3 - i);
}

static void
lower_ranks_are_cut_first_however_far (void **state)
{
  g_autoptr(GPtrArray) paths = paths_new ();
  const guint ranks[] = { 1, 0 };

  add_rect (paths, 0, 0, 10, 10);
  add_rect (paths, 500, 500, 510, 510);

  g_autoptr(GArray) steps = hut_cut_order_new (paths, ranks, (HutPoint) { 0, 0 });

  assert_int_equal (g_array_index (steps, HutCutStep, 0).path, 1);
}

/* Squares of 10 in a row, 40 apart: from the corner at 0 the way is 30 + 40 + 40 along their lower
 * edges, and cannot be less: the last start is at least 110 - ... by hand: starts 0, 40 and 80. */
static void
row_is_cut_from_one_end_to_the_other (void **state)
{
  g_autoptr(GPtrArray) paths = paths_new ();
  const guint ranks[] = { 0, 0, 0 };

  add_rect (paths, 80, 0, 90, 10);
  add_rect (paths, 0, 0, 10, 10);
  add_rect (paths, 40, 0, 50, 10);

  g_autoptr(GArray) steps = hut_cut_order_new (paths, ranks, (HutPoint) { 0, 0 });

  assert_int_equal (place_of (steps, 1), 0);
  assert_int_equal (place_of (steps, 2), 1);
  assert_near_mm (hut_cut_order_travel_mm (paths, steps, (HutPoint) { 0, 0 }), 80.0, 1e-9);
}

/* Parts with holes on a grid of cells, so that nothing crosses. Returns the ranks. */
static guint *
add_random_parts (GPtrArray *paths,
                  HutRandom *random)
{
  const guint count = 1 + hut_random_below (random, 12);
  g_autoptr(GArray) ranks = g_array_new (FALSE, FALSE, sizeof (guint));
  const gboolean by_layer = hut_random_chance (random, 0.5);

  for (guint i = 0; i < count; i++)
    {
      const HutPoint at = { (double) (i % 4) * PITCH_MM, (double) (i / 4) * PITCH_MM };
      const guint holes = hut_random_below (random, 4);
      const guint outside = by_layer ? 1 : 0, inside = 0;

      add_rect (paths, at.u + hut_random_between (random, 0, 4),
                at.v + hut_random_between (random, 0, 4),
                at.u + hut_random_between (random, 40, 55),
                at.v + hut_random_between (random, 40, 55));
      g_array_append_val (ranks, outside);
      for (guint k = 0; k < holes; k++)
        {
          g_ptr_array_add (paths,
                           hut_path_new_circle ((HutPoint) { at.u + 10 + 10 * k,
                                                             at.v + hut_random_between (random, 10,
                                                                                        30) },
                                                hut_random_between (random, 1, 4)));
          g_array_append_val (ranks, inside);
        }
    }
  return (guint *) (void *) g_array_free (g_steal_pointer (&ranks), FALSE);
}

static void
random_sheets_are_cut_whole_by_the_rules_and_no_longer_than_by_nearest_neighbour (void **state)
{
  const guint64 count = hut_random_seed_count (RANDOM_SHEETS);
  double way_mm = 0.0, nearest_mm = 0.0;

  for (guint64 seed = hut_random_first_seed (); seed < hut_random_first_seed () + count; seed++)
    {
      g_autoptr(GPtrArray) paths = paths_new ();
      HutRandom random;

      hut_random_init (&random, seed);

      g_autofree guint *ranks = add_random_parts (paths, &random);
      g_autoptr(GArray) steps = hut_cut_order_new (paths, ranks, (HutPoint) { 0, 0 });
      g_autoptr(GArray) again = hut_cut_order_new (paths, ranks, (HutPoint) { 0, 0 });
      const double mm = hut_cut_order_travel_mm (paths, steps, (HutPoint) { 0, 0 });
      const double limit_mm = hut_tour_nearest_mm (paths, ranks);

      assert_int_equal (steps->len, paths->len);
      assert_memory_equal (steps->data, again->data, steps->len * sizeof (HutCutStep));
      for (guint a = 0; a < paths->len; a++)
        for (guint b = 0; b < paths->len; b++)
          if (a != b
              && (ranks[a] < ranks[b]
                  || (ranks[a] == ranks[b]
                      && hut_path_contains (paths->pdata[b], hut_path_get (paths->pdata[a], 0)->p))))
            assert_true (place_of (steps, a) < place_of (steps, b));
      if (mm > limit_mm + ROUNDING_MM)
        fail_msg ("seed %" G_GUINT64_FORMAT ": %g mm, by nearest neighbour %g", seed, mm, limit_mm);
      way_mm += mm;
      nearest_mm += limit_mm;
    }
  /* The search must be worth its while: some 10 % over many sheets. */
  assert_true (way_mm < 0.95 * nearest_mm);
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (nothing_to_cut_gives_no_steps),
    cmocka_unit_test (what_lies_inside_is_cut_first),
    cmocka_unit_test (lower_ranks_are_cut_first_however_far),
    cmocka_unit_test (row_is_cut_from_one_end_to_the_other),
    cmocka_unit_test (
      random_sheets_are_cut_whole_by_the_rules_and_no_longer_than_by_nearest_neighbour),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}

/* tests/sheets/test-separate.c: shapes that overlap in bins are moved apart.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "sheets/hut-separate.h"
#include "hut-assert.h"

#define WORK 2000000
#define SIDE_MM 100.0

static HutConvexSet *
dup_square (void)
{
  HutConvexSet *set = hut_convex_set_new ();
  const HutPoint corners[] = { { 0, 0 }, { SIDE_MM, 0 }, { SIDE_MM, SIDE_MM }, { 0, SIDE_MM } };

  hut_convex_set_append (set, corners, G_N_ELEMENTS (corners));
  return set;
}

static void
add_squares (HutOutlinePack *pack,
             guint count)
{
  g_autoptr(HutConvexSet) square = dup_square ();
  const HutOutlineWay way = { 0.0, { 0, 0, SIDE_MM, SIDE_MM } };

  for (guint i = 0; i < count; i++)
    assert_true (hut_outline_pack_add (pack, square, &way, 1, SIDE_MM * SIDE_MM));
}

/* 200 x 100 takes two squares of 100 one way only; all begin in the same corner. */
static void
squares_on_each_other_go_to_the_only_places_that_there_are (void **state)
{
  g_autoptr(HutOutlinePack) pack = hut_outline_pack_new (2 * SIDE_MM, SIDE_MM);
  g_auto(HutSeparation) separation = { NULL };

  add_squares (pack, 2);
  hut_separation_init (&separation, pack, 1);
  assert_true (hut_separation_run (&separation, WORK, NULL));
  assert_near_mm (fabs (separation.spots[0].at.u - separation.spots[1].at.u), SIDE_MM, 1e-5);
  assert_near_mm (separation.spots[0].at.v, 0.0, 0.0);
}

/* Four in two bins of two; a fifth has no room. */
static void
squares_spread_over_bins_as_long_as_there_is_room (void **state)
{
  g_autoptr(HutOutlinePack) pack = hut_outline_pack_new (2 * SIDE_MM, SIDE_MM);
  g_auto(HutSeparation) four = { NULL }, five = { NULL };
  guint in_first = 0;

  add_squares (pack, 4);
  hut_separation_init (&four, pack, 1);
  four.bin_count = 2;
  assert_true (hut_separation_run (&four, WORK, NULL));
  for (guint i = 0; i < 4; i++)
    in_first += four.spots[i].bin == 0;
  assert_int_equal (in_first, 2);

  add_squares (pack, 1);
  hut_separation_init (&five, pack, 1);
  five.bin_count = 2;
  assert_false (hut_separation_run (&five, pack->work + WORK, NULL));
  for (guint i = 0; i < 5; i++)
    assert_true (five.spots[i].bin < 2 && five.spots[i].at.u >= 0.0
                 && five.spots[i].at.u <= SIDE_MM && five.spots[i].at.v == 0.0);
}

/* The fixed square leaves 150 of 300 on its right: the free one must go there. */
static void
fixed_square_stays_and_the_free_one_goes (void **state)
{
  g_autoptr(HutOutlinePack) pack = hut_outline_pack_new (3 * SIDE_MM, SIDE_MM);
  g_autoptr(HutConvexSet) square = dup_square ();
  const HutOutlineWay way = { 0.0, { 0, 0, SIDE_MM, SIDE_MM } };
  g_auto(HutSeparation) separation = { NULL };

  hut_outline_pack_add_fixed (pack, square, &way, 0, (HutPoint) { 50, 0 }, SIDE_MM * SIDE_MM);
  add_squares (pack, 1);
  hut_separation_init (&separation, pack, 1);
  assert_true (hut_separation_run (&separation, WORK, NULL));
  assert_near_mm (separation.spots[0].at.u, 50.0, 0.0);
  assert_true (separation.spots[1].at.u >= 150.0 - 1e-5);
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (squares_on_each_other_go_to_the_only_places_that_there_are),
    cmocka_unit_test (squares_spread_over_bins_as_long_as_there_is_room),
    cmocka_unit_test (fixed_square_stays_and_the_free_one_goes),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}

/* tests/checks/test-free-move.c: the shortest move after which rectangles keep off each other.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "config.h"
#include "checks/hut-free-move.h"
#include "hut-assert.h"

static GArray *
rules_new (const HutMoveRule *rules,
           guint count)
{
  GArray *array = g_array_new (FALSE, FALSE, sizeof (HutMoveRule));

  g_array_append_vals (array, rules, count);
  return array;
}

static void
nearest_side_wins (void **state)
{
  const HutMoveRule rule = { { 0, 0, 10, 10 }, { 6, -50, 40, 50 }, FALSE };
  g_autoptr(GArray) rules = rules_new (&rule, 1);
  HutPoint by;

  assert_false (hut_free_move_is_allowed (rules, (HutPoint) { 0, 0 }));
  assert_true (hut_free_move_find (rules, &by));
  assert_near_mm (by.u, -4.0, 1e-9);
  assert_near_mm (by.v, 0.0, 0.0);
}

static void
move_round_two_corners_is_the_shortest_of_both (void **state)
{
  /* Left is shut by the border, right by a far thing: up by 7 it is. */
  const HutMoveRule all[] = {
    { { 0, 0, 10, 10 }, { 5, 3, 30, 4 }, FALSE },
    { { 0, 0, 10, 10 }, { 0, -2, 100, 100 }, TRUE },
  };
  g_autoptr(GArray) rules = rules_new (all, 2);
  HutPoint by;

  assert_true (hut_free_move_find (rules, &by));
  assert_near_mm (by.u, 0.0, 0.0);
  assert_near_mm (by.v, 4.0, 1e-9);
}

static void
moves_are_whole_steps_where_they_can_be (void **state)
{
  const HutMoveRule rule = { { 0, 0, 10, 10 }, { 6.06, -50, 40, 50 }, FALSE };
  const HutMoveRule tight[] = {
    { { 0, 0, 10, 10 }, { 6.06, -50, 40, 50 }, FALSE },
    { { 0, 0, 10, 10 }, { -3.95, 0, 100, 10 }, TRUE },
  };
  g_autoptr(GArray) wide = rules_new (&rule, 1);
  g_autoptr(GArray) narrow = rules_new (tight, 2);
  HutPoint by;

  assert_true (hut_free_move_find (wide, &by));
  assert_near_mm (by.u, -4.0, 1e-9); /* 3.94 would do */
  assert_true (hut_free_move_find (narrow, &by));
  assert_near_mm (by.u, -3.94, 1e-9);
}

static void
where_nothing_will_do_nothing_is_said (void **state)
{
  const HutMoveRule all[] = {
    { { 0, 0, 10, 10 }, { -100, -100, 100, 100 }, FALSE },
    { { 0, 0, 10, 10 }, { -50, -50, 50, 50 }, TRUE },
  };
  g_autoptr(GArray) rules = rules_new (all, 2);
  HutPoint by = { 1, 2 };

  assert_false (hut_free_move_find (rules, &by));
  assert_near_mm (by.v, 2.0, 0.0);
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (nearest_side_wins),
    cmocka_unit_test (move_round_two_corners_is_the_shortest_of_both),
    cmocka_unit_test (moves_are_whole_steps_where_they_can_be),
    cmocka_unit_test (where_nothing_will_do_nothing_is_said),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}

/* tests/assembly/test-finger.c: number of fingers, their borders, and the outline they make.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "config.h"
#include "assembly/hut-finger.h"
#include "hut-assert.h"

static void
finger_count_is_odd_and_near_the_target (void **state)
{
  static const struct
  {
    double length_mm, target_mm, least_mm;
    guint expected;
    const char *reason;
  } cases[] = {
    { 300, 18, 12, 17, "300 / 18 = 16.7, odd number around it" },
    { 180, 18, 12, 11, "180 / 18 = 10: of 9 and 11 the finer, 16.4 mm still above the least" },
    { 180, 18, 17, 9, "11 fingers would be 16.4 mm, under the least" },
    { 54, 18, 12, 3, "just three" },
    { 36, 18, 12, 3, "three of 12 mm are still allowed" },
    { 35.9, 18, 12, 1, "three would be 11.97 mm: butt joint" },
    { 0, 18, 12, 1, "no edge at all" },
    { -5, 18, 12, 1, "less than no edge" },
    { 1e6, 18, 12, HUT_FINGER_MAX_COUNT, "absurd length is capped" },
  };

  for (guint i = 0; i < G_N_ELEMENTS (cases); i++)
    {
      const guint count = hut_finger_count (cases[i].length_mm, cases[i].target_mm, cases[i].least_mm);

      if (count != cases[i].expected)
        fail_msg ("%g mm: %u fingers, must be %u: %s", cases[i].length_mm, count, cases[i].expected, cases[i].reason);
    }
}

static void
borders_are_on_the_grid_and_keep_the_ends (void **state)
{
  g_autoptr(GArray) cuts = hut_finger_cuts (6.0, 106.0, 3);

  assert_int_equal (cuts->len, 4);
  assert_near_mm (g_array_index (cuts, double, 0), 6.0, 0.0);
  assert_near_mm (g_array_index (cuts, double, 1), 39.333, 0.0); /* 6 + 100 / 3 = 39.3333.. on the 1 um grid */
  assert_near_mm (g_array_index (cuts, double, 2), 72.667, 0.0);
  assert_near_mm (g_array_index (cuts, double, 3), 106.0, 0.0);
}

/* A joint of three fingers along 10 .. 40, neighbour 5 thick. */
static HutEdgeJoint
three_fingers (gboolean owns_ends)
{
  return (HutEdgeJoint) { .kind = HUT_JOINT_FINGERS, .depth_mm = 5, .owns_ends = owns_ends, .finger_count = 3,
                          .cuts_mm = hut_finger_cuts (5, 35, 3) };
}

static void
free_edges_give_a_plain_rectangle (void **state)
{
  const HutEdgeJoint none[HUT_EDGE_COUNT] = { { 0 } };
  g_autoptr(HutPath) path = hut_finger_outline (40, 30, none);

  assert_int_equal (hut_path_get_count (path), 4);
  assert_near (hut_path_area_mm2 (path), 1200, 1e-9);
}

static void
owned_ends_leave_the_middle_finger_to_the_neighbour (void **state)
{
  HutEdgeJoint edges[HUT_EDGE_COUNT] = { three_fingers (TRUE) };
  g_autoptr(HutPath) path = hut_finger_outline (40, 30, edges);

  /* The middle finger of 10 x 5 is the neighbour's. */
  assert_near (hut_path_area_mm2 (path), 1200 - 50, 1e-9);
  assert_int_equal (hut_path_get_count (path), 8);
  g_array_unref (edges[0].cuts_mm);
}

static void
owned_middle_leaves_both_ends_and_corners (void **state)
{
  HutEdgeJoint edges[HUT_EDGE_COUNT] = { three_fingers (FALSE) };
  g_autoptr(HutPath) path = hut_finger_outline (40, 30, edges);

  /* All of the 40 x 5 strip but the middle finger of 10 x 5. */
  assert_near (hut_path_area_mm2 (path), 1200 - 200 + 50, 1e-9);
  g_array_unref (edges[0].cuts_mm);
}

static void
only_flanks_are_mating (void **state)
{
  HutEdgeJoint edges[HUT_EDGE_COUNT] = { three_fingers (TRUE) };
  g_autoptr(HutPath) path = hut_finger_outline (40, 30, edges);
  guint mating = 0;

  for (guint i = 0; i < hut_path_get_count (path); i++)
    {
      const HutSegment segment = hut_path_get_segment (path, i);

      if (segment.kind != HUT_EDGE_MATING)
        continue;
      mating++;
      assert_near_mm (segment.start.u, segment.end.u, 0.0); /* flanks of the bottom edge run up and down */
      assert_near_mm (fabs (segment.end.v - segment.start.v), 5.0, 0.0);
    }
  assert_int_equal (mating, 2);
  g_array_unref (edges[0].cuts_mm);
}

static void
butt_joint_gives_the_whole_edge_to_the_higher_rank (void **state)
{
  HutEdgeJoint edges[HUT_EDGE_COUNT] = { { .kind = HUT_JOINT_BUTT, .depth_mm = 5, .owns_ends = FALSE, .finger_count = 1 } };
  g_autoptr(HutPath) path = hut_finger_outline (40, 30, edges);

  assert_near (hut_path_area_mm2 (path), 40 * 25, 1e-9);
  assert_near_mm (hut_path_bounds (path).v0, 5, 0.0);
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (finger_count_is_odd_and_near_the_target),
    cmocka_unit_test (borders_are_on_the_grid_and_keep_the_ends),
    cmocka_unit_test (free_edges_give_a_plain_rectangle),
    cmocka_unit_test (owned_ends_leave_the_middle_finger_to_the_neighbour),
    cmocka_unit_test (owned_middle_leaves_both_ends_and_corners),
    cmocka_unit_test (only_flanks_are_mating),
    cmocka_unit_test (butt_joint_gives_the_whole_edge_to_the_higher_rank),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}

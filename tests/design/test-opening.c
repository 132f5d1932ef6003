/* tests/design/test-opening.c: windows and openings, and where they sit.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "design/hut-design.h"
#include "hut-assert.h"

static const HutPanelId front = { HUT_SHELL_BASE, HUT_SIDE_FRONT };

static void
new_opening_sits_in_the_middle_with_the_sizes_of_its_shape (void **state)
{
  static const struct
  {
    HutShape shape;
    double diameter_mm, width_mm, height_mm, radius_mm;
    guint n_holes;
  } cases[] = {
    { HUT_SHAPE_ROUND, 30, 0, 0, 0, 0 },
    { HUT_SHAPE_RECTANGLE, 0, 60, 40, 2, 0 },
    { HUT_SHAPE_SLOT, 0, 40, 10, 0, 0 },
    { HUT_SHAPE_PATTERN, 6, 0, 0, 0, 25 },
  };

  for (gsize i = 0; i < G_N_ELEMENTS (cases); i++)
    {
      g_autoptr(HutOpening) opening = hut_opening_new ("hole", front, cases[i].shape);

      assert_string_equal (opening->id, "hole");
      assert_true (hut_panel_id_equal (opening->at.panel, front));
      assert_int_equal (opening->at.u_anchor, HUT_ANCHOR_CENTRE);
      assert_int_equal (opening->at.v_anchor, HUT_ANCHOR_CENTRE);
      assert_near_mm (opening->at.u_offset_mm, 0.0, 0.0);
      assert_near_mm (opening->diameter_mm, cases[i].diameter_mm, 0.0);
      assert_near_mm (opening->width_mm, cases[i].width_mm, 0.0);
      assert_near_mm (opening->height_mm, cases[i].height_mm, 0.0);
      assert_near_mm (opening->radius_mm, cases[i].radius_mm, 0.0);
      assert_int_equal (opening->holes->len, cases[i].n_holes);
      assert_null (opening->serves);
    }
}

static void
new_pattern_is_a_square_of_pitch_12_about_its_middle (void **state)
{
  g_autoptr(HutOpening) opening = hut_opening_new ("vent", front, HUT_SHAPE_PATTERN);
  double least_mm = G_MAXDOUBLE, most_mm = -G_MAXDOUBLE, sum_mm = 0.0;

  for (guint i = 0; i < opening->holes->len; i++)
    {
      const HutPoint hole = g_array_index (opening->holes, HutPoint, i);

      least_mm = MIN (least_mm, MIN (hole.u, hole.v));
      most_mm = MAX (most_mm, MAX (hole.u, hole.v));
      sum_mm += hole.u + 1000.0 * hole.v;
      for (guint j = 0; j < i; j++)
        {
          const HutPoint other = g_array_index (opening->holes, HutPoint, j);

          assert_true (hut_point_distance_mm (hole, other) >= 12.0);
        }
    }
  assert_near_mm (least_mm, -24.0, 0.0); /* 2 pitches */
  assert_near_mm (most_mm, 24.0, 0.0);
  assert_near_mm (sum_mm, 0.0, 0.0);
}

static void
copy_of_an_opening_is_equal_and_its_own (void **state)
{
  g_autoptr(HutOpening) opening = hut_opening_new ("vent", front, HUT_SHAPE_PATTERN);
  g_autoptr(HutOpening) copy = NULL;

  opening->serves = g_strdup ("air");
  opening->at.body = g_strdup ("frame");
  copy = hut_opening_copy (opening);
  assert_true (hut_opening_equal (opening, copy));
  g_array_index (copy->holes, HutPoint, 3).v += 0.25;
  assert_false (hut_opening_equal (opening, copy));
  g_array_index (copy->holes, HutPoint, 3).v -= 0.25;
  assert_true (hut_opening_equal (opening, copy));
  g_free (copy->at.body);
  copy->at.body = NULL;
  assert_false (hut_opening_equal (opening, copy));
  assert_string_equal (opening->at.body, "frame");
}

static void
new_window_sits_in_the_middle_and_overlaps_its_panel (void **state)
{
  g_autoptr(HutWindow) window = hut_window_new ("pane", front);
  g_autoptr(HutWindow) copy = hut_window_copy (window);

  assert_int_equal (window->at.v_anchor, HUT_ANCHOR_CENTRE);
  assert_true (window->overlap_mm > 0.0);
  assert_true (window->radius_mm * 2.0 < MIN (window->width_mm, window->height_mm));
  assert_true (hut_window_equal (window, copy));
  copy->glazing_bought = TRUE;
  assert_false (hut_window_equal (window, copy));
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (new_opening_sits_in_the_middle_with_the_sizes_of_its_shape),
    cmocka_unit_test (new_pattern_is_a_square_of_pitch_12_about_its_middle),
    cmocka_unit_test (copy_of_an_opening_is_equal_and_its_own),
    cmocka_unit_test (new_window_sits_in_the_middle_and_overlaps_its_panel),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}

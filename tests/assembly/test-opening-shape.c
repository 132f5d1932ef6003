/* tests/assembly/test-opening-shape.c: outlines of openings about their middle.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "config.h"
#include "assembly/hut-assembly.h"
#include "hut-assert.h"

static const HutPanelId panel = { HUT_SHELL_BASE, HUT_SIDE_FRONT };

static double
area_mm2 (const HutOpening *opening)
{
  g_autoptr(GPtrArray) paths = hut_opening_dup_paths (opening);
  double sum_mm2 = 0;

  for (guint i = 0; i < paths->len; i++)
    sum_mm2 += hut_path_area_mm2 (g_ptr_array_index (paths, i));
  return sum_mm2;
}

static void
areas_agree_with_the_textbook (void **state)
{
  g_autoptr(HutOpening) opening = hut_opening_new ("o", panel, HUT_SHAPE_ROUND);

  opening->diameter_mm = 30;
  opening->width_mm = 60;
  opening->height_mm = 20;
  opening->radius_mm = 4;
  assert_near (area_mm2 (opening), G_PI * 225, 1e-9);
  opening->shape = HUT_SHAPE_RECTANGLE;
  assert_near (area_mm2 (opening), 1200 - (4 - G_PI) * 16, 1e-9);
  opening->shape = HUT_SHAPE_SLOT; /* 40 x 20 and two half circles of radius 10 */
  assert_near (area_mm2 (opening), 800 + G_PI * 100, 1e-9);
  opening->turn_deg = 90;
  assert_near (area_mm2 (opening), 800 + G_PI * 100, 1e-9);
}

static void
turn_is_counter_clockwise_seen_from_outside (void **state)
{
  g_autoptr(HutOpening) pattern = hut_opening_new ("o", panel, HUT_SHAPE_PATTERN);
  g_autoptr(GPtrArray) paths = NULL;
  const HutPoint at = { 10, 0 };
  HutRect bounds;

  g_array_set_size (pattern->holes, 0);
  g_array_append_val (pattern->holes, at);
  pattern->diameter_mm = 4;
  pattern->turn_deg = 90;
  paths = hut_opening_dup_paths (pattern);
  bounds = hut_path_bounds (g_ptr_array_index (paths, 0));
  assert_near_mm ((bounds.u0 + bounds.u1) / 2, 0, 1e-9);
  assert_near_mm ((bounds.v0 + bounds.v1) / 2, 10, 1e-9);
}

static void
pattern_without_holes_has_no_outline (void **state)
{
  g_autoptr(HutOpening) pattern = hut_opening_new ("o", panel, HUT_SHAPE_PATTERN);
  g_autoptr(GPtrArray) paths = NULL;

  g_array_set_size (pattern->holes, 0);
  paths = hut_opening_dup_paths (pattern);
  assert_int_equal (paths->len, 0);
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (areas_agree_with_the_textbook),
    cmocka_unit_test (turn_is_counter_clockwise_seen_from_outside),
    cmocka_unit_test (pattern_without_holes_has_no_outline),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}

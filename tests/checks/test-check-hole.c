/* tests/checks/test-check-hole.c: an opening as the checks look at it.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "config.h"
#include "checks/hut-check-case.h"
#include "checks/hut-check-hole.h"
#include "hut-assert.h"

static void
rectangles_are_apart_by_their_nearest_points (void **state)
{
  const HutRect a = { 0, 0, 10, 10 };

  assert_near_mm (hut_check_rects_apart_mm (&a, &(HutRect) { 13, 14, 20, 20 }), 5, 1e-12);
  assert_near_mm (hut_check_rects_apart_mm (&a, &(HutRect) { -8, 2, -6, 4 }), 6, 1e-12);
  assert_near_mm (hut_check_rects_apart_mm (&a, &(HutRect) { 5, 5, 20, 20 }), 0, 0);
}

static void
path_inside_another_one_has_no_material_between (void **state)
{
  g_autoptr(HutPath) big = hut_path_new_circle ((HutPoint) { 0, 0 }, 20);
  g_autoptr(HutPath) small = hut_path_new_circle ((HutPoint) { 5, 0 }, 3);
  g_autoptr(HutPath) beside = hut_path_new_circle ((HutPoint) { 30, 0 }, 3);
  HutWeb gap;

  assert_true (hut_check_material_between (big, small, 1, &gap));
  assert_near_mm (gap.width_mm, 0, 0);
  assert_near_mm (gap.a.u, 2, 1e-9);
  assert_near_mm (gap.b.u, 8, 1e-9);
  assert_true (hut_check_material_between (small, big, 1, &gap));
  assert_near_mm (gap.width_mm, 0, 0);
  /* 30 - 3 - 20 */
  assert_false (hut_check_material_between (big, beside, 7, &gap));
  assert_true (hut_check_material_between (big, beside, 8, &gap));
  assert_near_mm (gap.width_mm, 7, 1e-9);
}

static void
each_placed_hole_has_the_bounds_of_its_paths (void **state)
{
  HutDesign *design = hut_check_case_design ();
  g_autoptr(HutCheckCase) c = NULL;
  g_autoptr(GPtrArray) holes = NULL;
  const HutCheckHole *hole;

  hut_check_case_add_round (design, "vent", (HutPanelId) { HUT_SHELL_LID, HUT_SIDE_TOP }, 100, 80,
                            20);
  c = hut_check_case_new (design);
  holes = hut_check_holes_new (c->assembly);
  assert_int_equal (holes->len, 1);
  hole = g_ptr_array_index (holes, 0);
  assert_near_mm (hole->bounds[0].u0, 90, 1e-9);
  assert_near_mm (hole->bounds[0].v1, 90, 1e-9);
  assert_string_equal (hut_check_hole_name (hole, c->assembly), "vent");
  assert_string_equal (hut_panel_id_to_string (hole->panel->id), "lid-top");
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (rectangles_are_apart_by_their_nearest_points),
    cmocka_unit_test (path_inside_another_one_has_no_material_between),
    cmocka_unit_test (each_placed_hole_has_the_bounds_of_its_paths),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}

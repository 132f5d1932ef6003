/* tests/geom/test-space.c: boxes and frames in space.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "config.h"
#include "geom/hut-space.h"
#include "hut-assert.h"

static const HutBox3 unit = { { 0, 0, 0 }, { 1, 1, 1 } };
static const HutBox3 empty = { { 0, 0, 0 }, { -1, 1, 1 } };
/* The right-hand side of a box 400 wide: seen from outside, u goes to the back, v up, w to +x. */
static const HutFrame3 right_side = { { 400, 0, 0 }, { 0, 1, 0 }, { 0, 0, 1 }, { 1, 0, 0 } };

static void
assert_vec (HutVec3 is,
            double x_mm,
            double y_mm,
            double z_mm)
{
  assert_near_mm (is.x, x_mm, 1e-12);
  assert_near_mm (is.y, y_mm, 1e-12);
  assert_near_mm (is.z, z_mm, 1e-12);
}

static void
vectors_add_scale_and_multiply (void **state)
{
  const HutVec3 a = { 1, 2, 3 }, b = { 4, -5, 6 };

  assert_vec (hut_vec3_add (a, b), 5, -3, 9);
  assert_vec (hut_vec3_scale (a, -2), -2, -4, -6);
  assert_near (hut_vec3_dot (a, b), 4 - 10 + 18, 0);
}

static void
point_of_the_right_side_lies_where_it_is_seen (void **state)
{
  assert_vec (hut_frame3_to_world (&right_side, 30, 50, -4), 396, 30, 50);
}

static void
slab_of_the_right_side_fills_its_box (void **state)
{
  const HutBox3 box = hut_frame3_box (&right_side, (HutRect) { 10, 20, 110, 220 }, -6, 0);
  const HutBox3 swapped = hut_frame3_box (&right_side, (HutRect) { 10, 20, 110, 220 }, 0, -6);

  assert_vec (box.min, 394, 10, 20);
  assert_vec (box.max, 400, 110, 220);
  assert_vec (swapped.min, 394, 10, 20);
  assert_near (hut_box3_volume_mm3 (&box), 6 * 100 * 200, 1e-9);
}

static void
slab_of_an_empty_rectangle_is_empty (void **state)
{
  const HutBox3 box = hut_frame3_box (&right_side, (HutRect) { 0, 0, -1, 5 }, -6, 0);

  assert_true (hut_box3_is_empty (&box));
}

static void
shadow_forgets_the_depth (void **state)
{
  const HutBox3 machine = { { 50, 60, 10 }, { 350, 260, 110 } };
  const HutRect shadow = hut_frame3_shadow (&right_side, &machine);
  const HutRect none = hut_frame3_shadow (&right_side, &empty);

  assert_near_mm (shadow.u0, 60, 0);
  assert_near_mm (shadow.u1, 260, 0);
  assert_near_mm (shadow.v0, 10, 0);
  assert_near_mm (shadow.v1, 110, 0);
  assert_true (none.u1 < none.u0);
}

static void
shadow_on_a_slanted_frame_takes_in_all_corners (void **state)
{
  /* A frame turned by 45 degrees about z: a unit square seen over its corner is sqrt 2 wide. */
  const HutFrame3 slanted = {
    { 0, 0, 0 }, { M_SQRT1_2, M_SQRT1_2, 0 }, { 0, 0, 1 }, { M_SQRT1_2, -M_SQRT1_2, 0 }
  };
  const HutRect shadow = hut_frame3_shadow (&slanted, &unit);

  assert_near_mm (shadow.u0, 0, 1e-15);
  assert_near_mm (shadow.u1, M_SQRT2, 1e-15);
}

static void
box_without_thickness_is_not_empty (void **state)
{
  const HutBox3 sheet = { { 0, 0, 0 }, { 5, 5, 0 } };
  const HutBox3 torn = { { 0, 0, 0 }, { 5, NAN, 1 } };

  assert_false (hut_box3_is_empty (&sheet));
  assert_false (hut_box3_is_empty (&unit));
  assert_true (hut_box3_is_empty (&empty));
  assert_true (hut_box3_is_empty (&torn));
}

static void
union_holds_both_and_nothing_for_empty (void **state)
{
  const HutBox3 other = { { 4, -2, 0 }, { 5, 0.5, 3 } };
  const HutBox3 both = hut_box3_union (&unit, &other);
  const HutBox3 same = hut_box3_union (&unit, &empty);
  const HutBox3 again = hut_box3_union (&empty, &unit);

  assert_vec (both.min, 0, -2, 0);
  assert_vec (both.max, 5, 1, 3);
  assert_vec (same.min, 0, 0, 0);
  assert_vec (same.max, 1, 1, 1);
  assert_vec (again.max, 1, 1, 1);
}

static void
sweep_covers_start_and_end_of_a_signed_travel (void **state)
{
  const HutBox3 swept = hut_box3_sweep (&unit, (HutVec3) { 10, -3, 0 });
  const HutBox3 none = hut_box3_sweep (&empty, (HutVec3) { 10, 0, 0 });

  assert_vec (swept.min, 0, -3, 0);
  assert_vec (swept.max, 11, 1, 1);
  assert_true (hut_box3_is_empty (&none));
}

static void
shift_moves_both_corners (void **state)
{
  const HutBox3 moved = hut_box3_shift (&unit, (HutVec3) { 1, 2, 3 });

  assert_vec (moved.min, 1, 2, 3);
  assert_vec (moved.max, 2, 3, 4);
}

static void
distance_over_a_corner_is_the_diagonal (void **state)
{
  const HutBox3 aside = { { 3, 0, 0 }, { 4, 1, 1 } };
  const HutBox3 corner = { { 3, 4, 7 }, { 9, 9, 9 } }; /* gaps 2, 3, 6 */
  const HutBox3 touching = { { 1, 0, 0 }, { 2, 1, 1 } };

  assert_near_mm (hut_box3_distance_mm (&unit, &aside), 2, 0);
  assert_near_mm (hut_box3_distance_mm (&unit, &corner), 7, 1e-15);
  assert_near_mm (hut_box3_distance_mm (&corner, &unit), 7, 1e-15);
  assert_near_mm (hut_box3_distance_mm (&unit, &touching), 0, 0);
  assert_true (isinf (hut_box3_distance_mm (&unit, &empty)));
}

static void
overlap_is_the_smallest_move_that_parts_them (void **state)
{
  const HutBox3 deep = { { 0.25, 0.5, -3 }, { 4, 4, 0.875 } }; /* 0.75, 0.5, 0.875 */
  const HutBox3 inside = { { 0.25, 0.375, 0.375 }, { 0.5, 0.5, 0.5 } };
  const HutBox3 touching = { { 1, 0, 0 }, { 2, 1, 1 } };
  const HutBox3 apart = { { 1.5, 0, 0 }, { 2, 1, 1 } };

  assert_near_mm (hut_box3_overlap_mm (&unit, &deep), 0.5, 0);
  assert_near_mm (hut_box3_overlap_mm (&inside, &unit), 0.5, 0); /* out at x = 0 */
  assert_near_mm (hut_box3_overlap_mm (&unit, &touching), 0, 0);
  assert_near_mm (hut_box3_overlap_mm (&unit, &apart), 0, 0);
  assert_near_mm (hut_box3_overlap_mm (&unit, &empty), 0, 0);
}

static void
volume_of_an_empty_box_is_0 (void **state)
{
  const HutBox3 box = { { 1, 1, 1 }, { 3, 4, 5 } };
  const HutBox3 twice_negative = { { 0, 0, 0 }, { -1, -1, 1 } };

  assert_near (hut_box3_volume_mm3 (&box), 24, 0);
  assert_near (hut_box3_volume_mm3 (&empty), 0, 0);
  assert_near (hut_box3_volume_mm3 (&twice_negative), 0, 0);
}

static void
outer_product_of_right_and_back_is_up (void **state)
{
  const HutVec3 right = { 2, 0, 0 }, back = { 0, 3, 0 };

  assert_vec (hut_vec3_cross (right, back), 0, 0, 6);
  assert_vec (hut_vec3_cross (back, right), 0, 0, -6);
}

static void
turn_by_the_right_hand_rule (void **state)
{
  const HutVec3 z = { 0, 0, 1 }, a = { 2, 0, 5 };
  const double slant = 1.0 / sqrt (3.0);
  const HutVec3 diagonal = { slant, slant, slant };

  assert_vec (hut_vec3_turn (a, z, G_PI_2), 0, 2, 5);
  /* A third of a turn about the diagonal of a cube takes x to y. */
  assert_vec (hut_vec3_turn ((HutVec3) { 1, 0, 0 }, diagonal, 2.0 * G_PI / 3.0), 0, 1, 0);
}

static void
frame_turns_about_a_line_beside_it (void **state)
{
  const HutFrame3 frame = { { 10, 0, 0 }, { 1, 0, 0 }, { 0, 1, 0 }, { 0, 0, 1 } };
  const HutFrame3 turned
      = hut_frame3_turn (&frame, (HutVec3) { 4, 0, 7 }, (HutVec3) { 0, 0, 1 }, G_PI_2);

  assert_vec (turned.origin, 4, 6, 0);
  assert_vec (turned.u, 0, 1, 0);
  assert_vec (turned.v, -1, 0, 0);
  assert_vec (turned.w, 0, 0, 1);
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (vectors_add_scale_and_multiply),
    cmocka_unit_test (point_of_the_right_side_lies_where_it_is_seen),
    cmocka_unit_test (slab_of_the_right_side_fills_its_box),
    cmocka_unit_test (slab_of_an_empty_rectangle_is_empty),
    cmocka_unit_test (shadow_forgets_the_depth),
    cmocka_unit_test (shadow_on_a_slanted_frame_takes_in_all_corners),
    cmocka_unit_test (box_without_thickness_is_not_empty),
    cmocka_unit_test (union_holds_both_and_nothing_for_empty),
    cmocka_unit_test (sweep_covers_start_and_end_of_a_signed_travel),
    cmocka_unit_test (shift_moves_both_corners),
    cmocka_unit_test (distance_over_a_corner_is_the_diagonal),
    cmocka_unit_test (overlap_is_the_smallest_move_that_parts_them),
    cmocka_unit_test (volume_of_an_empty_box_is_0),
    cmocka_unit_test (outer_product_of_right_and_back_is_up),
    cmocka_unit_test (turn_by_the_right_hand_rule),
    cmocka_unit_test (frame_turns_about_a_line_beside_it),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}

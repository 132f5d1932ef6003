/* tests/geom/test-geos.c: the bridge to GEOS.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "config.h"
#include "geom/hut-geos.h"
#include "hut-assert.h"
#include "hut-random-shape.h"

static HutRegion *
new_square (double from_mm,
            double to_mm)
{
  return hut_region_new (hut_path_new_rect ((HutRect) { from_mm, from_mm, to_mm, to_mm }, 0));
}

static HutPath *
new_bow_tie (void)
{
  /* Crosses itself at (5, 5). */
  HutPath *path = hut_path_new ();

  hut_path_append (path, (HutPoint) { 0, 0 }, 0, HUT_EDGE_PLAIN);
  hut_path_append (path, (HutPoint) { 10, 10 }, 0, HUT_EDGE_PLAIN);
  hut_path_append (path, (HutPoint) { 10, 0 }, 0, HUT_EDGE_PLAIN);
  hut_path_append (path, (HutPoint) { 0, 10 }, 0, HUT_EDGE_PLAIN);
  return path;
}

static void
assert_invalid (const HutRegion *region,
                const char *what)
{
  g_autoptr(GError) error = NULL;

  assert_false (hut_geos_is_valid (region, &error));
  assert_true (g_error_matches (error, HUT_GEOM_ERROR, HUT_GEOM_ERROR_INVALID));
  if (strstr (error->message, what) == NULL)
    fail_msg ("\"%s\" does not say \"%s\"", error->message, what);
}

static void
good_outlines_are_valid (void **state)
{
  g_autoptr(HutRegion) plain = new_square (0, 10);
  g_autoptr(HutRegion) ring = hut_region_new (hut_path_new_circle ((HutPoint) { 0, 0 }, 5));
  g_autoptr(GError) error = NULL;

  hut_region_take_hole (ring, hut_path_new_circle ((HutPoint) { 1, 0 }, 3));
  assert_ok (hut_geos_is_valid (plain, &error), error);
  assert_ok (hut_geos_is_valid (ring, &error), error);
  assert_true (hut_geos_path_is_simple (plain->outer));
  assert_true (hut_geos_path_is_simple (ring->outer));
}

static void
crossing_outline_is_invalid_at_the_crossing (void **state)
{
  g_autoptr(HutRegion) region = hut_region_new (new_bow_tie ());

  assert_invalid (region, "Self-intersection at (5.000, 5.000) mm");
  assert_false (hut_geos_path_is_simple (region->outer));
}

static void
hole_outside_or_over_the_rim_is_invalid (void **state)
{
  g_autoptr(HutRegion) outside = new_square (0, 10);
  g_autoptr(HutRegion) over = new_square (0, 10);
  g_autoptr(HutRegion) nested = new_square (0, 10);

  hut_region_take_hole (outside, hut_path_new_circle ((HutPoint) { 20, 5 }, 2));
  hut_region_take_hole (over, hut_path_new_circle ((HutPoint) { 10, 5 }, 2));
  hut_region_take_hole (nested, hut_path_new_circle ((HutPoint) { 5, 5 }, 3));
  hut_region_take_hole (nested, hut_path_new_circle ((HutPoint) { 5, 5 }, 2));
  assert_invalid (outside, "Hole lies outside shell");
  assert_invalid (over, "intersection");
  assert_invalid (nested, "Holes are nested");
}

static void
outline_that_is_no_polygon_is_invalid (void **state)
{
  g_autoptr(HutRegion) nothing = hut_region_new (hut_path_new ());
  g_autoptr(HutRegion) two = hut_region_new (hut_path_new ());
  g_autoptr(HutRegion) undefined = new_square (0, 10);
  g_autoptr(HutRegion) hole = new_square (0, 10);

  hut_path_append (two->outer, (HutPoint) { 0, 0 }, 0, HUT_EDGE_PLAIN);
  hut_path_append (two->outer, (HutPoint) { 5, 5 }, 0, HUT_EDGE_PLAIN);
  hut_path_append (undefined->outer, (HutPoint) { 0, NAN }, 0, HUT_EDGE_PLAIN);
  hut_region_take_hole (hole, hut_path_new_circle ((HutPoint) { 3, 3 }, 1));
  hut_region_take_hole (hole, hut_path_new ());
  assert_invalid (nothing, "0 corners");
  assert_invalid (two, "2 corners");
  assert_invalid (undefined, "not finite");
  assert_invalid (hole, "0 corners");
  assert_false (hut_geos_path_is_simple (nothing->outer));
  assert_false (hut_geos_path_is_simple (two->outer));
  assert_false (hut_geos_path_is_simple (undefined->outer));
}

static void
outline_that_touches_itself_is_not_simple (void **state)
{
  /* Two triangles that meet in the corner (5, 5). */
  g_autoptr(HutPath) path = hut_path_new ();
  static const HutPoint corners[] = {
    { 0, 0 }, { 10, 0 }, { 5, 5 }, { 10, 10 }, { 0, 10 }, { 5, 5 }
  };

  for (guint i = 0; i < G_N_ELEMENTS (corners); i++)
    hut_path_append (path, corners[i], 0, HUT_EDGE_PLAIN);
  assert_false (hut_geos_path_is_simple (path));
}

static void
arc_without_circle_is_refused (void **state)
{
  g_autoptr(HutRegion) region = new_square (0, 10);
  g_autoptr(GError) error = NULL;

  hut_path_append (region->outer, (HutPoint) { 0, 0 }, 1, HUT_EDGE_PLAIN);
  assert_false (hut_geos_is_valid (region, &error));
  assert_true (g_error_matches (error, HUT_GEOM_ERROR, HUT_GEOM_ERROR_NO_CIRCLE));
}

static void
areas_of_two_squares_that_share_a_quarter (void **state)
{
  g_autoptr(HutRegion) a = new_square (0, 10);
  g_autoptr(HutRegion) b = new_square (5, 15);
  g_autoptr(GError) error = NULL;

  assert_near (hut_geos_op_area_mm2 (a, b, HUT_GEOS_UNION, &error), 175, 1e-12);
  assert_near (hut_geos_op_area_mm2 (a, b, HUT_GEOS_INTERSECTION, &error), 25, 1e-12);
  assert_near (hut_geos_op_area_mm2 (a, b, HUT_GEOS_DIFFERENCE, &error), 75, 1e-12);
  assert_null (error);
}

static void
pieces_come_back_as_regions (void **state)
{
  /* A bar across a square leaves two pieces, a square in a square leaves a frame. */
  g_autoptr(HutRegion) square = new_square (0, 10);
  g_autoptr(HutRegion) bar = hut_region_new (hut_path_new_rect ((HutRect) { -1, 4, 11, 6 }, 0));
  g_autoptr(HutRegion) middle = new_square (2, 8);
  g_autoptr(GError) error = NULL;
  g_autoptr(GPtrArray) two = hut_geos_op (square, bar, HUT_GEOS_DIFFERENCE, &error);
  g_autoptr(GPtrArray) frame = hut_geos_op (square, middle, HUT_GEOS_DIFFERENCE, &error);

  assert_non_null (two);
  assert_int_equal (two->len, 2);
  assert_near (hut_region_area_mm2 (g_ptr_array_index (two, 0)), 40, 1e-12);
  assert_near (hut_region_area_mm2 (g_ptr_array_index (two, 1)), 40, 1e-12);

  assert_non_null (frame);
  assert_int_equal (frame->len, 1);
  const HutRegion *piece = g_ptr_array_index (frame, 0);
  assert_int_equal (piece->holes->len, 1);
  assert_near (hut_region_area_mm2 (piece), 64, 1e-12);
  assert_ok (hut_geos_is_valid (piece, &error), error);
}

static void
regions_that_only_touch_have_no_common_piece (void **state)
{
  g_autoptr(HutRegion) a = new_square (0, 10);
  g_autoptr(HutRegion) beside = hut_region_new (hut_path_new_rect ((HutRect) { 10, 0, 20, 10 }, 0));
  g_autoptr(HutRegion) apart = new_square (30, 40);
  g_autoptr(GError) error = NULL;
  g_autoptr(GPtrArray) edge = hut_geos_op (a, beside, HUT_GEOS_INTERSECTION, &error);
  g_autoptr(GPtrArray) nothing = hut_geos_op (a, apart, HUT_GEOS_INTERSECTION, &error);
  g_autoptr(GPtrArray) itself = hut_geos_op (a, a, HUT_GEOS_DIFFERENCE, &error);

  assert_int_equal (edge->len, 0);
  assert_int_equal (nothing->len, 0);
  assert_int_equal (itself->len, 0);
  assert_near (hut_geos_op_area_mm2 (a, apart, HUT_GEOS_INTERSECTION, &error), 0, 0);
}

static void
disc_in_its_own_hole_leaves_no_gap (void **state)
{
  /* The hole runs the other way round: flattened alike, the union is the whole plate again. */
  const HutPlacement turned = { .turn_rad = 0.3, .shift = { 12.3, 4.5 } };
  g_autoptr(HutRegion) plate = new_square (-20, 20);
  g_autoptr(HutRegion) disc = hut_region_new (hut_path_new_circle ((HutPoint) { 3, 1 }, 7.3));
  g_autoptr(GError) error = NULL;

  hut_region_take_hole (plate, hut_path_new_circle ((HutPoint) { 3, 1 }, 7.3));

  g_autoptr(HutRegion) plate_turned = hut_region_dup_placed (plate, &turned);
  g_autoptr(HutRegion) disc_turned = hut_region_dup_placed (disc, &turned);
  g_autoptr(GPtrArray) whole = hut_geos_op (plate_turned, disc_turned, HUT_GEOS_UNION, &error);

  assert_ok (whole != NULL, error);
  assert_int_equal (whole->len, 1);
  assert_int_equal (((HutRegion *) g_ptr_array_index (whole, 0))->holes->len, 0);
  assert_near (hut_region_area_mm2 (g_ptr_array_index (whole, 0)), 1600, 1e-9);
}

static void
operations_on_a_torn_outline_are_errors_with_the_place (void **state)
{
  g_autoptr(HutRegion) torn = hut_region_new (new_bow_tie ());
  g_autoptr(HutRegion) square = new_square (0, 10);
  g_autoptr(GError) first = NULL;
  g_autoptr(GError) second = NULL;

  assert_near (hut_geos_op_area_mm2 (torn, square, HUT_GEOS_UNION, &first), -1, 0);
  assert_true (g_error_matches (first, HUT_GEOM_ERROR, HUT_GEOM_ERROR_INVALID));
  assert_non_null (strstr (first->message, "(5.000, 5.000) mm"));
  assert_null (hut_geos_op (square, torn, HUT_GEOS_UNION, &second));
  assert_true (g_error_matches (second, HUT_GEOM_ERROR, HUT_GEOM_ERROR_INVALID));
}

static void
what_geos_refuses_is_told_with_its_reason (void **state)
{
  g_autoptr(HutRegion) square = new_square (0, 10);
  g_autoptr(GError) error = NULL;

  assert_near (hut_geos_buffer_area_mm2 (square, NAN, &error), -1, 0);
  assert_true (g_error_matches (error, HUT_GEOM_ERROR, HUT_GEOM_ERROR_ENGINE));
  assert_non_null (strstr (error->message, "NaN"));
}

static void
mitred_buffer_of_a_square_is_a_square (void **state)
{
  g_autoptr(HutRegion) square = new_square (0, 10);
  g_autoptr(GError) error = NULL;

  assert_near (hut_geos_buffer_area_mm2 (square, 1, &error), 144, 1e-12);
  assert_near (hut_geos_buffer_area_mm2 (square, -1, &error), 64, 1e-12);
  assert_null (error);
}

static void
distance_is_between_borders_and_0_when_they_meet (void **state)
{
  g_autoptr(HutRegion) a = new_square (0, 10);
  g_autoptr(HutRegion) b = new_square (13, 20); /* corner to corner: 3 and 3 */
  g_autoptr(HutRegion) inside = new_square (4, 6);
  g_autoptr(HutRegion) disc = hut_region_new (hut_path_new_circle ((HutPoint) { 17, 5 }, 5));
  g_autoptr(HutRegion) torn = new_square (0, 10);
  g_autoptr(GError) error = NULL;

  assert_near_mm (hut_geos_distance_mm (a, b, &error), 3 * M_SQRT2, 1e-12);
  assert_near_mm (hut_geos_distance_mm (a, inside, &error), 0, 0);
  assert_near_mm (hut_geos_distance_mm (a, disc, &error), 2, HUT_CHORD_MM);
  assert_null (error);

  hut_path_append (torn->outer, (HutPoint) { 0, INFINITY }, 0, HUT_EDGE_PLAIN);
  assert_near_mm (hut_geos_distance_mm (a, torn, &error), -1, 0);
  assert_true (g_error_matches (error, HUT_GEOM_ERROR, HUT_GEOM_ERROR_INVALID));
}

static void
areas_of_random_outlines_agree_with_ours (void **state)
{
  for (guint64 seed = 0; seed < 400; seed++)
    {
      HutRandom random;
      g_autoptr(GError) error = NULL;

      hut_random_init (&random, seed);

      const gboolean arcs = seed % 2;
      g_autoptr(HutRegion) region = hut_random_fingers (&random, arcs);
      g_autoptr(HutRegion) placed = hut_random_placed (&random, region);
      const double geos_mm2 = hut_geos_op_area_mm2 (placed, placed, HUT_GEOS_UNION, &error);
      const double ours_mm2 = hut_region_area_mm2 (placed);
      const double slack_mm2 = arcs ? HUT_CHORD_MM * hut_region_length_mm (placed)
                                    : 1e-10 * ours_mm2;

      if (fabs (geos_mm2 - ours_mm2) > slack_mm2)
        fail_msg ("seed %" G_GUINT64_FORMAT ": GEOS %.9f, ours %.9f mm2", seed, geos_mm2, ours_mm2);
    }
}

static gpointer
check_many (gpointer data)
{
  g_autoptr(HutRegion) torn = hut_region_new (new_bow_tie ());
  guint right = 0;

  for (guint i = 0; i < 200; i++)
    {
      g_autoptr(GError) error = NULL;

      right += !hut_geos_is_valid (torn, &error)
               && strstr (error->message, "(5.000, 5.000)") != NULL;
    }
  return GUINT_TO_POINTER (right);
}

static void
calls_from_several_threads_do_not_meet (void **state)
{
  GThread *threads[4];

  for (guint i = 0; i < G_N_ELEMENTS (threads); i++)
    threads[i] = g_thread_new ("geos", check_many, NULL);
  for (guint i = 0; i < G_N_ELEMENTS (threads); i++)
    assert_int_equal (GPOINTER_TO_UINT (g_thread_join (threads[i])), 200);
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (good_outlines_are_valid),
    cmocka_unit_test (crossing_outline_is_invalid_at_the_crossing),
    cmocka_unit_test (hole_outside_or_over_the_rim_is_invalid),
    cmocka_unit_test (outline_that_is_no_polygon_is_invalid),
    cmocka_unit_test (outline_that_touches_itself_is_not_simple),
    cmocka_unit_test (arc_without_circle_is_refused),
    cmocka_unit_test (areas_of_two_squares_that_share_a_quarter),
    cmocka_unit_test (pieces_come_back_as_regions),
    cmocka_unit_test (regions_that_only_touch_have_no_common_piece),
    cmocka_unit_test (disc_in_its_own_hole_leaves_no_gap),
    cmocka_unit_test (operations_on_a_torn_outline_are_errors_with_the_place),
    cmocka_unit_test (what_geos_refuses_is_told_with_its_reason),
    cmocka_unit_test (mitred_buffer_of_a_square_is_a_square),
    cmocka_unit_test (distance_is_between_borders_and_0_when_they_meet),
    cmocka_unit_test (areas_of_random_outlines_agree_with_ours),
    cmocka_unit_test (calls_from_several_threads_do_not_meet),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}

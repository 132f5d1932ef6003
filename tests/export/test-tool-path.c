/* tests/export/test-tool-path.c: what the tool does on a sheet, and in which order.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "export/hut-tool-path.h"
#include "hut-assert.h"
#include "hut-hand-part.h"

static GPtrArray *
new_paths (HutHandParts *hand)
{
  g_autoptr(HutSheetSet) set = hut_sheet_set_new (hand->assembly, hand->parts);
  g_autoptr(GError) error = NULL;
  GPtrArray *paths
      = hut_sheet_dup_tool_paths (hand->parts, g_ptr_array_index (set->sheets, 0), &error);

  assert_ok (paths != NULL, error);
  return paths;
}

/* Two plates of 100 x 60, each with two holes of 10 x 10 in its right half. */
static void
add_two_plates (HutHandParts *hand)
{
  static const char *const ids[] = { "a", "b" };

  for (guint i = 0; i < G_N_ELEMENTS (ids); i++)
    {
      HutPart *part = hut_hand_parts_add_rect (hand, ids[i], 100, 60);

      hut_region_take_hole (part->region, hut_path_new_rect ((HutRect) { 70, 5, 80, 15 }, 0));
      hut_region_take_hole (part->region, hut_path_new_rect ((HutRect) { 85, 45, 95, 55 }, 0));
    }
}

static void
names_come_first_then_all_holes_then_all_outlines (void **state)
{
  static const struct
  {
    HutLayer layer;
    const char *id;
  } expected[] = {
    { HUT_LAYER_SCORE, "a-label" },        { HUT_LAYER_SCORE, "b-label" },
    { HUT_LAYER_CUT_INSIDE, "a-inside-1" }, { HUT_LAYER_CUT_INSIDE, "a-inside-2" },
    { HUT_LAYER_CUT_INSIDE, "b-inside-1" }, { HUT_LAYER_CUT_INSIDE, "b-inside-2" },
    { HUT_LAYER_CUT_OUTSIDE, "a-outside" }, { HUT_LAYER_CUT_OUTSIDE, "b-outside" },
  };
  g_autoptr(GPtrArray) paths = NULL;

  add_two_plates (*state);
  paths = new_paths (*state);
  assert_int_equal (paths->len, G_N_ELEMENTS (expected));
  for (guint i = 0; i < paths->len; i++)
    {
      const HutToolPath *path = g_ptr_array_index (paths, i);

      guint found = 0;

      /* The order within a layer is that of hut-cut-order.h. */
      assert_int_equal (path->layer, expected[i].layer);
      for (guint k = 0; k < G_N_ELEMENTS (expected); k++)
        found += expected[k].layer == path->layer && g_str_equal (expected[k].id, path->id);
      assert_int_equal (found, 1);
      assert_true ((path->closed != NULL) == (path->layer != HUT_LAYER_SCORE));
      assert_true ((path->strokes != NULL) == (path->layer == HUT_LAYER_SCORE));
    }
}

/* A part in the hole of a frame would drop out with the hole: it is cut before it, with its own hole
 * first. Usable 380 x 280: the frame takes all of it, so the part lies in its hole. */
static void
part_in_a_hole_is_cut_before_the_hole (void **state)
{
  static const char *const expected[] = { "part-inside-1", "part-outside", "frame-inside-1",
                                          "frame-outside" };
  HutHandParts *hand = *state;
  HutPart *frame = hut_hand_parts_add_rect (hand, "frame", 380, 280);
  HutPart *part = hut_hand_parts_add_rect (hand, "part", 200, 100);
  g_autoptr(GPtrArray) paths = NULL;
  guint at = 0;

  hut_region_take_hole (frame->region, hut_path_new_rect ((HutRect) { 20, 20, 360, 260 }, 0));
  hut_region_take_hole (part->region, hut_path_new_rect ((HutRect) { 20, 20, 30, 30 }, 0));
  paths = new_paths (hand);
  for (guint i = 0; i < paths->len; i++)
    {
      const HutToolPath *path = g_ptr_array_index (paths, i);

      if (path->closed == NULL)
        continue;
      assert_true (at < G_N_ELEMENTS (expected));
      assert_string_equal (path->id, expected[at]);
      assert_int_equal (path->layer, at < 3 ? HUT_LAYER_CUT_INSIDE : HUT_LAYER_CUT_OUTSIDE);
      at++;
    }
  assert_int_equal (at, G_N_ELEMENTS (expected));
}

/* Kerf 0.2: outlines grow by 0.1 a side, holes shrink: 2 * (100.2 + 60.2) and 4 * 9.8 each. */
static void
lengths_are_those_of_the_tool_with_kerf (void **state)
{
  HutHandParts *hand = *state;
  g_autoptr(GPtrArray) paths = NULL;

  hand->stock->kerf_mm = 0.2;
  add_two_plates (hand);
  paths = new_paths (hand);
  assert_near_mm (hut_tool_paths_length_mm (paths, HUT_LAYER_CUT_OUTSIDE, HUT_CUTTER_LASER), 2 * 320.8, 1e-9);
  assert_near_mm (hut_tool_paths_length_mm (paths, HUT_LAYER_CUT_INSIDE, HUT_CUTTER_LASER), 4 * 39.2, 1e-9);
  assert_true (hut_tool_paths_length_mm (paths, HUT_LAYER_SCORE, HUT_CUTTER_LASER) > 0.0);
}

/* 100 x 60 with corners of 10: 2 * 80 + 2 * 40 + 2 pi * 10 = 302.8319; its hole of 15: 94.2478. */
static void
plate_with_round_corners_is_302_8319_mm_of_cut (void **state)
{
  HutPart *plate
      = hut_hand_parts_take (*state, "plate", hut_path_new_rect ((HutRect) { 0, 0, 100, 60 }, 10));
  g_autoptr(GPtrArray) paths = NULL;

  hut_region_take_hole (plate->region, hut_path_new_circle ((HutPoint) { 50, 30 }, 15));
  paths = new_paths (*state);
  assert_near_mm (hut_tool_paths_length_mm (paths, HUT_LAYER_CUT_OUTSIDE, HUT_CUTTER_LASER), 302.8318530717959, 1e-9);
  assert_near_mm (hut_tool_paths_length_mm (paths, HUT_LAYER_CUT_INSIDE, HUT_CUTTER_LASER), 94.2477796076938, 1e-9);
}

/* The outline of one plate reaches from the margin at 10 to 110 and 70. */
static void
bounds_are_those_of_the_outermost_work (void **state)
{
  g_autoptr(GPtrArray) paths = NULL;
  g_autoptr(GPtrArray) none = g_ptr_array_new ();
  HutRect bounds;

  hut_hand_parts_add_rect (*state, "a", 100, 60);
  paths = new_paths (*state);
  bounds = hut_tool_paths_bounds (paths);
  assert_near_mm (bounds.u0, 10, 1e-9);
  assert_near_mm (bounds.v0, 10, 1e-9);
  assert_near_mm (bounds.u1, 110, 1e-9);
  assert_near_mm (bounds.v1, 70, 1e-9);
  bounds = hut_tool_paths_bounds (none);
  assert_true (bounds.u1 < bounds.u0);
}

static void
part_too_small_for_a_name_is_cut_without_one (void **state)
{
  g_autoptr(GPtrArray) paths = NULL;

  hut_hand_parts_add_rect (*state, "a", 8, 8);
  paths = new_paths (*state);
  assert_int_equal (paths->len, 1);
}

static void
cut_that_kerf_swallows_is_an_error_that_names_the_part (void **state)
{
  HutHandParts *hand = *state;
  HutPart *part = hut_hand_parts_add_rect (hand, "grille", 100, 60);
  g_autoptr(GError) error = NULL;

  hand->stock->kerf_mm = 1.0;
  hut_region_take_hole (part->region, hut_path_new_rect ((HutRect) { 20, 20, 20.5, 40 }, 0));

  g_autoptr(HutSheetSet) set = hut_sheet_set_new (hand->assembly, hand->parts);

  assert_null (hut_sheet_dup_tool_paths (hand->parts, g_ptr_array_index (set->sheets, 0), &error));
  assert_true (g_error_matches (error, HUT_GEOM_ERROR, HUT_GEOM_ERROR_VANISHED));
  assert_non_null (strstr (error->message, "part grille: "));
}

/* ---- circles --------------------------------------------------------------------------------- */

static void
circle_is_found_whichever_way_it_runs (void **state)
{
  g_autoptr(HutPath) path = hut_path_new_circle ((HutPoint) { 3, 4 }, 2.5);
  HutPoint centre = { 0, 0 };
  double radius_mm = 0.0;

  for (guint i = 0; i < 2; i++)
    {
      assert_true (hut_path_get_circle (path, &centre, &radius_mm));
      assert_near_mm (centre.u, 3, 1e-12);
      assert_near_mm (centre.v, 4, 1e-12);
      assert_near_mm (radius_mm, 2.5, 1e-12);
      hut_path_reverse (path);
    }
}

/* A quarter and three quarters of one circle: bulges tan (22.5) and tan (67.5 degrees). */
static void
circle_of_two_unequal_arcs_is_found (void **state)
{
  g_autoptr(HutPath) path = hut_path_new ();
  HutPoint centre;
  double radius_mm;

  hut_path_append (path, (HutPoint) { 10, 0 }, tan (G_PI / 8), HUT_EDGE_PLAIN);
  hut_path_append (path, (HutPoint) { 0, 10 }, tan (3 * G_PI / 8), HUT_EDGE_PLAIN);
  assert_true (hut_path_get_circle (path, &centre, &radius_mm));
  assert_near_mm (radius_mm, 10, 1e-9);
}

static void
lens_slot_and_rectangle_are_no_circles (void **state)
{
  g_autoptr(HutPath) lens = hut_path_new ();
  g_autoptr(HutPath) slot = hut_path_new_rect ((HutRect) { 0, 0, 30, 10 }, 5);
  g_autoptr(HutPath) rect = hut_path_new_rect ((HutRect) { 0, 0, 30, 10 }, 0);
  HutPoint centre = { 7, 7 };
  double radius_mm = 7.0;

  hut_path_append (lens, (HutPoint) { 0, 0 }, 0.5, HUT_EDGE_PLAIN);
  hut_path_append (lens, (HutPoint) { 10, 0 }, 0.5, HUT_EDGE_PLAIN);
  assert_false (hut_path_get_circle (lens, &centre, &radius_mm));
  assert_false (hut_path_get_circle (slot, &centre, &radius_mm));
  assert_false (hut_path_get_circle (rect, &centre, &radius_mm));
  assert_near_mm (radius_mm, 7.0, 0.0);
}

#define BY_HAND(test) cmocka_unit_test_setup_teardown (test, \
        hut_hand_parts_set_up, hut_hand_parts_tear_down)

static HutPartMark *
add_mark (HutPart *part,
          HutPartMarkKind kind,
          HutPath *path)
{
  HutPartMark *mark = g_new0 (HutPartMark, 1);

  mark->kind = kind;
  mark->face = HUT_FACE_INSIDE;
  mark->path = path;
  g_ptr_array_add (part->marks, mark);
  return mark;
}

/* Pockets and centres have layers of their own, before the cuts; a hole that is opened by hand is
 * scored and not cut. */
static void
marks_come_before_cuts_and_what_is_bored_first_is_scored (void **state)
{
  static const char *const ids[]
      = { "a-label", "a-by-hand-3", "a-pocket-1-inside", "a-drill-2", "a-inside-2", "a-outside" };
  HutHandParts *hand = *state;
  HutPart *part = hut_hand_parts_add_rect (hand, "a", 100, 60);
  g_autoptr(GPtrArray) paths = NULL;

  hand->stock->kerf_mm = 0.2;
  hut_region_take_hole (part->region, hut_path_new_circle ((HutPoint) { 70, 30 }, 6));
  hut_region_take_hole (part->region, hut_path_new_rect ((HutRect) { 85, 45, 95, 55 }, 0));
  add_mark (part, HUT_PART_MARK_POCKET, hut_path_new_circle ((HutPoint) { 70, 30 }, 12));
  add_mark (part, HUT_PART_MARK_CENTRE, hut_path_new_circle ((HutPoint) { 70, 30 }, 0.75));
  add_mark (part, HUT_PART_MARK_OUTLINE, hut_path_new_circle ((HutPoint) { 70, 30 }, 6))->hole = 0;
  paths = new_paths (hand);
  assert_int_equal (paths->len, G_N_ELEMENTS (ids));
  for (guint i = 0; i < paths->len; i++)
    assert_string_equal (((HutToolPath *) g_ptr_array_index (paths, i))->id, ids[i]);
  assert_near_mm (hut_tool_paths_length_mm (paths, HUT_LAYER_POCKET, HUT_CUTTER_LASER), 24 * G_PI, 1e-9);
  /* Kerf 0.2: the tool's middle runs 0.1 inside a mark of 0.75. */
  assert_near_mm (hut_tool_paths_length_mm (paths, HUT_LAYER_DRILL, HUT_CUTTER_LASER), 1.3 * G_PI, 1e-9);
  for (guint i = 0; i < part->marks->len; i++)
    {
      HutPartMark *mark = g_ptr_array_index (part->marks, i);

      hut_path_free (mark->path);
      g_free (mark);
    }
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    BY_HAND (names_come_first_then_all_holes_then_all_outlines),
    BY_HAND (part_in_a_hole_is_cut_before_the_hole),
    BY_HAND (marks_come_before_cuts_and_what_is_bored_first_is_scored),
    BY_HAND (lengths_are_those_of_the_tool_with_kerf),
    BY_HAND (plate_with_round_corners_is_302_8319_mm_of_cut),
    BY_HAND (bounds_are_those_of_the_outermost_work),
    BY_HAND (part_too_small_for_a_name_is_cut_without_one),
    BY_HAND (cut_that_kerf_swallows_is_an_error_that_names_the_part),
    cmocka_unit_test (circle_is_found_whichever_way_it_runs),
    cmocka_unit_test (circle_of_two_unequal_arcs_is_found),
    cmocka_unit_test (lens_slot_and_rectangle_are_no_circles),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}

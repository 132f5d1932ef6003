/* tests/sheets/test-label.c: where a part's name is scored on it.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "sheets/hut-label.h"
#include "hut-assert.h"
#include "hut-hand-part.h"
#include "hut-random-design.h"

#define SAMPLE_MM 0.25 /* strokes are looked at in steps of this length */
#define ROUNDING_MM 1e-9
#define RANDOM_DESIGNS 20

static HutRect
label_bounds (const HutLabel *label)
{
  HutRect bounds = { G_MAXDOUBLE, G_MAXDOUBLE, -G_MAXDOUBLE, -G_MAXDOUBLE };

  for (guint i = 0; i < label->strokes->len; i++)
    {
      const GArray *stroke = g_ptr_array_index (label->strokes, i);

      for (guint k = 0; k < stroke->len; k++)
        {
          const HutPoint p = g_array_index (stroke, HutPoint, k);

          bounds = (HutRect) { MIN (bounds.u0, p.u), MIN (bounds.v0, p.v), MAX (bounds.u1, p.u),
                               MAX (bounds.v1, p.v) };
        }
    }
  return bounds;
}

/* ---- distance to the border, another way than the code under test: exact, without boxes ------ */

static double
line_distance_mm (HutPoint p,
                  HutPoint a,
                  HutPoint b)
{
  const double du = b.u - a.u, dv = b.v - a.v;
  const double along = ((p.u - a.u) * du + (p.v - a.v) * dv) / (du * du + dv * dv);
  const double t = CLAMP (along, 0.0, 1.0);

  return hypot (p.u - a.u - t * du, p.v - a.v - t * dv);
}

static double
segment_distance_mm (HutPoint p,
                     const HutSegment *segment)
{
  HutPoint centre;
  double radius_mm;

  if (segment->bulge == 0.0 || !hut_segment_get_circle (segment, &centre, &radius_mm))
    return line_distance_mm (p, segment->start, segment->end);

  const double sweep_rad = 4.0 * atan (segment->bulge);
  const double start_rad = atan2 (segment->start.v - centre.v, segment->start.u - centre.u);
  double from_start_rad = atan2 (p.v - centre.v, p.u - centre.u) - start_rad;

  if (sweep_rad < 0.0)
    from_start_rad = -from_start_rad;
  from_start_rad = fmod (from_start_rad + 4.0 * G_PI, 2.0 * G_PI);
  if (from_start_rad <= fabs (sweep_rad))
    return fabs (hut_point_distance_mm (p, centre) - radius_mm);
  return MIN (hut_point_distance_mm (p, segment->start), hut_point_distance_mm (p, segment->end));
}

static double
path_distance_mm (HutPoint p,
                  const HutPath *path)
{
  double distance_mm = G_MAXDOUBLE;

  for (guint i = 0; i < hut_path_get_count (path); i++)
    {
      const HutSegment segment = hut_path_get_segment (path, i);

      distance_mm = MIN (distance_mm, segment_distance_mm (p, &segment));
    }
  return distance_mm;
}

/* A point that lies inside the outline and outside each hole, 2 mm from both. */
static void
assert_in_material (const HutPart *part,
                    HutPoint p,
                    guint64 seed)
{
  double edge_mm = path_distance_mm (p, part->region->outer);
  gboolean inside = hut_path_contains (part->region->outer, p);

  for (guint i = 0; i < part->region->holes->len; i++)
    {
      const HutPath *hole = g_ptr_array_index (part->region->holes, i);

      edge_mm = MIN (edge_mm, path_distance_mm (p, hole));
      inside = inside && !hut_path_contains (hole, p);
    }
  if (!inside || edge_mm < HUT_LABEL_EDGE_MM - ROUNDING_MM)
    fail_msg ("seed %" G_GUINT64_FORMAT ", part %s: label at %g,%g is %s, %g mm from the edge",
              seed, part->id, p.u, p.v, inside ? "inside" : "outside", edge_mm);
}

static void
assert_label_in_material (const HutPart *part,
                          const HutLabel *label,
                          guint64 seed)
{
  assert_true (label->height_mm >= HUT_LABEL_HEIGHT_MIN_MM);
  for (guint i = 0; i < label->strokes->len; i++)
    {
      const GArray *stroke = g_ptr_array_index (label->strokes, i);

      assert_true (stroke->len >= 2);
      for (guint k = 1; k < stroke->len; k++)
        {
          const HutPoint a = g_array_index (stroke, HutPoint, k - 1);
          const HutPoint b = g_array_index (stroke, HutPoint, k);
          const guint count = 1 + (guint) (hut_point_distance_mm (a, b) / SAMPLE_MM);

          for (guint n = 0; n <= count; n++)
            assert_in_material (part,
                                (HutPoint) { a.u + (b.u - a.u) * n / count,
                                             a.v + (b.v - a.v) * n / count },
                                seed);
        }
    }
}

/* ---- by hand --------------------------------------------------------------------------------- */

/* By hand: "T-1 ^" at 10 mm has 4 steps of 10 mm before the arrow, which is 4/6 * 10 mm wide; the T
 * begins at the left of its box. The text stands in a box of one step more, its right end free. */
static void
label_of_a_roomy_part_has_10_mm_letters_about_its_middle (void **state)
{
  const HutPart *part = hut_hand_parts_add_rect (*state, "T-1", 200, 100);
  g_autoptr(HutLabel) label = hut_label_new (part);

  assert_non_null (label);
  const HutRect bounds = label_bounds (label);

  assert_near_mm (label->height_mm, 10.0, 0.0);
  assert_near_mm (bounds.u1 - bounds.u0, 40.0 + 20.0 / 3.0, 1e-9);
  assert_near_mm (bounds.v1 - bounds.v0, 10.0, 1e-9);
  assert_near_mm ((bounds.u0 + bounds.u1) / 2.0, 100.0, 1e-9);
  assert_near_mm ((bounds.v0 + bounds.v1) / 2.0, 50.0, 1e-9);
  assert_label_in_material (part, label, 0);
}

/* The arrow is scored last: shaft upwards, then its head with the point in the middle on top. */
static void
assert_arrow_points_up (const HutLabel *label)
{
  assert_true (label->strokes->len >= 2);

  const GArray *shaft = g_ptr_array_index (label->strokes, label->strokes->len - 2);
  const GArray *head = g_ptr_array_index (label->strokes, label->strokes->len - 1);
  const HutPoint foot = g_array_index (shaft, HutPoint, 0);
  const HutPoint tip = g_array_index (shaft, HutPoint, 1);

  assert_near_mm (tip.u, foot.u, 1e-9);
  assert_near_mm (tip.v - foot.v, label->height_mm, 1e-9);
  assert_int_equal (head->len, 3);
  assert_near_mm (g_array_index (head, HutPoint, 1).u, tip.u, 1e-9);
  assert_near_mm (g_array_index (head, HutPoint, 1).v, tip.v, 1e-9);
  assert_true (g_array_index (head, HutPoint, 0).v < tip.v);
  assert_true (g_array_index (head, HutPoint, 2).v < tip.v);
}

static void
label_of_a_slim_upright_part_runs_upwards_and_its_arrow_points_up (void **state)
{
  const HutPart *part = hut_hand_parts_add_rect (*state, "strap-2", 14, 200);
  g_autoptr(HutLabel) label = hut_label_new (part);

  assert_non_null (label);
  const HutRect bounds = label_bounds (label);

  assert_true (bounds.v1 - bounds.v0 > bounds.u1 - bounds.u0);
  assert_arrow_points_up (label);
  assert_label_in_material (part, label, 0);
}

static void
arrow_of_a_level_label_points_up (void **state)
{
  g_autoptr(HutLabel) label = hut_label_new (hut_hand_parts_add_rect (*state, "A", 200, 100));

  assert_non_null (label);
  assert_arrow_points_up (label);
}

/* Letters of 5 mm and 2 mm on both sides make 9 mm. */
static void
strip_of_9_2_mm_has_a_label_and_one_of_8_9_mm_has_none (void **state)
{
  g_autoptr(HutLabel) wide = hut_label_new (hut_hand_parts_add_rect (*state, "A", 100, 9.2));
  g_autoptr(HutLabel) slim = hut_label_new (hut_hand_parts_add_rect (*state, "B", 100, 8.9));

  assert_non_null (wide);
  assert_near_mm (wide->height_mm, 5.0, 0.0);
  assert_null (slim);
}

static void
label_of_a_frame_is_on_a_leg (void **state)
{
  HutPart *part = hut_hand_parts_add_rect (*state, "frame-1", 200, 160);

  hut_region_take_hole (part->region,
                        hut_path_new_rect ((HutRect) { 16, 16, 184, 144 }, 20.0));

  g_autoptr(HutLabel) label = hut_label_new (part);

  assert_non_null (label);
  assert_label_in_material (part, label, 0);
}

static void
label_keeps_clear_of_a_round_hole_in_the_middle (void **state)
{
  HutPart *part = hut_hand_parts_add_rect (*state, "vent", 120, 120);

  hut_region_take_hole (part->region, hut_path_new_circle ((HutPoint) { 60, 60 }, 40.0));

  g_autoptr(HutLabel) label = hut_label_new (part);

  assert_non_null (label);
  assert_label_in_material (part, label, 0);
}

/* The lower edge is an arc that rises by 10.03 mm in the middle of a plate 19.008 mm high; the name is
 * as wide as the plate. 5 mm letters and 2 mm on both sides would stand from 10.004 to 19.004 mm: the
 * arc is in their way by 0.026 mm, its chords of 0.1 rad are not. */
static void
arc_between_its_chords_keeps_a_label_away (void **state)
{
  HutPath *plate = hut_path_new ();
  const double width_mm = 64.3, rise_mm = 10.03;

  hut_path_append (plate, (HutPoint) { 0, 0 }, -rise_mm / (width_mm / 2.0), HUT_EDGE_PLAIN);
  hut_path_append (plate, (HutPoint) { width_mm, 0 }, 0, HUT_EDGE_PLAIN);
  hut_path_append (plate, (HutPoint) { width_mm, 19.008 }, 0, HUT_EDGE_PLAIN);
  hut_path_append (plate, (HutPoint) { 0, 19.008 }, 0, HUT_EDGE_PLAIN);
  assert_null (hut_label_new (hut_hand_parts_take (*state, "LLLLLLLLLL", plate)));
}

/* By hand: the arrow alone, at 6 mm: 6 + 2 * hypot (2, 2); here at 10 mm with a blank name. */
static void
length_of_a_label_without_name_is_that_of_its_arrow (void **state)
{
  g_autoptr(HutLabel) label = hut_label_new (hut_hand_parts_add_rect (*state, "", 100, 100));

  assert_non_null (label);
  assert_near_mm (hut_label_length_mm (label), (6.0 + 2.0 * hypot (2, 2)) * 10.0 / 6.0, 1e-9);
}

/* ---- random designs -------------------------------------------------------------------------- */

static void
labels_of_random_parts_lie_in_the_material (void **state)
{
  guint labelled = 0, total = 0;

  for (guint64 seed = 1; seed <= RANDOM_DESIGNS; seed++)
    {
      g_autoptr(HutDesign) design = hut_random_design (seed);
      g_autoptr(HutAssembly) assembly = hut_assembly_new (design);
      g_autoptr(HutPartSet) parts = hut_part_set_new (assembly);

      for (guint i = 0; i < parts->parts->len; i++)
        {
          const HutPart *part = g_ptr_array_index (parts->parts, i);
          g_autoptr(HutLabel) label = hut_label_new (part);

          total++;
          if (label == NULL)
            continue;
          labelled++;
          assert_label_in_material (part, label, seed);
        }
    }
  /* Most parts are panels with room for a name. */
  if (labelled * 2 < total)
    fail_msg ("only %u of %u parts have a label", labelled, total);
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test_setup_teardown (label_of_a_roomy_part_has_10_mm_letters_about_its_middle,
                                     hut_hand_parts_set_up, hut_hand_parts_tear_down),
    cmocka_unit_test_setup_teardown (
        label_of_a_slim_upright_part_runs_upwards_and_its_arrow_points_up,
        hut_hand_parts_set_up, hut_hand_parts_tear_down),
    cmocka_unit_test_setup_teardown (arrow_of_a_level_label_points_up,
                                     hut_hand_parts_set_up, hut_hand_parts_tear_down),
    cmocka_unit_test_setup_teardown (strip_of_9_2_mm_has_a_label_and_one_of_8_9_mm_has_none,
                                     hut_hand_parts_set_up, hut_hand_parts_tear_down),
    cmocka_unit_test_setup_teardown (label_of_a_frame_is_on_a_leg,
                                     hut_hand_parts_set_up, hut_hand_parts_tear_down),
    cmocka_unit_test_setup_teardown (label_keeps_clear_of_a_round_hole_in_the_middle,
                                     hut_hand_parts_set_up, hut_hand_parts_tear_down),
    cmocka_unit_test_setup_teardown (arc_between_its_chords_keeps_a_label_away,
                                     hut_hand_parts_set_up, hut_hand_parts_tear_down),
    cmocka_unit_test_setup_teardown (length_of_a_label_without_name_is_that_of_its_arrow,
                                     hut_hand_parts_set_up, hut_hand_parts_tear_down),
    cmocka_unit_test (labels_of_random_parts_lie_in_the_material),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}

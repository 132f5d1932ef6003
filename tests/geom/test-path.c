/* tests/geom/test-path.c: closed paths of lines and arcs.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "config.h"
#include "geom/hut-flatten.h"
#include "geom/hut-path.h"
#include "hut-assert.h"
#include "hut-random-shape.h"

#define QUARTER 0.41421356237309503

/* Outline of 100 x 60 with radius 10, from (10, 10). Its length is 2 * 80 + 2 * 40 + 2 pi * 10
 * = 302.8319 mm. Source: reference value that two independent DXF readers gave for it. */
static HutPath *
new_demo (void)
{
  return hut_path_new_rect ((HutRect) { 10, 10, 110, 70 }, 10);
}

static HutPath *
new_polygon (const HutPoint *corners,
             guint count)
{
  HutPath *path = hut_path_new ();

  for (guint i = 0; i < count; i++)
    hut_path_append (path, corners[i], 0, HUT_EDGE_PLAIN);
  return path;
}

static void
assert_vertex (const HutPath *path,
               guint index,
               double u_mm,
               double v_mm,
               double bulge)
{
  const HutVertex *vertex = hut_path_get (path, index);

  if (vertex->p.u != u_mm || vertex->p.v != v_mm || vertex->bulge != bulge)
    fail_msg ("corner %u is (%.17g, %.17g) bulge %.17g, must be (%g, %g) bulge %g", index,
              vertex->p.u, vertex->p.v, vertex->bulge, u_mm, v_mm, bulge);
}

static void
rounded_rectangle_is_4_lines_and_4_arcs_of_the_known_length (void **state)
{
  g_autoptr(HutPath) path = new_demo ();

  assert_int_equal (hut_path_get_count (path), 8);
  assert_vertex (path, 0, 20, 10, 0);
  assert_vertex (path, 1, 100, 10, QUARTER);
  assert_vertex (path, 2, 110, 20, 0);
  assert_vertex (path, 3, 110, 60, QUARTER);
  assert_vertex (path, 4, 100, 70, 0);
  assert_vertex (path, 5, 20, 70, QUARTER);
  assert_vertex (path, 6, 10, 60, 0);
  assert_vertex (path, 7, 10, 20, QUARTER);
  assert_near_mm (hut_path_length_mm (path), 302.8318530717959, 1e-12);
  assert_near (hut_path_area_mm2 (path), 100 * 60 - (4 - G_PI) * 100, 1e-10);
}

static void
rectangle_without_radius_has_4_corners (void **state)
{
  g_autoptr(HutPath) path = hut_path_new_rect ((HutRect) { 1, 2, 4, 6 }, 0);
  g_autoptr(HutPath) negative = hut_path_new_rect ((HutRect) { 1, 2, 4, 6 }, -3);

  assert_int_equal (hut_path_get_count (path), 4);
  assert_int_equal (hut_path_get_count (negative), 4);
  assert_vertex (path, 0, 1, 2, 0);
  assert_vertex (path, 2, 4, 6, 0);
  assert_near (hut_path_area_mm2 (path), 12, 0);
  assert_near_mm (hut_path_length_mm (path), 14, 0);
}

static void
slot_has_2_lines_and_no_edge_without_length (void **state)
{
  /* Radius 100 is cut down to half of the height 10. */
  g_autoptr(HutPath) lying = hut_path_new_rect ((HutRect) { 0, 0, 40, 10 }, 100);
  g_autoptr(HutPath) standing = hut_path_new_rect ((HutRect) { 0, 0, 10, 40 }, 5);
  g_autoptr(HutPath) round = hut_path_new_rect ((HutRect) { 0, 0, 10, 10 }, 5);

  assert_int_equal (hut_path_get_count (lying), 6);
  assert_int_equal (hut_path_get_count (standing), 6);
  assert_int_equal (hut_path_get_count (round), 4);
  assert_near (hut_path_area_mm2 (lying), 30 * 10 + 25 * G_PI, 1e-11);
  assert_near (hut_path_area_mm2 (standing), 30 * 10 + 25 * G_PI, 1e-11);
  assert_near (hut_path_area_mm2 (round), 25 * G_PI, 1e-12);
  for (guint i = 0; i < 6; i++)
    {
      const HutSegment segment = hut_path_get_segment (lying, i);

      assert_true (hut_segment_length_mm (&segment) > 1);
    }
}

static void
shapes_from_grid_numbers_lie_on_the_grid (void **state)
{
  g_autoptr(HutPath) rect = hut_path_new_rect ((HutRect) { 0.1, 0.7, 8.3, 9.1 }, 0.2);
  g_autoptr(HutPath) circle = hut_path_new_circle ((HutPoint) { 0.1, 0.7 }, 0.2);

  assert_true (hut_path_get (rect, 0)->p.u == 0.3); /* 0.1 + 0.2 is not, without cleaning */
  for (guint i = 0; i < hut_path_get_count (rect); i++)
    assert_true (hut_snap_mm (hut_path_get (rect, i)->p.u) == hut_path_get (rect, i)->p.u);
  assert_true (hut_path_get (circle, 0)->p.u == 0.3);
}

static void
circle_is_2_half_arcs (void **state)
{
  g_autoptr(HutPath) path = hut_path_new_circle ((HutPoint) { 60, 40 }, 15);
  const HutRect bounds = hut_path_bounds (path);

  assert_int_equal (hut_path_get_count (path), 2);
  assert_vertex (path, 0, 75, 40, 1);
  assert_vertex (path, 1, 45, 40, 1);
  assert_near (hut_path_area_mm2 (path), 225 * G_PI, 1e-11);
  assert_near_mm (hut_path_length_mm (path), 30 * G_PI, 1e-12);
  assert_near_mm (bounds.u0, 45, 1e-12);
  assert_near_mm (bounds.v0, 25, 1e-12);
  assert_near_mm (bounds.u1, 75, 1e-12);
  assert_near_mm (bounds.v1, 55, 1e-12);
}

static void
what_is_no_shape_has_no_corners (void **state)
{
  static const struct
  {
    HutRect rect;
    double radius_mm;
  } rects[] = {
    { { 0, 0, 0, 5 }, 0 },        { { 0, 0, 5, 0 }, 1 },          { { 5, 0, 0, 5 }, 0 },
    { { 0, 0, NAN, 5 }, 0 },      { { 0, 0, INFINITY, 5 }, 0 },   { { 0, 0, 5, 5 }, NAN },
    { { 0, 0, 0.0004, 5 }, 0 },
  };
  static const double radii_mm[] = { 0, -1, NAN, INFINITY, 0.0004 };

  for (guint i = 0; i < G_N_ELEMENTS (rects); i++)
    {
      g_autoptr(HutPath) path = hut_path_new_rect (rects[i].rect, rects[i].radius_mm);

      if (hut_path_get_count (path) != 0)
        fail_msg ("rectangle %u has corners", i);
    }
  for (guint i = 0; i < G_N_ELEMENTS (radii_mm); i++)
    {
      g_autoptr(HutPath) path = hut_path_new_circle ((HutPoint) { 1, 1 }, radii_mm[i]);
      g_autoptr(HutPath) nowhere = hut_path_new_circle ((HutPoint) { NAN, 1 }, 1);

      assert_int_equal (hut_path_get_count (path), 0);
      assert_int_equal (hut_path_get_count (nowhere), 0);
    }
}

static void
path_without_corners_measures_nothing (void **state)
{
  g_autoptr(HutPath) path = hut_path_new ();
  g_autoptr(HutPath) copy = hut_path_copy (path);
  const HutRect bounds = hut_path_bounds (path);

  hut_path_simplify (path);
  hut_path_reverse (path);
  assert_int_equal (hut_path_get_count (copy), 0);
  assert_near (hut_path_area_mm2 (path), 0, 0);
  assert_near_mm (hut_path_length_mm (path), 0, 0);
  assert_true (bounds.u1 < bounds.u0);
  assert_false (hut_path_contains (path, (HutPoint) { 0, 0 }));
  assert_true (hut_path_is_finite (path));
  hut_path_free (NULL);
}

static void
copy_does_not_share_with_the_original (void **state)
{
  g_autoptr(HutPath) path = new_demo ();
  g_autoptr(HutPath) copy = hut_path_copy (path);

  hut_path_append (path, (HutPoint) { 0, 0 }, 0, HUT_EDGE_PLAIN);
  assert_int_equal (hut_path_get_count (copy), 8);
  assert_vertex (copy, 7, 10, 20, QUARTER);
}

static void
last_segment_closes_the_path (void **state)
{
  g_autoptr(HutPath) path = hut_path_new_rect ((HutRect) { 1, 2, 4, 6 }, 0);
  const HutSegment last = hut_path_get_segment (path, 3);

  assert_near_mm (last.start.v, 6, 0);
  assert_near_mm (last.end.u, 1, 0);
  assert_near_mm (last.end.v, 2, 0);
}

static void
reversing_turns_area_and_arcs_and_keeps_kinds_on_their_edges (void **state)
{
  g_autoptr(HutPath) path = hut_path_new ();

  /* A half disc on a mating diameter. */
  hut_path_append (path, (HutPoint) { 0, 0 }, 0, HUT_EDGE_MATING);
  hut_path_append (path, (HutPoint) { 10, 0 }, 1, HUT_EDGE_PLAIN);
  assert_near (hut_path_area_mm2 (path), 12.5 * G_PI, 1e-12);

  hut_path_reverse (path);
  assert_near (hut_path_area_mm2 (path), -12.5 * G_PI, 1e-12);
  assert_near_mm (hut_path_length_mm (path), 10 + 5 * G_PI, 1e-12);
  for (guint i = 0; i < 2; i++)
    {
      const HutSegment segment = hut_path_get_segment (path, i);

      if (segment.kind == HUT_EDGE_MATING)
        {
          assert_near (segment.bulge, 0, 0);
          assert_false (signbit (segment.bulge));
          assert_near_mm (segment.start.u, 10, 0);
        }
      else
        {
          assert_near (segment.bulge, -1, 0);
          assert_near_mm (segment.start.u, 0, 0);
        }
    }
}

static void
reversing_twice_is_the_same_outline (void **state)
{
  g_autoptr(HutPath) path = new_demo ();
  g_autoptr(HutPath) twice = hut_path_copy (path);

  hut_path_reverse (twice);
  hut_path_reverse (twice);
  for (guint i = 0; i < 8; i++)
    {
      const HutVertex *vertex = hut_path_get (path, i);

      assert_vertex (twice, i, vertex->p.u, vertex->p.v, vertex->bulge);
    }
}

static void
area_far_from_the_origin_keeps_its_digits (void **state)
{
  /* At 1 km a double still holds 1e-10 mm, but the product of two coordinates only 1e-4 mm2. */
  g_autoptr(HutPath) near = hut_path_new_rect ((HutRect) { 0, 0, 2, 3 }, 0);
  const HutPlacement far = { .turn_rad = 0.3, .shift = { 1e6, 1e6 } };
  g_autoptr(HutPath) path = hut_path_dup_placed (near, &far);

  assert_near (hut_path_area_mm2 (path), 6, 2e-9);
}

static void
containing_is_exact_with_arcs (void **state)
{
  g_autoptr(HutPath) path = new_demo ();
  const double diagonal_mm = 10 * M_SQRT1_2; /* the arc's middle from its centre (100, 60) */
  static const struct
  {
    HutPoint p;
    HutPathSide side;
  } cases[] = {
    { { 60, 40 }, HUT_PATH_SIDE_INSIDE },
    { { 9, 40 }, HUT_PATH_SIDE_OUTSIDE },
    { { 111, 40 }, HUT_PATH_SIDE_OUTSIDE },
    { { 10, 40 }, HUT_PATH_SIDE_BORDER },
    { { 20, 10 }, HUT_PATH_SIDE_BORDER }, /* where line and arc join */
    { { 10.1, 10.1 }, HUT_PATH_SIDE_OUTSIDE }, /* cut off by the corner's arc */
    { { 60, 20 }, HUT_PATH_SIDE_INSIDE }, /* level with corners */
    { { 0, 20 }, HUT_PATH_SIDE_OUTSIDE },
    { { 0, 10 }, HUT_PATH_SIDE_OUTSIDE }, /* level with the lower edge */
    { { 0, 70 }, HUT_PATH_SIDE_OUTSIDE },
    { { 105, 65 }, HUT_PATH_SIDE_INSIDE }, /* on the chord of an arc */
  };

  for (guint i = 0; i < G_N_ELEMENTS (cases); i++)
    {
      if (hut_path_locate (path, cases[i].p) != cases[i].side)
        fail_msg ("(%g, %g) is on the wrong side", cases[i].p.u, cases[i].p.v);
    }
  /* A hundredth of a micrometre matters beyond the border's width. */
  assert_true (hut_path_contains (path, (HutPoint) { 100 + diagonal_mm, 60 + diagonal_mm }));
  assert_true (hut_path_locate (path, (HutPoint) { 100 + diagonal_mm + 1e-5, 60 + diagonal_mm })
               == HUT_PATH_SIDE_OUTSIDE);
  assert_true (hut_path_locate (path, (HutPoint) { 100 + diagonal_mm - 1e-5, 60 + diagonal_mm })
               == HUT_PATH_SIDE_INSIDE);
}

static void
point_on_the_chord_is_inside_whatever_lies_behind_it (void **state)
{
  /* A half disc of radius 3 below a rectangle 6 x 5, and one beside it: their common line is no
   * border. The ray from (0, 0) is level with corners. */
  g_autoptr(HutPath) below = hut_path_new ();
  g_autoptr(HutPath) beside = hut_path_new ();
  const HutPlacement turned = { .turn_rad = G_PI };

  hut_path_append (below, (HutPoint) { -3, 0 }, 1, HUT_EDGE_PLAIN);
  hut_path_append (below, (HutPoint) { 3, 0 }, 0, HUT_EDGE_PLAIN);
  hut_path_append (below, (HutPoint) { 3, 5 }, 0, HUT_EDGE_PLAIN);
  hut_path_append (below, (HutPoint) { -3, 5 }, 0, HUT_EDGE_PLAIN);
  hut_path_append (beside, (HutPoint) { 0, -3 }, 1, HUT_EDGE_PLAIN);
  hut_path_append (beside, (HutPoint) { 0, 3 }, 0, HUT_EDGE_PLAIN);
  hut_path_append (beside, (HutPoint) { -5, 3 }, 0, HUT_EDGE_PLAIN);
  hut_path_append (beside, (HutPoint) { -5, -3 }, 0, HUT_EDGE_PLAIN);

  g_autoptr(HutPath) above = hut_path_dup_placed (below, &turned);
  g_autoptr(HutPath) other_side = hut_path_dup_placed (beside, &turned);

  assert_true (hut_path_contains (below, (HutPoint) { 0, 0 }));
  assert_true (hut_path_contains (below, (HutPoint) { -2, 0 }));
  assert_true (hut_path_contains (above, (HutPoint) { 0, 0 }));
  assert_true (hut_path_contains (beside, (HutPoint) { 0, 0 }));
  assert_true (hut_path_contains (other_side, (HutPoint) { 0, 0 }));
}

static void
arc_of_more_than_a_half_circle_contains_what_lies_behind_its_chord (void **state)
{
  /* Three quarters of a disc of radius 10 round (0, 0), from 0 to 270 degrees, closed by its
   * chord. */
  g_autoptr(HutPath) path = hut_path_new ();

  hut_path_append (path, (HutPoint) { 10, 0 }, 2.414213562373095, HUT_EDGE_PLAIN);
  hut_path_append (path, (HutPoint) { 0, -10 }, 0, HUT_EDGE_PLAIN);
  assert_near (hut_path_area_mm2 (path), 75 * G_PI + 50, 1e-11);
  assert_true (hut_path_locate (path, (HutPoint) { 0, 0 }) == HUT_PATH_SIDE_INSIDE);
  assert_true (hut_path_locate (path, (HutPoint) { -9.9, 0 }) == HUT_PATH_SIDE_INSIDE);
  assert_true (hut_path_locate (path, (HutPoint) { 4, -4 }) == HUT_PATH_SIDE_INSIDE);
  assert_true (hut_path_locate (path, (HutPoint) { 6, -6 }) == HUT_PATH_SIDE_OUTSIDE);
}

/* Even-odd test over the flattened path: another route, wrong within the chord error of the
 * border. */
static gboolean
flat_contains (const GArray *points,
               HutPoint p)
{
  gboolean inside = FALSE;

  for (guint i = 0, j = points->len - 1; i < points->len; j = i++)
    {
      const HutPoint a = g_array_index (points, HutPoint, i);
      const HutPoint b = g_array_index (points, HutPoint, j);

      if ((a.v > p.v) != (b.v > p.v) && p.u < a.u + (p.v - a.v) / (b.v - a.v) * (b.u - a.u))
        inside = !inside;
    }
  return inside;
}

static void
containing_agrees_with_the_flattened_path_on_random_outlines (void **state)
{
  guint checked = 0;

  for (guint64 seed = 0; seed < 300; seed++)
    {
      HutRandom random;

      hut_random_init (&random, seed);

      g_autoptr(HutRegion) region = hut_random_plate (&random);
      g_autoptr(HutRegion) placed = hut_random_placed (&random, region);
      const HutPath *path = placed->holes->len > 0 ? g_ptr_array_index (placed->holes, 0)
                                                   : placed->outer;
      g_autoptr(GArray) points = hut_path_dup_flat (path, NULL);
      const HutRect bounds = hut_path_bounds (path);

      for (guint i = 0; i < 200; i++)
        {
          const HutPoint p = { hut_random_between (&random, bounds.u0 - 1, bounds.u1 + 1),
                               hut_random_between (&random, bounds.v0 - 1, bounds.v1 + 1) };
          double off_mm = INFINITY;

          for (guint j = 0; j < hut_path_get_count (path); j++)
            {
              const HutSegment segment = hut_path_get_segment (path, j);

              off_mm = fmin (off_mm, hut_point_distance_mm (hut_segment_nearest (&segment, p), p));
            }
          if (off_mm < 2 * HUT_CHORD_MM)
            continue;
          checked++;
          if (hut_path_contains (path, p) != flat_contains (points, p))
            fail_msg ("seed %" G_GUINT64_FORMAT ": (%.9g, %.9g)", seed, p.u, p.v);
        }
    }
  assert_true (checked > 50000);
}

static void
simplifying_drops_what_changes_nothing (void **state)
{
  g_autoptr(HutPath) path = hut_path_new ();

  hut_path_append (path, (HutPoint) { 5, 0 }, 0, HUT_EDGE_PLAIN);  /* on the first side */
  hut_path_append (path, (HutPoint) { 10, 0 }, 0, HUT_EDGE_PLAIN);
  hut_path_append (path, (HutPoint) { 10, 0 }, 0, HUT_EDGE_PLAIN); /* doubled */
  hut_path_append (path, (HutPoint) { 10, 4 }, 0, HUT_EDGE_PLAIN); /* on the second side */
  hut_path_append (path, (HutPoint) { 10, 8 }, 0, HUT_EDGE_PLAIN); /* as well */
  hut_path_append (path, (HutPoint) { 10, 10 }, 0, HUT_EDGE_PLAIN);
  hut_path_append (path, (HutPoint) { 0, 10 }, 0, HUT_EDGE_PLAIN);
  hut_path_append (path, (HutPoint) { 0, 0 }, 0, HUT_EDGE_PLAIN);
  hut_path_append (path, (HutPoint) { 0, 0 }, 0, HUT_EDGE_PLAIN);
  hut_path_append (path, (HutPoint) { 0, 0 }, 0, HUT_EDGE_PLAIN);
  hut_path_simplify (path);
  assert_int_equal (hut_path_get_count (path), 4);
  assert_near (hut_path_area_mm2 (path), 100, 0);
}

static void
simplifying_keeps_a_corner_that_is_doubled_over_the_seam (void **state)
{
  g_autoptr(HutPath) path = hut_path_new ();

  hut_path_append (path, (HutPoint) { 0, 0 }, 0, HUT_EDGE_PLAIN);
  hut_path_append (path, (HutPoint) { 6, 0 }, 0, HUT_EDGE_PLAIN);
  hut_path_append (path, (HutPoint) { 0, 6 }, 0, HUT_EDGE_PLAIN);
  hut_path_append (path, (HutPoint) { 0, 0 }, 0, HUT_EDGE_PLAIN);
  hut_path_simplify (path);
  assert_int_equal (hut_path_get_count (path), 3);
  assert_near (hut_path_area_mm2 (path), 18, 0);
}

static void
simplifying_keeps_changes_of_kind_arcs_and_spikes (void **state)
{
  g_autoptr(HutPath) kinds = hut_path_new_rect ((HutRect) { 0, 0, 10, 10 }, 0);
  g_autoptr(HutPath) arcs = hut_path_new_circle ((HutPoint) { 0, 0 }, 5);
  g_autoptr(HutPath) spike = hut_path_new_rect ((HutRect) { 0, 0, 10, 10 }, 0);

  hut_path_append (kinds, (HutPoint) { 0, 5 }, 0, HUT_EDGE_MATING);
  hut_path_simplify (kinds);
  assert_int_equal (hut_path_get_count (kinds), 5);

  hut_path_simplify (arcs);
  assert_int_equal (hut_path_get_count (arcs), 2);

  hut_path_append (spike, (HutPoint) { 0, -5 }, 0, HUT_EDGE_PLAIN); /* beyond the corner and back */
  hut_path_simplify (spike);
  assert_int_equal (hut_path_get_count (spike), 5);
}

static void
points_beside_a_line_stay (void **state)
{
  static const HutPoint corners[] = { { 0, 0 }, { 5, -0.001 }, { 10, 0 }, { 5, 9 } };
  g_autoptr(HutPath) path = new_polygon (corners, G_N_ELEMENTS (corners));

  hut_path_simplify (path);
  assert_int_equal (hut_path_get_count (path), 4);
}

static void
path_of_one_point_simplifies_to_nothing (void **state)
{
  static const HutPoint corners[] = { { 3, 3 }, { 3, 3 }, { 3, 3 } };
  g_autoptr(HutPath) path = new_polygon (corners, G_N_ELEMENTS (corners));

  hut_path_simplify (path);
  assert_int_equal (hut_path_get_count (path), 0);
}

static void
infinite_and_undefined_numbers_are_seen (void **state)
{
  g_autoptr(HutPath) path = new_demo ();
  g_autoptr(HutPath) bulge = hut_path_copy (path);

  assert_true (hut_path_is_finite (path));
  hut_path_append (path, (HutPoint) { 0, NAN }, 0, HUT_EDGE_PLAIN);
  hut_path_append (bulge, (HutPoint) { 0, 0 }, INFINITY, HUT_EDGE_PLAIN);
  assert_false (hut_path_is_finite (path));
  assert_false (hut_path_is_finite (bulge));
}

static void
right_angles_are_exact (void **state)
{
  static const double turns_rad[] = { -5 * G_PI_2, -G_PI,    -G_PI_2,         0, G_PI_2, G_PI,
                                      3 * G_PI_2,  2 * G_PI, 450 * G_PI / 180 };
  static const HutPoint must_be[] = { { 7.1, -3.3 }, { -3.3, -7.1 }, { 7.1, -3.3 },
                                      { 3.3, 7.1 },  { -7.1, 3.3 },  { -3.3, -7.1 },
                                      { 7.1, -3.3 }, { 3.3, 7.1 },   { -7.1, 3.3 } };

  for (guint i = 0; i < G_N_ELEMENTS (turns_rad); i++)
    {
      const HutPlacement placement = { .turn_rad = turns_rad[i] };
      const HutPoint is = hut_placement_apply (&placement, (HutPoint) { 3.3, 7.1 });

      if (is.u != must_be[i].u || is.v != must_be[i].v)
        fail_msg ("turn %u gives (%.17g, %.17g)", i, is.u, is.v);
    }
}

static void
placing_gives_no_negative_zero (void **state)
{
  const HutPlacement placement = { .shift = { -0.0, -0.0 } };
  const HutPoint first = hut_placement_apply (&placement, (HutPoint) { -0.0, 0.0 });
  const HutPoint second = hut_placement_apply (&placement, (HutPoint) { -0.0, -0.0 });

  assert_false (signbit (first.u));
  assert_false (signbit (second.v));
}

static void
placing_mirrors_then_turns_then_shifts (void **state)
{
  const HutPlacement quarter = { .mirrored = TRUE, .turn_rad = G_PI_2, .shift = { 100, 200 } };
  const HutPlacement sixth = { .turn_rad = G_PI / 6, .shift = { 1, 1 } };
  const HutPoint a = hut_placement_apply (&quarter, (HutPoint) { 3, 7 }); /* (-3, 7), (-7, -3) */
  const HutPoint b = hut_placement_apply (&sixth, (HutPoint) { 2, 0 });

  assert_near_mm (a.u, 93, 0);
  assert_near_mm (a.v, 197, 0);
  assert_near_mm (b.u, 1 + sqrt (3), 1e-15);
  assert_near_mm (b.v, 2, 1e-15);
}

static void
mirrored_path_keeps_orientation_area_and_kinds (void **state)
{
  g_autoptr(HutPath) path = hut_path_new ();
  const HutPlacement mirror = { .mirrored = TRUE, .shift = { 10, 0 } };

  /* A half disc that hangs below its mating diameter from (0, 0) to (4, 0). */
  hut_path_append (path, (HutPoint) { 0, 0 }, 1, HUT_EDGE_PLAIN);
  hut_path_append (path, (HutPoint) { 4, 0 }, 0, HUT_EDGE_MATING);

  g_autoptr(HutPath) placed = hut_path_dup_placed (path, &mirror);
  const HutRect bounds = hut_path_bounds (placed);

  assert_near (hut_path_area_mm2 (placed), 2 * G_PI, 1e-14);
  assert_near_mm (bounds.u0, 6, 0);
  assert_near_mm (bounds.u1, 10, 0);
  assert_near_mm (bounds.v0, -2, 1e-15);
  assert_near_mm (bounds.v1, 0, 0);
  for (guint i = 0; i < 2; i++)
    {
      const HutSegment segment = hut_path_get_segment (placed, i);

      assert_true ((segment.kind == HUT_EDGE_MATING) == (segment.bulge == 0));
    }
}

static void
placing_keeps_area_and_length_on_random_outlines (void **state)
{
  for (guint64 seed = 0; seed < 500; seed++)
    {
      HutRandom random;

      hut_random_init (&random, seed);

      g_autoptr(HutRegion) region = hut_random_fingers (&random, TRUE);
      g_autoptr(HutRegion) placed = hut_random_placed (&random, region);
      const double area_mm2 = hut_path_area_mm2 (region->outer);
      const double length_mm = hut_path_length_mm (region->outer);

      if (fabs (hut_path_area_mm2 (placed->outer) / area_mm2 - 1) > 1e-12
          || fabs (hut_path_length_mm (placed->outer) / length_mm - 1) > 1e-12)
        fail_msg ("seed %" G_GUINT64_FORMAT, seed);
    }
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (rounded_rectangle_is_4_lines_and_4_arcs_of_the_known_length),
    cmocka_unit_test (rectangle_without_radius_has_4_corners),
    cmocka_unit_test (slot_has_2_lines_and_no_edge_without_length),
    cmocka_unit_test (shapes_from_grid_numbers_lie_on_the_grid),
    cmocka_unit_test (circle_is_2_half_arcs),
    cmocka_unit_test (what_is_no_shape_has_no_corners),
    cmocka_unit_test (path_without_corners_measures_nothing),
    cmocka_unit_test (copy_does_not_share_with_the_original),
    cmocka_unit_test (last_segment_closes_the_path),
    cmocka_unit_test (reversing_turns_area_and_arcs_and_keeps_kinds_on_their_edges),
    cmocka_unit_test (reversing_twice_is_the_same_outline),
    cmocka_unit_test (area_far_from_the_origin_keeps_its_digits),
    cmocka_unit_test (containing_is_exact_with_arcs),
    cmocka_unit_test (point_on_the_chord_is_inside_whatever_lies_behind_it),
    cmocka_unit_test (arc_of_more_than_a_half_circle_contains_what_lies_behind_its_chord),
    cmocka_unit_test (containing_agrees_with_the_flattened_path_on_random_outlines),
    cmocka_unit_test (simplifying_drops_what_changes_nothing),
    cmocka_unit_test (simplifying_keeps_a_corner_that_is_doubled_over_the_seam),
    cmocka_unit_test (simplifying_keeps_changes_of_kind_arcs_and_spikes),
    cmocka_unit_test (points_beside_a_line_stay),
    cmocka_unit_test (path_of_one_point_simplifies_to_nothing),
    cmocka_unit_test (infinite_and_undefined_numbers_are_seen),
    cmocka_unit_test (right_angles_are_exact),
    cmocka_unit_test (placing_gives_no_negative_zero),
    cmocka_unit_test (placing_mirrors_then_turns_then_shifts),
    cmocka_unit_test (mirrored_path_keeps_orientation_area_and_kinds),
    cmocka_unit_test (placing_keeps_area_and_length_on_random_outlines),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}

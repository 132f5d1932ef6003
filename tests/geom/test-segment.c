/* tests/geom/test-segment.c: measures of one segment.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "config.h"
#include "geom/hut-segment.h"
#include "hut-assert.h"

/* tan (22.5 degrees) and tan (67.5 degrees): a quarter, and three quarters of a circle. */
#define QUARTER 0.41421356237309503
#define THREE_QUARTERS 2.414213562373095

/* A quarter of radius 10 round (100, 20), from 6 to 3 o'clock. Source: ezdxf's bulge_to_arc () gave
 * centre (100, 20), radius 10, -90 to 0 degrees for it. */
static const HutSegment quarter = { { 100, 10 }, { 110, 20 }, QUARTER, HUT_EDGE_PLAIN };
/* The other way round the same circle, between the same ends. */
static const HutSegment rest = { { 100, 10 }, { 110, 20 }, -THREE_QUARTERS, HUT_EDGE_PLAIN };

static void
quarter_arc_has_centre_100_20_and_radius_10 (void **state)
{
  HutPoint centre;
  double radius_mm;

  assert_true (hut_segment_get_circle (&quarter, &centre, &radius_mm));
  assert_near_mm (centre.u, 100, 1e-13);
  assert_near_mm (centre.v, 20, 1e-13);
  assert_near_mm (radius_mm, 10, 1e-13);

  assert_true (hut_segment_get_circle (&rest, &centre, &radius_mm));
  assert_near_mm (centre.u, 100, 1e-13);
  assert_near_mm (centre.v, 20, 1e-13);
  assert_near_mm (radius_mm, 10, 1e-13);
}

static void
what_has_no_circle_is_refused_and_writes_nothing (void **state)
{
  static const struct
  {
    const char *why;
    HutSegment segment;
  } cases[] = {
    { "line", { { 0, 0 }, { 5, 0 }, 0, HUT_EDGE_PLAIN } },
    { "no chord", { { 1, 1 }, { 1, 1 }, 1, HUT_EDGE_PLAIN } },
    { "chord under half the grid", { { 1, 1 }, { 1.0004, 1 }, 1, HUT_EDGE_PLAIN } },
    { "bulge is no number", { { 0, 0 }, { 5, 0 }, NAN, HUT_EDGE_PLAIN } },
    { "bulge is infinite", { { 0, 0 }, { 5, 0 }, INFINITY, HUT_EDGE_PLAIN } },
    { "end is no number", { { 0, 0 }, { NAN, 0 }, 1, HUT_EDGE_PLAIN } },
    { "end is infinite", { { 0, 0 }, { INFINITY, 0 }, 1, HUT_EDGE_PLAIN } },
  };

  for (guint i = 0; i < G_N_ELEMENTS (cases); i++)
    {
      HutPoint centre = { 7, 8 };
      double radius_mm = 9;

      if (hut_segment_get_circle (&cases[i].segment, &centre, &radius_mm))
        fail_msg ("%s: has a circle", cases[i].why);
      assert_true (centre.u == 7 && centre.v == 8 && radius_mm == 9);
    }
}

static void
smallest_arc_between_grid_points_has_a_circle (void **state)
{
  const HutSegment tiny = { { 0.3, 0 }, { 0.3 + HUT_GRID_MM, 0 }, 1, HUT_EDGE_PLAIN };
  HutPoint centre;
  double radius_mm;

  assert_true (hut_segment_get_circle (&tiny, &centre, &radius_mm));
  assert_near_mm (radius_mm, HUT_GRID_MM / 2, 1e-15);
}

static void
lengths_and_turns_are_those_of_the_circle (void **state)
{
  const HutSegment line = { { 1, 1 }, { 4, 5 }, 0, HUT_EDGE_PLAIN };
  const HutSegment nearly_line = { { 0, 0 }, { 100, 0 }, 1e-9, HUT_EDGE_PLAIN };

  assert_near_mm (hut_segment_length_mm (&line), 5, 0);
  assert_near_mm (hut_segment_length_mm (&quarter), 5 * G_PI, 1e-13);
  assert_near_mm (hut_segment_length_mm (&rest), 15 * G_PI, 1e-13);
  assert_near_mm (hut_segment_length_mm (&nearly_line), 100, 1e-12);
  assert_near (hut_segment_turn_rad (&line), 0, 0);
  assert_near (hut_segment_turn_rad (&quarter), G_PI_2, 1e-15);
  assert_near (hut_segment_turn_rad (&rest), -3 * G_PI_2, 1e-15);
}

static void
cap_is_sector_minus_triangle (void **state)
{
  /* Quarter of radius 10: 25 pi - 50; the rest of the disc on the other side. */
  assert_near (hut_segment_cap_mm2 (&quarter), 25 * G_PI - 50, 1e-12);
  assert_near (hut_segment_cap_mm2 (&rest), -(75 * G_PI + 50), 1e-12);
}

static void
cap_of_a_flat_arc_is_two_thirds_of_chord_times_sagitta (void **state)
{
  /* A parabola in the limit; sagitta = bulge * chord / 2 */
  const HutSegment flat = { { 0, 0 }, { 100, 0 }, 1e-8, HUT_EDGE_PLAIN };

  assert_near (hut_segment_cap_mm2 (&flat), 2.0 / 3 * 100 * 5e-7, 1e-18);
}

/* Sector minus triangle, with the digits of a long double: there is not much left of the
 * difference. */
static double
subtracted_cap_mm2 (double bulge)
{
  const long double turn_rad = 4 * atanl (bulge);
  const long double radius_mm = 1 / sinl (turn_rad / 2); /* half chord 1 */

  return (double) (radius_mm * radius_mm * (turn_rad - sinl (turn_rad)) / 2);
}

static void
cap_is_exact_to_12_digits_on_both_sides_of_the_series (void **state)
{
  for (double bulge = 0.001; bulge < 1; bulge *= 1.01)
    {
      const HutSegment arc = { { -1, 0 }, { 1, 0 }, bulge, HUT_EDGE_PLAIN };

      assert_near (hut_segment_cap_mm2 (&arc) / subtracted_cap_mm2 (bulge), 1, 2e-13);
    }
}

/* Simpson's rule over the height of the arc above its chord: no bulge formula in it. */
static double
integrated_cap_mm2 (double bulge)
{
  const double chord_mm = 2, sagitta_mm = bulge;
  const double radius_mm = (1 + sagitta_mm * sagitta_mm) / (2 * sagitta_mm);
  const int steps = 2000;
  double sum = 0;

  for (int i = 0; i <= steps; i++)
    {
      const double x_mm = -1 + chord_mm * i / steps;
      const double height_mm = sqrt (radius_mm * radius_mm - x_mm * x_mm)
                               - (radius_mm - sagitta_mm);

      sum += height_mm * (i == 0 || i == steps ? 1 : i % 2 ? 4 : 2);
    }
  return sum * chord_mm / steps / 3;
}

static void
cap_agrees_with_an_integral (void **state)
{
  static const double bulges[] = { 0.01, 0.029, 0.0299999, 0.0300001, 0.031, 0.1, 0.3 };

  for (guint i = 0; i < G_N_ELEMENTS (bulges); i++)
    {
      const HutSegment arc = { { -1, 0 }, { 1, 0 }, bulges[i], HUT_EDGE_PLAIN };

      assert_near (hut_segment_cap_mm2 (&arc), integrated_cap_mm2 (bulges[i]), 2e-11);
    }
}

static void
assert_bounds (HutRect is,
               HutRect must_be)
{
  assert_near_mm (is.u0, must_be.u0, 1e-12);
  assert_near_mm (is.v0, must_be.v0, 1e-12);
  assert_near_mm (is.u1, must_be.u1, 1e-12);
  assert_near_mm (is.v1, must_be.v1, 1e-12);
}

static void
bounds_take_in_the_quadrant_points_that_the_arc_passes (void **state)
{
  const HutSegment line = { { 5, 1 }, { 2, 7 }, 0, HUT_EDGE_PLAIN };
  const HutSegment lower_half = { { -3, 0 }, { 3, 0 }, 1, HUT_EDGE_PLAIN };
  const HutSegment upper_half = { { -3, 0 }, { 3, 0 }, -1, HUT_EDGE_PLAIN };
  /* A sixth of a circle round (0, 0), from 60 to 120 degrees, over 12 o'clock. */
  const HutSegment sixth = {
    { 5, 5 * sqrt (3) }, { -5, 5 * sqrt (3) }, tan (G_PI / 12), HUT_EDGE_PLAIN
  };

  assert_bounds (hut_segment_bounds (&line), (HutRect) { 2, 1, 5, 7 });
  assert_bounds (hut_segment_bounds (&quarter), (HutRect) { 100, 10, 110, 20 });
  assert_bounds (hut_segment_bounds (&rest), (HutRect) { 90, 10, 110, 30 });
  assert_bounds (hut_segment_bounds (&lower_half), (HutRect) { -3, -3, 3, 0 });
  assert_bounds (hut_segment_bounds (&upper_half), (HutRect) { -3, 0, 3, 3 });
  assert_bounds (hut_segment_bounds (&sixth), (HutRect) { -5, 5 * sqrt (3), 5, 10 });
}

static void
assert_nearest (const HutSegment *segment,
                HutPoint p,
                HutPoint must_be)
{
  const HutPoint is = hut_segment_nearest (segment, p);

  assert_near_mm (is.u, must_be.u, 1e-12);
  assert_near_mm (is.v, must_be.v, 1e-12);
}

static void
nearest_point_is_the_foot_or_an_end (void **state)
{
  const HutSegment line = { { 0, 0 }, { 10, 0 }, 0, HUT_EDGE_PLAIN };
  const HutSegment dot = { { 4, 4 }, { 4, 4 }, 0, HUT_EDGE_PLAIN };

  assert_nearest (&line, (HutPoint) { 3, 5 }, (HutPoint) { 3, 0 });
  assert_nearest (&line, (HutPoint) { -3, 5 }, (HutPoint) { 0, 0 });
  assert_nearest (&line, (HutPoint) { 13, 5 }, (HutPoint) { 10, 0 });
  assert_nearest (&dot, (HutPoint) { 9, 9 }, (HutPoint) { 4, 4 });
  /* 45 degrees down right of the centre: inside and outside of the circle */
  assert_nearest (&quarter, (HutPoint) { 101, 19 },
                  (HutPoint) { 100 + 5 * M_SQRT2, 20 - 5 * M_SQRT2 });
  assert_nearest (&quarter, (HutPoint) { 200, -80 },
                  (HutPoint) { 100 + 5 * M_SQRT2, 20 - 5 * M_SQRT2 });
  /* above the centre: beyond the turn of the quarter, on the rest */
  assert_nearest (&quarter, (HutPoint) { 101, 40 }, (HutPoint) { 110, 20 });
  assert_nearest (&rest, (HutPoint) { 100, 40 }, (HutPoint) { 100, 30 });
  /* the centre: all the same distance, some point of the arc */
  assert_near_mm (hut_point_distance_mm (hut_segment_nearest (&quarter, (HutPoint) { 100, 20 }),
                                         (HutPoint) { 100, 20 }), 10, 1e-12);
}

static void
ray_crosses_an_arc_as_often_as_it_meets_it (void **state)
{
  /* (108, 12) lies outside of the circle, (106, 13) between chord and arc, (104, 15) left of the
   * chord. Rays go to +u: they meet the quarter 0, 1, 1 times. */
  assert_false (hut_segment_is_crossed (&quarter, (HutPoint) { 108.9, 12 }));
  assert_true (hut_segment_is_crossed (&quarter, (HutPoint) { 106, 13 }));
  assert_true (hut_segment_is_crossed (&quarter, (HutPoint) { 104, 15 }));
  /* The rest is met at its left and its right side, or only right of the centre. */
  assert_false (hut_segment_is_crossed (&rest, (HutPoint) { 80, 25 }));
  assert_true (hut_segment_is_crossed (&rest, (HutPoint) { 100, 25 }));
  assert_false (hut_segment_is_crossed (&rest, (HutPoint) { 120, 25 }));
  assert_true (hut_segment_is_crossed (&rest, (HutPoint) { 80, 15 }));
}

static void
point_on_the_chord_is_inside_the_two_arcs_over_it (void **state)
{
  const HutSegment level = { { -3, 0 }, { 3, 0 }, 1, HUT_EDGE_PLAIN };
  const HutSegment level_up = { { -3, 0 }, { 3, 0 }, -1, HUT_EDGE_PLAIN };
  const HutPoint on_chord = { 105, 15 };
  const HutPoint middle = { 0, 0 };

  /* The closed disc of the two half circles holds the middle of its chord whichever way we look. */
  assert_true (hut_segment_is_crossed (&level, middle)
               != hut_segment_is_crossed (&level_up, middle));
  /* Quarter and rest together are the whole circle. */
  assert_true (hut_segment_is_crossed (&quarter, on_chord)
               != hut_segment_is_crossed (&rest, on_chord));
}

static void
arc_spans_the_directions_that_it_turns_through (void **state)
{
  const HutPoint centre = { 100, 20 };

  for (int degrees = 1; degrees < 360; degrees += 2)
    {
      const double angle_rad = degrees * G_PI / 180;
      const HutPoint to = { 3 * cos (angle_rad), 3 * sin (angle_rad) };
      const gboolean lower_right = degrees > 270;

      assert_true (hut_segment_spans (&quarter, centre, to) == lower_right);
      assert_true (hut_segment_spans (&rest, centre, to) == !lower_right);
    }
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (quarter_arc_has_centre_100_20_and_radius_10),
    cmocka_unit_test (what_has_no_circle_is_refused_and_writes_nothing),
    cmocka_unit_test (smallest_arc_between_grid_points_has_a_circle),
    cmocka_unit_test (lengths_and_turns_are_those_of_the_circle),
    cmocka_unit_test (cap_is_sector_minus_triangle),
    cmocka_unit_test (cap_of_a_flat_arc_is_two_thirds_of_chord_times_sagitta),
    cmocka_unit_test (cap_is_exact_to_12_digits_on_both_sides_of_the_series),
    cmocka_unit_test (cap_agrees_with_an_integral),
    cmocka_unit_test (bounds_take_in_the_quadrant_points_that_the_arc_passes),
    cmocka_unit_test (nearest_point_is_the_foot_or_an_end),
    cmocka_unit_test (ray_crosses_an_arc_as_often_as_it_meets_it),
    cmocka_unit_test (point_on_the_chord_is_inside_the_two_arcs_over_it),
    cmocka_unit_test (arc_spans_the_directions_that_it_turns_through),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}

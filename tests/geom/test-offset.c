/* tests/geom/test-offset.c: exact parallel outlines.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "config.h"
#include "geom/hut-geos.h"
#include "geom/hut-offset.h"
#include "hut-assert.h"
#include "hut-random-shape.h"

#define QUARTER 0.41421356237309503

typedef struct
{
  double u_mm, v_mm, bulge;
} Corner;

static HutOffset
even (double by_mm)
{
  return (HutOffset) { by_mm, by_mm };
}

static HutRegion *
new_region (const Corner *corners,
            guint count)
{
  HutPath *path = hut_path_new ();

  for (guint i = 0; i < count; i++)
    hut_path_append (path, (HutPoint) { corners[i].u_mm, corners[i].v_mm }, corners[i].bulge,
                     HUT_EDGE_PLAIN);
  return hut_region_new (path);
}

static HutRegion *
new_rect (double width_mm,
          double height_mm)
{
  return hut_region_new (hut_path_new_rect ((HutRect) { 0, 0, width_mm, height_mm }, 0));
}

static HutRegion *
offset_ok (const HutRegion *region,
           HutOffset offset)
{
  g_autoptr(GError) error = NULL;
  HutRegion *moved = hut_region_dup_offset (region, &offset, &error);

  assert_ok (moved != NULL, error);
  return moved;
}

static void
assert_corners (const HutPath *path,
                const Corner *corners,
                guint count)
{
  assert_int_equal (hut_path_get_count (path), count);
  for (guint i = 0; i < count; i++)
    {
      const HutVertex *vertex = hut_path_get (path, i);

      if (fabs (vertex->p.u - corners[i].u_mm) > 1e-12
          || fabs (vertex->p.v - corners[i].v_mm) > 1e-12
          || fabs (vertex->bulge - corners[i].bulge) > 1e-12)
        fail_msg ("corner %u is (%.15g, %.15g) bulge %.15g", i, vertex->p.u, vertex->p.v,
                  vertex->bulge);
    }
}

static void
assert_refused (const HutRegion *region,
                HutOffset offset,
                HutGeomError code,
                const char *place)
{
  g_autoptr(GError) error = NULL;
  g_autoptr(HutRegion) moved = hut_region_dup_offset (region, &offset, &error);

  assert_null (moved);
  if (!g_error_matches (error, HUT_GEOM_ERROR, (int) code))
    fail_msg ("code %d, must be %d: %s", error->code, (int) code, error->message);
  if (strstr (error->message, place) == NULL)
    fail_msg ("\"%s\" does not name %s", error->message, place);
}

static void
fit_gives_each_flank_a_quarter_of_the_allowance (void **state)
{
  /* Kerf 0.2, loose by 0.1: slot 0.1 wider than the tongue, so each of 4 edges gives 0.025. */
  const HutOffset offset = hut_offset_for_fit (0.2, 0.1);

  assert_near_mm (offset.plain_mm, 0.1, 0);
  assert_near_mm (offset.mating_mm, 0.075, 1e-16);
}

static void
rounded_outline_grows_and_its_hole_shrinks_with_arcs_on_their_centres (void **state)
{
  static const Corner outer[] = {
    { 20, 9.9, 0 }, { 100, 9.9, QUARTER }, { 110.1, 20, 0 }, { 110.1, 60, QUARTER },
    { 100, 70.1, 0 }, { 20, 70.1, QUARTER }, { 9.9, 60, 0 }, { 9.9, 20, QUARTER },
  };
  static const Corner hole[] = { { 45.1, 40, -1 }, { 74.9, 40, -1 } };
  g_autoptr(HutRegion) region = hut_region_new (
    hut_path_new_rect ((HutRect) { 10, 10, 110, 70 }, 10));

  hut_region_take_hole (region, hut_path_new_circle ((HutPoint) { 60, 40 }, 15));

  g_autoptr(HutRegion) moved = offset_ok (region, even (0.1));

  assert_corners (moved->outer, outer, G_N_ELEMENTS (outer));
  assert_corners (g_ptr_array_index (moved->holes, 0), hole, G_N_ELEMENTS (hole));
  assert_near_mm (hut_path_length_mm (moved->outer), 240 + 2 * G_PI * 10.1, 1e-11);
}

static void
negative_offset_shrinks_the_outline_and_grows_the_hole (void **state)
{
  static const Corner outer[] = {
    { 0.5, 0.5, 0 }, { 19.5, 0.5, 0 }, { 19.5, 9.5, 0 }, { 0.5, 9.5, 0 }
  };
  static const Corner hole[] = { { 7.5, 5, -1 }, { 12.5, 5, -1 } };
  g_autoptr(HutRegion) region = new_rect (20, 10);

  hut_region_take_hole (region, hut_path_new_circle ((HutPoint) { 10, 5 }, 2));

  g_autoptr(HutRegion) moved = offset_ok (region, even (-0.5));

  assert_corners (moved->outer, outer, G_N_ELEMENTS (outer));
  assert_corners (g_ptr_array_index (moved->holes, 0), hole, G_N_ELEMENTS (hole));
}

static void
each_kind_of_edge_has_its_own_distance (void **state)
{
  static const Corner must_be[] = {
    { -0.1, -0.1, 0 }, { 20.06, -0.1, 0 }, { 20.06, 10.1, 0 }, { -0.1, 10.1, 0 }
  };
  g_autoptr(HutRegion) region = hut_region_new (hut_path_new ());

  hut_path_append (region->outer, (HutPoint) { 0, 0 }, 0, HUT_EDGE_PLAIN);
  hut_path_append (region->outer, (HutPoint) { 20, 0 }, 0, HUT_EDGE_MATING);
  hut_path_append (region->outer, (HutPoint) { 20, 10 }, 0, HUT_EDGE_PLAIN);
  hut_path_append (region->outer, (HutPoint) { 0, 10 }, 0, HUT_EDGE_PLAIN);

  g_autoptr(HutRegion) moved = offset_ok (region,
                                          (HutOffset) { .plain_mm = 0.1, .mating_mm = 0.06 });

  assert_corners (moved->outer, must_be, G_N_ELEMENTS (must_be));
  assert_int_equal (hut_path_get (moved->outer, 1)->kind, HUT_EDGE_MATING);
  assert_int_equal (hut_path_get (moved->outer, 2)->kind, HUT_EDGE_PLAIN);
}

static void
mitre_of_two_distances_lies_on_both_moved_lines (void **state)
{
  /* Right triangle with legs 30 and 40; the hypotenuse mates. Moved: v = -1, u = -1, and
   * 4 u + 3 v = 120 + 5 * 2. */
  static const Corner must_be[] = { { -1, -1, 0 }, { 33.25, -1, 0 }, { -1, 134.0 / 3, 0 } };
  g_autoptr(HutRegion) region = hut_region_new (hut_path_new ());

  hut_path_append (region->outer, (HutPoint) { 0, 0 }, 0, HUT_EDGE_PLAIN);
  hut_path_append (region->outer, (HutPoint) { 30, 0 }, 0, HUT_EDGE_MATING);
  hut_path_append (region->outer, (HutPoint) { 0, 40 }, 0, HUT_EDGE_PLAIN);

  g_autoptr(HutRegion) moved = offset_ok (region, (HutOffset) { .plain_mm = 1, .mating_mm = 2 });

  assert_corners (moved->outer, must_be, G_N_ELEMENTS (must_be));
}

static void
edges_in_line_with_two_distances_jog_across (void **state)
{
  static const Corner must_be[] = {
    { -0.1, -0.1, 0 },  { 8, -0.1, 0 },    { 8, -0.06, 0 },
    { 20.1, -0.06, 0 }, { 20.1, 10.1, 0 }, { -0.1, 10.1, 0 },
  };
  g_autoptr(HutRegion) region = hut_region_new (hut_path_new ());

  hut_path_append (region->outer, (HutPoint) { 0, 0 }, 0, HUT_EDGE_PLAIN);
  hut_path_append (region->outer, (HutPoint) { 8, 0 }, 0, HUT_EDGE_MATING);
  hut_path_append (region->outer, (HutPoint) { 20, 0 }, 0, HUT_EDGE_PLAIN);
  hut_path_append (region->outer, (HutPoint) { 20, 10 }, 0, HUT_EDGE_PLAIN);
  hut_path_append (region->outer, (HutPoint) { 0, 10 }, 0, HUT_EDGE_PLAIN);

  g_autoptr(HutRegion) moved = offset_ok (region,
                                          (HutOffset) { .plain_mm = 0.1, .mating_mm = 0.06 });

  assert_corners (moved->outer, must_be, G_N_ELEMENTS (must_be));
  assert_int_equal (hut_path_get (moved->outer, 1)->kind, HUT_EDGE_PLAIN); /* the jog */
  assert_int_equal (hut_path_get (moved->outer, 2)->kind, HUT_EDGE_MATING);
}

static void
edges_in_line_with_one_distance_stay_in_line (void **state)
{
  static const Corner corners[] = {
    { 0, 0, 0 }, { 8, 0, 0 }, { 20, 0, 0 }, { 20, 10, 0 }, { 0, 10, 0 }
  };
  static const Corner must_be[] = {
    { -1, -1, 0 }, { 8, -1, 0 }, { 21, -1, 0 }, { 21, 11, 0 }, { -1, 11, 0 }
  };
  g_autoptr(HutRegion) region = new_region (corners, G_N_ELEMENTS (corners));
  g_autoptr(HutRegion) moved = offset_ok (region, even (1));

  assert_corners (moved->outer, must_be, G_N_ELEMENTS (must_be));
}

static void
half_disc_meets_its_diameter_on_the_moved_circle (void **state)
{
  /* Radius 5 above v = 0. By 0.5: line v = -0.5, radius 5.5, corner at sqrt (30.25 - 0.25). By
   * -0.5: v = 0.5, radius 4.5, corner at sqrt (20.25 - 0.25). */
  static const Corner corners[] = { { -5, 0, 0 }, { 5, 0, 1 } };
  g_autoptr(HutRegion) region = new_region (corners, G_N_ELEMENTS (corners));
  g_autoptr(HutRegion) grown = offset_ok (region, even (0.5));
  g_autoptr(HutRegion) shrunk = offset_ok (region, even (-0.5));
  const double grown_turn_rad = G_PI + 2 * asin (0.5 / 5.5);
  const double shrunk_turn_rad = G_PI - 2 * asin (0.5 / 4.5);
  const Corner grown_must_be[] = { { -sqrt (30), -0.5, 0 },
                                   { sqrt (30), -0.5, tan (grown_turn_rad / 4) } };
  const Corner shrunk_must_be[] = { { -sqrt (20), 0.5, 0 },
                                    { sqrt (20), 0.5, tan (shrunk_turn_rad / 4) } };

  assert_corners (grown->outer, grown_must_be, 2);
  assert_corners (shrunk->outer, shrunk_must_be, 2);
}

static void
round_bite_narrows_by_the_offset (void **state)
{
  /* 20 x 10 with a half round bite of radius 3 round (10, 10): top edge to 10.5, radius 2.5,
   * corners sqrt (6.25 - 0.25) from the middle. */
  static const Corner corners[] = { { 0, 0, 0 },    { 20, 0, 0 }, { 20, 10, 0 },
                                    { 13, 10, -1 }, { 7, 10, 0 }, { 0, 10, 0 } };
  g_autoptr(HutRegion) region = new_region (corners, G_N_ELEMENTS (corners));
  g_autoptr(HutRegion) moved = offset_ok (region, even (0.5));
  const HutSegment bite = hut_path_get_segment (moved->outer, 3);
  HutPoint centre;
  double radius_mm;

  assert_near_mm (bite.start.u, 10 + sqrt (6), 1e-12);
  assert_near_mm (bite.start.v, 10.5, 1e-12);
  assert_near_mm (bite.end.u, 10 - sqrt (6), 1e-12);
  assert_true (hut_segment_get_circle (&bite, &centre, &radius_mm));
  assert_near_mm (centre.u, 10, 1e-12);
  assert_near_mm (centre.v, 10, 1e-12);
  assert_near_mm (radius_mm, 2.5, 1e-12);
}

static void
lens_of_two_arcs_keeps_both_centres (void **state)
{
  /* Circles of radius 5 round (0, 3) and (0, -3) meet at (-4, 0) and (4, 0); of radius 6 at
   * sqrt (36 - 9). tan (turn / 2) = 4 / 3, so the bulge is 1 / 2. */
  static const Corner corners[] = { { -4, 0, 0.5 }, { 4, 0, 0.5 } };
  g_autoptr(HutRegion) region = new_region (corners, G_N_ELEMENTS (corners));
  g_autoptr(HutRegion) moved = offset_ok (region, even (1));
  const double bulge = tan (2 * asin (sqrt (27) / 6) / 4);
  const Corner must_be[] = { { -sqrt (27), 0, bulge }, { sqrt (27), 0, bulge } };

  assert_corners (moved->outer, must_be, 2);
}

static void
arcs_with_different_radii_meet_where_the_moved_circles_do (void **state)
{
  /* Lower arc: radius 5 round (0, 3); upper arc: radius 4 round (0, 0), a half circle. By 1: radius
   * 6 round (0, 3), radius 5 round (0, 0): v = (25 - 36 + 9) / 6 = -1/3. */
  static const Corner corners[] = { { -4, 0, 0.5 }, { 4, 0, 1 } };
  g_autoptr(HutRegion) region = new_region (corners, G_N_ELEMENTS (corners));
  g_autoptr(HutRegion) moved = offset_ok (region, even (1));
  const HutVertex *left = hut_path_get (moved->outer, 0);

  assert_near_mm (left->p.v, -1.0 / 3, 1e-12);
  assert_near_mm (left->p.u, -sqrt (25 - 1.0 / 9), 1e-12);
}

static void
circle_of_many_arcs_stays_concentric (void **state)
{
  /* One circle cut into 5 uneven arcs. */
  static const double angles_rad[] = { 0, 0.3, 2, 2.5, 5 };
  const HutPoint centre = { 7, -2 };
  g_autoptr(HutRegion) region = hut_region_new (hut_path_new ());

  for (guint i = 0; i < 5; i++)
    {
      const double next_rad = i < 4 ? angles_rad[i + 1] : 2 * G_PI;

      hut_path_append (
        region->outer,
        (HutPoint) { centre.u + 9 * cos (angles_rad[i]), centre.v + 9 * sin (angles_rad[i]) },
        tan ((next_rad - angles_rad[i]) / 4), HUT_EDGE_PLAIN);
    }

  g_autoptr(HutRegion) moved = offset_ok (region, even (-4));

  assert_int_equal (hut_path_get_count (moved->outer), 5);
  assert_near (hut_region_area_mm2 (moved), 25 * G_PI, 1e-11);
  for (guint i = 0; i < 5; i++)
    assert_near_mm (hut_point_distance_mm (centre, hut_path_get (moved->outer, i)->p), 5, 1e-12);
}

static void
assert_same_centres (const HutPath *is,
                     const HutPath *must_be)
{
  for (guint i = 0; i < hut_path_get_count (is); i++)
    {
      const HutSegment a = hut_path_get_segment (is, i);
      const HutSegment b = hut_path_get_segment (must_be, i);
      HutPoint a_centre, b_centre;
      double radius_mm;

      if (!hut_segment_get_circle (&b, &b_centre, &radius_mm))
        continue;
      assert_true (hut_segment_get_circle (&a, &a_centre, &radius_mm));
      assert_near_mm (hut_point_distance_mm (a_centre, b_centre), 0, 1e-10);
    }
}

static void
smooth_join_that_the_grid_has_bent_stays_in_one_piece (void **state)
{
  /* A rounded plate turned by 30 degrees and put back on the grid: no join is quite smooth. */
  g_autoptr(HutPath) straight = hut_path_new_rect ((HutRect) { 0, 0, 50, 30 }, 4);
  const HutPlacement turned = { .turn_rad = G_PI / 6 };
  g_autoptr(HutPath) path = hut_path_dup_placed (straight, &turned);
  g_autoptr(HutRegion) region = hut_region_new (hut_path_new ());

  for (guint i = 0; i < 8; i++)
    {
      const HutVertex *vertex = hut_path_get (path, i);

      hut_path_append (region->outer,
                       (HutPoint) { hut_snap_mm (vertex->p.u), hut_snap_mm (vertex->p.v) },
                       vertex->bulge, vertex->kind);
    }
  for (int tenth = -30; tenth <= 30; tenth++)
    {
      const double by_mm = tenth / 10.0;
      g_autoptr(HutRegion) moved = offset_ok (region, even (by_mm));
      /* Area of a rounded plate of 50 + 2 d by 30 + 2 d with radius 4 + d */
      const double must_be_mm2 = (50 + 2 * by_mm) * (30 + 2 * by_mm)
                                 - (4 - G_PI) * (4 + by_mm) * (4 + by_mm);

      assert_int_equal (hut_path_get_count (moved->outer), 8);
      assert_near (hut_region_area_mm2 (moved), must_be_mm2, 0.001 * 160); /* grid times length */
      assert_same_centres (moved->outer, region->outer);
    }
}

static void
doubled_points_are_dropped_without_error (void **state)
{
  static const Corner corners[] = { { 0, 0, 0 },   { 20, 0, 0 }, { 20, 0, 0 },
                                    { 20, 10, 0 }, { 0, 10, 0 }, { 0, 0, 0 } };
  g_autoptr(HutRegion) region = new_region (corners, G_N_ELEMENTS (corners));
  g_autoptr(HutRegion) moved = offset_ok (region, even (1));

  assert_int_equal (hut_path_get_count (moved->outer), 4);
  assert_near (hut_region_area_mm2 (moved), 22 * 12, 1e-12);
}

static void
no_offset_is_the_same_outline (void **state)
{
  static const Corner corners[] = { { 0, 0, 0 },    { 20, 0, 0 }, { 20, 10, 0 },
                                    { 13, 10, -1 }, { 7, 10, 0 }, { 0, 10, 0 } };
  g_autoptr(HutRegion) region = new_region (corners, G_N_ELEMENTS (corners));
  g_autoptr(HutRegion) moved = offset_ok (region, even (0));

  assert_corners (moved->outer, corners, G_N_ELEMENTS (corners));
}

static void
narrow_notch_is_an_error_where_it_is (void **state)
{
  /* 20 x 10 with a notch 0.2 wide and 3 deep in its top. */
  static const Corner corners[] = {
    { 0, 0, 0 },    { 20, 0, 0 }, { 20, 10, 0 }, { 10.2, 10, 0 },
    { 10.2, 7, 0 }, { 10, 7, 0 }, { 10, 10, 0 }, { 0, 10, 0 },
  };
  g_autoptr(HutRegion) region = new_region (corners, G_N_ELEMENTS (corners));
  g_autoptr(HutRegion) moved = offset_ok (region, even (0.099));

  assert_int_equal (hut_path_get_count (moved->outer), 8);
  assert_refused (region, even (0.1), HUT_GEOM_ERROR_VANISHED, "(10.200, 7.000) mm");
  assert_refused (region, even (0.3), HUT_GEOM_ERROR_VANISHED, "(10.200, 7.000) mm");
}

static void
narrow_mouth_of_a_wide_slot_is_an_error (void **state)
{
  /* A T-slot: the mouth is 0.2 wide, the inside 4: no edge is short, but two outlines cross. */
  static const Corner corners[] = {
    { 0, 0, 0 },  { 20, 0, 0 }, { 20, 10, 0 }, { 10.2, 10, 0 }, { 10.2, 7, 0 }, { 12, 7, 0 },
    { 12, 3, 0 }, { 8, 3, 0 },  { 8, 7, 0 },   { 10, 7, 0 },    { 10, 10, 0 },  { 0, 10, 0 },
  };
  g_autoptr(HutRegion) region = new_region (corners, G_N_ELEMENTS (corners));
  g_autoptr(HutRegion) moved = offset_ok (region, even (0.09));

  assert_int_equal (hut_path_get_count (moved->outer), 12);
  assert_refused (region, even (0.11), HUT_GEOM_ERROR_VANISHED, "mm");
}

static void
hole_under_the_tool_is_an_error (void **state)
{
  g_autoptr(HutRegion) round = new_rect (20, 10);
  g_autoptr(HutRegion) square = new_rect (20, 10);
  g_autoptr(HutRegion) slot = new_rect (20, 10);

  hut_region_take_hole (round, hut_path_new_circle ((HutPoint) { 10, 5 }, 0.5));
  hut_region_take_hole (square, hut_path_new_rect ((HutRect) { 5, 5, 6, 8 }, 0));
  hut_region_take_hole (slot, hut_path_new_rect ((HutRect) { 5, 5, 9, 6 }, 0.5));
  assert_refused (round, even (0.5), HUT_GEOM_ERROR_VANISHED, "(9.500, 5.000) mm");
  assert_refused (round, even (3), HUT_GEOM_ERROR_VANISHED, "(9.500, 5.000) mm");
  assert_refused (square, even (0.5), HUT_GEOM_ERROR_VANISHED, "mm");
  assert_refused (square, even (2), HUT_GEOM_ERROR_VANISHED, "mm");
  assert_refused (slot, even (0.5), HUT_GEOM_ERROR_VANISHED, "mm");
}

static void
webs_that_the_tool_eats_are_errors (void **state)
{
  /* Shrinking by 0.6: a web of 1 between two holes, and of 1 between a hole and the rim. */
  g_autoptr(HutRegion) holes = new_rect (30, 20);
  g_autoptr(HutRegion) rim = new_rect (30, 20);

  hut_region_take_hole (holes, hut_path_new_circle ((HutPoint) { 10, 10 }, 3));
  hut_region_take_hole (holes, hut_path_new_circle ((HutPoint) { 17, 10 }, 3));
  hut_region_take_hole (rim, hut_path_new_rect ((HutRect) { 1, 5, 8, 15 }, 0));
  g_autoptr(HutRegion) just = offset_ok (holes, even (-0.49));
  assert_int_equal (just->holes->len, 2);
  assert_refused (holes, even (-0.6), HUT_GEOM_ERROR_VANISHED, "mm");
  assert_refused (rim, even (-0.6), HUT_GEOM_ERROR_VANISHED, "mm");
}

static void
finger_that_the_tool_eats_is_an_error (void **state)
{
  /* A tongue 1 wide and a bump of radius 0.5 on a plate, shrunk by 0.5. */
  static const Corner tongue[] = {
    { 0, 0, 0 },   { 20, 0, 0 },  { 20, 10, 0 }, { 11, 10, 0 },
    { 11, 14, 0 }, { 10, 14, 0 }, { 10, 10, 0 }, { 0, 10, 0 },
  };
  static const Corner bump[] = {
    { 0, 0, 0 }, { 20, 0, 0 }, { 20, 10, 0 }, { 10.5, 10, 1 }, { 9.5, 10, 0 }, { 0, 10, 0 },
  };
  g_autoptr(HutRegion) a = new_region (tongue, G_N_ELEMENTS (tongue));
  g_autoptr(HutRegion) b = new_region (bump, G_N_ELEMENTS (bump));
  g_autoptr(HutRegion) whole = new_rect (20, 10);

  assert_refused (a, even (-0.5), HUT_GEOM_ERROR_VANISHED, "(11.000, 14.000) mm");
  assert_refused (b, even (-0.5), HUT_GEOM_ERROR_VANISHED, "(10.500, 10.000) mm");
  assert_refused (whole, even (-5), HUT_GEOM_ERROR_VANISHED, "mm");
  assert_refused (whole, even (-50), HUT_GEOM_ERROR_VANISHED, "mm");
}

static void
bump_that_leaves_its_line_is_an_error (void **state)
{
  /* A flat arc that sticks out of the top: chord 2, sagitta 0.2, so radius 2.6 round (20, 27.6).
   * Shrunk by 2.55 the line is at 27.45, but the circle of radius 0.05 ends at 27.55. */
  static const Corner corners[] = { { 0, 0, 0 },     { 40, 0, 0 },  { 40, 30, 0 },
                                    { 21, 30, 0.2 }, { 19, 30, 0 }, { 0, 30, 0 } };
  g_autoptr(HutRegion) region = new_region (corners, G_N_ELEMENTS (corners));

  assert_refused (region, even (-2.55), HUT_GEOM_ERROR_VANISHED, "parted at (21.000, 30.000) mm");
}

static void
arc_whose_neighbours_meet_before_it_is_an_error (void **state)
{
  /* A corner cut off by a flat arc; shrunk by 3, the two sides meet 1.2 before they reach it. */
  static const Corner corners[] = {
    { 0, 0, 0 }, { 20, 0, 0 }, { 20, 19, 0.1 }, { 19, 20, 0 }, { 0, 20, 0 }
  };
  g_autoptr(HutRegion) region = new_region (corners, G_N_ELEMENTS (corners));

  assert_refused (region, even (-3), HUT_GEOM_ERROR_VANISHED,
                  "too short for the tool at (20.000, 19.000) mm");
}

static void
point_without_width_can_not_grow (void **state)
{
  /* Half a crescent: circles of radius 10 round (0, 0) and of radius 6 round (4, 0) touch at (10,
   * 0); with 11 and 5 they are apart, and no mitre can be drawn. */
  g_autoptr(HutRegion) region = hut_region_new (hut_path_new ());

  hut_path_append (region->outer, (HutPoint) { 10, 0 }, 1, HUT_EDGE_PLAIN);
  hut_path_append (region->outer, (HutPoint) { -10, 0 }, 0, HUT_EDGE_PLAIN);
  hut_path_append (region->outer, (HutPoint) { -2, 0 }, -1, HUT_EDGE_PLAIN);
  assert_refused (region, even (1), HUT_GEOM_ERROR_VANISHED, "parted at (10.000, 0.000) mm");
}

static void
torn_outlines_are_invalid_not_vanished (void **state)
{
  static const Corner bow_tie[] = { { 0, 0, 0 }, { 10, 10, 0 }, { 10, 0, 0 }, { 0, 10, 0 } };
  static const Corner spike[] = { { 0, 0, 0 },  { 10, 0, 0 }, { 10, 10, 0 },
                                  { 0, 10, 0 }, { 0, 15, 0 }, { 0, 10, 0 } };
  g_autoptr(HutRegion) a = new_region (bow_tie, G_N_ELEMENTS (bow_tie));
  g_autoptr(HutRegion) b = new_region (spike, G_N_ELEMENTS (spike));
  g_autoptr(HutRegion) c = hut_region_new (hut_path_new ());
  g_autoptr(HutRegion) d = new_rect (5, 5);

  hut_path_append (d->outer, (HutPoint) { 0, NAN }, 0, HUT_EDGE_PLAIN);
  assert_refused (a, even (0.1), HUT_GEOM_ERROR_INVALID, "(5.000, 5.000) mm");
  assert_refused (b, even (0.1), HUT_GEOM_ERROR_INVALID, "mm");
  assert_refused (c, even (0.1), HUT_GEOM_ERROR_INVALID, "0 corners");
  assert_refused (d, even (0.1), HUT_GEOM_ERROR_INVALID, "not finite");
}

static void
offset_that_is_no_number_is_invalid (void **state)
{
  g_autoptr(HutRegion) region = new_rect (5, 5);

  assert_refused (region, (HutOffset) { NAN, 0.1 }, HUT_GEOM_ERROR_INVALID, "finite");
  assert_refused (region, (HutOffset) { 0.1, INFINITY }, HUT_GEOM_ERROR_INVALID, "finite");
}

static void
arc_without_circle_is_no_circle (void **state)
{
  g_autoptr(HutRegion) region = new_rect (5, 5);

  hut_path_append (region->outer, (HutPoint) { 0, 0 }, 1, HUT_EDGE_PLAIN);
  assert_refused (region, even (0.1), HUT_GEOM_ERROR_NO_CIRCLE, "(0.000, 0.000) mm");
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (fit_gives_each_flank_a_quarter_of_the_allowance),
    cmocka_unit_test (rounded_outline_grows_and_its_hole_shrinks_with_arcs_on_their_centres),
    cmocka_unit_test (negative_offset_shrinks_the_outline_and_grows_the_hole),
    cmocka_unit_test (each_kind_of_edge_has_its_own_distance),
    cmocka_unit_test (mitre_of_two_distances_lies_on_both_moved_lines),
    cmocka_unit_test (edges_in_line_with_two_distances_jog_across),
    cmocka_unit_test (edges_in_line_with_one_distance_stay_in_line),
    cmocka_unit_test (half_disc_meets_its_diameter_on_the_moved_circle),
    cmocka_unit_test (round_bite_narrows_by_the_offset),
    cmocka_unit_test (lens_of_two_arcs_keeps_both_centres),
    cmocka_unit_test (arcs_with_different_radii_meet_where_the_moved_circles_do),
    cmocka_unit_test (circle_of_many_arcs_stays_concentric),
    cmocka_unit_test (smooth_join_that_the_grid_has_bent_stays_in_one_piece),
    cmocka_unit_test (doubled_points_are_dropped_without_error),
    cmocka_unit_test (no_offset_is_the_same_outline),
    cmocka_unit_test (narrow_notch_is_an_error_where_it_is),
    cmocka_unit_test (narrow_mouth_of_a_wide_slot_is_an_error),
    cmocka_unit_test (hole_under_the_tool_is_an_error),
    cmocka_unit_test (webs_that_the_tool_eats_are_errors),
    cmocka_unit_test (finger_that_the_tool_eats_is_an_error),
    cmocka_unit_test (bump_that_leaves_its_line_is_an_error),
    cmocka_unit_test (arc_whose_neighbours_meet_before_it_is_an_error),
    cmocka_unit_test (point_without_width_can_not_grow),
    cmocka_unit_test (torn_outlines_are_invalid_not_vanished),
    cmocka_unit_test (offset_that_is_no_number_is_invalid),
    cmocka_unit_test (arc_without_circle_is_no_circle),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}

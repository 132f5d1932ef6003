/* tests/geom/test-width.c: the narrowest web, on shapes whose web is known.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "config.h"
#include "geom/hut-width.h"
#include "hut-assert.h"

#define ANY_MM 1000.0

typedef struct
{
  double u_mm, v_mm, bulge;
} Corner;

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
new_plate (double width_mm,
           double height_mm)
{
  return hut_region_new (hut_path_new_rect ((HutRect) { 0, 0, width_mm, height_mm }, 0));
}

static HutPath *
new_circle (double u_mm,
            double v_mm,
            double radius_mm)
{
  return hut_path_new_circle ((HutPoint) { u_mm, v_mm }, radius_mm);
}

/* The web must be so wide, also when the region is turned, and not be found under its width. */
static HutWeb
assert_web (const HutRegion *region,
            double width_mm)
{
  HutWeb web = { 0 };

  for (int degrees = 0; degrees < 360; degrees += 15)
    {
      const HutPlacement placement = { .mirrored = degrees % 2,
                                       .turn_rad = degrees * G_PI / 180,
                                       .shift = { 3, 4 } };
      g_autoptr(HutRegion) placed = hut_region_dup_placed (region, &placement);
      HutWeb turned = { 0 };

      if (!hut_region_find_web (placed, ANY_MM, &turned))
        fail_msg ("turned by %d: no web", degrees);
      assert_near_mm (turned.width_mm, width_mm, 1e-9);
      assert_near_mm (hut_point_distance_mm (turned.a, turned.b), width_mm, 1e-9);
      assert_true (hut_region_find_web (placed, width_mm + 1e-9, &turned));
      assert_false (hut_region_find_web (placed, width_mm - 1e-9, &turned));
    }
  assert_true (hut_region_find_web (region, ANY_MM, &web));
  return web;
}

static void
assert_no_web (const HutRegion *region)
{
  for (int degrees = 0; degrees < 360; degrees += 15)
    {
      const HutPlacement placement = { .turn_rad = degrees * G_PI / 180, .shift = { 3, 4 } };
      g_autoptr(HutRegion) placed = hut_region_dup_placed (region, &placement);
      HutWeb web = { 0 };

      if (hut_region_find_web (placed, ANY_MM, &web))
        fail_msg ("turned by %d: a web of %g from (%g, %g) to (%g, %g)", degrees, web.width_mm,
                  web.a.u, web.a.v, web.b.u, web.b.v);
    }
}

static void
rectangle_is_as_wide_as_its_shorter_side_whatever_its_corners (void **state)
{
  static const double radii_mm[] = { 0, 3, 15, 29, 30 };

  for (guint i = 0; i < G_N_ELEMENTS (radii_mm); i++)
    {
      g_autoptr(HutRegion) region = hut_region_new (
        hut_path_new_rect ((HutRect) { 0, 0, 100, 60 }, radii_mm[i]));

      assert_web (region, 60);
    }
}

static void
chamfer_is_no_web (void **state)
{
  static const Corner corners[] = {
    { 1, 0, 0 }, { 40, 0, 0 }, { 40, 30, 0 }, { 0, 30, 0 }, { 0, 1, 0 }
  };
  g_autoptr(HutRegion) region = new_region (corners, G_N_ELEMENTS (corners));

  assert_web (region, 30);
}

static void
triangle_and_disc_have_no_web (void **state)
{
  /* From no chord of a convex shape without parallel sides do both ends stay where they are. */
  static const Corner sharp[] = { { 0, 0, 0 }, { 40, 0, 0 }, { 39, 3, 0 } };
  static const Corner cut_disc[] = { { -4, 0, 0 }, { 4, 0, 1.2 } };
  g_autoptr(HutRegion) triangle = new_region (sharp, G_N_ELEMENTS (sharp));
  g_autoptr(HutRegion) disc = hut_region_new (new_circle (1, 2, 3));
  g_autoptr(HutRegion) cut = new_region (cut_disc, G_N_ELEMENTS (cut_disc));

  assert_no_web (triangle);
  assert_no_web (disc);
  assert_no_web (cut);
}

static void
ring_is_as_wide_as_its_radii_differ (void **state)
{
  g_autoptr(HutRegion) ring = hut_region_new (new_circle (0, 0, 30));

  hut_region_take_hole (ring, new_circle (0, 0, 28));
  assert_web (ring, 2);
}

static void
eccentric_ring_is_narrowest_on_the_line_of_centres (void **state)
{
  g_autoptr(HutRegion) ring = hut_region_new (new_circle (0, 0, 30));
  HutWeb web;

  hut_region_take_hole (ring, new_circle (3, 4, 20)); /* 30 - 20 - 5 */
  web = assert_web (ring, 5);
  assert_near_mm (web.a.u, 18, 1e-12);
  assert_near_mm (web.a.v, 24, 1e-12);
  assert_near_mm (web.b.u, 15, 1e-12);
  assert_near_mm (web.b.v, 20, 1e-12);
}

static void
half_of_an_eccentric_ring_is_narrowest_at_the_corners_of_its_hole (void **state)
{
  /* The hole is the left half of a disc of radius 15 round (10, 0): the right half, only 5 from the
   * rim, is not cut. Its corners are at (10, +-15), sqrt (325) from the centre. */
  static const Corner half[] = { { 10, -15, 0 }, { 10, 15, 1 } };
  g_autoptr(HutRegion) ring = hut_region_new (new_circle (0, 0, 30));
  g_autoptr(HutRegion) hole = new_region (half, 2);

  hut_region_take_hole (ring, hut_path_copy (hole->outer));
  assert_web (ring, 30 - sqrt (325));
}

static void
frame_is_narrowest_in_its_corners_when_only_its_outside_is_round (void **state)
{
  /* Frame 10 wide, outer radius 8 round (8, 8), inner radius 4 round (14, 14): between the arcs it
   * is 6 sqrt (2) + 8 - 4, so more. */
  g_autoptr(HutRegion) wide = hut_region_new (hut_path_new_rect ((HutRect) { 0, 0, 100, 80 }, 8));
  g_autoptr(HutRegion) sharp = hut_region_new (hut_path_new_rect ((HutRect) { 0, 0, 100, 80 }, 20));

  hut_region_take_hole (wide, hut_path_new_rect ((HutRect) { 10, 10, 90, 70 }, 4));
  assert_web (wide, 10);
  /* Outer radius 20 round (20, 20), the hole's sharp corner at (10, 10): 20 - sqrt (200). */
  hut_region_take_hole (sharp, hut_path_new_rect ((HutRect) { 10, 10, 90, 70 }, 0));
  assert_web (sharp, 20 - 10 * M_SQRT2);
}

static void
two_round_holes_leave_a_slanted_web (void **state)
{
  /* Centres (30, 30) and (60, 70) are 50 apart: 50 - 24 - 23 = 3. */
  g_autoptr(HutRegion) region = new_plate (100, 110);
  HutWeb web;

  hut_region_take_hole (region, new_circle (30, 30, 24));
  hut_region_take_hole (region, new_circle (60, 70, 23));
  web = assert_web (region, 3);
  assert_near_mm (fmin (web.a.u, web.b.u), 30 + 24 * 0.6, 1e-12);
  assert_near_mm (fmin (web.a.v, web.b.v), 30 + 24 * 0.8, 1e-12);
}

static void
round_hole_near_the_rim (void **state)
{
  g_autoptr(HutRegion) region = new_plate (100, 60);
  HutWeb web;

  hut_region_take_hole (region, new_circle (40, 30, 28)); /* upper and lower rim: 2 */
  hut_region_take_hole (region, new_circle (84, 30, 14.5)); /* to the rim and between them: 1.5 */
  hut_region_take_hole (region, new_circle (3, 57, 2)); /* 1 */
  web = assert_web (region, 1);
  assert_near_mm (fmax (web.a.v, web.b.v), 60, 58 - 1e-9);
}

static void
slanted_bridge_between_two_corners (void **state)
{
  /* Two blocks joined by a strip that rises 3 : 4 and is 10 high: 10 * 4 / 5 = 8 wide across, where
   * lines overlap: 20 along, more than enough. */
  static const Corner corners[] = {
    { -30, -40, 0 }, { 0, -40, 0 }, { 0, 0, 0 }, { 40, 30, 0 }, { 40, -40, 0 }, { 70, -40, 0 },
    { 70, 80, 0 }, { 40, 80, 0 }, { 40, 40, 0 }, { 0, 10, 0 }, { 0, 80, 0 }, { -30, 80, 0 },
  };
  g_autoptr(HutRegion) region = new_region (corners, G_N_ELEMENTS (corners));

  assert_web (region, 8);
}

static void
web_in_line_with_other_edges_is_seen (void **state)
{
  /* A bridge that narrows to 3 where it meets the right block: the chord lies in line with the
   * block's side above and below it. */
  static const Corner corners[] = {
    { -30, -40, 0 }, { 0, -40, 0 }, { 0, 0, 0 }, { 20, 5, 0 }, { 20, -40, 0 }, { 70, -40, 0 },
    { 70, 80, 0 }, { 20, 80, 0 }, { 20, 8, 0 }, { 0, 10, 0 }, { 0, 80, 0 }, { -30, 80, 0 },
  };
  g_autoptr(HutRegion) region = new_region (corners, G_N_ELEMENTS (corners));

  assert_web (region, 3);
}

static void
slit_ends_leave_a_web_from_corner_to_corner (void **state)
{
  /* Two slots from opposite sides whose corners (20, 12) and (24, 15) are 3 : 4, so 5 apart. */
  static const Corner corners[] = {
    { 0, 0, 0 }, { 18, 0, 0 }, { 18, 12, 0 }, { 20, 12, 0 }, { 20, 0, 0 }, { 60, 0, 0 },
    { 60, 40, 0 }, { 26, 40, 0 }, { 26, 15, 0 }, { 24, 15, 0 }, { 24, 40, 0 }, { 0, 40, 0 },
  };
  g_autoptr(HutRegion) region = new_region (corners, G_N_ELEMENTS (corners));

  assert_web (region, 5); /* the flanks u = 20 and u = 24 are nearer, but nowhere opposite */
}

static void
step_corner_stands_over_the_opposite_edge (void **state)
{
  /* An L: the inner corner (10, 7) is 10 from the left, 7 from below; its arms are 7 and 10
   * wide. */
  static const Corner corners[] = { { 0, 0, 0 },  { 50, 0, 0 },  { 50, 7, 0 },
                                    { 10, 7, 0 }, { 10, 40, 0 }, { 0, 40, 0 } };
  g_autoptr(HutRegion) region = new_region (corners, G_N_ELEMENTS (corners));

  assert_web (region, 7);
}

static void
web_inside_a_circle_is_measured_from_the_notch_corner (void **state)
{
  /* Disc of radius 20 with a slot 4 wide down to v = -17: its corners (-2, -17), (2, -17) are
   * 20 - sqrt (4 + 289) from the circle. */
  const double rim_mm = sqrt (400 - 4);
  const double turn_rad = 2 * G_PI - 2 * atan2 (2, rim_mm);
  const Corner corners[] = {
    { -2, rim_mm, tan (turn_rad / 4) }, { 2, rim_mm, 0 }, { 2, -17, 0 }, { -2, -17, 0 }
  };
  g_autoptr(HutRegion) region = new_region (corners, G_N_ELEMENTS (corners));

  assert_web (region, 20 - sqrt (293));
}

static void
arc_that_comes_back_to_its_own_neighbour_is_seen (void **state)
{
  /* A round bite of 288 degrees, radius 10 round (0, 0), that opens upwards in a plate whose lower
   * rim runs 0.5 under it. */
  const double open_rad = 2 * G_PI / 10;
  const double u_mm = 10 * sin (open_rad), v_mm = 10 * cos (open_rad);
  const Corner corners[] = {
    { -40, -10.5, 0 }, { 40, -10.5, 0 }, { 40, v_mm, 0 },
    { u_mm, v_mm, -tan ((2 * G_PI - 2 * open_rad) / 4) }, { -u_mm, v_mm, 0 }, { -40, v_mm, 0 },
  };
  g_autoptr(HutRegion) region = new_region (corners, G_N_ELEMENTS (corners));

  assert_web (region, 0.5);
}

static void
fingers_are_as_wide_as_drawn_and_gaps_do_not_count (void **state)
{
  /* Fingers 8 and a gap of 2 between two of them. */
  static const Corner corners[] = {
    { 0, 0, 0 },   { 18, 0, 0 }, { 18, 30, 0 }, { 18, 36, 0 }, { 10, 36, 0 },
    { 10, 30, 0 }, { 8, 30, 0 }, { 8, 36, 0 },  { 0, 36, 0 },
  };
  g_autoptr(HutRegion) region = new_region (corners, G_N_ELEMENTS (corners));

  assert_web (region, 8);
}

static void
sharp_tips_are_no_webs (void **state)
{
  /* A plate with a pointed tongue: its flanks part by 20 degrees. */
  static const Corner corners[] = { { 0, 0, 0 },   { 40, 0, 0 },  { 40, 30, 0 }, { 22, 30, 0 },
                                    { 20, 41, 0 }, { 18, 30, 0 }, { 0, 30, 0 } };
  g_autoptr(HutRegion) region = new_region (corners, G_N_ELEMENTS (corners));

  assert_web (region, 30); /* from the root of the tongue both ends slide to the tip */
}

static void
round_tongue_is_as_wide_as_its_neck (void **state)
{
  /* A tongue 6 wide with a half round tip, and a dog-bone tongue whose head of radius 5 sits on a
   * neck of 6. */
  static const Corner tongue[] = { { 0, 0, 0 },   { 40, 0, 0 },  { 40, 30, 0 }, { 23, 30, 0 },
                                   { 23, 40, 1 }, { 17, 40, 0 }, { 17, 30, 0 }, { 0, 30, 0 } };
  const double turn_rad = 2 * G_PI - 2 * asin (0.6);
  const Corner bone[] = {
    { 0, 0, 0 },   { 40, 0, 0 },  { 40, 30, 0 }, { 23, 30, 0 }, { 23, 33, tan (turn_rad / 4) },
    { 17, 33, 0 }, { 17, 30, 0 }, { 0, 30, 0 }
  };
  g_autoptr(HutRegion) a = new_region (tongue, G_N_ELEMENTS (tongue));
  g_autoptr(HutRegion) b = new_region (bone, G_N_ELEMENTS (bone));

  assert_web (a, 6);
  assert_web (b, 6);
}

static void
grid_does_not_hide_a_web_between_parallel_edges (void **state)
{
  /* A tongue that tapers to its tip by 2 um over 10 mm: not locally narrowest anywhere, but a
   * web. */
  static const Corner corners[] = { { 0, 0, 0 },   { 40, 0, 0 },      { 40, 30, 0 },
                                    { 23, 30, 0 }, { 22.999, 40, 0 }, { 17.001, 40, 0 },
                                    { 17, 30, 0 }, { 0, 30, 0 } };
  g_autoptr(HutRegion) region = new_region (corners, G_N_ELEMENTS (corners));
  HutWeb web = { 0 };

  assert_true (hut_region_find_web (region, 7, &web));
  assert_near_mm (web.width_mm, 5.998, 1e-6);
}

static void
air_between_two_edges_is_no_web (void **state)
{
  /* A U: the arms are 10 apart and 12 wide. */
  static const Corner corners[] = { { 0, 0, 0 },   { 34, 0, 0 },  { 34, 40, 0 }, { 22, 40, 0 },
                                    { 22, 12, 0 }, { 12, 12, 0 }, { 12, 40, 0 }, { 0, 40, 0 } };
  g_autoptr(HutRegion) region = new_region (corners, G_N_ELEMENTS (corners));

  assert_web (region, 12);
}

static void
web_is_not_seen_through_a_hole (void **state)
{
  /* From rim to rim 20, but a slot lies between: 7 on either side. */
  g_autoptr(HutRegion) region = new_plate (200, 20);

  hut_region_take_hole (region, hut_path_new_rect ((HutRect) { 7, 7, 193, 13 }, 0));
  assert_web (region, 7);
}

static void
chord_that_leaves_the_material_is_no_web (void **state)
{
  /* Two wedge-shaped arms whose outer edges run level, 10 apart, from u = 4 to their sharp tips at
   * u = 10; between them a notch that reaches to u = 2. Behind, the body flares out. */
  static const Corner corners[] = { { -50, -27, 0 }, { 4, 0, 0 },  { 10, 0, 0 },  { 2, 5, 0 },
                                    { 10, 10, 0 },   { 4, 10, 0 }, { -50, 37, 0 } };
  g_autoptr(HutRegion) region = new_region (corners, G_N_ELEMENTS (corners));

  assert_web (region, 52); /* from the notch to the left edge */
}

static void
parallel_edges_with_a_notch_in_the_middle_hold_a_web_beside_it (void **state)
{
  /* A strip of 100 x 10, split by a pointed notch down to u = 20. */
  static const Corner corners[] = {
    { 0, 0, 0 }, { 100, 0, 0 }, { 20, 5, 0 }, { 100, 10, 0 }, { 0, 10, 0 }
  };
  g_autoptr(HutRegion) region = new_region (corners, G_N_ELEMENTS (corners));
  const HutWeb web = assert_web (region, 10);

  assert_true (web.a.u > 0 && web.a.u < 20);
}

static void
dents_by_the_grid_do_not_make_a_web_of_a_gap (void **state)
{
  /* A U whose gap is 10 wide; each flank has a dent of a micrometre. */
  static const Corner corners[] = {
    { 0, 0, 0 }, { 34, 0, 0 }, { 34, 40, 0 }, { 22, 40, 0 }, { 22.001, 26, 0 }, { 22, 12, 0 },
    { 12, 12, 0 }, { 11.999, 26, 0 }, { 12, 40, 0 }, { 0, 40, 0 }
  };
  g_autoptr(HutRegion) region = new_region (corners, G_N_ELEMENTS (corners));

  assert_web (region, 11.999);
}

static void
round_outline_on_the_grid_has_no_web (void **state)
{
  /* A disc of 4 arcs, turned and put back on the grid: its joins turn by a trifle, some to the
   * right. */
  g_autoptr(HutPath) round = hut_path_new_rect ((HutRect) { -3, -3, 3, 3 }, 3);

  for (int degrees = 0; degrees < 90; degrees++)
    {
      const HutPlacement turned = { .turn_rad = degrees * G_PI / 180,
                                    .shift = { degrees * 0.00037, degrees * 0.00071 } };
      g_autoptr(HutPath) path = hut_path_dup_placed (round, &turned);
      g_autoptr(HutRegion) region = hut_region_new (hut_path_new ());

      for (guint i = 0; i < hut_path_get_count (path); i++)
        {
          const HutVertex *vertex = hut_path_get (path, i);
          const HutPoint p = { hut_snap_mm (vertex->p.u), hut_snap_mm (vertex->p.v) };

          hut_path_append (region->outer, p, vertex->bulge, vertex->kind);
        }
      assert_no_web (region);
    }
}

static void
tapering_edges_that_only_partly_overlap_are_measured_at_the_narrow_end (void **state)
{
  /* A tongue with a slanted tip. Its right flank ends at v = 40, u = 22.998; there the left flank,
   * that leans by 0.001 from v = 30 to 45, is at 17 + 0.001 * 10 / 15. */
  static const Corner corners[] = {
    { 0, 0, 0 }, { 40, 0, 0 }, { 40, 30, 0 }, { 23, 30, 0 }, { 22.998, 40, 0 }, { 17.001, 45, 0 },
    { 17, 30, 0 }, { 0, 30, 0 }
  };
  g_autoptr(HutRegion) region = new_region (corners, G_N_ELEMENTS (corners));

  for (int degrees = 0; degrees < 360; degrees += 15)
    {
      const HutPlacement placement = { .mirrored = degrees % 2, .turn_rad = degrees * G_PI / 180 };
      g_autoptr(HutRegion) placed = hut_region_dup_placed (region, &placement);
      const HutPoint tip = hut_placement_apply (&placement, (HutPoint) { 22.998, 40 });
      HutWeb web = { 0 };

      assert_true (hut_region_find_web (placed, 20, &web));
      assert_near_mm (web.width_mm, 22.998 - 17 - 0.001 * 10 / 15, 1e-6);
      assert_near_mm (fmin (hut_point_distance_mm (web.a, tip), hut_point_distance_mm (web.b, tip)),
                      0, 0.002);
    }
}

static void
missing_part_of_a_circle_holds_no_web (void **state)
{
  /* Half discs of radius 5 whose flat sides lie where the rest of the disc would be nearest. */
  static const Corner dome_up[] = { { 25, 41, 0 }, { 35, 41, 1 } };
  static const Corner dome_down[] = { { 35, 30, 0 }, { 25, 30, 1 } };
  g_autoptr(HutRegion) up = new_region (dome_up, 2);
  g_autoptr(HutRegion) down = new_region (dome_down, 2);
  g_autoptr(HutRegion) rim = hut_region_new (hut_path_new_rect ((HutRect) { 0, 35, 60, 90 }, 0));
  g_autoptr(HutRegion) flats = new_plate (60, 80);
  g_autoptr(HutRegion) above = new_plate (60, 80);
  g_autoptr(HutRegion) below = new_plate (60, 80);

  hut_region_take_hole (rim, hut_path_copy (up->outer));
  assert_web (rim, 6); /* not 1, to (30, 36) */
  hut_region_take_hole (flats, hut_path_copy (up->outer));
  hut_region_take_hole (flats, hut_path_copy (down->outer));
  assert_web (flats, 11); /* not 1, from (30, 35) to (30, 36) */
  hut_region_take_hole (above, hut_path_copy (up->outer));
  hut_region_take_hole (above, new_circle (30, 30, 5));
  assert_web (above, 6);
  hut_region_take_hole (below, hut_path_copy (down->outer));
  hut_region_take_hole (below, new_circle (30, 41, 5));
  assert_web (below, 6);
}

static void
corner_in_the_centre_of_an_arc_is_as_far_as_its_radius (void **state)
{
  /* A wedge of 60 degrees with a tip of radius 10 round (0, 0), and a pointed hole whose tip is
   * there. The flanks touch the arc, so no corner of the outline holds a web. */
  const double tip_v_mm = 10 * sqrt (0.75);
  const Corner corners[] = {
    { -5, tip_v_mm, tan (G_PI / 6) }, { -5, -tip_v_mm, 0 },
    { -5 + 100 * sqrt (0.75), -tip_v_mm - 50, 0 }, { -5 + 100 * sqrt (0.75), tip_v_mm + 50, 0 }
  };
  HutPath *hole = hut_path_new ();
  g_autoptr(HutRegion) region = new_region (corners, G_N_ELEMENTS (corners));

  hut_path_append (hole, (HutPoint) { 0, 0 }, 0, HUT_EDGE_PLAIN);
  hut_path_append (hole, (HutPoint) { 30, -5 }, 0, HUT_EDGE_PLAIN);
  hut_path_append (hole, (HutPoint) { 30, 5 }, 0, HUT_EDGE_PLAIN);
  hut_region_take_hole (region, hole);
  assert_web (region, 10);
}

static void
arcs_of_one_centre_are_compared_over_the_part_that_both_span (void **state)
{
  /* An outline of radius 30 cut into arcs of 300 and 60 degrees; a D-shaped hole whose arc of
   * radius 28 spans 67 degrees, with rounded corners (radius 4, flat side 16 from the centre),
   * turned so that it faces each part of the outline. */
  const double corner_v_mm = sqrt (24 * 24 - 20 * 20); /* centre of a rounded corner: (-20, +-v) */
  const double touch_rad = atan2 (corner_v_mm, -20);
  const HutPoint touch = { -20 * 28 / 24.0, corner_v_mm * 28 / 24 };
  const double arc_rad = 2 * (G_PI - touch_rad);
  g_autoptr(HutPath) hole = hut_path_new ();

  hut_path_append (hole, touch, tan (arc_rad / 4), HUT_EDGE_PLAIN);
  hut_path_append (hole, (HutPoint) { touch.u, -touch.v },
                   tan ((2 * G_PI - touch_rad - arc_rad) / 4), HUT_EDGE_PLAIN);
  hut_path_append (hole, (HutPoint) { -16, -corner_v_mm }, 0, HUT_EDGE_PLAIN);
  hut_path_append (hole, (HutPoint) { -16, corner_v_mm }, tan (touch_rad / 4), HUT_EDGE_PLAIN);
  for (int degrees = 0; degrees < 360; degrees += 10)
    {
      const HutPlacement turned = { .turn_rad = degrees * G_PI / 180 };
      g_autoptr(HutRegion) region = hut_region_new (hut_path_new ());

      hut_path_append (region->outer, (HutPoint) { 30, 0 }, tan (G_PI * 300 / 720), HUT_EDGE_PLAIN);
      hut_path_append (region->outer, (HutPoint) { 15, -30 * sqrt (0.75) }, tan (G_PI * 60 / 720),
                       HUT_EDGE_PLAIN);
      hut_region_take_hole (region, hut_path_dup_placed (hole, &turned));
      assert_web (region, 2);
    }
}

static void
nothing_is_found_under_no_limit_and_web_stays_untouched (void **state)
{
  static const double limits_mm[] = { 0, -1, NAN };
  g_autoptr(HutRegion) region = new_plate (10, 5);
  g_autoptr(HutRegion) nothing = hut_region_new (hut_path_new ());
  g_autoptr(HutRegion) undefined = new_plate (10, 5);
  HutWeb web = { { 1, 2 }, { 3, 4 }, 5 };

  hut_path_append (undefined->outer, (HutPoint) { NAN, 3 }, 0, HUT_EDGE_PLAIN);
  for (guint i = 0; i < G_N_ELEMENTS (limits_mm); i++)
    assert_false (hut_region_find_web (region, limits_mm[i], &web));
  assert_false (hut_region_find_web (region, 5, &web));
  assert_false (hut_region_find_web (nothing, ANY_MM, &web));
  assert_false (hut_region_find_web (undefined, ANY_MM, &web));
  assert_true (web.a.u == 1 && web.a.v == 2 && web.b.u == 3 && web.b.v == 4 && web.width_mm == 5);
}

static void
doubled_points_change_nothing (void **state)
{
  static const Corner corners[] = { { 0, 0, 0 },   { 50, 0, 0 }, { 50, 0, 0 },
                                    { 50, 7, 0 },  { 10, 7, 0 }, { 10, 7, 0 },
                                    { 10, 40, 0 }, { 0, 40, 0 }, { 0, 0, 0 } };
  g_autoptr(HutRegion) region = new_region (corners, G_N_ELEMENTS (corners));

  assert_web (region, 7);
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (rectangle_is_as_wide_as_its_shorter_side_whatever_its_corners),
    cmocka_unit_test (chamfer_is_no_web),
    cmocka_unit_test (triangle_and_disc_have_no_web),
    cmocka_unit_test (ring_is_as_wide_as_its_radii_differ),
    cmocka_unit_test (eccentric_ring_is_narrowest_on_the_line_of_centres),
    cmocka_unit_test (half_of_an_eccentric_ring_is_narrowest_at_the_corners_of_its_hole),
    cmocka_unit_test (frame_is_narrowest_in_its_corners_when_only_its_outside_is_round),
    cmocka_unit_test (two_round_holes_leave_a_slanted_web),
    cmocka_unit_test (round_hole_near_the_rim),
    cmocka_unit_test (slanted_bridge_between_two_corners),
    cmocka_unit_test (web_in_line_with_other_edges_is_seen),
    cmocka_unit_test (slit_ends_leave_a_web_from_corner_to_corner),
    cmocka_unit_test (step_corner_stands_over_the_opposite_edge),
    cmocka_unit_test (web_inside_a_circle_is_measured_from_the_notch_corner),
    cmocka_unit_test (arc_that_comes_back_to_its_own_neighbour_is_seen),
    cmocka_unit_test (fingers_are_as_wide_as_drawn_and_gaps_do_not_count),
    cmocka_unit_test (sharp_tips_are_no_webs),
    cmocka_unit_test (round_tongue_is_as_wide_as_its_neck),
    cmocka_unit_test (grid_does_not_hide_a_web_between_parallel_edges),
    cmocka_unit_test (air_between_two_edges_is_no_web),
    cmocka_unit_test (web_is_not_seen_through_a_hole),
    cmocka_unit_test (chord_that_leaves_the_material_is_no_web),
    cmocka_unit_test (parallel_edges_with_a_notch_in_the_middle_hold_a_web_beside_it),
    cmocka_unit_test (dents_by_the_grid_do_not_make_a_web_of_a_gap),
    cmocka_unit_test (round_outline_on_the_grid_has_no_web),
    cmocka_unit_test (tapering_edges_that_only_partly_overlap_are_measured_at_the_narrow_end),
    cmocka_unit_test (missing_part_of_a_circle_holds_no_web),
    cmocka_unit_test (corner_in_the_centre_of_an_arc_is_as_far_as_its_radius),
    cmocka_unit_test (arcs_of_one_centre_are_compared_over_the_part_that_both_span),
    cmocka_unit_test (nothing_is_found_under_no_limit_and_web_stays_untouched),
    cmocka_unit_test (doubled_points_change_nothing),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}

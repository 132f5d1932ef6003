/* tests/draw/test-snap.c: moved things stop where they should.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "draw/hut-snap.h"
#include "draw/hut-draw-case.h"

/* A hole of 20 mm that is moved. */
#define HALF_MM 10.0
static const HutRect bounds = { -HALF_MM, -HALF_MM, HALF_MM, HALF_MM };

static HutSnap
find (const HutDrawCase *c,
      HutPoint wanted,
      double reach_mm,
      double step_mm)
{
  HutSnap snap;
  const HutSnapQuery query = {
    .panel = hut_draw_case_panel (c, "base-front"),
    .bounds = bounds,
    .reach_mm = reach_mm,
    .step_mm = step_mm,
  };

  hut_snap_find (c->assembly, &query, wanted, &snap);
  return snap;
}

static HutDrawCase
new_case (void)
{
  return hut_draw_case_take (hut_draw_case_box ("base-front", 60, 30, 16));
}

static const HutPanel *
front (const HutDrawCase *c)
{
  return g_ptr_array_index (c->assembly->panels, hut_draw_case_panel (c, "base-front"));
}

static void
near_the_centre_line_it_stops_there (void **state)
{
  g_auto (HutDrawCase) c = new_case ();
  const double middle_mm = front (&c)->width_mm / 2.0;
  const HutSnap snap = find (&c, (HutPoint){ middle_mm + 3.9, 50.0 }, 4.0, 1.0);

  assert_int_equal (snap.u_kind, HUT_SNAP_CENTRE_LINE);
  assert_near_mm (snap.at.u, middle_mm, 0.0006);
  assert_int_equal (snap.guide_count, 1);
  assert_true (snap.guides[0].vertical);
  assert_near_mm (snap.guides[0].at_mm, middle_mm, 1e-9);
}

static void
beyond_the_reach_it_does_not_stop (void **state)
{
  g_auto (HutDrawCase) c = new_case ();
  const double middle_mm = front (&c)->width_mm / 2.0;
  const HutSnap snap = find (&c, (HutPoint){ middle_mm + 4.2, 50.0 }, 4.0, 0.0);

  assert_int_equal (snap.u_kind, HUT_SNAP_NONE);
  assert_near_mm (snap.at.u, middle_mm + 4.2, 0.0006);
  assert_int_equal (snap.guide_count, 0);
}

/* Left edge of the front: the side panel's thickness of joint, then the front's own thickness and 5
 * mm behind the finger roots, then half the hole. */
static void
it_stops_where_the_finger_roots_have_their_room (void **state)
{
  g_auto (HutDrawCase) c = new_case ();
  const HutPanel *left
      = g_ptr_array_index (c.assembly->panels, hut_draw_case_panel (&c, "base-left"));
  const double edge_mm = left->thickness_mm + front (&c)->thickness_mm + 5.0;
  const HutSnap snap = find (&c, (HutPoint){ edge_mm + HALF_MM - 2.0, 50.0 }, 4.0, 1.0);

  assert_near_mm (hut_snap_edge_web_mm (front (&c), HUT_EDGE_LEFT), edge_mm, 1e-9);
  assert_int_equal (snap.u_kind, HUT_SNAP_WEB);
  assert_near_mm (snap.at.u, edge_mm + HALF_MM, 0.0006);
  assert_near_mm (snap.guides[0].at_mm, edge_mm, 1e-9);
}

static gboolean
has_edge_finding (double u_mm)
{
  g_auto (HutDrawCase) c = hut_draw_case_take (hut_draw_case_box ("base-front", u_mm, 40, 16));
  g_autoptr (GPtrArray) findings = hut_check_all (c.assembly, c.parts);

  for (guint i = 0; i < findings->len; i++)
    {
      const HutFinding *finding = g_ptr_array_index (findings, i);

      if (g_str_equal (finding->check, "opening.joint")
          || g_str_equal (finding->check, "opening.edge"))
        return TRUE;
    }
  return FALSE;
}

static void
where_it_stops_the_checks_are_content_and_just_before_they_are_not (void **state)
{
  g_auto (HutDrawCase) c = new_case ();
  const double stop_mm = hut_snap_edge_web_mm (front (&c), HUT_EDGE_LEFT) + 8.0;

  assert_false (has_edge_finding (stop_mm));
  assert_true (has_edge_finding (stop_mm - 0.5));
}

/* The seam is a free edge: no joint there. */
static void
at_a_free_edge_only_the_web_counts (void **state)
{
  g_auto (HutDrawCase) c = new_case ();
  const double web_mm = front (&c)->stock->smallest_web_mm;
  const HutSnap snap
      = find (&c, (HutPoint){ 110.0, front (&c)->height_mm - web_mm - HALF_MM + 1.0 }, 4.0, 1.0);

  assert_int_equal (snap.v_kind, HUT_SNAP_WEB);
  assert_near_mm (snap.at.v, front (&c)->height_mm - web_mm - HALF_MM, 0.0006);
}

static void
it_stops_level_with_the_centre_of_another_hole (void **state)
{
  g_auto (HutDrawCase) c = new_case ();
  const HutSnap snap = find (&c, (HutPoint){ 61.0, 31.0 }, 1.5, 1.0);

  assert_int_equal (snap.u_kind, HUT_SNAP_ITEM_CENTRE);
  assert_int_equal (snap.v_kind, HUT_SNAP_ITEM_CENTRE);
  assert_near_mm (snap.at.u, 60.0, 1e-9);
  assert_near_mm (snap.at.v, 30.0, 1e-9);
  assert_int_equal (snap.guide_count, 2);
}

/* The other hole spans 52 .. 68: left edges level at 62, right edges level at 58. */
static void
it_stops_with_edges_level (void **state)
{
  g_auto (HutDrawCase) c = new_case ();
  const HutSnap left = find (&c, (HutPoint){ 62.4, 50.0 }, 1.0, 1.0);
  const HutSnap right = find (&c, (HutPoint){ 57.7, 50.0 }, 1.0, 1.0);

  assert_int_equal (left.u_kind, HUT_SNAP_ITEM_EDGE);
  assert_near_mm (left.at.u, 62.0, 1e-9);
  assert_near_mm (left.guides[0].at_mm, 52.0, 1e-9);
  assert_near_mm (right.at.u, 58.0, 1e-9);
  assert_near_mm (right.guides[0].at_mm, 68.0, 1e-9);
}

static void
it_does_not_stop_at_itself (void **state)
{
  g_auto (HutDrawCase) c = new_case ();
  const HutSnapQuery query = { .panel = hut_draw_case_panel (&c, "base-front"),
                               .item = "hole",
                               .bounds = bounds,
                               .reach_mm = 1.5 };
  HutSnap snap;

  hut_snap_find (c.assembly, &query, (HutPoint){ 61.0, 31.0 }, &snap);
  assert_int_equal (snap.u_kind, HUT_SNAP_NONE);
  assert_int_equal (snap.v_kind, HUT_SNAP_NONE);
}

static void
without_reach_it_only_rounds_to_the_step (void **state)
{
  g_auto (HutDrawCase) c = new_case ();
  const HutSnap snap = find (&c, (HutPoint){ 60.2, 30.3 }, 0.0, 0.5);

  assert_int_equal (snap.u_kind, HUT_SNAP_NONE);
  assert_near_mm (snap.at.u, 60.0, 1e-9);
  assert_near_mm (snap.at.v, 30.5, 1e-9);
}

static void
step_is_round_and_at_most_half_a_pixel (void **state)
{
  const double scales[] = { 0.05, 0.3, 0.5, 0.51, 1.0, 3.0, 7.0, 40.0 };
  const double steps_mm[] = { 1.0, 1.0, 1.0, 0.5, 0.5, 0.1, 0.05, 0.01 };

  for (gsize i = 0; i < G_N_ELEMENTS (scales); i++)
    {
      assert_near_mm (hut_snap_step_mm (scales[i]), steps_mm[i], 1e-12);
      assert_true (hut_snap_step_mm (scales[i]) * scales[i] <= 0.5);
    }
}

static void
bounds_of_an_item_are_about_its_middle (void **state)
{
  g_auto (HutDrawCase) c = new_case ();
  HutRect b;

  assert_true (hut_snap_item_bounds (c.assembly, "hole", &b));
  assert_near_mm (b.u0, -8.0, 1e-9);
  assert_near_mm (b.v1, 8.0, 1e-9);
  assert_false (hut_snap_item_bounds (c.assembly, "no-such", &b));
}

static void
bounds_of_a_pattern_hold_all_its_holes (void **state)
{
  g_autoptr (HutOpening) opening
      = hut_opening_new ("p", (HutPanelId){ HUT_SHELL_BASE, HUT_SIDE_FRONT }, HUT_SHAPE_PATTERN);
  const HutPoint at[] = { { -20, 0 }, { 30, 5 } };

  g_array_set_size (opening->holes, 0);
  g_array_append_vals (opening->holes, at, 2);
  opening->diameter_mm = 4.0;
  opening->turn_deg = 0.0;
  const HutRect b = hut_snap_opening_bounds (opening);
  assert_near_mm (b.u0, -22.0, 1e-9);
  assert_near_mm (b.u1, 32.0, 1e-9);
  assert_near_mm (b.v0, -2.0, 1e-9);
  assert_near_mm (b.v1, 7.0, 1e-9);
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (near_the_centre_line_it_stops_there),
    cmocka_unit_test (beyond_the_reach_it_does_not_stop),
    cmocka_unit_test (it_stops_where_the_finger_roots_have_their_room),
    cmocka_unit_test (where_it_stops_the_checks_are_content_and_just_before_they_are_not),
    cmocka_unit_test (at_a_free_edge_only_the_web_counts),
    cmocka_unit_test (it_stops_level_with_the_centre_of_another_hole),
    cmocka_unit_test (it_stops_with_edges_level),
    cmocka_unit_test (it_does_not_stop_at_itself),
    cmocka_unit_test (without_reach_it_only_rounds_to_the_step),
    cmocka_unit_test (step_is_round_and_at_most_half_a_pixel),
    cmocka_unit_test (bounds_of_an_item_are_about_its_middle),
    cmocka_unit_test (bounds_of_a_pattern_hold_all_its_holes),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}

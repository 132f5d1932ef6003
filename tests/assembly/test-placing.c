/* tests/assembly/test-placing.c: openings and windows on their panels.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "config.h"
#include "assembly/hut-placing.h"
#include "hut-assert.h"
#include "hut-box-design.h"

static const HutPanelId front = { HUT_SHELL_BASE, HUT_SIDE_FRONT }; /* 312 x 90, edge joints 6 deep */

static HutTroubleKind
only_trouble (const HutAssembly *assembly)
{
  assert_int_equal (assembly->troubles->len, 1);
  return g_array_index (assembly->troubles, HutTrouble, 0).kind;
}

static void
anchors_count_from_their_edge_inwards (void **state)
{
  static const struct
  {
    HutAnchorKind u_anchor, v_anchor;
    double u_mm, v_mm;
  } cases[] = {
    { HUT_ANCHOR_START, HUT_ANCHOR_START, 40, 30 },
    { HUT_ANCHOR_CENTRE, HUT_ANCHOR_CENTRE, 156 + 40, 45 + 30 },
    { HUT_ANCHOR_END, HUT_ANCHOR_END, 312 - 40, 90 - 30 },
    /* body 100 x 80 x 60 at x 6 + 100: middle at x 156, z 6 + 30 */
    { HUT_ANCHOR_BODY, HUT_ANCHOR_BODY, 156 + 40, 36 + 30 },
  };

  for (guint i = 0; i < G_N_ELEMENTS (cases); i++)
    {
      g_autoptr(HutDesign) design = hut_box_design_new ();
      g_autoptr(HutAssembly) assembly = hut_assembly_new (design);
      HutPosition at = { .panel = front, .u_anchor = cases[i].u_anchor, .v_anchor = cases[i].v_anchor, .u_offset_mm = 40,
                         .v_offset_mm = 30, .body = (char *) "block" };
      HutPoint middle;

      assert_true (hut_assembly_locate (assembly, &at, &middle));
      assert_near_mm (middle.u, cases[i].u_mm, 1e-9);
      assert_near_mm (middle.v, cases[i].v_mm, 1e-9);
      /* And back: the offsets for a place give that place. */
      assert_true (hut_assembly_position_for (assembly, (HutPoint) { 77.1234, 33.3 }, &at));
      assert_true (hut_assembly_locate (assembly, &at, &middle));
      assert_near_mm (middle.u, 77.123, 1e-9);
      assert_near_mm (middle.v, 33.3, 1e-9);
    }
}

static void
unknown_panel_and_body_leave_the_position_alone (void **state)
{
  g_autoptr(HutDesign) design = hut_box_design_new ();
  g_autoptr(HutAssembly) assembly = hut_assembly_new (design);
  HutPosition no_panel = { .panel = { HUT_SHELL_BASE, HUT_SIDE_TOP }, .u_offset_mm = 3 };
  HutPosition no_body = { .panel = front, .u_anchor = HUT_ANCHOR_BODY, .u_offset_mm = 3, .body = (char *) "nobody" };

  assert_false (hut_assembly_position_for (assembly, (HutPoint) { 1, 1 }, &no_panel));
  assert_false (hut_assembly_position_for (assembly, (HutPoint) { 1, 1 }, &no_body));
  assert_near_mm (no_panel.u_offset_mm, 3, 0);
  assert_near_mm (no_body.u_offset_mm, 3, 0);
}

static void
round_opening_is_cut_out_of_its_panel (void **state)
{
  g_autoptr(HutDesign) design = hut_box_design_new ();
  g_autoptr(HutAssembly) plain = hut_assembly_new (design);
  g_autoptr(HutAssembly) assembly = NULL;
  double before_mm2, after_mm2;

  hut_box_design_add_opening (design, front, HUT_SHAPE_ROUND)->diameter_mm = 30;
  assembly = hut_assembly_new (design);
  before_mm2 = hut_region_area_mm2 (hut_assembly_get_panel (plain, front)->region);
  after_mm2 = hut_region_area_mm2 (hut_assembly_get_panel (assembly, front)->region);
  assert_near (before_mm2 - after_mm2, G_PI * 15 * 15, 1e-6);
  assert_true (hut_assembly_get_hole (assembly, "opening")->cut);
  assert_int_equal (assembly->troubles->len, 0);
}

static void
opening_over_an_edge_or_another_hole_is_not_cut_but_named (void **state)
{
  static const struct
  {
    double u_offset_mm;
    gboolean cut;
    const char *reason;
  } cases[] = {
    { -156 + 10.1, TRUE, "0.1 mm from the left edge, in a finger that the panel owns" },
    { -156 + 10.02, FALSE, "0.02 mm from the edge: less than the guard" },
    { -156, FALSE, "half outside" },
    { -500, FALSE, "wholly outside" },
  };

  for (guint i = 0; i < G_N_ELEMENTS (cases); i++)
    {
      g_autoptr(HutDesign) design = hut_box_design_new ();
      HutOpening *opening = hut_box_design_add_opening (design, front, HUT_SHAPE_ROUND);
      g_autoptr(HutAssembly) assembly = NULL;

      opening->diameter_mm = 20;
      opening->at.u_offset_mm = cases[i].u_offset_mm;
      /* v 1 .. 21: beside the corner and the first finger of the left edge, 6 .. 22.8, which the front owns */
      opening->at.v_offset_mm = -45 + 11;
      assembly = hut_assembly_new (design);
      if (hut_assembly_get_hole (assembly, "opening")->cut != cases[i].cut)
        fail_msg ("%s: cut is %d", cases[i].reason, !cases[i].cut);
      if (!cases[i].cut)
        assert_int_equal (only_trouble (assembly), HUT_TROUBLE_HOLE_OUTSIDE);
    }
}

static void
second_of_two_overlapping_openings_is_not_cut (void **state)
{
  g_autoptr(HutDesign) design = hut_box_design_new ();
  g_autoptr(HutAssembly) assembly = NULL;

  hut_box_design_add_opening (design, front, HUT_SHAPE_ROUND)->diameter_mm = 30;
  hut_box_design_add_opening (design, front, HUT_SHAPE_ROUND)->diameter_mm = 20;
  assembly = hut_assembly_new (design);
  assert_true (hut_assembly_get_hole (assembly, "opening")->cut);
  assert_false (hut_assembly_get_hole (assembly, "opening-2")->cut);
  assert_int_equal (only_trouble (assembly), HUT_TROUBLE_HOLE_OUTSIDE);
}

static void
pattern_with_one_bad_hole_is_not_half_cut (void **state)
{
  g_autoptr(HutDesign) design = hut_box_design_new ();
  HutOpening *vent = hut_box_design_add_opening (design, front, HUT_SHAPE_PATTERN);
  g_autoptr(HutAssembly) assembly = NULL;
  const HutPoint far_away = { 400, 0 };

  g_array_append_val (vent->holes, far_away);
  assembly = hut_assembly_new (design);
  assert_int_equal (hut_assembly_get_panel (assembly, front)->region->holes->len, 0);
  assert_int_equal (only_trouble (assembly), HUT_TROUBLE_HOLE_OUTSIDE);
}

static void
opening_on_a_panel_that_this_lid_has_not_is_named (void **state)
{
  g_autoptr(HutDesign) design = hut_box_design_new ();
  g_autoptr(HutAssembly) assembly = NULL;

  hut_box_design_add_opening (design, (HutPanelId) { HUT_SHELL_BASE, HUT_SIDE_TOP }, HUT_SHAPE_ROUND);
  assembly = hut_assembly_new (design);
  assert_int_equal (only_trouble (assembly), HUT_TROUBLE_PANEL_UNKNOWN);
}

static void
window_makes_glazing_and_a_frame_behind_it (void **state)
{
  g_autoptr(HutDesign) design = hut_box_design_new ();
  g_autoptr(HutAssembly) assembly = NULL;
  const HutPlate *glazing, *frame;
  const double corner_mm2 = (4 - G_PI) * 25; /* cut off by four corners of radius 5 */

  hut_box_design_add_window (design, front); /* 120 x 40 r 5, overlap 15 */
  assembly = hut_assembly_new (design);
  assert_int_equal (assembly->plates->len, 2);
  glazing = g_ptr_array_index (assembly->plates, 0);
  frame = g_ptr_array_index (assembly->plates, 1);
  assert_near (hut_region_area_mm2 (glazing->region), 150 * 70 - corner_mm2, 1e-6);
  assert_near (hut_region_area_mm2 (frame->region), 150 * 70 - 120 * 40, 1e-6);
  assert_near_mm (glazing->depth0_mm, 6, 0);
  assert_near_mm (glazing->depth1_mm, 12, 0);
  assert_near_mm (frame->depth1_mm, 18, 0);
}

static void
window_without_its_stock_is_named (void **state)
{
  g_autoptr(HutDesign) design = hut_box_design_new ();
  HutWindow *window = hut_box_design_add_window (design, front);
  g_autoptr(HutAssembly) assembly = NULL;

  g_free (window->glazing_stock);
  window->glazing_stock = g_strdup ("gone");
  assembly = hut_assembly_new (design);
  assert_int_equal (only_trouble (assembly), HUT_TROUBLE_STOCK_MISSING);
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (anchors_count_from_their_edge_inwards),
    cmocka_unit_test (unknown_panel_and_body_leave_the_position_alone),
    cmocka_unit_test (round_opening_is_cut_out_of_its_panel),
    cmocka_unit_test (opening_over_an_edge_or_another_hole_is_not_cut_but_named),
    cmocka_unit_test (second_of_two_overlapping_openings_is_not_cut),
    cmocka_unit_test (pattern_with_one_bad_hole_is_not_half_cut),
    cmocka_unit_test (opening_on_a_panel_that_this_lid_has_not_is_named),
    cmocka_unit_test (window_makes_glazing_and_a_frame_behind_it),
    cmocka_unit_test (window_without_its_stock_is_named),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}

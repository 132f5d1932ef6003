/* tests/checks/test-check-cut.c: kerf, webs, small holes.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "config.h"
#include "checks/hut-check-case.h"
#include "hut-assert.h"

static const HutPanelId lid_top = { HUT_SHELL_LID, HUT_SIDE_TOP };

static HutCheckCase *
with_two_rounds (double apart_mm)
{
  HutDesign *design = hut_check_case_design ();

  hut_check_case_add_round (design, "vent", lid_top, 100, 100, 20);
  hut_check_case_add_round (design, "plug", lid_top, 120 + apart_mm, 100, 20);
  return hut_check_case_new (design);
}

static void
plain_parts_are_not_told (void **state)
{
  g_autoptr(HutCheckCase) c = hut_check_case_new (hut_check_case_design ());

  assert_int_equal (hut_check_case_count (c, "cut.web"), 0);
  assert_int_equal (hut_check_case_count (c, "cut.kerf"), 0);
  assert_int_equal (hut_check_case_count (c, "cut.hole"), 0);
}

static void
narrow_web_of_two_openings_is_told_by_their_names_only (void **state)
{
  g_autoptr(HutCheckCase) c = with_two_rounds (4);

  hut_check_case_assert (hut_check_case_get (c, "opening.overlap", 0), HUT_SEVERITY_WARNS, 4, 6);
  assert_int_equal (hut_check_case_count (c, "cut.web"), 0);
}

static void
web_under_half_of_what_is_wanted_blocks (void **state)
{
  g_autoptr(HutCheckCase) c = with_two_rounds (2.5);
  const HutFinding *finding = hut_check_case_find (
      c, "cut.web", "A web of lid top (part LID TOP) is 2.5 mm wide; its stock holds 6 mm.");

  hut_check_case_assert (finding, HUT_SEVERITY_BLOCKS, 2.5, 6);
  hut_check_case_assert_place (finding, 0, lid_top, (HutRect) { 109, 99, 113.5, 101 });
}

static void
hole_smaller_than_the_kerf_blocks (void **state)
{
  HutDesign *design = hut_check_case_design ();
  g_autoptr(HutCheckCase) c = NULL;
  const HutFinding *finding;
  const HutPlace *place;

  hut_check_case_add_round (design, "pin", lid_top, 100, 100, 0.15);
  c = hut_check_case_new (design);
  finding = hut_check_case_get (c, "cut.kerf", 0);
  hut_check_case_assert (finding, HUT_SEVERITY_BLOCKS, 0.15, 0.2);
  /* On the hole's border, which is 0.075 from its middle. */
  place = &g_array_index (finding->places, HutPlace, 0);
  assert_near_mm ((place->rect.u0 + place->rect.u1) / 2, 100, 0.0751);
  assert_near_mm ((place->rect.v0 + place->rect.v1) / 2, 100, 0.0751);
  assert_near_mm (place->rect.u1 - place->rect.u0, 2, 1e-6);
  assert_string_equal (finding->what, "lid top");
  assert_int_equal (hut_check_case_count (c, "cut.kerf"), 1);
}

static void
notch_narrower_than_the_kerf_blocks_at_its_place (void **state)
{
  /* A part put in by hand: 40 x 20 with a notch 0.1 wide and 5 deep in its lower side, at u = 10.
   */
  const HutPoint corners[] = {
    { 0, 0 }, { 10, 0 }, { 10, 5 }, { 10.1, 5 }, { 10.1, 0 }, { 40, 0 }, { 40, 20 }, { 0, 20 },
  };
  g_autoptr(HutCheckCase) c = hut_check_case_new (hut_check_case_design ());
  HutPath *path = hut_path_new ();
  HutPart *part = g_new0 (HutPart, 1);
  const HutFinding *finding;
  const HutPlace *place;

  for (guint i = 0; i < G_N_ELEMENTS (corners); i++)
    hut_path_append (path, corners[i], 0.0, HUT_EDGE_PLAIN);
  part->id = g_strdup ("odd");
  part->label = g_strdup ("ODD");
  part->panel = (guint)hut_assembly_find_panel (c->assembly, lid_top);
  part->stock = hut_design_get_stock (c->assembly->design, "plywood");
  part->region = hut_region_new (path);
  g_ptr_array_add (c->parts->parts, part);
  hut_check_case_check (c);
  finding = hut_check_case_get (c, "cut.kerf", 0);
  assert_string_equal (finding->other, "ODD");
  place = &g_array_index (finding->places, HutPlace, 0);
  assert_near_mm ((place->rect.u0 + place->rect.u1) / 2, 10, 0.2);
}

static void
small_hole_for_a_laser_warns (void **state)
{
  /* Half of 6 is 3. */
  HutDesign *design = hut_check_case_design ();
  g_autoptr(HutCheckCase) c = NULL;
  const HutFinding *finding;

  hut_check_case_add_round (design, "pin", lid_top, 100, 100, 2);
  hut_check_case_add_round (design, "wire", lid_top, 150, 100, 3);
  c = hut_check_case_new (design);
  finding = hut_check_case_find (
      c, "cut.hole", "pin is 2 mm across; from 3 mm on a laser cuts holes round in lid top.");
  hut_check_case_assert (finding, HUT_SEVERITY_WARNS, 2, 3);
  hut_check_case_assert_place (finding, 0, lid_top, (HutRect) { 99, 99, 101, 101 });
  assert_int_equal (hut_check_case_count (c, "cut.hole"), 1);
}

static void
small_hole_in_thin_sheet_is_at_least_a_millimetre (void **state)
{
  HutDesign *design = hut_check_case_design ();
  HutStock *stock = hut_design_get_stock (design, "plywood");
  g_autoptr(HutCheckCase) c = NULL;

  g_array_index (stock->readings_mm, double, 0) = 1.5;
  g_array_index (stock->readings_mm, double, 1) = 1.5;
  hut_check_case_add_round (design, "pin", lid_top, 100, 100, 0.9);
  c = hut_check_case_new (design);
  hut_check_case_assert (hut_check_case_get (c, "cut.hole", 0), HUT_SEVERITY_WARNS, 0.9, 1);
}

static void
hole_for_a_router_needs_more_than_its_tool (void **state)
{
  /* Tool of 3: 3.2; a slot counts with its breadth. */
  HutDesign *design = hut_check_case_design ();
  HutOpening *slot = hut_opening_new ("slot", lid_top, HUT_SHAPE_SLOT);
  g_autoptr(HutCheckCase) c = NULL;

  design->cutter.kind = HUT_CUTTER_ROUTER;
  hut_design_get_stock (design, "plywood")->kerf_mm = 3.0;
  slot->width_mm = 40.0;
  slot->height_mm = 3.1;
  g_ptr_array_add (design->openings, slot);
  c = hut_check_case_new (design);
  hut_check_case_assert (
      hut_check_case_find (c, "cut.hole", "slot is 3.1 mm across; the tool needs 3.2 mm."),
      HUT_SEVERITY_WARNS, 3.1, 3.2);
}

static void
bought_parts_are_not_cut (void **state)
{
  HutDesign *design = hut_check_case_design ();
  g_autoptr(HutCheckCase) c = NULL;

  /* A frame of 4 over the border is narrower than the web of 6; the bought glazing under it is
   * not cut. */
  hut_check_case_add_window (design, "view", lid_top, (HutRect) { 100, 100, 200, 180 })->overlap_mm
      = 4.0;
  c = hut_check_case_new (design);
  assert_int_equal (hut_check_case_count (c, "cut.web"), 1);
  hut_check_case_assert (
      hut_check_case_find (c, "cut.web",
                           "A web of view (part FRAME VIEW) is 4 mm wide; its stock holds 6 mm."),
      HUT_SEVERITY_WARNS, 4, 6);
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (plain_parts_are_not_told),
    cmocka_unit_test (narrow_web_of_two_openings_is_told_by_their_names_only),
    cmocka_unit_test (web_under_half_of_what_is_wanted_blocks),
    cmocka_unit_test (hole_smaller_than_the_kerf_blocks),
    cmocka_unit_test (notch_narrower_than_the_kerf_blocks_at_its_place),
    cmocka_unit_test (small_hole_for_a_laser_warns),
    cmocka_unit_test (small_hole_in_thin_sheet_is_at_least_a_millimetre),
    cmocka_unit_test (hole_for_a_router_needs_more_than_its_tool),
    cmocka_unit_test (bought_parts_are_not_cut),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}

/* tests/checks/test-way-out.c: a fitting opening for a service at a sensible free place.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "config.h"
#include "checks/hut-check-case.h"
#include "checks/hut-fitting.h"
#include "checks/hut-way-out.h"
#include "hut-assert.h"
#include "hut-random-design.h"
#include <string.h>

static HutService *
add_service (HutDesign *design,
             HutVec3 at)
{
  HutService *service = hut_service_new ("lead", HUT_SERVICE_LEAD);

  service->head_width_mm = 11.5;
  service->head_height_mm = 10.5;
  service->at = at;
  g_ptr_array_add (design->machine.services, service);
  return service;
}

static HutOpening *
find (const HutCheckCase *c,
      const char *service)
{
  g_autoptr(HutWayOut) way = hut_way_out_find (c->assembly, c->parts, c->findings, service, NULL);

  assert_true (way == NULL || way->hardware == NULL);
  return way != NULL ? g_steal_pointer (&way->opening) : NULL;
}

static void
it_lies_where_the_machine_has_its_end (void **state)
{
  /* The end is at the machine's back, 100 from its left and 60 high; the machine stands 26 from
   * the left and 6 high: on the back panel, seen from outside, at u = 372 - 126 = 246, v = 66. */
  HutDesign *design = hut_check_case_design ();
  g_autoptr(HutCheckCase) c = NULL;
  g_autoptr(HutOpening) opening = NULL;
  HutPoint at;

  add_service (design, (HutVec3) { 100, 300, 60 });
  c = hut_check_case_new (design);
  opening = find (c, "lead");
  assert_non_null (opening);
  assert_true (hut_panel_id_equal (opening->at.panel,
                                   (HutPanelId) { HUT_SHELL_BASE, HUT_SIDE_BACK }));
  assert_int_equal (opening->shape, HUT_SHAPE_ROUND);
  assert_near_mm (opening->diameter_mm, 17, 0); /* hypot (11.5, 10.5) + 1 = 16.57 */
  assert_string_equal (opening->serves, "lead");
  assert_true (hut_assembly_locate (c->assembly, &opening->at, &at));
  assert_true (fabs (at.u - 246) <= 5 && fabs (at.v - 66) <= 5); /* half a pitch of 10 */
}

static void
finding_of_a_forgotten_way_makes_it_by_one_click (void **state)
{
  HutDesign *design = hut_check_case_design ();
  g_autoptr(HutDesign) cured = NULL;
  g_autoptr(HutCheckCase) c = NULL, after = NULL;
  const HutFinding *finding;
  g_autofree char *fix = NULL;

  add_service (design, (HutVec3) { 100, 300, 60 });
  cured = hut_design_copy (design);
  c = hut_check_case_new (design);
  finding = hut_check_case_get (c, "service.missing", 0);
  fix = hut_finding_dup_fix_text (finding, NULL, ".");
  assert_string_equal (fix, "Make an opening for it");
  assert_true (hut_finding_apply_fix (finding, cured));
  assert_int_equal (cured->openings->len + cured->hardware->len, 1);
  after = hut_check_case_new (g_steal_pointer (&cured));
  for (guint i = 0; i < after->findings->len; i++)
    assert_false (g_str_has_prefix (
        ((const HutFinding *) g_ptr_array_index (after->findings, i))->check, "service."));
}

static void
no_place_no_way_and_the_design_stays (void **state)
{
  HutDesign *design = hut_check_case_design ();
  g_autoptr(HutDesign) same = NULL, before = NULL;
  g_autoptr(HutCheckCase) c = NULL;
  HutService *service = hut_service_new ("duct", HUT_SERVICE_DUCT);

  /* A head of 400 in walls of 372 x 140 and less. */
  service->line_mm = service->head_width_mm = service->head_height_mm = 400.0;
  g_ptr_array_add (design->machine.services, service);
  same = hut_design_copy (design);
  before = hut_design_copy (design);
  c = hut_check_case_new (design);
  assert_false (hut_finding_apply_fix (hut_check_case_get (c, "service.missing", 0), same));
  assert_true (hut_design_equal (same, before));
}

static void
the_next_one_keeps_off_the_first (void **state)
{
  HutDesign *design = hut_check_case_design ();
  g_autoptr(HutCheckCase) c = NULL;
  g_autoptr(HutOpening) opening = NULL;
  HutPoint at;

  add_service (design, (HutVec3) { 100, 300, 60 });
  hut_check_case_add_round (design, "first", (HutPanelId) { HUT_SHELL_BASE, HUT_SIDE_BACK }, 246,
                            66, 40);
  c = hut_check_case_new (design);
  opening = find (c, "lead");
  assert_non_null (opening);
  assert_true (hut_assembly_locate (c->assembly, &opening->at, &at));
  /* Radii 20 and 8.5, smallest web 6. */
  assert_true (hypot (at.u - 246, at.v - 66) >= 20 + 8.5 + 6 - 1e-6);
}

static void
a_large_plug_gets_a_rectangle (void **state)
{
  HutDesign *design = hut_check_case_design ();
  g_autoptr(HutCheckCase) c = NULL;
  g_autoptr(HutOpening) opening = NULL;
  HutService *service = add_service (design, (HutVec3) { 100, 300, 60 });
  HutGate gate;

  service->head_width_mm = 50;
  service->head_height_mm = 48;
  c = hut_check_case_new (design);
  opening = find (c, "lead");
  assert_non_null (opening);
  assert_int_equal (opening->shape, HUT_SHAPE_RECTANGLE);
  gate = hut_gate_of (opening);
  assert_true (hut_pass_lets (
      &gate, hut_head_of (hut_design_get_service (c->assembly->design, "lead"))));
}

static gboolean
is_said (const GPtrArray *findings,
         const char *text)
{
  for (guint i = 0; i < findings->len; i++)
    {
      g_autofree char *other = hut_finding_dup_text (g_ptr_array_index (findings, i), NULL, ".");

      if (strcmp (other, text) == 0)
        return TRUE;
    }
  return FALSE;
}

static void
assert_nothing_new (const HutCheckCase *before,
                    const HutCheckCase *after,
                    guint seed)
{
  for (guint i = 0; i < after->findings->len; i++)
    {
      const HutFinding *finding = g_ptr_array_index (after->findings, i);
      g_autofree char *text = hut_finding_dup_text (finding, NULL, ".");

      if (finding->severity != HUT_SEVERITY_NOTES && !is_said (before->findings, text))
        fail_msg ("seed %u: new: %s", seed, text);
    }
}

/* A bulkhead for a tube of 8 mm: it serves, keeps apart by its flange, and the checks like it. */
static void
a_fitting_goes_there_instead (void **state)
{
  HutDesign *design = hut_check_case_design ();
  g_autoptr(HutCatalog) catalog = hut_catalog_new ();
  g_autoptr(HutCheckCase) before = NULL, after = NULL;
  g_autoptr(HutWayOut) way = NULL;
  HutService *hose = add_service (design, (HutVec3) { 100, 300, 60 });
  const HutItem *fitting;
  HutDesign *with;

  hose->kind = HUT_SERVICE_HOSE;
  hose->line_mm = hose->head_width_mm = hose->head_height_mm = 8.0;
  before = hut_check_case_new (design);
  fitting = hut_fitting_choose (catalog, hut_design_get_service (before->assembly->design, "lead"),
                                6.0);
  assert_non_null (fitting);
  way = hut_way_out_find (before->assembly, before->parts, before->findings, "lead", fitting);
  assert_non_null (way);
  assert_null (way->opening);
  with = hut_design_copy (before->assembly->design);
  assert_string_equal (hut_way_out_add (way, fitting, with), "lead-way");
  assert_int_equal (with->hardware->len, 1);
  after = hut_check_case_new (with);
  assert_int_equal (hut_check_case_count (after, "service.missing"), 0);
  assert_int_equal (hut_check_case_count (after, "service.tight"), 0);
  assert_nothing_new (before, after, 0);
}

static void
no_room_is_no_opening (void **state)
{
  HutDesign *design = hut_check_case_design ();
  g_autoptr(HutCheckCase) c = NULL;
  g_autoptr(HutOpening) opening = NULL;
  HutService *service = add_service (design, (HutVec3) { 100, 300, 60 });

  service->kind = HUT_SERVICE_DUCT;
  service->head_width_mm = service->head_height_mm = 400;
  c = hut_check_case_new (design);
  opening = find (c, "lead");
  assert_null (opening);
  assert_null (find (c, "unknown"));
}

/* ---- random designs -------------------------------------------------------------------------- */

/* Inside its panel, apart from all other holes by the smallest web; and the head passes. */
static void
assert_good (const HutCheckCase *after,
             const HutOpening *opening,
             guint seed)
{
  const HutPlacedHole *hole = hut_assembly_get_hole (after->assembly, opening->id);
  const HutPanel *panel = g_ptr_array_index (after->assembly->panels, hole->panel);
  const HutService *service = hut_design_get_service (after->assembly->design, opening->serves);
  const HutGate gate = hut_gate_of (opening);

  if (!hole->cut || hole->bounds.u0 < 0 || hole->bounds.v0 < 0
      || hole->bounds.u1 > panel->width_mm || hole->bounds.v1 > panel->height_mm)
    fail_msg ("seed %u: not inside its panel", seed);
  if (!hut_pass_lets (&gate, hut_head_of (service)))
    fail_msg ("seed %u: the head does not pass", seed);
  for (guint i = 0; i < after->assembly->holes->len; i++)
    {
      const HutPlacedHole *other = g_ptr_array_index (after->assembly->holes, i);
      const double apart_mm
          = MAX (MAX (other->bounds.u0 - hole->bounds.u1, hole->bounds.u0 - other->bounds.u1),
                 MAX (other->bounds.v0 - hole->bounds.v1, hole->bounds.v0 - other->bounds.v1));

      if (other != hole && other->panel == hole->panel && apart_mm <= 0)
        fail_msg ("seed %u: over another hole", seed);
    }
}

static void
openings_for_random_designs_bring_nothing_new (void **state)
{
  const guint most = (guint)hut_random_seed_count (160) / 4;
  guint found_count = 0, asked_count = 0;

  for (guint seed = 0; seed < most; seed++)
    {
      HutDesign *design = hut_random_design_with (
          seed, HUT_RANDOM_OPENINGS | HUT_RANDOM_WINDOWS | HUT_RANDOM_BAFFLES);
      g_autoptr(HutCheckCase) before = NULL, after = NULL;
      g_autoptr(HutOpening) opening = NULL;

      add_service (design, (HutVec3) { 20, 30, 40 });
      before = hut_check_case_new (design);
      if (!before->assembly->whole)
        continue;
      asked_count++;
      opening = find (before, "lead");
      if (opening == NULL)
        continue;
      found_count++;
      design = hut_design_copy (before->assembly->design);
      g_ptr_array_add (design->openings, hut_opening_copy (opening));
      after = hut_check_case_new (design);
      assert_nothing_new (before, after, seed);
      assert_good (after, opening, seed);
      assert_int_equal (hut_check_case_count (after, "service.missing"),
                        hut_check_case_count (before, "service.missing") - 1);
    }
  assert_true (found_count > asked_count / 2);
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (it_lies_where_the_machine_has_its_end),
    cmocka_unit_test (finding_of_a_forgotten_way_makes_it_by_one_click),
    cmocka_unit_test (no_place_no_way_and_the_design_stays),
    cmocka_unit_test (the_next_one_keeps_off_the_first),
    cmocka_unit_test (a_large_plug_gets_a_rectangle),
    cmocka_unit_test (a_fitting_goes_there_instead),
    cmocka_unit_test (no_room_is_no_opening),
    cmocka_unit_test (openings_for_random_designs_bring_nothing_new),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}

/* tests/checks/test-check-service.c: leads, hoses and ducts against the openings that serve them.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "config.h"
#include "checks/hut-check-case.h"
#include "checks/hut-ledger.h"
#include "hut-assert.h"
#include "hut-test-item.h"

static const HutPanelId back = { HUT_SHELL_BASE, HUT_SIDE_BACK };

static HutService *
add_lead (HutDesign *design,
          const char *id)
{
  HutService *service = hut_service_new (id, HUT_SERVICE_LEAD);

  service->head_width_mm = 27.0;
  service->head_height_mm = 20.0;
  g_ptr_array_add (design->machine.services, service);
  return service;
}

static void
serve (HutOpening *opening,
       const char *service)
{
  g_free (opening->serves);
  opening->serves = g_strdup (service);
}

static void
a_forgotten_hole_blocks (void **state)
{
  HutDesign *design = hut_check_case_design ();
  g_autoptr(HutCheckCase) c = NULL;

  add_lead (design, "mains");
  hut_check_case_add_round (design, "other", back, 100, 60, 35); /* serves nothing: that is fine */
  c = hut_check_case_new (design);
  assert_int_equal (hut_check_case_count (c, "service.missing"), 1);
  hut_check_case_assert (
      hut_check_case_find (c, "service.missing",
                           "mains has no way through the wall: 0 openings serve it; 1 is needed."),
      HUT_SEVERITY_BLOCKS, 0, 1);
}

static void
a_hole_that_lets_the_plug_through_is_enough (void **state)
{
  HutDesign *design = hut_check_case_design ();
  g_autoptr(HutCheckCase) c = NULL;

  add_lead (design, "mains");
  serve (hut_check_case_add_round (design, "hole", back, 100, 60, 35), "mains");
  c = hut_check_case_new (design);
  assert_int_equal (hut_check_case_count (c, "service.missing"), 0);
  assert_int_equal (hut_check_case_count (c, "service.tight"), 0);
  assert_int_equal (hut_check_case_count (c, "service.doubled"), 0);
}

static void
a_tight_hole_is_told_with_both_numbers (void **state)
{
  /* hypot (27, 20) + 1 = 34.601. */
  HutDesign *design = hut_check_case_design ();
  g_autoptr(HutCheckCase) c = NULL;
  const HutFinding *finding;

  add_lead (design, "mains");
  serve (hut_check_case_add_round (design, "hole", back, 100, 60, 30), "mains");
  c = hut_check_case_new (design);
  finding = hut_check_case_find (c, "service.tight",
                                 "The head of mains does not pass hole: it is 30 mm across; 34.6 mm "
                                 "are needed.");
  assert_int_equal (finding->severity, HUT_SEVERITY_BLOCKS);
  assert_string_equal (finding->item, "hole");
  assert_int_equal (finding->places->len, 1);
}

static void
two_holes_for_one_lead_are_told (void **state)
{
  HutDesign *design = hut_check_case_design ();
  g_autoptr(HutCheckCase) c = NULL;

  add_lead (design, "mains");
  serve (hut_check_case_add_round (design, "hole", back, 100, 60, 35), "mains");
  serve (hut_check_case_add_round (design, "spare", back, 200, 60, 30), "mains");
  c = hut_check_case_new (design);
  /* One of them is enough, so the tight one is not told as such. */
  assert_int_equal (hut_check_case_count (c, "service.tight"), 0);
  hut_check_case_assert (hut_check_case_get (c, "service.doubled", 0), HUT_SEVERITY_WARNS, 2, 1);
}

/* A gland of 16.5, for lines of 4 to 8, through which a head of 14 passes; or, with 0, a connector. */
static void
add_gland (HutDesign *design,
           const char *service,
           double pass_mm)
{
  HutItem *item = hut_item_new ("gland");
  HutItemCut cut = { .role = HUT_CUT_BODY, .shape = HUT_CUT_ROUND, .diameter_mm = 16.5 };
  HutHardware *hardware;

  item->pass_width_mm = item->pass_height_mm = pass_mm;
  item->pass_round = TRUE;
  item->line_min_mm = 4.0;
  item->line_max_mm = 8.0;
  g_array_append_val (item->cuts, cut);
  g_ptr_array_add (design->items, item);
  hardware = hut_hardware_new ("entry", "gland", back);
  g_free (hardware->serves);
  hardware->serves = g_strdup (service);
  g_ptr_array_add (design->hardware, hardware);
}

/* A tube of 4 mm with nothing on its end, in a fitting of 4 mm; with a coupling it does not pass. */
static void
a_bare_line_passes_what_closes_round_it (void **state)
{
  for (int coupling = 0; coupling < 2; coupling++)
    {
      HutDesign *design = hut_check_case_design ();
      g_autoptr(HutCheckCase) c = NULL;
      HutService *tube = add_lead (design, "tube");

      tube->kind = HUT_SERVICE_HOSE;
      tube->line_mm = 4.0;
      tube->head_width_mm = tube->head_height_mm = coupling == 0 ? 4.0 : 6.0;
      add_gland (design, "tube", 4.0);
      c = hut_check_case_new (design);
      assert_int_equal (hut_check_case_count (c, "service.tight"), coupling);
    }
}

static void
hardware_serves_as_well (void **state)
{
  HutDesign *design = hut_check_case_design ();
  g_autoptr(HutCheckCase) c = NULL;
  HutService *lead = add_lead (design, "lead");

  lead->head_width_mm = lead->head_height_mm = 9.0; /* hypot (9, 9) + 1 = 13.73 */
  lead->line_mm = 5.0;
  add_gland (design, "lead", 14.0);
  c = hut_check_case_new (design);
  assert_int_equal (hut_check_case_count (c, "service.missing"), 0);
  assert_int_equal (hut_check_case_count (c, "service.tight"), 0);
  assert_int_equal (hut_check_case_count (c, "service.line"), 0);
}

static void
a_connector_carries_what_it_does_not_pass (void **state)
{
  HutDesign *design = hut_check_case_design ();
  g_autoptr(HutCheckCase) c = NULL;

  add_lead (design, "lead")->line_mm = 5.0;
  add_gland (design, "lead", 0.0);
  c = hut_check_case_new (design);
  assert_int_equal (hut_check_case_count (c, "service.tight"), 0);
}

static void
a_gland_closes_round_some_lines_only (void **state)
{
  HutDesign *thin = hut_check_case_design (), *thick = hut_check_case_design ();
  g_autoptr(HutCheckCase) c = NULL, d = NULL;

  add_lead (thin, "lead")->line_mm = 3.0;
  add_gland (thin, "lead", 0.0);
  c = hut_check_case_new (thin);
  hut_check_case_assert (
      hut_check_case_find (c, "service.line",
                           "lead is 3 mm thick; entry closes round lines from 4 mm on."),
      HUT_SEVERITY_WARNS, 3, 4);
  add_lead (thick, "lead")->line_mm = 9.5;
  add_gland (thick, "lead", 0.0);
  d = hut_check_case_new (thick);
  hut_check_case_assert (
      hut_check_case_find (d, "service.line",
                           "lead is 9.5 mm thick; entry closes round lines up to 8 mm."),
      HUT_SEVERITY_WARNS, 9.5, 8);
}

static void
the_ledger_has_a_row_per_service (void **state)
{
  g_autoptr(HutDesign) design = hut_check_case_design ();
  g_autoptr(GPtrArray) ledger = NULL;

  add_lead (design, "mains");
  add_lead (design, "spare");
  serve (hut_check_case_add_round (design, "hole", back, 100, 60, 35), "mains");
  ledger = hut_ledger_new (design);
  assert_int_equal (ledger->len, 2);
  assert_int_equal (hut_ledger_find (ledger, "mains")->servers->len, 1);
  assert_int_equal (hut_ledger_find (ledger, "mains")->passing_count, 1);
  assert_int_equal (hut_ledger_find (ledger, "spare")->servers->len, 0);
  assert_null (hut_ledger_find (ledger, "none"));
}

static HutDesign *
new_with_mains (double signal_u_mm)
{
  HutDesign *design = hut_check_case_design ();
  HutItem *inlet = hut_test_item_new ("inlet"), *socket = hut_test_item_new ("socket");

  inlet->mains = TRUE;
  inlet->group = HUT_ITEM_MAINS;
  socket->group = HUT_ITEM_CONNECTOR;
  hut_test_item_add_round (inlet, 30.0);
  hut_test_item_add_round (socket, 12.0);
  hut_test_put (design, "inlet", inlet, back, 80, 60);
  hut_test_put (design, "socket", socket, back, signal_u_mm, 60);
  return design;
}

static void
signals_keep_off_mains (void **state)
{
  /* From the inlet's border at 95 to the socket's at 150 - 6; then at 201 - 6 = 195. */
  g_autoptr(HutCheckCase) near = hut_check_case_new (new_with_mains (150));
  g_autoptr(HutCheckCase) far = hut_check_case_new (new_with_mains (201));
  const HutFinding *finding = hut_check_case_get (near, "service.mains", 0);

  hut_check_case_assert (finding, HUT_SEVERITY_WARNS, 49.0, 100.0);
  assert_string_equal (finding->item, "socket");
  assert_int_equal (hut_check_case_count (near, "service.mains"), 1);
  assert_int_equal (hut_check_case_count (far, "service.mains"), 0);
}

static void
way_of_a_lead_is_a_signal_s (void **state)
{
  HutDesign *design = new_with_mains (250);
  g_autoptr(HutCheckCase) c = NULL;

  add_lead (design, "usb")->line_mm = 5.0;
  /* 157 - 17.5 - 95 = 44.5 */
  serve (hut_check_case_add_round (design, "hole", back, 157, 60, 35), "usb");
  c = hut_check_case_new (design);
  hut_check_case_assert (hut_check_case_get (c, "service.mains", 0), HUT_SEVERITY_WARNS, 44.5,
                         100.0);
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (a_forgotten_hole_blocks),
    cmocka_unit_test (a_hole_that_lets_the_plug_through_is_enough),
    cmocka_unit_test (a_tight_hole_is_told_with_both_numbers),
    cmocka_unit_test (two_holes_for_one_lead_are_told),
    cmocka_unit_test (a_bare_line_passes_what_closes_round_it),
    cmocka_unit_test (hardware_serves_as_well),
    cmocka_unit_test (a_connector_carries_what_it_does_not_pass),
    cmocka_unit_test (a_gland_closes_round_some_lines_only),
    cmocka_unit_test (signals_keep_off_mains),
    cmocka_unit_test (way_of_a_lead_is_a_signal_s),
    cmocka_unit_test (the_ledger_has_a_row_per_service),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}

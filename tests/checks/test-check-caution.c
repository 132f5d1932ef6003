/* tests/checks/test-check-caution.c: standing cautions.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "config.h"
#include "checks/hut-check-case.h"
#include "hut-assert.h"
#include <string.h>

static void
each_design_says_that_an_enclosure_is_no_protection (void **state)
{
  g_autoptr(HutCheckCase) c = hut_check_case_new (hut_check_case_design ());
  const HutFinding *finding = hut_check_case_get (c, "safety.caution", 0);

  assert_int_equal (hut_check_case_count (c, "safety.caution"), 2);
  assert_int_equal (finding->severity, HUT_SEVERITY_NOTES);
  assert_non_null (strstr (finding->message, "local codes"));
  assert_non_null (strstr (finding->message, "licensed practice"));
  assert_false (hut_findings_block (c->findings, NULL));
}

static void
each_kind_of_cutter_has_its_own_caution (void **state)
{
  HutDesign *design = hut_check_case_design ();
  g_autoptr(HutCheckCase) laser = NULL, router = NULL;
  HutDesign *other = hut_design_copy (design);

  other->cutter.kind = HUT_CUTTER_ROUTER;
  g_free (other->cutter.name);
  other->cutter.name = g_strdup ("");
  laser = hut_check_case_new (design);
  router = hut_check_case_new (other);
  assert_non_null (
      strstr (hut_check_case_get (laser, "safety.caution", 1)->message, "laser light"));
  assert_non_null (strstr (hut_check_case_get (router, "safety.caution", 1)->message, "dust"));
  assert_string_equal (hut_check_case_get (router, "safety.caution", 1)->what, "the router");
}

static void
nothing_is_called_safe (void **state)
{
  g_autoptr(HutCheckCase) c = hut_check_case_new (hut_check_case_design ());

  for (guint i = 0; i < c->findings->len; i++)
    {
      g_autofree char *text
          = hut_finding_dup_text (g_ptr_array_index (c->findings, i), NULL, ".");

      assert_null (strstr (text, "safe"));
    }
}

static void
polycarbonate_to_be_cut_by_laser_is_told (void **state)
{
  HutDesign *design = hut_check_case_design (), *routed;
  HutStock *stock = hut_design_get_stock (design, "acrylic");
  HutWindow *window
      = hut_check_case_add_window (design, "view", (HutPanelId) { HUT_SHELL_LID, HUT_SIDE_TOP },
                                   (HutRect) { 100, 100, 200, 180 });
  g_autoptr(HutCheckCase) cut = NULL, bought = NULL, router = NULL;
  HutDesign *whole;
  const HutFinding *finding;

  stock->material = HUT_MATERIAL_POLYCARBONATE;
  whole = hut_design_copy (design);
  window->glazing_bought = FALSE;
  routed = hut_design_copy (design);
  routed->cutter.kind = HUT_CUTTER_ROUTER;
  cut = hut_check_case_new (design);
  bought = hut_check_case_new (whole);
  router = hut_check_case_new (routed);
  assert_int_equal (hut_check_case_count (bought, "safety.caution"), 2);
  assert_int_equal (hut_check_case_count (router, "safety.caution"), 2);
  assert_int_equal (hut_check_case_count (cut, "safety.caution"), 3);
  finding = hut_check_case_get (cut, "safety.caution", 2);
  hut_check_case_assert (finding, HUT_SEVERITY_NOTES, 3, 1);
  assert_string_equal (finding->item, "acrylic");
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (each_design_says_that_an_enclosure_is_no_protection),
    cmocka_unit_test (each_kind_of_cutter_has_its_own_caution),
    cmocka_unit_test (nothing_is_called_safe),
    cmocka_unit_test (polycarbonate_to_be_cut_by_laser_is_told),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}

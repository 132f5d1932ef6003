/* tests/checks/test-check-light.c: light that gets out, as findings.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "config.h"
#include "checks/hut-check-case.h"
#include "hut-assert.h"
#include <string.h>

static const HutPanelId base_front = { HUT_SHELL_BASE, HUT_SIDE_FRONT };

static HutDesign *
low_machine (void)
{
  HutDesign *design = hut_check_case_design ();
  HutBody *body = g_ptr_array_index (design->machine.bodies, 0);

  /* The seam at 140 rises 1 in 6: from 366 mm off, 61 below it, no light reaches it. */
  design->shell.fitted = FALSE;
  design->shell.inside_mm = (HutVec3) { 360, 340, 240 };
  body->box.max.z = 60;
  return design;
}

static void
a_machine_as_high_as_the_seam_shines_through_it_on_all_sides (void **state)
{
  g_autoptr(HutCheckCase) c = hut_check_case_new (hut_check_case_design ());
  const HutFinding *finding = hut_check_case_get (c, "light.gap", 0);

  assert_int_equal (hut_check_case_count (c, "light.gap"), 1);
  assert_int_equal (finding->severity, HUT_SEVERITY_NOTES);
  assert_near (finding->is, 1, 0);
  assert_int_equal (finding->places->len, 4);
}

static void
a_low_machine_is_in_the_dark (void **state)
{
  g_autoptr(HutCheckCase) c = hut_check_case_new (low_machine ());

  assert_int_equal (hut_check_case_count (c, "light.gap"), 0);
  assert_int_equal (hut_check_case_count (c, "light.opening"), 0);
}

static void
an_open_hole_before_the_machine_is_told_once (void **state)
{
  HutDesign *design = low_machine ();
  g_autoptr(HutCheckCase) c = NULL;
  const HutFinding *finding;

  hut_check_case_add_round (design, "vent", base_front, 186, 50, 20);
  c = hut_check_case_new (design);
  finding = hut_check_case_get (c, "light.opening", 0);
  assert_int_equal (hut_check_case_count (c, "light.opening"), 1);
  assert_int_equal (finding->severity, HUT_SEVERITY_NOTES);
  assert_string_equal (finding->item, "vent");
  hut_check_case_assert_place (finding, 0, base_front, (HutRect) { 176, 40, 196, 60 });
}

static void
light_is_never_called_safe (void **state)
{
  HutDesign *design = hut_check_case_design ();
  g_autoptr(HutCheckCase) c = NULL;

  hut_check_case_add_round (design, "vent", base_front, 186, 50, 20);
  c = hut_check_case_new (design);
  assert_true (hut_check_case_count (c, "light.opening") > 0);
  for (guint i = 0; i < c->findings->len; i++)
    {
      const HutFinding *finding = g_ptr_array_index (c->findings, i);

      assert_null (strstr (finding->message, "safe"));
    }
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (a_machine_as_high_as_the_seam_shines_through_it_on_all_sides),
    cmocka_unit_test (a_low_machine_is_in_the_dark),
    cmocka_unit_test (an_open_hole_before_the_machine_is_told_once),
    cmocka_unit_test (light_is_never_called_safe),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}

/* tests/design/test-work.c: what the engineering has to be told, and what counts as told.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "design/hut-design.h"
#include "design/hut-file.h"
#include "hut-assert.h"
#include <string.h>

static void
a_new_design_knows_nothing_of_the_machine_at_work (void **state)
{
  g_autoptr(HutDesign) design = hut_design_new ();

  assert_true (hut_work_equal (&design->machine.work, &hut_work_unknown));
  assert_false (HUT_IS_KNOWN (design->machine.work.power_w));
  assert_false (HUT_IS_KNOWN (design->room_mm.temperature_c));
  assert_int_equal (design->shell.duct.kind, HUT_DUCT_UNKNOWN);
  assert_int_equal (design->shell.stay.kind, HUT_STAY_NONE);
}

static void
nothing_at_all_is_known_to_be_zero_watts (void **state)
{
  assert_true (HUT_IS_KNOWN (0.0));
  assert_false (HUT_IS_KNOWN (HUT_UNKNOWN));
}

static void
what_is_unknown_is_not_in_the_file (void **state)
{
  g_autoptr(HutDesign) design = hut_design_new ();
  g_autofree char *text = hut_design_to_xml (design);

  assert_null (strstr (text, "power-w"));
  assert_null (strstr (text, "duct"));
  assert_null (strstr (text, "stay"));
  assert_null (strstr (text, "coat"));
  assert_null (strstr (text, "temperature"));
}

static void
what_is_known_comes_back_from_the_file (void **state)
{
  g_autoptr(HutDesign) design = hut_design_new ();
  g_autoptr(HutDesign) back = NULL;
  g_autoptr(GError) error = NULL;
  g_autofree char *text = NULL;

  design->machine.work.power_w = 0.0;
  design->machine.work.glow = HUT_GLOW_ARC;
  design->shell.duct
      = (HutDuct) { HUT_DUCT_SLACK_HOSE, 125.0, 2500.0, 3, HUT_EXIT_GRILLE };
  design->shell.finishing.inside = HUT_COAT_BLACK;
  design->shell.stay = (HutStay) { HUT_STAY_SPRING, 1, 150.0 };
  text = hut_design_to_xml (design);
  back = hut_design_from_xml (text, strlen (text), "text", &error);
  assert_null (error);
  assert_true (hut_design_equal (design, back));
  assert_near (back->machine.work.power_w, 0.0, 0.0);
  assert_int_equal (back->shell.duct.exit, HUT_EXIT_GRILLE);
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (a_new_design_knows_nothing_of_the_machine_at_work),
    cmocka_unit_test (nothing_at_all_is_known_to_be_zero_watts),
    cmocka_unit_test (what_is_unknown_is_not_in_the_file),
    cmocka_unit_test (what_is_known_comes_back_from_the_file),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}

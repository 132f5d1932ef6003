/* tests/checks/test-check-window.c: how the glazing of windows is held.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "config.h"
#include "checks/hut-check-case.h"
#include "hut-assert.h"

static const HutPanelId lid_front = { HUT_SHELL_LID, HUT_SIDE_FRONT };

/* A window of 100 x 40 in the lid's front, which is 372 x 111. */
static HutWindow *
add (HutDesign *design)
{
  return hut_check_case_add_window (design, "pane", lid_front, (HutRect) { 130, 30, 230, 70 });
}

static void
a_frame_with_screws_is_no_finding (void **state)
{
  HutDesign *design = hut_check_case_design ();
  g_autoptr(HutCheckCase) c = NULL;

  add (design)->screw_mm = 3.0;
  c = hut_check_case_new (design);
  for (guint i = 0; i < c->findings->len; i++)
    assert_int_equal (((const HutFinding *)g_ptr_array_index (c->findings, i))->severity,
                      HUT_SEVERITY_NOTES);
  assert_int_equal (hut_check_case_count (c, "window.bonded"), 0);
}

static void
a_bonded_frame_is_noted (void **state)
{
  HutDesign *design = hut_check_case_design ();
  g_autoptr(HutCheckCase) c = NULL;

  add (design);
  c = hut_check_case_new (design);
  hut_check_case_assert (hut_check_case_get (c, "window.bonded", 0), HUT_SEVERITY_NOTES, 0, 4);
}

static void
a_narrow_overlap_is_told (void **state)
{
  HutDesign *design = hut_check_case_design ();
  g_autoptr(HutCheckCase) c = NULL;

  add (design)->overlap_mm = 9.0;
  c = hut_check_case_new (design);
  hut_check_case_assert (hut_check_case_get (c, "window.overlap", 0), HUT_SEVERITY_WARNS, 9, 10);
}

static void
screws_that_nobody_sells_are_told (void **state)
{
  /* Frame of 60: 6 + 3 + 60 and more; M3 ends far below. */
  HutDesign *design = hut_check_case_design ();
  g_autoptr(HutCheckCase) c = NULL;
  HutStock *thick = hut_stock_new ("block");
  HutWindow *window = add (design);

  g_array_index (thick->readings_mm, double, 0) = 60.0;
  g_ptr_array_add (design->stocks, thick);
  g_free (window->frame_stock);
  window->frame_stock = g_strdup ("block");
  window->screw_mm = 3.0;
  c = hut_check_case_new (design);
  assert_int_equal (hut_check_case_count (c, "window.screw"), 1);
  assert_near (hut_check_case_get (c, "window.screw", 0)->is, 3, 0);
}

static void
an_opening_in_the_way_of_a_screw_is_told (void **state)
{
  /* M3: hole 3.4, web 6: rim 2 x 7.701; the lower right screw is at 230 + 10 + 7.701 = 247.701,
   * 30 - 17.701 = 12.299. */
  HutDesign *design = hut_check_case_design ();
  g_autoptr(HutCheckCase) c = NULL;

  add (design)->screw_mm = 3.0;
  hut_check_case_add_round (design, "vent", lid_front, 258, 12.3, 10);
  c = hut_check_case_new (design);
  /* Middles 10.3 apart: 10.3 - 5 - 1.7 = 3.6 of wood. */
  assert_near_mm (hut_check_case_get (c, "opening.overlap", 0)->is, 10.299 - 6.7, 1e-3);
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (a_frame_with_screws_is_no_finding),
    cmocka_unit_test (a_bonded_frame_is_noted),
    cmocka_unit_test (a_narrow_overlap_is_told),
    cmocka_unit_test (screws_that_nobody_sells_are_told),
    cmocka_unit_test (an_opening_in_the_way_of_a_screw_is_told),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}

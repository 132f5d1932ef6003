/* tests/checks/test-check-extra.c: plates that the user draws: one piece, holes inside, bed and web.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "config.h"
#include "checks/hut-check-case.h"
#include "hut-assert.h"

static HutExtra *
add (HutDesign *design)
{
  HutExtra *extra = hut_extra_new ("foot");

  g_free (extra->stock);
  extra->stock = g_strdup ("plywood");
  g_ptr_array_add (design->extras, extra);
  return extra;
}

static void
a_new_plate_is_no_finding (void **state)
{
  HutDesign *design = hut_check_case_design ();
  g_autoptr(HutCheckCase) c = NULL;

  add (design);
  c = hut_check_case_new (design);
  for (guint i = 0; i < c->findings->len; i++)
    assert_int_equal (((const HutFinding *)g_ptr_array_index (c->findings, i))->severity,
                      HUT_SEVERITY_NOTES);
}

static void
rectangles_apart_block (void **state)
{
  HutDesign *design = hut_check_case_design ();
  const HutExtraRect apart = { 100, 0, 20, 20 };
  g_autoptr(HutCheckCase) c = NULL;

  g_array_append_val (add (design)->rects, apart);
  c = hut_check_case_new (design);
  hut_check_case_assert (hut_check_case_get (c, "extra.outline", 0), HUT_SEVERITY_BLOCKS, 2, 1);
  assert_string_equal (hut_check_case_get (c, "extra.outline", 0)->item, "foot");
}

static void
a_hole_over_the_edge_blocks (void **state)
{
  HutDesign *design = hut_check_case_design ();
  const HutExtraHole hole = { 40, 0, 10, 10, 5 };
  g_autoptr(HutCheckCase) c = NULL;

  g_array_append_val (add (design)->holes, hole);
  c = hut_check_case_new (design);
  hut_check_case_assert (hut_check_case_get (c, "extra.hole", 0), HUT_SEVERITY_BLOCKS, 0, 3);
}

static void
a_thin_web_is_told_by_the_plates_name (void **state)
{
  /* The plate is 30 high: a hole of 20 leaves 5 above and below; its stock holds 6. */
  HutDesign *design = hut_check_case_design ();
  const HutExtraHole hole = { 0, 0, 20, 20, 10 };
  g_autoptr(HutCheckCase) c = NULL;
  HutExtra *extra = add (design);

  g_array_set_size (extra->holes, 0);
  g_array_append_val (extra->holes, hole);
  c = hut_check_case_new (design);
  hut_check_case_assert (hut_check_case_get (c, "cut.web", 0), HUT_SEVERITY_WARNS, 5, 6);
  assert_string_equal (hut_check_case_get (c, "cut.web", 0)->what, "foot");
}

static void
a_plate_larger_than_the_bed_blocks (void **state)
{
  HutDesign *design = hut_check_case_design ();
  g_autoptr(HutCheckCase) c = NULL;

  g_array_index (add (design)->rects, HutExtraRect, 0).width_mm = 3000;
  c = hut_check_case_new (design);
  assert_int_equal (hut_check_case_count (c, "bed.part")
                        + hut_check_case_count (c, "stock.sheet"), 1);
}

static void
a_stock_that_is_not_there_blocks (void **state)
{
  HutDesign *design = hut_check_case_design ();
  g_autoptr(HutCheckCase) c = NULL;
  HutExtra *extra = add (design);

  g_free (extra->stock);
  extra->stock = g_strdup ("none");
  c = hut_check_case_new (design);
  hut_check_case_assert (hut_check_case_get (c, "stock.missing", 0), HUT_SEVERITY_BLOCKS, 0, 1);
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (a_new_plate_is_no_finding),
    cmocka_unit_test (rectangles_apart_block),
    cmocka_unit_test (a_hole_over_the_edge_blocks),
    cmocka_unit_test (a_thin_web_is_told_by_the_plates_name),
    cmocka_unit_test (a_plate_larger_than_the_bed_blocks),
    cmocka_unit_test (a_stock_that_is_not_there_blocks),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}

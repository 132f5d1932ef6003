/* tests/design/test-extra.c: flat parts that the user draws.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "sample.h"

static void
a_new_one_is_a_foot_with_two_holes (void **state)
{
  g_autoptr(HutExtra) extra = hut_extra_new ("foot");

  assert_string_equal (extra->id, "foot");
  assert_int_equal (extra->count, 1);
  assert_int_equal (extra->rects->len, 1);
  assert_int_equal (extra->holes->len, 2);
}

static void
copies_are_equal_until_a_shape_changes (void **state)
{
  g_autoptr(HutExtra) extra = hut_extra_new ("foot");
  g_autoptr(HutExtra) copy = hut_extra_copy (extra);

  assert_true (hut_extra_equal (extra, copy));
  g_array_index (copy->holes, HutExtraHole, 1).radius_mm += 0.5;
  assert_false (hut_extra_equal (extra, copy));
  g_array_index (copy->holes, HutExtraHole, 1).radius_mm -= 0.5;
  g_array_index (copy->rects, HutExtraRect, 0).u_mm += 0.5;
  assert_false (hut_extra_equal (extra, copy));
}

static void
one_is_found_by_its_id (void **state)
{
  g_autoptr(HutDesign) design = new_sample ();

  assert_string_equal (hut_design_get_extra (design, "bracket")->name, "Bracket");
  assert_null (hut_design_get_extra (design, "none"));
}

static void
its_id_is_taken (void **state)
{
  g_autoptr(HutDesign) design = new_sample ();
  g_autofree char *id = hut_design_dup_free_id (design, "bracket");

  assert_string_equal (id, "bracket-2");
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (a_new_one_is_a_foot_with_two_holes),
    cmocka_unit_test (copies_are_equal_until_a_shape_changes),
    cmocka_unit_test (one_is_found_by_its_id),
    cmocka_unit_test (its_id_is_taken),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}

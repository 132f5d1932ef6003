/* tests/design/test-spot.c: where parts lie on the sheets.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "sample.h"

static void
a_new_one_is_on_the_first_sheet_and_not_kept (void **state)
{
  g_autoptr(HutSpot) spot = hut_spot_new ("base-front");

  assert_string_equal (spot->part, "base-front");
  assert_int_equal (spot->sheet, 1);
  assert_false (spot->kept);
}

static void
copies_are_equal_until_one_is_kept (void **state)
{
  g_autoptr(HutSpot) spot = hut_spot_new ("base-front");
  g_autoptr(HutSpot) copy = hut_spot_copy (spot);

  assert_true (hut_spot_equal (spot, copy));
  copy->kept = TRUE;
  assert_false (hut_spot_equal (spot, copy));
}

static void
one_is_found_by_its_part_and_released (void **state)
{
  g_autoptr(HutDesign) design = new_sample ();

  assert_int_equal (hut_design_get_spot (design, "base-front")->sheet, 2);
  assert_true (hut_design_get_spot (design, "base-front")->kept);
  assert_false (hut_design_get_spot (design, "base-back")->kept);
  assert_true (hut_design_release_part (design, "base-front"));
  assert_null (hut_design_get_spot (design, "base-front"));
  assert_false (hut_design_release_part (design, "base-front"));
  assert_int_equal (design->spots->len, 1);
}

static void
two_of_one_part_are_refused (void **state)
{
  g_autofree char *text = dup_sample ();
  g_autofree char *spoilt = dup_spoilt (text, "<spot part=\"base-back\"", "<spot part=\"base-front\"");
  g_autoptr(GError) error = NULL;

  assert_null (hut_design_from_xml (spoilt, strlen (spoilt), "sample.hutch", &error));
  assert_non_null (strstr (error->message, "part “base-front” has two spots; allowed: one"));
}

static void
a_file_without_spots_has_none (void **state)
{
  g_autoptr(HutDesign) design = new_sample ();
  g_autoptr(GError) error = NULL;
  g_autoptr(HutDesign) again = NULL;
  g_autofree char *text = NULL;

  g_ptr_array_set_size (design->spots, 0);
  text = hut_design_to_xml (design);
  assert_null (strstr (text, "<spot"));
  again = hut_design_from_xml (text, strlen (text), "plain.hutch", &error);
  assert_ok (again != NULL, error);
  assert_int_equal (again->spots->len, 0);
}

static void
only_loose_spots_are_dropped (void **state)
{
  g_autoptr(HutDesign) design = hut_design_new ();
  HutSpot *kept = hut_spot_new ("a"), *loose = hut_spot_new ("b");

  kept->kept = TRUE;
  g_ptr_array_add (design->spots, loose);
  g_ptr_array_add (design->spots, kept);
  hut_design_drop_loose_spots (design);
  assert_int_equal (design->spots->len, 1);
  assert_ptr_equal (hut_design_get_spot (design, "a"), kept);
  assert_null (hut_design_get_spot (design, "b"));
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (a_new_one_is_on_the_first_sheet_and_not_kept),
    cmocka_unit_test (copies_are_equal_until_one_is_kept),
    cmocka_unit_test (one_is_found_by_its_part_and_released),
    cmocka_unit_test (two_of_one_part_are_refused),
    cmocka_unit_test (a_file_without_spots_has_none),
    cmocka_unit_test (only_loose_spots_are_dropped),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}

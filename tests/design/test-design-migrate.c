/* tests/design/test-design-migrate.c: files of older versions.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "sample.h"
#include <string.h>

static char *
dup_of_version (const HutDesign *design,
                int version)
{
  g_autofree char *wanted = g_strdup_printf (" version=\"%d\" ", version);
  g_autoptr(GString) text = g_string_new (NULL);
  g_autofree char *newest = hut_design_to_xml (design);

  g_string_assign (text, newest);
  assert_int_equal (g_string_replace (text, " version=\"3\" ", wanted, 0), 1);
  return g_string_free (g_steal_pointer (&text), FALSE);
}

static void
file_of_version_1_gets_the_common_bits_and_no_hardware (void **state)
{
  g_autoptr(HutDesign) design = hut_design_new ();
  g_autoptr(GArray) common = hut_bits_new_common ();
  g_autofree char *text = NULL;
  g_autoptr(HutDesign) again = NULL;
  g_autoptr(GError) error = NULL;

  g_array_set_size (design->bits_mm, 0);
  text = dup_of_version (design, 1);
  again = hut_design_from_xml (text, strlen (text), "old.hutch", &error);
  assert_ok (again != NULL, error);
  assert_int_equal (again->hardware->len, 0);
  assert_int_equal (again->bits_mm->len, common->len);
  assert_near_mm (g_array_index (again->bits_mm, double, 3), 15.0, 0.0);
  assert_false (hut_design_equal (design, again));
  g_array_set_size (again->bits_mm, 0);
  assert_true (hut_design_equal (design, again));
}

static void
owner_without_bits_stays_without_in_version_3 (void **state)
{
  g_autoptr(HutDesign) design = hut_design_new ();
  g_autofree char *text = NULL;
  g_autoptr(HutDesign) again = NULL;
  g_autoptr(GError) error = NULL;

  g_array_set_size (design->bits_mm, 0);
  text = hut_design_to_xml (design);
  again = hut_design_from_xml (text, strlen (text), "new.hutch", &error);
  assert_ok (again != NULL, error);
  assert_int_equal (again->bits_mm->len, 0);
}

static void
file_of_version_2_means_what_it_meant (void **state)
{
  g_autoptr(HutDesign) design = hut_design_new ();
  g_autofree char *text = NULL;
  g_autoptr(HutDesign) again = NULL;
  g_autoptr(GError) error = NULL;

  g_array_set_size (design->bits_mm, 1);
  text = dup_of_version (design, 2);
  again = hut_design_from_xml (text, strlen (text), "old.hutch", &error);
  assert_ok (again != NULL, error);
  assert_true (hut_design_equal (design, again));
}

static void
file_of_version_4_is_from_a_newer_program (void **state)
{
  g_autoptr(HutDesign) design = hut_design_new ();
  g_autofree char *text = dup_of_version (design, 4);
  g_autoptr(GError) error = NULL;

  assert_null (hut_design_from_xml (text, strlen (text), "newer.hutch", &error));
  assert_true (g_error_matches (error, HUT_FILE_ERROR, HUT_FILE_ERROR_VERSION));
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (file_of_version_1_gets_the_common_bits_and_no_hardware),
    cmocka_unit_test (owner_without_bits_stays_without_in_version_3),
    cmocka_unit_test (file_of_version_2_means_what_it_meant),
    cmocka_unit_test (file_of_version_4_is_from_a_newer_program),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}

/* tests/app/test-readings.c: the caliper readings of a stock as one line of text.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "app/hut-readings.h"
#include "hut-assert.h"
#include <locale.h>

static void
readings_are_parted_by_spaces_or_semicolons (void **state)
{
  g_autoptr(GError) error = NULL;
  g_autoptr(GArray) readings = hut_readings_parse (" 5,95  6.02;6 ", HUT_UNITS_MM, &error);

  assert_ok (readings != NULL, error);
  assert_int_equal (readings->len, 3);
  assert_near_mm (g_array_index (readings, double, 0), 5.95, 1e-12);
  assert_near_mm (g_array_index (readings, double, 1), 6.02, 1e-12);
  assert_near_mm (g_array_index (readings, double, 2), 6.0, 1e-12);
}

static void
readings_in_inches_are_kept_in_mm (void **state)
{
  g_autoptr(GArray) readings = hut_readings_parse ("0.25", HUT_UNITS_INCH, NULL);

  assert_non_null (readings);
  assert_near_mm (g_array_index (readings, double, 0), 6.35, 1e-12); /* 25.4 / 4 */
}

static void
text_and_readings_are_each_others_image (void **state)
{
  g_autoptr(GArray) readings = hut_readings_parse ("5.95 6 6.125", HUT_UNITS_MM, NULL);
  g_autofree char *text = hut_readings_dup_text (readings, HUT_UNITS_MM);

  assert_string_equal (text, "5.95 6 6.125");
}

static void
what_a_file_would_not_take_is_refused (void **state)
{
  const char *const texts[] = { "", "  ", "six", "0", "-3", "0.05", "101", "6 x 6" };

  for (guint i = 0; i < G_N_ELEMENTS (texts); i++)
    {
      g_autoptr(GError) error = NULL;
      g_autoptr(GArray) readings = hut_readings_parse (texts[i], HUT_UNITS_MM, &error);

      print_message ("typed: %s\n", texts[i]);
      assert_null (readings);
      assert_true (g_error_matches (error, HUT_UNITS_ERROR, HUT_UNITS_ERROR_NUMBER));
    }
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (readings_are_parted_by_spaces_or_semicolons),
    cmocka_unit_test (readings_in_inches_are_kept_in_mm),
    cmocka_unit_test (text_and_readings_are_each_others_image),
    cmocka_unit_test (what_a_file_would_not_take_is_refused),
  };

  setlocale (LC_ALL, "C");
  return cmocka_run_group_tests_name ("readings", tests, NULL, NULL);
}

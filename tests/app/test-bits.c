/* tests/app/test-bits.c: the owner's flat-bottom bits as one line of text.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "app/hut-bits.h"
#include "hut-assert.h"

static void
bits_are_kept_from_thin_to_thick_and_each_once (void **state)
{
  g_autoptr (GError) error = NULL;
  g_autoptr (GArray) bits = hut_bits_parse (" 35 15;20  15 ", HUT_UNITS_MM, &error);

  assert_ok (bits != NULL, error);
  assert_int_equal (bits->len, 3);
  assert_near_mm (g_array_index (bits, double, 0), 15, 0.0);
  assert_near_mm (g_array_index (bits, double, 1), 20, 0.0);
  assert_near_mm (g_array_index (bits, double, 2), 35, 0.0);
}

/* 1 3/8 in is 34.925 mm, which is not 35: hardware reference, flat-bottom bits. */
static void
bits_in_inches_are_kept_in_mm (void **state)
{
  g_autoptr (GArray) bits = hut_bits_parse ("1.375", HUT_UNITS_INCH, NULL);

  assert_non_null (bits);
  assert_near_mm (g_array_index (bits, double, 0), 34.925, 1e-9);
}

static void
an_owner_without_bits_says_so_with_an_empty_line (void **state)
{
  g_autoptr (GArray) bits = hut_bits_parse ("  ", HUT_UNITS_MM, NULL);

  assert_non_null (bits);
  assert_int_equal (bits->len, 0);
}

static void
what_is_no_bit_is_refused (void **state)
{
  static const char *const texts[] = { "15 x", "0.5", "201", "-3" };

  for (guint i = 0; i < G_N_ELEMENTS (texts); i++)
    {
      g_autoptr (GError) error = NULL;
      g_autoptr (GArray) bits = hut_bits_parse (texts[i], HUT_UNITS_MM, &error);

      assert_null (bits);
      assert_true (g_error_matches (error, HUT_UNITS_ERROR, HUT_UNITS_ERROR_NUMBER)
                   || g_error_matches (error, HUT_UNITS_ERROR, HUT_UNITS_ERROR_UNIT));
    }
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (bits_are_kept_from_thin_to_thick_and_each_once),
    cmocka_unit_test (bits_in_inches_are_kept_in_mm),
    cmocka_unit_test (an_owner_without_bits_says_so_with_an_empty_line),
    cmocka_unit_test (what_is_no_bit_is_refused),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}

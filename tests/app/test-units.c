/* tests/app/test-units.c: numbers as the user reads and types them.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "app/hut-units.h"
#include "hut-assert.h"
#include <locale.h>

/* What is typed, in which unit, and what it means in the kept unit. */
static const struct
{
  HutQuantity quantity;
  HutUnits units;
  const char *text;
  double value;
} readable[] = {
  { HUT_QUANTITY_LENGTH, HUT_UNITS_MM, "12.5", 12.5 },
  { HUT_QUANTITY_LENGTH, HUT_UNITS_MM, " 12,5 ", 12.5 },
  { HUT_QUANTITY_LENGTH, HUT_UNITS_MM, "-.5", -0.5 },
  { HUT_QUANTITY_LENGTH, HUT_UNITS_MM, "12,5 mm", 12.5 },
  { HUT_QUANTITY_LENGTH, HUT_UNITS_MM, "1.2cm", 12.0 },
  { HUT_QUANTITY_LENGTH, HUT_UNITS_MM, "2 in", 50.8 }, /* 2 x 25.4 */
  { HUT_QUANTITY_LENGTH, HUT_UNITS_INCH, "2", 50.8 },
  { HUT_QUANTITY_LENGTH, HUT_UNITS_INCH, "1 1/2", 38.1 }, /* 1.5 x 25.4 */
  { HUT_QUANTITY_LENGTH, HUT_UNITS_INCH, "3/4\"", 19.05 },
  { HUT_QUANTITY_LENGTH, HUT_UNITS_INCH, "-1/8", -3.175 },
  { HUT_QUANTITY_LENGTH, HUT_UNITS_INCH, "10 mm", 10.0 },
  { HUT_QUANTITY_SPEED, HUT_UNITS_INCH, "100", 2540.0 },
  { HUT_QUANTITY_ANGLE, HUT_UNITS_MM, "90°", 90.0 },
  { HUT_QUANTITY_MASS, HUT_UNITS_INCH, "4,2 kg", 4.2 },
  { HUT_QUANTITY_COUNT, HUT_UNITS_MM, "3", 3.0 },
};

/* What is refused, and why. */
static const struct
{
  HutQuantity quantity;
  const char *text;
  HutUnitsError code;
} refused[] = {
  { HUT_QUANTITY_LENGTH, "", HUT_UNITS_ERROR_NUMBER },
  { HUT_QUANTITY_LENGTH, "abc", HUT_UNITS_ERROR_NUMBER },
  { HUT_QUANTITY_LENGTH, "1,234.5", HUT_UNITS_ERROR_NUMBER }, /* which of them is the mark? */
  { HUT_QUANTITY_LENGTH, "1..5", HUT_UNITS_ERROR_NUMBER },
  { HUT_QUANTITY_LENGTH, "nan", HUT_UNITS_ERROR_NUMBER },
  { HUT_QUANTITY_LENGTH, "inf", HUT_UNITS_ERROR_NUMBER },
  { HUT_QUANTITY_LENGTH, "1e400", HUT_UNITS_ERROR_NUMBER },
  { HUT_QUANTITY_LENGTH, "1/0", HUT_UNITS_ERROR_NUMBER },
  { HUT_QUANTITY_LENGTH, "1/2/3", HUT_UNITS_ERROR_NUMBER },
  { HUT_QUANTITY_LENGTH, "3 kg", HUT_UNITS_ERROR_UNIT },
  { HUT_QUANTITY_MASS, "3 mm", HUT_UNITS_ERROR_UNIT },
  { HUT_QUANTITY_MASS, "1/2", HUT_UNITS_ERROR_NUMBER },
  { HUT_QUANTITY_COUNT, "1.5", HUT_UNITS_ERROR_NUMBER },
  { HUT_QUANTITY_LENGTH, "1000000000000000000000000000000000000000000000000",
    HUT_UNITS_ERROR_NUMBER },
};

static void
comma_point_fraction_and_unit_are_read (void **state)
{
  for (guint i = 0; i < G_N_ELEMENTS (readable); i++)
    {
      g_autoptr (GError) error = NULL;
      double value = 0.0;

      print_message ("typed: %s\n", readable[i].text);
      assert_ok (hut_quantity_parse (readable[i].quantity, readable[i].units, readable[i].text,
                                     &value, &error),
                 error);
      assert_near (value, readable[i].value, 1e-9);
    }
}

static void
what_is_no_number_is_refused_and_writes_nothing (void **state)
{
  for (guint i = 0; i < G_N_ELEMENTS (refused); i++)
    {
      g_autoptr (GError) error = NULL;
      double value = 7.0;

      print_message ("typed: %s\n", refused[i].text);
      assert_false (
          hut_quantity_parse (refused[i].quantity, HUT_UNITS_MM, refused[i].text, &value, &error));
      assert_true (g_error_matches (error, HUT_UNITS_ERROR, (int)refused[i].code));
      assert_near (value, 7.0, 0.0);
    }
}

static void
lengths_are_shown_without_trailing_zeros (void **state)
{
  g_autofree char *whole = hut_quantity_dup_text (HUT_QUANTITY_LENGTH, HUT_UNITS_MM, 12.0);
  g_autofree char *part = hut_quantity_dup_text (HUT_QUANTITY_LENGTH, HUT_UNITS_MM, 3.125);
  g_autofree char *inch = hut_quantity_dup_text (HUT_QUANTITY_LENGTH, HUT_UNITS_INCH, 38.1);
  g_autofree char *unit
      = hut_quantity_dup_text_with_unit (HUT_QUANTITY_LENGTH, HUT_UNITS_MM, 3.125);

  assert_string_equal (whole, "12");
  assert_string_equal (part, "3.125");
  assert_string_equal (inch, "1.5");
  assert_string_equal (unit, "3.125\302\240mm");
}

static void
what_is_shown_reads_back_within_what_is_shown (void **state)
{
  for (double mm = -20.0; mm < 3000.0; mm += 17.313)
    {
      g_autofree char *text = hut_quantity_dup_text (HUT_QUANTITY_LENGTH, HUT_UNITS_INCH, mm);
      double value = 0.0;

      assert_true (hut_quantity_parse (HUT_QUANTITY_LENGTH, HUT_UNITS_INCH, text, &value, NULL));
      assert_near_mm (value, mm, 0.5e-4 * 25.4 + 1e-9); /* half of the last decimal */
    }
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (comma_point_fraction_and_unit_are_read),
    cmocka_unit_test (what_is_no_number_is_refused_and_writes_nothing),
    cmocka_unit_test (lengths_are_shown_without_trailing_zeros),
    cmocka_unit_test (what_is_shown_reads_back_within_what_is_shown),
  };

  setlocale (LC_ALL, "C");
  return cmocka_run_group_tests_name ("units", tests, NULL, NULL);
}

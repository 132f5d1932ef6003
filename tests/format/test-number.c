/* tests/format/test-number.c: numbers as text, whatever the locale.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "format/hut-number.h"
#include "hut-assert.h"
#include "hut-random.h"
#include <math.h>
#include <string.h>

static void
exact_number_is_the_shortest_that_reads_back (void **state)
{
  static const struct
  {
    double value;
    const char *text;
  } cases[] = {
    { 0.0, "0" },
    { -0.0, "0" },
    { 1.0, "1" },
    { -1.0, "-1" },
    { 10.0, "10" },
    { 1200.0, "1200" },
    { 0.1, "0.1" },
    { 0.1 + 0.2, "0.30000000000000004" }, /* IEEE 754 doubles: a well-known one */
    { 1.0 / 3.0, "0.3333333333333333" },
    { 5.92, "5.92" },
    { -12.345, "-12.345" },
    { 0.000001, "0.000001" },
    { 0.0000012, "0.0000012" },
    { 0.00000099, "9.9e-7" },
    { 123456789012345.0, "123456789012345" },
    { 1e14, "100000000000000" },
    { 1e15, "1e15" },
    { -2.5e20, "-2.5e20" },
    { 4.9406564584124654e-324, "5e-324" },
    { 1.7976931348623157e308, "1.7976931348623157e308" },
    { G_MAXINT32, "2147483647" },
    { (double) INFINITY, "inf" },
    { -(double) INFINITY, "-inf" },
    { (double) NAN, "nan" },
  };

  for (gsize i = 0; i < G_N_ELEMENTS (cases); i++)
    {
      char buffer[HUT_NUMBER_SIZE];

      assert_ptr_equal (hut_number_exact (buffer, cases[i].value), buffer);
      assert_string_equal (buffer, cases[i].text);
    }
}

static void
exact_number_of_any_double_reads_back_as_the_same (void **state)
{
  HutRandom random;

  hut_random_init (&random, 20260101);
  for (int i = 0; i < 20000; i++)
    {
      const guint64 bits = hut_random_next (&random);
      char buffer[HUT_NUMBER_SIZE];
      double value, again;

      memcpy (&value, &bits, sizeof value);
      if (!isfinite (value))
        continue;
      again = g_ascii_strtod (hut_number_exact (buffer, value), NULL);
      if (again != value)
        fail_msg ("'%s' reads back as %a, was %a", buffer, again, value);
    }
}

/* Numbers of the grid and their neighbours: the shortest by the C library, tried one by one. */
static void
exact_number_is_the_shortest_on_and_beside_the_grid (void **state)
{
  HutRandom random;

  hut_random_init (&random, 20260102);
  for (int i = 0; i < 20000; i++)
    {
      const double grid = (double) (gint64) (hut_random_next (&random) % 2000000001) / 1000.0 - 1e6;
      const double value = i % 4 == 0 ? nextafter (grid, 0.0) : grid;
      char buffer[HUT_NUMBER_SIZE], wanted[HUT_NUMBER_SIZE];

      for (int digits = 1; digits <= 17; digits++)
        {
          char format[8];

          g_snprintf (format, sizeof format, "%%.%dg", digits);
          g_ascii_formatd (wanted, sizeof wanted, format, value);
          if (g_ascii_strtod (wanted, NULL) == value)
            break;
        }
      if (strchr (wanted, 'e') == NULL)
        assert_string_equal (hut_number_exact (buffer, value), wanted);
      assert_true (g_ascii_strtod (hut_number_exact (buffer, value), NULL) == value);
    }
}

static void
exact_number_has_no_exponent_where_people_measure (void **state)
{
  HutRandom random;

  hut_random_init (&random, 7);
  for (int i = 0; i < 5000; i++)
    {
      const double value = hut_random_octaves (&random, 1e-6, 9e14);
      char buffer[HUT_NUMBER_SIZE];

      if (strchr (hut_number_exact (buffer, value), 'e') != NULL)
        fail_msg ("%.17g is written %s", value, buffer);
    }
}

static void
fixed_number_has_at_most_the_decimals_and_no_idle_zeros (void **state)
{
  static const struct
  {
    double value;
    guint decimals;
    const char *text;
  } cases[] = {
    { 1.5, 3, "1.5" },       { 1.0, 3, "1" },        { 100.0, 0, "100" },    { 0.125, 3, "0.125" },
    { 0.1236, 3, "0.124" },  { -0.0004, 3, "0" },    { -0.0, 2, "0" },       { 2.999, 2, "3" },
    { -7.25, 1, "-7.2" }, /* ties go to even */      { 1e15, 3, "1e15" },    { 0.5, 99, "0.5" },
    { 999999999999999.0, 3, "999999999999999" },     { 1e-9, 12, "0.000000001" },
    { (double) NAN, 2, "nan" },
  };

  for (gsize i = 0; i < G_N_ELEMENTS (cases); i++)
    {
      char buffer[HUT_NUMBER_SIZE];

      assert_ptr_equal (hut_number_fixed (buffer, cases[i].value, cases[i].decimals), buffer);
      assert_string_equal (buffer, cases[i].text);
    }
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (exact_number_is_the_shortest_that_reads_back),
    cmocka_unit_test (exact_number_of_any_double_reads_back_as_the_same),
    cmocka_unit_test (exact_number_is_the_shortest_on_and_beside_the_grid),
    cmocka_unit_test (exact_number_has_no_exponent_where_people_measure),
    cmocka_unit_test (fixed_number_has_at_most_the_decimals_and_no_idle_zeros),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}

/* src/format/hut-number.c: numbers as text, whatever the locale.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-format"
#include "config.h"
#include "format/hut-number.h"
#include <float.h>
#include <math.h>
#include <string.h>

/* Significant decimal digits that identify any double: IEEE 754-2008, 5.12.2. */
#define DIGITS_MAX 17
/* Decimal exponents written without "e": 0.000001 .. 999999999999999, as the header promises. */
#define PLAIN_EXPONENT_MIN (-6)
#define PLAIN_EXPONENT_MAX 14
#define PLAIN_LIMIT 1e15
/* 16 digits before the point, sign, point and 0 leave this room in HUT_NUMBER_SIZE. */
#define FIXED_DECIMALS_MAX 12

/* Most numbers of a file lie on the grid of 1 um: whole thousandths, written without any search. */
#define GRID_PER_UNIT 1000
#define GRID_LIMIT 1e9

/* FALSE when @value is no whole number of thousandths. A quotient is rounded as reading the same
 * decimal is (IEEE 754-2008, 4.3 and 5.12.2), so equality here means that the text reads back as
 * @value; and with at most DBL_DIG digits no shorter decimal does. */
static gboolean
write_grid (char buffer[HUT_NUMBER_SIZE],
            double value)
{
  if (fabs (value) >= GRID_LIMIT)
    return FALSE;

  const gint64 count = llround (fabs (value) * GRID_PER_UNIT);
  const gint64 whole = count / GRID_PER_UNIT, rest = count % GRID_PER_UNIT;
  const char *sign = value < 0.0 ? "-" : "";

  if ((double) count / GRID_PER_UNIT != fabs (value))
    return FALSE;
  if (rest == 0)
    g_snprintf (buffer, HUT_NUMBER_SIZE, "%s%" G_GINT64_FORMAT, sign, whole);
  else
    {
      g_snprintf (buffer, HUT_NUMBER_SIZE, "%s%" G_GINT64_FORMAT ".%03" G_GINT64_FORMAT, sign,
                  whole, rest);
      for (gsize n = strlen (buffer); buffer[n - 1] == '0'; n--)
        buffer[n - 1] = '\0';
    }
  return TRUE;
}

/* Splits "-d.ddde-xx" into its digits, without trailing zeros, and its exponent. */
static int
split_scientific (const char *text,
                  char digits[DIGITS_MAX + 1])
{
  const char *mark = strchr (text, 'e');
  gsize n = 0;

  for (const char *c = text; c < mark; c++)
    if (g_ascii_isdigit (*c))
      digits[n++] = *c;
  while (n > 1 && digits[n - 1] == '0')
    n--;
  digits[n] = '\0';
  return (int) g_ascii_strtoll (mark + 1, NULL, 10);
}

/* The fewest digits that read back as @value, which is finite and not 0. Any decimal of at most
 * DBL_DIG digits comes back from a double as it was (C17 5.2.4.2.2): when DBL_DIG digits read back
 * as @value, they are the fewest, padded with zeros. Only subnormals have less precision. */
static int
shortest_digits (double value,
                 char digits[DIGITS_MAX + 1])
{
  char text[HUT_NUMBER_SIZE];

  for (int n = fabs (value) < DBL_MIN ? 1 : DBL_DIG; n <= DIGITS_MAX; n++)
    {
      char format[8];

      g_snprintf (format, sizeof format, "%%.%de", n - 1);
      g_ascii_formatd (text, sizeof text, format, value);
      if (g_ascii_strtod (text, NULL) == value)
        break;
    }
  return split_scientific (text, digits);
}

static void
append_plain (GString *out,
              const char *digits,
              int exponent)
{
  const int n = (int) strlen (digits);

  if (exponent < 0)
    {
      g_string_append (out, "0.");
      for (int i = -1; i > exponent; i--)
        g_string_append_c (out, '0');
      g_string_append (out, digits);
      return;
    }
  for (int i = 0; i < n || i <= exponent; i++)
    {
      if (i == exponent + 1)
        g_string_append_c (out, '.');
      g_string_append_c (out, i < n ? digits[i] : '0');
    }
}

/**
 * hut_number_exact:
 * @buffer: (out caller-allocates): where the text goes
 * @value: any number; -0 is written "0"; what is not finite "nan", "inf", "-inf"
 *
 * Returns: (transfer none): @buffer
 */
const char *
hut_number_exact (char buffer[HUT_NUMBER_SIZE],
                  double value)
{
  if (!isfinite (value) || value == 0.0)
    {
      const char *text = isnan (value) ? "nan" : value == 0.0 ? "0" : value > 0.0 ? "inf" : "-inf";

      g_strlcpy (buffer, text, HUT_NUMBER_SIZE);
      return buffer;
    }

  char digits[DIGITS_MAX + 1];

  if (write_grid (buffer, value))
    return buffer;

  const int exponent = shortest_digits (value, digits);
  g_autoptr(GString) out = g_string_new (value < 0.0 ? "-" : NULL);

  if (exponent >= PLAIN_EXPONENT_MIN && exponent <= PLAIN_EXPONENT_MAX)
    {
      append_plain (out, digits, exponent);
    }
  else
    {
      append_plain (out, digits, 0);
      g_string_append_printf (out, "e%d", exponent);
    }
  g_strlcpy (buffer, out->str, HUT_NUMBER_SIZE);
  return buffer;
}

/**
 * hut_number_fixed:
 * @buffer: (out caller-allocates): where the text goes
 * @value: any number; from 1e15 on it is written by hut_number_exact()
 * @decimals: most decimals, at most 12
 *
 * Returns: (transfer none): @buffer
 */
const char *
hut_number_fixed (char buffer[HUT_NUMBER_SIZE],
                  double value,
                  guint decimals)
{
  if (!isfinite (value) || fabs (value) >= PLAIN_LIMIT)
    return hut_number_exact (buffer, value);

  char format[8];

  g_snprintf (format, sizeof format, "%%.%uf", MIN (decimals, FIXED_DECIMALS_MAX));
  g_ascii_formatd (buffer, HUT_NUMBER_SIZE, format, value);
  if (strchr (buffer, '.') != NULL)
    {
      gsize n = strlen (buffer);

      while (buffer[n - 1] == '0')
        buffer[--n] = '\0';
      if (buffer[n - 1] == '.')
        buffer[n - 1] = '\0';
    }
  if (strcmp (buffer, "-0") == 0)
    g_strlcpy (buffer, "0", HUT_NUMBER_SIZE);
  return buffer;
}

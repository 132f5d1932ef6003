/* src/app/hut-units.c: numbers as the user reads and types them.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-app"
#include "config.h"
#include "app/hut-units.h"
#include "format/hut-number.h"
#include <glib/gi18n.h>
#include <locale.h>
#include <math.h>
#include <string.h>

/* Source: international yard and pound agreement, 1959: 1 in = 25.4 mm exactly. */
#define MM_PER_INCH 25.4
#define MM_PER_CM 10.0
/* Own choice: longer texts are no numbers that a bench needs. */
#define TEXT_LENGTH_MAX 40

G_DEFINE_ENUM_TYPE (HutUnits,
                    hut_units,
                    G_DEFINE_ENUM_VALUE (HUT_UNITS_MM, "mm"),
                    G_DEFINE_ENUM_VALUE (HUT_UNITS_INCH, "inch"))

G_DEFINE_ENUM_TYPE (HutQuantity,
                    hut_quantity,
                    G_DEFINE_ENUM_VALUE (HUT_QUANTITY_LENGTH, "length"),
                    G_DEFINE_ENUM_VALUE (HUT_QUANTITY_SPEED, "speed"),
                    G_DEFINE_ENUM_VALUE (HUT_QUANTITY_MASS, "mass"),
                    G_DEFINE_ENUM_VALUE (HUT_QUANTITY_DENSITY, "density"),
                    G_DEFINE_ENUM_VALUE (HUT_QUANTITY_ANGLE, "angle"),
                    G_DEFINE_ENUM_VALUE (HUT_QUANTITY_PERCENT, "percent"),
                    G_DEFINE_ENUM_VALUE (HUT_QUANTITY_RATIO, "ratio"),
                    G_DEFINE_ENUM_VALUE (HUT_QUANTITY_COUNT, "count"),
                    G_DEFINE_ENUM_VALUE (HUT_QUANTITY_PRICE, "price"),
                    G_DEFINE_ENUM_VALUE (HUT_QUANTITY_POWER, "power"),
                    G_DEFINE_ENUM_VALUE (HUT_QUANTITY_FORCE, "force"),
                    G_DEFINE_ENUM_VALUE (HUT_QUANTITY_TEMPERATURE, "temperature"),
                    G_DEFINE_ENUM_VALUE (HUT_QUANTITY_ALTITUDE, "altitude"),
                    G_DEFINE_ENUM_VALUE (HUT_QUANTITY_SOUND, "sound"),
                    G_DEFINE_ENUM_VALUE (HUT_QUANTITY_WAVELENGTH, "wavelength"),
                    G_DEFINE_ENUM_VALUE (HUT_QUANTITY_TIME, "time"),
                    G_DEFINE_ENUM_VALUE (HUT_QUANTITY_FLOW, "flow"),
                    G_DEFINE_ENUM_VALUE (HUT_QUANTITY_PRESSURE, "pressure"))

G_DEFINE_QUARK (hut - units - error - quark, hut_units_error)

/* How each quantity is shown: unit, decimals (mm and inch), and the step of an arrow key. Decimals
 * are own choice: a caliper reads 0.01 mm, the grid is 0.001 mm, 0.0001 in is finer than both. */
static const struct
{
  const char *unit, *inch_unit;
  guint decimals, inch_decimals;
  double step, inch_step; /* in the displayed unit */
} shown_as[] = {
  /* Translators: millimetres, inches */
  [HUT_QUANTITY_LENGTH] = { N_ ("mm"), N_ ("in"), 3, 4, 1.0, 0.05 },
  /* Translators: per minute */
  [HUT_QUANTITY_SPEED] = { N_ ("mm/min"), N_ ("in/min"), 1, 2, 50.0, 2.0 },
  [HUT_QUANTITY_MASS] = { N_ ("kg"), N_ ("kg"), 3, 3, 0.1, 0.1 },
  [HUT_QUANTITY_DENSITY] = { N_ ("kg/m³"), N_ ("kg/m³"), 1, 1, 10.0, 10.0 },
  [HUT_QUANTITY_ANGLE] = { N_ ("°"), N_ ("°"), 3, 3, 1.0, 1.0 },
  [HUT_QUANTITY_PERCENT] = { N_ ("%"), N_ ("%"), 1, 1, 1.0, 1.0 },
  /* Translators: "times the thickness", shown after a number */
  [HUT_QUANTITY_RATIO] = { N_ ("× t"), N_ ("× t"), 3, 3, 0.1, 0.1 },
  [HUT_QUANTITY_COUNT] = { "", "", 0, 0, 1.0, 1.0 },
  [HUT_QUANTITY_PRICE] = { "", "", 2, 2, 1.0, 1.0 },
  [HUT_QUANTITY_POWER] = { N_ ("W"), N_ ("W"), 2, 2, 5.0, 5.0 },
  [HUT_QUANTITY_FORCE] = { N_ ("N"), N_ ("N"), 1, 1, 10.0, 10.0 },
  [HUT_QUANTITY_TEMPERATURE] = { N_ ("°C"), N_ ("°C"), 1, 1, 1.0, 1.0 },
  [HUT_QUANTITY_ALTITUDE] = { N_ ("m"), N_ ("m"), 0, 0, 50.0, 50.0 },
  [HUT_QUANTITY_SOUND] = { N_ ("dB"), N_ ("dB"), 1, 1, 1.0, 1.0 },
  [HUT_QUANTITY_WAVELENGTH] = { N_ ("nm"), N_ ("nm"), 1, 1, 5.0, 5.0 },
  [HUT_QUANTITY_TIME] = { N_ ("s"), N_ ("s"), 3, 3, 10.0, 10.0 },
  [HUT_QUANTITY_FLOW] = { N_ ("m³/h"), N_ ("m³/h"), 1, 1, 5.0, 5.0 },
  [HUT_QUANTITY_PRESSURE] = { N_ ("Pa"), N_ ("Pa"), 1, 1, 1.0, 1.0 },
};

const char *
hut_quantity_unit (HutQuantity quantity,
                   HutUnits units)
{
  g_return_val_if_fail (quantity < G_N_ELEMENTS (shown_as), "");

  const char *unit
      = units == HUT_UNITS_INCH ? shown_as[quantity].inch_unit : shown_as[quantity].unit;

  return *unit == '\0' ? "" : _(unit);
}

double
hut_quantity_scale_ratio (HutQuantity quantity,
                          HutUnits units)
{
  const gboolean has_length = quantity == HUT_QUANTITY_LENGTH || quantity == HUT_QUANTITY_SPEED;

  return has_length && units == HUT_UNITS_INCH ? 1.0 / MM_PER_INCH : 1.0;
}

double
hut_quantity_step (HutQuantity quantity,
                   HutUnits units)
{
  g_return_val_if_fail (quantity < G_N_ELEMENTS (shown_as), 1.0);

  const double step
      = units == HUT_UNITS_INCH ? shown_as[quantity].inch_step : shown_as[quantity].step;

  return step / hut_quantity_scale_ratio (quantity, units);
}

char *
hut_quantity_dup_text (HutQuantity quantity,
                       HutUnits units,
                       double value)
{
  g_return_val_if_fail (quantity < G_N_ELEMENTS (shown_as), NULL);

  const guint decimals
      = units == HUT_UNITS_INCH ? shown_as[quantity].inch_decimals : shown_as[quantity].decimals;
  char buffer[HUT_NUMBER_SIZE];
  GString *text = g_string_new (
      hut_number_fixed (buffer, value * hut_quantity_scale_ratio (quantity, units), decimals));

  g_string_replace (text, ".", localeconv ()->decimal_point, 1);
  return g_string_free (text, FALSE);
}

char *
hut_quantity_dup_text_with_unit (HutQuantity quantity,
                                 HutUnits units,
                                 double value)
{
  g_autofree char *number = hut_quantity_dup_text (quantity, units, value);
  const char *unit = hut_quantity_unit (quantity, units);

  if (*unit == '\0')
    return g_steal_pointer (&number);
  if (quantity == HUT_QUANTITY_ANGLE)
    return g_strconcat (number, unit, NULL);
  /* A no-break space: number and unit stay on one line. */
  return g_strconcat (number, "\302\240", unit, NULL);
}

/* Takes the unit off the end of @text. Returns how many kept units are one of it, or 0 if the unit
 * does not fit. */
static double
strip_unit (char *text,
            HutQuantity quantity,
            HutUnits units)
{
  static const struct
  {
    const char *suffix;
    double mm;
  } lengths[] = { { "mm", 1.0 },
                  { "cm", MM_PER_CM },
                  { "inch", MM_PER_INCH },
                  { "in", MM_PER_INCH },
                  { "\"", MM_PER_INCH } };
  const char *own = hut_quantity_unit (quantity, units);
  const double own_ratio = 1.0 / hut_quantity_scale_ratio (quantity, units);

  if (quantity == HUT_QUANTITY_LENGTH)
    for (guint i = 0; i < G_N_ELEMENTS (lengths); i++)
      if (g_str_has_suffix (text, lengths[i].suffix))
        {
          text[strlen (text) - strlen (lengths[i].suffix)] = '\0';
          return lengths[i].mm;
        }
  if (*own != '\0' && g_str_has_suffix (text, own))
    text[strlen (text) - strlen (own)] = '\0';
  g_strchomp (text);
  if (*text != '\0' && !g_ascii_isdigit (text[strlen (text) - 1]) && text[strlen (text) - 1] != '.'
      && text[strlen (text) - 1] != ',')
    return 0.0;
  return own_ratio;
}

/* Digits with at most one comma or point, and a sign. */
static gboolean
parse_decimal (const char *text,
               double *value)
{
  g_autofree char *plain = g_strdup (text);
  gboolean has_digit = FALSE;
  guint mark_count = 0;

  for (char *c = plain; *c != '\0'; c++)
    if (*c == ',' || *c == '.')
      {
        *c = '.';
        mark_count++;
      }
    else if (g_ascii_isdigit (*c))
      has_digit = TRUE;
    else if (!((*c == '-' || *c == '+') && c == plain))
      return FALSE;
  if (!has_digit || mark_count > 1)
    return FALSE;
  *value = g_ascii_strtod (plain, NULL);
  return isfinite (*value);
}

/* "3/4", "1 1/2", "-1/8": sizes as an inch rule has them. */
static gboolean
parse_fraction (const char *text,
                double *value)
{
  const gboolean negative = *text == '-';
  const char *body = negative ? text + 1 : text;
  const char *space = strchr (body, ' ');
  g_auto (GStrv) halves = g_strsplit (space != NULL ? space + 1 : body, "/", 3);
  double whole = 0.0, above = 0.0, below = 0.0;

  if (g_strv_length (halves) != 2)
    return FALSE;
  if (space != NULL)
    {
      g_autofree char *front = g_strndup (body, (gsize)(space - body));

      if (!parse_decimal (front, &whole))
        return FALSE;
    }
  if (!parse_decimal (halves[0], &above) || !parse_decimal (halves[1], &below) || below <= 0.0
      || above < 0.0 || whole < 0.0)
    return FALSE;
  *value = (whole + above / below) * (negative ? -1.0 : 1.0);
  return isfinite (*value);
}

gboolean
hut_quantity_parse (HutQuantity quantity,
                    HutUnits units,
                    const char *text,
                    double *value,
                    GError **error)
{
  g_return_val_if_fail (text != NULL && value != NULL, FALSE);

  g_autofree char *plain = g_strstrip (g_strdup (text));
  double number = 0.0, ratio;

  if (strlen (plain) > TEXT_LENGTH_MAX)
    *plain = '\0';
  ratio = strip_unit (plain, quantity, units);
  if (ratio <= 0.0 && g_ascii_isdigit (plain[strcspn (plain, "0123456789")])
      && strspn (plain, "+-.,0123456789") > 0)
    {
      g_set_error (error, HUT_UNITS_ERROR, HUT_UNITS_ERROR_UNIT,
                   /* Translators: %s is a unit such as mm */
                   *hut_quantity_unit (quantity, units) == '\0' ? _("A number without a unit")
                                                                : _("A number in %s"),
                   hut_quantity_unit (quantity, units));
      return FALSE;
    }
  g_strstrip (plain);
  if (!parse_decimal (plain, &number)
      && !(quantity == HUT_QUANTITY_LENGTH && parse_fraction (plain, &number)))
    {
      g_set_error_literal (error, HUT_UNITS_ERROR, HUT_UNITS_ERROR_NUMBER,
                           _("Not a number; write it like 12.5 or 12,5"));
      return FALSE;
    }
  if (quantity == HUT_QUANTITY_COUNT && number != floor (number))
    {
      g_set_error_literal (error, HUT_UNITS_ERROR, HUT_UNITS_ERROR_NUMBER, _("A whole number"));
      return FALSE;
    }
  *value = number * ratio;
  return TRUE;
}

/* src/sheets/hut-stroke-font.c: letters of single strokes, for scoring labels.
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A shape is a text of points "uv" on the grid; a blank lifts the tool. Nothing is scored twice. */
#define G_LOG_DOMAIN "hut-sheets"
#include "config.h"
#include "sheets/hut-stroke-font.h"
#include <string.h>

static const char *const LETTERS[26] = {
  "0004264440 0242",                 /* A */
  "00063645443303 3342413000",       /* B */
  "4536160501103041",                /* C */
  "00062644422000",                  /* D */
  "46060040 0333",                   /* E */
  "460600 0333",                     /* F */
  "45361605011030414323",            /* G */
  "0006 4046 0343",                  /* H */
  "1030 1636 2026",                  /* I */
  "464130100102",                    /* J */
  "0006 4602 1340",                  /* K */
  "060040",                          /* L */
  "0006234640",                      /* M */
  "00064046",                        /* N */
  "100105163645413010",              /* O */
  "00063645443303",                  /* P */
  "100105163645413010 2240",         /* Q */
  "00063645443303 2340",             /* R */
  "453616050413334241301001",        /* S */
  "0646 2026",                       /* T */
  "060110304146",                    /* U */
  "062046",                          /* V */
  "0610233046",                      /* W */
  "0046 0640",                       /* X */
  "062346 2320",                     /* Y */
  "06460040",                        /* Z */
};

static const char *const DIGITS[10] = {
  "100105163645413010 1234",         /* 0, with a stroke: no O */
  "042620 1030",                     /* 1 */
  "05163645440040",                  /* 2 */
  "05163645443313 334241301001",     /* 3 */
  "30360242",                        /* 4 */
  "460603334241301001",              /* 5 */
  "4536160501103041423303",          /* 6 */
  "064610",                          /* 7 */
  "13040516364544331302011030414233", /* 8 */
  "0110304145361605041343",          /* 9 */
};

static const char *
shape_of (char letter)
{
  const char upper = g_ascii_toupper (letter);

  if (upper >= 'A' && upper <= 'Z')
    return LETTERS[upper - 'A'];
  if (upper >= '0' && upper <= '9')
    return DIGITS[upper - '0'];
  switch (upper)
    {
    case ' ':
      return "";
    case '-':
      return "1333";
    case '.':
      return "1020211110";
    case '/':
      return "0046";
    case HUT_STROKE_ARROW:
      return "2026 042644";
    default:
      return "0006464000";
    }
}

double
hut_stroke_text_width_mm (const char *text,
                          double height_mm)
{
  g_return_val_if_fail (text != NULL, 0.0);

  const gsize count = strlen (text);

  if (count == 0)
    return 0.0;
  return height_mm / HUT_STROKE_HEIGHT_UNITS
         * (double) ((count - 1) * HUT_STROKE_STEP_UNITS + HUT_STROKE_WIDTH_UNITS);
}

GPtrArray *
hut_stroke_text_new (const char *text,
                     double height_mm)
{
  g_return_val_if_fail (text != NULL, NULL);

  const double unit_mm = height_mm / HUT_STROKE_HEIGHT_UNITS;
  GPtrArray *strokes = g_ptr_array_new_with_free_func ((GDestroyNotify) g_array_unref);

  for (guint i = 0; text[i] != '\0'; i++)
    {
      GArray *stroke = NULL;

      for (const char *at = shape_of (text[i]); *at != '\0';)
        {
          if (*at == ' ')
            {
              stroke = NULL;
              at++;
              continue;
            }
          const HutPoint p = {
            (double) (i * HUT_STROKE_STEP_UNITS + (guint) (at[0] - '0')) * unit_mm,
            (double) (at[1] - '0') * unit_mm,
          };

          if (stroke == NULL)
            {
              stroke = g_array_new (FALSE, FALSE, sizeof (HutPoint));
              g_ptr_array_add (strokes, stroke);
            }
          g_array_append_val (stroke, p);
          at += 2;
        }
    }
  return strokes;
}

/* src/app/hut-readings.c: the caliper readings of a stock as one line of text.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-app"
#include "config.h"
#include "app/hut-readings.h"
#include <glib/gi18n.h>

/* What a design file takes as a thickness. */
#define READING_MIN_MM 0.1
#define READING_MAX_MM 100.0
/* Own choice: more readings of one sheet say nothing more. */
#define READINGS_MAX 64

char *
hut_readings_dup_text (const GArray *readings_mm,
                       HutUnits units)
{
  g_return_val_if_fail (readings_mm != NULL, NULL);

  GString *text = g_string_new (NULL);

  for (guint i = 0; i < readings_mm->len; i++)
    {
      g_autofree char *number = hut_quantity_dup_text (HUT_QUANTITY_LENGTH, units,
                                                       g_array_index (readings_mm, double, i));

      g_string_append_printf (text, "%s%s", i > 0 ? " " : "", number);
    }
  return g_string_free (text, FALSE);
}

static gboolean
parse_reading (const char *text,
               HutUnits units,
               double *reading_mm,
               GError **error)
{
  g_autofree char *least = NULL, *most = NULL;

  if (!hut_quantity_parse (HUT_QUANTITY_LENGTH, units, text, reading_mm, error))
    {
      /* Translators: a part of what was typed; what is wrong with it follows */
      g_prefix_error (error, _("“%s”: "), text);
      return FALSE;
    }
  if (*reading_mm >= READING_MIN_MM && *reading_mm <= READING_MAX_MM)
    return TRUE;
  least = hut_quantity_dup_text (HUT_QUANTITY_LENGTH, units, READING_MIN_MM);
  most = hut_quantity_dup_text_with_unit (HUT_QUANTITY_LENGTH, units, READING_MAX_MM);
  g_set_error (error, HUT_UNITS_ERROR, HUT_UNITS_ERROR_NUMBER,
               /* Translators: a part of what was typed, and the least and most that it can be */
               _("“%s” is out of range: %s to %s"), text, least, most);
  return FALSE;
}

GArray *
hut_readings_parse (const char *text,
                    HutUnits units,
                    GError **error)
{
  g_return_val_if_fail (text != NULL, NULL);

  g_auto (GStrv) words = g_strsplit_set (text, " ;\t", -1);
  g_autoptr (GArray) readings = g_array_new (FALSE, FALSE, sizeof (double));

  for (guint i = 0; words[i] != NULL; i++)
    {
      double reading_mm = 0.0;

      if (*words[i] == '\0')
        continue;
      if (!parse_reading (words[i], units, &reading_mm, error))
        return NULL;
      g_array_append_val (readings, reading_mm);
    }
  if (readings->len == 0 || readings->len > READINGS_MAX)
    {
      g_set_error (error, HUT_UNITS_ERROR, HUT_UNITS_ERROR_NUMBER,
                   /* Translators: %d is a number of caliper readings */
                   _("1 to %d readings"), READINGS_MAX);
      return NULL;
    }
  return g_steal_pointer (&readings);
}

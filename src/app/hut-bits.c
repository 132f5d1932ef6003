/* src/app/hut-bits.c: the owner's flat-bottom bits as one line of text.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-app"
#include "config.h"
#include "app/hut-bits.h"
#include <glib/gi18n.h>

/* What a design file takes: src/design/hut-hardware-format.c and hut-design-format.c. */
#define BIT_MIN_MM 1.0
#define BIT_MAX_MM 200.0
#define BITS_MAX 200

static gboolean
parse_bit (const char *text,
           HutUnits units,
           double *bit_mm,
           GError **error)
{
  g_autofree char *least = NULL, *most = NULL;

  if (!hut_quantity_parse (HUT_QUANTITY_LENGTH, units, text, bit_mm, error))
    {
      /* Translators: a part of what was typed; what is wrong with it follows */
      g_prefix_error (error, _("“%s”: "), text);
      return FALSE;
    }
  if (*bit_mm >= BIT_MIN_MM && *bit_mm <= BIT_MAX_MM)
    return TRUE;
  least = hut_quantity_dup_text (HUT_QUANTITY_LENGTH, units, BIT_MIN_MM);
  most = hut_quantity_dup_text_with_unit (HUT_QUANTITY_LENGTH, units, BIT_MAX_MM);
  g_set_error (error, HUT_UNITS_ERROR, HUT_UNITS_ERROR_NUMBER,
               /* Translators: a part of what was typed, and the least and most that it can be */
               _("“%s” is out of range: %s to %s"), text, least, most);
  return FALSE;
}

/* Keeps the list in order and each bit in it once. */
static void
add_bit (GArray *bits_mm,
         double bit_mm)
{
  guint i = 0;

  while (i < bits_mm->len && g_array_index (bits_mm, double, i) < bit_mm)
    i++;
  if (i == bits_mm->len || g_array_index (bits_mm, double, i) > bit_mm)
    g_array_insert_val (bits_mm, i, bit_mm);
}

GArray *
hut_bits_parse (const char *text,
                HutUnits units,
                GError **error)
{
  g_return_val_if_fail (text != NULL, NULL);

  g_auto (GStrv) words = g_strsplit_set (text, " ;\t", -1);
  g_autoptr (GArray) bits_mm = g_array_new (FALSE, FALSE, sizeof (double));

  for (guint i = 0; words[i] != NULL; i++)
    {
      double bit_mm = 0.0;

      if (*words[i] == '\0')
        continue;
      if (!parse_bit (words[i], units, &bit_mm, error))
        return NULL;
      add_bit (bits_mm, bit_mm);
    }
  if (bits_mm->len > BITS_MAX)
    {
      g_set_error (error, HUT_UNITS_ERROR, HUT_UNITS_ERROR_NUMBER,
                   /* Translators: %d is a number of drill bits */
                   _("At most %d bits"), BITS_MAX);
      return NULL;
    }
  return g_steal_pointer (&bits_mm);
}

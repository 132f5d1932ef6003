/* src/format/hut-value-reader.c: the text of an attribute into a member of a struct.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-format"
#include "config.h"
#include "format/hut-value-reader.h"
#include "format/hut-file-error.h"
#include "format/hut-number.h"
#include <libxml/tree.h>
#include <string.h>

/* Characters of a wrong value that a message repeats. Own choice: fits a line. */
#define SHOWN_MAX_CHARACTERS 40

static const char *const switch_names[] = { "no", "yes", NULL };

char *
hut_value_dup_shown (const char *text)
{
  g_autoptr(GString) shown = g_string_new (NULL);
  guint n = 0;

  for (const char *c = text; *c != '\0'; c = g_utf8_next_char (c))
    {
      const gunichar character = g_utf8_get_char (c);

      if (n++ == SHOWN_MAX_CHARACTERS)
        {
          g_string_append (shown, "...");
          break;
        }
      g_string_append_unichar (shown, g_unichar_isprint (character) ? character : '?');
    }
  return g_string_free (g_steal_pointer (&shown), FALSE);
}

char *
hut_value_dup_allowed (const HutAttributeFormat *format)
{
  char least[HUT_NUMBER_SIZE], most[HUT_NUMBER_SIZE];

  switch (format->kind)
    {
    case HUT_VALUE_NUMBER:
    case HUT_VALUE_COUNT:
      hut_number_exact (least, format->least);
      hut_number_exact (most, format->most);
      return g_strdup_printf ("%s%s to %s%s%s",
                              format->kind == HUT_VALUE_COUNT ? "whole numbers " : "", least, most,
                              format->unit[0] != '\0' ? " " : "", format->unit);
    case HUT_VALUE_SWITCH:
      return g_strdup ("yes, no");
    case HUT_VALUE_CHOICE:
      return g_strjoinv (", ", (char **) format->choices);
    case HUT_VALUE_WORD:
      return format->word->dup_allowed ();
    case HUT_VALUE_VERSION:
      return g_strdup (hut_number_exact (least, format->least));
    case HUT_VALUE_ID:
      return g_strdup ("a letter or '_', then letters, digits, '-', '_' and '.'");
    case HUT_VALUE_REFERENCE:
      return g_strdup_printf ("the id of a <%s>", format->refers_to);
    case HUT_VALUE_TEXT:
    default:
      return g_strdup_printf ("at most %d bytes of text", HUT_TEXT_MAX_BYTES);
    }
}

/* Only what a person would call a decimal number: no "nan", "inf", "0x1p3" and no blanks. */
static gboolean
looks_like_number (const char *text)
{
  const char *c = text;
  gsize n_digits = 0;

  c += *c == '+' || *c == '-';
  for (; g_ascii_isdigit (*c); c++)
    n_digits++;
  if (*c == '.')
    for (c++; g_ascii_isdigit (*c); c++)
      n_digits++;
  if (n_digits == 0)
    return FALSE;
  if (*c == 'e' || *c == 'E')
    {
      c++;
      c += *c == '+' || *c == '-';
      if (!g_ascii_isdigit (*c))
        return FALSE;
      while (g_ascii_isdigit (*c))
        c++;
    }
  return *c == '\0';
}

static gboolean
looks_whole (const char *text)
{
  return text[0] != '\0' && text[strspn (text, "0123456789")] == '\0';
}

static gboolean
find_choice (const char *const *choices,
             const char *text,
             int *index)
{
  for (int i = 0; choices[i] != NULL; i++)
    if (strcmp (choices[i], text) == 0)
      {
        *index = i;
        return TRUE;
      }
  return FALSE;
}

static gboolean
read_number (const HutAttributeFormat *format,
             const char *text,
             gpointer member,
             const char **comment)
{
  const gboolean count = format->kind == HUT_VALUE_COUNT;
  double value;

  if (!looks_like_number (text) || (count && !looks_whole (text)))
    {
      *comment = count ? ", not a whole number" : ", not a number";
      return FALSE;
    }
  value = g_ascii_strtod (text, NULL);
  if (!(value >= format->least && value <= format->most))
    return FALSE;
  if (count)
    *(guint *) member = (guint) value;
  else
    *(double *) member = value == 0.0 ? 0.0 : value; /* no negative zero */
  return TRUE;
}

static gboolean
read_text (const HutAttributeFormat *format,
           const char *text,
           char **member)
{
  if (strlen (text) > HUT_TEXT_MAX_BYTES)
    return FALSE;
  if (format->kind != HUT_VALUE_TEXT && xmlValidateNCName ((const xmlChar *) text, 0) != 0)
    return FALSE;
  g_free (*member);
  *member = g_strdup (text);
  return TRUE;
}

static gboolean
read_present (const HutAttributeFormat *format,
              const char *text,
              gpointer member,
              const char **comment)
{
  int index = 0;

  switch (format->kind)
    {
    case HUT_VALUE_NUMBER:
    case HUT_VALUE_COUNT:
      return read_number (format, text, member, comment);
    case HUT_VALUE_SWITCH:
    case HUT_VALUE_CHOICE:
      if (!find_choice (format->kind == HUT_VALUE_SWITCH ? switch_names : format->choices, text,
                        &index))
        return FALSE;
      *(int *) member = index;
      return TRUE;
    case HUT_VALUE_WORD:
      return format->word->parse (text, member);
    case HUT_VALUE_VERSION:
      return looks_whole (text) && g_ascii_strtod (text, NULL) == format->least;
    case HUT_VALUE_TEXT:
    case HUT_VALUE_ID:
    case HUT_VALUE_REFERENCE:
    default:
      return read_text (format, text, member);
    }
}

static void
set_absent (const HutAttributeFormat *format,
            gpointer member)
{
  switch (format->kind)
    {
    case HUT_VALUE_NUMBER:
      *(double *) member = format->absent;
      break;
    case HUT_VALUE_COUNT:
    case HUT_VALUE_SWITCH:
    case HUT_VALUE_CHOICE:
      *(guint *) member = (guint) format->absent;
      break;
    case HUT_VALUE_TEXT:
    case HUT_VALUE_ID:
    case HUT_VALUE_REFERENCE:
      g_clear_pointer ((char **) member, g_free);
      break;
    case HUT_VALUE_WORD:
    case HUT_VALUE_VERSION:
    default:
      g_assert_not_reached (); /* no table lists one */
    }
}

char *
hut_value_read (const HutAttributeFormat *format,
                const char *text,
                gpointer self)
{
  gpointer member = (char *) self + format->offset;
  const char *comment = "";

  if (text == NULL && format->optional)
    {
      set_absent (format, member);
      return NULL;
    }

  if (text != NULL && read_present (format, text, member, &comment))
    return NULL;

  g_autofree char *allowed = hut_value_dup_allowed (format);

  if (text == NULL)
    return g_strdup_printf ("is missing; allowed: %s", allowed);

  g_autofree char *shown = hut_value_dup_shown (text);
  const gboolean bare = comment[0] == '\0'
                        && (format->kind == HUT_VALUE_NUMBER || format->kind == HUT_VALUE_COUNT);
  const char *quote = bare ? "" : "'";

  return g_strdup_printf ("is %s%s%s%s; allowed: %s", quote, shown, quote, comment, allowed);
}

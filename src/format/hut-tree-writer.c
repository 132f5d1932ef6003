/* src/format/hut-tree-writer.c: structs as canonical XML.
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Attributes and children in the order of the tables, every default of what is not optional
 * written out, numbers by hut_number_exact (): equal structs give the same bytes. */
#define G_LOG_DOMAIN "hut-format"
#include "config.h"
#include "format/hut-tree-writer.h"
#include "format/hut-number.h"
#include <libxml/xmlwriter.h>
#include <string.h>

/* Room for the decimal digits of a guint. */
#define COUNT_SIZE 12

static void write_element (xmlTextWriter *writer,
                           const HutElementFormat *format,
                           gconstpointer self);

/* The writer works in memory, where only a lack of it can fail. */
static void
check (int result)
{
  if (result < 0)
    g_error ("no memory to write XML");
}

/* xmlTextWriter would write other scripts as numbers; people shall be able to read their names.
 * What XML cannot hold becomes U+FFFD. */
static char *
dup_escaped (const char *text)
{
  g_autofree char *valid = g_utf8_make_valid (text, -1);
  g_autoptr(GString) out = g_string_new (NULL);

  for (const char *c = valid; *c != '\0'; c = g_utf8_next_char (c))
    {
      const gunichar character = g_utf8_get_char (c);

      if (character == '&')
        g_string_append (out, "&amp;");
      else if (character == '<')
        g_string_append (out, "&lt;");
      else if (character == '>')
        g_string_append (out, "&gt;");
      else if (character == '"')
        g_string_append (out, "&quot;");
      else if (character == '\t' || character == '\n' || character == '\r')
        g_string_append_printf (out, "&#%u;", character);
      else if (character < 0x20 || character == 0xFFFE || character == 0xFFFF)
        g_string_append_unichar (out, 0xFFFD);
      else
        g_string_append_unichar (out, character);
    }
  return g_string_free (g_steal_pointer (&out), FALSE);
}

static void
write_attribute_text (xmlTextWriter *writer,
                      const char *name,
                      const char *text)
{
  g_autofree char *escaped = dup_escaped (text);

  check (xmlTextWriterStartAttribute (writer, (const xmlChar *) name));
  check (xmlTextWriterWriteRaw (writer, (const xmlChar *) escaped));
  check (xmlTextWriterEndAttribute (writer));
}

static const char *
choice_name (const HutAttributeFormat *format,
             guint value)
{
  g_return_val_if_fail (value < g_strv_length ((char **) format->choices), format->choices[0]);

  return format->choices[value];
}

/* TRUE when an optional attribute is left out. */
static gboolean
is_absent (const HutAttributeFormat *format,
           gconstpointer member)
{
  if (!format->optional)
    return FALSE;
  switch (format->kind)
    {
    case HUT_VALUE_NUMBER:
      return *(const double *) member == format->absent;
    case HUT_VALUE_COUNT:
    case HUT_VALUE_SWITCH:
    case HUT_VALUE_CHOICE:
      return *(const guint *) member == (guint) format->absent;
    case HUT_VALUE_TEXT:
    case HUT_VALUE_ID:
    case HUT_VALUE_REFERENCE:
      return *(char *const *) member == NULL;
    case HUT_VALUE_WORD:
    case HUT_VALUE_VERSION:
    default:
      return FALSE;
    }
}

static void
write_attribute (xmlTextWriter *writer,
                 const HutAttributeFormat *format,
                 gconstpointer self)
{
  gconstpointer member = (const char *) self + format->offset;
  char buffer[MAX (HUT_NUMBER_SIZE, COUNT_SIZE)];
  const char *text = NULL;

  if (is_absent (format, member))
    return;
  switch (format->kind)
    {
    case HUT_VALUE_NUMBER:
      text = hut_number_exact (buffer, *(const double *) member);
      break;
    case HUT_VALUE_COUNT:
      g_snprintf (buffer, sizeof buffer, "%u", *(const guint *) member);
      text = buffer;
      break;
    case HUT_VALUE_SWITCH:
      text = *(const gboolean *) member ? "yes" : "no";
      break;
    case HUT_VALUE_CHOICE:
      text = choice_name (format, *(const guint *) member);
      break;
    case HUT_VALUE_WORD:
      text = format->word->to_text (member);
      break;
    case HUT_VALUE_VERSION:
      text = hut_number_exact (buffer, format->least);
      break;
    case HUT_VALUE_TEXT:
    case HUT_VALUE_ID:
    case HUT_VALUE_REFERENCE:
    default:
      text = *(char *const *) member;
      break;
    }
  write_attribute_text (writer, format->name, text != NULL ? text : "");
}

static void
write_kept (xmlTextWriter *writer,
            const HutElementFormat *format,
            gconstpointer parent)
{
  g_autofree gpointer entry = g_malloc0 (format->size);
  guint place = 0;

  while (format->keeper->next (parent, &place, entry))
    write_element (writer, format, entry);
}

static void
write_children (xmlTextWriter *writer,
                const HutChildFormat *child,
                gconstpointer self)
{
  gconstpointer member = (const char *) self + child->offset;

  switch (child->kind)
    {
    case HUT_CHILD_ITEMS:
      {
        const GPtrArray *items = *(GPtrArray *const *) member;

        for (guint i = 0; i < items->len; i++)
          write_element (writer, child->element, g_ptr_array_index (items, i));
        break;
      }
    case HUT_CHILD_VALUES:
      {
        const GArray *values = *(GArray *const *) member;

        for (guint i = 0; i < values->len; i++)
          write_element (writer, child->element, values->data + i * child->element->size);
        break;
      }
    case HUT_CHILD_KEPT:
      write_kept (writer, child->element, self);
      break;
    case HUT_CHILD_MEMBER:
    default:
      write_element (writer, child->element, member);
      break;
    }
}

static void
write_inside (xmlTextWriter *writer,
              const HutElementFormat *format,
              gconstpointer self)
{
  for (guint i = 0; i < format->n_attributes; i++)
    write_attribute (writer, &format->attributes[i], self);
  for (guint i = 0; i < format->n_children; i++)
    write_children (writer, &format->children[i], self);
  if (format->content != NULL)
    {
      const char *text = *(char *const *) ((const char *) self + format->content->offset);
      g_autofree char *escaped = dup_escaped (text != NULL ? text : "");

      check (xmlTextWriterWriteRaw (writer, (const xmlChar *) escaped));
    }
}

static void
write_element (xmlTextWriter *writer,
               const HutElementFormat *format,
               gconstpointer self)
{
  check (xmlTextWriterStartElement (writer, (const xmlChar *) format->name));
  write_inside (writer, format, self);
  check (xmlTextWriterEndElement (writer));
}

char *
hut_tree_to_xml (const HutElementFormat *format,
                 const char *ns,
                 gconstpointer self)
{
  g_return_val_if_fail (format != NULL && ns != NULL && self != NULL, NULL);

  xmlBuffer *buffer = xmlBufferCreate ();
  xmlTextWriter *writer = xmlNewTextWriterMemory (buffer, 0);

  if (buffer == NULL || writer == NULL)
    g_error ("no memory to write XML");
  check (xmlTextWriterSetIndent (writer, 1));
  check (xmlTextWriterSetIndentString (writer, (const xmlChar *) "  "));
  check (xmlTextWriterStartDocument (writer, NULL, "UTF-8", NULL));
  check (xmlTextWriterStartElement (writer, (const xmlChar *) format->name));
  write_attribute_text (writer, "xmlns", ns);
  write_inside (writer, format, self);
  check (xmlTextWriterEndElement (writer));
  check (xmlTextWriterEndDocument (writer));
  xmlFreeTextWriter (writer);

  const gsize size = (gsize) xmlBufferLength (buffer);
  char *text = g_strndup ((const char *) xmlBufferContent (buffer), size);

  xmlBufferFree (buffer);
  return text;
}

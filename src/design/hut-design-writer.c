/* src/design/hut-design-writer.c: a design as canonical XML.
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Attributes and children in the order of the format's tables, every default written out, numbers
 * by hut_number_exact (): equal designs give the same bytes. */
#define G_LOG_DOMAIN "hut-design"
#include "config.h"
#include "design/hut-design-format.h"
#include "design/hut-file.h"
#include "design/hut-number.h"
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

static void
write_attribute (xmlTextWriter *writer,
                 const HutAttributeFormat *format,
                 gconstpointer self)
{
  gconstpointer member = (const char *) self + format->offset;
  char buffer[MAX (HUT_NUMBER_SIZE, COUNT_SIZE)];
  const char *text = NULL;

  switch (format->kind)
    {
    case HUT_VALUE_NUMBER:
      if (format->optional && *(const double *) member == HUT_ROOM_FREE)
        return;
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
    case HUT_VALUE_PANEL:
      text = hut_panel_id_to_string (*(const HutPanelId *) member);
      break;
    case HUT_VALUE_VERSION:
      g_snprintf (buffer, sizeof buffer, "%d", HUT_DESIGN_VERSION);
      text = buffer;
      break;
    case HUT_VALUE_TEXT:
    case HUT_VALUE_ID:
    case HUT_VALUE_REFERENCE:
    default:
      text = *(char *const *) member;
      if (text == NULL && format->optional)
        return;
      break;
    }
  write_attribute_text (writer, format->name, text != NULL ? text : "");
}

static void
write_panels (xmlTextWriter *writer,
              const HutElementFormat *format,
              const HutShell *shell)
{
  for (int i = 0; i < HUT_SHELL_COUNT; i++)
    for (int side = 0; side < HUT_SIDE_COUNT; side++)
      {
        const HutPanelStock entry = { { (HutShellId) i, (HutSide) side }, shell->stock[i][side] };
        HutPanelId known;

        if (entry.stock != NULL
            && hut_panel_id_from_string (hut_panel_id_to_string (entry.panel), &known))
          write_element (writer, format, &entry);
      }
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
    case HUT_CHILD_PANELS:
      write_panels (writer, child->element, self);
      break;
    case HUT_CHILD_MEMBER:
    default:
      write_element (writer, child->element, member);
      break;
    }
}

static void
write_element (xmlTextWriter *writer,
               const HutElementFormat *format,
               gconstpointer self)
{
  check (xmlTextWriterStartElement (writer, (const xmlChar *) format->name));
  if (format == &hut_design_format)
    write_attribute_text (writer, "xmlns", HUT_DESIGN_NS);
  for (guint i = 0; i < format->n_attributes; i++)
    write_attribute (writer, &format->attributes[i], self);
  for (guint i = 0; i < format->n_children; i++)
    write_children (writer, &format->children[i], self);
  check (xmlTextWriterEndElement (writer));
}

char *
hut_design_to_xml (const HutDesign *self)
{
  g_return_val_if_fail (self != NULL, NULL);

  xmlBuffer *buffer = xmlBufferCreate ();
  xmlTextWriter *writer = xmlNewTextWriterMemory (buffer, 0);

  if (buffer == NULL || writer == NULL)
    g_error ("no memory to write XML");
  check (xmlTextWriterSetIndent (writer, 1));
  check (xmlTextWriterSetIndentString (writer, (const xmlChar *) "  "));
  check (xmlTextWriterStartDocument (writer, NULL, "UTF-8", NULL));
  write_element (writer, &hut_design_format, self);
  check (xmlTextWriterEndDocument (writer));
  xmlFreeTextWriter (writer);

  const gsize size = (gsize) xmlBufferLength (buffer);
  char *text = g_strndup ((const char *) xmlBufferContent (buffer), size);

  xmlBufferFree (buffer);
  return text;
}

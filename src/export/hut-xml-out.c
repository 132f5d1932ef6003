/* src/export/hut-xml-out.c: an XML text that is written from top to bottom.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-export"
#include "config.h"
#include "export/hut-xml-out.h"

#include <gio/gio.h>
#include <libxml/xmlwriter.h>
#include <math.h>

#include "format/hut-number.h"

#define REPLACEMENT_CHARACTER 0xfffd

struct _HutXmlOut
{
  xmlBuffer *buffer;
  xmlTextWriter *writer;
  gboolean failed;
};

/* Every call of the writer says -1 when it fails. */
static void
note (HutXmlOut *self,
      int result)
{
  if (result < 0)
    self->failed = TRUE;
}

/* Source: XML 1.0 (fifth edition), production [2] Char. */
static gboolean
is_xml_char (gunichar c)
{
  return c == '\t' || c == '\n' || c == '\r' || (c >= 0x20 && c <= 0xd7ff)
         || (c >= 0xe000 && c <= 0xfffd) || (c >= 0x10000 && c <= 0x10ffff);
}

static char *
dup_clean (const char *text)
{
  g_autofree char *valid = g_utf8_make_valid (text, -1);
  GString *clean = g_string_sized_new (strlen (valid));

  for (const char *at = valid; *at != '\0'; at = g_utf8_next_char (at))
    {
      const gunichar c = g_utf8_get_char (at);

      g_string_append_unichar (clean, is_xml_char (c) ? c : REPLACEMENT_CHARACTER);
    }
  return g_string_free (clean, FALSE);
}

HutXmlOut *
hut_xml_out_new (const char *root,
                 const char *ns)
{
  HutXmlOut *self = g_new0 (HutXmlOut, 1);

  self->buffer = xmlBufferCreate ();
  self->writer = self->buffer != NULL ? xmlNewTextWriterMemory (self->buffer, 0) : NULL;
  if (self->writer == NULL)
    {
      self->failed = TRUE;
      return self;
    }
  note (self, xmlTextWriterSetIndent (self->writer, 1));
  note (self, xmlTextWriterSetIndentString (self->writer, BAD_CAST "  "));
  note (self, xmlTextWriterStartDocument (self->writer, NULL, "UTF-8", NULL));
  hut_xml_out_open (self, root);
  if (ns != NULL)
    hut_xml_out_text (self, "xmlns", ns);
  return self;
}

void
hut_xml_out_free (HutXmlOut *self)
{
  if (self == NULL)
    return;
  if (self->writer != NULL)
    xmlFreeTextWriter (self->writer);
  if (self->buffer != NULL)
    xmlBufferFree (self->buffer);
  g_free (self);
}

void
hut_xml_out_open (HutXmlOut *self,
                  const char *name)
{
  if (!self->failed)
    note (self, xmlTextWriterStartElement (self->writer, BAD_CAST name));
}

void
hut_xml_out_close (HutXmlOut *self)
{
  if (!self->failed)
    note (self, xmlTextWriterEndElement (self->writer));
}

void
hut_xml_out_text (HutXmlOut *self,
                  const char *name,
                  const char *value)
{
  g_autofree char *clean = dup_clean (value);

  if (!self->failed)
    note (self, xmlTextWriterWriteAttribute (self->writer, BAD_CAST name, BAD_CAST clean));
}

void
hut_xml_out_number (HutXmlOut *self,
                    const char *name,
                    double value)
{
  hut_xml_out_numbers (self, name, &value, 1);
}

void
hut_xml_out_numbers (HutXmlOut *self,
                     const char *name,
                     const double *values,
                     guint count)
{
  g_autoptr(GString) list = g_string_new (NULL);

  for (guint i = 0; i < count; i++)
    {
      char number[HUT_NUMBER_SIZE];

      g_return_if_fail (isfinite (values[i]));
      if (i > 0)
        g_string_append_c (list, ' ');
      g_string_append (list, hut_number_exact (number, values[i]));
    }
  hut_xml_out_text (self, name, list->str);
}

void
hut_xml_out_count (HutXmlOut *self,
                   const char *name,
                   guint value)
{
  char number[HUT_NUMBER_SIZE];

  g_snprintf (number, sizeof number, "%u", value);
  hut_xml_out_text (self, name, number);
}

void
hut_xml_out_flag (HutXmlOut *self,
                  const char *name,
                  gboolean value)
{
  hut_xml_out_text (self, name, value ? "true" : "false");
}

void
hut_xml_out_content (HutXmlOut *self,
                     const char *text)
{
  g_autofree char *clean = dup_clean (text);

  if (!self->failed)
    note (self, xmlTextWriterWriteString (self->writer, BAD_CAST clean));
}

GBytes *
hut_xml_out_finish (HutXmlOut *self,
                    GError **error)
{
  if (!self->failed)
    note (self, xmlTextWriterEndDocument (self->writer));
  if (self->writer != NULL)
    xmlFreeTextWriter (g_steal_pointer (&self->writer));
  if (self->failed)
    {
      g_set_error_literal (error, G_IO_ERROR, G_IO_ERROR_NO_SPACE,
                           "the XML text could not be written; it takes more memory than there is");
      return NULL;
    }
  return g_bytes_new (xmlBufferContent (self->buffer), (gsize) xmlBufferLength (self->buffer));
}

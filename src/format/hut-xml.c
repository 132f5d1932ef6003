/* src/format/hut-xml.c: XML from outside, read as hostile.
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The parser's own limits (depth 256, 10 MB per text) stay on, because XML_PARSE_HUGE is not set. A
 * DOCTYPE stops it before any entity is declared. Before it starts, the bytes are looked through
 * once: the parser compares each attribute of a tag with all others, so their number is bounded
 * here. */
#define G_LOG_DOMAIN "hut-format"
#include "config.h"
#include "format/hut-xml.h"
#include "format/hut-file-error.h"
#include <libxml/parser.h>
#include <libxml/SAX2.h>
#include <string.h>

typedef struct
{
  gboolean has_doctype;
  guint n_elements;
  int line;         /* of the first error, 0 for none */
  char message[200];
} Parsing;

static void
note_doctype (void *context,
              const xmlChar *name,
              const xmlChar *external_id,
              const xmlChar *system_id)
{
  xmlParserCtxt *parser = context;
  Parsing *parsing = parser->_private;

  parsing->has_doctype = TRUE;
  parsing->line = parser->input != NULL ? parser->input->line : 1;
  xmlStopParser (parser);
}

static void
count_element (void *context,
               const xmlChar *name,
               const xmlChar *prefix,
               const xmlChar *uri,
               int n_namespaces,
               const xmlChar **namespaces,
               int n_attributes,
               int n_defaulted,
               const xmlChar **attributes)
{
  xmlParserCtxt *parser = context;
  Parsing *parsing = parser->_private;

  if (++parsing->n_elements > HUT_XML_ELEMENTS_MAX)
    {
      if (parsing->line == 0)
        parsing->line = parser->input != NULL ? parser->input->line : 1;
      xmlStopParser (parser);
      return;
    }
  xmlSAX2StartElementNs (context, name, prefix, uri, n_namespaces, namespaces, n_attributes,
                         n_defaulted, attributes);
}

/* The first error says what is wrong; those after it follow from it. Warnings do not count. */
static void
note_error (void *context,
            xmlErrorPtr error)
{
  xmlParserCtxt *parser = context;
  Parsing *parsing = parser->_private;

  if (error->level < XML_ERR_ERROR || parsing->line != 0)
    return;
  parsing->line = MAX (error->line, 1);
  g_strlcpy (parsing->message, error->message != NULL ? error->message : "not well-formed",
             sizeof parsing->message);
  g_strdelimit (parsing->message, "\n\r\t", ' ');
  g_strchomp (parsing->message);
}

static guint
line_of (const char *data,
         const char *at)
{
  guint line = 1;

  for (const char *c = data; c < at; c++)
    line += *c == '\n';
  return line;
}

static gboolean
is_blank (const char *data,
          gsize size)
{
  for (gsize i = 0; i < size; i++)
    if (strchr (" \t\r\n", data[i]) == NULL || data[i] == '\0')
      return FALSE;
  return TRUE;
}

static gboolean
check_bytes (const char *data,
             gsize size,
             const char *name,
             GError **error)
{
  const char *end = NULL;
  guint n_equals = 0;

  if (is_blank (data, size))
    {
      g_set_error (error, HUT_FILE_ERROR, HUT_FILE_ERROR_SYNTAX,
                   "%s:1: the file is empty; allowed: a design as XML", name);
      return FALSE;
    }
  if (size > HUT_XML_SIZE_MAX_BYTES)
    {
      g_set_error (error, HUT_FILE_ERROR, HUT_FILE_ERROR_SYNTAX,
                   "%s:1: the file has %" G_GSIZE_FORMAT " bytes; allowed: at most %d", name, size,
                   HUT_XML_SIZE_MAX_BYTES);
      return FALSE;
    }
  if (!g_utf8_validate_len (data, size, &end))
    {
      g_set_error (error, HUT_FILE_ERROR, HUT_FILE_ERROR_SYNTAX,
                   "%s:%u: not a text file in UTF-8; allowed: a design as XML in UTF-8", name,
                   line_of (data, end));
      return FALSE;
    }
  for (const char *c = data; c < data + size; c++)
    {
      n_equals = *c == '<' ? 0 : n_equals + (*c == '=');
      if (n_equals > HUT_XML_ATTRIBUTES_MAX)
        {
          g_set_error (error, HUT_FILE_ERROR, HUT_FILE_ERROR_SYNTAX,
                       "%s:%u: a tag with more than %d attributes; allowed: at most that", name,
                       line_of (data, c), HUT_XML_ATTRIBUTES_MAX);
          return FALSE;
        }
    }
  return TRUE;
}

static void
set_parse_error (const Parsing *parsing,
                 const char *name,
                 GError **error)
{
  const int line = MAX (parsing->line, 1);

  if (parsing->has_doctype)
    g_set_error (error, HUT_FILE_ERROR, HUT_FILE_ERROR_SYNTAX,
                 "%s:%d: a DOCTYPE; allowed: XML without one", name, line);
  else if (parsing->n_elements > HUT_XML_ELEMENTS_MAX)
    g_set_error (error, HUT_FILE_ERROR, HUT_FILE_ERROR_SYNTAX,
                 "%s:%d: too many elements; allowed: at most %d", name, line, HUT_XML_ELEMENTS_MAX);
  else
    g_set_error (error, HUT_FILE_ERROR, HUT_FILE_ERROR_SYNTAX,
                 "%s:%d: not well-formed XML: %s; allowed: a whole XML file", name, line,
                 parsing->message[0] != '\0' ? parsing->message : "cannot be read");
}

xmlDoc *
hut_xml_parse (const char *data,
               gsize size,
               const char *name,
               GError **error)
{
  g_return_val_if_fail (data != NULL || size == 0, NULL);
  g_return_val_if_fail (name != NULL, NULL);

  if (!check_bytes (data != NULL ? data : "", size, name, error))
    return NULL;

  Parsing parsing = { 0 };
  xmlParserCtxt *parser = xmlNewParserCtxt ();

  if (parser == NULL)
    {
      g_set_error (error, HUT_FILE_ERROR, HUT_FILE_ERROR_IO, "%s: no memory for a parser", name);
      return NULL;
    }
  parser->_private = &parsing;
  parser->sax->internalSubset = note_doctype;
  parser->sax->startElementNs = count_element;
  parser->sax->serror = note_error;

  g_autoptr(xmlDoc) document = xmlCtxtReadMemory (parser, data, (int) size, NULL, "UTF-8",
                                                   XML_PARSE_NONET | XML_PARSE_BIG_LINES);
  const gboolean whole = document != NULL && parser->wellFormed && parsing.line == 0
                         && xmlDocGetRootElement (document) != NULL;

  xmlFreeParserCtxt (parser);
  if (!whole)
    {
      set_parse_error (&parsing, name, error);
      return NULL;
    }
  return g_steal_pointer (&document);
}

/* src/design/hut-design-schema.c: the RELAX NG schema as a second net under the reader.
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The reader's own tables say what is wrong in better words, so it comes first. The schema is what
 * the outside world validates against: whatever the reader takes, it must take too. */
#define G_LOG_DOMAIN "hut-design"
#include "config.h"
#include "design/hut-design-schema.h"
#include "design/hut-file.h"
#include "design/hut-core-resources.h"
#include <libxml/relaxng.h>

#define SCHEMA_PATH "/org/hutchwright/core/design.rng"

G_DEFINE_AUTOPTR_CLEANUP_FUNC (xmlRelaxNG, xmlRelaxNGFree)
G_DEFINE_AUTOPTR_CLEANUP_FUNC (xmlRelaxNGParserCtxt, xmlRelaxNGFreeParserCtxt)
G_DEFINE_AUTOPTR_CLEANUP_FUNC (xmlRelaxNGValidCtxt, xmlRelaxNGFreeValidCtxt)

typedef struct
{
  int line;
  char *message;
} Fault;

static void
note_fault (void *data,
            xmlErrorPtr error)
{
  Fault *fault = data;

  if (fault->message != NULL)
    return;
  fault->line = error->line;
  fault->message = g_strdup (error->message != NULL ? error->message : "invalid");
  g_strdelimit (fault->message, "\n\r\t", ' ');
  g_strchomp (fault->message);
}

static xmlRelaxNG *
parse_schema (Fault *fault)
{
  g_autoptr(GBytes) bytes = g_resource_lookup_data (hut_core_get_resource (), SCHEMA_PATH,
                                                    G_RESOURCE_LOOKUP_FLAGS_NONE, NULL);
  gsize size = 0;
  const char *text = bytes != NULL ? g_bytes_get_data (bytes, &size) : NULL;
  g_autoptr(xmlRelaxNGParserCtxt) parser = NULL;

  g_return_val_if_fail (text != NULL, NULL);

  parser = xmlRelaxNGNewMemParserCtxt (text, (int) size);
  xmlRelaxNGSetParserStructuredErrors (parser, note_fault, fault);
  return xmlRelaxNGParse (parser);
}

gboolean
hut_design_schema_check (xmlDoc *document,
                         const char *name,
                         GError **error)
{
  g_return_val_if_fail (document != NULL && name != NULL, FALSE);

  Fault fault = { 0, NULL };
  g_autofree char *message = NULL;
  g_autoptr(xmlRelaxNG) schema = parse_schema (&fault);
  g_autoptr(xmlRelaxNGValidCtxt) validator = NULL;

  if (schema != NULL)
    {
      validator = xmlRelaxNGNewValidCtxt (schema);
      xmlRelaxNGSetValidStructuredErrors (validator, note_fault, &fault);
      if (xmlRelaxNGValidateDoc (validator, document) == 0)
        {
          g_free (fault.message);
          return TRUE;
        }
    }
  message = fault.message;
  g_set_error (error, HUT_FILE_ERROR, HUT_FILE_ERROR_VALUE,
               "%s:%d: against the schema: %s; allowed: what design.rng describes", name,
               MAX (fault.line, 1), message != NULL ? message : "cannot be checked");
  return FALSE;
}

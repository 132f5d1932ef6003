/* src/format/hut-schema.c: the RELAX NG schemas that are compiled in.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-format"
#include "config.h"
#include "format/hut-schema.h"
#include "format/hut-core-resources.h"
#include "format/hut-file-error.h"

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

xmlRelaxNG *
hut_schema_new (const char *file)
{
  g_return_val_if_fail (file != NULL, NULL);

  g_autofree char *path = g_strconcat ("/org/hutchwright/core/", file, NULL);
  g_autoptr(GBytes) bytes = g_resource_lookup_data (hut_core_get_resource (), path,
                                                    G_RESOURCE_LOOKUP_FLAGS_NONE, NULL);
  gsize size = 0;
  const char *text = bytes != NULL ? g_bytes_get_data (bytes, &size) : "";
  g_autoptr(xmlRelaxNGParserCtxt) parser = xmlRelaxNGNewMemParserCtxt (text, (int) size);
  Fault fault = { 0, NULL };
  xmlRelaxNG *schema;

  xmlRelaxNGSetParserStructuredErrors (parser, note_fault, &fault);
  schema = xmlRelaxNGParse (parser);
  if (schema == NULL) /* it is compiled in: a mistake of ours, or no memory */
    g_error ("%s:%d: %s", file, fault.line, fault.message != NULL ? fault.message : "not there");
  g_free (fault.message);
  return schema;
}

gboolean
hut_schema_check (xmlRelaxNG *schema,
                  const char *file,
                  xmlDoc *document,
                  const char *name,
                  GError **error)
{
  g_return_val_if_fail (schema != NULL && file != NULL && document != NULL && name != NULL, FALSE);

  Fault fault = { 0, NULL };
  g_autoptr(xmlRelaxNGValidCtxt) validator = xmlRelaxNGNewValidCtxt (schema);
  gboolean valid;

  xmlRelaxNGSetValidStructuredErrors (validator, note_fault, &fault);
  valid = xmlRelaxNGValidateDoc (validator, document) == 0;
  if (!valid)
    g_set_error (error, HUT_FILE_ERROR, HUT_FILE_ERROR_VALUE,
                 "%s:%d: against the schema: %s; allowed: what %s describes", name,
                 MAX (fault.line, 1), fault.message != NULL ? fault.message : "cannot be checked",
                 file);
  g_free (fault.message);
  return valid;
}

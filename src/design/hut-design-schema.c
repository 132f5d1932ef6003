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

#define SCHEMA_PATH "/org/hutchwright/core/design.rng"

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
hut_design_schema_new (void)
{
  g_autoptr(GBytes) bytes = g_resource_lookup_data (hut_core_get_resource (), SCHEMA_PATH,
                                                    G_RESOURCE_LOOKUP_FLAGS_NONE, NULL);
  gsize size = 0;
  const char *text = bytes != NULL ? g_bytes_get_data (bytes, &size) : "";
  g_autoptr(xmlRelaxNGParserCtxt) parser = xmlRelaxNGNewMemParserCtxt (text, (int) size);
  Fault fault = { 0, NULL };
  xmlRelaxNG *schema;

  xmlRelaxNGSetParserStructuredErrors (parser, note_fault, &fault);
  schema = xmlRelaxNGParse (parser);
  if (schema == NULL) /* it is compiled in: a mistake of ours, or no memory */
    g_error ("design.rng:%d: %s", fault.line, fault.message != NULL ? fault.message : "not there");
  g_free (fault.message);
  return schema;
}

gboolean
hut_design_schema_check (xmlRelaxNG *schema,
                         xmlDoc *document,
                         const char *name,
                         GError **error)
{
  g_return_val_if_fail (schema != NULL && document != NULL && name != NULL, FALSE);

  Fault fault = { 0, NULL };
  g_autoptr(xmlRelaxNGValidCtxt) validator = xmlRelaxNGNewValidCtxt (schema);
  gboolean valid;

  xmlRelaxNGSetValidStructuredErrors (validator, note_fault, &fault);
  valid = xmlRelaxNGValidateDoc (validator, document) == 0;
  if (!valid)
    g_set_error (error, HUT_FILE_ERROR, HUT_FILE_ERROR_VALUE,
                 "%s:%d: against the schema: %s; allowed: what design.rng describes", name,
                 MAX (fault.line, 1), fault.message != NULL ? fault.message : "cannot be checked");
  g_free (fault.message);
  return valid;
}

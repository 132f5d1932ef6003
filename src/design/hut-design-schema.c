/* src/design/hut-design-schema.c: the RELAX NG schema as a second net under the reader.
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The reader's own tables say what is wrong in better words, so it comes first. The schema is what
 * the outside world validates against: whatever the reader takes, it must take too. */
#define G_LOG_DOMAIN "hut-design"
#include "config.h"
#include "design/hut-design-schema.h"
#include "format/hut-schema.h"

#define SCHEMA "design.rng"

xmlRelaxNG *
hut_design_schema_new (void)
{
  return hut_schema_new (SCHEMA);
}

gboolean
hut_design_schema_check (xmlRelaxNG *schema,
                         xmlDoc *document,
                         const char *name,
                         GError **error)
{
  return hut_schema_check (schema, SCHEMA, document, name, error);
}

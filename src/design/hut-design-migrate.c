/* src/design/hut-design-migrate.c: files of older versions as the newest one writes them.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-design"
#include "config.h"
#include "design/hut-design-migrate.h"
#include "design/hut-design.h"
#include "format/hut-number.h"
#include <string.h>

static void
add_common_bits (xmlNode *root)
{
  g_autoptr(GArray) bits = hut_bits_new_common ();

  for (guint i = 0; i < bits->len; i++)
    {
      char buffer[HUT_NUMBER_SIZE];
      xmlNode *bit = xmlNewChild (root, root->ns, (const xmlChar *) "bit", NULL);

      hut_number_exact (buffer, g_array_index (bits, double, i));
      xmlNewProp (bit, (const xmlChar *) "diameter", (const xmlChar *) buffer);
      bit->line = root->line;
    }
}

/* Leading zeros count for nothing, as in the reader. */
static gboolean
is_version (const xmlNode *root,
            const char *number)
{
  xmlChar *version = xmlGetNoNsProp (root, (const xmlChar *) "version");
  const char *text = version != NULL ? (const char *) version : "";
  const gboolean same = *text != '\0' && strcmp (text + strspn (text, "0"), number) == 0;

  xmlFree (version);
  return same;
}

static void
set_version (xmlNode *root,
             const char *number)
{
  xmlSetProp (root, (const xmlChar *) "version", (const xmlChar *) number);
}

void
hut_design_migrate (xmlNode *root)
{
  g_return_if_fail (root != NULL);

  if (is_version (root, "1"))
    {
      add_common_bits (root);
      set_version (root, "2");
    }
  /* All that version 3 adds means, where it is absent, what version 2 meant. */
  if (is_version (root, "2"))
    set_version (root, "3");
}

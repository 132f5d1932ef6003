/* src/design/hut-example.c: the examples that come with the program.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-design"
#include "config.h"
#include "design/hut-file.h"
#include "format/hut-core-resources.h"
#include <gio/gio.h>
#include <glib/gi18n.h>

#define EXAMPLE_FOLDER "/org/hutchwright/core/examples/"

static const char *const names[] = { "engraver", "mini-router", "printer", NULL };
static const char *const titles[] = {
  N_ ("Enclosure for an engraver, cut on the engraver's own small bed"),
  N_ ("Enclosure for a small router, cut whole on a larger bed"),
  N_ ("Enclosure for a filament printer, with its fan, inlet, hinges and latch"),
};

const char *const *
hut_example_names (void)
{
  return names;
}

/**
 * hut_example_title:
 * @name: one of hut_example_names ()
 *
 * Returns: (transfer none) (nullable): one line for a menu, not translated yet
 */
const char *
hut_example_title (const char *name)
{
  for (guint i = 0; names[i] != NULL; i++)
    if (g_strcmp0 (names[i], name) == 0)
      return titles[i];
  return NULL;
}

/**
 * hut_example_load:
 * @name: one of hut_example_names ()
 * @error: HUT_FILE_ERROR_VALUE when there is no such example
 *
 * Returns: (transfer full): the design, or NULL on error
 */
HutDesign *
hut_example_load (const char *name,
                  GError **error)
{
  g_return_val_if_fail (name != NULL, NULL);

  if (hut_example_title (name) == NULL)
    {
      g_autofree char *allowed = g_strjoinv (", ", (char **) names);

      g_set_error (error, HUT_FILE_ERROR, HUT_FILE_ERROR_VALUE, "no example '%s'; allowed: %s",
                   name, allowed);
      return NULL;
    }

  g_autofree char *file = g_strdup_printf ("%s.hutch", name);
  g_autofree char *path = g_strconcat (EXAMPLE_FOLDER, file, NULL);
  g_autoptr(GBytes) bytes = g_resource_lookup_data (hut_core_get_resource (), path,
                                                     G_RESOURCE_LOOKUP_FLAGS_NONE, error);
  gsize size = 0;
  const char *data = bytes != NULL ? g_bytes_get_data (bytes, &size) : NULL;

  return data != NULL ? hut_design_from_xml (data, size, file, error) : NULL;
}

/* src/design/hut-file.c: designs as XML (.hutch), from and to memory and disk.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-design"
#include "config.h"
#include "design/hut-file.h"
#include "design/hut-design-reader.h"
#include "design/hut-design-schema.h"
#include "format/hut-file-read.h"
#include "format/hut-file-replace.h"
#include "format/hut-xml.h"
#include <string.h>

HutDesign *
hut_design_from_xml (const char *data,
                     gsize size,
                     const char *name,
                     GError **error)
{
  g_return_val_if_fail (data != NULL || size == 0, NULL);
  g_return_val_if_fail (name != NULL, NULL);

  g_autoptr(xmlDoc) document = hut_xml_parse (data, size, name, error);

  if (document == NULL)
    return NULL;

  g_autoptr(HutDesign) design = hut_design_read (xmlDocGetRootElement (document), name, error);

  if (design == NULL)
    return NULL;

  g_autoptr(xmlRelaxNG) schema = hut_design_schema_new ();

  if (!hut_design_schema_check (schema, document, name, error))
    return NULL;
  return g_steal_pointer (&design);
}

/**
 * hut_design_load:
 * @path: a file
 * @error: HUT_FILE_ERROR_*
 *
 * Returns: (transfer full): the design, or NULL on error
 */
HutDesign *
hut_design_load (const char *path,
                 GError **error)
{
  g_return_val_if_fail (path != NULL, NULL);

  g_autofree char *name = g_filename_display_name (path);
  g_autoptr(GByteArray) bytes = g_byte_array_new ();

  if (!hut_file_read (path, name, bytes, error))
    return NULL;
  return hut_design_from_xml ((const char *) bytes->data, bytes->len, name, error);
}

/**
 * hut_design_save:
 * @self: a design
 * @path: where to
 * @error: HUT_FILE_ERROR_IO; HUT_FILE_ERROR_VALUE when it holds what could not be loaded
 *
 * Writes nothing that could not be opened again.
 *
 * Returns: FALSE on error; then the old file is as it was
 */
gboolean
hut_design_save (const HutDesign *self,
                 const char *path,
                 GError **error)
{
  g_return_val_if_fail (self != NULL && path != NULL, FALSE);

  g_autofree char *name = g_filename_display_name (path);
  g_autofree char *text = hut_design_to_xml (self);
  g_autoptr(HutDesign) again = hut_design_from_xml (text, strlen (text), name, error);

  return again != NULL && hut_file_replace (path, text, strlen (text), error);
}

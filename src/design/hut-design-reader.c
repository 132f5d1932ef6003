/* src/design/hut-design-reader.c: an XML tree, checked word by word, into a design.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-design"
#include "config.h"
#include "design/hut-design-reader.h"
#include "design/hut-design-migrate.h"
#include "design/hut-file.h"
#include "format/hut-tree-reader.h"
#include "format/hut-value-reader.h"
#include <string.h>

/* A namespace of ours with another number, or a higher version: what a later program writes. */
static gboolean
check_version (const HutTreeReader *self,
               xmlNode *root)
{
  const char *uri = root->ns != NULL ? (const char *) root->ns->href : "";
  g_autofree char *version = hut_tree_dup_attribute (root, "version");
  g_autofree char *shown = version != NULL ? hut_value_dup_shown (version) : NULL;
  const gsize stem = strlen (HUT_DESIGN_NS) - strlen ("1");
  const gboolean is_ours = strncmp (uri, HUT_DESIGN_NS, stem) == 0
                           && strcmp ((const char *) root->name, "enclosure") == 0;
  const char *number = is_ours ? uri + stem : "";
  const gboolean is_other = is_ours && strcmp (uri, HUT_DESIGN_NS) != 0 && number[0] != '\0'
                            && number[strspn (number, "0123456789")] == '\0';
  const gboolean is_newer = is_ours && version != NULL && version[0] != '\0'
                            && version[strspn (version, "0123456789")] == '\0'
                            && g_ascii_strtod (version, NULL) > HUT_DESIGN_VERSION;

  if (is_other || is_newer)
    {
      g_set_error (self->error, HUT_FILE_ERROR, HUT_FILE_ERROR_VERSION,
                   "%s:%ld: the file has version %s, from a newer program; allowed: version %d",
                   self->name, xmlGetLineNo (root), is_newer ? shown : number, HUT_DESIGN_VERSION);
      return FALSE;
    }
  if (!hut_tree_reader_is_named (self, root, "enclosure"))
    {
      g_autofree char *name = hut_value_dup_shown ((const char *) root->name);

      g_set_error (self->error, HUT_FILE_ERROR, HUT_FILE_ERROR_VALUE,
                   "%s:%ld: the root element is <%s>%s; allowed: <enclosure xmlns=\"%s\">",
                   self->name, xmlGetLineNo (root), name,
                   strcmp (name, "enclosure") == 0 ? " of another namespace" : "", HUT_DESIGN_NS);
      return FALSE;
    }
  return TRUE;
}

HutDesign *
hut_design_read (xmlNode *root,
                 const char *name,
                 GError **error)
{
  g_return_val_if_fail (root != NULL && name != NULL, NULL);

  g_autoptr(HutIdBook) book = hut_id_book_new ();
  g_autoptr(HutDesign) design = hut_design_new_empty ();
  const HutTreeReader reader = { name, HUT_DESIGN_NS, book, error };

  if (!check_version (&reader, root))
    return NULL;
  hut_design_migrate (root);
  if (!hut_tree_reader_read (&reader, root, &hut_design_format, design)
      || !hut_tree_reader_finish (&reader))
    return NULL;
  return g_steal_pointer (&design);
}

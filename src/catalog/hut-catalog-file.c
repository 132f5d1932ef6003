/* src/catalog/hut-catalog-file.c: items of hardware as XML, from and to memory.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-catalog"
#include "config.h"
#include "catalog/hut-catalog-file.h"
#include "catalog/hut-item-format.h"
#include "format/hut-format-table.h"
#include "format/hut-tree-reader.h"
#include "format/hut-tree-writer.h"
#include "format/hut-value-reader.h"
#include "format/hut-xml.h"

static const HutAttributeFormat catalog_attributes[] = {
  { .name = "version",
    .kind = HUT_VALUE_VERSION,
    .label = "version of the file",
    .least = HUT_CATALOG_VERSION },
};

static const HutChildFormat catalog_children[] = {
  { &hut_item_format, HUT_CHILD_ITEMS, offsetof (HutCatalogFile, items), 0, HUT_ITEMS_MAX,
    hut_item_format_new },
};

const HutElementFormat hut_catalog_format = {
  .name = "catalog",
  .size = sizeof (HutCatalogFile),
  HUT_ATTRIBUTES (catalog_attributes),
  HUT_CHILDREN (catalog_children),
};

static void
add_error (GPtrArray *problems,
           GError *error)
{
  g_ptr_array_add (problems, g_strdup (error->message));
  g_error_free (error);
}

static gboolean
check_root (const HutTreeReader *reader,
            xmlNode *root)
{
  g_autofree char *version = hut_tree_dup_attribute (root, "version");
  g_autofree char *fault = hut_value_read (&catalog_attributes[0], version, NULL);

  if (!hut_tree_reader_is_named (reader, root, hut_catalog_format.name))
    {
      g_autofree char *name = hut_value_dup_shown ((const char *) root->name);

      g_set_error (reader->error, HUT_FILE_ERROR, HUT_FILE_ERROR_VALUE,
                   "%s:%ld: the root element is <%s>; allowed: <catalog xmlns=\"%s\">",
                   reader->name, xmlGetLineNo (root), name, HUT_CATALOG_NS);
      return FALSE;
    }
  if (fault != NULL)
    g_set_error (reader->error, HUT_FILE_ERROR, HUT_FILE_ERROR_VERSION,
                 "%s:%ld: version of the file %s", reader->name, xmlGetLineNo (root), fault);
  return fault == NULL;
}

/* What stands in a catalogue but is no item; NULL for an item and for what may stand anywhere. */
static char *
dup_stranger (const HutTreeReader *reader,
              xmlNode *node)
{
  const gboolean is_text = node->type == XML_TEXT_NODE || node->type == XML_CDATA_SECTION_NODE;

  if (node->type == XML_COMMENT_NODE || node->type == XML_PI_NODE
      || (is_text && xmlIsBlankNode (node))
      || hut_tree_reader_is_named (reader, node, hut_item_format.name))
    return NULL;
  if (is_text)
    return g_strdup ("text");

  g_autofree char *name = hut_value_dup_shown ((const char *) node->name);

  return g_strdup_printf ("unknown element <%s>", name);
}

static void
read_node (const HutTreeReader *reader,
           xmlNode *node,
           GPtrArray *items,
           GPtrArray *problems)
{
  g_autofree char *stranger = dup_stranger (reader, node);

  if (stranger != NULL)
    {
      g_ptr_array_add (problems, g_strdup_printf ("%s:%ld: %s in <catalog>; allowed: <item>",
                                                  reader->name, xmlGetLineNo (node), stranger));
      return;
    }
  if (node->type != XML_ELEMENT_NODE)
    return;

  GError *error = NULL;
  const HutTreeReader one = { reader->name, reader->ns, reader->book, &error };
  g_autoptr(HutItem) item = hut_item_format_new ();

  if (hut_tree_reader_read (&one, node, &hut_item_format, item))
    g_ptr_array_add (items, g_steal_pointer (&item));
  else
    add_error (problems, error);
}

GPtrArray *
hut_catalog_file_read (const char *data,
                       gsize size,
                       const char *name,
                       GPtrArray *problems)
{
  g_return_val_if_fail (data != NULL || size == 0, NULL);
  g_return_val_if_fail (name != NULL && problems != NULL, NULL);

  GPtrArray *items = g_ptr_array_new_with_free_func ((GDestroyNotify) hut_item_free);
  GError *error = NULL;
  g_autoptr(HutIdBook) book = hut_id_book_new ();
  const HutTreeReader reader = { name, HUT_CATALOG_NS, book, &error };
  g_autoptr(xmlDoc) document = hut_xml_parse (data, size, name, &error);
  xmlNode *root = document != NULL ? xmlDocGetRootElement (document) : NULL;

  if (root == NULL || !check_root (&reader, root))
    {
      add_error (problems, error);
      return items;
    }
  for (xmlNode *node = root->children; node != NULL; node = node->next)
    read_node (&reader, node, items, problems);
  return items;
}

char *
hut_catalog_file_to_xml (GPtrArray *items)
{
  g_return_val_if_fail (items != NULL, NULL);

  const HutCatalogFile file = { items };

  return hut_tree_to_xml (&hut_catalog_format, HUT_CATALOG_NS, &file);
}

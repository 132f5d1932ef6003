/* src/catalog/hut-catalog.c: all items that can be placed: the shipped ones and the user's own.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-catalog"
#include "config.h"
#include "catalog/hut-catalog.h"
#include "catalog/hut-catalog-file.h"
#include "format/hut-core-resources.h"
#include "format/hut-file-read.h"
#include "format/hut-file-replace.h"
#include <errno.h>
#include <glib/gi18n.h>
#include <glib/gstdio.h>
#include <stdlib.h>
#include <string.h>

#define SHIPPED_FOLDER "/org/hutchwright/core/catalog/"
#define SUFFIX ".xml"
/* Of folders that are made for the user: his alone. */
#define FOLDER_MODE 0700

typedef struct
{
  HutItem *item;
  gboolean own;
} Entry;

struct _HutCatalog
{
  GArray *entries; /* Entry */
};

static void
entry_clear (gpointer data)
{
  hut_item_free (((Entry *) data)->item);
}

static Entry *
find (const HutCatalog *self,
      const char *id)
{
  for (guint i = 0; i < self->entries->len; i++)
    {
      Entry *entry = &g_array_index (self->entries, Entry, i);

      if (strcmp (entry->item->id, id) == 0)
        return entry;
    }
  return NULL;
}

/* Puts an item behind the last one of its group. */
static void
insert (HutCatalog *self,
        HutItem *item,
        gboolean own)
{
  const Entry entry = { item, own };
  guint place = self->entries->len;

  while (place > 0
         && g_array_index (self->entries, Entry, place - 1).item->group > item->group)
    place--;
  g_array_insert_val (self->entries, place, entry);
}

static void
add_shipped (HutCatalog *self,
             const char *file)
{
  g_autofree char *path = g_strconcat (SHIPPED_FOLDER, file, NULL);
  g_autoptr(GBytes) bytes = g_resource_lookup_data (hut_core_get_resource (), path,
                                                    G_RESOURCE_LOOKUP_FLAGS_NONE, NULL);
  g_autoptr(GPtrArray) problems = g_ptr_array_new_with_free_func (g_free);
  gsize size = 0;
  const char *data = g_bytes_get_data (bytes, &size);
  g_autoptr(GPtrArray) items = hut_catalog_file_read (data, size, file, problems);

  if (problems->len > 0) /* compiled in: a mistake of ours */
    g_error ("%s", (const char *) g_ptr_array_index (problems, 0));
  g_ptr_array_set_free_func (items, NULL);
  for (guint i = 0; i < items->len; i++)
    insert (self, g_ptr_array_index (items, i), FALSE);
}

static int
compare_names (gconstpointer a,
               gconstpointer b)
{
  return strcmp (*(const char *const *) a, *(const char *const *) b);
}

HutCatalog *
hut_catalog_new (void)
{
  HutCatalog *self = g_new0 (HutCatalog, 1);
  g_auto(GStrv) files = g_resource_enumerate_children (hut_core_get_resource (), SHIPPED_FOLDER,
                                                       G_RESOURCE_LOOKUP_FLAGS_NONE, NULL);

  self->entries = g_array_new (FALSE, FALSE, sizeof (Entry));
  g_array_set_clear_func (self->entries, entry_clear);
  qsort (files, g_strv_length (files), sizeof *files, compare_names);
  for (guint i = 0; files[i] != NULL; i++)
    add_shipped (self, files[i]);
  return self;
}

void
hut_catalog_free (HutCatalog *self)
{
  if (self == NULL)
    return;
  g_array_unref (self->entries);
  g_free (self);
}

/* ---- own items ------------------------------------------------------------------------------ */

static void
add_own (HutCatalog *self,
         HutItem *item,
         const char *name,
         GPtrArray *problems)
{
  Entry *entry = find (self, item->id);

  if (entry != NULL && entry->own)
    {
      g_ptr_array_add (problems,
                       g_strdup_printf ("%s:1: id '%s' is already used in another file of the "
                                        "folder; "
                                        "allowed: a different id for every <item>",
                                        name, item->id));
      hut_item_free (item);
      return;
    }
  if (entry != NULL)
    g_array_remove_index (self->entries,
                          (guint) (entry - &g_array_index (self->entries, Entry, 0)));
  insert (self, item, TRUE);
}

static void
add_file (HutCatalog *self,
          const char *path,
          GPtrArray *problems)
{
  g_autofree char *name = g_filename_display_name (path);
  g_autoptr(GByteArray) bytes = g_byte_array_new ();
  g_autoptr(GError) error = NULL;

  if (!hut_file_read (path, name, bytes, &error))
    {
      g_ptr_array_add (problems, g_strdup (error->message));
      return;
    }

  g_autoptr(GPtrArray) items
      = hut_catalog_file_read ((const char *) bytes->data, bytes->len, name, problems);

  g_ptr_array_set_free_func (items, NULL);
  for (guint i = 0; i < items->len; i++)
    add_own (self, g_ptr_array_index (items, i), name, problems);
}

void
hut_catalog_add_folder (HutCatalog *self,
                        const char *path,
                        GPtrArray *problems)
{
  g_return_if_fail (self != NULL && path != NULL && problems != NULL);

  g_autoptr(GDir) folder = g_dir_open (path, 0, NULL);
  g_autoptr(GPtrArray) names = g_ptr_array_new_with_free_func (g_free);
  const char *name;

  while (folder != NULL && (name = g_dir_read_name (folder)) != NULL)
    if (g_str_has_suffix (name, SUFFIX))
      g_ptr_array_add (names, g_strdup (name));
  g_ptr_array_sort (names, compare_names);
  for (guint i = 0; i < names->len; i++)
    {
      g_autofree char *file = g_build_filename (path, g_ptr_array_index (names, i), NULL);

      add_file (self, file, problems);
    }
}

/* The item as it would be loaded again; NULL, with the error set, when it would not. */
static char *
dup_checked_xml (const HutItem *item,
                 const char *name,
                 GError **error)
{
  g_autoptr(GPtrArray) items = g_ptr_array_new ();
  g_autoptr(GPtrArray) problems = g_ptr_array_new_with_free_func (g_free);
  g_autofree char *text = NULL;

  g_ptr_array_add (items, (gpointer) item);
  text = hut_catalog_file_to_xml (items);

  g_autoptr(GPtrArray) again = hut_catalog_file_read (text, strlen (text), name, problems);

  if (again->len != 1)
    {
      g_set_error_literal (error, HUT_FILE_ERROR, HUT_FILE_ERROR_VALUE,
                           g_ptr_array_index (problems, 0));
      return NULL;
    }
  return g_steal_pointer (&text);
}

static char *
own_path (const char *folder,
          const char *id)
{
  g_autofree char *file = g_strconcat (id, SUFFIX, NULL);

  return g_build_filename (folder, file, NULL);
}

gboolean
hut_catalog_save_own (const char *folder,
                      const HutItem *item,
                      GError **error)
{
  g_return_val_if_fail (folder != NULL && item != NULL, FALSE);

  g_autofree char *path = own_path (folder, item->id);
  g_autofree char *name = g_filename_display_name (path);
  g_autofree char *text = dup_checked_xml (item, name, error);

  if (text == NULL)
    return FALSE;
  if (g_mkdir_with_parents (folder, FOLDER_MODE) != 0)
    {
      g_set_error (error, HUT_FILE_ERROR, HUT_FILE_ERROR_IO, "%s: cannot be made: %s", folder,
                   g_strerror (errno));
      return FALSE;
    }
  return hut_file_replace (path, text, strlen (text), error);
}

gboolean
hut_catalog_remove_own (const char *folder,
                        const char *id,
                        GError **error)
{
  g_return_val_if_fail (folder != NULL && id != NULL, FALSE);

  g_autofree char *path = own_path (folder, id);

  if (g_unlink (path) == 0)
    return TRUE;
  g_set_error (error, HUT_FILE_ERROR, HUT_FILE_ERROR_IO, "%s: cannot be removed: %s", path,
               g_strerror (errno));
  return FALSE;
}

/* ---- looking up ----------------------------------------------------------------------------- */

guint
hut_catalog_get_count (const HutCatalog *self)
{
  g_return_val_if_fail (self != NULL, 0);

  return self->entries->len;
}

const HutItem *
hut_catalog_get_nth (const HutCatalog *self,
                     guint index)
{
  g_return_val_if_fail (self != NULL, NULL);

  return index < self->entries->len ? g_array_index (self->entries, Entry, index).item : NULL;
}

const HutItem *
hut_catalog_get (const HutCatalog *self,
                 const char *id)
{
  g_return_val_if_fail (self != NULL && id != NULL, NULL);

  const Entry *entry = find (self, id);

  return entry != NULL ? entry->item : NULL;
}

gboolean
hut_catalog_is_own (const HutCatalog *self,
                    const HutItem *item)
{
  g_return_val_if_fail (self != NULL && item != NULL, FALSE);

  const Entry *entry = find (self, item->id);

  return entry != NULL && entry->own;
}

const char *
hut_item_group_title (HutItemGroup group)
{
  static const char *const titles[HUT_ITEM_GROUP_COUNT] = {
    [HUT_ITEM_FAN] = N_("Fans"),
    [HUT_ITEM_AIR] = N_("Air ways"),
    [HUT_ITEM_CONTROL] = N_("Switches and displays"),
    [HUT_ITEM_GUARDING] = N_("Emergency stop and interlock"),
    [HUT_ITEM_MAINS] = N_("Mains"),
    [HUT_ITEM_CONNECTOR] = N_("Connectors"),
    [HUT_ITEM_ENTRY] = N_("Glands and grommets"),
    [HUT_ITEM_LAMP] = N_("Lamps"),
    [HUT_ITEM_HINGE] = N_("Hinges"),
    [HUT_ITEM_CLOSURE] = N_("Latches and magnets"),
    [HUT_ITEM_HANDLE] = N_("Handles"),
    [HUT_ITEM_STAY] = N_("Stays"),
    [HUT_ITEM_FOOT] = N_("Feet"),
    [HUT_ITEM_MOUNT] = N_("Mounts and hole patterns"),
  };

  g_return_val_if_fail (group < HUT_ITEM_GROUP_COUNT, "");

  return titles[group];
}

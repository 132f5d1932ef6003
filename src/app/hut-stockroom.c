/* src/app/hut-stockroom.c: the catalogue with the user's own items, for all windows.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-app"
#include "config.h"
#include "app/hut-stockroom.h"

struct _HutStockroom
{
  GObject parent_instance;

  char *folder;
  HutCatalog *catalog;
  GPtrArray *problems; /* char * */
};

static guint changed_signal;

G_DEFINE_TYPE (HutStockroom, hut_stockroom, G_TYPE_OBJECT)

static void
load (HutStockroom *self)
{
  g_clear_pointer (&self->catalog, hut_catalog_free);
  g_ptr_array_set_size (self->problems, 0);
  self->catalog = hut_catalog_new ();
  hut_catalog_add_folder (self->catalog, self->folder, self->problems);
}

static void
hut_stockroom_finalize (GObject *object)
{
  HutStockroom *self = HUT_STOCKROOM (object);

  g_free (self->folder);
  hut_catalog_free (self->catalog);
  g_ptr_array_unref (self->problems);
  G_OBJECT_CLASS (hut_stockroom_parent_class)->finalize (object);
}

static void
hut_stockroom_class_init (HutStockroomClass *class)
{
  G_OBJECT_CLASS (class)->finalize = hut_stockroom_finalize;
  changed_signal = g_signal_new ("changed", G_TYPE_FROM_CLASS (class), G_SIGNAL_RUN_LAST, 0, NULL,
                                 NULL, NULL, G_TYPE_NONE, 0);
}

static void
hut_stockroom_init (HutStockroom *self)
{
  self->problems = g_ptr_array_new_with_free_func (g_free);
}

HutStockroom *
hut_stockroom_new (const char *folder)
{
  g_return_val_if_fail (folder != NULL, NULL);

  HutStockroom *self = g_object_new (HUT_TYPE_STOCKROOM, NULL);

  self->folder = g_strdup (folder);
  load (self);
  return self;
}

HutStockroom *
hut_stockroom_get_default (void)
{
  static HutStockroom *stockroom = NULL;

  if (stockroom == NULL)
    {
      g_autofree char *folder
          = g_build_filename (g_get_user_data_dir (), "hutchwright", "hardware", NULL);

      stockroom = hut_stockroom_new (folder);
    }
  return stockroom;
}

const HutCatalog *
hut_stockroom_get_catalog (HutStockroom *self)
{
  g_return_val_if_fail (HUT_IS_STOCKROOM (self), NULL);

  return self->catalog;
}

const GPtrArray *
hut_stockroom_get_problems (HutStockroom *self)
{
  g_return_val_if_fail (HUT_IS_STOCKROOM (self), NULL);

  return self->problems;
}

gboolean
hut_stockroom_save (HutStockroom *self,
                    const HutItem *item,
                    GError **error)
{
  g_return_val_if_fail (HUT_IS_STOCKROOM (self) && item != NULL, FALSE);

  if (!hut_catalog_save_own (self->folder, item, error))
    return FALSE;
  load (self);
  g_signal_emit (self, changed_signal, 0);
  return TRUE;
}

gboolean
hut_stockroom_remove (HutStockroom *self,
                      const char *id,
                      GError **error)
{
  g_return_val_if_fail (HUT_IS_STOCKROOM (self) && id != NULL, FALSE);

  if (!hut_catalog_remove_own (self->folder, id, error))
    return FALSE;
  load (self);
  g_signal_emit (self, changed_signal, 0);
  return TRUE;
}

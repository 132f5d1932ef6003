/* src/app/hut-list-entry.c: what one row of a list shows, updated in place.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-app"
#include "config.h"
#include "app/hut-list-entry.h"

struct _HutListEntry
{
  GObject parent_instance;

  char *id, *icon_name, *heading, *text, *fix;
  HutListContent content; /* of the strings above */
};

static guint changed_signal;

G_DEFINE_TYPE (HutListEntry, hut_list_entry, G_TYPE_OBJECT)

static void
hut_list_entry_finalize (GObject *object)
{
  HutListEntry *self = HUT_LIST_ENTRY (object);

  g_free (self->id);
  g_free (self->icon_name);
  g_free (self->heading);
  g_free (self->text);
  g_free (self->fix);
  G_OBJECT_CLASS (hut_list_entry_parent_class)->finalize (object);
}

static void
hut_list_entry_class_init (HutListEntryClass *class)
{
  G_OBJECT_CLASS (class)->finalize = hut_list_entry_finalize;
  changed_signal = g_signal_new ("changed", G_TYPE_FROM_CLASS (class), G_SIGNAL_RUN_LAST, 0, NULL,
                                 NULL, NULL, G_TYPE_NONE, 0);
}

static void
hut_list_entry_init (HutListEntry *self)
{
}

static gboolean
set_string (char **member,
            const char *text)
{
  if (g_strcmp0 (*member, text) == 0)
    return FALSE;
  g_free (*member);
  *member = g_strdup (text);
  return TRUE;
}

static void
update (HutListEntry *self,
        const HutListContent *content)
{
  gboolean changed = FALSE;

  changed |= set_string (&self->id, content->id);
  changed |= set_string (&self->icon_name, content->icon_name);
  changed |= set_string (&self->heading, content->heading);
  changed |= set_string (&self->text, content->text);
  changed |= set_string (&self->fix, content->fix);
  changed |= self->content.number != content->number;
  changed |= g_strcmp0 (self->content.style, content->style) != 0;
  self->content = (HutListContent){
    self->id, self->icon_name, content->style, self->heading, self->text, content->number,
    self->fix,
  };
  if (changed)
    g_signal_emit (self, changed_signal, 0);
}

const HutListContent *
hut_list_entry_get (HutListEntry *self)
{
  g_return_val_if_fail (HUT_IS_LIST_ENTRY (self), NULL);
  return &self->content;
}

void
hut_list_entries_sync (GListStore *store,
                       const HutListContent *contents,
                       guint count)
{
  g_return_if_fail (G_IS_LIST_STORE (store) && (contents != NULL || count == 0));

  const guint old_count = g_list_model_get_n_items (G_LIST_MODEL (store));
  const guint kept_count = MIN (old_count, count);
  g_autoptr (GPtrArray) added = g_ptr_array_new_with_free_func (g_object_unref);

  for (guint i = 0; i < kept_count; i++)
    {
      g_autoptr (HutListEntry) entry = g_list_model_get_item (G_LIST_MODEL (store), i);

      update (entry, &contents[i]);
    }
  for (guint i = kept_count; i < count; i++)
    {
      HutListEntry *entry = g_object_new (HUT_TYPE_LIST_ENTRY, NULL);

      update (entry, &contents[i]);
      g_ptr_array_add (added, entry);
    }
  if (old_count != count)
    g_list_store_splice (store, kept_count, old_count - kept_count, added->pdata, added->len);
}

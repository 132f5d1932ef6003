/* src/app/hut-pick-list.c: the model of a list from which one row can be picked.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-app"
#include "config.h"
#include "app/hut-pick-list.h"
#include "app/hut-list-row.h"

struct _HutPickList
{
  GObject parent_instance;

  GListStore *entries; /* HutListEntry */
  GtkSingleSelection *selection;
  gboolean filling; /* what changes now was not picked */
};

static guint picked_signal;

G_DEFINE_TYPE (HutPickList, hut_pick_list, G_TYPE_OBJECT)

static void
pick (HutPickList *self,
      guint position)
{
  if (position != GTK_INVALID_LIST_POSITION)
    g_signal_emit (self, picked_signal, 0, position);
}

static void
on_selected (HutPickList *self)
{
  if (!self->filling)
    pick (self, gtk_single_selection_get_selected (self->selection));
}

static void
set_up_row (GtkSignalListItemFactory *factory,
            GtkListItem *item,
            gpointer row_type)
{
  gtk_list_item_set_child (item, g_object_new (GPOINTER_TO_SIZE (row_type), NULL));
}

static void
bind_row (GtkSignalListItemFactory *factory,
          GtkListItem *item)
{
  hut_list_row_set_entry (HUT_LIST_ROW (gtk_list_item_get_child (item)),
                          gtk_list_item_get_item (item));
}

static void
unbind_row (GtkSignalListItemFactory *factory,
            GtkListItem *item)
{
  hut_list_row_set_entry (HUT_LIST_ROW (gtk_list_item_get_child (item)), NULL);
}

static void
hut_pick_list_dispose (GObject *object)
{
  HutPickList *self = HUT_PICK_LIST (object);

  g_clear_object (&self->selection);
  g_clear_object (&self->entries);
  G_OBJECT_CLASS (hut_pick_list_parent_class)->dispose (object);
}

static void
hut_pick_list_class_init (HutPickListClass *class)
{
  G_OBJECT_CLASS (class)->dispose = hut_pick_list_dispose;
  picked_signal = g_signal_new ("picked", G_TYPE_FROM_CLASS (class), G_SIGNAL_RUN_LAST, 0, NULL,
                                NULL, NULL, G_TYPE_NONE, 1, G_TYPE_UINT);
}

static void
hut_pick_list_init (HutPickList *self)
{
  self->entries = g_list_store_new (HUT_TYPE_LIST_ENTRY);
  self->selection = gtk_single_selection_new (g_object_ref (G_LIST_MODEL (self->entries)));
  gtk_single_selection_set_autoselect (self->selection, FALSE);
  gtk_single_selection_set_can_unselect (self->selection, TRUE);
  gtk_single_selection_set_selected (self->selection, GTK_INVALID_LIST_POSITION);
  g_signal_connect_object (self->selection, "notify::selected", G_CALLBACK (on_selected), self,
                           G_CONNECT_SWAPPED);
}

HutPickList *
hut_pick_list_new (GtkListView *view,
                   GType row_type)
{
  g_return_val_if_fail (GTK_IS_LIST_VIEW (view) && g_type_is_a (row_type, HUT_TYPE_LIST_ROW), NULL);

  HutPickList *self = g_object_new (HUT_TYPE_PICK_LIST, NULL);
  g_autoptr (GtkListItemFactory) factory = gtk_signal_list_item_factory_new ();

  g_signal_connect (factory, "setup", G_CALLBACK (set_up_row), GSIZE_TO_POINTER (row_type));
  g_signal_connect (factory, "bind", G_CALLBACK (bind_row), NULL);
  g_signal_connect (factory, "unbind", G_CALLBACK (unbind_row), NULL);
  gtk_list_view_set_factory (view, factory);
  gtk_list_view_set_model (view, GTK_SELECTION_MODEL (self->selection));
  g_signal_connect_object (view, "activate", G_CALLBACK (pick), self, G_CONNECT_SWAPPED);
  return self;
}

void
hut_pick_list_sync (HutPickList *self,
                    const HutListContent *contents,
                    guint count)
{
  g_return_if_fail (HUT_IS_PICK_LIST (self));

  self->filling = TRUE;
  hut_list_entries_sync (self->entries, contents, count);
  self->filling = FALSE;
}

guint
hut_pick_list_get_count (HutPickList *self)
{
  g_return_val_if_fail (HUT_IS_PICK_LIST (self), 0);
  return g_list_model_get_n_items (G_LIST_MODEL (self->entries));
}

const HutListContent *
hut_pick_list_get (HutPickList *self,
                   guint position)
{
  g_return_val_if_fail (position < hut_pick_list_get_count (self), NULL);

  /* The store keeps it alive. */
  g_autoptr (HutListEntry) entry = g_list_model_get_item (G_LIST_MODEL (self->entries), position);

  return hut_list_entry_get (entry);
}

void
hut_pick_list_show (HutPickList *self,
                    guint position)
{
  g_return_if_fail (HUT_IS_PICK_LIST (self));

  self->filling = TRUE;
  gtk_single_selection_set_selected (self->selection, position);
  self->filling = FALSE;
}

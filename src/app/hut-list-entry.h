/* src/app/hut-list-entry.h: what one row of a list shows, updated in place.
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * While something is dragged the findings change with each frame; rows of what stays alike are not
 * made anew. Signal "changed": the text or icon changed. */
#pragma once
#include <gio/gio.h>

#define HUT_TYPE_LIST_ENTRY (hut_list_entry_get_type ())
G_DECLARE_FINAL_TYPE (HutListEntry, hut_list_entry, HUT, LIST_ENTRY, GObject)

/* What an entry says. All texts are lent to hut_list_entry_update (), which copies them. */
typedef struct
{
  const char *id; /* of an item, or NULL */
  const char *icon_name;
  const char *style; /* CSS class of the row, or NULL; static */
  const char *heading;
  const char *text;
  guint number; /* 0: none */
  const char *fix; /* what its button does, or NULL: no button */
} HutListContent;

/* (transfer none): lent until the entry is updated. */
const HutListContent *hut_list_entry_get (HutListEntry *self);

/* Makes @store (of HutListEntry) hold @count entries with @contents. */
void hut_list_entries_sync (GListStore *store, const HutListContent *contents, guint count);

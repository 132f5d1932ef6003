/* src/app/hut-list-row.h: a row that shows an entry of a list and follows it.
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A subclass has a template and says how an entry looks in it. */
#pragma once
#include "app/hut-list-entry.h"
#include <gtk/gtk.h>

#define HUT_TYPE_LIST_ROW (hut_list_row_get_type ())
G_DECLARE_DERIVABLE_TYPE (HutListRow, hut_list_row, HUT, LIST_ROW, GtkWidget)

struct _HutListRowClass
{
  GtkWidgetClass parent_class;

  void (*show) (HutListRow *self, const HutListContent *content);
};

/* Shows @entry and follows it; NULL lets go. */
void hut_list_row_set_entry (HutListRow *self, HutListEntry *entry);

/* src/app/hut-draft-list.h: a list of an item that is being measured, a row for each entry.
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Signal "changed": the user changed or removed an entry; the item has it already. */
#pragma once
#include "app/hut-item-draft.h"
#include <gtk/gtk.h>

#define HUT_TYPE_DRAFT_LIST (hut_draft_list_get_type ())
G_DECLARE_FINAL_TYPE (HutDraftList, hut_draft_list, HUT, DRAFT_LIST, GtkWidget)

typedef enum
{
  HUT_DRAFT_CUTS,
  HUT_DRAFT_SPACES,
  HUT_DRAFT_POINTS,
  HUT_DRAFT_SOURCES,
  HUT_DRAFT_KIND_COUNT
} HutDraftKind;

/* @item: lent; outlives the list */
void hut_draft_list_set_item (HutDraftList *self, HutItem *item, HutDraftKind kind);
/* Shows the item as it is now. */
void hut_draft_list_show (HutDraftList *self);
/* Puts the keyboard on the last entry, which is then new. */
void hut_draft_list_focus_last (HutDraftList *self);
/* Applies what is being typed. Returns: FALSE when some of it cannot be applied */
gboolean hut_draft_list_commit (HutDraftList *self);
/* Under entry @index; NULL takes away the one that is there. */
void hut_draft_list_set_problem (HutDraftList *self, guint index, const char *problem);

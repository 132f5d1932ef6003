/* src/app/hut-draft-row.h: one entry of a list of an item that is being measured.
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A subclass has a vertical template and knows one kind of entry: a hole, a space, a point of a
 * curve, a source. Signals: "changed": what it shows was changed by the user; "removed": the user
 * wants it gone. */
#pragma once
#include "app/hut-item-draft.h"
#include <gtk/gtk.h>

#define HUT_TYPE_DRAFT_ROW (hut_draft_row_get_type ())
G_DECLARE_DERIVABLE_TYPE (HutDraftRow, hut_draft_row, HUT, DRAFT_ROW, GtkWidget)

struct _HutDraftRowClass
{
  GtkWidgetClass parent_class;

  /* Shows entry @index of @item; what is being typed stays. */
  void (*show) (HutDraftRow *self, const HutItem *item, guint index);
  /* Writes what it shows over entry @index of @item. */
  void (*write) (HutDraftRow *self, HutItem *item, guint index);
  /* Applies what is being typed. Returns: FALSE when it cannot be applied */
  gboolean (*commit) (HutDraftRow *self);
};

void hut_draft_row_show (HutDraftRow *self, const HutItem *item, guint index);
void hut_draft_row_write (HutDraftRow *self, HutItem *item, guint index);
gboolean hut_draft_row_commit (HutDraftRow *self);
/* Under the entry; NULL: none. */
void hut_draft_row_set_problem (HutDraftRow *self, const char *problem);

/* For subclasses: TRUE while hut_draft_row_show () runs: a control that changes then is no edit. */
gboolean hut_draft_row_is_filling (HutDraftRow *self);
/* For subclasses: the user changed something. Does nothing while the row is being filled. */
void hut_draft_row_changed (HutDraftRow *self);
/* For subclasses: names a control for screen readers: a page has many of them. @format: with a %u for
 * @number, translated */
void hut_draft_row_name_control (HutDraftRow *self,
                                 GtkWidget *control,
                                 const char *format,
                                 guint number);
/* For subclasses: names the button that takes the entry away, and lets it. */
void hut_draft_row_set_remover (HutDraftRow *self, GtkWidget *button);
void hut_draft_row_name_remover (HutDraftRow *self, GtkWidget *button, const char *name);

/* src/app/hut-space-row.c: one space that an item takes, while it is being measured.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-app"
#include "config.h"
#include "app/hut-space-row.h"
#include "app/hut-choice-list.h"
#include "app/hut-number-entry.h"
#include <glib/gi18n.h>

struct _HutSpaceRow
{
  HutDraftRow parent_instance;

  GtkLabel *number;
  GtkDropDown *side, *softness, *leaf;
  GtkWidget *remove;

  HutItemBody body;
};

G_DEFINE_FINAL_TYPE (HutSpaceRow, hut_space_row, HUT_TYPE_DRAFT_ROW)

static const struct
{
  const char *name;
  gsize offset;
} entries[] = {
  { "left", offsetof (HutItemBody, rect.u0) },   { "right", offsetof (HutItemBody, rect.u1) },
  { "bottom", offsetof (HutItemBody, rect.v0) }, { "top", offsetof (HutItemBody, rect.v1) },
  { "depth", offsetof (HutItemBody, depth_mm) },
};

static HutNumberEntry *
get_entry (HutSpaceRow *self,
           gsize index)
{
  return HUT_NUMBER_ENTRY (
      gtk_widget_get_template_child (GTK_WIDGET (self), HUT_TYPE_SPACE_ROW, entries[index].name));
}

static void
on_choice_changed (HutSpaceRow *self)
{
  const HutItemBody before = self->body;

  if (hut_draft_row_is_filling (HUT_DRAFT_ROW (self)))
    return;
  self->body.side = (HutItemSide)gtk_drop_down_get_selected (self->side);
  self->body.soft = gtk_drop_down_get_selected (self->softness) == 1;
  self->body.leaf = gtk_drop_down_get_selected (self->leaf);
  if (!hut_item_body_equal (&before, &self->body))
    hut_draft_row_changed (HUT_DRAFT_ROW (self));
}

static void
on_committed (HutNumberEntry *entry,
              double value,
              HutSpaceRow *self)
{
  for (gsize i = 0; i < G_N_ELEMENTS (entries); i++)
    if (get_entry (self, i) == entry)
      G_STRUCT_MEMBER (double, &self->body, entries[i].offset) = value;
  hut_draft_row_changed (HUT_DRAFT_ROW (self));
}

static void
name_controls (HutSpaceRow *self,
               guint number)
{
  HutDraftRow *row = HUT_DRAFT_ROW (self);
  g_autofree char *count = g_strdup_printf ("%u", number),
                  *away = g_strdup_printf (_ ("Remove Space %u"), number);

  gtk_label_set_text (self->number, count);
  /* Translators: names for screen readers; %u counts the entries of an item */
  hut_draft_row_name_control (row, GTK_WIDGET (self->side), _ ("Space %u, side"), number);
  hut_draft_row_name_control (row, GTK_WIDGET (self->softness), _ ("Space %u, what is in it"),
                              number);
  hut_draft_row_name_control (row, GTK_WIDGET (self->leaf), _ ("Space %u, leaf"), number);
  hut_draft_row_name_remover (row, self->remove, away);
}

static void
hut_space_row_show (HutDraftRow *row,
                    const HutItem *item,
                    guint index)
{
  HutSpaceRow *self = HUT_SPACE_ROW (row);

  self->body = g_array_index (item->bodies, HutItemBody, index);
  gtk_drop_down_set_selected (self->side, self->body.side);
  gtk_drop_down_set_selected (self->softness, self->body.soft ? 1 : 0);
  gtk_drop_down_set_selected (self->leaf, self->body.leaf);
  for (gsize i = 0; i < G_N_ELEMENTS (entries); i++)
    hut_number_entry_set_value (get_entry (self, i),
                                G_STRUCT_MEMBER (double, &self->body, entries[i].offset));
  gtk_widget_set_visible (GTK_WIDGET (self->leaf), item->span != HUT_SPAN_PANEL);
  name_controls (self, index + 1);
}

static void
hut_space_row_write (HutDraftRow *row,
                     HutItem *item,
                     guint index)
{
  g_array_index (item->bodies, HutItemBody, index) = HUT_SPACE_ROW (row)->body;
}

static gboolean
hut_space_row_commit (HutDraftRow *row)
{
  gboolean ok = TRUE;

  for (gsize i = 0; i < G_N_ELEMENTS (entries); i++)
    ok = hut_number_entry_commit (get_entry (HUT_SPACE_ROW (row), i)) && ok;
  return ok;
}

static void
hut_space_row_class_init (HutSpaceRowClass *class)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (class);
  HutDraftRowClass *row_class = HUT_DRAFT_ROW_CLASS (class);

  row_class->show = hut_space_row_show;
  row_class->write = hut_space_row_write;
  row_class->commit = hut_space_row_commit;
  g_type_ensure (HUT_TYPE_NUMBER_ENTRY);
  gtk_widget_class_set_template_from_resource (widget_class,
                                               "/org/hutchwright/Hutchwright/hut-space-row.ui");
  for (gsize i = 0; i < G_N_ELEMENTS (entries); i++)
    gtk_widget_class_bind_template_child_full (widget_class, entries[i].name, FALSE, 0);
  gtk_widget_class_bind_template_child (widget_class, HutSpaceRow, number);
  gtk_widget_class_bind_template_child (widget_class, HutSpaceRow, side);
  gtk_widget_class_bind_template_child (widget_class, HutSpaceRow, softness);
  gtk_widget_class_bind_template_child (widget_class, HutSpaceRow, leaf);
  gtk_widget_class_bind_template_child (widget_class, HutSpaceRow, remove);
  gtk_widget_class_bind_template_callback (widget_class, on_choice_changed);
  gtk_widget_class_bind_template_callback (widget_class, on_committed);
}

static void
hut_space_row_init (HutSpaceRow *self)
{
  gtk_widget_init_template (GTK_WIDGET (self));
  hut_choice_list_style (self->side);
  hut_choice_list_style (self->softness);
  hut_choice_list_style (self->leaf);
  hut_draft_row_set_remover (HUT_DRAFT_ROW (self), self->remove);
}

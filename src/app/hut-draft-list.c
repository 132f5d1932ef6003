/* src/app/hut-draft-list.c: a list of an item that is being measured, a row for each entry.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-app"
#include "config.h"
#include "app/hut-draft-list.h"
#include "app/hut-cut-row.h"
#include "app/hut-point-row.h"
#include "app/hut-source-row.h"
#include "app/hut-space-row.h"

#define ROW_SPACING_PX 6 /* own choice */

struct _HutDraftList
{
  GtkWidget parent_instance;

  HutItem *item; /* lent */
  HutDraftKind kind;
};

static guint changed_signal;

G_DEFINE_FINAL_TYPE (HutDraftList, hut_draft_list, GTK_TYPE_WIDGET)

/* ---- entries --------------------------------------------------------------------------------- */

static guint
count_entries (HutDraftList *self)
{
  switch (self->kind)
    {
    case HUT_DRAFT_CUTS:
      return self->item->cuts->len;
    case HUT_DRAFT_SPACES:
      return self->item->bodies->len;
    case HUT_DRAFT_POINTS:
      return self->item->curve->len;
    case HUT_DRAFT_SOURCES:
      return self->item->sources->len;
    case HUT_DRAFT_KIND_COUNT:
    default:
      return 0;
    }
}

static void
remove_entry (HutDraftList *self,
              guint index)
{
  if (self->kind == HUT_DRAFT_CUTS)
    g_array_remove_index (self->item->cuts, index);
  else if (self->kind == HUT_DRAFT_SPACES)
    g_array_remove_index (self->item->bodies, index);
  else if (self->kind == HUT_DRAFT_POINTS)
    g_array_remove_index (self->item->curve, index);
  else
    g_ptr_array_remove_index (self->item->sources, index);
}

static GType
row_type (HutDraftKind kind)
{
  switch (kind)
    {
    case HUT_DRAFT_CUTS:
      return HUT_TYPE_CUT_ROW;
    case HUT_DRAFT_SPACES:
      return HUT_TYPE_SPACE_ROW;
    case HUT_DRAFT_POINTS:
      return HUT_TYPE_POINT_ROW;
    case HUT_DRAFT_SOURCES:
    case HUT_DRAFT_KIND_COUNT:
    default:
      return HUT_TYPE_SOURCE_ROW;
    }
}

/* ---- rows ------------------------------------------------------------------------------------ */

static guint
find_row (HutDraftList *self,
          HutDraftRow *row)
{
  guint index = 0;

  for (GtkWidget *child = gtk_widget_get_first_child (GTK_WIDGET (self));
       child != NULL && child != GTK_WIDGET (row); child = gtk_widget_get_next_sibling (child))
    index++;
  return index;
}

static HutDraftRow *
get_row (HutDraftList *self,
         guint index)
{
  GtkWidget *child = gtk_widget_get_first_child (GTK_WIDGET (self));

  while (child != NULL && index-- > 0)
    child = gtk_widget_get_next_sibling (child);
  return child != NULL ? HUT_DRAFT_ROW (child) : NULL;
}

static void
on_row_changed (HutDraftList *self,
                HutDraftRow *row)
{
  hut_draft_row_write (row, self->item, find_row (self, row));
  g_signal_emit (self, changed_signal, 0);
}

static void
on_row_removed (HutDraftList *self,
                HutDraftRow *row)
{
  const guint index = find_row (self, row);
  HutDraftRow *next;

  remove_entry (self, index);
  gtk_widget_unparent (GTK_WIDGET (row));
  hut_draft_list_show (self);
  next = get_row (self, MIN (index, count_entries (self) - 1));
  if (next != NULL)
    gtk_widget_child_focus (GTK_WIDGET (next), GTK_DIR_TAB_FORWARD);
  g_signal_emit (self, changed_signal, 0);
}

static void
add_row (HutDraftList *self)
{
  GtkWidget *row = g_object_new (row_type (self->kind), NULL);

  g_signal_connect_object (row, "changed", G_CALLBACK (on_row_changed), self, G_CONNECT_SWAPPED);
  g_signal_connect_object (row, "removed", G_CALLBACK (on_row_removed), self, G_CONNECT_SWAPPED);
  gtk_widget_set_parent (row, GTK_WIDGET (self));
}

static void
hut_draft_list_dispose (GObject *object)
{
  GtkWidget *child;

  while ((child = gtk_widget_get_first_child (GTK_WIDGET (object))) != NULL)
    gtk_widget_unparent (child);
  G_OBJECT_CLASS (hut_draft_list_parent_class)->dispose (object);
}

static void
hut_draft_list_class_init (HutDraftListClass *class)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (class);

  G_OBJECT_CLASS (class)->dispose = hut_draft_list_dispose;
  changed_signal = g_signal_new ("changed", G_TYPE_FROM_CLASS (class), G_SIGNAL_RUN_LAST, 0, NULL,
                                 NULL, NULL, G_TYPE_NONE, 0);
  gtk_widget_class_set_layout_manager_type (widget_class, GTK_TYPE_BOX_LAYOUT);
  gtk_widget_class_set_accessible_role (widget_class, GTK_ACCESSIBLE_ROLE_GROUP);
}

static void
hut_draft_list_init (HutDraftList *self)
{
  GtkBoxLayout *layout = GTK_BOX_LAYOUT (gtk_widget_get_layout_manager (GTK_WIDGET (self)));

  gtk_orientable_set_orientation (GTK_ORIENTABLE (layout), GTK_ORIENTATION_VERTICAL);
  gtk_box_layout_set_spacing (layout, ROW_SPACING_PX);
}

void
hut_draft_list_set_item (HutDraftList *self,
                         HutItem *item,
                         HutDraftKind kind)
{
  g_return_if_fail (HUT_IS_DRAFT_LIST (self) && item != NULL && kind < HUT_DRAFT_KIND_COUNT);

  self->item = item;
  self->kind = kind;
  hut_draft_list_show (self);
}

void
hut_draft_list_show (HutDraftList *self)
{
  g_return_if_fail (HUT_IS_DRAFT_LIST (self) && self->item != NULL);

  const guint count = count_entries (self);
  HutDraftRow *row;

  while ((row = get_row (self, count)) != NULL)
    gtk_widget_unparent (GTK_WIDGET (row));
  for (guint i = 0; i < count; i++)
    {
      if (get_row (self, i) == NULL)
        add_row (self);
      hut_draft_row_show (get_row (self, i), self->item, i);
    }
  gtk_widget_set_visible (GTK_WIDGET (self), count > 0);
}

void
hut_draft_list_focus_last (HutDraftList *self)
{
  g_return_if_fail (HUT_IS_DRAFT_LIST (self));

  GtkWidget *last = gtk_widget_get_last_child (GTK_WIDGET (self));

  if (last != NULL)
    gtk_widget_child_focus (last, GTK_DIR_TAB_FORWARD);
}

gboolean
hut_draft_list_commit (HutDraftList *self)
{
  g_return_val_if_fail (HUT_IS_DRAFT_LIST (self), FALSE);

  HutDraftRow *row;
  gboolean ok = TRUE;

  for (guint i = 0; (row = get_row (self, i)) != NULL; i++)
    ok = hut_draft_row_commit (row) && ok;
  return ok;
}

void
hut_draft_list_set_problem (HutDraftList *self,
                            guint index,
                            const char *problem)
{
  g_return_if_fail (HUT_IS_DRAFT_LIST (self));

  HutDraftRow *row;

  for (guint i = 0; (row = get_row (self, i)) != NULL; i++)
    hut_draft_row_set_problem (row, i == index ? problem : NULL);
}

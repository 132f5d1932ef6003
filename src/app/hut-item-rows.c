/* src/app/hut-item-rows.c: one row widget per item of the design, kept in step by id.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-app"
#include "config.h"
#include "app/hut-item-rows.h"

static GQuark
item_quark (void)
{
  return g_quark_from_static_string ("hut-item");
}

static gboolean
has_id (const GPtrArray *ids,
        const char *id)
{
  return g_ptr_array_find_with_equal_func ((GPtrArray *)ids, id, g_str_equal, NULL);
}

GtkWidget *
hut_item_rows_find (GtkBox *box,
                    const char *item)
{
  g_return_val_if_fail (GTK_IS_BOX (box) && item != NULL, NULL);

  for (GtkWidget *row = gtk_widget_get_first_child (GTK_WIDGET (box)); row != NULL;
       row = gtk_widget_get_next_sibling (row))
    if (g_strcmp0 (g_object_get_qdata (G_OBJECT (row), item_quark ()), item) == 0)
      return row;
  return NULL;
}

void
hut_item_rows_sync (GtkBox *box,
                    const GPtrArray *ids,
                    HutItemRowNew new_row,
                    gpointer user_data)
{
  g_return_if_fail (GTK_IS_BOX (box) && ids != NULL && new_row != NULL);

  GtkWidget *row = gtk_widget_get_first_child (GTK_WIDGET (box)), *previous = NULL;

  while (row != NULL)
    {
      GtkWidget *next = gtk_widget_get_next_sibling (row);

      if (!has_id (ids, g_object_get_qdata (G_OBJECT (row), item_quark ())))
        gtk_box_remove (box, row);
      row = next;
    }
  for (guint i = 0; i < ids->len; i++)
    {
      const char *id = g_ptr_array_index (ids, i);

      row = hut_item_rows_find (box, id);
      if (row == NULL)
        {
          row = new_row (id, user_data);
          g_object_set_qdata_full (G_OBJECT (row), item_quark (), g_strdup (id), g_free);
          gtk_box_insert_child_after (box, row, previous);
        }
      else if (gtk_widget_get_prev_sibling (row) != previous)
        gtk_box_reorder_child_after (box, row, previous);
      previous = row;
    }
}

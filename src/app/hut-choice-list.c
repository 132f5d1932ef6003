/* src/app/hut-choice-list.c: drop-down lists of names of any length.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-app"
#include "config.h"
#include "app/hut-choice-list.h"

/* Own choice: the list may be wider than its button, not wider than a side pane. */
#define LIST_CHARS_MAX 48

static void
set_up_button_item (GtkSignalListItemFactory *factory,
                    GtkListItem *item)
{
  GtkWidget *label = gtk_label_new (NULL);

  gtk_label_set_xalign (GTK_LABEL (label), 0.0F);
  gtk_label_set_ellipsize (GTK_LABEL (label), PANGO_ELLIPSIZE_END);
  gtk_widget_set_hexpand (label, TRUE);
  gtk_list_item_set_child (item, label);
}

static void
bind_button_item (GtkSignalListItemFactory *factory,
                  GtkListItem *item)
{
  GtkStringObject *string = gtk_list_item_get_item (item);
  const char *name = gtk_string_object_get_string (string);

  gtk_label_set_text (GTK_LABEL (gtk_list_item_get_child (item)), name);
}

/* Only the item that is chosen has a mark. */
static void
update_mark (GtkDropDown *control,
             GParamSpec *pspec,
             GtkListItem *item)
{
  GtkWidget *box = gtk_list_item_get_child (item);

  if (box != NULL)
    gtk_widget_set_opacity (
        gtk_widget_get_last_child (box),
        gtk_drop_down_get_selected_item (control) == gtk_list_item_get_item (item) ? 1.0 : 0.0);
}

static void
set_up_list_item (GtkSignalListItemFactory *factory,
                  GtkListItem *item,
                  GtkDropDown *control)
{
  GtkWidget *box = gtk_box_new (GTK_ORIENTATION_HORIZONTAL, 6);
  GtkWidget *label = gtk_label_new (NULL);

  gtk_label_set_xalign (GTK_LABEL (label), 0.0F);
  gtk_label_set_ellipsize (GTK_LABEL (label), PANGO_ELLIPSIZE_END);
  gtk_label_set_max_width_chars (GTK_LABEL (label), LIST_CHARS_MAX);
  gtk_widget_set_hexpand (label, TRUE);
  gtk_box_append (GTK_BOX (box), label);
  gtk_box_append (GTK_BOX (box), gtk_image_new_from_icon_name ("object-select-symbolic"));
  gtk_list_item_set_child (item, box);
  g_signal_connect_object (control, "notify::selected-item", G_CALLBACK (update_mark), item, 0);
}

static void
bind_list_item (GtkSignalListItemFactory *factory,
                GtkListItem *item,
                GtkDropDown *control)
{
  GtkWidget *label = gtk_widget_get_first_child (gtk_list_item_get_child (item));
  GtkStringObject *string = gtk_list_item_get_item (item);
  const char *name = gtk_string_object_get_string (string);

  gtk_label_set_text (GTK_LABEL (label), name);
  gtk_widget_set_tooltip_text (label, name);
  update_mark (control, NULL, item);
}

void
hut_choice_list_style (GtkDropDown *control)
{
  g_return_if_fail (GTK_IS_DROP_DOWN (control));

  g_autoptr (GtkListItemFactory) button = gtk_signal_list_item_factory_new ();
  g_autoptr (GtkListItemFactory) list = gtk_signal_list_item_factory_new ();

  g_signal_connect (button, "setup", G_CALLBACK (set_up_button_item), NULL);
  g_signal_connect (button, "bind", G_CALLBACK (bind_button_item), NULL);
  g_signal_connect (list, "setup", G_CALLBACK (set_up_list_item), control);
  g_signal_connect (list, "bind", G_CALLBACK (bind_list_item), control);
  gtk_drop_down_set_factory (control, button);
  gtk_drop_down_set_list_factory (control, list);
}

static gboolean
is_same (GtkStringList *list,
         guint position,
         const char *name)
{
  return g_strcmp0 (gtk_string_list_get_string (list, position), name) == 0;
}

/* Only what differs is replaced, and the list itself stays: this may run while the control tells of
 * a choice, and then its model must not go. */
void
hut_choice_list_set (GtkDropDown *control,
                     const GPtrArray *names)
{
  g_return_if_fail (GTK_IS_DROP_DOWN (control) && names != NULL);

  GListModel *model = gtk_drop_down_get_model (control);
  g_autoptr(GtkStringList) list
      = GTK_IS_STRING_LIST (model) ? GTK_STRING_LIST (g_object_ref (model)) : NULL;
  g_autoptr(GPtrArray) added = g_ptr_array_new ();
  guint count, start = 0, end = 0;

  if (list == NULL)
    {
      list = gtk_string_list_new (NULL);
      gtk_drop_down_set_model (control, G_LIST_MODEL (list));
    }
  count = g_list_model_get_n_items (G_LIST_MODEL (list));
  while (start < MIN (count, names->len)
         && is_same (list, start, g_ptr_array_index (names, start)))
    start++;
  while (end < MIN (count, names->len) - start
         && is_same (list, count - 1 - end, g_ptr_array_index (names, names->len - 1 - end)))
    end++;
  if (start + end == count && start + end == names->len)
    return;
  for (guint i = start; i < names->len - end; i++)
    g_ptr_array_add (added, g_ptr_array_index (names, i));
  g_ptr_array_add (added, NULL);
  gtk_string_list_splice (list, start, count - start - end,
                          (const char *const *) added->pdata);
}

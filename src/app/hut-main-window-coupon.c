/* src/app/hut-main-window-coupon.c: commands on recipes: the coupon of a stock, the table of all.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-app"
#include "config.h"
#include "app/hut-main-window-private.h"
#include "app/hut-recipe-table.h"
#include <glib/gi18n.h>
#include <string.h>

/* @parameter: id of the stock, folder of the set. */
static void
write_coupon_to (GSimpleAction *action,
                 GVariant *parameter,
                 gpointer user_data)
{
  HutMainWindow *self = user_data;
  const char *stock = NULL, *folder = NULL;

  g_variant_get (parameter, "(&s&s)", &stock, &folder);
  hut_main_window_commit_typing (self);
  hut_main_window_show_step (self, "measure");
  hut_measure_page_write_coupon (self->measure_page, stock, folder);
}

static void
on_response (GtkNativeDialog *chooser,
             int response,
             gpointer user_data)
{
  HutMainWindow *self = user_data;
  const char *stock = g_object_get_data (G_OBJECT (chooser), "hut-stock");
  g_autofree char *name = g_strconcat ("coupon-", stock, NULL);
  g_autofree char *parent = hut_main_window_finish_chooser (self, response);
  g_autofree char *folder = parent != NULL ? g_build_filename (parent, name, NULL) : NULL;
  const char *stock_name = name + strlen ("coupon-"); /* the chooser may be gone with its data */

  if (folder != NULL)
    g_action_group_activate_action (G_ACTION_GROUP (self), "write-coupon-to",
                                    g_variant_new ("(ss)", stock_name, folder));
}

static void
write_coupon (GSimpleAction *action,
              GVariant *parameter,
              gpointer user_data)
{
  HutMainWindow *self = user_data;
  GtkFileChooser *chooser;

  hut_main_window_commit_typing (self);
  chooser = hut_main_window_start_chooser (self, _("Where the Folder Shall Be Made"),
                                           GTK_FILE_CHOOSER_ACTION_SELECT_FOLDER, _("_Write"));
  g_object_set_data_full (G_OBJECT (chooser), "hut-stock", g_variant_dup_string (parameter, NULL),
                          g_free);
  g_signal_connect_object (chooser, "response", G_CALLBACK (on_response), self, 0);
  gtk_native_dialog_show (self->chooser);
}

static void
show_recipes (GSimpleAction *action,
              GVariant *parameter,
              gpointer user_data)
{
  HutMainWindow *self = user_data;
  GtkWidget *window = gtk_window_new ();

  hut_main_window_commit_typing (self);
  gtk_window_set_title (GTK_WINDOW (window), _("Recipes"));
  gtk_window_set_transient_for (GTK_WINDOW (window), GTK_WINDOW (self));
  gtk_window_set_modal (GTK_WINDOW (window), TRUE);
  gtk_window_set_destroy_with_parent (GTK_WINDOW (window), TRUE);
  gtk_window_set_child (GTK_WINDOW (window), hut_recipe_table_new (self->session));
  gtk_window_present (GTK_WINDOW (window));
}

static const GActionEntry entries[] = {
  { "write-coupon", write_coupon, "s", NULL, NULL, { 0 } },
  { "recipes", show_recipes, NULL, NULL, NULL, { 0 } },
  { "write-coupon-to", write_coupon_to, "(ss)", NULL, NULL, { 0 } },
};

void
hut_main_window_install_coupon_actions (HutMainWindow *self)
{
  g_action_map_add_action_entries (G_ACTION_MAP (self), entries, G_N_ELEMENTS (entries), self);
}

/* src/app/hut-main-window-files.c: new, open, save, export, and what is unsaved.
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Each command with a file chooser ends in one that takes a path (open-path, save-to, export-to),
 * so that a script or a test can do without the chooser. */
#define G_LOG_DOMAIN "hut-app"
#include "config.h"
#include "app/hut-settings.h"
#include "app/hut-main-window-private.h"
#include "design/hut-file.h"
#include <glib/gi18n.h>

#define DESIGN_SUFFIX ".hutch"
#define DESIGN_MIME_TYPE "application/x-hutchwright+xml"
/* Own choice: what one remembers. */
#define RECENT_MAX 8

/* ---- unsaved changes ------------------------------------------------------------------------ */

/* What the question is about. */
typedef struct
{
  HutMainWindow *window;
  HutMainWindowNext next;
  gpointer user_data;
  GDestroyNotify destroy;
} HutUnsaved;

static void
hut_unsaved_free (HutUnsaved *unsaved)
{
  if (unsaved->destroy != NULL)
    unsaved->destroy (unsaved->user_data);
  g_object_unref (unsaved->window);
  g_free (unsaved);
}

G_DEFINE_AUTOPTR_CLEANUP_FUNC (HutUnsaved, hut_unsaved_free)

static void save_then (HutMainWindow *self, HutUnsaved *unsaved);

static void
on_unsaved_response (GtkDialog *dialog,
                     int response,
                     gpointer user_data)
{
  g_autoptr (HutUnsaved) unsaved = user_data;

  gtk_window_destroy (GTK_WINDOW (dialog));
  if (response == GTK_RESPONSE_ACCEPT)
    {
      HutMainWindow *window = unsaved->window;

      save_then (window, g_steal_pointer (&unsaved));
    }
  else if (response == GTK_RESPONSE_REJECT)
    unsaved->next (unsaved->window, unsaved->user_data);
}

void
hut_main_window_ask_unsaved (HutMainWindow *self,
                             HutMainWindowNext next,
                             gpointer user_data,
                             GDestroyNotify destroy)
{
  HutUnsaved *unsaved = g_new0 (HutUnsaved, 1);
  GtkWidget *dialog;

  *unsaved = (HutUnsaved){ g_object_ref (self), next, user_data, destroy };
  hut_main_window_commit_typing (self);
  if (!hut_session_is_modified (self->session))
    {
      next (self, user_data);
      hut_unsaved_free (unsaved);
      return;
    }
  hut_autosave_write (self->autosave);
  dialog = gtk_message_dialog_new (
      GTK_WINDOW (self), GTK_DIALOG_MODAL | GTK_DIALOG_DESTROY_WITH_PARENT, GTK_MESSAGE_QUESTION,
      GTK_BUTTONS_NONE, "%s", _("Save the changes?"));
  gtk_message_dialog_format_secondary_text (GTK_MESSAGE_DIALOG (dialog), "%s",
                                            _("What is not saved is lost for good."));
  gtk_dialog_add_buttons (GTK_DIALOG (dialog), _("_Discard Changes"), GTK_RESPONSE_REJECT,
                          _("_Cancel"), GTK_RESPONSE_CANCEL, _("_Save"), GTK_RESPONSE_ACCEPT,
                          NULL);
  gtk_dialog_set_default_response (GTK_DIALOG (dialog), GTK_RESPONSE_ACCEPT);
  g_signal_connect (dialog, "response", G_CALLBACK (on_unsaved_response), unsaved);
  gtk_window_present (GTK_WINDOW (dialog));
}

/* ---- open ------------------------------------------------------------------------------- */

static void
show_error (HutMainWindow *self,
            const GError *error)
{
  hut_notice_show_error (self->notice, error->message);
}

static void
remember (HutMainWindow *self,
          const char *path)
{
  g_autofree char *absolute = g_canonicalize_filename (path, NULL);
  g_autofree char *uri = g_filename_to_uri (absolute, NULL, NULL);
  GtkRecentData data = {
    .mime_type = (char *)DESIGN_MIME_TYPE,
    .app_name = (char *)"Hutchwright",
    .app_exec = (char *)"hutchwright %f",
  };

  if (uri != NULL)
    gtk_recent_manager_add_full (gtk_recent_manager_get_default (), uri, &data);
}

static void
take_design (HutMainWindow *self,
             HutDesign *design,
             const char *path)
{
  hut_notice_hide (self->notice);
  g_clear_pointer (&self->recovery, hut_recovery_free);
  hut_session_replace (self->session, design, path, FALSE);
  gtk_widget_activate_action (GTK_WIDGET (self->canvas), "canvas.zoom-fit", NULL);
}

gboolean
hut_main_window_open (HutMainWindow *self,
                      const char *path)
{
  g_return_val_if_fail (HUT_IS_MAIN_WINDOW (self) && path != NULL, FALSE);

  g_autoptr (GError) error = NULL;
  HutDesign *design = hut_design_load (path, &error);

  if (design == NULL)
    {
      show_error (self, error);
      return FALSE;
    }
  take_design (self, design, path);
  remember (self, path);
  return TRUE;
}

static void
open_now (HutMainWindow *self,
          gpointer user_data)
{
  hut_main_window_open (self, user_data);
}

static void
open_path (GSimpleAction *action,
           GVariant *parameter,
           gpointer user_data)
{
  hut_main_window_ask_unsaved (user_data, open_now, g_variant_dup_string (parameter, NULL), g_free);
}

static void
open_example_now (HutMainWindow *self,
                  gpointer user_data)
{
  g_autoptr (GError) error = NULL;
  HutDesign *design = hut_example_load (user_data, &error);

  if (design == NULL)
    show_error (self, error);
  else
    take_design (self, design, NULL);
}

static void
open_example (GSimpleAction *action,
              GVariant *parameter,
              gpointer user_data)
{
  hut_main_window_ask_unsaved (user_data, open_example_now, g_variant_dup_string (parameter, NULL),
                               g_free);
}

static void
new_now (HutMainWindow *self,
         gpointer user_data)
{
  take_design (self, hut_design_new (), NULL);
}

static void
new_design (GSimpleAction *action,
            GVariant *parameter,
            gpointer user_data)
{
  hut_main_window_ask_unsaved (user_data, new_now, NULL, NULL);
}

/* ---- choosers ------------------------------------------------------------------------------- */

static void
add_filters (GtkFileChooser *chooser)
{
  g_autoptr (GtkFileFilter) designs = gtk_file_filter_new ();
  g_autoptr (GtkFileFilter) all = gtk_file_filter_new ();

  gtk_file_filter_set_name (designs, _("Enclosure designs (*.hutch)"));
  gtk_file_filter_add_pattern (designs, "*" DESIGN_SUFFIX);
  gtk_file_filter_set_name (all, _("All files"));
  gtk_file_filter_add_pattern (all, "*");
  gtk_file_chooser_add_filter (chooser, designs);
  gtk_file_chooser_add_filter (chooser, all);
}

GtkFileChooser *
hut_main_window_start_chooser (HutMainWindow *self,
                               const char *title,
                               GtkFileChooserAction action,
                               const char *accept)
{
  const char *path = hut_session_get_path (self->session);
  g_autofree char *folder_path = path != NULL ? g_path_get_dirname (path) : NULL;
  g_autoptr (GFile) folder = folder_path != NULL ? g_file_new_for_path (folder_path) : NULL;

  g_clear_object (&self->chooser);
  self->chooser = GTK_NATIVE_DIALOG (
      gtk_file_chooser_native_new (title, GTK_WINDOW (self), action, accept, _("_Cancel")));
  gtk_native_dialog_set_modal (self->chooser, TRUE);
  if (folder != NULL)
    gtk_file_chooser_set_current_folder (GTK_FILE_CHOOSER (self->chooser), folder, NULL);
  return GTK_FILE_CHOOSER (self->chooser);
}

char *
hut_main_window_finish_chooser (HutMainWindow *self,
                                int response)
{
  g_autoptr (GFile) file = response == GTK_RESPONSE_ACCEPT
                               ? gtk_file_chooser_get_file (GTK_FILE_CHOOSER (self->chooser))
                               : NULL;

  g_clear_object (&self->chooser);
  return file != NULL ? g_file_get_path (file) : NULL;
}

static void
on_open_response (HutMainWindow *self,
                  int response)
{
  g_autofree char *path = hut_main_window_finish_chooser (self, response);

  if (path != NULL)
    g_action_group_activate_action (G_ACTION_GROUP (self), "open-path",
                                    g_variant_new_string (path));
}

static void
open_dialog (GSimpleAction *action,
             GVariant *parameter,
             gpointer user_data)
{
  HutMainWindow *self = user_data;
  GtkFileChooser *chooser
      = hut_main_window_start_chooser (self, _("Open Design"), GTK_FILE_CHOOSER_ACTION_OPEN,
                                       _("_Open"));

  add_filters (chooser);
  g_signal_connect_object (chooser, "response", G_CALLBACK (on_open_response), self,
                           G_CONNECT_SWAPPED);
  gtk_native_dialog_show (self->chooser);
}

/* ---- save ------------------------------------------------------------------------------- */

static gboolean
save_path (HutMainWindow *self,
           const char *path)
{
  g_autoptr (GError) error = NULL;

  hut_main_window_commit_typing (self);
  if (!hut_session_save (self->session, path, &error))
    {
      show_error (self, error);
      return FALSE;
    }
  hut_notice_hide (self->notice);
  remember (self, path);
  return TRUE;
}

/* Chooser, and what comes after a save that worked; @unsaved may be NULL. */
static void
on_save_response (GtkNativeDialog *chooser,
                  int response,
                  gpointer user_data)
{
  g_autoptr (HutUnsaved) unsaved = user_data;
  g_autofree char *path = hut_main_window_finish_chooser (unsaved->window, response);
  g_autofree char *full = NULL;

  if (path == NULL)
    return;
  full = g_str_has_suffix (path, DESIGN_SUFFIX) ? g_strdup (path)
                                                : g_strconcat (path, DESIGN_SUFFIX, NULL);
  if (save_path (unsaved->window, full) && unsaved->next != NULL)
    unsaved->next (unsaved->window, unsaved->user_data);
}

static void
choose_and_save (HutMainWindow *self,
                 HutUnsaved *unsaved)
{
  const char *path = hut_session_get_path (self->session);
  const char *name = hut_session_get_design (self->session)->name;
  GtkFileChooser *chooser
      = hut_main_window_start_chooser (self, _("Save Design"), GTK_FILE_CHOOSER_ACTION_SAVE,
                                       _("_Save"));
  g_autofree char *file_name
      = path != NULL
            ? g_path_get_basename (path)
            : g_strconcat (name != NULL && *name != '\0' ? name : "hut", DESIGN_SUFFIX, NULL);

  g_strdelimit (file_name, "/", '-');
  add_filters (chooser);
  gtk_file_chooser_set_current_name (chooser, file_name);
  g_signal_connect (chooser, "response", G_CALLBACK (on_save_response), unsaved);
  gtk_native_dialog_show (self->chooser);
}

/* Takes @unsaved. */
static void
save_then (HutMainWindow *self,
           HutUnsaved *unsaved)
{
  const char *path = hut_session_get_path (self->session);

  if (path == NULL)
    {
      choose_and_save (self, unsaved);
      return;
    }
  if (save_path (self, path) && unsaved->next != NULL)
    unsaved->next (self, unsaved->user_data);
  hut_unsaved_free (unsaved);
}

static HutUnsaved *
nothing_after (HutMainWindow *self)
{
  HutUnsaved *unsaved = g_new0 (HutUnsaved, 1);

  unsaved->window = g_object_ref (self);
  return unsaved;
}

static void
save (GSimpleAction *action,
      GVariant *parameter,
      gpointer user_data)
{
  save_then (user_data, nothing_after (user_data));
}

static void
save_as (GSimpleAction *action,
         GVariant *parameter,
         gpointer user_data)
{
  choose_and_save (user_data, nothing_after (user_data));
}

static void
save_to (GSimpleAction *action,
         GVariant *parameter,
         gpointer user_data)
{
  save_path (user_data, g_variant_get_string (parameter, NULL));
}

/* ---- export ----------------------------------------------------------------------------- */

static void
export_to (GSimpleAction *action,
           GVariant *parameter,
           gpointer user_data)
{
  HutMainWindow *self = user_data;

  hut_main_window_commit_typing (self);
  hut_autosave_write (self->autosave);
  hut_main_window_show_step (self, "cut");
  hut_cut_page_export_to (self->cut_page, g_variant_get_string (parameter, NULL));
}

static void
on_export_response (HutMainWindow *self,
                    int response)
{
  g_autofree char *parent = hut_main_window_finish_chooser (self, response);
  g_autofree char *name = hut_cut_page_dup_folder_name (self->cut_page);
  g_autofree char *folder = parent != NULL ? g_build_filename (parent, name, NULL) : NULL;

  if (folder != NULL)
    g_action_group_activate_action (G_ACTION_GROUP (self), "export-to",
                                    g_variant_new_string (folder));
}

static void
export_dialog (GSimpleAction *action,
               GVariant *parameter,
               gpointer user_data)
{
  HutMainWindow *self = user_data;
  GtkFileChooser *chooser;

  hut_main_window_commit_typing (self);
  hut_main_window_show_step (self, "cut");
  if (hut_cut_page_is_exporting (self->cut_page))
    return;
  if (!hut_cut_page_may_export (self->cut_page))
    {
      hut_cut_page_tell_why_not (self->cut_page);
      return;
    }
  chooser = hut_main_window_start_chooser (self, _("Where the Folder Shall Be Made"),
                                           GTK_FILE_CHOOSER_ACTION_SELECT_FOLDER, _("_Export"));
  g_signal_connect_object (chooser, "response", G_CALLBACK (on_export_response), self,
                           G_CONNECT_SWAPPED);
  gtk_native_dialog_show (self->chooser);
}

static void
cancel_export (GSimpleAction *action,
               GVariant *parameter,
               gpointer user_data)
{
  hut_cut_page_cancel_export (((HutMainWindow *)user_data)->cut_page);
}

/* ---- recent files ----------------------------------------------------------------------- */

static int
compare_newest_first (gconstpointer a,
                      gconstpointer b)
{
  return -g_date_time_compare (gtk_recent_info_get_modified ((GtkRecentInfo *)a),
                               gtk_recent_info_get_modified ((GtkRecentInfo *)b));
}

static void
add_recent (GMenu *menu,
            GtkRecentInfo *info)
{
  g_autofree char *path = g_filename_from_uri (gtk_recent_info_get_uri (info), NULL, NULL);
  g_autofree char *label = g_strdup (gtk_recent_info_get_display_name (info));
  g_auto (GStrv) parts = label != NULL ? g_strsplit (label, "_", -1) : NULL;
  /* An underscore would mark a key. */
  g_autofree char *shown = parts != NULL ? g_strjoinv ("__", parts) : NULL;
  g_autoptr (GMenuItem) item = g_menu_item_new (shown, NULL);

  if (path == NULL)
    return;
  g_menu_item_set_action_and_target (item, "win.open-path", "s", path);
  g_menu_append_item (menu, item);
}

static void
on_recent_changed (HutMainWindow *self)
{
  GList *infos = g_list_sort (gtk_recent_manager_get_items (gtk_recent_manager_get_default ()),
                              compare_newest_first);
  guint count = 0;

  g_menu_remove_all (self->recent_menu);
  for (GList *link = infos; link != NULL && count < RECENT_MAX; link = link->next)
    {
      GtkRecentInfo *info = link->data;

      if (!g_str_has_suffix (gtk_recent_info_get_uri (info), DESIGN_SUFFIX)
          || !gtk_recent_info_is_local (info) || !gtk_recent_info_exists (info))
        continue;
      add_recent (self->recent_menu, info);
      count++;
    }
  g_list_free_full (infos, (GDestroyNotify)gtk_recent_info_unref);
}

void
hut_main_window_fill_recent (HutMainWindow *self)
{
  const char *const *examples = hut_example_names ();
  g_autoptr (GMenu) menu = g_menu_new ();
  g_autoptr (GMenu) example_menu = g_menu_new ();

  self->recent_menu = g_menu_new ();
  for (guint i = 0; examples[i] != NULL; i++)
    {
      g_autoptr (GMenuItem) item = g_menu_item_new (_(hut_example_title (examples[i])), NULL);

      g_menu_item_set_action_and_target (item, "win.open-example", "s", examples[i]);
      g_menu_append_item (example_menu, item);
    }
  /* Translators: heading in a menu, over the files opened lately */
  g_menu_append_section (menu, _("Used Lately"), G_MENU_MODEL (self->recent_menu));
  /* Translators: heading in a menu */
  g_menu_append_section (menu, _("Examples"), G_MENU_MODEL (example_menu));
  gtk_menu_button_set_menu_model (self->recent_button, G_MENU_MODEL (menu));
  g_signal_connect_object (gtk_recent_manager_get_default (), "changed",
                           G_CALLBACK (on_recent_changed), self, G_CONNECT_SWAPPED);
  on_recent_changed (self);
}

static const GActionEntry entries[] = {
  { "new", new_design, NULL, NULL, NULL, { 0 } },
  { "open", open_dialog, NULL, NULL, NULL, { 0 } },
  { "open-path", open_path, "s", NULL, NULL, { 0 } },
  { "open-example", open_example, "s", NULL, NULL, { 0 } },
  { "save", save, NULL, NULL, NULL, { 0 } },
  { "save-as", save_as, NULL, NULL, NULL, { 0 } },
  { "save-to", save_to, "s", NULL, NULL, { 0 } },
  { "export", export_dialog, NULL, NULL, NULL, { 0 } },
  { "export-to", export_to, "s", NULL, NULL, { 0 } },
  { "cancel-export", cancel_export, NULL, NULL, NULL, { 0 } },
};

void
hut_main_window_install_file_actions (HutMainWindow *self)
{
  g_action_map_add_action_entries (G_ACTION_MAP (self), entries, G_N_ELEMENTS (entries), self);
}

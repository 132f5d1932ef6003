/* src/app/hut-application.c: the program with its windows.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-app"
#include "config.h"
#include "app/hut-application.h"
#include "app/hut-preferences.h"
#include "app/hut-settings.h"
#include "app/hut-main-window.h"
#include <glib-unix.h>
#include <glib/gi18n.h>
#include <signal.h>

#define RESOURCE_PATH "/org/hutchwright/Hutchwright"

struct _HutApplication
{
  GtkApplication parent_instance;

  gboolean follows_dark; /* what the desktop had said before we said otherwise */
  guint signal_sources[3];
};

/* The keys of each action; "Name::target" as in GAction. */
static const struct
{
  const char *action;
  const char *keys[3];
} accels[] = {
  { "win.new", { "<Control>n" } },
  { "win.open", { "<Control>o" } },
  { "win.save", { "<Control>s" } },
  { "win.save-as", { "<Control><Shift>s" } },
  { "win.export", { "<Control>e" } },
  { "win.close", { "<Control>w" } },
  { "win.undo", { "<Control>z" } },
  { "win.redo", { "<Control><Shift>z", "<Control>y" } },
  { "win.duplicate", { "<Control>d" } },
  { "win.zoom-in", { "<Control>plus", "<Control>equal" } },
  { "win.zoom-out", { "<Control>minus" } },
  { "win.zoom-fit", { "<Control>0" } },
  { "win.zoom-selection", { "<Control>1" } },
  { "win.next-finding", { "F8" } },
  { "win.previous-finding", { "<Shift>F8" } },
  { "win.step::measure", { "<Alt>1" } },
  { "win.step::shape", { "<Alt>2" } },
  { "win.step::openings", { "<Alt>3" } },
  { "win.step::engineering", { "<Alt>4" } },
  { "win.step::cut", { "<Alt>5" } },
  { "win.view::flat", { "<Alt>7" } },
  { "win.view::built", { "<Alt>8" } },
  { "win.view::sheets", { "<Alt>9" } },
  { "win.view::results", { "<Alt>0" } },
  { "win.show-help-overlay", { "F1", "<Control>question" } },
  { "app.new-window", { "<Control><Shift>n" } },
  { "app.preferences", { "<Control>comma" } },
  { "app.quit", { "<Control>q" } },
};

G_DEFINE_TYPE (HutApplication, hut_application, GTK_TYPE_APPLICATION)

static HutMainWindow *
present_new_window (HutApplication *self)
{
  GtkWidget *window = hut_main_window_new (GTK_APPLICATION (self));

  gtk_window_present (GTK_WINDOW (window));
  return HUT_MAIN_WINDOW (window);
}

/* ---- actions --------------------------------------------------------------------------------- */

static void
new_window (GSimpleAction *action,
            GVariant *parameter,
            gpointer user_data)
{
  present_new_window (user_data);
}

static void
preferences (GSimpleAction *action,
             GVariant *parameter,
             gpointer user_data)
{
  GtkWidget *window
      = hut_preferences_new (gtk_application_get_active_window (GTK_APPLICATION (user_data)));

  gtk_window_present (GTK_WINDOW (window));
}

static void
about (GSimpleAction *action,
       GVariant *parameter,
       gpointer user_data)
{
  const char *const authors[] = { "The Hutchwright developers", NULL };

  gtk_show_about_dialog (
      gtk_application_get_active_window (GTK_APPLICATION (user_data)), "program-name",
      "Hutchwright", "version", HUT_VERSION, "logo-icon-name", HUT_APP_ID, "license-type",
      GTK_LICENSE_GPL_3_0, "authors", authors, "comments",
      _("Designs the enclosure around a bench machine, and writes what to cut.\n\n"
         "It checks geometry. It does not tell that a machine or an enclosure is safe: laser "
         "light, "
         "fumes, fire and mains can hurt and kill. Local codes, standards and licensed practice "
         "come "
         "first."),
      NULL);
}

/* Windows with unsaved changes ask; one that is kept open keeps the program. */
static void
quit (GSimpleAction *action,
      GVariant *parameter,
      gpointer user_data)
{
  GList *windows = g_list_copy (gtk_application_get_windows (GTK_APPLICATION (user_data)));

  for (GList *link = windows; link != NULL; link = link->next)
    if (HUT_IS_MAIN_WINDOW (link->data))
      gtk_window_close (link->data);
  g_list_free (windows);
}

static const GActionEntry entries[] = {
  { "new-window", new_window, NULL, NULL, NULL, { 0 } },
  { "preferences", preferences, NULL, NULL, NULL, { 0 } },
  { "about", about, NULL, NULL, NULL, { 0 } },
  { "quit", quit, NULL, NULL, NULL, { 0 } },
};

/* ---- look ------------------------------------------------------------------------------------ */

static void
apply_colour_style (HutApplication *self)
{
  GtkSettings *gtk_settings = gtk_settings_get_default ();
  const HutColourStyle style = hut_settings_get_colour_style (hut_settings_get_default ());

  if (gtk_settings != NULL)
    g_object_set (gtk_settings, "gtk-application-prefer-dark-theme",
                  style == HUT_COLOUR_STYLE_FOLLOW ? self->follows_dark
                                                   : style == HUT_COLOUR_STYLE_DARK,
                  NULL);
}

static void
load_style_sheet (void)
{
  GdkDisplay *display = gdk_display_get_default ();
  g_autoptr (GtkCssProvider) provider = gtk_css_provider_new ();

  if (display == NULL)
    return;
  gtk_css_provider_load_from_resource (provider, RESOURCE_PATH "/hutchwright.css");
  gtk_style_context_add_provider_for_display (display, GTK_STYLE_PROVIDER (provider),
                                              GTK_STYLE_PROVIDER_PRIORITY_APPLICATION);
}

/* ---- end by signal --------------------------------------------------------------------------- */

/* Somebody ends the session or the process: what is unsaved is kept first. */
static gboolean
on_end_signal (gpointer user_data)
{
  GList *windows = gtk_application_get_windows (GTK_APPLICATION (user_data));

  for (GList *link = windows; link != NULL; link = link->next)
    if (HUT_IS_MAIN_WINDOW (link->data))
      hut_main_window_autosave (link->data);
  g_application_quit (G_APPLICATION (user_data));
  return G_SOURCE_CONTINUE;
}

/* ---- application ----------------------------------------------------------------------------- */

static void
hut_application_startup (GApplication *application)
{
  HutApplication *self = HUT_APPLICATION (application);
  const int end_signals[] = { SIGTERM, SIGINT, SIGHUP };

  G_APPLICATION_CLASS (hut_application_parent_class)->startup (application);
  gtk_window_set_default_icon_name (HUT_APP_ID);
  g_action_map_add_action_entries (G_ACTION_MAP (self), entries, G_N_ELEMENTS (entries), self);
  for (guint i = 0; i < G_N_ELEMENTS (accels); i++)
    {
      const char *const keys[] = { accels[i].keys[0], accels[i].keys[1], accels[i].keys[2], NULL };

      gtk_application_set_accels_for_action (GTK_APPLICATION (self), accels[i].action, keys);
    }
  load_style_sheet ();
  if (gtk_settings_get_default () != NULL)
    g_object_get (gtk_settings_get_default (), "gtk-application-prefer-dark-theme",
                  &self->follows_dark, NULL);
  g_signal_connect_object (hut_settings_get_default (), "notify::colour-style",
                           G_CALLBACK (apply_colour_style), self, G_CONNECT_SWAPPED);
  apply_colour_style (self);
  for (guint i = 0; i < G_N_ELEMENTS (end_signals); i++)
    self->signal_sources[i] = g_unix_signal_add (end_signals[i], on_end_signal, self);
}

static void
hut_application_shutdown (GApplication *application)
{
  HutApplication *self = HUT_APPLICATION (application);

  for (guint i = 0; i < G_N_ELEMENTS (self->signal_sources); i++)
    g_clear_handle_id (&self->signal_sources[i], g_source_remove);
  G_APPLICATION_CLASS (hut_application_parent_class)->shutdown (application);
}

static void
hut_application_activate (GApplication *application)
{
  GtkWindow *window = gtk_application_get_active_window (GTK_APPLICATION (application));

  if (window != NULL)
    gtk_window_present (window);
  else
    hut_main_window_offer_recovery (present_new_window (HUT_APPLICATION (application)));
}

/* A window that was never touched takes the file; else it gets a window of its own. */
static void
hut_application_open (GApplication *application,
                      GFile **files,
                      int file_count,
                      const char *hint)
{
  for (int i = 0; i < file_count; i++)
    {
      g_autofree char *path = g_file_get_path (files[i]);
      GtkWindow *active = gtk_application_get_active_window (GTK_APPLICATION (application));
      HutMainWindow *window
          = HUT_IS_MAIN_WINDOW (active) && hut_main_window_is_untouched (HUT_MAIN_WINDOW (active))
                ? HUT_MAIN_WINDOW (active)
                : present_new_window (HUT_APPLICATION (application));

      if (path != NULL)
        hut_main_window_open (window, path);
      gtk_window_present (GTK_WINDOW (window));
    }
}

static void
hut_application_class_init (HutApplicationClass *class)
{
  GApplicationClass *application_class = G_APPLICATION_CLASS (class);

  application_class->startup = hut_application_startup;
  application_class->shutdown = hut_application_shutdown;
  application_class->activate = hut_application_activate;
  application_class->open = hut_application_open;
}

static void
hut_application_init (HutApplication *self)
{
}

HutApplication *
hut_application_new (void)
{
  return g_object_new (HUT_TYPE_APPLICATION, "application-id", HUT_APP_ID, "flags",
                       G_APPLICATION_HANDLES_OPEN, "resource-base-path", RESOURCE_PATH, NULL);
}

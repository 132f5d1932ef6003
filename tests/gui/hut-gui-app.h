/* tests/gui/hut-gui-app.h: commands, fields, dialogs and files of the program's window.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "app/hut-application.h"
#include "app/hut-main-window.h"
#include "hut-gui.h"

typedef struct
{
  HutGui gui;
  char *folder; /* a scratch folder that goes with it */
} HutGuiApp;

/* @example: (nullable): a shipped example, else a new design. */
void hut_gui_app_open (HutGuiApp *self, const char *example);
/* Closes without asking, whatever is unsaved. */
void hut_gui_app_close (HutGuiApp *self);
G_DEFINE_AUTO_CLEANUP_CLEAR_FUNC (HutGuiApp, hut_gui_app_close)

/* "win.undo", "app.about"; @parameter: (nullable) (transfer floating). Fails the test when there is no such
 * action. Returns: FALSE when it is not enabled */
gboolean hut_gui_app_activate (HutGuiApp *self, const char *action, GVariant *parameter);
/* The visible widget of that id in a .ui file; fails the test when there is none. */
GtkWidget *hut_gui_app_find (HutGuiApp *self, const char *id);
/* NULL when it is not visible. */
GtkWidget *hut_gui_app_look_for (HutGuiApp *self, const char *id);
/* Clicks into the field of that id, takes out what is there and types @text. */
void hut_gui_app_type (HutGuiApp *self, const char *id, const char *text);
/* Windows besides the program's own: dialogs. */
guint hut_gui_app_count_dialogs (HutGuiApp *self);
void hut_gui_app_close_dialogs (HutGuiApp *self);
/* (transfer full): a path in the scratch folder. */
char *hut_gui_app_dup_path (HutGuiApp *self, const char *name);

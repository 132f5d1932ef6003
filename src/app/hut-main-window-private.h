/* src/app/hut-main-window-private.h: what the files of the window share.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "app/hut-autosave.h"
#include "app/hut-built-page.h"
#include "app/hut-canvas.h"
#include "app/hut-cut-page.h"
#include "app/hut-findings-list.h"
#include "app/hut-measure-page.h"
#include "app/hut-notice.h"
#include "app/hut-main-window.h"

struct _HutMainWindow
{
  GtkApplicationWindow parent_instance;

  GtkLabel *title_label, *subtitle_label;
  GtkWidget *undo_button, *redo_button;
  GtkMenuButton *recent_button;
  HutNotice *notice;
  GtkPaned *left_paned, *right_paned, *side_paned;
  GtkStack *steps, *views;

  HutSession *session;
  HutAutosave *autosave;
  HutCanvas *canvas;
  HutBuiltPage *built;
  HutSheetsView *sheets;
  HutMeasurePage *measure_page;
  HutCutPage *cut_page;
  HutFindingsList *findings;

  GMenu *recent_menu;       /* section of the files used lately */
  GtkNativeDialog *chooser; /* the one that is open, or NULL */
  HutRecovery *recovery;    /* that the notice asks about, or NULL */
  gboolean closing;         /* the user has answered: do not ask again */
};

/* hut-main-window-files.c */
void hut_main_window_install_file_actions (HutMainWindow *self);
void hut_main_window_fill_recent (HutMainWindow *self);
/* (transfer none): kept until it answers; one at a time. */
GtkFileChooser *hut_main_window_start_chooser (HutMainWindow *self,
                                               const char *title,
                                               GtkFileChooserAction action,
                                               const char *accept);
/* (transfer full) (nullable): what was chosen, NULL when the user gave up. */
char *hut_main_window_finish_chooser (HutMainWindow *self, int response);
/* hut-main-window-coupon.c */
void hut_main_window_install_coupon_actions (HutMainWindow *self);
/* Goes on with @next when nothing is unsaved, or the user saved it or lets go of it. */
typedef void (*HutMainWindowNext) (HutMainWindow *self, gpointer user_data);
void hut_main_window_ask_unsaved (HutMainWindow *self,
                                  HutMainWindowNext next,
                                  gpointer user_data,
                                  GDestroyNotify destroy);
/* hut-main-window-recovery.c */
void hut_main_window_init_recovery (HutMainWindow *self);
/* hut-main-window-actions.c */
void hut_main_window_install_actions (HutMainWindow *self);
void hut_main_window_update_actions (HutMainWindow *self);
/* Applies what is being typed, so that a command acts on what the user sees. */
void hut_main_window_commit_typing (HutMainWindow *self);
/* Drops what is being typed. Returns: FALSE when nothing was */
gboolean hut_main_window_revert_typing (HutMainWindow *self);
void hut_main_window_show_step (HutMainWindow *self, const char *step);
/* "flat", "built", "sheets" or "results". */
void hut_main_window_show_view (HutMainWindow *self, const char *view);

/* src/app/hut-cut-page.h: the step Cut: sheets, formats, what blocks, and the export itself.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "app/hut-session.h"
#include "app/hut-sheets-view.h"

#define HUT_TYPE_CUT_PAGE (hut_cut_page_get_type ())
G_DECLARE_FINAL_TYPE (HutCutPage, hut_cut_page, HUT, CUT_PAGE, GtkWidget)

GtkWidget *hut_cut_page_new (HutSession *session, HutSheetsView *sheets);
/* TRUE when nothing blocks, or all that blocks is allowed by the user, and a format is chosen. */
gboolean hut_cut_page_may_export (HutCutPage *self);
/* (transfer full): name of the folder that is to be made. */
char *hut_cut_page_dup_folder_name (HutCutPage *self) G_GNUC_WARN_UNUSED_RESULT;
/* Writes the set into @folder; progress, result and errors are shown on the page. */
void hut_cut_page_export_to (HutCutPage *self, const char *folder);
gboolean hut_cut_page_is_exporting (HutCutPage *self);
void hut_cut_page_cancel_export (HutCutPage *self);
/* Shows on the page what keeps hut_cut_page_may_export () from being TRUE. */
void hut_cut_page_tell_why_not (HutCutPage *self);

/* src/app/hut-findings-list.h: what the checks say, always in sight.
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Signal "chosen" (int): the user chose that finding; it is selected in the session already. */
#pragma once
#include "app/hut-session.h"
#include <gtk/gtk.h>

#define HUT_TYPE_FINDINGS_LIST (hut_findings_list_get_type ())
G_DECLARE_FINAL_TYPE (HutFindingsList, hut_findings_list, HUT, FINDINGS_LIST, GtkWidget)

GtkWidget *hut_findings_list_new (HutSession *session);
/* Chooses the finding after (or before) the selected one, round and round. */
void hut_findings_list_step (HutFindingsList *self, gboolean forward);

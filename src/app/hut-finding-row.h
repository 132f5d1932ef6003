/* src/app/hut-finding-row.h: one finding: severity as shape and word, number as on the canvas,
 * sentence. SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "app/hut-list-entry.h"
#include <gtk/gtk.h>

#define HUT_TYPE_FINDING_ROW (hut_finding_row_get_type ())
G_DECLARE_FINAL_TYPE (HutFindingRow, hut_finding_row, HUT, FINDING_ROW, GtkWidget)

GtkWidget *hut_finding_row_new (void);
/* Shows @entry and follows it; NULL lets go. */
void hut_finding_row_set_entry (HutFindingRow *self, HutListEntry *entry);

/* src/app/hut-screw-row.h: one screw hole in the editor of an item: where it is and what goes through.
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Signals: "changed": the hole of hut_screw_row_get_cut () is another; "removed": the user wants it
 * away. */
#pragma once
#include "catalog/hut-item.h"
#include <gtk/gtk.h>

#define HUT_TYPE_SCREW_ROW (hut_screw_row_get_type ())
G_DECLARE_FINAL_TYPE (HutScrewRow, hut_screw_row, HUT, SCREW_ROW, GtkWidget)

/* @number: counted from 1, for screen readers; @cut: a SCREW, copied */
GtkWidget *hut_screw_row_new (guint number, const HutItemCut *cut);
const HutItemCut *hut_screw_row_get_cut (HutScrewRow *self);
/* Applies what is being typed. Returns: FALSE when it cannot be applied */
gboolean hut_screw_row_commit (HutScrewRow *self);

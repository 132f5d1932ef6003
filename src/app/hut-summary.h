/* src/app/hut-summary.h: the enclosure as a whole, in a few numbers.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "app/hut-session.h"
#include <gtk/gtk.h>

#define HUT_TYPE_SUMMARY (hut_summary_get_type ())
G_DECLARE_FINAL_TYPE (HutSummary, hut_summary, HUT, SUMMARY, GtkWidget)

GtkWidget *hut_summary_new (HutSession *session);

/* src/app/hut-results-view.h: all results of the engineering, by subject, with their plots.
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * It reckons when it is on screen, once a frame at most. */
#pragma once
#include "app/hut-session.h"
#include <gtk/gtk.h>

#define HUT_TYPE_RESULTS_VIEW (hut_results_view_get_type ())
G_DECLARE_FINAL_TYPE (HutResultsView, hut_results_view, HUT, RESULTS_VIEW, GtkWidget)

GtkWidget *hut_results_view_new (HutSession *session);

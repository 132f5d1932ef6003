/* src/app/hut-openings-page.h: the step Openings: the shelf, and what the design has.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "app/hut-session.h"
#include <gtk/gtk.h>

#define HUT_TYPE_OPENINGS_PAGE (hut_openings_page_get_type ())
G_DECLARE_FINAL_TYPE (HutOpeningsPage, hut_openings_page, HUT, OPENINGS_PAGE, GtkWidget)

/* Signal "chosen" (const char *): the user chose that item in the list; it is selected already. */
GtkWidget *hut_openings_page_new (HutSession *session);
/* (transfer none): the shelf; its "drag-scale" wants the scale of the canvas. */
GtkWidget *hut_openings_page_get_shelf (HutOpeningsPage *self);

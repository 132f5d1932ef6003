/* src/app/hut-engineering-page.h: the step Engineering: duct, finish, and what holds the lid.
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What it comes to is in the view Results: hut-results-view.h. */
#pragma once
#include "app/hut-session.h"
#include <gtk/gtk.h>

#define HUT_TYPE_ENGINEERING_PAGE (hut_engineering_page_get_type ())
G_DECLARE_FINAL_TYPE (HutEngineeringPage, hut_engineering_page, HUT, ENGINEERING_PAGE, GtkWidget)

GtkWidget *hut_engineering_page_new (HutSession *session);

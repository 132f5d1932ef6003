/* src/app/hut-shape-page.h: the step Shape: size, lid, bottom, stock per panel, joints.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "app/hut-session.h"
#include <gtk/gtk.h>

#define HUT_TYPE_SHAPE_PAGE (hut_shape_page_get_type ())
G_DECLARE_FINAL_TYPE (HutShapePage, hut_shape_page, HUT, SHAPE_PAGE, GtkWidget)

GtkWidget *hut_shape_page_new (HutSession *session);

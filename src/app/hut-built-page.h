/* src/app/hut-built-page.h: the built view with its sliders: lid, motion of the machine, panels
 * apart. SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "app/hut-built-area.h"

#define HUT_TYPE_BUILT_PAGE (hut_built_page_get_type ())
G_DECLARE_FINAL_TYPE (HutBuiltPage, hut_built_page, HUT, BUILT_PAGE, GtkWidget)

GtkWidget *hut_built_page_new (HutSession *session);
/* (transfer none) */
HutBuiltArea *hut_built_page_get_area (HutBuiltPage *self);

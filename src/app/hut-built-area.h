/* src/app/hut-built-area.h: the enclosure in space, to be turned by pointer and keys.
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Actions "built.zoom-in", "built.zoom-out", "built.zoom-fit". A drag turns the view, with Shift or
 * the middle button it moves it; so do the arrow keys. What is in sight is made when it is drawn,
 * so off screen nothing is. */
#pragma once
#include "app/hut-session.h"
#include "draw/hut-built.h"
#include <gtk/gtk.h>

#define HUT_TYPE_BUILT_AREA (hut_built_area_get_type ())
G_DECLARE_FINAL_TYPE (HutBuiltArea, hut_built_area, HUT, BUILT_AREA, GtkWidget)

void hut_built_area_set_session (HutBuiltArea *self, HutSession *session);
void hut_built_area_set_pose (HutBuiltArea *self, const HutBuiltPose *pose);
/* What it looks from. */
HutBuiltView hut_built_area_get_view (HutBuiltArea *self);

/* src/app/hut-opening-icon.h: a small drawing of an opening, all of them at one scale.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "design/hut-design.h"
#include <gtk/gtk.h>

#define HUT_TYPE_OPENING_ICON (hut_opening_icon_get_type ())
G_DECLARE_FINAL_TYPE (HutOpeningIcon, hut_opening_icon, HUT, OPENING_ICON, GtkWidget)

/* @opening: copied */
GtkWidget *hut_opening_icon_new (const HutOpening *opening);

/* src/app/hut-extra-view.h: a plate that the user draws, as it will be cut.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "design/hut-design.h"
#include <gtk/gtk.h>

#define HUT_TYPE_EXTRA_VIEW (hut_extra_view_get_type ())
G_DECLARE_FINAL_TYPE (HutExtraView, hut_extra_view, HUT, EXTRA_VIEW, GtkWidget)

/* @extra: (nullable): copied */
void hut_extra_view_set_extra (HutExtraView *self, const HutExtra *extra);

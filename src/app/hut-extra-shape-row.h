/* src/app/hut-extra-shape-row.h: the numbers of one rectangle or hole of a plate.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "app/hut-session-extras.h"
#include <gtk/gtk.h>

#define HUT_TYPE_EXTRA_SHAPE_ROW (hut_extra_shape_row_get_type ())
G_DECLARE_FINAL_TYPE (HutExtraShapeRow, hut_extra_shape_row, HUT, EXTRA_SHAPE_ROW, GtkWidget)

GtkWidget *hut_extra_shape_row_new (HutSession *session,
                                    const char *extra,
                                    HutExtraShapeKind kind,
                                    guint index);

/* src/app/hut-canvas.h: the flat view as a widget: zoom, pan, select, move, size, drop.
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Properties:
 *   "session"         HutSession, set at construction
 *   "scale"           double, read only: px per mm
 *   "snap"            gboolean: stops at centre lines, webs and other items; default TRUE
 *   "show-machine", "show-splices", "show-dimensions", "show-legend"   gboolean, default TRUE
 *   "show-grid"       gboolean, default FALSE
 *   "units"           HutUnits: what lengths are shown in
 * Signals:
 *   "activate-item"   (const char *item): Enter or a double click on an opening or window
 * Actions: "canvas.zoom-in", "canvas.zoom-out", "canvas.zoom-fit", "canvas.zoom-selection",
 *   "canvas.delete", "canvas.duplicate", "canvas.next", "canvas.previous", "canvas.unselect" */
#pragma once
#include "app/hut-session.h"
#include <gtk/gtk.h>

#define HUT_TYPE_CANVAS (hut_canvas_get_type ())
G_DECLARE_FINAL_TYPE (HutCanvas, hut_canvas, HUT, CANVAS, GtkWidget)

GtkWidget *hut_canvas_new (HutSession *session);
double hut_canvas_get_scale (HutCanvas *self);

/* Brings a finding's place to the middle, near enough to see what it is about. Does nothing for a
 * place without a panel. */
void hut_canvas_show_place (HutCanvas *self, const HutPlace *place);
/* Moves the view just as far as it takes to see the opening or window. */
void hut_canvas_show_item (HutCanvas *self, const char *item);

/**
 * hut_canvas_locate:
 * @at: a point of the panel's frame, mm
 * @x: (out): in the canvas' coordinates, px
 * @y: (out): in the canvas' coordinates, px
 *
 * Returns: FALSE when the enclosure has no such panel
 */
gboolean hut_canvas_locate (HutCanvas *self, HutPanelId panel, HutPoint at, double *x, double *y);

/* src/draw/hut-flat.h: the flat view: all panels unfolded, drawn with Cairo. Shared by screen and files.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "checks/hut-finding.h"
#include <cairo.h>

/* Where each panel lies in the unfolded drawing (mm, v up): base panels around the bottom, the lid's
 * around its top, to the right of the base. */
typedef struct
{
  guint panel_count;
  HutPoint *at; /* per assembly panel: place of its (0,0) */
  HutRect bounds;
} HutFlatLayout;

HutFlatLayout *hut_flat_layout_new (const HutAssembly *assembly) G_GNUC_WARN_UNUSED_RESULT;
void hut_flat_layout_free (HutFlatLayout *self);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (HutFlatLayout, hut_flat_layout_free)

/* From drawing to pixels: x = pan_x + u * scale, y = pan_y - v * scale. */
typedef struct
{
  double scale_px_per_mm;
  double pan_x_px, pan_y_px;
} HutFlatView;

/* The view that shows all of @drawing in the middle of the area, @border_px free on each side. */
HutFlatView hut_flat_view_fit (HutRect drawing, double width_px, double height_px, double border_px);
/* Index of the panel under a pixel and the point in its frame, or -1. */
int hut_flat_pick_panel (const HutFlatLayout *layout, const HutAssembly *assembly, const HutFlatView *view, double x_px, double y_px, HutPoint *at);
/* Id of the opening or window under a pixel, smallest first; NULL if none. Lent by the assembly. */
const char *hut_flat_pick_item (const HutFlatLayout *layout, const HutAssembly *assembly, const HutFlatView *view, double x_px, double y_px, double reach_px);

/* A guide line that snapping shows, in a panel's frame. */
typedef struct
{
  guint panel;
  gboolean vertical;
  double at_mm;
} HutGuide;

typedef struct
{
  gboolean dark;
  gboolean high_contrast;
  gboolean show_machine, show_splices, show_dimensions;
  const char *selected;           /* item id or NULL */
  int selected_finding;           /* index or -1 */
  const HutGuide *guides;
  guint guide_count;
  HutTranslate translate;         /* or NULL */
} HutFlatStyle;

/* Draws the whole view on @cr; @findings may be NULL, the rest not. Nothing is kept. */
void hut_flat_draw (cairo_t *cr, const HutAssembly *assembly, const HutPartSet *parts, const GPtrArray *findings, const HutFlatLayout *layout, const HutFlatView *view, const HutFlatStyle *style, double width_px, double height_px);

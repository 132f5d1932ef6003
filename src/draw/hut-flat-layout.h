/* src/draw/hut-flat-layout.h: where the panels lie in the flat view, and what is under a pixel.
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The box is unfolded so that no panel is turned: each lies upright in its own frame, as seen from
 * outside. Left and right stand beside the front, the lid over the base, the top over the front,
 * the bottom under it. Where base and lid both have walls, the backs take the free corners beside
 * top and bottom; where there is one row of walls only, the back stands beside the right:
 *
 *           +------+-------+                          +------+
 *           | top  | back  |        lid               | top  |
 *    +------+------+-------+                   +------+------+-------+------+
 *    | left | front| right |                   | left | front| right | back |
 *    +------+------+-------+   - the seam -    +------+------+-------+------+
 *    | left | front| right |                          |bottom|
 *    +------+------+-------+                          +------+
 *           |bottom| back  |        base
 *           +------+-------+
 *
 * Invariants: no two panels overlap; a panel that is missing moves no other one by more than the
 * room that its whole row or column gives up; the same assembly gives the same layout. */
#pragma once
#include "assembly/hut-assembly.h"

/* Where each panel lies in the drawing (mm, v up). */
typedef struct
{
  guint panel_count;
  HutPoint *at;   /* per assembly panel: place of its (0,0) */
  HutRect bounds; /* of all panels; empty when there are none */
  double gap_mm;  /* between neighbours, for captions and sizes */
} HutFlatLayout;

/**
 * hut_flat_layout_new:
 * @assembly: may be one that is not whole: then the layout is empty
 *
 * Returns: (transfer full)
 */
HutFlatLayout *hut_flat_layout_new (const HutAssembly *assembly) G_GNUC_WARN_UNUSED_RESULT;
void hut_flat_layout_free (HutFlatLayout *self);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (HutFlatLayout, hut_flat_layout_free)

/* The rectangle of a panel in the drawing, mm. */
HutRect
hut_flat_layout_panel_rect (const HutFlatLayout *self, const HutAssembly *assembly, guint panel);

/* From drawing to pixels: x = pan_x + u * scale, y = pan_y - v * scale. */
typedef struct
{
  double scale_px_per_mm;
  double pan_x_px, pan_y_px;
} HutFlatView;

/**
 * hut_flat_view_fit:
 * @drawing: what shall be seen, mm; an empty one gives a scale of 1
 * @border_px: free on all sides
 *
 * Returns: the view that shows @drawing as large as possible in the middle
 */
HutFlatView
hut_flat_view_fit (HutRect drawing, double width_px, double height_px, double border_px);
/* The pixel of a point of a panel's frame. */
void hut_flat_view_to_px (const HutFlatView *self,
                          const HutFlatLayout *layout,
                          guint panel,
                          HutPoint at,
                          double *x_px,
                          double *y_px);
/* The point of a panel's frame under a pixel, also beyond the panel's border. */
HutPoint hut_flat_view_to_panel (const HutFlatView *self,
                                 const HutFlatLayout *layout,
                                 guint panel,
                                 double x_px,
                                 double y_px);

/* Index of the panel under a pixel and the point in its frame, or -1 with @at untouched. */
int hut_flat_pick_panel (const HutFlatLayout *layout,
                         const HutAssembly *assembly,
                         const HutFlatView *view,
                         double x_px,
                         double y_px,
                         HutPoint *at);
/* Id of the opening or window under a pixel, or within @reach_px of it, smallest first; NULL if
 * none. Lent by the assembly. */
const char *hut_flat_pick_item (const HutFlatLayout *layout,
                                const HutAssembly *assembly,
                                const HutFlatView *view,
                                double x_px,
                                double y_px,
                                double reach_px);

/**
 * hut_flat_next_item:
 * @assembly: an assembly
 * @item: (nullable): where to go on from
 * @forward: to the next or to the one before
 *
 * Order: panel by panel as the assembly lists them, on each from top to bottom, then left to right.
 *
 * Returns: (nullable) (transfer none): the neighbour's id, the first (last) one for NULL, NULL at
 * the end
 */
const char *hut_flat_next_item (const HutAssembly *assembly, const char *item, gboolean forward);

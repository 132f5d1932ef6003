/* src/draw/hut-flat-selection.h: the selected item with handles and distances, and snap guides.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "draw/hut-flat-scene.h"

/* Corners of the selection's frame. */
typedef enum
{
  HUT_HANDLE_NONE,
  HUT_HANDLE_LOWER_LEFT,
  HUT_HANDLE_LOWER_RIGHT,
  HUT_HANDLE_UPPER_RIGHT,
  HUT_HANDLE_UPPER_LEFT,
} HutHandle;

/* A thin frame round style->hovered. */
void hut_flat_hover_draw (const HutFlatScene *scene);
/* Frame, handles and, if the style wants them, distances of style->selected. */
void hut_flat_selection_draw (const HutFlatScene *scene);
/* The style's guides across their panels. */
void hut_flat_guides_draw (const HutFlatScene *scene);

/* TRUE when the item has a size that its handles change: all but patterns. */
gboolean hut_flat_item_has_handles (const HutAssembly *assembly, const char *item);
/* The handle of @item (nullable) that is under a pixel. */
HutHandle hut_flat_pick_handle (const HutFlatLayout *layout,
                                const HutAssembly *assembly,
                                const HutFlatView *view,
                                const char *item,
                                double x_px,
                                double y_px);

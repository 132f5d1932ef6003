/* src/draw/hut-flat-scene.h: what the pieces of the flat view are drawn from.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "draw/hut-flat.h"
#include "draw/hut-ink.h"

/* A rectangle on the page, px; (x, y) its upper left corner. */
typedef struct
{
  double x, y, width, height;
} HutPxRect;

/* All lent, for the time of one drawing. */
typedef struct
{
  HutInk *ink;
  const HutAssembly *assembly;
  const HutPartSet *parts;   /* or NULL */
  const GPtrArray *findings; /* or NULL */
  const HutFlatLayout *layout;
  HutFlatView view;
  const HutFlatStyle *style;
  GArray *labels; /* HutPxRect of the texts so far; NULL: none is minded */
} HutFlatScene;

/* Where a rectangle of a panel's frame is on the page. */
HutPxRect hut_flat_scene_rect (const HutFlatScene *self, guint panel, HutRect rect);
/* TRUE when any of it, or of @border_px around it, is visible. */
gboolean hut_flat_scene_sees (const HutFlatScene *self, HutPxRect rect, double border_px);
/* A line from one point of a panel to another, with the current pattern and colour. */
void hut_flat_scene_stroke_line (const HutFlatScene *self, guint panel, HutPoint from, HutPoint to);
/* A rectangle, with the current pattern and colour. */
void hut_flat_scene_stroke_rect (const HutFlatScene *self, HutPxRect rect);
/* Takes the room of a text, unless an earlier one has some of it. Texts that matter more come first. */
gboolean hut_flat_scene_claim (const HutFlatScene *self, HutPxRect box);

/* src/draw/hut-snap.h: where a thing that is moved over a panel likes to stop.
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Each axis is looked at by itself. Stops, the nearest one within reach wins, ties in this order:
 * the panel's centre line; the distance from the joint or the free edge that the checks ask for;
 * the centre of another item; an edge level with an edge of another item. */
#pragma once
#include "draw/hut-flat.h"

typedef enum
{
  HUT_SNAP_NONE, /* only rounded to the step */
  HUT_SNAP_CENTRE_LINE,
  HUT_SNAP_WEB,
  HUT_SNAP_ITEM_CENTRE,
  HUT_SNAP_ITEM_EDGE,
} HutSnapKind;

typedef struct
{
  guint panel;
  const char *item; /* what is moved, so that it does not stop at itself; NULL for a new one */
  HutRect bounds;   /* its outline about its middle, mm: u0 < 0 < u1 as a rule */
  double reach_mm;  /* 0 suspends all stops */
  double step_mm;   /* free positions are rounded to it; 0 leaves them */
} HutSnapQuery;

typedef struct
{
  HutPoint at; /* mm, panel frame */
  HutSnapKind u_kind, v_kind;
  HutGuide guides[2];
  guint guide_count;
} HutSnap;

/* @wanted: where the middle would be without snapping, mm */
void hut_snap_find (const HutAssembly *assembly,
                    const HutSnapQuery *query,
                    HutPoint wanted,
                    HutSnap *snap);

/* Distance of an opening from an edge of its panel with which the checks are content, mm: the
 * joint's depth and room behind the finger roots, or the smallest web of the stock at a free edge.
 */
double hut_snap_edge_web_mm (const HutPanel *panel, HutEdge edge);
/* The roundest step that is not more than half a pixel: 1, 0.5, 0.1, 0.05 or 0.01 mm. */
double hut_snap_step_mm (double scale_px_per_mm);
/* Bounds of an opening or window about its middle, mm; FALSE for an unknown @item. */
gboolean hut_snap_item_bounds (const HutAssembly *assembly, const char *item, HutRect *bounds);
HutRect hut_snap_opening_bounds (const HutOpening *opening);

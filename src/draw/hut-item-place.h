/* src/draw/hut-item-place.h: a place for what nobody has pointed at: openings and hardware.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "draw/hut-free-place.h"

/* What an item covers of the face that it is mounted on, about its (0,0), mm: cuts, flange and solid
 * bodies in front. */
HutRect hut_item_place_bounds (const HutItem *item);

/**
 * hut_place_find:
 * @bounds: what is placed, about its middle, mm
 * @preferred: index of the panel that is worked on, or -1
 * @panel: (out): index
 * @at: (out caller-allocates): mm, panel frame
 *
 * A place that meets nothing, on @preferred if that has one, else on the first panel that has; else
 * the middle of @preferred or the first: then findings say what it meets.
 *
 * Returns: FALSE when there is no panel
 */
gboolean hut_place_find (const HutAssembly *assembly,
                         HutRect bounds,
                         int preferred,
                         guint *panel,
                         HutPoint *at);

/**
 * hut_item_place_find:
 * @preferred: index of the panel that is worked on, or -1
 * @panel: (out): index
 * @at: (out caller-allocates): of its (0,0), mm, panel frame
 *
 * An item on one panel gets what hut_place_find () gives. One across the hinge line or the seam gets a place along it where no other such item is: hinges near the ends first, what
 * lies across the seam in the middle first.
 *
 * Returns: FALSE when there is no panel, or no line that it could lie across
 */
gboolean hut_item_place_find (const HutAssembly *assembly,
                              const HutItem *item,
                              int preferred,
                              guint *panel,
                              HutPoint *at);

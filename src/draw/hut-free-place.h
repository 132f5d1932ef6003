/* src/draw/hut-free-place.h: a place on a panel where an opening meets nothing.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "assembly/hut-assembly.h"

/**
 * hut_free_place_find:
 * @panel: index
 * @bounds: the opening about its middle, mm
 * @at: (out caller-allocates): where its middle can be, mm, panel frame
 *
 * Looks on a grid round the middle of the panel for the place nearest to it where @bounds keeps the
 * smallest web from joints, free edges, other openings, and windows with their frames.
 *
 * Returns: FALSE when there is none; then @at is the middle of the panel
 */
gboolean
hut_free_place_find (const HutAssembly *assembly, guint panel, HutRect bounds, HutPoint *at);

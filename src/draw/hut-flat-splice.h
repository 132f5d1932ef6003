/* src/draw/hut-flat-splice.h: where a panel is split, the straps behind it, and the hinge line.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "draw/hut-flat-scene.h"

/* The real fingers of each splice in the splice pattern, straps as hidden edges, both with labels
 * where they fit. */
void hut_flat_splice_draw (const HutFlatScene *scene, guint panel);
/* The hinge line on panels that lie in it; a crossed circle where it is seen end on. */
void hut_flat_hinge_draw (const HutFlatScene *scene, guint panel);

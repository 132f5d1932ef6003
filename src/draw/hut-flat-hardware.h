/* src/draw/hut-flat-hardware.h: hardware in the flat view: bodies, pockets, face plates.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "draw/hut-flat-scene.h"

/* What stands before the panel with solid lines, what is behind it with hidden ones; pockets. */
void hut_flat_hardware_draw (const HutFlatScene *scene, guint panel);

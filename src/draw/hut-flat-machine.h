/* src/draw/hut-flat-machine.h: the machine and its motion, seen through a panel.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "draw/hut-flat-scene.h"

/* Shadows of all bodies on the panel, clipped to it: static ones and moving ones where they were
 * measured in thin solid lines, how far they get in the line of moving parts, keep-outs dotted and
 * hatched. */
void hut_flat_machine_draw (const HutFlatScene *scene, guint panel);
/* Names of the bodies, each in a corner of its shadow where it meets no other text; to be drawn
 * when all else is, so that no line runs through them. */
void hut_flat_machine_names_draw (const HutFlatScene *scene, guint panel);

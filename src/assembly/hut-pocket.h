/* src/assembly/hut-pocket.h: relief pockets, where a panel is thicker than an item can hold.
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The rule (common practice, no source): a panel within the item's thickness range needs none. A
 * thicker one is bored from the hidden face, as deep as its thickest reading is over the floor; the
 * floor is HUT_POCKET_RESERVE_MM under what the item holds. The pocket is round and takes the owner's
 * next bit over what stands in it. */
#pragma once
#include "assembly/hut-assembly.h"

/* A floor is so much thinner than the most that the item holds, mm: what a hand-set depth stop
 * misses. */
#define HUT_POCKET_RESERVE_MM 0.3
/* Wall of a socket round a nut; room round a body; claws of a snap-in part: all on each side, mm. */
#define HUT_POCKET_SOCKET_MM 3.0
#define HUT_POCKET_BODY_MM 1.0
#define HUT_POCKET_CLAWS_MM 2.0
/* A pocket's rim stays so far from edges, finger joints, straps, blocks and other pockets, mm. */
#define HUT_POCKET_KEEP_MM 6.0

/* The least floor of a pocket in that stock, mm, whatever holds in it. */
double hut_pocket_floor_must_mm (const HutStock *stock, const HutItem *item);

/* Breadth of the widest cutout of an item, corner to corner, mm; 0 when it has none. */
double hut_pocket_cutout_mm (const HutItem *item);

/* @bits_mm: (element-type double): the owner's bits */
void hut_pocket_find_need (const HutItem *item,
                           const HutStock *stock,
                           const GArray *bits_mm,
                           HutPocketNeed *need);

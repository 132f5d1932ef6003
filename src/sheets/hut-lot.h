/* src/sheets/hut-lot.h: numbers drawn by lot, the same on any machine.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include <glib.h>

/* SplitMix64. Source: G. Steele, D. Lea, C. Flood, "Fast splittable pseudorandom number generators",
 * OOPSLA 2014, figure 12 with the finisher of variant 13. Seeded by the work, never by the clock. */
typedef struct
{
  guint64 state;
} HutLot;

/* The same seed gives the same draws. */
void hut_lot_init (HutLot *self, guint64 seed);
/* 64 even bits. */
guint64 hut_lot_next (HutLot *self);
/* 0 <= result < @limit; 0 for a limit of 0. */
guint hut_lot_below (HutLot *self, guint limit);
/* 0 <= result < 1, ratio. */
double hut_lot_ratio (HutLot *self);

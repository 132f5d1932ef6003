/* src/sheets/hut-lot.c: numbers drawn by lot, the same on any machine.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-sheets"
#include "config.h"
#include "sheets/hut-lot.h"

/* Increment and multipliers of SplitMix64: see the header. */
#define GOLDEN_GAMMA G_GUINT64_CONSTANT (0x9e3779b97f4a7c15)
#define MIX_1 G_GUINT64_CONSTANT (0xbf58476d1ce4e5b9)
#define MIX_2 G_GUINT64_CONSTANT (0x94d049bb133111eb)

void
hut_lot_init (HutLot *self,
              guint64 seed)
{
  self->state = seed;
}

guint64
hut_lot_next (HutLot *self)
{
  guint64 z = (self->state += GOLDEN_GAMMA);

  z = (z ^ (z >> 30)) * MIX_1;
  z = (z ^ (z >> 27)) * MIX_2;
  return z ^ (z >> 31);
}

guint
hut_lot_below (HutLot *self,
               guint limit)
{
  /* The upper 32 bits, scaled: the bias is below limit / 2^32. */
  return (guint) (((hut_lot_next (self) >> 32) * limit) >> 32);
}

double
hut_lot_ratio (HutLot *self)
{
  return (double) (hut_lot_next (self) >> 11) * 0x1p-53;
}

/* tests/hut-random.h: random numbers that are the same on any machine for the same seed.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include <glib.h>

/* xoshiro256** by D. Blackman and S. Vigna (public domain), written from its description. */
typedef struct
{
  guint64 state[4];
} HutRandom;

void hut_random_init (HutRandom *self, guint64 seed);
guint64 hut_random_next (HutRandom *self);
/* 0 <= result < limit; limit > 0. */
guint hut_random_below (HutRandom *self, guint limit);
gboolean hut_random_chance (HutRandom *self, double share_ratio);
/* Even over [least, most]. */
double hut_random_between (HutRandom *self, double least, double most);
/* Over [least, most], small values as likely as large ones per octave; least > 0. */
double hut_random_octaves (HutRandom *self, double least, double most);
/* A number as people type it: mostly multiples of 0.01, sometimes of 0.5, now and then any double. */
double hut_random_typed (HutRandom *self, double least, double most);

/* How many designs a property test goes over: HUT_SEEDS from the environment, or @otherwise, but no
 * more than HUT_SEEDS_MOST. */
guint64 hut_random_seed_count (guint64 otherwise);
/* The first of them: HUT_FIRST_SEED, or 1. */
guint64 hut_random_first_seed (void);

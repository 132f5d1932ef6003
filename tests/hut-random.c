/* tests/hut-random.c: random numbers that are the same on any machine for the same seed.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "config.h"
#include "hut-random.h"
#include <math.h>

static guint64
rotate_left (guint64 value,
             int by)
{
  return (value << by) | (value >> (64 - by));
}

/* The state comes from splitmix64 (S. Vigna), so that seeds 0, 1, 2 ... are far apart. */
void
hut_random_init (HutRandom *self,
                 guint64 seed)
{
  for (int i = 0; i < 4; i++)
    {
      guint64 z = (seed += G_GUINT64_CONSTANT (0x9e3779b97f4a7c15));

      z = (z ^ (z >> 30)) * G_GUINT64_CONSTANT (0xbf58476d1ce4e5b9);
      z = (z ^ (z >> 27)) * G_GUINT64_CONSTANT (0x94d049bb133111eb);
      self->state[i] = z ^ (z >> 31);
    }
}

guint64
hut_random_next (HutRandom *self)
{
  guint64 *s = self->state;
  const guint64 result = rotate_left (s[1] * 5, 7) * 9;
  const guint64 t = s[1] << 17;

  s[2] ^= s[0];
  s[3] ^= s[1];
  s[1] ^= s[2];
  s[0] ^= s[3];
  s[2] ^= t;
  s[3] = rotate_left (s[3], 45);
  return result;
}

guint
hut_random_below (HutRandom *self,
                  guint limit)
{
  return (guint) ((hut_random_next (self) >> 32) % limit);
}

/* 53 random bits in [0, 1). */
static double
unit_ratio (HutRandom *self)
{
  return (double) (hut_random_next (self) >> 11) * 0x1p-53;
}

gboolean
hut_random_chance (HutRandom *self,
                   double share_ratio)
{
  return unit_ratio (self) < share_ratio;
}

double
hut_random_between (HutRandom *self,
                    double least,
                    double most)
{
  return least + (most - least) * unit_ratio (self);
}

/* Without exp() and log(), whose last bit differs between C libraries: a random octave, then an
 * even place in it. */
double
hut_random_octaves (HutRandom *self,
                    double least,
                    double most)
{
  guint octaves = 1;

  while (ldexp (least, (int) octaves) < most)
    octaves++;

  const double from = ldexp (least, (int) hut_random_below (self, octaves));

  return hut_random_between (self, from, MIN (2.0 * from, most));
}

double
hut_random_typed (HutRandom *self,
                  double least,
                  double most)
{
  const double value = hut_random_between (self, least, most);
  const guint kind = hut_random_below (self, 10);

  if (kind == 0)
    return value;

  const double per_unit = kind <= 3 ? 2.0 : 100.0;
  const double typed = round (value * per_unit) / per_unit;

  return CLAMP (typed, least, most);
}

static guint64
from_environment (const char *name,
                  guint64 otherwise)
{
  const char *text = g_getenv (name);

  return text != NULL ? g_ascii_strtoull (text, NULL, 10) : otherwise;
}

guint64
hut_random_seed_count (guint64 otherwise)
{
  return from_environment ("HUT_SEEDS",
                           MIN (otherwise, from_environment ("HUT_SEEDS_MOST", G_MAXUINT64)));
}

guint64
hut_random_first_seed (void)
{
  return from_environment ("HUT_FIRST_SEED", 1);
}

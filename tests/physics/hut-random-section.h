/* tests/physics/hut-random-section.h: random sections of boxes with gaps, lips and things inside.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "hut-random.h"
#include "physics/hut-sight.h"

#define HUT_RANDOM_WALLS_MAX 24

typedef struct
{
  HutRect walls[HUT_RANDOM_WALLS_MAX];
  HutRect source;
  HutSightSection section; /* of these; valid while the struct stays where it is */
} HutRandomSection;

/* A box of 100 .. 400 mm with walls of 3 .. 18 mm. Each side may have a gap, from a hair to a hand
 * wide, and the gap a lip before or behind it. Some posts stand inside. The same for the same seed.
 * */
void hut_random_section_init (HutRandomSection *self, guint64 seed);

/* Another way to look: whether a ray from a point in a direction meets no wall, by crossing each of
 * its four edges. */
gboolean hut_ray_escapes (const HutSightSection *section, HutPoint from, HutPoint direction);

/* tests/hut-random-openings.h: random openings and windows on the panels of a random design.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "hut-random-design.h"

/* Adds what @flags ask for; @inside_mm is about the inside of @design's enclosure. */
void hut_random_add_openings (HutRandom *random,
                              HutDesign *design,
                              HutVec3 inside_mm,
                              HutRandomFlags flags);

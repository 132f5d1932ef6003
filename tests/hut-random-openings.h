/* tests/hut-random-openings.h: random openings and windows on the panels of a random design.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "hut-random-design.h"
#include "hut-random-placing.h"

/* Adds up to 8 openings and 2 windows, as the flags say; where no room is found there is none. */
void hut_random_add_openings (HutRandomPlacing *placing, HutRandomFlags flags);

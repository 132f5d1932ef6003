/* tests/hut-random-hardware.h: random hardware of the shipped catalogue on a random design.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "hut-random-placing.h"

/* Adds up to 5 pieces of hardware: items of any group, on one panel or across the hinge line or the
 * seam, mounted from either face, turned, with each way of a pocket; some that do not fit. */
void hut_random_add_hardware (HutRandomPlacing *placing);

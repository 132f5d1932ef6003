/* src/format/hut-number.h: numbers as text, whatever the locale.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include <glib.h>

#define HUT_NUMBER_SIZE 32

/* Shortest decimal that reads back as the same double; no exponent for 1e-6 .. 1e15. Returns @buffer. */
const char *hut_number_exact (char buffer[HUT_NUMBER_SIZE], double value);
/* At most @decimals decimals, trailing zeros cut, never "-0". Returns @buffer. */
const char *hut_number_fixed (char buffer[HUT_NUMBER_SIZE], double value, guint decimals);

/* src/app/hut-bits.h: the owner's flat-bottom bits as one line of text.
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * hut_readings_dup_text () writes them. */
#pragma once
#include "app/hut-units.h"

/**
 * hut_bits_parse:
 * @text: diameters parted by spaces or semicolons; none is allowed
 * @error: HUT_UNITS_ERROR_*; the message is translated and fits under a field
 *
 * Returns: (transfer full) (element-type double): mm, from thin to thick, each once; NULL on error
 */
GArray *
hut_bits_parse (const char *text, HutUnits units, GError **error) G_GNUC_WARN_UNUSED_RESULT;

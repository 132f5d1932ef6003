/* src/app/hut-readings.h: the caliper readings of a stock as one line of text.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "app/hut-units.h"

/* (transfer full): "5.95 6 6.1", in the displayed unit. */
char *hut_readings_dup_text (const GArray *readings_mm, HutUnits units) G_GNUC_WARN_UNUSED_RESULT;
/**
 * hut_readings_parse:
 * @text: numbers parted by spaces or semicolons
 * @error: HUT_UNITS_ERROR_*; the message is translated and fits under a field
 *
 * Returns: (transfer full) (element-type double): mm, at least one; NULL on error
 */
GArray *
hut_readings_parse (const char *text, HutUnits units, GError **error) G_GNUC_WARN_UNUSED_RESULT;

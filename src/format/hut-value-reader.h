/* src/format/hut-value-reader.h: the text of an attribute into a member of a struct.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "format/hut-format.h"

/**
 * hut_value_read:
 * @format: the attribute's row
 * @text: (nullable): its text; NULL when it is absent
 * @self: the struct
 *
 * Returns: (transfer full) (nullable): what is wrong after the attribute's name, "is -3; allowed: 0.1
 *   to 100 mm"; NULL when the member is set
 */
char *hut_value_read (const HutAttributeFormat *format,
                      const char *text,
                      gpointer self) G_GNUC_WARN_UNUSED_RESULT;

/* What the attribute may be: "0.1 to 100 mm", "yes, no". (transfer full) */
char *hut_value_dup_allowed (const HutAttributeFormat *format) G_GNUC_WARN_UNUSED_RESULT;

/* Text from outside, fit for a message: short, on one line. (transfer full) */
char *hut_value_dup_shown (const char *text) G_GNUC_WARN_UNUSED_RESULT;

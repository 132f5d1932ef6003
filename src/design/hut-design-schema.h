/* src/design/hut-design-schema.h: the RELAX NG schema as a second net under the reader.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "format/hut-schema.h"

/* design.rng, ready for any number of documents. (transfer full) */
xmlRelaxNG *hut_design_schema_new (void) G_GNUC_WARN_UNUSED_RESULT;

/**
 * hut_design_schema_check:
 * @schema: from hut_design_schema_new ()
 * @document: a parsed file
 * @name: what messages call it
 * @error: HUT_FILE_ERROR_VALUE with the line and the validator's own words
 *
 * Returns: TRUE when @document follows design.rng
 */
gboolean hut_design_schema_check (xmlRelaxNG *schema,
                                  xmlDoc *document,
                                  const char *name,
                                  GError **error);

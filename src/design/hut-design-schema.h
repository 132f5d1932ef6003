/* src/design/hut-design-schema.h: the RELAX NG schema as a second net under the reader.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include <glib.h>
#include <libxml/tree.h>

/**
 * hut_design_schema_check:
 * @document: a parsed file
 * @name: what messages call it
 * @error: HUT_FILE_ERROR_VALUE with the line and the validator's own words
 *
 * Returns: TRUE when @document follows design.rng
 */
gboolean hut_design_schema_check (xmlDoc *document, const char *name, GError **error);

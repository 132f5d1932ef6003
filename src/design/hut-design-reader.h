/* src/design/hut-design-reader.h: an XML tree, checked word by word, into a design.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "design/hut-design-format.h"
#include <libxml/tree.h>

/**
 * hut_design_read:
 * @root: root element of a parsed file
 * @name: what messages call the file
 * @error: HUT_FILE_ERROR_VERSION or HUT_FILE_ERROR_VALUE, with the line
 *
 * Returns: (transfer full): a design within all ranges of the format's tables, or NULL
 */
HutDesign *hut_design_read (xmlNode *root,
                            const char *name,
                            GError **error) G_GNUC_WARN_UNUSED_RESULT;

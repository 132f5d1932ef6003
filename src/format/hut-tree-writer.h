/* src/format/hut-tree-writer.h: structs as canonical XML.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "format/hut-format.h"

/**
 * hut_tree_to_xml:
 * @format: table of the root element
 * @ns: namespace of all elements
 * @self: the struct that @format describes
 *
 * Returns: (transfer full): a whole document, the same for equal structs on any machine
 */
char *hut_tree_to_xml (const HutElementFormat *format,
                       const char *ns,
                       gconstpointer self) G_GNUC_WARN_UNUSED_RESULT;

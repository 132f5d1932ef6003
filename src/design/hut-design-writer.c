/* src/design/hut-design-writer.c: a design as canonical XML.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-design"
#include "config.h"
#include "design/hut-design-format.h"
#include "design/hut-file.h"
#include "format/hut-tree-writer.h"

char *
hut_design_to_xml (const HutDesign *self)
{
  g_return_val_if_fail (self != NULL, NULL);

  return hut_tree_to_xml (&hut_design_format, HUT_DESIGN_NS, self);
}

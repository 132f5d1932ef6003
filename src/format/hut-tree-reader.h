/* src/format/hut-tree-reader.h: an XML tree, checked word by word, into structs.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "format/hut-format.h"
#include "format/hut-id-book.h"
#include <libxml/tree.h>

/* What a walk over a tree goes by. */
typedef struct
{
  const char *name; /* what messages call the file */
  const char *ns;   /* of all its elements */
  HutIdBook *book;  /* (transfer none) */
  GError **error;   /* HUT_FILE_ERROR_VALUE: "NAME:LINE: what is wrong; allowed: ..." */
} HutTreeReader;

/**
 * hut_tree_reader_read:
 * @node: an element; its name is not looked at
 * @format: the table that it must follow
 * @target: a struct as `new_item` gives it, or empty
 *
 * Returns: FALSE on error; then some of @target's members are set
 */
gboolean hut_tree_reader_read (const HutTreeReader *self,
                               xmlNode *node,
                               const HutElementFormat *format,
                               gpointer target);

/* To be asked after the last element: FALSE when something names an id that nothing has. */
gboolean hut_tree_reader_finish (const HutTreeReader *self);

/* TRUE for an element of that name in the reader's namespace. */
gboolean hut_tree_reader_is_named (const HutTreeReader *self, const xmlNode *node, const char *name);

/* The text of an attribute: NULL when absent. (transfer full) */
char *hut_tree_dup_attribute (xmlNode *node, const char *name) G_GNUC_WARN_UNUSED_RESULT;

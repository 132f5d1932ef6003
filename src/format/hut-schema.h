/* src/format/hut-schema.h: the RELAX NG schemas that are compiled in.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include <glib.h>
#include <libxml/relaxng.h>

G_DEFINE_AUTOPTR_CLEANUP_FUNC (xmlRelaxNG, xmlRelaxNGFree)

/* @file: "design.rng". (transfer full): freed with xmlRelaxNGFree () */
xmlRelaxNG *hut_schema_new (const char *file) G_GNUC_WARN_UNUSED_RESULT;

/**
 * hut_schema_check:
 * @file: name of the schema, for the message
 * @name: what messages call the document's file
 * @error: HUT_FILE_ERROR_VALUE: the first line that the schema does not allow
 */
gboolean hut_schema_check (xmlRelaxNG *schema,
                           const char *file,
                           xmlDoc *document,
                           const char *name,
                           GError **error);

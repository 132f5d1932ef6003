/* src/design/hut-file.h: designs as XML (.hutch).
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "design/hut-design.h"
#include "format/hut-file-error.h"

#define HUT_DESIGN_NS "urn:hutchwright:design:1"
#define HUT_DESIGN_VERSION 3

/**
 * hut_design_from_xml:
 * @data: (array length=size): the bytes of a file
 * @name: what messages call the file
 * @error: HUT_FILE_ERROR_*; the message reads "NAME:LINE: what is wrong; what is allowed"
 *
 * Returns: (transfer full): NULL on error
 */
HutDesign *hut_design_from_xml (const char *data,
                                gsize size,
                                const char *name,
                                GError **error) G_GNUC_WARN_UNUSED_RESULT;
/* (transfer full): canonical text, the same for equal designs on any machine. */
char *hut_design_to_xml (const HutDesign *self) G_GNUC_WARN_UNUSED_RESULT;

/* Reads @path and hands it to hut_design_from_xml (); HUT_FILE_ERROR_IO when it cannot be read. */
HutDesign *hut_design_load (const char *path, GError **error) G_GNUC_WARN_UNUSED_RESULT;
/* Atomic and durable: the old file stays whole until the new one is on disk. */
gboolean hut_design_save (const HutDesign *self, const char *path, GError **error);

/* Shipped examples. Names: NULL-terminated, static. */
const char *const *hut_example_names (void);
/* (transfer none): one line for a menu, translatable (N_). */
const char *hut_example_title (const char *name);
HutDesign *hut_example_load (const char *name, GError **error) G_GNUC_WARN_UNUSED_RESULT;

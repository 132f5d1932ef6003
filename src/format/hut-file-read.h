/* src/format/hut-file-read.h: the bytes of a file from outside.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include <glib.h>

/**
 * hut_file_read:
 * @path: a regular file: reading a pipe or a device could last for ever
 * @name: what messages call it
 * @bytes: gets what is in it; of a file that is too large for hut_xml_parse () a little more than that
 * @error: HUT_FILE_ERROR_IO
 */
gboolean hut_file_read (const char *path,
                        const char *name,
                        GByteArray *bytes,
                        GError **error);

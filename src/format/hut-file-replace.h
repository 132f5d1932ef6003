/* src/format/hut-file-replace.h: files written so that nothing ever costs the old one.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include <glib.h>

/**
 * hut_file_replace:
 * @path: where to; a symbolic link is followed and stays a link
 * @data: (array length=size): what it shall hold
 * @error: HUT_FILE_ERROR_IO
 *
 * Writes a new file beside the old one, brings it to the disk, then puts it in the old one's place. The
 * old file's permissions are kept. On error the old file is as it was and nothing is left beside it.
 */
gboolean hut_file_replace (const char *path, const char *data, gsize size, GError **error);

/* src/format/hut-file-error.h: what can be wrong with a file from outside.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include <glib.h>

typedef enum
{
  HUT_FILE_ERROR_IO,      /* cannot be read or written: exit status 3 */
  HUT_FILE_ERROR_SYNTAX,  /* not XML, empty, truncated, has a DOCTYPE, too large: status 2 */
  HUT_FILE_ERROR_VERSION, /* written by a newer program: status 2 */
  HUT_FILE_ERROR_VALUE,   /* against the schema, or a value out of its range: status 2 */
} HutFileError;

#define HUT_FILE_ERROR (hut_file_error_quark ())
GQuark hut_file_error_quark (void);

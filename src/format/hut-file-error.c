/* src/format/hut-file-error.c: what can be wrong with a file from outside.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-format"
#include "config.h"
#include "format/hut-file-error.h"

G_DEFINE_QUARK (hut-file-error-quark, hut_file_error)

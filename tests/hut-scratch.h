/* tests/hut-scratch.h: a folder of its own for tests that write files.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include <glib.h>

/* (transfer full): a new folder below the system's one for temporary files. */
char *hut_scratch_new (void);
/* Removes it with all that is in it. (transfer full) */
void hut_scratch_free (char *self);

/* Removes @path with all that is in it; links are not followed. */
void hut_scratch_remove_tree (const char *path);

/* (transfer full): all that is below @folder, sorted, one a line: "name=content" of a file and
 * "name/" of a folder. Names that begin with a dot too. */
char *hut_scratch_list (const char *folder);
/* Writes @folder/@name; makes @folder if it is missing. */
void hut_scratch_put (const char *folder, const char *name, const char *content);

/* src/export/hut-set-folder.h: a set of files that appears whole or not at all.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "export/hut-export.h"
#include "export/hut-manifest.h"

/* Who is told how far the writing is, and who may stop it. */
typedef struct
{
  HutExportProgress progress; /* or NULL */
  gpointer user_data;
  GCancellable *cancellable;  /* or NULL */
} HutSetWatch;

/* Tells the watcher (never over 1); FALSE with G_IO_ERROR_CANCELLED when it wants to stop. */
gboolean hut_set_watch_tell (const HutSetWatch *self,
                             double fraction_ratio,
                             const char *file,
                             GError **error);

/**
 * hut_set_folder_check:
 * @folder: where a set shall be
 * @error: HUT_EXPORT_ERROR_IO when it is not a folder, its parent does not exist, or it holds
 *   anything that its manifest does not list
 *
 * Returns: TRUE when a set may be written there; nothing is touched
 */
gboolean hut_set_folder_check (const char *folder, GError **error);

/**
 * hut_set_folder_write:
 * @folder: where the set shall be, see hut_set_folder_check ()
 * @files: (element-type HutSetFile): all files, manifest included
 * @from_ratio: how far the whole work is already; this part goes from there to 1
 * @watch: who is told
 * @error: HUT_EXPORT_ERROR_IO, or G_IO_ERROR_CANCELLED
 *
 * The files are written to a new folder beside @folder and flushed to the disk; then the folder
 * takes its place in one step. On error an earlier set is whole and the new folder is gone.
 */
gboolean hut_set_folder_write (const char *folder,
                               const GPtrArray *files,
                               double from_ratio,
                               const HutSetWatch *watch,
                               GError **error);

/* Swaps two folders by three renames, for file systems that cannot do it in one; the first two are
 * undone when a later one fails. Sets errno. */
gboolean hut_set_folder_swap_in_steps (const char *a, const char *b);

/* src/export/hut-set-folder.c: a set of files that appears whole or not at all.
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Invariants: nothing that is not in the manifest of an earlier set is ever removed; the folder's
 * name always leads to a whole set (with hut_set_folder_swap_in_steps () for two renames to none);
 * on error the new folder is removed. Not promised: that a new folder is gone after a power cut. */
#define _GNU_SOURCE /* renameat2 () */
#define G_LOG_DOMAIN "hut-export"
#include "config.h"
#include "export/hut-set-folder.h"
#include <errno.h>
#include <fcntl.h>
#include <glib/gstdio.h>
#include <stdio.h>
#include <stdlib.h>
#include <sys/stat.h>
#include <unistd.h>

#define FOLDER_MODE 0777 /* less the umask */
#define FILE_MODE 0666
#define NAME_TRIES 100 /* own choice: names hold the process id, so the first ones are free */

typedef enum
{
  TARGET_FREE,    /* does not exist, or an empty folder: rename () takes its place */
  TARGET_EARLIER, /* an earlier set and nothing else */
} TargetState;

gboolean
hut_set_watch_tell (const HutSetWatch *self,
                    double fraction_ratio,
                    const char *file,
                    GError **error)
{
  if (self->progress != NULL)
    self->progress (MIN (fraction_ratio, 1.0), file, self->user_data);
  return !g_cancellable_set_error_if_cancelled (self->cancellable, error);
}

static gboolean
fail_errno (int code,
            const char *doing,
            const char *path,
            GError **error)
{
  g_autofree char *shown = g_filename_display_name (path);

  g_set_error (error, HUT_EXPORT_ERROR, HUT_EXPORT_ERROR_IO, "cannot %s “%s”: %s", doing, shown,
               g_strerror (code));
  return FALSE;
}

/* ---- the target ------------------------------------------------------------------------------ */

/* (transfer full): the real path, links resolved; the last part need not exist. */
static char *
dup_real_path (const char *folder,
               GError **error)
{
  g_autofree char *trimmed = g_strdup (folder);
  struct stat info;

  for (gsize n = strlen (trimmed); n > 1 && trimmed[n - 1] == '/'; n--)
    trimmed[n - 1] = '\0';

  if (lstat (trimmed, &info) == 0)
    {
      g_autofree char *whole = realpath (trimmed, NULL);

      if (whole == NULL)
        fail_errno (errno, "follow the link", trimmed, error);
      return g_steal_pointer (&whole);
    }
  if (errno != ENOENT)
    {
      fail_errno (errno, "look at", trimmed, error);
      return NULL;
    }

  g_autofree char *parent = g_path_get_dirname (trimmed);
  g_autofree char *name = g_path_get_basename (trimmed);
  g_autofree char *real_parent = realpath (parent, NULL);

  if (real_parent == NULL)
    {
      fail_errno (errno, "make a folder in", parent, error);
      return NULL;
    }
  return g_build_filename (real_parent, name, NULL);
}

static GStrv
read_listed (const char *path)
{
  g_autofree char *manifest = g_build_filename (path, HUT_MANIFEST_NAME, NULL);
  g_autofree char *data = NULL;
  gsize size = 0;

  /* A manifest that cannot be read lists nothing: then any file in the folder is a strange one. */
  if (!g_file_get_contents (manifest, &data, &size, NULL))
    return NULL;
  return hut_manifest_read_names (data, size);
}

static gboolean
is_plain_file (const char *path,
               const char *name)
{
  g_autofree char *file = g_build_filename (path, name, NULL);
  struct stat info;

  return lstat (file, &info) == 0 && S_ISREG (info.st_mode);
}

static gboolean
refuse_entry (const char *path,
              const char *name,
              GError **error)
{
  g_autofree char *shown = g_filename_display_name (path);
  g_autofree char *shown_name = g_filename_display_name (name);

  g_set_error (error, HUT_EXPORT_ERROR, HUT_EXPORT_ERROR_IO,
               "“%s” holds “%s”, which is no part of an earlier set; nothing was written: "
               "choose a new or an empty folder",
               shown, shown_name);
  return FALSE;
}

/* Looks at a folder that exists. */
static gboolean
inspect_folder (const char *path,
                TargetState *state,
                GError **error)
{
  g_autoptr(GDir) dir = g_dir_open (path, 0, NULL);
  g_auto(GStrv) listed = read_listed (path);
  const char *name;

  if (dir == NULL)
    return fail_errno (errno, "look into", path, error);
  if (access (path, W_OK | X_OK) != 0)
    return fail_errno (errno, "write to", path, error);
  *state = TARGET_FREE;
  while ((name = g_dir_read_name (dir)) != NULL)
    {
      const gboolean ours
          = listed != NULL && is_plain_file (path, name)
            && (g_str_equal (name, HUT_MANIFEST_NAME)
                || g_strv_contains ((const char *const *) listed, name));

      if (!ours)
        return refuse_entry (path, name, error);
      *state = TARGET_EARLIER;
    }
  return TRUE;
}

static gboolean
inspect (const char *path,
         TargetState *state,
         GError **error)
{
  struct stat info;

  *state = TARGET_FREE;
  if (lstat (path, &info) != 0)
    return errno == ENOENT ? TRUE : fail_errno (errno, "look at", path, error);
  if (!S_ISDIR (info.st_mode))
    {
      g_autofree char *shown = g_filename_display_name (path);

      g_set_error (error, HUT_EXPORT_ERROR, HUT_EXPORT_ERROR_IO,
                   "“%s” is not a folder; nothing was written: choose a new or an empty folder",
                   shown);
      return FALSE;
    }
  return inspect_folder (path, state, error);
}

gboolean
hut_set_folder_check (const char *folder,
                      GError **error)
{
  g_return_val_if_fail (folder != NULL, FALSE);

  TargetState state;
  g_autofree char *path = dup_real_path (folder, error);

  return path != NULL && inspect (path, &state, error);
}

/* ---- the new folder -------------------------------------------------------------------------- */

/* (transfer full): a hidden name beside @path. */
static char *
dup_name_beside (const char *path,
                 guint number)
{
  g_autofree char *parent = g_path_get_dirname (path);
  g_autofree char *name = g_strdup_printf (".hutchwright-%ld-%u", (long) getpid (), number);

  return g_build_filename (parent, name, NULL);
}

static char *
make_folder_beside (const char *path,
                    GError **error)
{
  for (guint i = 0; i < NAME_TRIES; i++)
    {
      g_autofree char *beside = dup_name_beside (path, i);

      if (mkdir (beside, FOLDER_MODE) == 0)
        return g_steal_pointer (&beside);
      if (errno != EEXIST)
        break;
    }

  g_autofree char *parent = g_path_get_dirname (path);

  fail_errno (errno, "make a folder in", parent, error);
  return NULL;
}

/* Removes the named files and the folder; what else is in it stays, and the folder with it. */
static void
remove_set (const char *path,
            const char *const *names)
{
  for (guint i = 0; names != NULL && names[i] != NULL; i++)
    {
      g_autofree char *file = g_build_filename (path, names[i], NULL);

      if (strchr (names[i], '/') == NULL)
        unlink (file);
    }

  g_autofree char *manifest = g_build_filename (path, HUT_MANIFEST_NAME, NULL);

  unlink (manifest);
  rmdir (path);
}

static gboolean
write_all (int fd,
           GBytes *bytes)
{
  gsize size;
  const char *at = g_bytes_get_data (bytes, &size);

  while (size > 0)
    {
      const ssize_t written = write (fd, at, size);

      if (written < 0 && errno != EINTR)
        return FALSE;
      if (written > 0)
        {
          at += written;
          size -= (gsize) written;
        }
    }
  return TRUE;
}

static gboolean
write_file (const char *path,
            const HutSetFile *file,
            GError **error)
{
  g_autofree char *name = g_build_filename (path, file->name, NULL);
  const int fd = open (name, O_WRONLY | O_CREAT | O_EXCL | O_CLOEXEC, FILE_MODE);

  if (fd < 0)
    return fail_errno (errno, "make", file->name, error);

  int code = write_all (fd, file->bytes) && fsync (fd) == 0 ? 0 : errno;

  if (close (fd) != 0 && code == 0)
    code = errno;
  return code == 0 || fail_errno (code, "write", file->name, error);
}

/* Makes a change of names durable. Some file systems cannot: then it is as good as it gets. */
static void
sync_folder (const char *path)
{
  const int fd = open (path, O_RDONLY | O_DIRECTORY | O_CLOEXEC);

  if (fd < 0)
    return;
  fsync (fd);
  close (fd);
}

/* ---- taking the place ------------------------------------------------------------------------ */

gboolean
hut_set_folder_swap_in_steps (const char *a,
                              const char *b)
{
  g_return_val_if_fail (a != NULL && b != NULL, FALSE);

  g_autofree char *aside = NULL;
  struct stat info;

  for (guint i = 0; i < NAME_TRIES; i++)
    {
      g_free (aside);
      aside = dup_name_beside (b, i);
      if (lstat (aside, &info) != 0)
        break;
    }
  if (rename (b, aside) != 0)
    return FALSE;
  if (rename (a, b) != 0)
    {
      const int code = errno;

      rename (aside, b);
      errno = code;
      return FALSE;
    }
  if (rename (aside, a) != 0)
    {
      const int code = errno;

      rename (b, a);
      rename (aside, b);
      errno = code;
      return FALSE;
    }
  return TRUE;
}

static gboolean
swap (const char *a,
      const char *b)
{
  if (renameat2 (AT_FDCWD, a, AT_FDCWD, b, RENAME_EXCHANGE) == 0)
    return TRUE;
  if (errno != ENOSYS && errno != EINVAL)
    return FALSE;
  return hut_set_folder_swap_in_steps (a, b);
}

static gboolean
fail_place (int code,
            const char *path,
            GError **error)
{
  g_autofree char *shown = g_filename_display_name (path);

  if (code == EBUSY || code == EXDEV)
    g_set_error (error, HUT_EXPORT_ERROR, HUT_EXPORT_ERROR_IO,
                 "“%s” is the top of a disk or in use and cannot be replaced as a whole: "
                 "choose a new folder inside it",
                 shown);
  else
    fail_errno (code, "put the set in the place of", path, error);
  return FALSE;
}

/* Puts the new folder in the target's place; on success @fresh no longer exists, on failure the
 * target is as it was and @fresh is still there. */
static gboolean
take_place (const char *fresh,
            const char *path,
            GError **error)
{
  TargetState state;
  struct stat info;

  /* Looked at again, since writing took a while. */
  if (!inspect (path, &state, error))
    return FALSE;
  if (stat (path, &info) == 0)
    chmod (fresh, info.st_mode & 07777); /* who could read the old folder can read the new one */
  if (state == TARGET_FREE)
    return rename (fresh, path) == 0 || fail_place (errno, path, error);

  if (!swap (fresh, path))
    return fail_place (errno, path, error);

  /* What came into the old folder in the last moment must not be lost: then swap back. */
  if (!inspect (fresh, &state, error))
    {
      swap (fresh, path);
      return FALSE;
    }

  g_auto(GStrv) listed = read_listed (fresh);

  remove_set (fresh, (const char *const *) listed);
  return TRUE;
}

static gboolean
fill_and_place (const char *fresh,
                const char *path,
                const GPtrArray *files,
                double from_ratio,
                const HutSetWatch *watch,
                GError **error)
{
  for (guint i = 0; i < files->len; i++)
    {
      const HutSetFile *file = g_ptr_array_index (files, i);

      if (!hut_set_watch_tell (watch, from_ratio + (1.0 - from_ratio) * i / files->len, file->name,
                               error)
          || !write_file (fresh, file, error))
        return FALSE;
    }
  if (g_cancellable_set_error_if_cancelled (watch->cancellable, error))
    return FALSE;
  sync_folder (fresh);
  return take_place (fresh, path, error);
}

gboolean
hut_set_folder_write (const char *folder,
                      const GPtrArray *files,
                      double from_ratio,
                      const HutSetWatch *watch,
                      GError **error)
{
  g_return_val_if_fail (folder != NULL && files != NULL && watch != NULL, FALSE);

  TargetState state;
  g_autofree char *path = dup_real_path (folder, error);

  if (path == NULL || !inspect (path, &state, error))
    return FALSE;

  g_autofree char *fresh = make_folder_beside (path, error);

  if (fresh == NULL)
    return FALSE;
  if (!fill_and_place (fresh, path, files, from_ratio, watch, error))
    {
      g_autoptr(GPtrArray) names = g_ptr_array_new ();

      for (guint i = 0; i < files->len; i++)
        g_ptr_array_add (names, ((HutSetFile *) g_ptr_array_index (files, i))->name);
      g_ptr_array_add (names, NULL);
      remove_set (fresh, (const char *const *) names->pdata);
      return FALSE;
    }

  g_autofree char *parent = g_path_get_dirname (path);

  sync_folder (parent);
  if (watch->progress != NULL)
    watch->progress (1.0, HUT_MANIFEST_NAME, watch->user_data);
  return TRUE;
}

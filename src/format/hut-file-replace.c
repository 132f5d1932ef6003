/* src/format/hut-file-replace.c: files written so that nothing ever costs the old one.
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Order: write beside the target, fsync, rename, fsync the folder. rename () is atomic (POSIX), so
 * at any moment the name means either the whole old or the whole new file. */
#define G_LOG_DOMAIN "hut-format"
#include "config.h"
#include "format/hut-file-replace.h"
#include "format/hut-file-error.h"
#include <errno.h>
#include <fcntl.h>
#include <glib/gstdio.h>
#include <sys/stat.h>
#include <unistd.h>

/* As many links in a row as Linux follows: path_resolution(7). */
#define LINKS_MAX 40
#define NEW_FILE_MODE 0666 /* less the umask */
#define MODE_BITS 07777

static gboolean
fail (const char *path,
      const char *what,
      int code,
      GError **error)
{
  g_autofree char *shown = g_filename_display_name (path);

  g_set_error (error, HUT_FILE_ERROR, HUT_FILE_ERROR_IO, "%s: %s: %s", shown, what,
               g_strerror (code));
  return FALSE;
}

/* The file that @path means, whether it exists yet or not; NULL after too many links. */
static char *
dup_target (const char *path)
{
  g_autofree char *target = g_strdup (path);

  for (int i = 0; i < LINKS_MAX; i++)
    {
      g_autofree char *link = g_file_read_link (target, NULL);

      if (link == NULL)
        return g_steal_pointer (&target);

      g_autofree char *folder = g_path_get_dirname (target);

      g_free (target);
      target = g_path_is_absolute (link) ? g_strdup (link) : g_build_filename (folder, link, NULL);
    }
  errno = ELOOP;
  return NULL;
}

static gboolean
write_all (int fd,
           const char *data,
           gsize size)
{
  while (size > 0)
    {
      const gssize n = write (fd, data, size);

      if (n < 0 && errno == EINTR)
        continue;
      if (n <= 0)
        {
          errno = n == 0 ? EIO : errno;
          return FALSE;
        }
      data += n;
      size -= (gsize) n;
    }
  return TRUE;
}

/* Who owns the old file is kept where the system lets us; its permissions always. */
static gboolean
keep_permissions (int fd,
                  const struct stat *old)
{
  if (fchown (fd, old->st_uid, old->st_gid) != 0 && errno != EPERM)
    return FALSE;
  return fchmod (fd, old->st_mode & MODE_BITS) == 0;
}

/* Closes @fd in any case; errno is that of the first failure. */
static gboolean
fill_and_close (int fd,
                const char *data,
                gsize size,
                const struct stat *old)
{
  gboolean ok = write_all (fd, data, size) && (old == NULL || keep_permissions (fd, old))
                && fsync (fd) == 0;
  const int code = errno;

  if (close (fd) != 0 && ok)
    return FALSE;
  errno = code;
  return ok;
}

/* The new name is on the disk once its folder is. The new file itself already is and stands in its
 * place: a file system that cannot do this is no reason to call the save failed. */
static void
sync_folder (const char *folder)
{
  const int fd = open (folder, O_RDONLY | O_DIRECTORY | O_CLOEXEC);

  if (fd < 0)
    return;
  if (fsync (fd) != 0)
    g_debug ("%s: %s", folder, g_strerror (errno));
  close (fd);
}

gboolean
hut_file_replace (const char *path,
                  const char *data,
                  gsize size,
                  GError **error)
{
  g_return_val_if_fail (path != NULL && (data != NULL || size == 0), FALSE);

  g_autofree char *target = dup_target (path);

  if (target == NULL)
    return fail (path, "cannot be written", errno, error);

  struct stat old;
  const gboolean exists = stat (target, &old) == 0;

  if (exists && !S_ISREG (old.st_mode))
    return fail (path, "is not a regular file", S_ISDIR (old.st_mode) ? EISDIR : EINVAL, error);
  if (exists && faccessat (AT_FDCWD, target, W_OK, AT_EACCESS) != 0)
    return fail (path, "cannot be written", errno, error);

  g_autofree char *folder = g_path_get_dirname (target);
  g_autofree char *base = g_path_get_basename (target);
  g_autofree char *hidden = g_strdup_printf (".%s.XXXXXX", base);
  g_autofree char *temporary = g_build_filename (folder, hidden, NULL);
  const int fd = g_mkstemp_full (temporary, O_WRONLY | O_CLOEXEC, NEW_FILE_MODE);

  if (fd < 0)
    return fail (path, "cannot be written", errno, error);
  if (!fill_and_close (fd, data, size, exists ? &old : NULL) || g_rename (temporary, target) != 0)
    {
      const int code = errno;

      g_unlink (temporary);
      return fail (path, "cannot be written", code, error);
    }
  sync_folder (folder);
  return TRUE;
}

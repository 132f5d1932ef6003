/* src/app/hut-autosave.c: what was not saved survives a crash.
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Beside each recovery file NAME.hutch lies NAME.origin. It holds where the design came from, and
 * its writer keeps it locked (flock) as long as it runs; the kernel lets go of the lock when the
 * process ends, however it ends. So a file whose lock can be had was left behind. */
#define G_LOG_DOMAIN "hut-app"
#include "config.h"
#include "app/hut-autosave.h"
#include "design/hut-file.h"
#include <errno.h>
#include <fcntl.h>
#include <glib/gi18n.h>
#include <glib/gstdio.h>
#include <string.h>
#include <sys/file.h>
#include <unistd.h>

#define DESIGN_SUFFIX ".hutch"
#define ORIGIN_SUFFIX ".origin"
#define GROUP "recovery"
#define KEY_URI "uri"
#define FOLDER_MODE 0700
#define FILE_MODE 0600
#define NO_FILE (-1)
#define NS_PER_US 1000

struct _HutAutosave
{
  GObject parent_instance;

  HutSession *session;
  char *path;    /* of the recovery file, or NULL before the first write */
  int origin_fd; /* open and locked while the file is ours */
  guint timeout;
  gboolean failed; /* and was told */
};

static guint failed_signal;

G_DEFINE_TYPE (HutAutosave, hut_autosave, G_TYPE_OBJECT)

static char *
dup_folder (void)
{
  return g_build_filename (g_get_user_state_dir (), "hutchwright", "recovery", NULL);
}

static char *
dup_origin_path (const char *path)
{
  g_autofree char *stem = g_strndup (path, strlen (path) - strlen (DESIGN_SUFFIX));

  return g_strconcat (stem, ORIGIN_SUFFIX, NULL);
}

static gboolean
write_all (int fd,
           const char *text,
           gsize size)
{
  while (size > 0)
    {
      const gssize written = write (fd, text, size);

      if (written < 0 && errno == EINTR)
        continue;
      if (written <= 0)
        return FALSE;
      text += written;
      size -= (gsize)written;
    }
  return TRUE;
}

static gboolean
write_origin (HutAutosave *self)
{
  const char *origin = hut_session_get_path (self->session);
  g_autofree char *absolute = origin != NULL ? g_canonicalize_filename (origin, NULL) : NULL;
  g_autofree char *uri = absolute != NULL ? g_filename_to_uri (absolute, NULL, NULL) : NULL;
  g_autoptr (GKeyFile) keys = g_key_file_new ();
  g_autofree char *text = NULL;
  gsize size = 0;

  g_key_file_set_string (keys, GROUP, KEY_URI, uri != NULL ? uri : "");
  text = g_key_file_to_data (keys, &size, NULL);
  return ftruncate (self->origin_fd, 0) == 0 && lseek (self->origin_fd, 0, SEEK_SET) == 0
         && write_all (self->origin_fd, text, size);
}

/* Takes a name that is ours from now on. */
static gboolean
claim (HutAutosave *self)
{
  g_autofree char *folder = dup_folder ();
  g_autofree char *name = g_uuid_string_random ();
  g_autofree char *stem = g_build_filename (folder, name, NULL);
  g_autofree char *origin_path = g_strconcat (stem, ORIGIN_SUFFIX, NULL);
  int fd;

  if (self->path != NULL)
    return TRUE;
  if (g_mkdir_with_parents (folder, FOLDER_MODE) != 0)
    return FALSE;
  fd = g_open (origin_path, O_RDWR | O_CREAT | O_EXCL | O_CLOEXEC, FILE_MODE);
  if (fd < 0)
    return FALSE;
  if (flock (fd, LOCK_EX | LOCK_NB) != 0)
    {
      close (fd);
      g_unlink (origin_path);
      return FALSE;
    }
  self->origin_fd = fd;
  self->path = g_strconcat (stem, DESIGN_SUFFIX, NULL);
  return TRUE;
}

static void
tell_failure (HutAutosave *self,
              const char *message)
{
  if (!self->failed)
    g_signal_emit (self, failed_signal, 0, message);
  self->failed = TRUE;
}

static gboolean
on_timeout (gpointer user_data)
{
  HutAutosave *self = user_data;

  self->timeout = 0;
  hut_autosave_write (self);
  return G_SOURCE_REMOVE;
}

static void
on_session_changed (HutAutosave *self)
{
  if (!hut_session_is_modified (self->session))
    hut_autosave_discard (self);
  else if (self->timeout == 0)
    self->timeout = g_timeout_add_seconds (HUT_AUTOSAVE_S, on_timeout, self);
}

static void
hut_autosave_dispose (GObject *object)
{
  HutAutosave *self = HUT_AUTOSAVE (object);

  g_clear_handle_id (&self->timeout, g_source_remove);
  if (self->origin_fd != NO_FILE)
    close (self->origin_fd);
  self->origin_fd = NO_FILE;
  g_clear_pointer (&self->path, g_free);
  g_clear_object (&self->session);
  G_OBJECT_CLASS (hut_autosave_parent_class)->dispose (object);
}

static void
hut_autosave_class_init (HutAutosaveClass *class)
{
  G_OBJECT_CLASS (class)->dispose = hut_autosave_dispose;
  failed_signal = g_signal_new ("failed", G_TYPE_FROM_CLASS (class), G_SIGNAL_RUN_LAST, 0, NULL,
                                NULL, NULL, G_TYPE_NONE, 1, G_TYPE_STRING);
}

static void
hut_autosave_init (HutAutosave *self)
{
  self->origin_fd = NO_FILE;
}

HutAutosave *
hut_autosave_new (HutSession *session)
{
  g_return_val_if_fail (HUT_IS_SESSION (session), NULL);

  HutAutosave *self = g_object_new (HUT_TYPE_AUTOSAVE, NULL);

  self->session = g_object_ref (session);
  g_signal_connect_object (session, "derived", G_CALLBACK (on_session_changed), self,
                           G_CONNECT_SWAPPED);
  g_signal_connect_object (session, "file-changed", G_CALLBACK (on_session_changed), self,
                           G_CONNECT_SWAPPED);
  return self;
}

gboolean
hut_autosave_write (HutAutosave *self)
{
  g_return_val_if_fail (HUT_IS_AUTOSAVE (self), FALSE);

  g_autoptr (GError) error = NULL;

  g_clear_handle_id (&self->timeout, g_source_remove);
  if (!hut_session_is_modified (self->session))
    return TRUE;
  if (!claim (self) || !write_origin (self))
    {
      tell_failure (self, g_strerror (errno));
      return FALSE;
    }
  if (!hut_design_save (hut_session_get_design (self->session), self->path, &error))
    {
      tell_failure (self, error->message);
      return FALSE;
    }
  self->failed = FALSE;
  return TRUE;
}

void
hut_autosave_discard (HutAutosave *self)
{
  g_return_if_fail (HUT_IS_AUTOSAVE (self));

  g_autofree char *origin_path = NULL;

  g_clear_handle_id (&self->timeout, g_source_remove);
  if (self->path == NULL)
    return;
  origin_path = dup_origin_path (self->path);
  g_unlink (self->path);
  g_unlink (origin_path);
  close (self->origin_fd);
  self->origin_fd = NO_FILE;
  g_clear_pointer (&self->path, g_free);
}

/* ---- recovery -------------------------------------------------------------------------------- */

void
hut_recovery_free (HutRecovery *self)
{
  if (self == NULL)
    return;
  g_free (self->path);
  g_free (self->origin);
  g_free (self);
}

/* TRUE when no running program holds the lock. A file without its origin was cut short: left
 * behind. */
static gboolean
is_left_behind (const char *origin_path)
{
  const int fd = g_open (origin_path, O_RDONLY | O_CLOEXEC, 0);
  gboolean free_to_take;

  if (fd < 0)
    return TRUE;
  free_to_take = flock (fd, LOCK_SH | LOCK_NB) == 0;
  close (fd);
  return free_to_take;
}

static char *
dup_origin (const char *origin_path)
{
  g_autoptr (GKeyFile) keys = g_key_file_new ();
  g_autofree char *uri = NULL;

  if (!g_key_file_load_from_file (keys, origin_path, G_KEY_FILE_NONE, NULL))
    return NULL;
  uri = g_key_file_get_string (keys, GROUP, KEY_URI, NULL);
  return uri != NULL && *uri != '\0' ? g_filename_from_uri (uri, NULL, NULL) : NULL;
}

static int
compare_newest_first (gconstpointer a,
                      gconstpointer b)
{
  const HutRecovery *const *first = a, *const *second = b;

  if ((*first)->written_us != (*second)->written_us)
    return (*first)->written_us > (*second)->written_us ? -1 : 1;
  return strcmp ((*first)->path, (*second)->path);
}

GPtrArray *
hut_recovery_list (void)
{
  g_autofree char *folder = dup_folder ();
  g_autoptr (GDir) dir = g_dir_open (folder, 0, NULL); /* no folder: nothing was ever left behind */
  GPtrArray *list = g_ptr_array_new_with_free_func ((GDestroyNotify)hut_recovery_free);
  const char *name;

  while (dir != NULL && (name = g_dir_read_name (dir)) != NULL)
    {
      g_autofree char *path = g_build_filename (folder, name, NULL);
      g_autofree char *origin_path = NULL;
      GStatBuf info;
      HutRecovery *recovery;

      if (!g_str_has_suffix (name, DESIGN_SUFFIX) || g_stat (path, &info) != 0)
        continue;
      origin_path = dup_origin_path (path);
      if (!is_left_behind (origin_path))
        continue;
      recovery = g_new0 (HutRecovery, 1);
      recovery->origin = dup_origin (origin_path);
      recovery->written_us
          = info.st_mtim.tv_sec * G_USEC_PER_SEC + info.st_mtim.tv_nsec / NS_PER_US;
      recovery->path = g_steal_pointer (&path);
      g_ptr_array_add (list, recovery);
    }
  g_ptr_array_sort (list, compare_newest_first);
  return list;
}

void
hut_recovery_discard (const HutRecovery *self)
{
  g_return_if_fail (self != NULL);

  g_autofree char *origin_path = dup_origin_path (self->path);

  g_unlink (self->path);
  g_unlink (origin_path);
}

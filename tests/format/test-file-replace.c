/* tests/format/test-file-replace.c: nothing costs the last saved file.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "format/hut-file-replace.h"
#include "format/hut-file-error.h"
#include "format/scratch.h"
#include <errno.h>
#include <signal.h>
#include <sys/mount.h>
#include <sys/resource.h>
#include <sys/stat.h>
#include <sys/wait.h>
#include <unistd.h>

#define NOBODY 65534 /* a user without rights, by custom */
#define LARGE_BYTES 100000

static void
replace (const char *path,
         const char *text)
{
  g_autoptr(GError) error = NULL;

  assert_ok (hut_file_replace (path, text, strlen (text), &error), error);
}

/* Asserts that writing fails, and returns the message. (transfer full) */
static char *
dup_failure (const char *path,
             const char *data,
             gsize size)
{
  g_autoptr(GError) error = NULL;

  assert_false (hut_file_replace (path, data, size, &error));
  assert_true (g_error_matches (error, HUT_FILE_ERROR, HUT_FILE_ERROR_IO));
  assert_true (g_str_has_prefix (error->message, path));
  return g_strdup (error->message);
}

static guint
mode_of (const char *path)
{
  struct stat status;

  assert_int_equal (stat (path, &status), 0);
  return status.st_mode & 07777;
}

static void
new_file_is_written_whole_with_the_usual_mode (void **state)
{
  g_autofree char *path = g_build_filename (*state, "a.hutch", NULL);
  const mode_t mask = umask (0027);

  replace (path, "new");
  umask (mask);
  assert_file (path, "new");
  assert_int_equal (mode_of (path), 0640);
  assert_int_equal (count_files (*state), 1);
}

static void
old_file_is_replaced_and_keeps_its_mode (void **state)
{
  g_autofree char *path = g_build_filename (*state, "a.hutch", NULL);

  put_file (path, "a long old text");
  g_chmod (path, 0604);
  replace (path, "new");
  assert_file (path, "new");
  assert_int_equal (mode_of (path), 0604);
  assert_int_equal (count_files (*state), 1);
}

static void
symbolic_link_stays_one_and_its_target_is_replaced (void **state)
{
  g_autofree char *target = g_build_filename (*state, "target.hutch", NULL);
  g_autofree char *link = g_build_filename (*state, "link.hutch", NULL);
  g_autofree char *second = g_build_filename (*state, "second.hutch", NULL);

  put_file (target, "old");
  assert_int_equal (symlink ("target.hutch", link), 0); /* relative to the link's own folder */
  assert_int_equal (symlink (link, second), 0);
  replace (second, "new");
  assert_file (target, "new");
  assert_true (g_file_test (link, G_FILE_TEST_IS_SYMLINK));
  assert_true (g_file_test (second, G_FILE_TEST_IS_SYMLINK));
}

static void
link_to_nothing_makes_its_target (void **state)
{
  g_autofree char *target = g_build_filename (*state, "target.hutch", NULL);
  g_autofree char *link = g_build_filename (*state, "link.hutch", NULL);

  assert_int_equal (symlink (target, link), 0);
  replace (link, "new");
  assert_file (target, "new");
  assert_true (g_file_test (link, G_FILE_TEST_IS_SYMLINK));
}

static void
ring_of_links_is_refused (void **state)
{
  g_autofree char *a = g_build_filename (*state, "a", NULL);
  g_autofree char *b = g_build_filename (*state, "b", NULL);
  g_autofree char *message = NULL;

  assert_int_equal (symlink (a, b), 0);
  assert_int_equal (symlink (b, a), 0);
  message = dup_failure (a, "new", 3);
  assert_int_equal (count_files (*state), 2);
}

static void
what_is_no_file_is_refused (void **state)
{
  g_autofree char *folder = g_build_filename (*state, "folder", NULL);
  g_autofree char *pipe = g_build_filename (*state, "pipe", NULL);
  g_autofree char *nowhere = g_build_filename (*state, "nowhere", "a.hutch", NULL);
  const char *const paths[] = { folder, pipe, nowhere, "/dev/full" };

  assert_int_equal (g_mkdir (folder, 0700), 0);
  assert_int_equal (mkfifo (pipe, 0600), 0);
  for (gsize i = 0; i < G_N_ELEMENTS (paths); i++)
    {
      g_autofree char *message = dup_failure (paths[i], "new", 3);

      assert_true (strlen (message) > strlen (paths[i]));
    }
  assert_int_equal (count_files (*state), 2);
}

/* As on a full disk, but without one: the kernel refuses to let the new file grow. */
static void
file_that_cannot_be_written_leaves_the_old_one (void **state)
{
  g_autofree char *path = g_build_filename (*state, "a.hutch", NULL);
  g_autofree char *data = g_strnfill (LARGE_BYTES, 'x');
  g_autofree char *message = NULL;
  struct rlimit old, tight;
  void (*old_handler) (int) = signal (SIGXFSZ, SIG_IGN);

  put_file (path, "old");
  assert_int_equal (getrlimit (RLIMIT_FSIZE, &old), 0);
  tight = old;
  tight.rlim_cur = LARGE_BYTES / 2;
  assert_int_equal (setrlimit (RLIMIT_FSIZE, &tight), 0);
  message = dup_failure (path, data, LARGE_BYTES);
  assert_int_equal (setrlimit (RLIMIT_FSIZE, &old), 0);
  signal (SIGXFSZ, old_handler);
  assert_non_null (strstr (message, g_strerror (EFBIG)));
  assert_file (path, "old");
  assert_int_equal (count_files (*state), 1);
}

static void
full_disk_leaves_the_old_file (void **state)
{
  g_autofree char *folder = g_build_filename (*state, "disk", NULL);
  g_autofree char *path = g_build_filename (folder, "a.hutch", NULL);
  g_autofree char *data = g_strnfill (LARGE_BYTES, 'x');

  assert_int_equal (g_mkdir (folder, 0700), 0);
  if (mount ("hut-test", folder, "tmpfs", 0, "size=32k") != 0)
    {
      print_message ("no right to mount a small disk: %s\n", g_strerror (errno));
      skip ();
    }

  g_autoptr(GError) error = NULL;
  gboolean ok;
  guint n_files;
  g_autofree char *found = NULL;

  put_file (path, "old");
  ok = hut_file_replace (path, data, LARGE_BYTES, &error);
  n_files = count_files (folder);
  g_file_get_contents (path, &found, NULL, NULL);
  assert_int_equal (umount (folder), 0);
  assert_false (ok);
  assert_non_null (strstr (error->message, g_strerror (ENOSPC)));
  assert_string_equal (found, "old");
  assert_int_equal (n_files, 1);
}

/* Runs as a user whom permissions bind. */
static char *
dup_failure_unprivileged (const char *path)
{
  const gboolean root = geteuid () == 0;
  char *message;

  if (root)
    assert_int_equal (seteuid (NOBODY), 0);
  message = dup_failure (path, "new", 3);
  if (root)
    assert_int_equal (seteuid (0), 0);
  return message;
}

static void
folder_that_cannot_be_written_leaves_the_old_file (void **state)
{
  g_autofree char *path = g_build_filename (*state, "a.hutch", NULL);
  g_autofree char *message = NULL;

  put_file (path, "old");
  g_chmod (path, 0666);
  g_chmod (*state, 0555);
  message = dup_failure_unprivileged (path);
  g_chmod (*state, 0700);
  assert_non_null (strstr (message, g_strerror (EACCES)));
  assert_file (path, "old");
  assert_int_equal (count_files (*state), 1);
}

static void
write_protected_file_is_not_replaced (void **state)
{
  g_autofree char *path = g_build_filename (*state, "a.hutch", NULL);
  g_autofree char *message = NULL;

  put_file (path, "old");
  g_chmod (path, 0444);
  g_chmod (*state, 0777);
  message = dup_failure_unprivileged (path);
  assert_non_null (strstr (message, g_strerror (EACCES)));
  assert_file (path, "old");
  assert_int_equal (count_files (*state), 1);
}

/* A child writes two texts in turn until it is killed: then the file is one of them, whole. */
static void
killed_writer_leaves_one_whole_file (void **state)
{
  g_autofree char *path = g_build_filename (*state, "a.hutch", NULL);
  g_autofree char *one = g_strnfill (LARGE_BYTES, 'a');
  g_autofree char *other = g_strnfill (2 * LARGE_BYTES, 'b');

  replace (path, one);
  for (int i = 0; i < 20; i++)
    {
      const pid_t child = fork ();
      g_autofree char *found = NULL;

      assert_true (child >= 0);
      if (child == 0)
        for (guint n = 0;; n++)
          hut_file_replace (path, n % 2 ? one : other, strlen (n % 2 ? one : other), NULL);
      g_usleep (1000 + 700 * (gulong) i);
      kill (child, SIGKILL);
      waitpid (child, NULL, 0);
      assert_true (g_file_get_contents (path, &found, NULL, NULL));
      assert_true (strcmp (found, one) == 0 || strcmp (found, other) == 0);
    }
}

#define SCRATCH_TEST(name) cmocka_unit_test_setup_teardown (name, make_scratch, remove_scratch)

int
main (void)
{
  const struct CMUnitTest tests[] = {
    SCRATCH_TEST (new_file_is_written_whole_with_the_usual_mode),
    SCRATCH_TEST (old_file_is_replaced_and_keeps_its_mode),
    SCRATCH_TEST (symbolic_link_stays_one_and_its_target_is_replaced),
    SCRATCH_TEST (link_to_nothing_makes_its_target),
    SCRATCH_TEST (ring_of_links_is_refused),
    SCRATCH_TEST (what_is_no_file_is_refused),
    SCRATCH_TEST (file_that_cannot_be_written_leaves_the_old_one),
    SCRATCH_TEST (full_disk_leaves_the_old_file),
    SCRATCH_TEST (folder_that_cannot_be_written_leaves_the_old_file),
    SCRATCH_TEST (write_protected_file_is_not_replaced),
    SCRATCH_TEST (killed_writer_leaves_one_whole_file),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}

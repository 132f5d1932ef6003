/* tests/export/test-set-folder.c: a set of files that appears whole or not at all.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "export/hut-set-folder.h"
#include "hut-assert.h"
#include "hut-scratch.h"
#include <glib/gstdio.h>
#include <signal.h>
#include <string.h>
#include <sys/resource.h>
#include <sys/stat.h>
#include <sys/wait.h>
#include <unistd.h>

#define MANIFEST_OF_A                                                                    \
  "<manifest xmlns=\"urn:hutchwright:manifest:1\"><files><file name=\"a\"/></files></manifest>"
#define MANIFEST_OF_B                                                                    \
  "<manifest xmlns=\"urn:hutchwright:manifest:1\"><files><file name=\"b\"/></files></manifest>"
#define SET_OF_A "a=first\nmanifest.xml=" MANIFEST_OF_A "\n"
#define SET_OF_B "b=second\nmanifest.xml=" MANIFEST_OF_B "\n"

static const HutSetWatch NOBODY = { NULL, NULL, NULL };

static int
set_up (void **state)
{
  *state = hut_scratch_new ();
  return 0;
}

static int
tear_down (void **state)
{
  hut_scratch_free (*state);
  return 0;
}

static GPtrArray *
new_set (const char *name,
         const char *content,
         const char *manifest)
{
  GPtrArray *files = g_ptr_array_new_with_free_func ((GDestroyNotify) hut_set_file_free);

  g_ptr_array_add (files, hut_set_file_new (name, g_bytes_new (content, strlen (content))));
  g_ptr_array_add (files,
                   hut_set_file_new (HUT_MANIFEST_NAME, g_bytes_new (manifest, strlen (manifest))));
  return files;
}

static GPtrArray *
new_set_of_a (void)
{
  return new_set ("a", "first", MANIFEST_OF_A);
}

static GPtrArray *
new_set_of_b (void)
{
  return new_set ("b", "second", MANIFEST_OF_B);
}

/* What is below the scratch folder, hidden leftovers too, must be exactly this. */
static void
assert_all (const char *scratch,
            const char *must)
{
  g_autofree char *list = hut_scratch_list (scratch);

  assert_string_equal (list, must);
}

static char *
dup_out (const char *scratch)
{
  return g_build_filename (scratch, "out", NULL);
}

static void
write_a (const char *out)
{
  g_autoptr(GPtrArray) files = new_set_of_a ();
  g_autoptr(GError) error = NULL;

  assert_ok (hut_set_folder_write (out, files, 0.0, &NOBODY, &error), error);
}

/* Writing the set of b fails with an I/O error whose text holds @why. */
static void
assert_refused (const char *out,
                const char *why)
{
  g_autoptr(GPtrArray) files = new_set_of_b ();
  g_autoptr(GError) error = NULL;

  assert_false (hut_set_folder_write (out, files, 0.0, &NOBODY, &error));
  assert_true (g_error_matches (error, HUT_EXPORT_ERROR, HUT_EXPORT_ERROR_IO));
  if (strstr (error->message, why) == NULL)
    fail_msg ("\"%s\" does not say \"%s\"", error->message, why);
}

/* ---- what is taken --------------------------------------------------------------------------- */

static void
new_folder_holds_the_set_and_nothing_is_left_beside_it (void **state)
{
  g_autofree char *out = dup_out (*state);

  write_a (out);
  assert_all (*state, "out/\nout/a=first\nout/manifest.xml=" MANIFEST_OF_A "\n");
}

static void
empty_folder_is_replaced (void **state)
{
  g_autofree char *out = dup_out (*state);

  assert_int_equal (g_mkdir (out, 0755), 0);
  write_a (out);
  assert_all (out, SET_OF_A);
}

static void
earlier_set_is_replaced_whole (void **state)
{
  g_autofree char *out = dup_out (*state);
  g_autoptr(GPtrArray) files = new_set_of_b ();
  g_autoptr(GError) error = NULL;

  write_a (out);
  assert_ok (hut_set_folder_check (out, &error), error);
  assert_ok (hut_set_folder_write (out, files, 0.0, &NOBODY, &error), error);
  assert_all (*state, "out/\nout/b=second\nout/manifest.xml=" MANIFEST_OF_B "\n");
}

static void
earlier_set_with_a_file_missing_is_replaced (void **state)
{
  g_autofree char *out = dup_out (*state);
  g_autofree char *file = g_build_filename (out, "a", NULL);

  write_a (out);
  assert_int_equal (g_unlink (file), 0);
  write_a (out);
  assert_all (out, SET_OF_A);
}

static void
slashes_at_the_end_do_not_matter (void **state)
{
  g_autofree char *out = dup_out (*state);
  g_autofree char *with_slashes = g_strconcat (out, "//", NULL);

  write_a (with_slashes);
  write_a (with_slashes);
  assert_all (*state, "out/\nout/a=first\nout/manifest.xml=" MANIFEST_OF_A "\n");
}

static void
link_to_a_folder_stays_a_link (void **state)
{
  g_autofree char *out = dup_out (*state);
  g_autofree char *link = g_build_filename (*state, "link", NULL);

  write_a (out);
  assert_int_equal (symlink ("out", link), 0);
  write_a (link);
  assert_true (g_file_test (link, G_FILE_TEST_IS_SYMLINK));
  assert_all (out, SET_OF_A);
}

static void
new_folder_keeps_the_rights_of_the_old_one (void **state)
{
  g_autofree char *out = dup_out (*state);
  struct stat info;

  write_a (out);
  assert_int_equal (g_chmod (out, 0750), 0);
  write_a (out);
  assert_int_equal (stat (out, &info), 0);
  assert_int_equal (info.st_mode & 07777, 0750);
}

/* ---- what is refused ------------------------------------------------------------------------- */

static void
folder_with_another_file_is_refused_and_untouched (void **state)
{
  g_autofree char *out = dup_out (*state);
  g_autoptr(GError) error = NULL;

  write_a (out);
  hut_scratch_put (out, "notes.txt", "mine");
  assert_refused (out, "notes.txt");
  assert_false (hut_set_folder_check (out, &error));
  assert_non_null (strstr (error->message, "choose a new or an empty folder"));
  assert_all (*state,
              "out/\nout/a=first\nout/manifest.xml=" MANIFEST_OF_A "\nout/notes.txt=mine\n");
}

static void
folder_without_manifest_is_refused (void **state)
{
  g_autofree char *out = dup_out (*state);

  hut_scratch_put (out, "a", "mine");
  assert_refused (out, "no part of an earlier set");
  assert_all (out, "a=mine\n");
}

static void
folder_with_a_strange_manifest_is_refused (void **state)
{
  g_autofree char *out = dup_out (*state);

  hut_scratch_put (out, "manifest.xml", "<manifest/>");
  assert_refused (out, "manifest.xml");
  assert_all (out, "manifest.xml=<manifest/>\n");
}

static void
folder_in_the_place_of_a_listed_file_is_refused (void **state)
{
  g_autofree char *out = dup_out (*state);
  g_autofree char *inner = g_build_filename (out, "a", NULL);

  hut_scratch_put (out, "manifest.xml", MANIFEST_OF_A);
  hut_scratch_put (inner, "mine", "x");
  assert_refused (out, "holds “a”");
  assert_all (out, "a/\na/mine=x\nmanifest.xml=" MANIFEST_OF_A "\n");
}

static void
hidden_file_is_another_file (void **state)
{
  g_autofree char *out = dup_out (*state);

  hut_scratch_put (out, ".hidden", "mine");
  assert_refused (out, ".hidden");
}

static void
file_in_the_place_of_the_folder_is_refused (void **state)
{
  g_autofree char *out = dup_out (*state);

  hut_scratch_put (*state, "out", "mine");
  assert_refused (out, "not a folder");
  assert_all (*state, "out=mine\n");
}

static void
missing_parent_is_refused (void **state)
{
  g_autofree char *out = g_build_filename (*state, "no", "out", NULL);

  assert_refused (out, "cannot make a folder in");
  assert_all (*state, "");
}

static void
link_to_nothing_is_refused (void **state)
{
  g_autofree char *out = dup_out (*state);

  assert_int_equal (symlink ("nowhere", out), 0);
  assert_refused (out, "cannot follow the link");
}

/* The kernel's own tree takes no new folder from anybody. */
static void
place_that_takes_no_folder_is_refused (void **state)
{
  assert_refused ("/proc/hutchwright-out", "cannot make a folder in");
}

/* ---- what fails half way --------------------------------------------------------------------- */

/* A disk with room for 3 bytes a file: the write fails half way, as on a full disk. */
static void
full_disk_leaves_the_earlier_set_and_nothing_else (void **state)
{
  g_autofree char *out = dup_out (*state);
  struct rlimit before, small;

  write_a (out);
  signal (SIGXFSZ, SIG_IGN);
  assert_int_equal (getrlimit (RLIMIT_FSIZE, &before), 0);
  small = before;
  small.rlim_cur = 3;
  assert_int_equal (setrlimit (RLIMIT_FSIZE, &small), 0);
  assert_refused (out, "cannot write “b”");
  assert_int_equal (setrlimit (RLIMIT_FSIZE, &before), 0);
  assert_all (*state, "out/\nout/a=first\nout/manifest.xml=" MANIFEST_OF_A "\n");
}

/* Two files of one name, as stocks that differ by case are on some disks. */
static void
name_that_exists_already_is_not_overwritten (void **state)
{
  g_autofree char *out = dup_out (*state);
  g_autoptr(GPtrArray) files = new_set ("manifest.xml", "x", MANIFEST_OF_A);
  g_autoptr(GError) error = NULL;

  assert_false (hut_set_folder_write (out, files, 0.0, &NOBODY, &error));
  assert_true (g_error_matches (error, HUT_EXPORT_ERROR, HUT_EXPORT_ERROR_IO));
  assert_all (*state, "");
}

typedef struct
{
  GCancellable *cancellable;
  const char *stop_at;
  double last_ratio;
  guint calls;
} Watcher;

static void
watch (double fraction_ratio,
       const char *file,
       gpointer user_data)
{
  Watcher *self = user_data;

  if (fraction_ratio < self->last_ratio || fraction_ratio > 1.0)
    fail_msg ("%s goes from %g to %g", file, self->last_ratio, fraction_ratio);
  self->last_ratio = fraction_ratio;
  self->calls++;
  if (self->stop_at != NULL && g_str_equal (file, self->stop_at))
    g_cancellable_cancel (self->cancellable);
}

static void
cancelling_at_any_file_leaves_the_earlier_set_and_nothing_else (void **state)
{
  static const char *const stops[] = { "b", HUT_MANIFEST_NAME };

  for (guint i = 0; i < G_N_ELEMENTS (stops); i++)
    {
      g_autofree char *out = dup_out (*state);
      g_autoptr(GPtrArray) files = new_set_of_b ();
      g_autoptr(GCancellable) cancellable = g_cancellable_new ();
      g_autoptr(GError) error = NULL;
      Watcher watcher = { .cancellable = cancellable, .stop_at = stops[i] };
      const HutSetWatch watched = { watch, &watcher, cancellable };

      write_a (out);
      assert_false (hut_set_folder_write (out, files, 0.0, &watched, &error));
      assert_true (g_error_matches (error, G_IO_ERROR, G_IO_ERROR_CANCELLED));
      assert_all (*state, "out/\nout/a=first\nout/manifest.xml=" MANIFEST_OF_A "\n");
    }
}

static void
progress_goes_from_where_it_was_to_one (void **state)
{
  g_autofree char *out = dup_out (*state);
  g_autoptr(GPtrArray) files = new_set_of_a ();
  g_autoptr(GError) error = NULL;
  Watcher watcher = { .last_ratio = 0.8 };
  const HutSetWatch watched = { watch, &watcher, NULL };

  assert_ok (hut_set_folder_write (out, files, 0.8, &watched, &error), error);
  assert_int_equal (watcher.calls, 3);
  assert_near (watcher.last_ratio, 1.0, 0.0);
}

static void
put_in_between (double fraction_ratio,
                const char *file,
                gpointer user_data)
{
  if (g_str_equal (file, HUT_MANIFEST_NAME) && fraction_ratio < 1.0)
    hut_scratch_put (user_data, "late.txt", "mine");
}

/* Somebody saves into the folder while the set is being written. */
static void
file_that_comes_in_between_is_not_lost (void **state)
{
  g_autofree char *out = dup_out (*state);
  g_autoptr(GPtrArray) files = new_set_of_b ();
  g_autoptr(GError) error = NULL;
  const HutSetWatch watched = { put_in_between, out, NULL };

  write_a (out);
  assert_false (hut_set_folder_write (out, files, 0.0, &watched, &error));
  assert_true (g_error_matches (error, HUT_EXPORT_ERROR, HUT_EXPORT_ERROR_IO));
  assert_all (*state, "out/\nout/a=first\nout/late.txt=mine\nout/manifest.xml=" MANIFEST_OF_A "\n");
}

static void
die (double fraction_ratio,
     const char *file,
     gpointer user_data)
{
  if (g_str_equal (file, HUT_MANIFEST_NAME))
    raise (SIGKILL);
}

static void
earlier_set_is_whole_after_a_crash (void **state)
{
  g_autofree char *out = dup_out (*state);
  g_autoptr(GPtrArray) files = new_set_of_b ();
  const HutSetWatch watched = { die, NULL, NULL };
  int status = 0;

  write_a (out);

  const pid_t child = fork ();

  if (child == 0)
    {
      hut_set_folder_write (out, files, 0.0, &watched, NULL);
      _exit (0);
    }
  assert_int_equal (waitpid (child, &status, 0), child);
  assert_true (WIFSIGNALED (status));
  assert_all (out, SET_OF_A);

  /* What the crash left beside it is in nobody's way. */
  write_a (out);
  assert_all (out, SET_OF_A);
}

/* ---- disks that cannot swap ------------------------------------------------------------------ */

static void
swapping_in_steps_swaps (void **state)
{
  g_autofree char *a = g_build_filename (*state, "a", NULL);
  g_autofree char *b = g_build_filename (*state, "b", NULL);

  hut_scratch_put (a, "one", "1");
  hut_scratch_put (b, "two", "2");
  assert_true (hut_set_folder_swap_in_steps (a, b));
  assert_all (*state, "a/\na/two=2\nb/\nb/one=1\n");
}

static void
swapping_in_steps_is_undone_when_one_fails (void **state)
{
  g_autofree char *a = g_build_filename (*state, "missing", NULL);
  g_autofree char *b = g_build_filename (*state, "b", NULL);

  hut_scratch_put (b, "two", "2");
  assert_false (hut_set_folder_swap_in_steps (a, b));
  assert_all (*state, "b/\nb/two=2\n");
}

#define IN_SCRATCH(test) cmocka_unit_test_setup_teardown (test, set_up, tear_down)

int
main (void)
{
  const struct CMUnitTest tests[] = {
    IN_SCRATCH (new_folder_holds_the_set_and_nothing_is_left_beside_it),
    IN_SCRATCH (empty_folder_is_replaced),
    IN_SCRATCH (earlier_set_is_replaced_whole),
    IN_SCRATCH (earlier_set_with_a_file_missing_is_replaced),
    IN_SCRATCH (slashes_at_the_end_do_not_matter),
    IN_SCRATCH (link_to_a_folder_stays_a_link),
    IN_SCRATCH (new_folder_keeps_the_rights_of_the_old_one),
    IN_SCRATCH (folder_with_another_file_is_refused_and_untouched),
    IN_SCRATCH (folder_without_manifest_is_refused),
    IN_SCRATCH (folder_with_a_strange_manifest_is_refused),
    IN_SCRATCH (folder_in_the_place_of_a_listed_file_is_refused),
    IN_SCRATCH (hidden_file_is_another_file),
    IN_SCRATCH (file_in_the_place_of_the_folder_is_refused),
    IN_SCRATCH (missing_parent_is_refused),
    IN_SCRATCH (link_to_nothing_is_refused),
    IN_SCRATCH (place_that_takes_no_folder_is_refused),
    IN_SCRATCH (full_disk_leaves_the_earlier_set_and_nothing_else),
    IN_SCRATCH (name_that_exists_already_is_not_overwritten),
    IN_SCRATCH (cancelling_at_any_file_leaves_the_earlier_set_and_nothing_else),
    IN_SCRATCH (progress_goes_from_where_it_was_to_one),
    IN_SCRATCH (file_that_comes_in_between_is_not_lost),
    IN_SCRATCH (earlier_set_is_whole_after_a_crash),
    IN_SCRATCH (swapping_in_steps_swaps),
    IN_SCRATCH (swapping_in_steps_is_undone_when_one_fails),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}

/* tests/app/test-autosave.c: what was not saved survives a crash.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "app/hut-autosave.h"
#include "design/hut-file.h"
#include "hut-assert.h"
#include <glib/gstdio.h>
#include <stdlib.h>
#include <sys/wait.h>
#include <unistd.h>

/* Where GLib looks for the state folder: set before it is asked for the first time. */
static char *state_folder;

static gboolean
rename_design (HutDesign *design,
               gpointer user_data)
{
  g_free (design->name);
  design->name = g_strdup (user_data);
  return TRUE;
}

static guint
count_left_behind (void)
{
  g_autoptr(GPtrArray) list = hut_recovery_list ();

  return list->len;
}

static void
discard_all (void)
{
  g_autoptr(GPtrArray) list = hut_recovery_list ();

  for (guint i = 0; i < list->len; i++)
    hut_recovery_discard (g_ptr_array_index (list, i));
}

/* A process that changes a design, writes it to its recovery file, and ends without closing. */
static void
crash_with (const char *name,
            const char *path)
{
  const pid_t child = fork ();
  int status = 0;

  assert_true (child >= 0);
  if (child == 0)
    {
      HutSession *session = hut_session_new (hut_design_new ());
      HutAutosave *autosave = hut_autosave_new (session);

      if (path != NULL && !hut_session_save (session, path, NULL))
        _exit (1);
      hut_session_edit (session, "Name", rename_design, (gpointer) name);
      _exit (hut_autosave_write (autosave) ? 0 : 1);
    }
  assert_int_equal (waitpid (child, &status, 0), child);
  assert_true (WIFEXITED (status) && WEXITSTATUS (status) == 0);
}

static void
a_crash_leaves_the_changed_design_and_where_it_came_from (void **state)
{
  g_autofree char *path = g_build_filename (state_folder, "ä b.hutch", NULL);
  g_autoptr(GPtrArray) list = NULL;
  g_autoptr(GError) error = NULL;
  g_autoptr(HutDesign) design = NULL;
  const HutRecovery *recovery;

  crash_with ("changed", path);
  list = hut_recovery_list ();
  assert_int_equal (list->len, 1);
  recovery = g_ptr_array_index (list, 0);
  assert_string_equal (recovery->origin, path);
  design = hut_design_load (recovery->path, &error);
  assert_ok (design != NULL, error);
  assert_string_equal (design->name, "changed");
  hut_recovery_discard (recovery);
  assert_int_equal (count_left_behind (), 0);
  g_unlink (path);
}

static void
a_design_without_a_file_has_no_origin (void **state)
{
  g_autoptr(GPtrArray) list = NULL;

  crash_with ("nameless", NULL);
  list = hut_recovery_list ();
  assert_int_equal (list->len, 1);
  assert_null (((const HutRecovery *) g_ptr_array_index (list, 0))->origin);
  discard_all ();
}

static void
what_a_running_program_writes_is_not_offered (void **state)
{
  g_autoptr(HutSession) session = hut_session_new (hut_design_new ());
  g_autoptr(HutAutosave) autosave = hut_autosave_new (session);

  hut_session_edit (session, "Name", rename_design, (gpointer) "live");
  assert_true (hut_autosave_write (autosave));
  assert_int_equal (count_left_behind (), 0);
  hut_autosave_discard (autosave);
}

static void
closing_and_saving_delete_the_recovery_file (void **state)
{
  g_autoptr(HutSession) session = hut_session_new (hut_design_new ());
  g_autoptr(HutAutosave) autosave = hut_autosave_new (session);
  g_autofree char *folder = g_build_filename (state_folder, "hutchwright", "recovery", NULL);
  g_autofree char *path = g_build_filename (state_folder, "saved.hutch", NULL);
  g_autoptr(GError) error = NULL;

  hut_session_edit (session, "Name", rename_design, (gpointer) "one");
  assert_true (hut_autosave_write (autosave));
  assert_ok (hut_session_save (session, path, &error), error);
  /* The folder is empty, so it can be removed. */
  assert_int_equal (g_rmdir (folder), 0);
  hut_session_edit (session, "Name", rename_design, (gpointer) "two");
  assert_true (hut_autosave_write (autosave));
  hut_autosave_discard (autosave);
  assert_int_equal (g_rmdir (folder), 0);
  g_unlink (path);
}

static void
an_unmodified_design_writes_nothing (void **state)
{
  g_autoptr(HutSession) session = hut_session_new (hut_design_new ());
  g_autoptr(HutAutosave) autosave = hut_autosave_new (session);
  g_autofree char *folder = g_build_filename (state_folder, "hutchwright", "recovery", NULL);

  assert_true (hut_autosave_write (autosave));
  assert_false (g_file_test (folder, G_FILE_TEST_EXISTS));
}

static void
on_failed (HutAutosave *autosave,
           const char *message,
           gpointer user_data)
{
  (*(int *) user_data)++;
}

static void
a_folder_that_cannot_be_made_is_told_once (void **state)
{
  g_autoptr(HutSession) session = hut_session_new (hut_design_new ());
  g_autoptr(HutAutosave) autosave = hut_autosave_new (session);
  g_autofree char *blocker = g_build_filename (state_folder, "hutchwright", NULL);
  int failed_count = 0;

  g_rmdir (blocker);
  assert_true (g_file_set_contents (blocker, "a file, where the folder would be", -1, NULL));
  g_signal_connect (autosave, "failed", G_CALLBACK (on_failed), &failed_count);
  hut_session_edit (session, "Name", rename_design, (gpointer) "one");
  assert_false (hut_autosave_write (autosave));
  assert_false (hut_autosave_write (autosave));
  assert_int_equal (failed_count, 1);
  g_unlink (blocker);
  assert_true (hut_autosave_write (autosave));
  hut_autosave_discard (autosave);
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (an_unmodified_design_writes_nothing),
    cmocka_unit_test (a_crash_leaves_the_changed_design_and_where_it_came_from),
    cmocka_unit_test (a_design_without_a_file_has_no_origin),
    cmocka_unit_test (what_a_running_program_writes_is_not_offered),
    cmocka_unit_test (closing_and_saving_delete_the_recovery_file),
    cmocka_unit_test (a_folder_that_cannot_be_made_is_told_once),
  };
  int failed_count;

  state_folder = g_dir_make_tmp ("hut-autosave-XXXXXX", NULL);
  g_setenv ("XDG_STATE_HOME", state_folder, TRUE);
  failed_count = cmocka_run_group_tests_name ("autosave", tests, NULL, NULL);
  g_autofree char *folder = g_build_filename (state_folder, "hutchwright", "recovery", NULL);
  g_autofree char *parent = g_path_get_dirname (folder);
  g_rmdir (folder);
  g_rmdir (parent);
  g_rmdir (state_folder);
  g_free (state_folder);
  return failed_count;
}

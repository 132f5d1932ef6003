/* tests/cli/test-cli-output.c: output that cannot be written, and targets that must not be replaced.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "config.h"
#include "cli/hut-cli-output.h"

#include "hut-run.h"
#include "hut-scratch.h"
#include <fcntl.h>
#include <glib/gstdio.h>
#include <glib-unix.h>
#include <string.h>
#include <unistd.h>

typedef struct
{
  char *folder, *design;
} Place;

static int
set_up (void **state)
{
  Place *place = g_new0 (Place, 1);

  place->folder = hut_scratch_new ();
  place->design = hut_run_write_example (place->folder, "engraver", "a.hutch");
  *state = place;
  return 0;
}

static int
tear_down (void **state)
{
  Place *place = *state;

  hut_scratch_free (place->folder);
  g_free (place->design);
  g_free (place);
  return 0;
}

/* Every command that prints data. */
static const char *const printing[] = {
  "--help", "--version", "check --help", "example", "example engraver --to -", "check a.hutch",
  "check a.hutch --xml", "describe a.hutch", "render a.hutch --view flat --to - --size 100x100",
  "export a.hutch --to out",
};

static void
a_full_disk_behind_standard_output_is_status_3 (void **state)
{
  const Place *place = *state;
  const HutRunSetup setup = { .folder = place->folder, .output = "/dev/full" };

  for (guint i = 0; i < G_N_ELEMENTS (printing); i++)
    {
      g_auto(GStrv) arguments = g_strsplit (printing[i], " ", -1);
      g_autoptr(HutRun) run = hut_run_argv ((const char *const *) arguments, &setup);

      print_message ("%s\n", printing[i]);
      hut_run_assert_refused (run, 3, "standard output");
    }
}

/* Exit status of the program with a pipe as standard output that nobody reads any more. */
static int
status_with_broken_pipe (const Place *place,
                         const char *line)
{
  g_auto(GStrv) arguments = g_strsplit (line, " ", -1);
  g_autoptr(GPtrArray) argv = g_ptr_array_new ();
  g_autoptr(GSubprocessLauncher) launcher = g_subprocess_launcher_new (G_SUBPROCESS_FLAGS_STDERR_SILENCE);
  g_autoptr(GSubprocess) process = NULL;
  g_autoptr(GError) error = NULL;
  int fds[2];

  g_ptr_array_add (argv, (char *) g_getenv ("HUT_BINARY"));
  for (guint i = 0; arguments[i] != NULL; i++)
    g_ptr_array_add (argv, arguments[i]);
  g_ptr_array_add (argv, NULL);
  assert_ok (g_unix_open_pipe (fds, FD_CLOEXEC, &error), error);
  assert_int_equal (close (fds[0]), 0);
  g_subprocess_launcher_take_stdout_fd (launcher, fds[1]);
  g_subprocess_launcher_set_cwd (launcher, place->folder);
  process = g_subprocess_launcher_spawnv (launcher, (const char *const *) argv->pdata, &error);
  assert_ok (process != NULL, error);
  assert_ok (g_subprocess_wait (process, NULL, &error), error);
  return g_subprocess_get_if_exited (process) ? g_subprocess_get_exit_status (process)
                                              : -g_subprocess_get_term_sig (process);
}

static void
a_pipe_that_nobody_reads_is_status_3_and_no_signal (void **state)
{
  for (guint i = 0; i < G_N_ELEMENTS (printing); i++)
    {
      print_message ("%s\n", printing[i]);
      assert_int_equal (status_with_broken_pipe (*state, printing[i]), 3);
    }
}

static void
a_folder_or_link_is_never_replaced (void **state)
{
  const Place *place = *state;
  g_autofree char *link = g_build_filename (place->folder, "link", NULL);
  g_autofree char *before = hut_run_read_text (place->design);
  g_autofree char *after = NULL;
  const char *const targets[] = { place->folder, "/dev/null", link };

  assert_int_equal (symlink (place->design, link), 0);
  for (guint i = 0; i < G_N_ELEMENTS (targets); i++)
    {
      g_autoptr(HutRun) example = hut_run ("example", "engraver", "--replace", "--to", targets[i], NULL);
      g_autoptr(HutRun) render = hut_run ("render", place->design, "--view", "flat", "--to", targets[i],
                                          NULL);

      hut_run_assert_refused (example, 2, targets[i]);
      hut_run_assert_refused (render, 2, targets[i]);
    }
  assert_true (g_file_test (place->folder, G_FILE_TEST_IS_DIR));
  assert_false (g_file_test ("/dev/null", G_FILE_TEST_IS_REGULAR));
  after = hut_run_read_text (place->design);
  assert_string_equal (after, before);
}

static void
a_target_in_no_folder_is_status_3 (void **state)
{
  const Place *place = *state;
  g_autofree char *target = g_build_filename (place->folder, "no-such-folder", "x", NULL);
  g_autoptr(HutRun) example = hut_run ("example", "engraver", "--to", target, NULL);
  g_autoptr(HutRun) render = hut_run ("render", place->design, "--view", "flat", "--to", target, NULL);

  hut_run_assert_refused (example, 3, target);
  hut_run_assert_refused (render, 3, target);
}

static void
control_characters_become_blanks_and_odd_bytes_stay (void **state)
{
  g_autofree char *line = hut_cli_dup_line ("a\nb\x1b[31mc\xc2\x9b" "d \xff\xc3\xa4");

  assert_string_equal (line, "a b [31mc d \xff\xc3\xa4");
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test_setup_teardown (a_full_disk_behind_standard_output_is_status_3, set_up, tear_down),
    cmocka_unit_test_setup_teardown (a_pipe_that_nobody_reads_is_status_3_and_no_signal, set_up,
                                     tear_down),
    cmocka_unit_test_setup_teardown (a_folder_or_link_is_never_replaced, set_up, tear_down),
    cmocka_unit_test_setup_teardown (a_target_in_no_folder_is_status_3, set_up, tear_down),
    cmocka_unit_test (control_characters_become_blanks_and_odd_bytes_stay),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}

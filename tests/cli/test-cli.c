/* tests/cli/test-cli.c: which calls are for the command line, and the help.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "config.h"
#include "cli/hut-cli.h"

#include "hut-run.h"
#include "hut-scratch.h"
#include <string.h>

static const char *const command_words[] = { "example", "check", "coupon", "describe", "export", "render" };

static gboolean
handles (const char *line)
{
  g_auto(GStrv) argv = g_strsplit (line, " ", -1);

  return hut_cli_handles ((int) g_strv_length (argv), argv);
}

static void
a_window_opens_without_words_or_for_a_file (void **state)
{
  assert_false (handles ("hutchwright"));
  assert_false (handles ("hutchwright box.hutch"));
  assert_false (handles ("hutchwright ./check"));
  assert_false (handles ("hutchwright file:///home/x/box.hutch"));
  assert_false (handles ("hutchwright -- check"));
  assert_false (handles ("hutchwright --gapplication-service"));
  assert_false (handles ("hutchwright /dev/null /dev/zero"));
  assert_false (handles ("hutchwright file:///a file:///b"));
}

static void
commands_options_and_unknown_words_are_for_the_command_line (void **state)
{
  assert_true (handles ("hutchwright --help"));
  assert_true (handles ("hutchwright -h"));
  assert_true (handles ("hutchwright --version"));
  assert_true (handles ("hutchwright --no-such-option"));
  assert_true (handles ("hutchwright engrave box.hutch --to out"));
  for (guint i = 0; i < G_N_ELEMENTS (command_words); i++)
    {
      g_autofree char *alone = g_strdup_printf ("hutchwright %s", command_words[i]);
      g_autofree char *more = g_strdup_printf ("hutchwright %s a --to b", command_words[i]);

      assert_true (handles (alone));
      assert_true (handles (more));
    }
}

static void
a_command_word_wins_over_a_file_of_that_name (void **state)
{
  char *folder = hut_scratch_new ();
  g_autofree char *file = g_build_filename (folder, "check", NULL);
  static const char *const arguments[] = { "check", NULL };
  const HutRunSetup setup = { .folder = folder };
  g_autoptr(HutRun) run = NULL;

  hut_run_write_text (file, "no design");
  run = hut_run_argv (arguments, &setup);
  hut_run_assert_refused (run, 2, "check FILE");
  hut_scratch_free (folder);
}

static void
help_names_every_command_and_every_exit_status (void **state)
{
  g_autoptr(HutRun) run = hut_run ("--help", NULL);

  hut_run_assert_status (run, 0);
  assert_string_equal (run->errors, "");
  for (guint i = 0; i < G_N_ELEMENTS (command_words); i++)
    {
      g_autofree char *line = g_strdup_printf ("\n  hutchwright %s ", command_words[i]);

      if (strstr (run->text, line) == NULL)
        fail_msg ("the help does not name %s:\n%s", command_words[i], run->text);
    }
  assert_non_null (strstr (run->text, "0 done; 1 something blocks; 2 "));
}

static void
each_command_has_help_of_its_own (void **state)
{
  for (guint i = 0; i < G_N_ELEMENTS (command_words); i++)
    {
      g_autoptr(HutRun) run = hut_run (command_words[i], "--help", NULL);
      g_autoptr(HutRun) last = hut_run (command_words[i], "x", "-h", NULL);
      g_autofree char *usage = g_strdup_printf ("hutchwright %s ", command_words[i]);

      hut_run_assert_status (run, 0);
      hut_run_assert_status (last, 0);
      assert_string_equal (run->text, last->text);
      assert_string_equal (run->errors, "");
      assert_non_null (strstr (run->text, usage));
      assert_non_null (strstr (run->text, "--help"));
    }
}

static void
version_is_that_of_the_build (void **state)
{
  g_autoptr(HutRun) run = hut_run ("--version", NULL);

  hut_run_assert_status (run, 0);
  assert_string_equal (run->text, "hutchwright " HUT_VERSION "\n");
}

static void
a_word_that_is_no_command_is_refused_with_those_that_are (void **state)
{
  g_autoptr(HutRun) engrave = hut_run ("engrave", "box.hutch", "--to", "out", NULL);
  g_autoptr(HutRun) option = hut_run ("--no-such-option", NULL);

  hut_run_assert_refused (engrave, 2, "engrave");
  hut_run_assert_refused (option, 2, "--no-such-option");
  for (guint i = 0; i < G_N_ELEMENTS (command_words); i++)
    assert_non_null (strstr (engrave->errors, command_words[i]));
  assert_string_equal (engrave->text, "");
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (a_window_opens_without_words_or_for_a_file),
    cmocka_unit_test (commands_options_and_unknown_words_are_for_the_command_line),
    cmocka_unit_test (a_command_word_wins_over_a_file_of_that_name),
    cmocka_unit_test (help_names_every_command_and_every_exit_status),
    cmocka_unit_test (each_command_has_help_of_its_own),
    cmocka_unit_test (version_is_that_of_the_build),
    cmocka_unit_test (a_word_that_is_no_command_is_refused_with_those_that_are),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}

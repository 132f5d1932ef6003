/* tests/cli/test-cli-command.c: options and words in any order, and calls that are wrong.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "config.h"
#include "cli/hut-cli-command.h"

#include "hut-run.h"
#include "hut-scratch.h"
#include <string.h>

static HutRun *
run_line (const char *line,
          const char *folder)
{
  g_auto(GStrv) arguments = g_strsplit (line, " ", -1);
  const HutRunSetup setup = { .folder = folder };

  return hut_run_argv ((const char *const *) arguments, &setup);
}

/* All of these lines are the same call. */
static void
options_may_come_in_any_order (void **state)
{
  static const char *const lines[] = {
    "render a.hutch --view flat --size 200x100 --to 0.png",
    "render --view flat --size 200x100 --to 1.png a.hutch",
    "render --to 2.png a.hutch --size=200x100 --view=flat",
    "render --to=3.png --size=200x100 --view flat -- a.hutch",
  };
  char *folder = hut_scratch_new ();
  g_autofree char *design = hut_run_write_example (folder, "engraver", "a.hutch");
  g_autofree char *first = NULL;
  gsize first_size = 0;

  for (guint i = 0; i < G_N_ELEMENTS (lines); i++)
    {
      g_autoptr(HutRun) run = run_line (lines[i], folder);
      g_autofree char *name = g_strdup_printf ("%s/%u.png", folder, i);
      g_autofree char *bytes = NULL;
      g_autoptr(GError) error = NULL;
      gsize size = 0;

      hut_run_assert_status (run, 0);
      assert_ok (g_file_get_contents (name, &bytes, &size, &error), error);
      if (i > 0)
        {
          assert_int_equal (size, first_size);
          assert_memory_equal (bytes, first, size);
          continue;
        }
      first = g_steal_pointer (&bytes);
      first_size = size;
    }
  hut_scratch_free (folder);
}

/* After -- a word is a file, whatever it looks like. */
static void
two_dashes_end_the_options (void **state)
{
  char *folder = hut_scratch_new ();
  g_autofree char *design = hut_run_write_example (folder, "engraver", "--xml");
  g_autoptr(HutRun) as_file = run_line ("describe -- --xml", folder);
  g_autoptr(HutRun) as_option = run_line ("describe --xml", folder);

  hut_run_assert_status (as_file, 0);
  hut_run_assert_refused (as_option, 2, "--xml");
  hut_scratch_free (folder);
}

static void
a_wrong_call_says_what_is_allowed (void **state)
{
  static const struct
  {
    const char *line, *what, *allowed;
  } rows[] = {
    { "check", "missing", "check FILE" },
    { "check a b", "“b”", "check FILE" },
    { "check a --no-such", "--no-such", "--xml" },
    { "describe", "missing", "describe FILE" },
    { "describe a b", "“b”", "describe FILE" },
    { "describe a --to x", "--to", "--help" },
    { "export a", "--to DIR", "--to DIR" },
    { "export --to out", "missing", "export FILE --to DIR" },
    { "export a b --to out", "“b”", "export FILE --to DIR" },
    { "export a --to", "--to", "--formats LIST" },
    { "export a --to out --no-such", "--no-such", "--allow CHECK-ID" },
    { "export a --to out --allow", "--allow", "--allow CHECK-ID" },
    { "export a --to out --formats stone", "stone", "svg" },
    { "export a --to out --formats=", "hutchwright: ", "svg" },
    { "render a --view flat", "--to PNG", "--to PNG" },
    { "render a --to x.png", "view", "flat" },
    { "render a --to x.png --view round", "round", "flat, built, sheets" },
    { "render a --to x.png --view flat --lid 30", "--lid", "--view built" },
    { "render --view flat --to x.png", "missing", "render FILE" },
    { "render a --to x.png --view flat --size 100", "100", "64 to 16384" },
    { "render a --to x.png --view flat --size 100x", "100x", "64 to 16384" },
    { "render a --to x.png --view flat --size 0x100", "0x100", "64 to 16384" },
    { "render a --to x.png --view flat --size -100x100", "-100x100", "64 to 16384" },
    { "render a --to x.png --view flat --size 100x99999", "100x99999", "64 to 16384" },
    { "render a --to x.png --view flat --size 100x100x100", "100x100x100", "64 to 16384" },
    { "render a --to x.png --view flat --size 99999999999999999999x100", "x100", "64 to 16384" },
    { "example no-such --to x", "no-such", "engraver" },
    { "example engraver", "target", "--to FILE" },
    { "example --to x", "example", "NAME" },
    { "example engraver more --to x", "“more”", "NAME --to FILE" },
  };
  char *folder = hut_scratch_new ();

  for (guint i = 0; i < G_N_ELEMENTS (rows); i++)
    {
      g_autoptr(HutRun) run = run_line (rows[i].line, folder);

      print_message ("%s\n", rows[i].line);
      hut_run_assert_refused (run, 2, rows[i].what);
      hut_run_assert_refused (run, 2, rows[i].allowed);
      assert_string_equal (run->text, "");
    }
  hut_scratch_free (folder);
}

static void
a_wrong_call_leaves_no_file (void **state)
{
  char *folder = hut_scratch_new ();
  g_autofree char *design = hut_run_write_example (folder, "engraver", "a.hutch");
  g_autoptr(HutRun) export = run_line ("export a.hutch --to out --formats stone", folder);
  g_autoptr(HutRun) render = run_line ("render a.hutch --to x.png --view round", folder);
  g_autoptr(GDir) names = NULL;

  hut_run_assert_status (export, 2);
  hut_run_assert_status (render, 2);
  names = g_dir_open (folder, 0, NULL);
  assert_string_equal (g_dir_read_name (names), "a.hutch");
  assert_null (g_dir_read_name (names));
  hut_scratch_free (folder);
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (options_may_come_in_any_order),
    cmocka_unit_test (two_dashes_end_the_options),
    cmocka_unit_test (a_wrong_call_says_what_is_allowed),
    cmocka_unit_test (a_wrong_call_leaves_no_file),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}

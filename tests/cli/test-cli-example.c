/* tests/cli/test-cli-example.c: the shipped designs on the command line.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "config.h"
#include "design/hut-file.h"

#include "hut-run.h"
#include "hut-scratch.h"
#include <string.h>

static void
the_list_has_every_example_with_its_title (void **state)
{
  g_autoptr(HutRun) run = hut_run ("example", NULL);
  g_auto(GStrv) lines = g_strsplit (run->text, "\n", -1);
  guint count = 0;

  hut_run_assert_status (run, 0);
  for (const char *const *name = hut_example_names (); *name != NULL; name++, count++)
    {
      g_autofree char *start = g_strconcat (*name, "\t", NULL);

      assert_true (g_str_has_prefix (lines[count], start));
      assert_true (strlen (lines[count]) > strlen (start));
    }
  assert_int_equal (g_strv_length (lines), count + 1); /* and an empty one after the last line end */
}

static void
every_example_is_written_and_has_nothing_that_blocks (void **state)
{
  char *folder = hut_scratch_new ();

  for (const char *const *name = hut_example_names (); *name != NULL; name++)
    {
      g_autofree char *path = hut_run_write_example (folder, *name, *name);
      g_autoptr(HutRun) check = hut_run ("check", path, NULL);
      g_autoptr(HutRun) stream = hut_run ("example", *name, "--to", "-", NULL);
      g_autofree char *text = hut_run_read_text (path);

      hut_run_assert_status (check, 0);
      hut_run_assert_status (stream, 0);
      assert_string_equal (stream->text, text);
    }
  hut_scratch_free (folder);
}

static void
an_existing_file_is_kept_unless_told_otherwise (void **state)
{
  char *folder = hut_scratch_new ();
  g_autofree char *path = g_build_filename (folder, "mine.hutch", NULL);
  g_autoptr(HutRun) refused = NULL;
  g_autoptr(HutRun) replaced = NULL;
  g_autofree char *kept = NULL;
  g_autofree char *written = NULL;

  hut_run_write_text (path, "my work");
  refused = hut_run ("example", "engraver", "--to", path, NULL);
  hut_run_assert_refused (refused, 2, path);
  hut_run_assert_refused (refused, 2, "--replace");
  kept = hut_run_read_text (path);
  assert_string_equal (kept, "my work");

  replaced = hut_run ("example", "engraver", "--replace", "--to", path, NULL);
  hut_run_assert_status (replaced, 0);
  written = hut_run_read_text (path);
  assert_non_null (strstr (written, HUT_DESIGN_NS));
  hut_scratch_free (folder);
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (the_list_has_every_example_with_its_title),
    cmocka_unit_test (every_example_is_written_and_has_nothing_that_blocks),
    cmocka_unit_test (an_existing_file_is_kept_unless_told_otherwise),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}

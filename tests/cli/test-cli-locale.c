/* tests/cli/test-cli-locale.c: a decimal comma in the locale changes no byte of any file.
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * tests/run.sh makes the locale in the build folder; else it is made here, when localedef and its
 * sources (Debian: locales) are there. Without them the test is skipped and says so. */
#include "config.h"
#include "cli/hut-cli-locale.h"

#include "hut-run.h"
#include "hut-scratch.h"
#include <glib/gstdio.h>
#include <locale.h>
#include <string.h>

#define COMMA_LOCALE "de_DE.UTF-8"

typedef struct
{
  char *folder;
  char *locale_path; /* LOCPATH with COMMA_LOCALE, or NULL */
} Place;

static gboolean
has_comma (const char *locale_path)
{
  gboolean comma = FALSE;

  g_setenv ("LOCPATH", locale_path, TRUE);
  if (setlocale (LC_NUMERIC, COMMA_LOCALE) != NULL)
    comma = g_str_equal (localeconv ()->decimal_point, ",");
  setlocale (LC_NUMERIC, "C");
  g_unsetenv ("LOCPATH");
  return comma;
}

static char *
dup_made_locale (const char *folder)
{
  g_autofree char *parent = g_build_filename (folder, "locale", NULL);
  g_autofree char *target = g_build_filename (parent, COMMA_LOCALE, NULL);
  g_autoptr(GSubprocess) process = NULL;
  g_autoptr(GError) error = NULL;

  assert_int_equal (g_mkdir (parent, 0700), 0);
  process = g_subprocess_new (G_SUBPROCESS_FLAGS_STDOUT_SILENCE | G_SUBPROCESS_FLAGS_STDERR_SILENCE, &error,
                              "localedef", "-i", "de_DE", "-f", "UTF-8", target, NULL);
  if (process == NULL || !g_subprocess_wait_check (process, NULL, &error))
    return NULL;
  return g_steal_pointer (&parent);
}

static int
set_up (void **state)
{
  Place *place = g_new0 (Place, 1);
  g_autofree char *built = g_build_filename (g_getenv ("HUT_BUILD_ROOT"), "locale", NULL);

  place->folder = hut_scratch_new ();
  place->locale_path = has_comma (built) ? g_steal_pointer (&built) : dup_made_locale (place->folder);
  if (place->locale_path != NULL && !has_comma (place->locale_path))
    g_clear_pointer (&place->locale_path, g_free);
  *state = place;
  return 0;
}

static int
tear_down (void **state)
{
  Place *place = *state;

  hut_scratch_free (place->folder);
  g_free (place->locale_path);
  g_free (place);
  return 0;
}

static HutRun *
run_in (const Place *place,
        const char *locale,
        const char *const *arguments)
{
  g_autofree char *all = g_strconcat ("LC_ALL=", locale, NULL);
  g_autofree char *path = g_strconcat ("LOCPATH=", place->locale_path, NULL);
  const char *const changes[] = { all, path, NULL };
  const HutRunSetup setup = { .folder = place->folder, .changes = changes };

  return hut_run_argv (arguments, &setup);
}

static void
skip_without_locale (const Place *place)
{
  if (place->locale_path != NULL)
    return;
  print_message ("skipped: no %s: localedef or the locale sources are missing\n", COMMA_LOCALE);
  skip ();
}

static void
standard_output_of_data_is_the_same (void **state)
{
  static const char *const lines[] = {
    "example engraver --to -", "check a.hutch --xml", "describe a.hutch",
    "render a.hutch --view sheets --to -",
  };
  const Place *place = *state;
  g_autofree char *design = NULL;

  skip_without_locale (place);
  design = hut_run_write_example (place->folder, "engraver", "a.hutch");
  for (guint i = 0; i < G_N_ELEMENTS (lines); i++)
    {
      g_auto(GStrv) arguments = g_strsplit (lines[i], " ", -1);
      g_autoptr(HutRun) plain = run_in (place, "C", (const char *const *) arguments);
      g_autoptr(HutRun) comma = run_in (place, COMMA_LOCALE, (const char *const *) arguments);

      hut_run_assert_status (plain, 0);
      hut_run_assert_status (comma, 0);
      if (!g_bytes_equal (plain->out, comma->out))
        fail_msg ("“%s” differs with a decimal comma", lines[i]);
    }
}

/* Every file of the set, by name. */
static void
assert_same_files (const char *a,
                   const char *b)
{
  g_autoptr(GDir) names = g_dir_open (a, 0, NULL);
  const char *name = NULL;
  guint count = 0;

  assert_non_null (names);
  while ((name = g_dir_read_name (names)) != NULL)
    {
      g_autofree char *path_a = g_build_filename (a, name, NULL);
      g_autofree char *path_b = g_build_filename (b, name, NULL);
      g_autofree char *text_a = hut_run_read_text (path_a);
      g_autofree char *text_b = hut_run_read_text (path_b);

      if (!g_str_equal (text_a, text_b))
        fail_msg ("%s differs with a decimal comma", name);
      count++;
    }
  assert_true (count >= 5);
}

static void
every_file_of_the_set_is_the_same (void **state)
{
  static const char *const to_a[] = { "export", "a.hutch", "--to", "a", NULL };
  static const char *const to_b[] = { "export", "a.hutch", "--to", "b", NULL };
  const Place *place = *state;
  g_autofree char *design = NULL, *a = NULL, *b = NULL;
  g_autoptr(HutRun) plain = NULL;
  g_autoptr(HutRun) comma = NULL;

  skip_without_locale (place);
  design = hut_run_write_example (place->folder, "engraver", "a.hutch");
  plain = run_in (place, "C", to_a);
  comma = run_in (place, COMMA_LOCALE, to_b);
  hut_run_assert_status (plain, 0);
  hut_run_assert_status (comma, 0);
  a = g_build_filename (place->folder, "a", NULL);
  b = g_build_filename (place->folder, "b", NULL);
  assert_same_files (a, b);
  assert_same_files (b, a);
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test_setup_teardown (standard_output_of_data_is_the_same, set_up, tear_down),
    cmocka_unit_test_setup_teardown (every_file_of_the_set_is_the_same, set_up, tear_down),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}

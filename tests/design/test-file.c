/* tests/design/test-file.c: designs on disk.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "sample.h"
#include "format/scratch.h"
#include "format/hut-xml.h"
#include <sys/stat.h>
#include <unistd.h>

static void
assert_not_loaded (const char *path,
                   int code,
                   const char *what)
{
  g_autoptr(GError) error = NULL;
  g_autoptr(HutDesign) design = hut_design_load (path, &error);

  assert_null (design);
  if (!g_error_matches (error, HUT_FILE_ERROR, code) || !g_str_has_prefix (error->message, path)
      || strstr (error->message, what) == NULL)
    fail_msg ("error is %d, %s; must be %d with '%s'", error->code, error->message, code, what);
}

static void
saved_design_is_loaded_again (void **state)
{
  g_autofree char *path = g_build_filename (*state, "Öl \"1\".hutch", NULL);
  g_autoptr(HutDesign) design = new_sample ();
  g_autofree char *text = hut_design_to_xml (design);
  g_autoptr(GError) error = NULL;
  g_autoptr(HutDesign) again = NULL;

  assert_ok (hut_design_save (design, path, &error), error);
  assert_file (path, text);
  again = hut_design_load (path, &error);
  assert_ok (again != NULL, error);
  assert_true (hut_design_equal (design, again));
  assert_int_equal (count_files (*state), 1);
}

static void
design_that_could_not_be_opened_again_is_not_saved (void **state)
{
  g_autofree char *path = g_build_filename (*state, "a.hutch", NULL);
  g_autoptr(HutDesign) design = new_sample ();
  g_autoptr(GError) error = NULL;

  put_file (path, "old");
  design->shell.seam_gap_mm = (double) NAN;
  assert_false (hut_design_save (design, path, &error));
  assert_true (g_error_matches (error, HUT_FILE_ERROR, HUT_FILE_ERROR_VALUE));
  assert_non_null (strstr (error->message, "gap of the seam is 'nan', not a number"));
  assert_file (path, "old");
  assert_int_equal (count_files (*state), 1);
}

static void
save_that_fails_leaves_the_old_file_and_says_why (void **state)
{
  g_autofree char *path = g_build_filename (*state, "nowhere", "a.hutch", NULL);
  g_autoptr(HutDesign) design = new_sample ();
  g_autoptr(GError) error = NULL;

  assert_false (hut_design_save (design, path, &error));
  assert_true (g_error_matches (error, HUT_FILE_ERROR, HUT_FILE_ERROR_IO));
  assert_int_equal (count_files (*state), 0);
}

static void
files_that_cannot_be_read_are_io_errors (void **state)
{
  g_autofree char *missing = g_build_filename (*state, "missing.hutch", NULL);
  g_autofree char *pipe = g_build_filename (*state, "pipe.hutch", NULL);

  assert_int_equal (mkfifo (pipe, 0600), 0);
  assert_not_loaded (missing, HUT_FILE_ERROR_IO, "cannot be read: ");
  assert_not_loaded (*state, HUT_FILE_ERROR_IO, "cannot be read: "); /* a folder */
  assert_not_loaded (pipe, HUT_FILE_ERROR_IO, "cannot be read: "); /* does not wait for a writer */
  assert_not_loaded ("/dev/zero", HUT_FILE_ERROR_IO, "cannot be read: ");
}

static void
files_that_are_no_designs_are_told_by_name_and_line (void **state)
{
  g_autofree char *path = g_build_filename (*state, "a.hutch", NULL);
  g_autofree char *text = dup_sample ();
  g_autofree char *newer = dup_spoilt (text, "version=\"3\" name", "version=\"4\" name");
  g_autofree char *half = g_strndup (text, strlen (text) / 2);

  put_file (path, "");
  assert_not_loaded (path, HUT_FILE_ERROR_SYNTAX, ":1: the file is empty");
  put_file (path, "PK\003\004");
  assert_not_loaded (path, HUT_FILE_ERROR_SYNTAX, ":1: not well-formed XML");
  put_file (path, half);
  assert_not_loaded (path, HUT_FILE_ERROR_SYNTAX, ": not well-formed XML");
  put_file (path, newer);
  assert_not_loaded (path, HUT_FILE_ERROR_VERSION, ":2: the file has version 4");
  put_file (path, "<svg xmlns=\"http://www.w3.org/2000/svg\"/>");
  assert_not_loaded (path, HUT_FILE_ERROR_VALUE, ":1: the root element is <svg>; allowed: ");
}

static void
file_over_the_size_limit_is_refused (void **state)
{
  g_autofree char *path = g_build_filename (*state, "a.hutch", NULL);

  put_file (path, "<");
  assert_int_equal (truncate (path, (off_t) HUT_XML_SIZE_MAX_BYTES + 1000000), 0); /* sparse */
  assert_not_loaded (path, HUT_FILE_ERROR_SYNTAX, ":1: the file has ");
}

#define SCRATCH_TEST(name) cmocka_unit_test_setup_teardown (name, make_scratch, remove_scratch)

int
main (void)
{
  const struct CMUnitTest tests[] = {
    SCRATCH_TEST (saved_design_is_loaded_again),
    SCRATCH_TEST (design_that_could_not_be_opened_again_is_not_saved),
    SCRATCH_TEST (save_that_fails_leaves_the_old_file_and_says_why),
    SCRATCH_TEST (files_that_cannot_be_read_are_io_errors),
    SCRATCH_TEST (files_that_are_no_designs_are_told_by_name_and_line),
    SCRATCH_TEST (file_over_the_size_limit_is_refused),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}

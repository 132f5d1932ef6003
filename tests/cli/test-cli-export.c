/* tests/cli/test-cli-export.c: hutchwright export: the set, and what keeps it from being written.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "config.h"
#include "cli/hut-blocked-design.h"

#include "checks/hut-finding.h"
#include "design/hut-file.h"
#include "export/hut-described.h"
#include "export/hut-export.h"
#include "hut-run.h"
#include "hut-scratch.h"
#include <string.h>

typedef struct
{
  char *folder, *design, *set;
} Place;

static int
set_up (void **state)
{
  Place *place = g_new0 (Place, 1);

  place->folder = hut_scratch_new ();
  place->design = hut_run_write_example (place->folder, "engraver", "a.hutch");
  place->set = g_build_filename (place->folder, "set", NULL);
  *state = place;
  return 0;
}

static int
tear_down (void **state)
{
  Place *place = *state;

  hut_scratch_free (place->folder);
  g_free (place->design);
  g_free (place->set);
  g_free (place);
  return 0;
}

static int
compare_text (gconstpointer a,
              gconstpointer b)
{
  return strcmp (*(const char *const *) a, *(const char *const *) b);
}

/* What is in a folder, as the command prints it. */
static char *
dup_listing (const char *folder)
{
  g_autoptr(GDir) names = g_dir_open (folder, 0, NULL);
  g_autoptr(GPtrArray) paths = g_ptr_array_new_with_free_func (g_free);
  GString *listing = g_string_new (NULL);
  const char *name = NULL;

  assert_non_null (names);
  while ((name = g_dir_read_name (names)) != NULL)
    g_ptr_array_add (paths, g_build_filename (folder, name, NULL));
  g_ptr_array_sort (paths, compare_text);
  for (guint i = 0; i < paths->len; i++)
    g_string_append_printf (listing, "%s\n", (const char *) paths->pdata[i]);
  return g_string_free (listing, FALSE);
}

static void
it_prints_the_files_that_it_wrote (void **state)
{
  const Place *place = *state;
  g_autoptr(HutRun) run = hut_run ("export", place->design, "--to", place->set, NULL);
  g_autofree char *listing = NULL;

  hut_run_assert_status (run, 0);
  assert_string_equal (run->errors, "");
  listing = dup_listing (place->set);
  assert_string_equal (run->text, listing);
  assert_non_null (strstr (listing, "/manifest.xml\n"));
  assert_non_null (strstr (listing, ".svg\n"));
  assert_non_null (strstr (listing, ".dxf\n"));
  assert_non_null (strstr (listing, ".csv\n"));
}

static void
only_the_formats_that_were_named_are_written (void **state)
{
  const Place *place = *state;
  g_autoptr(HutRun) run = hut_run ("export", "--formats", "svg,csv", place->design, "--to", place->set,
                                   NULL);

  hut_run_assert_status (run, 0);
  assert_non_null (strstr (run->text, ".svg\n"));
  assert_non_null (strstr (run->text, ".csv\n"));
  assert_null (strstr (run->text, ".dxf\n"));
}

static void
an_earlier_set_is_replaced_by_the_same_bytes (void **state)
{
  const Place *place = *state;
  g_autofree char *manifest = g_build_filename (place->set, "manifest.xml", NULL);
  g_autoptr(HutRun) first = hut_run ("export", place->design, "--to", place->set, NULL);
  g_autofree char *before = hut_run_read_text (manifest);
  g_autoptr(HutRun) second = hut_run ("export", place->design, "--to", place->set, NULL);
  g_autofree char *after = hut_run_read_text (manifest);

  hut_run_assert_status (first, 0);
  hut_run_assert_status (second, 0);
  assert_string_equal (before, after); /* it holds the SHA-256 of every file */
}

static void
a_folder_with_other_files_is_refused_and_kept (void **state)
{
  const Place *place = *state;
  g_autofree char *before = dup_listing (place->folder);
  g_autoptr(HutRun) run = hut_run ("export", place->design, "--to", place->folder, NULL);
  g_autofree char *after = dup_listing (place->folder);

  hut_run_assert_refused (run, 3, place->folder);
  assert_string_equal (run->text, "");
  assert_string_equal (before, after);
}

/* The ids that block, from the report. */
static GPtrArray *
read_blocking (const char *path)
{
  g_autoptr(HutRun) run = hut_run ("check", "--xml", path, NULL);
  g_autoptr(xmlDoc) doc = hut_described_parse (run->out);
  GPtrArray *ids = g_ptr_array_new_with_free_func (g_free);

  for (const xmlNode *finding
       = hut_described_first (hut_described_first (xmlDocGetRootElement (doc), "findings"), "finding");
       finding != NULL; finding = hut_described_next (finding))
    {
      if (hut_described_is (finding, "severity", "blocks"))
        g_ptr_array_add (ids, hut_described_dup_text (finding, "check"));
    }
  return ids;
}

static void
save (const HutBlockedDesign *row,
      const char *path)
{
  g_autoptr(HutDesign) design = hut_blocked_design_new (row);
  g_autoptr(GError) error = NULL;

  assert_ok (hut_design_save (design, path, &error), error);
}

static void
what_blocks_is_named_and_nothing_is_written (void **state)
{
  const Place *place = *state;

  for (const HutBlockedDesign *row = hut_blocked_designs; row->why != NULL; row++)
    {
      g_autoptr(HutRun) run = NULL;
      g_autoptr(GPtrArray) ids = NULL;

      print_message ("%s\n", row->why);
      save (row, place->design);
      run = hut_run ("export", place->design, "--to", place->set, NULL);
      ids = read_blocking (place->design);
      hut_run_assert_refused (run, 1, place->design);
      for (guint i = 0; i < ids->len; i++)
        assert_non_null (strstr (run->errors, ids->pdata[i]));
      assert_string_equal (run->text, "");
      assert_false (g_file_test (place->set, G_FILE_TEST_EXISTS));
    }
}

static void
a_blocked_export_keeps_the_earlier_set (void **state)
{
  const Place *place = *state;
  g_autofree char *manifest = g_build_filename (place->set, "manifest.xml", NULL);
  g_autoptr(HutRun) first = hut_run ("export", place->design, "--to", place->set, NULL);
  g_autofree char *before = NULL;
  g_autofree char *after = NULL;
  g_autoptr(HutRun) second = NULL;

  hut_run_assert_status (first, 0);
  before = hut_run_read_text (manifest);
  save (&hut_blocked_designs[0], place->design);
  second = hut_run ("export", place->design, "--to", place->set, NULL);
  hut_run_assert_status (second, 1);
  after = hut_run_read_text (manifest);
  assert_string_equal (before, after);
}

/* allowed one by one, several after one --allow, and with a check that does not block between. */
static void
checks_that_are_named_do_not_block (void **state)
{
  const Place *place = *state;
  guint count = 0;

  for (const HutBlockedDesign *row = hut_blocked_designs; row->why != NULL; row++)
    {
      g_autoptr(GPtrArray) ids = NULL;
      g_autoptr(GPtrArray) single = g_ptr_array_new ();
      g_autoptr(GPtrArray) several = g_ptr_array_new ();
      g_autoptr(HutRun) first = NULL;
      g_autoptr(HutRun) second = NULL;
      const int status = row->allowable ? 0 : 1;

      print_message ("%s\n", row->why);
      save (row, place->design);
      ids = read_blocking (place->design);
      g_ptr_array_add (single, (char *) "export");
      g_ptr_array_add (several, (char *) "export");
      g_ptr_array_add (several, (char *) "--allow");
      for (guint i = 0; i < ids->len; i++)
        {
          g_ptr_array_add (single, (char *) "--allow");
          g_ptr_array_add (single, ids->pdata[i]);
          g_ptr_array_add (several, ids->pdata[i]);
        }
      g_ptr_array_add (single, place->design);
      g_ptr_array_add (several, place->design);
      g_ptr_array_add (single, (char *) "--to");
      g_ptr_array_add (several, (char *) "--to");
      g_ptr_array_add (single, place->set);
      g_ptr_array_add (several, place->set);
      g_ptr_array_add (single, NULL);
      g_ptr_array_add (several, NULL);
      first = hut_run_argv ((const char *const *) single->pdata, NULL);
      second = hut_run_argv ((const char *const *) several->pdata, NULL);
      hut_run_assert_status (first, status);
      hut_run_assert_status (second, status);
      count += row->allowable ? 1 : 0;
    }
  assert_true (count >= 3);
}

static void
a_set_that_was_allowed_says_so (void **state)
{
  const Place *place = *state;
  g_autofree char *manifest = g_build_filename (place->set, "manifest.xml", NULL);
  g_autofree char *text = NULL;
  g_autoptr(GPtrArray) ids = NULL;
  g_autoptr(GPtrArray) arguments = g_ptr_array_new ();
  g_autoptr(HutRun) run = NULL;

  save (&hut_blocked_designs[0], place->design);
  ids = read_blocking (place->design);
  g_ptr_array_add (arguments, (char *) "export");
  g_ptr_array_add (arguments, place->design);
  g_ptr_array_add (arguments, (char *) "--to");
  g_ptr_array_add (arguments, place->set);
  g_ptr_array_add (arguments, (char *) "--allow");
  for (guint i = 0; i < ids->len; i++)
    g_ptr_array_add (arguments, ids->pdata[i]);
  g_ptr_array_add (arguments, NULL);
  run = hut_run_argv ((const char *const *) arguments->pdata, NULL);
  hut_run_assert_status (run, 0);
  text = hut_run_read_text (manifest);
  assert_non_null (strstr (text, ids->pdata[0]));
}

static void
a_check_that_does_not_exist_cannot_be_allowed (void **state)
{
  const Place *place = *state;
  g_autoptr(HutRun) run = hut_run ("export", place->design, "--to", place->set, "--allow", "no.such", NULL);

  hut_run_assert_refused (run, 2, "no.such");
  hut_run_assert_refused (run, 2, hut_check_ids ()[0]);
  assert_false (g_file_test (place->set, G_FILE_TEST_EXISTS));
}

/* The first part left out by hand: bed and stock would take it. */
static void
a_part_that_got_no_sheet_blocks_before_what_warns (void **state)
{
  g_autoptr(HutDesign) design = hut_sound_design_new ();
  g_autoptr(HutAssembly) assembly = hut_assembly_new (design);
  g_autoptr(HutPartSet) parts = hut_part_set_new (assembly);
  g_autoptr(GPtrArray) findings = hut_check_all (assembly, parts);
  g_autoptr(GPtrArray) no_sheets = g_ptr_array_new ();
  g_autoptr(GArray) unplaced = g_array_new (FALSE, FALSE, sizeof (guint));
  const HutSheetSet sheets = { no_sheets, unplaced };
  const guint part = 0;
  const guint before = findings->len;
  const HutFinding *finding = NULL;
  g_autofree char *text = NULL;

  assert_true (before > 0);
  assert_false (hut_findings_block (findings, NULL));
  g_array_append_val (unplaced, part);
  hut_export_add_unplaced (findings, assembly, parts, &sheets);
  assert_int_equal (findings->len, before + 1);
  finding = findings->pdata[0];
  assert_string_equal (finding->check, HUT_EXPORT_UNPLACED_CHECK);
  assert_true (hut_findings_block (findings, NULL));
  text = hut_finding_dup_text (finding, NULL, ".");
  assert_string_equal (text, "Part base-front fits no sheet of plywood on this bed.");
  assert_string_equal (hut_panel_id_to_string (g_array_index (finding->places, HutPlace, 0).panel),
                       "base-front");
}

/* On a bed of 12 x 10 mm: one sentence says it, not one for each of the ten parts. */
static void
a_part_that_the_bed_does_not_take_is_no_finding_of_the_sheets (void **state)
{
  g_autoptr(HutDesign) design = hut_sound_design_new ();
  g_autoptr(HutAssembly) assembly = NULL;
  g_autoptr(HutPartSet) parts = NULL;
  g_autoptr(HutSheetSet) sheets = NULL;
  g_autoptr(GPtrArray) findings = g_ptr_array_new ();

  design->cutter.bed_width_mm = 12.0;
  design->cutter.bed_depth_mm = 10.0;
  assembly = hut_assembly_new (design);
  parts = hut_part_set_new (assembly);
  sheets = hut_sheet_set_new (assembly, parts);
  assert_int_equal (sheets->unplaced->len, 10);
  hut_export_add_unplaced (findings, assembly, parts, sheets);
  assert_int_equal (findings->len, 0);
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test_setup_teardown (it_prints_the_files_that_it_wrote, set_up, tear_down),
    cmocka_unit_test_setup_teardown (only_the_formats_that_were_named_are_written, set_up, tear_down),
    cmocka_unit_test_setup_teardown (an_earlier_set_is_replaced_by_the_same_bytes, set_up, tear_down),
    cmocka_unit_test_setup_teardown (a_folder_with_other_files_is_refused_and_kept, set_up, tear_down),
    cmocka_unit_test_setup_teardown (what_blocks_is_named_and_nothing_is_written, set_up, tear_down),
    cmocka_unit_test_setup_teardown (a_blocked_export_keeps_the_earlier_set, set_up, tear_down),
    cmocka_unit_test_setup_teardown (checks_that_are_named_do_not_block, set_up, tear_down),
    cmocka_unit_test_setup_teardown (a_set_that_was_allowed_says_so, set_up, tear_down),
    cmocka_unit_test_setup_teardown (a_check_that_does_not_exist_cannot_be_allowed, set_up, tear_down),
    cmocka_unit_test (a_part_that_got_no_sheet_blocks_before_what_warns),
    cmocka_unit_test (a_part_that_the_bed_does_not_take_is_no_finding_of_the_sheets),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}

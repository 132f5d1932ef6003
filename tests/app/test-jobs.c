/* tests/app/test-jobs.c: sheets and exports in worker threads.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "app/hut-export-job.h"
#include "app/hut-sheet-job.h"
#include "hut-assert.h"
#include <glib/gstdio.h>

/* Own choice: far longer than any job of a small design takes, also under the sanitizers. */
#define DEADLINE_S 60

static gboolean
on_deadline (gpointer user_data)
{
  fail_msg ("not done after %d s", DEADLINE_S);
  return G_SOURCE_REMOVE;
}

static void
on_done (GObject *source,
         GAsyncResult *result,
         gpointer user_data)
{
  *(GAsyncResult **) user_data = g_object_ref (result);
}

static GAsyncResult *
wait_for (GAsyncResult **result)
{
  const guint deadline = g_timeout_add_seconds (DEADLINE_S, on_deadline, NULL);

  while (*result == NULL)
    g_main_context_iteration (NULL, TRUE);
  g_source_remove (deadline);
  return *result;
}

static void
the_worker_lays_out_what_the_pure_function_does (void **state)
{
  g_autoptr(HutDesign) design = hut_design_new ();
  g_autoptr(HutAssembly) assembly = hut_assembly_new (design);
  g_autoptr(HutPartSet) parts = hut_part_set_new (assembly);
  g_autoptr(HutSheetSet) sheets = hut_sheet_set_new (assembly, parts);
  g_autoptr(GAsyncResult) result = NULL;
  g_autoptr(GError) error = NULL;
  g_autoptr(HutPacked) packed = NULL;

  hut_sheet_job_run_async (design, HUT_SHEET_JOB_USUAL, NULL, NULL, on_done, &result);
  packed = hut_sheet_job_run_finish (wait_for (&result), &error);
  assert_ok (packed != NULL, error);
  assert_int_equal (packed->sheets->sheets->len, sheets->sheets->len);
  assert_true (packed->sheets->sheets->len > 0);
}

static void
a_cancelled_layout_gives_no_sheets (void **state)
{
  g_autoptr(HutDesign) design = hut_design_new ();
  g_autoptr(GCancellable) cancellable = g_cancellable_new ();
  g_autoptr(GAsyncResult) result = NULL;
  g_autoptr(GError) error = NULL;

  g_cancellable_cancel (cancellable);
  hut_sheet_job_run_async (design, HUT_SHEET_JOB_USUAL, NULL, cancellable, on_done, &result);
  assert_null (hut_sheet_job_run_finish (wait_for (&result), &error));
  assert_true (g_error_matches (error, G_IO_ERROR, G_IO_ERROR_CANCELLED));
}

/* However early it is told to stop: a layout is whole, of no more sheets than one beside the other
 * needs. */
static void
a_stopped_search_gives_its_best (void **state)
{
  g_autoptr(HutDesign) design = hut_design_new ();
  g_autoptr(HutSheetWatch) watch = hut_sheet_watch_new ();
  g_autoptr(GAsyncResult) result = NULL;
  g_autoptr(GError) error = NULL;
  g_autoptr(HutPacked) packed = NULL;

  hut_sheet_watch_stop (watch);
  hut_sheet_job_run_async (design, HUT_SHEET_JOB_PATIENT, watch, NULL, on_done, &result);
  packed = hut_sheet_job_run_finish (wait_for (&result), &error);
  assert_ok (packed != NULL, error);
  assert_true (packed->sheets->sheets->len > 0);
  assert_int_equal (packed->sheets->unplaced->len, 0);
  assert_true (hut_sheet_watch_get_done_ratio (watch) < 1.0);
}

static void
remove_set (const char *folder,
            const char *const *names)
{
  for (guint i = 0; names[i] != NULL; i++)
    {
      g_autofree char *path = g_build_filename (folder, names[i], NULL);

      assert_int_equal (g_unlink (path), 0);
    }
  assert_int_equal (g_rmdir (folder), 0);
}

static void
an_export_writes_the_files_that_it_names (void **state)
{
  g_autoptr(HutDesign) design = hut_design_new ();
  g_autofree char *parent = g_dir_make_tmp ("hut-jobs-XXXXXX", NULL);
  g_autofree char *folder = g_build_filename (parent, "set", NULL);
  g_autoptr(HutExportJob) job
      = hut_export_job_new (design, folder, HUT_FORMAT_PLAIN, NULL, "a.hutch");
  g_autoptr(GAsyncResult) result = NULL;
  g_autoptr(GError) error = NULL;
  g_auto(GStrv) written = NULL;
  g_autofree char *file = NULL;

  hut_export_job_run_async (job, on_done, &result);
  written = hut_export_job_run_finish (job, wait_for (&result), &error);
  assert_ok (written != NULL, error);
  assert_true (g_strv_contains ((const char *const *) written, "manifest.xml"));
  assert_near (hut_export_job_get_progress_ratio (job, &file), 1.0, 1e-9);
  remove_set (folder, (const char *const *) written);
  g_rmdir (parent);
}

static void
a_cancelled_export_leaves_nothing (void **state)
{
  g_autoptr(HutDesign) design = hut_design_new ();
  g_autofree char *parent = g_dir_make_tmp ("hut-jobs-XXXXXX", NULL);
  g_autofree char *folder = g_build_filename (parent, "set", NULL);
  g_autoptr(HutExportJob) job = hut_export_job_new (design, folder, HUT_FORMAT_PLAIN, NULL, NULL);
  g_autoptr(GAsyncResult) result = NULL;
  g_autoptr(GError) error = NULL;

  hut_export_job_cancel (job);
  hut_export_job_run_async (job, on_done, &result);
  assert_null (hut_export_job_run_finish (job, wait_for (&result), &error));
  assert_true (g_error_matches (error, G_IO_ERROR, G_IO_ERROR_CANCELLED));
  assert_int_equal (g_rmdir (parent), 0); /* it is empty */
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (the_worker_lays_out_what_the_pure_function_does),
    cmocka_unit_test (a_cancelled_layout_gives_no_sheets),
    cmocka_unit_test (a_stopped_search_gives_its_best),
    cmocka_unit_test (an_export_writes_the_files_that_it_names),
    cmocka_unit_test (a_cancelled_export_leaves_nothing),
  };

  return cmocka_run_group_tests_name ("jobs", tests, NULL, NULL);
}

/* src/app/hut-coupon-job.c: the coupon of a stock written in a worker thread.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-app"
#include "config.h"
#include "app/hut-coupon-job.h"

typedef struct
{
  HutDesign *design;
  char *stock, *folder;
  HutFormats formats;
} Job;

static void
job_free (gpointer data)
{
  Job *job = data;

  hut_design_free (job->design);
  g_free (job->stock);
  g_free (job->folder);
  g_free (job);
}

static void
run (GTask *task,
     gpointer source,
     gpointer task_data,
     GCancellable *cancellable)
{
  const Job *job = task_data;
  GStrv written = NULL;
  GError *error = NULL;

  if (hut_coupon_set (job->design, job->stock, job->formats, job->folder, cancellable, &written,
                      &error))
    g_task_return_pointer (task, written, (GDestroyNotify)g_strfreev);
  else
    g_task_return_error (task, error);
}

void
hut_coupon_job_run_async (const HutDesign *design,
                          const char *stock,
                          HutFormats formats,
                          const char *folder,
                          GCancellable *cancellable,
                          GAsyncReadyCallback callback,
                          gpointer user_data)
{
  g_return_if_fail (design != NULL && folder != NULL);

  g_autoptr (GTask) task = g_task_new (NULL, cancellable, callback, user_data);
  Job *job = g_new0 (Job, 1);

  *job = (Job){ hut_design_copy (design), g_strdup (stock), g_strdup (folder), formats };
  g_task_set_source_tag (task, hut_coupon_job_run_async);
  g_task_set_task_data (task, job, job_free);
  g_task_run_in_thread (task, run);
}

GStrv
hut_coupon_job_run_finish (GAsyncResult *result,
                           GError **error)
{
  g_return_val_if_fail (g_task_is_valid (result, NULL), NULL);
  return g_task_propagate_pointer (G_TASK (result), error);
}

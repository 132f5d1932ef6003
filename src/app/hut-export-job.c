/* src/app/hut-export-job.c: one export, in a worker thread on its own copy of the design.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-app"
#include "config.h"
#include "app/hut-export-job.h"

struct _HutExportJob
{
  GObject parent_instance;

  HutDesign *design;
  char *folder, *source_name;
  HutFormats formats;
  GStrv allowed;
  GCancellable *cancellable;

  GMutex lock; /* of what follows: written by the worker */
  double progress_ratio;
  char *file;
};

G_DEFINE_TYPE (HutExportJob, hut_export_job, G_TYPE_OBJECT)

static void
hut_export_job_finalize (GObject *object)
{
  HutExportJob *self = HUT_EXPORT_JOB (object);

  hut_design_free (self->design);
  g_free (self->folder);
  g_free (self->source_name);
  g_strfreev (self->allowed);
  g_object_unref (self->cancellable);
  g_free (self->file);
  g_mutex_clear (&self->lock);
  G_OBJECT_CLASS (hut_export_job_parent_class)->finalize (object);
}

static void
hut_export_job_class_init (HutExportJobClass *class)
{
  G_OBJECT_CLASS (class)->finalize = hut_export_job_finalize;
}

static void
hut_export_job_init (HutExportJob *self)
{
  g_mutex_init (&self->lock);
  self->cancellable = g_cancellable_new ();
  self->file = g_strdup ("");
}

HutExportJob *
hut_export_job_new (const HutDesign *design,
                    const char *folder,
                    HutFormats formats,
                    const char *const *allowed,
                    const char *source_name)
{
  g_return_val_if_fail (design != NULL && folder != NULL, NULL);

  HutExportJob *self = g_object_new (HUT_TYPE_EXPORT_JOB, NULL);

  self->design = hut_design_copy (design);
  self->folder = g_strdup (folder);
  self->formats = formats;
  self->allowed = g_strdupv ((GStrv)allowed);
  self->source_name = g_strdup (source_name);
  return self;
}

static void
on_progress (double fraction_ratio,
             const char *file,
             gpointer user_data)
{
  HutExportJob *self = user_data;

  g_mutex_lock (&self->lock);
  self->progress_ratio = fraction_ratio;
  g_free (self->file);
  self->file = g_strdup (file != NULL ? file : "");
  g_mutex_unlock (&self->lock);
}

static void
run (GTask *task,
     gpointer source,
     gpointer task_data,
     GCancellable *cancellable)
{
  HutExportJob *self = source;
  const HutExportOptions options = {
    .formats = self->formats,
    .allowed = (const char *const *)self->allowed,
    .source_name = self->source_name,
  };
  GError *error = NULL;
  GStrv written = NULL;

  if (hut_export_set (self->design, self->folder, &options, on_progress, self, cancellable,
                      &written, &error))
    g_task_return_pointer (task, written, (GDestroyNotify)g_strfreev);
  else
    g_task_return_error (task, error);
}

void
hut_export_job_run_async (HutExportJob *self,
                          GAsyncReadyCallback callback,
                          gpointer user_data)
{
  g_return_if_fail (HUT_IS_EXPORT_JOB (self));

  g_autoptr (GTask) task = g_task_new (self, self->cancellable, callback, user_data);

  g_task_set_source_tag (task, hut_export_job_run_async);
  /* A set that was written whole before the cancel arrived is there, and is told so. */
  g_task_set_check_cancellable (task, FALSE);
  g_task_run_in_thread (task, run);
}

GStrv
hut_export_job_run_finish (HutExportJob *self,
                           GAsyncResult *result,
                           GError **error)
{
  g_return_val_if_fail (HUT_IS_EXPORT_JOB (self) && g_task_is_valid (result, self), NULL);
  return g_task_propagate_pointer (G_TASK (result), error);
}

void
hut_export_job_cancel (HutExportJob *self)
{
  g_return_if_fail (HUT_IS_EXPORT_JOB (self));
  g_cancellable_cancel (self->cancellable);
}

const char *
hut_export_job_get_folder (HutExportJob *self)
{
  g_return_val_if_fail (HUT_IS_EXPORT_JOB (self), NULL);
  return self->folder;
}

double
hut_export_job_get_progress_ratio (HutExportJob *self,
                                   char **file)
{
  g_return_val_if_fail (HUT_IS_EXPORT_JOB (self) && file != NULL, 0.0);

  double progress_ratio;

  g_mutex_lock (&self->lock);
  progress_ratio = self->progress_ratio;
  *file = g_strdup (self->file);
  g_mutex_unlock (&self->lock);
  return progress_ratio;
}

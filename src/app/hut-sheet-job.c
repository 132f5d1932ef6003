/* src/app/hut-sheet-job.c: parts laid on sheets, in a worker thread.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-app"
#include "config.h"
#include "app/hut-sheet-job.h"

/* So many times the usual work. Own choice: some tens of seconds, which the owner can cut short. */
#define PATIENT_RATIO 32
/* The share that is done is kept as a whole number, so that it can be read without a lock. */
#define DONE_STEPS 1000

struct _HutSheetWatch
{
  gatomicrefcount references;
  int done_steps; /* atomic */
  int stopped;    /* atomic */
};

typedef struct
{
  HutDesign *design;
  HutSheetJobKind kind;
  HutSheetWatch *watch; /* or NULL */
  GCancellable *cancellable; /* lent by the task */
} Job;

HutSheetWatch *
hut_sheet_watch_new (void)
{
  HutSheetWatch *self = g_new0 (HutSheetWatch, 1);

  g_atomic_ref_count_init (&self->references);
  return self;
}

HutSheetWatch *
hut_sheet_watch_ref (HutSheetWatch *self)
{
  g_return_val_if_fail (self != NULL, NULL);
  g_atomic_ref_count_inc (&self->references);
  return self;
}

void
hut_sheet_watch_unref (HutSheetWatch *self)
{
  g_return_if_fail (self != NULL);
  if (g_atomic_ref_count_dec (&self->references))
    g_free (self);
}

double
hut_sheet_watch_get_done_ratio (HutSheetWatch *self)
{
  g_return_val_if_fail (self != NULL, 0.0);
  return (double) g_atomic_int_get (&self->done_steps) / DONE_STEPS;
}

void
hut_sheet_watch_stop (HutSheetWatch *self)
{
  g_return_if_fail (self != NULL);
  g_atomic_int_set (&self->stopped, TRUE);
}

void
hut_packed_free (HutPacked *self)
{
  if (self == NULL)
    return;
  g_clear_pointer (&self->sheets, hut_sheet_set_free);
  g_clear_pointer (&self->parts, hut_part_set_free);
  g_clear_pointer (&self->assembly, hut_assembly_free);
  g_free (self);
}

static void
job_free (Job *self)
{
  hut_design_free (self->design);
  g_clear_pointer (&self->watch, hut_sheet_watch_unref);
  g_free (self);
}

/* Packing stops at the next layout when the job is cancelled or told to stop. */
static gboolean
is_wanted (double done_ratio,
           gpointer user_data)
{
  Job *job = user_data;

  if (job->watch != NULL)
    g_atomic_int_set (&job->watch->done_steps, (int) (done_ratio * DONE_STEPS));
  return !g_cancellable_is_cancelled (job->cancellable)
         && (job->watch == NULL || !g_atomic_int_get (&job->watch->stopped));
}

static void
run (GTask *task,
     gpointer source,
     gpointer task_data,
     GCancellable *cancellable)
{
  Job *job = task_data;
  const guint64 work
      = job->kind == HUT_SHEET_JOB_PATIENT ? PATIENT_RATIO * HUT_SHEET_WORK : HUT_SHEET_WORK;
  g_autoptr(HutPacked) packed = g_new0 (HutPacked, 1);

  job->cancellable = cancellable;
  if (job->kind == HUT_SHEET_JOB_PATIENT)
    hut_design_drop_loose_spots (job->design);
  packed->assembly = hut_assembly_new (job->design);
  if (g_task_return_error_if_cancelled (task))
    return;
  packed->parts = hut_part_set_new (packed->assembly);
  if (g_task_return_error_if_cancelled (task))
    return;
  packed->sheets = hut_sheet_set_new_within (packed->assembly, packed->parts, work,
                                             &(HutPackWatch) { is_wanted, job });
  if (g_task_return_error_if_cancelled (task))
    return;
  g_task_return_pointer (task, g_steal_pointer (&packed), (GDestroyNotify) hut_packed_free);
}

void
hut_sheet_job_run_async (const HutDesign *design,
                         HutSheetJobKind kind,
                         HutSheetWatch *watch,
                         GCancellable *cancellable,
                         GAsyncReadyCallback callback,
                         gpointer user_data)
{
  g_return_if_fail (design != NULL);

  g_autoptr(GTask) task = g_task_new (NULL, cancellable, callback, user_data);
  Job *job = g_new0 (Job, 1);

  job->design = hut_design_copy (design);
  job->kind = kind;
  job->watch = watch != NULL ? hut_sheet_watch_ref (watch) : NULL;
  g_task_set_source_tag (task, hut_sheet_job_run_async);
  g_task_set_task_data (task, job, (GDestroyNotify) job_free);
  g_task_run_in_thread (task, run);
}

HutPacked *
hut_sheet_job_run_finish (GAsyncResult *result,
                          GError **error)
{
  g_return_val_if_fail (g_task_is_valid (result, NULL), NULL);
  return g_task_propagate_pointer (G_TASK (result), error);
}

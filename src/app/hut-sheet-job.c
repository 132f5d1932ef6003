/* src/app/hut-sheet-job.c: parts laid on sheets, in a worker thread.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-app"
#include "config.h"
#include "app/hut-sheet-job.h"

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

/* Packing stops at the next layout when the job is cancelled. */
static gboolean
is_wanted (double done_ratio,
           gpointer user_data)
{
  return !g_cancellable_is_cancelled (user_data);
}

static void
run (GTask *task,
     gpointer source,
     gpointer task_data,
     GCancellable *cancellable)
{
  const HutDesign *design = task_data;
  g_autoptr (HutPacked) packed = g_new0 (HutPacked, 1);

  packed->assembly = hut_assembly_new (design);
  if (g_task_return_error_if_cancelled (task))
    return;
  packed->parts = hut_part_set_new (packed->assembly);
  if (g_task_return_error_if_cancelled (task))
    return;
  packed->sheets = hut_sheet_set_new_within (packed->assembly, packed->parts, HUT_SHEET_WORK,
                                             &(HutPackWatch){ is_wanted, cancellable });
  if (g_task_return_error_if_cancelled (task))
    return;
  g_task_return_pointer (task, g_steal_pointer (&packed), (GDestroyNotify)hut_packed_free);
}

void
hut_sheet_job_run_async (const HutDesign *design,
                         GCancellable *cancellable,
                         GAsyncReadyCallback callback,
                         gpointer user_data)
{
  g_return_if_fail (design != NULL);

  g_autoptr (GTask) task = g_task_new (NULL, cancellable, callback, user_data);

  g_task_set_source_tag (task, hut_sheet_job_run_async);
  g_task_set_task_data (task, hut_design_copy (design), (GDestroyNotify)hut_design_free);
  g_task_run_in_thread (task, run);
}

HutPacked *
hut_sheet_job_run_finish (GAsyncResult *result,
                          GError **error)
{
  g_return_val_if_fail (g_task_is_valid (result, NULL), NULL);
  return g_task_propagate_pointer (G_TASK (result), error);
}

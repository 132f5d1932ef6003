/* src/app/hut-export-job.h: one export, in a worker thread on its own copy of the design.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "export/hut-export.h"

#define HUT_TYPE_EXPORT_JOB (hut_export_job_get_type ())
G_DECLARE_FINAL_TYPE (HutExportJob, hut_export_job, HUT, EXPORT_JOB, GObject)

/* All arguments are copied. @allowed: (nullable): check ids that may block. @source_name:
 * (nullable): file name of the design. */
HutExportJob *hut_export_job_new (const HutDesign *design,
                                  const char *folder,
                                  HutFormats formats,
                                  const char *const *allowed,
                                  const char *source_name) G_GNUC_WARN_UNUSED_RESULT;
/* To be called once. */
void
hut_export_job_run_async (HutExportJob *self, GAsyncReadyCallback callback, gpointer user_data);
/* (transfer full): names of the files; NULL on error: HUT_EXPORT_ERROR_* or G_IO_ERROR_CANCELLED */
GStrv hut_export_job_run_finish (HutExportJob *self,
                                 GAsyncResult *result,
                                 GError **error) G_GNUC_WARN_UNUSED_RESULT;
void hut_export_job_cancel (HutExportJob *self);
const char *hut_export_job_get_folder (HutExportJob *self);
/* 0..1; may be asked while it runs. @file: (out) (transfer full): what is being written, "" at
 * first. */
double hut_export_job_get_progress_ratio (HutExportJob *self, char **file);

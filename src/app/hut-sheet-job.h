/* src/app/hut-sheet-job.h: parts laid on sheets, in a worker thread.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "sheets/hut-sheet.h"
#include <gio/gio.h>

/* The sheets with all that they are derived from: its own copy, nothing is lent. */
typedef struct
{
  HutAssembly *assembly;
  HutPartSet *parts;
  HutSheetSet *sheets;
} HutPacked;

void hut_packed_free (HutPacked *self);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (HutPacked, hut_packed_free)

/* How far a job is, and whether it shall end early: shared by its thread and who watches it. */
typedef struct _HutSheetWatch HutSheetWatch;

HutSheetWatch *hut_sheet_watch_new (void) G_GNUC_WARN_UNUSED_RESULT;
HutSheetWatch *hut_sheet_watch_ref (HutSheetWatch *self);
void hut_sheet_watch_unref (HutSheetWatch *self);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (HutSheetWatch, hut_sheet_watch_unref)
/* 0 .. 1 */
double hut_sheet_watch_get_done_ratio (HutSheetWatch *self);
/* The job ends with the best layout that it has found. */
void hut_sheet_watch_stop (HutSheetWatch *self);

typedef enum
{
  HUT_SHEET_JOB_USUAL,   /* as the whole program lays parts out */
  HUT_SHEET_JOB_PATIENT, /* anew but for what the owner keeps, with many times the work */
} HutSheetJobKind;

/* @design: copied. @watch: (nullable). A cancelled job stops in the middle of packing, after the
 * layout at hand; it ends with G_IO_ERROR_CANCELLED and its sheets are dropped. */
void hut_sheet_job_run_async (const HutDesign *design,
                              HutSheetJobKind kind,
                              HutSheetWatch *watch,
                              GCancellable *cancellable,
                              GAsyncReadyCallback callback,
                              gpointer user_data);
/* (transfer full): NULL on error. */
HutPacked *hut_sheet_job_run_finish (GAsyncResult *result,
                                     GError **error) G_GNUC_WARN_UNUSED_RESULT;

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

/* @design: copied. A cancelled job stops in the middle of packing, after the layout at hand; it ends
 * with G_IO_ERROR_CANCELLED and its sheets are dropped. */
void hut_sheet_job_run_async (const HutDesign *design,
                              GCancellable *cancellable,
                              GAsyncReadyCallback callback,
                              gpointer user_data);
/* (transfer full): NULL on error. */
HutPacked *hut_sheet_job_run_finish (GAsyncResult *result,
                                     GError **error) G_GNUC_WARN_UNUSED_RESULT;

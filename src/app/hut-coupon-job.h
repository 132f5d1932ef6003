/* src/app/hut-coupon-job.h: the coupon of a stock written in a worker thread.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "export/hut-coupon-set.h"

/* All arguments are copied; see hut_coupon_set (). */
void hut_coupon_job_run_async (const HutDesign *design,
                               const char *stock,
                               HutFormats formats,
                               const char *folder,
                               GCancellable *cancellable,
                               GAsyncReadyCallback callback,
                               gpointer user_data);
/* (transfer full): names of the files; NULL on error */
GStrv hut_coupon_job_run_finish (GAsyncResult *result, GError **error) G_GNUC_WARN_UNUSED_RESULT;

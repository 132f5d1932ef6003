/* src/export/hut-coupon-set.h: the cut files of coupons.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "export/hut-export.h"
#include "sheets/hut-coupon.h"

/**
 * hut_coupon_dup_tool_paths:
 * @at: where its lower left corner lies, mm
 *
 * Score, the cuts between the bars, their window, the gauge, and last the plate.
 *
 * Returns: (transfer full) (element-type HutToolPath)
 */
GPtrArray *hut_coupon_dup_tool_paths (const HutCoupon *self,
                                      HutPoint at) G_GNUC_WARN_UNUSED_RESULT;

/**
 * hut_coupon_set:
 * @design: its stocks and cutter
 * @stock: (nullable): id of the one stock; NULL for every stock that fits the bed
 * @formats: of the cut files; CSV is a table to write the readings into
 * @folder: as for hut_export_set ()
 * @cancellable: (nullable)
 * @written: (out) (optional) (transfer full): names of the files, sorted
 * @error: HUT_EXPORT_ERROR_BLOCKED when no coupon fits the bed, HUT_EXPORT_ERROR_FORMAT for a stock
 *   that is not there or no format at all, HUT_EXPORT_ERROR_IO
 *
 * One file per stock and format, each coupon in the front left corner of a sheet, so that it can be
 * cut from what is left of another one.
 */
gboolean hut_coupon_set (const HutDesign *design,
                         const char *stock,
                         HutFormats formats,
                         const char *folder,
                         GCancellable *cancellable,
                         GStrv *written,
                         GError **error);

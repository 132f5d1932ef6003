/* src/export/hut-gcode.h: a page as G-code for the controller of a laser.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "export/hut-write.h"

/* FALSE with HUT_EXPORT_ERROR_FORMAT, which says why, for a cutter that is no laser. */
gboolean hut_gcode_check_cutter (const HutCutter *cutter, GError **error);

/**
 * hut_write_page_gcode:
 * @page: its stock's recipe gives speed, power and passes; its cutter the bed
 * @error: HUT_EXPORT_ERROR_FORMAT for a cutter that is no laser; HUT_EXPORT_ERROR_BLOCKED when
 *   work leaves the sheet or the bed, or the recipe has no power
 *
 * Paths in the order of the page; all passes of a contour before the next one.
 *
 * Returns: (transfer full): NULL on error
 */
GBytes *hut_write_page_gcode (const HutWritePage *page,
                              GError **error) G_GNUC_WARN_UNUSED_RESULT;

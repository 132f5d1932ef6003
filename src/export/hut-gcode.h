/* src/export/hut-gcode.h: a page as G-code for the controller of a laser or router.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "export/hut-write.h"

/**
 * hut_write_page_gcode:
 * @page: its stock's recipe gives speed, power and passes; its cutter the bed
 * @error: HUT_EXPORT_ERROR_BLOCKED when work leaves the sheet or the bed, or a laser's recipe has
 * no   power
 *
 * The moves of hut_tool_program_new (), between a safe start and a safe end.
 *
 * Returns: (transfer full): NULL on error
 */
GBytes *hut_write_page_gcode (const HutWritePage *page,
                              GError **error) G_GNUC_WARN_UNUSED_RESULT;

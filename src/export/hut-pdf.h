/* src/export/hut-pdf.h: a page in full size on paper, for cutting by hand.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "export/hut-write.h"

/**
 * hut_write_page_pdf_a4:
 * @page: what is cut
 * @error: HUT_EXPORT_ERROR_IO when memory ran out
 *
 * The first sheet of paper says what it is and has a bar and a square of 100 mm and a map; then
 * come, row by row, those that have lines on them. A piece of paper of the same size for each.
 *
 * Returns: (transfer full): NULL on error
 */
GBytes *hut_write_page_pdf_a4 (const HutWritePage *page, GError **error) G_GNUC_WARN_UNUSED_RESULT;
/* The same on other paper. */
GBytes *hut_write_page_pdf_a3 (const HutWritePage *page, GError **error) G_GNUC_WARN_UNUSED_RESULT;
GBytes *hut_write_page_pdf_letter (const HutWritePage *page,
                                   GError **error) G_GNUC_WARN_UNUSED_RESULT;

/* src/export/hut-dxf-r12.h: a page as DXF R12, for readers that know no later version.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "export/hut-write.h"

/* (transfer full): layers, lines and arcs as in the later version; always succeeds. */
GBytes *hut_write_page_dxf_r12 (const HutWritePage *page,
                                GError **error) G_GNUC_WARN_UNUSED_RESULT;

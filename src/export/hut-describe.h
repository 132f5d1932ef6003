/* src/export/hut-describe.h: what is derived from a design, as XML.
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * hut_write_describe () itself is in hut-export.h. Schema of both texts: src/export/describe.rng.
 * */
#pragma once
#include "checks/hut-finding.h"

#define HUT_DESCRIBE_NS "urn:hutchwright:describe:1"
#define HUT_DESCRIBE_VERSION 1

/**
 * hut_write_report:
 * @design_name: name of the design
 * @findings: (element-type HutFinding): of hut_check_all ()
 * @error: when memory ran out
 *
 * Returns: (transfer full): the findings alone, with a <report> as root; NULL on error
 */
GBytes *hut_write_report (const char *design_name,
                          const GPtrArray *findings,
                          GError **error) G_GNUC_WARN_UNUSED_RESULT;

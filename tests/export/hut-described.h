/* tests/export/hut-described.h: reads a description back, without any code of the program.
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Areas and lengths are worked out here a second time, by other formulas. */
#pragma once
#include "hut-assert.h"
#include <libxml/tree.h>

/* Fails the test with the schema's complaint and line. @label: what failed (a seed, a name). */
void hut_described_assert_valid (xmlDoc *doc,
                                 const char *label);
/* FALSE when the schema refuses the text, or it is not XML. */
gboolean hut_described_is_valid (const char *text);

xmlDoc *hut_described_parse (GBytes *text) G_GNUC_WARN_UNUSED_RESULT;
G_DEFINE_AUTOPTR_CLEANUP_FUNC (xmlDoc, xmlFreeDoc)

/* Child elements by name; NULL at the end. */
xmlNode *hut_described_first (const xmlNode *parent,
                              const char *name);
xmlNode *hut_described_next (const xmlNode *node);

/* An attribute that must be there. (transfer full) */
char *hut_described_dup_text (const xmlNode *node,
                              const char *name) G_GNUC_WARN_UNUSED_RESULT;
double hut_described_number (const xmlNode *node,
                             const char *name);
gboolean hut_described_is (const xmlNode *node,
                           const char *name,
                           const char *value);
/* Numbers parted by blanks; fails unless there are @count of them. */
void hut_described_numbers (const xmlNode *node,
                            const char *name,
                            double *values,
                            guint count);

/* Of an <outline> or <hole>; closed to the bit, or the test fails. Area > 0 counter-clockwise. */
double hut_described_path_area_mm2 (const xmlNode *path);
double hut_described_path_length_mm (const xmlNode *path);
/* Of the <outline> less the <hole>s of a node. */
double hut_described_area_mm2 (const xmlNode *node);
double hut_described_length_mm (const xmlNode *node);

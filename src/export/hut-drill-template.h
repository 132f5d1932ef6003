/* src/export/hut-drill-template.h: where a part is bored by hand, in full size on paper.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "export/hut-write.h"

/* TRUE when something is bored, marked or opened by hand on that face of the part. */
gboolean hut_part_has_hand_work (const HutPart *part, HutFace face);

/**
 * hut_drill_template_dup_paths:
 * @part: a part
 * @face: the one that is worked on; the template is what one sees who looks at it
 * @size_mm: (out): width and height of the drawing
 *
 * The part's outline and holes, the circles and lines of the work, a cross on the middle of each, and beside
 * it its number, diameter and depth in scored letters. (0, 0) is the lower left corner of the part's box;
 * the panel's up is up. The inside is seen mirrored.
 *
 * Returns: (transfer full) (element-type HutToolPath)
 */
GPtrArray *hut_drill_template_dup_paths (const HutPart *part,
                                         HutFace face,
                                         HutPoint *size_mm) G_GNUC_WARN_UNUSED_RESULT;

/* A4 pages in full size, as hut_write_page_pdf_a4 () has them. @name: of the file, no suffix */
GBytes *hut_write_drill_template (const HutAssembly *assembly,
                                  const HutPart *part,
                                  HutFace face,
                                  const char *name,
                                  const char *mark,
                                  GError **error) G_GNUC_WARN_UNUSED_RESULT;

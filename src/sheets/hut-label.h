/* src/sheets/hut-label.h: where a part's name is scored on it.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "assembly/hut-part.h"

/* Least distance of a label from the edge of its part, mm. Own choice: clear of char and chips. */
#define HUT_LABEL_EDGE_MM 2.0
/* Least height of its letters, mm. Own choice: readable at arm's length. */
#define HUT_LABEL_HEIGHT_MIN_MM 5.0

/* The name, and an arrow to the top of the panel, as lines to score; panel frame, mm. */
typedef struct
{
  double height_mm;
  GPtrArray *strokes; /* GArray of HutPoint, at least two points each, open */
} HutLabel;

/**
 * hut_label_new:
 * @part: a part
 *
 * Looks for room as near as may be to the middle of the part: the largest letters first, along u,
 * then along v. The arrow points along v, the panel's up, either way.
 *
 * Returns: (transfer full) (nullable): NULL when letters of HUT_LABEL_HEIGHT_MIN_MM find no room at
 *   least HUT_LABEL_EDGE_MM from every edge and hole
 */
HutLabel *hut_label_new (const HutPart *part) G_GNUC_WARN_UNUSED_RESULT;
void hut_label_free (HutLabel *self);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (HutLabel, hut_label_free)
double hut_label_length_mm (const HutLabel *self);

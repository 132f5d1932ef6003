/* src/assembly/hut-extra-part.h: plates that the user draws, as parts.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "assembly/hut-part.h"

/* How far beside the enclosure, and from each other, such plates lie in the world, mm. Own choice. */
#define HUT_EXTRA_BESIDE_MM 50.0

/**
 * hut_extra_dup_region:
 * @pieces: (out) (optional): how many separate pieces the rectangles make
 * @holes_fit: (out) (optional): FALSE when a hole leaves the outline or meets another one; then the
 *   result has none
 *
 * The union of its rectangles with all corners rounded, inner ones too, as far as its edges are long
 * enough, less its holes; on the grid.
 *
 * Returns: (transfer full) (nullable): the first piece; NULL when the geometry has none
 */
HutRegion *hut_extra_dup_region (const HutExtra *self, guint *pieces, gboolean *holes_fit) G_GNUC_WARN_UNUSED_RESULT;

/* Appends the parts of all plates, @count of each, lying on the bench on the right of the enclosure.
 * Plates without stock or outline make none. */
void hut_extra_add_parts (const HutAssembly *assembly, HutPartSet *set);

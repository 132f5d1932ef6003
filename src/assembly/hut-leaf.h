/* src/assembly/hut-leaf.h: which panel a leaf of hardware lies on, and how.
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * An item with one leaf lies where its position says. One with two lies across a line: the hinge
 * line or the seam. Its first leaf is on the base's panel beside that line, its second on the lid's,
 * both at the same place along it. Where the two panels stand square to each other (a hinged top, a
 * hinged front), a hinge's second leaf is folded under the lid. */
#pragma once
#include "assembly/hut-assembly.h"

typedef struct
{
  guint panel;            /* index */
  HutFace face;
  HutPlacement placement; /* item frame to panel frame */
} HutLeaf;

/**
 * hut_leaf_find:
 * @leaf: 0, or 1 for the second leaf
 * @found: (out caller-allocates)
 * @trouble: (out): what is wrong when FALSE is returned: PANEL_UNKNOWN, ANCHOR or LEAF
 *
 * Returns: TRUE when the leaf has a place
 */
gboolean hut_leaf_find (const HutAssembly *assembly,
                        const HutHardware *hardware,
                        HutItemSpan span,
                        guint leaf,
                        HutLeaf *found,
                        HutTroubleKind *trouble);

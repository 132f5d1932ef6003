/* src/assembly/hut-shell-layout.h: panels as slabs of their shell's outer box, and their joints.
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Every bit of a shell belongs to exactly one panel: where two slabs meet is an edge prism, where three
 * meet a corner. Prisms are cut into an odd number of fingers whose ends the panel of higher rank owns
 * (front, back > left, right > top, bottom); a corner goes to the highest rank of its three. */
#pragma once
#include "assembly/hut-assembly.h"
#include "assembly/hut-fit.h"

/* Room between an inset bottom and the walls, each side, mm. Own choice inside the "loose" range of
 * 0.2 .. 0.5 total for a removable panel (common practice, no source). */
#define HUT_INSET_GAP_MM 0.2

/* One shell: the panels that share joints. */
typedef struct
{
  HutShellId shell;
  HutBox3 box; /* world, outer */
  gboolean present[HUT_SIDE_COUNT];
  double thickness_mm[HUT_SIDE_COUNT];
} HutShellBox;

/* Outer boxes of base and lid, and which panels are jointed within each. Panels that lie free (an inset
 * or under-the-walls bottom) are not present here. */
void hut_shell_layout_boxes (const HutDesign *design, const HutFit *fit, HutShellBox boxes[HUT_SHELL_COUNT]);

/* World frame of a side of a box, seen from outside, and the size of its outer rectangle. */
HutFrame3 hut_shell_layout_frame (const HutBox3 *box, HutSide side, double *width_mm, double *height_mm);

/* The neighbour across an edge of a side. */
HutSide hut_shell_layout_neighbour (HutSide side, HutEdge edge);
/* 2 for front and back, 1 for left and right, 0 for top and bottom. */
int hut_shell_layout_rank (HutSide side);

/* Appends the panels of the whole enclosure to @panels (HutPanel), outlines without holes. */
void hut_shell_layout_panels (const HutDesign *design, const HutFit *fit, GPtrArray *panels);

void hut_panel_free (HutPanel *self);

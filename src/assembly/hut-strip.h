/* src/assembly/hut-strip.h: baffles, derived: where the strips along the seam stand.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "assembly/hut-assembly.h"
#include "assembly/hut-part.h"
#include "assembly/hut-shell-layout.h"

/* Room between the ends of two strips that belong to the same shell, mm, for a bead of opaque sealant:
 * open, it would lie straight before the seam of the next wall. Own choice: they go in without
 * filing, and a bead of that width holds. */
#define HUT_STRIP_JOIN_MM 0.5

/* Appends the strips of all baffles of the design to @self, with their solids and those of the beads
 * between their ends. @boxes: of hut_shell_layout_boxes (). What has no room is a trouble. */
void hut_strip_run (HutAssembly *self, const HutShellBox boxes[HUT_SHELL_COUNT]);

/* Appends the pieces of all strips: as many of equal length as bed and sheet ask for, end to end. */
void hut_strip_add_parts (const HutAssembly *assembly, HutPartSet *set);

/* The beads of sealant that close the ends of a strip on the left or right against the strips round the
 * corner, if those are of the same shell; world, mm. Returns: their count, up to 2 */
guint hut_strip_find_beads (const HutAssembly *assembly, const HutStrip *strip, HutBox3 beads[2]);

/* How far the strip of a side reaches inwards of the thickest wall of that side, mm; 0 without one. */
double hut_strip_intrusion_mm (const HutDesign *design, HutSide side);

/**
 * hut_strip_least_gap_mm:
 * @shell: what the strip is fixed to
 * @overlap_mm: how far it reaches past the seam's other edge
 *
 * The least gap with which a strip along @side passes the other shell's wall while the lid turns,
 * mm. Seen across the hinge line, the tip of a strip below it first swings *towards* the wall that
 * is far from the hinge. With A the distance from the hinge line to the inner face of that wall, h
 * that to the strip's tip along the wall, and s / 2 that to the wall's edge, the tip comes no
 * farther than the edge when (A - gap)^2 + h^2 <= A^2 + (s / 2)^2 (Pythagoras). A strip of the base
 * sees the lid's wall turn the other way round: the same condition. Strips along the sides between
 * hinge and far wall need it at their far ends, strips at the hinge nowhere.
 *
 * Returns: 0 where any gap does; for a lid that is not hinged always
 */
double hut_strip_least_gap_mm (const HutAssembly *assembly, HutSide side, HutShellId shell, double overlap_mm);

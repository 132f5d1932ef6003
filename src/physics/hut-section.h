/* src/physics/hut-section.h: the enclosure cut by a plane across a world axis, as walls for lines
 * of sight. SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "physics/hut-blocker.h"

typedef enum
{
  HUT_AXIS_X, /* section coordinates (y, z) */
  HUT_AXIS_Y, /* (x, z) */
  HUT_AXIS_Z, /* (x, y) */
} HutAxis;

/* Coordinate of a world point along an axis, mm. */
double hut_axis_of_mm (HutAxis axis, HutVec3 p);
/* A world point in the section's plane, and back. @at_mm: of the plane. */
HutPoint hut_section_point (HutAxis axis, HutVec3 p);
HutVec3 hut_section_world (HutAxis axis, double at_mm, HutPoint p);
/* A box as its rectangle; empty (u1 < u0) when the plane does not cut it. */
HutRect hut_section_box (HutAxis axis, double at_mm, const HutBox3 *box);

/**
 * hut_section_walls:
 * @blockers: (element-type HutBlocker): of the assembly
 * @at_mm: of the plane along the axis, world
 * @holes: FALSE: openings and windows count as closed, so that only gaps between panels are left
 *
 * Panels with their fingers, glazing, frames, straps, ledges and baffles, lid closed; and under a
 * standing section the bench, as wide as the enclosure. Glazing counts as a wall: what it lets
 * through is a matter of its density. A panel that lies in the plane counts whole.
 *
 * Returns: (transfer full) (element-type HutRect): mm
 */
GArray *hut_section_walls (const HutAssembly *assembly,
                           const GArray *blockers,
                           HutAxis axis,
                           double at_mm,
                           gboolean holes) G_GNUC_WARN_UNUSED_RESULT;

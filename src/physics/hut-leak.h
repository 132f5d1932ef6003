/* src/physics/hut-leak.h: where light gets out of the enclosure in a straight line.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "physics/hut-section.h"

/* One way out. */
typedef struct
{
  const HutBody *body;       /* of the machine, lent: light comes out of the box that it sweeps */
  const HutPlacedHole *hole; /* lent; NULL: a gap between panels */
  HutSide side;              /* of the enclosure, where it comes out */
  HutVec3 from, to;          /* world, mm: in the body's box, and just outside of the enclosure */
} HutLeak;

/**
 * hut_leaks_find:
 * @assembly: lid closed
 *
 * Sources are the boxes that moving bodies sweep, as far as they lie inside; of a machine without
 * any, all its bodies but those that are kept free. The machine itself shades nothing.
 *
 * Openings, in space: through a hole in sheet of thickness t, shaped alike on both sides of its
 * middle, light at depth d behind the sheet is seen within the hole's outline blown up 1 + 2 d / t
 * times about its middle; so the far end of a source decides. Then rays are cast at what stands
 * between, and where that covers a part of the hole also from each part of its inner to each part
 * of its outer outline. A way that is narrower than those rays lie apart can be missed; each leak
 * that is named has a free ray. Openings that a service goes through count as filled, windows as
 * closed, openings in the bottom as standing on the bench.
 *
 * Gaps: in sections across the world's axes through the middle and both ends of each source, exact
 * (see hut-sight.h), with all openings closed. At most one for each side of the enclosure and body.
 *
 * Returns: (transfer full) (element-type HutLeak): openings in the order of the design, then gaps
 */
GArray *hut_leaks_find (const HutAssembly *assembly, const HutPartSet *parts) G_GNUC_WARN_UNUSED_RESULT;

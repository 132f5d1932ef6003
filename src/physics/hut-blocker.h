/* src/physics/hut-blocker.h: what stands in the way of light: sheets and boxes, with their bounds.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "assembly/hut-part.h"

/* A sheet between two depths of a frame, or a whole box. */
typedef struct
{
  HutBox3 box;            /* world, mm: all of it; of a box that blocks whole, itself */
  const HutFrame3 *frame; /* lent; NULL: a box that blocks whole */
  const HutRegion *region; /* lent; in the frame */
  double depth0_mm, depth1_mm; /* behind the frame's origin, depth0 < depth1 */
  gboolean is_panel;           /* its region is a panel's, with openings and windows */
} HutBlocker;

/**
 * hut_blockers_new:
 *
 * Panels with their fingers, openings and windows, glazing, frames, face plates, straps, ledges,
 * baffles and light traps; lid closed. Hardware has holes of its own and is none.
 *
 * Returns: (transfer full) (element-type HutBlocker): valid as long as assembly and parts are
 */
GArray *hut_blockers_new (const HutAssembly *assembly, const HutPartSet *parts) G_GNUC_WARN_UNUSED_RESULT;

/* Whether the way between two points, world, mm, meets it; exact with arcs. Touching a border is
 * no hindrance. */
gboolean hut_blocker_meets (const HutBlocker *self, HutVec3 from, HutVec3 to);

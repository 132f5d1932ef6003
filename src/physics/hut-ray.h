/* src/physics/hut-ray.h: whether a ray through the enclosure meets sheet.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "physics/hut-blocker.h"

/**
 * hut_ray_is_free:
 * @from, @to: ends of the ray, world, mm
 *
 * Against all blockers of a design (see hut_blockers_new ()), in space, exact with arcs; lid closed.
 * Touching a border is no hindrance. The machine and the bench do not count.
 */
gboolean hut_ray_is_free (const HutAssembly *assembly,
                          const HutPartSet *parts,
                          HutVec3 from,
                          HutVec3 to);

/**
 * hut_ray_passes:
 * @blockers: (element-type HutBlocker)
 * @first: (inout): index of the blocker to look at first; becomes the one that was met. Rays that
 *   lie near each other mostly meet the same one; the answer does not depend on it.
 *
 * The same, for many rays.
 */
gboolean hut_ray_passes (const GArray *blockers, HutVec3 from, HutVec3 to, guint *first);

/* src/physics/hut-ray.h: whether a ray through the enclosure meets sheet.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "assembly/hut-part.h"

/**
 * hut_ray_is_free:
 * @from, @to: ends of the ray, world, mm
 *
 * Against panels with their fingers, openings and windows, glazing, frames, straps, ledges and
 * baffles, in space, exact with arcs; lid closed. Touching a border is no hindrance. The machine
 * and the bench do not count.
 */
gboolean hut_ray_is_free (const HutAssembly *assembly,
                          const HutPartSet *parts,
                          HutVec3 from,
                          HutVec3 to);

/* src/physics/hut-stuff.h: what the material of a stock is known to do.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "design/hut-design.h"
#include "physics/hut-physics.h"

/**
 * hut_stuff_modulus_pa:
 *
 * Bending modulus for reckoning sag: the low end of what is published. Source: softwood plywood FPL
 * Wood Handbook 2010, table 12-1 (from memory); medium density board EN 622-5 over 19 mm; hardboard
 * FPL Wood Handbook; acrylic and polycarbonate: property pages of makers.
 *
 * Returns: Pa; NAN for a material that is not known
 */
double hut_stuff_modulus_pa (HutMaterial material);

/**
 * hut_stuff_creep_ratio:
 *
 * How many times the first sag it comes to in the long run. Source: wooden shelves half as much
 * again (article on shelves, 2019); plastics twice (long-term modulus about half, from memory).
 * Returns: a ratio, >= 1
 */
double hut_stuff_creep_ratio (HutMaterial material);

/* Poisson's ratio. Source: acrylic 0.37, polycarbonate 0.38 (makers); others as in published
 * tables. */
double hut_stuff_poisson_ratio (HutMaterial material);

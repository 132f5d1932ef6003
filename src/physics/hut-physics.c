/* src/physics/hut-physics.c: the error domain of the layer.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-physics"
#include "config.h"
#include "physics/hut-physics.h"

G_DEFINE_QUARK (hut - physics - error - quark, hut_physics_error)

/* src/app/hut-opening-type.c: openings as GObject values: what a drag carries.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-app"
#include "config.h"
#include "app/hut-opening-type.h"

G_DEFINE_BOXED_TYPE (HutOpening, hut_opening, hut_opening_copy, hut_opening_free)

/* src/app/hut-opening-type.h: openings as GObject values: what a drag carries.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "design/hut-design.h"
#include <glib-object.h>

/* Boxed HutOpening. Its position says nothing: the target decides. */
#define HUT_TYPE_OPENING (hut_opening_get_type ())
GType hut_opening_get_type (void);

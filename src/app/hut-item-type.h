/* src/app/hut-item-type.h: hardware of the catalogue as GObject values: what a drag carries.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "catalog/hut-item.h"
#include <glib-object.h>

/* Boxed HutItem. Where it goes, the target decides. */
#define HUT_TYPE_ITEM (hut_item_get_type ())
GType hut_item_get_type (void);

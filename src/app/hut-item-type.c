/* src/app/hut-item-type.c: hardware of the catalogue as GObject values: what a drag carries.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-app"
#include "config.h"
#include "app/hut-item-type.h"

G_DEFINE_BOXED_TYPE (HutItem, hut_item, hut_item_copy, hut_item_free)

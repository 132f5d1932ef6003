/* src/app/hut-ready-opening.h: the openings that lie ready on the shelf.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "design/hut-design.h"

guint hut_ready_opening_get_count (void);
/* (transfer none): translated, static. */
const char *hut_ready_opening_get_name (guint index);
/* (transfer none): heading of its group; entries of a group follow each other. Translated, static.
 */
const char *hut_ready_opening_get_group (guint index);
/* (transfer none): other words to find it by. Translated, static. */
const char *hut_ready_opening_get_words (guint index);
/* (transfer full): a model to copy; named, placed nowhere. */
HutOpening *hut_ready_opening_new (guint index) G_GNUC_WARN_UNUSED_RESULT;

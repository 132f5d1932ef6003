/* src/design/hut-position-format.h: attributes that say where a thing is on its panel.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "design/hut-design-format.h"
#include "format/hut-format-table.h"

#define HUT_TURN_MAX_DEG 360.0

extern const char *const hut_anchor_choices[];
extern const char *const hut_face_choices[];

/* Rows of a struct with a HutPosition called `at`. */
#define HUT_POSITION(Type)                                                               \
  HUT_PANEL (Type, at.panel, "panel", "panel"),                                          \
      HUT_CHOICE (Type, at.u_anchor, "u-anchor", "anchor across", hut_anchor_choices),   \
      HUT_COORDINATE (Type, at.u_offset_mm, "u-offset", "offset across"),                \
      HUT_CHOICE (Type, at.v_anchor, "v-anchor", "anchor upwards", hut_anchor_choices),  \
      HUT_COORDINATE (Type, at.v_offset_mm, "v-offset", "offset upwards"),               \
      HUT_MAYBE_REFERENCE (Type, at.body, "body", "anchor's body", "body")

/* What is wrong with a position, or NULL. @what: the element. (transfer full) */
char *hut_position_dup_fault (const HutPosition *at, const char *what, const char *id) G_GNUC_WARN_UNUSED_RESULT;

/* tests/cli/hut-blocked-design.h: designs that are read without error and must not be cut.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "design/hut-design.h"

typedef struct
{
  const char *why;
  void (*spoil) (HutDesign *design);
  gboolean allowable; /* there is something to cut when its checks are allowed */
} HutBlockedDesign;

/* Ended by a row of zeros. */
extern const HutBlockedDesign hut_blocked_designs[];

/* A box whose parts all fit its bed, spoilt by that row. (transfer full) */
HutDesign *hut_blocked_design_new (const HutBlockedDesign *row) G_GNUC_WARN_UNUSED_RESULT;
/* The same without anything wrong. (transfer full) */
HutDesign *hut_sound_design_new (void) G_GNUC_WARN_UNUSED_RESULT;

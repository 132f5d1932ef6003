/* tests/hut-hand-part.h: parts put together by hand, for tests of what comes after splitting.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "sheets/hut-sheet.h"

/* A bed, one stock called "ply" and the parts of one panel, not derived from any shell. */
typedef struct
{
  HutDesign *design;
  HutStock *stock;    /* of the design: 6 mm, kerf 0, no allowance, a sheet larger than any bed */
  HutCutter *cutter;  /* of the design: 400 x 300 mm, margin 10 mm, gap 5 mm, right angles only */
  HutAssembly *assembly; /* of one panel, base-front */
  HutPartSet *parts;  /* empty */
} HutHandParts;

void hut_hand_parts_init (HutHandParts *self);
void hut_hand_parts_clear (HutHandParts *self);
/* For cmocka: @state becomes new HutHandParts, and goes. */
int hut_hand_parts_set_up (void **state);
int hut_hand_parts_tear_down (void **state);

/* @outer: (transfer full). Returns: (transfer none): the part, labelled like its id. */
HutPart *hut_hand_parts_take (HutHandParts *self, const char *id, HutPath *outer);
/* A rectangle from (0, 0). */
HutPart *hut_hand_parts_add_rect (HutHandParts *self,
                                  const char *id,
                                  double width_mm,
                                  double height_mm);

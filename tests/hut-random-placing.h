/* tests/hut-random-placing.h: where things lie on the panels of a random design.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "design/hut-design.h"
#include "hut-random.h"

typedef struct
{
  HutRandom *random;
  HutDesign *design;
  HutVec3 inside_mm;
  gboolean may_be_wild;
  GArray *taken;
} HutRandomPlacing;

/* @may_be_wild: some things lie near or over an edge, or over each other. */
void hut_random_placing_init (HutRandomPlacing *self,
                              HutRandom        *random,
                              HutDesign        *design,
                              HutVec3           inside_mm,
                              gboolean          may_be_wild);
void hut_random_placing_clear (HutRandomPlacing *self);

/* Any panel that the enclosure has. */
HutPanelId hut_random_placing_panel (HutRandomPlacing *self);
/* Least size that the panel has, mm: without its walls' thickness. */
HutPoint hut_random_placing_size_mm (const HutRandomPlacing *self, HutPanelId panel);
/* Finds room for a thing of that half size on @at->panel; FALSE when there is none. */
gboolean hut_random_placing_find (HutRandomPlacing *self, HutPosition *at, HutPoint half_mm);

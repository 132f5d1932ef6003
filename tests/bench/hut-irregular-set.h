/* tests/bench/hut-irregular-set.h: the published sets of shapes for a strip, and a check of layouts.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "sheets/hut-outline-pack.h"
#include <stdio.h>

#define HUT_IRREGULAR_SETS 13
#define HUT_IRREGULAR_WAYS_MAX 4

/* A piece as often as the set has it. */
typedef struct
{
  HutRegion *region;
  guint way_count;
  HutOutlineWay ways[HUT_IRREGULAR_WAYS_MAX];
} HutIrregularPiece;

typedef struct
{
  char name[16];
  double width_mm;      /* of the strip, in the set's unit */
  double best_percent;  /* best published density */
  GArray *pieces;       /* HutIrregularPiece: one for each piece, not each type */
  double area_mm2;      /* of all */
} HutIrregularSet;

void hut_irregular_set_clear (HutIrregularSet *self);
G_DEFINE_AUTO_CLEANUP_CLEAR_FUNC (HutIrregularSet, hut_irregular_set_clear)

/* tests/bench/irregular.txt under HUT_SOURCE_ROOT, or here; NULL when it is not there. */
FILE *hut_irregular_sets_open (void);
/* The next one; FALSE at the end. Stops the program on a line that is not right. */
gboolean hut_irregular_sets_next (FILE *file, HutIrregularSet *set);
/* The pieces in a strip of @length_mm: u along the strip. */
HutOutlinePack *hut_irregular_set_dup_pack (const HutIrregularSet *self,
                                            double length_mm) G_GNUC_WARN_UNUSED_RESULT;
/* By GEOS: the largest area that two pieces share, and how far one leaves the strip of that length. */
void hut_irregular_set_measure (const HutIrregularSet *self,
                                const GArray *places,
                                double length_mm,
                                double *overlap_mm2,
                                double *outside_mm);

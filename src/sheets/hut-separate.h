/* src/sheets/hut-separate.h: shapes that overlap in bins are moved apart.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "sheets/hut-lot.h"
#include "sheets/hut-outline-private.h"

/* Where an item is, may it overlap or not. */
typedef struct
{
  guint bin;
  guint way;   /* index in the item's ways */
  HutPoint at; /* mm */
} HutSpot;

typedef struct
{
  HutOutlinePack *pack;      /* lent */
  guint bin_count;
  double width_mm, height_mm; /* of the bins now; those of the pack are not looked at */
  HutSpot *spots;            /* (array): per item of the pack */
  HutLot lot;
  /* own */
  double *weights;   /* item * count + item: what their overlap costs, ratio */
  double *depths_mm; /* item * count + item */
  HutNoFit **no_fits; /* moving shape * count + resting shape; NULL: not yet asked for */
  guint *order;      /* scratch, items */
  HutSpot *kept;     /* scratch, the spots with the least overlap so far */
} HutSeparation;

/* Everything in the corner of the first bin, as it was added; fixed ones where they are. Shapes must
 * not be added to the pack any more. */
void hut_separation_init (HutSeparation *self, HutOutlinePack *pack, guint64 seed);
void hut_separation_clear (HutSeparation *self);
G_DEFINE_AUTO_CLEANUP_CLEAR_FUNC (HutSeparation, hut_separation_clear)

/* FALSE when the item can lie no way in bins of that size; else a place by lot. */
gboolean hut_separation_draw (HutSeparation *self, guint item);

/**
 * hut_separation_run:
 * @work_limit: until the pack's work is that
 * @watch: (nullable)
 *
 * Items that overlap are put, one after the other, where they overlap least, and overlaps that last
 * cost more and more. Sources: J. Egeblad, B. Nielsen, A. Odgaard, "Fast neighborhood search for two- and
 * three-dimensional nesting problems", 2007 (guided local search); S. Umetani et al., "Solving the
 * irregular strip packing problem via guided local search for overlap minimization", 2009; J. Gardeyn,
 * G. Vanden Berghe, T. Wauters, "An open-source heuristic to reboot 2D nesting research", 2025 (samples
 * that are improved along the axes, weights by relative overlap).
 *
 * Returns: TRUE when nothing overlaps by more than HUT_NO_FIT_SLACK_MM; else the spots are those with
 *   the least overlap that was met
 */
gboolean hut_separation_run (HutSeparation *self, guint64 work_limit, const HutPackWatch *watch);

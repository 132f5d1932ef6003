/* src/sheets/hut-outline-pack.h: shapes of any outline in as few equal rectangles as may be.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "geom/hut-convex.h"

/* Who wants to know how far it is, and may stop it; all-zero: nobody. */
typedef struct
{
  gboolean (*go_on) (double done_ratio, gpointer user_data); /* FALSE: stop, keep the best so far */
  gpointer user_data;
} HutPackWatch;

/* A way in which an item may lie. */
typedef struct
{
  double turn_rad;
  HutRect box; /* mm: when turned about the origin, what must stay inside the bin */
} HutOutlineWay;

/* Where an item was put. */
typedef struct
{
  guint bin;   /* 0.. */
  guint way;   /* of the item's ways */
  HutPoint at; /* where the corner of that way's box lies in the bin, mm */
} HutOutlinePlace;

/* What is to be packed, and what was learnt about it. */
typedef struct _HutOutlinePack HutOutlinePack;

/* Bins of that size, mm. */
HutOutlinePack *hut_outline_pack_new (double width_mm, double height_mm) G_GNUC_WARN_UNUSED_RESULT;
void hut_outline_pack_free (HutOutlinePack *self);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (HutOutlinePack, hut_outline_pack_free)

/**
 * hut_outline_pack_add:
 * @shape: what must not overlap other shapes; copied. It may stick out of the box
 * @ways: (array length=way_count): how the item may lie; those that look the same or do not fit the
 *   bin are left out
 * @area_mm2: its material
 *
 * Returns: FALSE, with nothing added, when it fits the bin no way
 */
gboolean hut_outline_pack_add (HutOutlinePack *self,
                               const HutConvexSet *shape,
                               const HutOutlineWay *ways,
                               guint way_count,
                               double area_mm2);

/**
 * hut_outline_pack_add_fixed:
 * @shape: what others must not overlap; copied
 * @way: how it lies; its box may be larger than the bin
 * @bin: which bin, 0..; those before it exist as well
 * @at: where the corner of the way's box lies, mm; may be anywhere, also outside the bin
 * @area_mm2: its material
 *
 * Adds an item that stays where it is, whatever it overlaps: the others are laid around it.
 */
void hut_outline_pack_add_fixed (HutOutlinePack *self,
                                 const HutConvexSet *shape,
                                 const HutOutlineWay *way,
                                 guint bin,
                                 HutPoint at,
                                 double area_mm2);

/**
 * hut_outline_pack_run:
 * @work_limit: how much may be tried, in looks at a wall or a place: some 20 million a second
 * @watch: (nullable)
 *
 * Items are put, one after the other, at the best of the corners that the free room has, in the
 * first bin with room: for several orders and rules, then for the best of these with some items moved
 * in the order; a bin that the area does not ask for is emptied into the others (hut-separate.h). Fewer bins are better, then less material in the last one, then a smaller box
 * around that. Deterministic: it depends on the items, their order and @work_limit only, unless @watch stops it.
 *
 * Returns: (transfer full) (element-type HutOutlinePlace): per item; shapes overlap and boxes leave
 *   the bin by no more than HUT_NO_FIT_SLACK_MM, but for what fixed ones do by themselves. Always
 *   complete: the first layout is made in any case. A bin before that of a fixed item may be empty
 */
GArray *hut_outline_pack_run (HutOutlinePack *self,
                              guint64 work_limit,
                              const HutPackWatch *watch) G_GNUC_WARN_UNUSED_RESULT;

/**
 * hut_outline_pack_run_strip:
 * @work_limit: as for hut_outline_pack_run ()
 * @watch: (nullable): may stop it
 * @length_mm: (out): how much of the width is used, mm
 *
 * All items, none of them fixed, in one bin that is used from u = 0 on, as little as may be of its
 * width. Deterministic unless stopped.
 *
 * Returns: (transfer full) (element-type HutOutlinePlace): per item; empty when no layout was found
 *   within the work or before it was stopped, or none exists within the width
 */
GArray *hut_outline_pack_run_strip (HutOutlinePack *self,
                                    guint64 work_limit,
                                    const HutPackWatch *watch,
                                    double *length_mm) G_GNUC_WARN_UNUSED_RESULT;

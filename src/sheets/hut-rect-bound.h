/* src/sheets/hut-rect-bound.h: how many bins rectangles need at least.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include <glib.h>

/* A size in any whole unit, the same for all: micrometres for what is cut. */
typedef struct
{
  gint32 width, height;
} HutRectSize;

/**
 * hut_rect_bound:
 * @sizes: (array length=count): each > 0, and fits the bin in one of the allowed ways
 * @bin: the size of every bin
 * @may_turn: whether they may lie turned by 90 degrees
 *
 * The largest of the sums of f (width) g (height) / (f (bin width) g (bin height)), rounded up, over
 * pairs of dual feasible functions: no packing, however clever, takes fewer bins. The functions: size
 * itself; threshold (small ones nothing, large ones the whole bin); f_k of J. Carlier, F. Clautiaux,
 * A. Moukrim, "New reduction procedures and lower bounds for the two-dimensional bin packing problem",
 * 2007; u_k of S. Fekete, J. Schepers, "New classes of fast lower bounds for bin packing problems",
 * 2001. Turned, an item counts its smaller product, which needs bin sides that have the same functions:
 * for a bin that is not square only the area counts then.
 *
 * Returns: at least 1 for at least one rectangle
 */
guint hut_rect_bound (const HutRectSize *sizes, guint count, HutRectSize bin, gboolean may_turn);

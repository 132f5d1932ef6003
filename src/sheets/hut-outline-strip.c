/* src/sheets/hut-outline-strip.c: shapes of any outline in a strip as short as may be.
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Strategy: places by lot in a long strip are separated (hut-separate.h). Whenever that has come
 * out, the strip is cut shorter by a share that adapts: more after success, less after failure.
 * After a failure two items change places in what overlapped least, or the shortest one is taken.
 * Invariant: what is returned was found apart. Not promised: the shortest strip. */
#define G_LOG_DOMAIN "hut-sheets"
#include "config.h"
#include "sheets/hut-separate.h"
#include <math.h>

/* Share of the first strip that is filled, ratio. Own choice: easy to find. */
#define FIRST_FILL 0.6
/* Longer strips until one is found, ratio. */
#define RELAX_RATIO 1.1
/* How much shorter the next strip is: at first, least and most (ratios), and how that adapts. Own
 * choices by trial on the published sets. */
#define SHRINK_FIRST 0.03
#define SHRINK_LEAST 0.0002
#define SHRINK_MOST 0.03
#define SHRINK_MORE 1.2
#define SHRINK_LESS 0.7
/* Share of failures after which two items change places. */
#define SWAP_SHARE 0.7

typedef struct
{
  HutOutlinePack *pack;
  HutSeparation separation;
  HutSpot *best; /* the shortest layout */
  double best_mm;
} Strip;

static void
strip_clear (Strip *self)
{
  hut_separation_clear (&self->separation);
  g_free (self->best);
}

G_DEFINE_AUTO_CLEANUP_CLEAR_FUNC (Strip, strip_clear)

static const HutPackShape *
shape_at (const Strip *self,
          guint item,
          guint way)
{
  const HutPackItem *of = g_ptr_array_index (self->pack->items, item);

  return g_ptr_array_index (self->pack->shapes, g_array_index (of->ways, HutPackWay, way).shape);
}

/* What the shapes need whatever is done: area, and the longest of their shortest ways, mm. */
static double
least_length_mm (const Strip *self,
                 double *area_length_mm)
{
  double longest_mm = 0.0, area_mm2 = 0.0;

  for (guint i = 0; i < self->pack->items->len; i++)
    {
      const HutPackItem *item = g_ptr_array_index (self->pack->items, i);
      double short_mm = G_MAXDOUBLE;

      for (guint way = 0; way < item->ways->len; way++)
        short_mm = MIN (short_mm, shape_at (self, i, way)->width_mm);
      longest_mm = MAX (longest_mm, short_mm);
      area_mm2 += item->area_mm2;
    }
  *area_length_mm = area_mm2 / self->pack->height_mm;
  return MAX (longest_mm, *area_length_mm);
}

static void
keep (Strip *self)
{
  self->best_mm = 0.0;
  memcpy (self->best, self->separation.spots, self->pack->items->len * sizeof *self->best);
  for (guint i = 0; i < self->pack->items->len; i++)
    self->best_mm = MAX (self->best_mm, self->best[i].at.u
                                            + shape_at (self, i, self->best[i].way)->width_mm);
}

/* The first layout, in a strip as long as it takes; FALSE when stopped before. */
static gboolean
find_first (Strip *self,
            double length_mm,
            guint64 work_limit,
            const HutPackWatch *watch)
{
  while (length_mm < self->pack->width_mm)
    {
      self->separation.width_mm = length_mm;
      for (guint i = 0; i < self->pack->items->len; i++)
        hut_separation_draw (&self->separation, i);
      if (hut_separation_run (&self->separation, work_limit, watch))
        {
          keep (self);
          return TRUE;
        }
      if (self->pack->work >= work_limit)
        return FALSE;
      length_mm *= RELAX_RATIO;
    }
  return FALSE;
}

/* Two of the larger half change places. */
static void
swap_two (Strip *self)
{
  HutSeparation *at = &self->separation;
  const guint count = self->pack->items->len;
  guint pair[2];

  for (guint i = 0; i < 2; i++)
    {
      const guint a = hut_lot_below (&at->lot, count), b = hut_lot_below (&at->lot, count);
      const HutPackItem *of_a = g_ptr_array_index (self->pack->items, a);
      const HutPackItem *of_b = g_ptr_array_index (self->pack->items, b);

      pair[i] = of_a->area_mm2 >= of_b->area_mm2 ? a : b;
    }

  const HutPoint swap = at->spots[pair[0]].at;

  at->spots[pair[0]].at = at->spots[pair[1]].at;
  at->spots[pair[1]].at = swap;
}

static void
shorten (Strip *self,
         double least_mm,
         guint64 work_limit,
         const HutPackWatch *watch)
{
  HutSeparation *at = &self->separation;
  double shrink_ratio = SHRINK_FIRST;

  while (self->best_mm > least_mm * (1.0 + SHRINK_LEAST / 2.0) && self->pack->work < work_limit)
    {
      at->width_mm = MAX (self->best_mm * (1.0 - shrink_ratio), least_mm);
      if (hut_separation_run (at, work_limit, watch))
        {
          keep (self);
          shrink_ratio = MIN (shrink_ratio * SHRINK_MORE, SHRINK_MOST);
          continue;
        }
      if (watch != NULL && watch->go_on != NULL && !watch->go_on (0.0, watch->user_data))
        return;
      shrink_ratio = MAX (shrink_ratio * SHRINK_LESS, SHRINK_LEAST);
      if (hut_lot_ratio (&at->lot) < SWAP_SHARE)
        swap_two (self);
      else
        memcpy (at->spots, self->best, self->pack->items->len * sizeof *self->best);
    }
}

GArray *
hut_outline_pack_run_strip (HutOutlinePack *self,
                            guint64 work_limit,
                            const HutPackWatch *watch,
                            double *length_mm)
{
  g_return_val_if_fail (self != NULL && length_mm != NULL, NULL);

  g_auto(Strip) strip = { .pack = self, .best = g_new0 (HutSpot, self->items->len + 1) };
  GArray *places = g_array_new (FALSE, TRUE, sizeof (HutOutlinePlace));
  double area_length_mm, least_mm;

  self->work = 0;
  *length_mm = 0.0;
  hut_separation_init (&strip.separation, self, self->items->len);
  least_mm = least_length_mm (&strip, &area_length_mm);
  if (self->items->len == 0
      || !find_first (&strip, MAX (least_mm, area_length_mm / FIRST_FILL), work_limit, watch))
    return places;
  shorten (&strip, least_mm, work_limit, watch);
  *length_mm = strip.best_mm;
  for (guint i = 0; i < self->items->len; i++)
    {
      const HutPackItem *item = g_ptr_array_index (self->items, i);
      const HutSpot *spot = &strip.best[i];
      const HutOutlinePlace place
          = { 0, g_array_index (item->ways, HutPackWay, spot->way).way, spot->at };

      g_array_append_val (places, place);
    }
  return places;
}

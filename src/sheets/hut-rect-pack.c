/* src/sheets/hut-rect-pack.c: rectangles in as few equal bins as may be.
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Strategy: first, all orders by size with all rules, first and best bin. Then, until the lower
 * bound or the limit is met, two searches in turn. *Some bins:* the emptiest bin and a few others
 * are emptied and their items laid again in a shaken order; kept when a bin was saved, or else when
 * the bins are more unequal (the sum of the squares of their loads): that drains the emptiest. *One
 * bin less:* all items in an order that is shaken a little, into one bin less than are needed so
 * far; kept when no more area stays out than before.
 * Invariants: every layout that is kept has all items, apart and inside. Not promised: the fewest.
 */
#define G_LOG_DOMAIN "hut-sheets"
#include "config.h"
#include "sheets/hut-rect-pack.h"
#include "sheets/hut-lot.h"
#include "sheets/hut-rect-room.h"

/* Most bins that are emptied besides the emptiest (count), least and most of the noise on sizes in
 * a shaken order (ratio). Own choices by trial on the published sets. */
#define OTHERS_MAX 4
#define NOISE_LEAST 0.05
#define NOISE_MOST 0.6
/* Share of laying again that takes the best bin instead of the first one, and that takes the item
 * that suits the bin best. Own choice. */
#define BEST_BIN_SHARE 0.25
#define BEST_ITEM_SHARE 0.3
/* What choosing and keeping count per item, in looks at a free rectangle. Own choice: as long as it
 * takes where bins are many. */
#define POOL_WORK 2
/* Share of steps that shake the order of all items. Own choice; only when it can pay. */
#define WHOLE_SHARE 0.5
#define WHOLE_BINS_MAX 12
/* A worse layout of some bins is kept when it loses less than this share of the squares, once in a
 * while. Own choice. */
#define WORSE_SHARE 0.02
#define WORSE_RATIO 0.002

typedef enum
{
  KEY_AREA,
  KEY_SHORT_SIDE,
  KEY_LONG_SIDE,
  KEY_PERIMETER,
  KEY_WIDTH,
  KEY_HEIGHT,
  KEY_SLENDER,
  KEY_COUNT
} Key;

/* How a layout picks its next item and bin. */
typedef enum
{
  PICK_FIRST_BIN, /* next item of the order in the first bin with room */
  PICK_BEST_BIN,  /* next item of the order where the rule likes it best */
  PICK_BEST_ITEM, /* one bin after the other: the item that the rule likes best */
  PICK_COUNT
} Pick;

typedef struct
{
  const HutRectSize *sizes;
  guint count;
  HutRectSize bin;
  gboolean may_turn;
  HutLot lot;
  guint64 work;

  HutRectRoom *rooms;     /* (array length=count) */
  HutRectPlace *best;     /* the best whole layout */
  guint best_bins;
  HutRectPlace *trial;    /* what is being laid */
  gint64 *loads;          /* of the best layout, area per bin */
  guint *pool, *order;    /* scratch, item numbers */
  double *keys;
} Packer;

static gint64
area_of (HutRectSize size)
{
  return (gint64) size.width * size.height;
}

static double
key_of (HutRectSize size,
        Key key)
{
  const double width = size.width, height = size.height;

  switch (key)
    {
    case KEY_SHORT_SIDE:
      return MIN (width, height);
    case KEY_LONG_SIDE:
      return MAX (width, height);
    case KEY_PERIMETER:
      return width + height;
    case KEY_WIDTH:
      return width;
    case KEY_HEIGHT:
      return height;
    case KEY_SLENDER:
      return MAX (width, height) / MIN (width, height);
    case KEY_AREA:
    default:
      return width * height;
    }
}

/* Sorts the items by a key, largest first, each key made up to @noise_ratio larger by lot. */
static void
sort_items (Packer *self,
            guint *items,
            guint count,
            Key key,
            double noise_ratio)
{
  for (guint i = 0; i < count; i++)
    {
      const guint item = items[i];
      const double value = key_of (self->sizes[item], key)
                           * (1.0 + (noise_ratio > 0.0 ? noise_ratio * hut_lot_ratio (&self->lot)
                                                       : 0.0));
      guint at = i;

      while (at > 0 && self->keys[at - 1] < value)
        {
          self->keys[at] = self->keys[at - 1];
          items[at] = items[at - 1];
          at--;
        }
      self->keys[at] = value;
      items[at] = item;
    }
}

static HutRectSpot
no_spot (void)
{
  return (HutRectSpot) { .first = G_MAXINT64, .second = G_MAXINT64 };
}

static void
put (Packer *self,
     guint item,
     guint bin,
     const HutRectSpot *spot)
{
  self->work += self->rooms[bin].free_count;
  hut_rect_room_take (&self->rooms[bin], &spot->box);
  self->trial[item] = (HutRectPlace) { bin, spot->box.x, spot->box.y, spot->turned };
}

/* Lays one item in one of the bins; FALSE when none has room. */
static gboolean
lay_item (Packer *self,
          guint item,
          guint bin_count,
          Pick pick,
          HutRectRule rule)
{
  HutRectSpot spot = no_spot ();
  guint bin = bin_count;

  for (guint i = 0; i < bin_count && (pick == PICK_BEST_BIN || bin == bin_count); i++)
    {
      self->work++;
      if (!hut_rect_room_may_take (&self->rooms[i], self->sizes[item], self->may_turn))
        continue;
      self->work += self->rooms[i].free_count;
      if (hut_rect_room_find (&self->rooms[i], self->sizes[item], self->may_turn, rule, &spot))
        bin = i;
    }
  if (bin == bin_count)
    return FALSE;
  put (self, item, bin, &spot);
  return TRUE;
}

/* Lays items in bin @bin while one fits, the best liked first; what is left moves to the front.
 * Returns: how many are left */
static guint
fill_bin (Packer *self,
          guint *items,
          guint count,
          guint bin,
          HutRectRule rule)
{
  for (;;)
    {
      HutRectSpot spot = no_spot ();
      guint chosen = count;

      for (guint i = 0; i < count; i++)
        {
          self->work++;
          if (!hut_rect_room_may_take (&self->rooms[bin], self->sizes[items[i]], self->may_turn))
            continue;
          self->work += self->rooms[bin].free_count;
          if (hut_rect_room_find (&self->rooms[bin], self->sizes[items[i]], self->may_turn, rule,
                                  &spot))
            chosen = i;
        }
      if (chosen == count)
        return count;
      put (self, items[chosen], bin, &spot);
      memmove (&items[chosen], &items[chosen + 1], (count - chosen - 1) * sizeof *items);
      count--;
    }
}

/* Lays the items into bins 0 .. @bin_count - 1; what finds no room moves to the front of @items.
 * Returns: how many found none */
static guint
lay_all (Packer *self,
         guint *items,
         guint count,
         guint bin_count,
         Pick pick,
         HutRectRule rule)
{
  guint left = 0;

  for (guint i = 0; i < bin_count; i++)
    hut_rect_room_reset (&self->rooms[i], self->bin);
  if (pick == PICK_BEST_ITEM)
    {
      left = count;
      for (guint i = 0; i < bin_count && left > 0; i++)
        left = fill_bin (self, items, left, i, rule);
      return left;
    }
  for (guint i = 0; i < count; i++)
    if (!lay_item (self, items[i], bin_count, pick, rule))
      items[left++] = items[i];
  return left;
}

/* ---- whole layouts --------------------------------------------------------------------------- */

/* Loads of the best layout; bins are numbered anew so that the emptiest comes last. */
static void
weigh_bins (Packer *self)
{
  g_autofree guint *number = g_new (guint, self->best_bins);
  g_autofree gint64 *loads = g_new0 (gint64, self->best_bins);

  for (guint i = 0; i < self->count; i++)
    loads[self->best[i].bin] += area_of (self->sizes[i]);
  for (guint i = 0; i < self->best_bins; i++)
    {
      guint at = i;

      while (at > 0 && loads[number[at - 1]] < loads[i])
        {
          number[at] = number[at - 1];
          at--;
        }
      number[at] = i;
    }
  for (guint i = 0; i < self->best_bins; i++)
    self->loads[i] = loads[number[i]];
  for (guint i = 0; i < self->count; i++)
    {
      guint at = 0;

      while (number[at] != self->best[i].bin)
        at++;
      self->best[i].bin = at;
    }
}

/* Takes the whole trial as the best layout. Bins without items at the end are dropped. */
static void
keep_trial (Packer *self)
{
  self->best_bins = 0;
  memcpy (self->best, self->trial, self->count * sizeof *self->best);
  for (guint i = 0; i < self->count; i++)
    self->best_bins = MAX (self->best_bins, self->best[i].bin + 1);
  weigh_bins (self);
}

static void
start_layouts (Packer *self,
               guint bound,
               guint64 work_limit)
{
  const guint runs = KEY_COUNT * HUT_RECT_RULE_COUNT * PICK_COUNT;

  for (guint run = 0; run < runs && self->best_bins > bound; run++)
    {
      const Pick pick = run % PICK_COUNT;
      const HutRectRule rule = run / PICK_COUNT % HUT_RECT_RULE_COUNT;
      const Key key = run / PICK_COUNT / HUT_RECT_RULE_COUNT;

      /* The first bin's item needs no order. */
      if (pick == PICK_BEST_ITEM && key > 0)
        continue;
      if (run > 0 && self->work > work_limit)
        return;
      for (guint i = 0; i < self->count; i++)
        self->order[i] = i;
      sort_items (self, self->order, self->count, key, 0.0);
      if (lay_all (self, self->order, self->count,
                   run == 0 ? self->count : self->best_bins - 1, pick, rule) == 0)
        keep_trial (self);
    }
}

/* ---- some bins ------------------------------------------------------------------------------- */

/* The emptiest bin and others, by lot; @chosen gets their numbers. Returns: how many */
static guint
choose_bins (Packer *self,
             guint chosen[OTHERS_MAX + 1])
{
  const guint drawn = 1 + 1 + hut_lot_below (&self->lot, OTHERS_MAX);
  const guint wanted = MIN (drawn, self->best_bins);
  guint count = 1;

  chosen[0] = self->best_bins - 1;
  /* Now and then another bin is drained, so that the search does not hang on one. */
  if (hut_lot_below (&self->lot, OTHERS_MAX) == 0)
    chosen[0] = hut_lot_below (&self->lot, self->best_bins);
  while (count < wanted)
    {
      const guint bin = hut_lot_below (&self->lot, self->best_bins);
      gboolean is_new = TRUE;

      for (guint i = 0; i < count; i++)
        is_new &= chosen[i] != bin;
      if (is_new)
        chosen[count++] = bin;
    }
  return count;
}

/* The items of those bins. Returns: how many */
static guint
fill_pool (Packer *self,
           const guint *chosen,
           guint bin_count)
{
  guint count = 0;

  for (guint i = 0; i < self->count; i++)
    for (guint k = 0; k < bin_count; k++)
      if (self->best[i].bin == chosen[k])
        self->pool[count++] = i;
  return count;
}

static double
squares (const gint64 *loads,
         guint count)
{
  double sum = 0.0;

  for (guint i = 0; i < count; i++)
    sum += (double) loads[i] * (double) loads[i];
  return sum;
}

/* Puts the pool's new places into the best layout. */
static void
keep_pool (Packer *self,
           const guint *chosen,
           guint item_count)
{
  for (guint i = 0; i < self->count; i++)
    self->order[i] = 0;
  for (guint i = 0; i < item_count; i++)
    self->order[self->pool[i]] = 1;
  for (guint i = 0; i < self->count; i++)
    if (self->order[i] == 0)
      self->trial[i] = self->best[i];
    else
      self->trial[i].bin = chosen[self->trial[i].bin];
}

/* Moves bins down over those that have become empty. */
static void
close_gaps (Packer *self)
{
  g_autofree guint *number = g_new0 (guint, self->best_bins);
  guint used = 0;

  for (guint i = 0; i < self->count; i++)
    number[self->trial[i].bin] = 1;
  for (guint i = 0; i < self->best_bins; i++)
    number[i] = number[i] != 0 ? used++ : 0;
  for (guint i = 0; i < self->count; i++)
    self->trial[i].bin = number[self->trial[i].bin];
}

static void
try_some_bins (Packer *self)
{
  guint chosen[OTHERS_MAX + 1];
  gint64 before[OTHERS_MAX + 1], after[OTHERS_MAX + 1] = { 0 };
  const guint bin_count = choose_bins (self, chosen);
  const guint item_count = fill_pool (self, chosen, bin_count);
  const double noise_ratio
      = NOISE_LEAST + (NOISE_MOST - NOISE_LEAST) * hut_lot_ratio (&self->lot);
  const double share = hut_lot_ratio (&self->lot);
  const Pick pick = share < BEST_ITEM_SHARE                    ? PICK_BEST_ITEM
                    : share < BEST_ITEM_SHARE + BEST_BIN_SHARE ? PICK_BEST_BIN
                                                               : PICK_FIRST_BIN;
  double gain;

  self->work += POOL_WORK * self->count;
  memcpy (self->order, self->pool, item_count * sizeof *self->order);
  sort_items (self, self->order, item_count, hut_lot_below (&self->lot, KEY_COUNT), noise_ratio);
  if (lay_all (self, self->order, item_count, bin_count, pick,
               hut_lot_below (&self->lot, HUT_RECT_RULE_COUNT)) > 0)
    return;
  for (guint i = 0; i < bin_count; i++)
    before[i] = self->loads[chosen[i]];
  for (guint i = 0; i < item_count; i++)
    after[self->trial[self->pool[i]].bin] += area_of (self->sizes[self->pool[i]]);
  gain = squares (after, bin_count) / squares (before, bin_count) - 1.0;
  if (gain < 0.0 && (gain < -WORSE_RATIO || hut_lot_ratio (&self->lot) >= WORSE_SHARE))
    return;
  keep_pool (self, chosen, item_count);
  close_gaps (self);
  keep_trial (self);
}

/* ---- one bin less ---------------------------------------------------------------------------- */

/* An order of all items for one bin less, and what area it leaves out. */
typedef struct
{
  guint *order;
  gint64 left_out;
  guint bins;
} Whole;

static void
shake_whole (Packer *self,
             const Whole *whole)
{
  const guint swaps = 1 + hut_lot_below (&self->lot, 3);

  memcpy (self->order, whole->order, self->count * sizeof *self->order);
  for (guint i = 0; i < swaps; i++)
    {
      const guint from = hut_lot_below (&self->lot, self->count);
      const guint to = hut_lot_below (&self->lot, self->count);
      const guint item = self->order[from];

      self->order[from] = self->order[to];
      self->order[to] = item;
    }
}

static void
try_whole (Packer *self,
           Whole *whole)
{
  const gboolean anew = whole->bins != self->best_bins - 1
                        || hut_lot_below (&self->lot, 10 * self->count) == 0;
  gint64 left_out = 0;
  guint left;

  if (anew)
    {
      for (guint i = 0; i < self->count; i++)
        self->order[i] = i;
      sort_items (self, self->order, self->count, hut_lot_below (&self->lot, KEY_COUNT),
                  NOISE_LEAST);
    }
  else
    shake_whole (self, whole);
  memcpy (self->pool, self->order, self->count * sizeof *self->pool);
  left = lay_all (self, self->pool, self->count, self->best_bins - 1,
                  hut_lot_below (&self->lot, 4) == 0 ? PICK_BEST_BIN : PICK_FIRST_BIN,
                  hut_lot_below (&self->lot, HUT_RECT_RULE_COUNT));
  for (guint i = 0; i < left; i++)
    left_out += area_of (self->sizes[self->pool[i]]);
  if (anew || left_out <= whole->left_out)
    {
      memcpy (whole->order, self->order, self->count * sizeof *whole->order);
      whole->left_out = left_out;
      whole->bins = self->best_bins - 1;
    }
  if (left == 0)
    keep_trial (self);
}

/* ---- the search ------------------------------------------------------------------------------ */

static void
packer_clear (Packer *self)
{
  for (guint i = 0; i < self->count; i++)
    hut_rect_room_clear (&self->rooms[i]);
  g_free (self->rooms);
  g_free (self->best);
  g_free (self->trial);
  g_free (self->loads);
  g_free (self->pool);
  g_free (self->order);
  g_free (self->keys);
}

G_DEFINE_AUTO_CLEANUP_CLEAR_FUNC (Packer, packer_clear)

static gboolean
all_fit (const HutRectSize *sizes,
         guint count,
         HutRectSize bin,
         gboolean may_turn)
{
  for (guint i = 0; i < count; i++)
    if ((sizes[i].width > bin.width || sizes[i].height > bin.height)
        && (!may_turn || sizes[i].height > bin.width || sizes[i].width > bin.height))
      return FALSE;
  return TRUE;
}

HutRectPlace *
hut_rect_pack (const HutRectSize *sizes,
               guint count,
               HutRectSize bin,
               gboolean may_turn,
               guint64 work_limit,
               guint *bin_count)
{
  g_return_val_if_fail (bin_count != NULL && (sizes != NULL || count == 0), NULL);

  g_auto(Packer) self = { sizes, count, bin, may_turn };
  g_autofree guint *whole_order = g_new0 (guint, count + 1);
  Whole whole = { .order = whole_order };
  guint bound;

  *bin_count = 0;
  if (!all_fit (sizes, count, bin, may_turn))
    {
      self.count = 0;
      return NULL;
    }
  self.rooms = g_new0 (HutRectRoom, count + 1);
  self.best = g_new0 (HutRectPlace, count + 1);
  self.trial = g_new0 (HutRectPlace, count + 1);
  self.loads = g_new0 (gint64, count + 1);
  self.pool = g_new0 (guint, count + 1);
  self.order = g_new0 (guint, count + 1);
  self.keys = g_new0 (double, count + 1);
  self.best_bins = count > 0 ? G_MAXUINT : 0;
  hut_lot_init (&self.lot, count);
  bound = hut_rect_bound (sizes, count, bin, may_turn);
  start_layouts (&self, bound, work_limit);
  while (self.best_bins > bound && self.work < work_limit)
    if (self.best_bins - 1 <= WHOLE_BINS_MAX && hut_lot_ratio (&self.lot) < WHOLE_SHARE)
      try_whole (&self, &whole);
    else
      try_some_bins (&self);
  *bin_count = self.best_bins;
  return g_steal_pointer (&self.best);
}

/* src/sheets/hut-outline-pack.c: shapes of any outline in as few equal rectangles as may be.
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Strategy: for an order of the items and a rule, each item goes to the best place
 * (hut-outline-place.c) of the first bin that has room. Some orders by size and all rules are
 * tried. While the area allows fewer bins, one is emptied into the others, which are then moved
 * apart (hut-outline-drop.c). Then the order of the best layout is changed a little, many times.
 * Invariants: every layout is whole; a layout with more bins than the best one is given up.
 * Not promised: the fewest bins. */
#define G_LOG_DOMAIN "hut-sheets"
#include "config.h"
#include "sheets/hut-outline-pack.h"
#include "sheets/hut-lot.h"
#include "sheets/hut-outline-private.h"
#include <math.h>

/* Layouts in a row without gain after which no better one is expected (count): one more than the
 * orders and rules that are tried first; own choice by trial on the examples. */
#define IDLE_ROUNDS 60
/* The same when the bins are as few as their area allows. */
#define IDLE_ROUNDS_AT_BOUND 6
/* Share of later rounds that change the rule as well. Own choice. */
#define HUT_RULE_CHANGE_SHARE 0.2
/* Most items that are moved in the order for one round (count). Own choice. */
#define MOVES_MAX 4

typedef enum
{
  SORT_AREA,
  SORT_LONG_SIDE,
  SORT_SHORT_SIDE,
  SORT_BOX,
  SORT_COUNT
} Sort;

/* A layout, and how good it is. */
typedef struct
{
  GArray *places; /* HutOutlinePlace */
  guint bin_count;
  double last_load_mm2, last_extent_mm2;
} Layout;

static void
bin_free (gpointer data)
{
  HutPackBin *self = data;

  g_array_unref (self->resting);
  g_free (self);
}

static void
layout_clear (Layout *self)
{
  g_clear_pointer (&self->places, g_array_unref);
}

/* ---- layouts --------------------------------------------------------------------------------- */

static HutPackBin *
append_bin (GPtrArray *bins)
{
  HutPackBin *bin = g_new0 (HutPackBin, 1);

  bin->resting = g_array_new (FALSE, FALSE, sizeof (HutPackResting));
  g_ptr_array_add (bins, bin);
  return bin;
}

static void
rest (HutOutlinePack *self,
      GPtrArray *bins,
      guint bin_index,
      guint item_index,
      const HutPackBest *best,
      GArray *places)
{
  HutPackBin *bin = g_ptr_array_index (bins, bin_index);
  const HutPackItem *item = g_ptr_array_index (self->items, item_index);
  const HutPackWay *way = &g_array_index (item->ways, HutPackWay, best->way);
  const HutPackShape *shape = g_ptr_array_index (self->shapes, way->shape);
  const HutPackResting resting = { way->shape, best->at };

  g_array_append_val (bin->resting, resting);
  bin->used_u_mm = MAX (bin->used_u_mm, best->at.u + shape->width_mm);
  bin->used_v_mm = MAX (bin->used_v_mm, best->at.v + shape->height_mm);
  bin->load_mm2 += item->area_mm2;
  g_array_index (places, HutOutlinePlace, item_index)
      = (HutOutlinePlace) { bin_index, way->way, best->at };
}

static void
rate_layout (const HutOutlinePack *self,
             const GPtrArray *bins,
             Layout *layout)
{
  for (guint i = 0; i < bins->len; i++)
    {
      const HutPackBin *bin = g_ptr_array_index (bins, i);

      if (bin->resting->len == 0)
        continue;
      layout->bin_count++;
      layout->last_load_mm2 = bin->load_mm2;
      layout->last_extent_mm2 = bin->used_u_mm * bin->used_v_mm;
    }
}

static void
rest_fixed (HutOutlinePack *self,
            GPtrArray *bins,
            GArray *places)
{
  for (guint i = 0; i < self->items->len; i++)
    {
      const HutPackItem *item = g_ptr_array_index (self->items, i);
      const HutPackBest best = { .found = TRUE, .at = item->fixed_at };

      if (!item->fixed)
        continue;
      while (bins->len <= item->fixed_bin)
        append_bin (bins);
      rest (self, bins, item->fixed_bin, i, &best, places);
    }
}

/* One layout of the free items in the given order; FALSE when it was given up for more bins than
 * @bin_limit. */
static gboolean
lay_out (HutOutlinePack *self,
         const guint *order,
         guint order_count,
         HutPlaceRule rule,
         guint bin_limit,
         Layout *layout)
{
  g_autoptr(GPtrArray) bins = g_ptr_array_new_with_free_func (bin_free);

  layout->places = g_array_sized_new (FALSE, TRUE, sizeof (HutOutlinePlace), self->items->len);
  g_array_set_size (layout->places, self->items->len);
  rest_fixed (self, bins, layout->places);
  for (guint i = 0; i < order_count; i++)
    {
      const HutPackItem *item = g_ptr_array_index (self->items, order[i]);
      HutPackBest best;
      guint bin_index = 0;

      while (bin_index < bins->len
             && !hut_outline_pack_find_place (self, g_ptr_array_index (bins, bin_index), item, rule,
                                              &best))
        bin_index++;
      if (bin_index == bins->len)
        {
          if (bins->len == bin_limit)
            return FALSE;
          if (!hut_outline_pack_find_place (self, append_bin (bins), item, rule, &best))
            g_assert_not_reached (); /* every way fits an empty bin */
        }
      rest (self, bins, bin_index, order[i], &best, layout->places);
    }
  rate_layout (self, bins, layout);
  return TRUE;
}

/* A layout of places that were found another way. @places: (transfer full) */
static Layout
layout_from_places (HutOutlinePack *self,
                    GArray *places)
{
  g_autoptr(GPtrArray) bins = g_ptr_array_new_with_free_func (bin_free);
  Layout layout = { .places = places };

  for (guint i = 0; i < places->len; i++)
    {
      const HutOutlinePlace place = g_array_index (places, HutOutlinePlace, i);
      const HutPackBest best = {
        .found = TRUE,
        .way = hut_pack_item_find_way (g_ptr_array_index (self->items, i), place.way),
        .at = place.at,
      };

      while (bins->len <= place.bin)
        append_bin (bins);
      rest (self, bins, place.bin, i, &best, places);
    }
  rate_layout (self, bins, &layout);
  return layout;
}

static gboolean
layout_is_better (const Layout *self,
                  const Layout *than)
{
  if (self->bin_count != than->bin_count)
    return self->bin_count < than->bin_count;
  if (fabs (self->last_load_mm2 - than->last_load_mm2) > HUT_NO_FIT_SLACK_MM)
    return self->last_load_mm2 < than->last_load_mm2;
  return self->last_extent_mm2 < than->last_extent_mm2 - HUT_NO_FIT_SLACK_MM;
}

static double
sort_key (const HutPackItem *item,
          Sort sort)
{
  switch (sort)
    {
    case SORT_LONG_SIDE:
      return item->long_mm;
    case SORT_SHORT_SIDE:
      return item->short_mm;
    case SORT_BOX:
      return item->long_mm * item->short_mm;
    case SORT_AREA:
    default:
      return item->area_mm2;
    }
}

/* The free items, largest first; equal ones as they were added. Returns: how many */
static guint
sort_order (const HutOutlinePack *self,
            Sort sort,
            guint *order)
{
  guint count = 0;

  for (guint i = 0; i < self->items->len; i++)
    {
      const HutPackItem *item = g_ptr_array_index (self->items, i);
      const double key = sort_key (item, sort);
      guint at = count;

      if (item->fixed)
        continue;
      count++;

      while (at > 0 && sort_key (g_ptr_array_index (self->items, order[at - 1]), sort) < key)
        {
          order[at] = order[at - 1];
          at--;
        }
      order[at] = i;
    }
  return count;
}

/* Takes some items out of the order and puts them in elsewhere, mostly further to the front. */
static void
shake_order (HutLot *lot,
             guint *order,
             guint count)
{
  const guint moves = 1 + hut_lot_below (lot, MIN (MOVES_MAX, count));

  for (guint i = 0; i < moves; i++)
    {
      const guint from = hut_lot_below (lot, count);
      const guint to = hut_lot_below (lot, count);
      const guint item = order[from];

      if (from < to)
        memmove (&order[from], &order[from + 1], (to - from) * sizeof *order);
      else
        memmove (&order[to + 1], &order[to], (from - to) * sizeof *order);
      order[to] = item;
    }
}

static guint
bin_bound (const HutOutlinePack *self)
{
  double area_mm2 = 0.0;

  for (guint i = 0; i < self->items->len; i++)
    area_mm2 += ((const HutPackItem *) g_ptr_array_index (self->items, i))->area_mm2;
  return (guint) MAX (ceil (area_mm2 / (self->width_mm * self->height_mm) - HUT_NO_FIT_SLACK_MM),
                      1.0);
}

/* What a search knows of the best layout: the layout, and how it came about. */
typedef struct
{
  Layout layout;
  guint *order; /* (array length=count): the free items */
  guint count;
  HutPlaceRule rule;
  guint idle; /* rounds since it was found */
} Search;

/* Lays out in @order and keeps what is better. */
static void
search_try (HutOutlinePack *self,
            Search *search,
            const guint *order,
            HutPlaceRule rule)
{
  const guint limit = search->layout.places != NULL ? search->layout.bin_count : G_MAXUINT;
  Layout layout = { NULL };

  search->idle++;
  if (lay_out (self, order, search->count, rule, limit, &layout)
      && (search->layout.places == NULL || layout_is_better (&layout, &search->layout)))
    {
      layout_clear (&search->layout);
      search->layout = layout;
      search->rule = rule;
      search->idle = 0;
      memcpy (search->order, order, search->count * sizeof *order);
    }
  else
    layout_clear (&layout);
}

static gboolean
may_go_on (const HutOutlinePack *self,
           guint64 work_limit,
           const HutPackWatch *watch)
{
  return self->work < work_limit
         && (watch == NULL || watch->go_on == NULL
             || watch->go_on ((double) self->work / (double) work_limit, watch->user_data));
}

static gboolean
search_goes_on (const HutOutlinePack *self,
                const Search *search,
                guint64 work_limit,
                const HutPackWatch *watch)
{
  const guint idle_max
      = search->layout.bin_count <= bin_bound (self) ? IDLE_ROUNDS_AT_BOUND : IDLE_ROUNDS;

  return search->idle <= idle_max && may_go_on (self, work_limit, watch);
}

/* Bins are dropped as long as that comes out within the work. */
static void
drop_bins (HutOutlinePack *self,
           Search *search,
           HutLot *lot,
           guint64 work_limit,
           const HutPackWatch *watch)
{
  while (search->layout.bin_count > bin_bound (self) && self->work < work_limit)
    {
      GArray *places = g_array_copy (search->layout.places);

      if (!hut_outline_pack_drop_bin (self, places, hut_lot_next (lot), work_limit, watch))
        {
          g_array_unref (places);
          return;
        }
      layout_clear (&search->layout);
      search->layout = layout_from_places (self, places);
      search->idle = 0;
    }
}

/* The best order is shaken until nothing comes of it any more. */
static void
shake (HutOutlinePack *self,
       Search *search,
       HutLot *lot,
       guint64 work_limit,
       const HutPackWatch *watch)
{
  g_autofree guint *order = g_new0 (guint, search->count + 1);

  while (search_goes_on (self, search, work_limit, watch))
    {
      const gboolean other_rule = hut_lot_ratio (lot) < HUT_RULE_CHANGE_SHARE;

      memcpy (order, search->order, search->count * sizeof *order);
      shake_order (lot, order, search->count);
      search_try (self, search, order,
                  other_rule ? (HutPlaceRule) hut_lot_below (lot, HUT_RULE_COUNT) : search->rule);
    }
}

GArray *
hut_outline_pack_run (HutOutlinePack *self,
                      guint64 work_limit,
                      const HutPackWatch *watch)
{
  g_return_val_if_fail (self != NULL, NULL);

  const guint count = self->items->len;
  g_autofree guint *order = g_new0 (guint, count + 1);
  g_autofree guint *best_order = g_new0 (guint, count + 1);
  Search search = { .order = best_order };
  gboolean more = TRUE;
  HutLot lot;

  if (count == 0)
    return g_array_new (FALSE, TRUE, sizeof (HutOutlinePlace));
  self->work = 0;
  hut_lot_init (&lot, count);
  for (guint i = 0; more && i < SORT_COUNT * HUT_RULE_COUNT; i++)
    {
      search.count = sort_order (self, i / HUT_RULE_COUNT, order);
      search_try (self, &search, order, i % HUT_RULE_COUNT);
      more = search_goes_on (self, &search, work_limit, watch);
    }
  if (search.count < 2 || !may_go_on (self, work_limit, watch))
    return search.layout.places;
  drop_bins (self, &search, &lot, self->work + (work_limit - self->work) / 2, watch);
  shake (self, &search, &lot, work_limit, watch);
  for (guint64 before = 0; before != self->work && may_go_on (self, work_limit, watch);)
    {
      before = self->work;
      drop_bins (self, &search, &lot, work_limit, watch);
    }
  return search.layout.places;
}

/* src/sheets/hut-outline-pack.c: shapes of any outline in as few equal rectangles as may be.
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Strategy: for an order of the items and a rule, each item goes to the best place
 * (hut-outline-place.c) of the first bin that has room. Some orders by size and all rules are
 * tried, then the order of the best layout is changed a little, again and again.
 * Invariants: every layout is whole; a layout with more bins than the best one is given up.
 * Not promised: the fewest bins. */
#define G_LOG_DOMAIN "hut-sheets"
#include "config.h"
#include "sheets/hut-outline-pack.h"
#include "sheets/hut-lot.h"
#include "sheets/hut-outline-private.h"
#include <math.h>

/* Shapes whose points are nearer than this are the same, mm. */
#define SAME_MM 1e-7
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
shape_free (gpointer data)
{
  HutPackShape *self = data;

  hut_convex_set_free (self->set);
  g_free (self);
}

static void
item_free (gpointer data)
{
  HutPackItem *self = data;

  g_array_unref (self->ways);
  g_free (self);
}

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

HutOutlinePack *
hut_outline_pack_new (double width_mm,
                      double height_mm)
{
  HutOutlinePack *self = g_new0 (HutOutlinePack, 1);

  self->width_mm = width_mm;
  self->height_mm = height_mm;
  self->shapes = g_ptr_array_new_with_free_func (shape_free);
  self->items = g_ptr_array_new_with_free_func (item_free);
  self->no_fits = g_hash_table_new_full (g_int64_hash, g_int64_equal, g_free,
                                         (GDestroyNotify) hut_no_fit_free);
  self->walls = g_array_new (FALSE, FALSE, sizeof (HutWall));
  return self;
}

void
hut_outline_pack_free (HutOutlinePack *self)
{
  if (self == NULL)
    return;
  g_ptr_array_unref (self->shapes);
  g_ptr_array_unref (self->items);
  g_hash_table_unref (self->no_fits);
  g_array_unref (self->walls);
  g_free (self);
}

/* ---- shapes ---------------------------------------------------------------------------------- */

/* TRUE when every point of @a is one of @b: good enough for the same shape turned. */
static gboolean
points_agree (const HutConvexSet *a,
              const HutConvexSet *b)
{
  for (guint i = 0; i < a->points->len; i++)
    {
      const HutPoint p = g_array_index (a->points, HutPoint, i);
      gboolean found = FALSE;

      for (guint k = 0; !found && k < b->points->len; k++)
        {
          const HutPoint q = g_array_index (b->points, HutPoint, k);

          found = fabs (p.u - q.u) <= SAME_MM && fabs (p.v - q.v) <= SAME_MM;
        }
      if (!found)
        return FALSE;
    }
  return TRUE;
}

/* Same pieces, in any order: each piece's points are those of a piece. */
static gboolean
sets_agree (const HutConvexSet *a,
            const HutConvexSet *b)
{
  if (a->points->len != b->points->len || a->ends->len != b->ends->len
      || !points_agree (a, b) || !points_agree (b, a))
    return FALSE;
  if (a->ends->len == 1)
    return TRUE;
  /* With several pieces the same points can be joined in other ways: only equal order is sure. */
  for (guint i = 0; i < a->points->len; i++)
    {
      const HutPoint p = g_array_index (a->points, HutPoint, i),
                     q = g_array_index (b->points, HutPoint, i);

      if (fabs (p.u - q.u) > SAME_MM || fabs (p.v - q.v) > SAME_MM)
        return FALSE;
    }
  return TRUE;
}

/* @set: (transfer full). Returns: index of an equal shape, or of the new one. */
static guint
take_shape (HutOutlinePack *self,
            HutConvexSet *set,
            double width_mm,
            double height_mm)
{
  HutPackShape *shape;

  for (guint i = 0; i < self->shapes->len; i++)
    {
      shape = g_ptr_array_index (self->shapes, i);
      if (fabs (shape->width_mm - width_mm) <= SAME_MM
          && fabs (shape->height_mm - height_mm) <= SAME_MM && sets_agree (shape->set, set))
        {
          hut_convex_set_free (set);
          return i;
        }
    }
  shape = g_new0 (HutPackShape, 1);
  shape->set = set;
  shape->width_mm = width_mm;
  shape->height_mm = height_mm;
  g_ptr_array_add (self->shapes, shape);
  return self->shapes->len - 1;
}

static gboolean
item_has_shape (const HutPackItem *self,
                guint shape)
{
  for (guint i = 0; i < self->ways->len; i++)
    if (g_array_index (self->ways, HutPackWay, i).shape == shape)
      return TRUE;
  return FALSE;
}

static gboolean
way_fits (const HutOutlinePack *self,
          const HutOutlineWay *way)
{
  return way->box.u1 - way->box.u0 <= self->width_mm + HUT_NO_FIT_SLACK_MM
         && way->box.v1 - way->box.v0 <= self->height_mm + HUT_NO_FIT_SLACK_MM;
}

/* Adds the way to the item, unless it looks like another one. */
static void
add_way (HutOutlinePack *self,
         HutPackItem *item,
         const HutConvexSet *shape,
         const HutOutlineWay *given,
         guint index)
{
  const double width_mm = given->box.u1 - given->box.u0, height_mm = given->box.v1 - given->box.v0;
  const HutPlacement placement = { .turn_rad = given->turn_rad,
                                   .shift = { -given->box.u0, -given->box.v0 } };
  HutPackWay way = { .way = index };

  way.shape = take_shape (self, hut_convex_set_dup_placed (shape, &placement), width_mm, height_mm);
  if (!item_has_shape (item, way.shape))
    g_array_append_val (item->ways, way);
}

static HutPackItem *
item_new (const HutConvexSet *shape,
          double area_mm2)
{
  const HutRect bounds = hut_convex_set_bounds (shape);
  const double width_mm = bounds.u1 - bounds.u0, height_mm = bounds.v1 - bounds.v0;
  HutPackItem *self = g_new0 (HutPackItem, 1);

  self->ways = g_array_new (FALSE, FALSE, sizeof (HutPackWay));
  self->area_mm2 = area_mm2;
  self->long_mm = MAX (width_mm, height_mm);
  self->short_mm = MIN (width_mm, height_mm);
  return self;
}

gboolean
hut_outline_pack_add (HutOutlinePack *self,
                      const HutConvexSet *shape,
                      const HutOutlineWay *ways,
                      guint way_count,
                      double area_mm2)
{
  g_return_val_if_fail (self != NULL && shape != NULL && ways != NULL, FALSE);

  HutPackItem *item = item_new (shape, area_mm2);

  for (guint i = 0; i < way_count; i++)
    if (way_fits (self, &ways[i]))
      add_way (self, item, shape, &ways[i], i);
  if (item->ways->len == 0)
    {
      item_free (item);
      return FALSE;
    }
  g_ptr_array_add (self->items, item);
  return TRUE;
}

void
hut_outline_pack_add_fixed (HutOutlinePack *self,
                            const HutConvexSet *shape,
                            const HutOutlineWay *way,
                            guint bin,
                            HutPoint at,
                            double area_mm2)
{
  g_return_if_fail (self != NULL && shape != NULL && way != NULL);

  HutPackItem *item = item_new (shape, area_mm2);

  add_way (self, item, shape, way, 0);
  item->fixed = TRUE;
  item->fixed_bin = bin;
  item->fixed_at = at;
  g_ptr_array_add (self->items, item);
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
search_goes_on (const HutOutlinePack *self,
                const Search *search,
                guint64 work_limit,
                const HutPackWatch *watch)
{
  const guint idle_max
      = search->layout.bin_count <= bin_bound (self) ? IDLE_ROUNDS_AT_BOUND : IDLE_ROUNDS;

  if (self->work >= work_limit || search->idle > idle_max)
    return FALSE;
  return watch == NULL || watch->go_on == NULL
         || watch->go_on ((double) self->work / (double) work_limit, watch->user_data);
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
  while (more && search.count > 1)
    {
      const gboolean other_rule = hut_lot_ratio (&lot) < HUT_RULE_CHANGE_SHARE;

      memcpy (order, search.order, search.count * sizeof *order);
      shake_order (&lot, order, search.count);
      search_try (self, &search, order,
                  other_rule ? (HutPlaceRule) hut_lot_below (&lot, HUT_RULE_COUNT) : search.rule);
      more = search_goes_on (self, &search, work_limit, watch);
    }
  return search.layout.places;
}

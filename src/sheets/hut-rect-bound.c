/* src/sheets/hut-rect-bound.c: how many bins rectangles need at least.
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * All in whole numbers: u_k is taken k times as large, so that no rounding can lift the bound above
 * the truth. Functions differ only at the sizes that occur, so thresholds are taken from those, at
 * most THRESHOLDS_MAX of them, evenly among the sorted ones. */
#define G_LOG_DOMAIN "hut-sheets"
#include "config.h"
#include "sheets/hut-rect-bound.h"

/* Most thresholds of a kind, and most steps of u_k (count). Own choice: enough for the sizes of the
 * published sets, and 100 items take some milliseconds. */
#define THRESHOLDS_MAX 50
#define STEPS_MAX 60

/* The values of one function: per item, and of the whole bin. */
typedef struct
{
  gint64 *along, *across; /* of the item's side along this axis, and of its other side */
  gint64 whole;
} Weights;

static void
weights_clear (gpointer data)
{
  Weights *self = data;

  g_free (self->along);
  g_free (self->across);
}

typedef enum
{
  KIND_SIZE,
  KIND_THRESHOLD,
  KIND_HALVES, /* f_k */
  KIND_STEPS,  /* u_k */
} Kind;

static gint64
weigh (Kind kind,
       gint64 size,
       gint64 whole,
       gint64 k)
{
  switch (kind)
    {
    case KIND_THRESHOLD:
      return size > whole - k ? whole : size < k ? 0 : size;
    case KIND_HALVES:
      if (2 * size > whole)
        return 2 * (whole / k - (whole - size) / k);
      return 2 * size == whole ? whole / k : 2 * (size / k);
    case KIND_STEPS:
      return (k + 1) * size % whole == 0 ? k * size : (k + 1) * size / whole * whole;
    case KIND_SIZE:
    default:
      return size;
    }
}

static gint64
weigh_whole (Kind kind,
             gint64 whole,
             gint64 k)
{
  return kind == KIND_HALVES ? 2 * (whole / k) : kind == KIND_STEPS ? k * whole : whole;
}

static gint64
side_of (HutRectSize size,
         gboolean height)
{
  return height ? size.height : size.width;
}

static void
append_weights (GArray *all,
                Kind kind,
                gint64 k,
                const HutRectSize *sizes,
                guint count,
                gint64 whole,
                gboolean height)
{
  Weights weights = { g_new (gint64, count), g_new (gint64, count), weigh_whole (kind, whole, k) };

  for (guint i = 0; i < count; i++)
    {
      const gint64 across = side_of (sizes[i], !height);

      weights.along[i] = weigh (kind, side_of (sizes[i], height), whole, k);
      weights.across[i] = across <= whole ? weigh (kind, across, whole, k) : 0;
    }
  g_array_append_val (all, weights);
}

static int
compare_sides (gconstpointer a,
               gconstpointer b)
{
  const gint64 x = *(const gint64 *) a, y = *(const gint64 *) b;

  return (x > y) - (x < y);
}

/* Sides up to half the bin, each once, sorted. (element-type gint64) */
static GArray *
dup_thresholds (const HutRectSize *sizes,
                guint count,
                gint64 whole)
{
  g_autoptr(GArray) sides = g_array_new (FALSE, FALSE, sizeof (gint64));
  GArray *chosen = g_array_new (FALSE, FALSE, sizeof (gint64));
  guint kept = 0, taken;

  for (guint i = 0; i < 2 * count; i++)
    {
      const gint64 side = side_of (sizes[i / 2], i % 2 == 1);

      if (2 * side <= whole)
        g_array_append_val (sides, side);
    }
  g_array_sort (sides, compare_sides);
  for (guint i = 0; i < sides->len; i++)
    if (i == 0 || g_array_index (sides, gint64, i) != g_array_index (sides, gint64, kept - 1))
      {
        g_array_index (sides, gint64, kept) = g_array_index (sides, gint64, i);
        kept++;
      }
  taken = MIN (kept, THRESHOLDS_MAX);
  for (guint i = 0; i < taken; i++)
    g_array_append_val (chosen, g_array_index (sides, gint64, (gsize) i * kept / taken));
  return chosen;
}

/* (element-type Weights) */
static GArray *
dup_weights (const HutRectSize *sizes,
             guint count,
             gint64 whole,
             gboolean height)
{
  g_autoptr(GArray) thresholds = dup_thresholds (sizes, count, whole);
  GArray *all = g_array_new (FALSE, FALSE, sizeof (Weights));

  g_array_set_clear_func (all, weights_clear);
  append_weights (all, KIND_SIZE, 0, sizes, count, whole, height);
  for (guint i = 0; i < thresholds->len; i++)
    {
      const gint64 k = g_array_index (thresholds, gint64, i);

      append_weights (all, KIND_THRESHOLD, k, sizes, count, whole, height);
      append_weights (all, KIND_HALVES, k, sizes, count, whole, height);
    }
  for (gint64 k = 1; k <= MIN (STEPS_MAX, whole); k++)
    append_weights (all, KIND_STEPS, k, sizes, count, whole, height);
  return all;
}

static guint
bound_by (const Weights *f,
          const Weights *g,
          guint count,
          gboolean may_turn)
{
  const gint64 whole = f->whole * g->whole;
  gint64 sum = 0;

  for (guint i = 0; i < count; i++)
    {
      const gint64 straight = f->along[i] * g->along[i];

      sum += may_turn ? MIN (straight, f->across[i] * g->across[i]) : straight;
    }
  return (guint) ((sum + whole - 1) / whole);
}

guint
hut_rect_bound (const HutRectSize *sizes,
                guint count,
                HutRectSize bin,
                gboolean may_turn)
{
  g_return_val_if_fail ((sizes != NULL || count == 0) && bin.width > 0 && bin.height > 0, 0);

  g_autoptr(GArray) widths = dup_weights (sizes, count, bin.width, FALSE);
  g_autoptr(GArray) heights = dup_weights (sizes, count, bin.height, TRUE);
  const gboolean area_only = may_turn && bin.width != bin.height;
  guint bound = 0;

  for (guint i = 0; i < (area_only ? 1 : widths->len); i++)
    for (guint k = 0; k < (area_only ? 1 : heights->len); k++)
      {
        const guint one = bound_by (&g_array_index (widths, Weights, i),
                                    &g_array_index (heights, Weights, k), count,
                                    may_turn && !area_only);

        bound = MAX (bound, one);
      }
  return bound;
}

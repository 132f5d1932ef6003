/* src/sheets/hut-outline-item.c: the shapes that a pack is given.
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Shapes that are equal are kept once, so that what is learnt of a pair serves all alike. */
#define G_LOG_DOMAIN "hut-sheets"
#include "config.h"
#include "sheets/hut-outline-private.h"
#include <math.h>

/* Shapes whose points are nearer than this are the same, mm. */
#define SAME_MM 1e-7

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

guint
hut_pack_item_find_way (const HutPackItem *self,
                        guint given)
{
  guint way = 0;

  while (g_array_index (self->ways, HutPackWay, way).way != given)
    way++;
  return way;
}

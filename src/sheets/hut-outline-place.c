/* src/sheets/hut-outline-place.c: the best place for one more shape in a bin.
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Strategy: a shape's corner may lie where no resting shape forbids it (hut-no-fit.h); the places
 * worth a look are the ends of walls and where walls cross, since a shape that lies elsewhere could
 * be pushed on. The rule gives each place a number; places that are no better than the best known
 * are never looked at. No-fit shapes are made once per pair of shapes and kept. */
#define G_LOG_DOMAIN "hut-sheets"
#include "config.h"
#include "sheets/hut-outline-private.h"
#include <math.h>

/* Work that a piece of a new no-fit shape counts for. Own choice: as long as it takes. */
#define NO_FIT_WORK 50
/* Two walls cross when the sine of their angle is larger. Own choice: rounding of unit vectors. */
#define PARALLEL_SINE 1e-9

/* A look at one shape in one bin by one rule. */
typedef struct
{
  HutOutlinePack *pack;
  const HutPackBin *bin;
  const HutPackShape *shape;
  HutNoFit **no_fits; /* per resting shape */
  guint way;
  HutPlaceRule rule;
  double room_u_mm, room_v_mm; /* how far the corner may go */
  HutPackBest *best;
} Look;

HutNoFit *
hut_outline_pack_get_no_fit (HutOutlinePack *self,
                             guint resting,
                             guint moving)
{
  const gint64 key = (gint64) resting << 32 | moving;
  HutNoFit *no_fit = g_hash_table_lookup (self->no_fits, &key);

  if (no_fit == NULL)
    {
      const HutPackShape *a = g_ptr_array_index (self->shapes, resting);
      const HutPackShape *b = g_ptr_array_index (self->shapes, moving);

      no_fit = hut_no_fit_new (a->set, b->set);
      self->work += NO_FIT_WORK * no_fit->boxes->len;
      g_hash_table_insert (self->no_fits, g_memdup2 (&key, sizeof key), no_fit);
    }
  return no_fit;
}

static void
rate (const Look *look,
      HutPoint p,
      double *first,
      double *second)
{
  const double right_mm = p.u + look->shape->width_mm, top_mm = p.v + look->shape->height_mm;
  const double used_u_mm = MAX (look->bin->used_u_mm, right_mm);
  const double used_v_mm = MAX (look->bin->used_v_mm, top_mm);

  switch (look->rule)
    {
    case HUT_RULE_GROW:
      *first = used_u_mm * used_v_mm;
      *second = top_mm * look->pack->width_mm + right_mm;
      break;
    case HUT_RULE_LOW:
      *first = top_mm;
      *second = right_mm;
      break;
    case HUT_RULE_LEFT:
      *first = right_mm;
      *second = top_mm;
      break;
    case HUT_RULE_CORNER:
    default:
      *first = right_mm * look->pack->height_mm + top_mm * look->pack->width_mm;
      *second = top_mm;
      break;
    }
}

/* Takes the place when it is better than the best one and free. */
static void
try_place (const Look *look,
           HutPoint p)
{
  double first, second;

  if (p.u < -HUT_NO_FIT_SLACK_MM || p.v < -HUT_NO_FIT_SLACK_MM
      || p.u > look->room_u_mm + HUT_NO_FIT_SLACK_MM
      || p.v > look->room_v_mm + HUT_NO_FIT_SLACK_MM)
    return;
  rate (look, p, &first, &second);
  if (look->best->found
      && (first > look->best->first
          || (first == look->best->first && second >= look->best->second)))
    return;
  look->pack->work += look->bin->resting->len;
  for (guint i = 0; i < look->bin->resting->len; i++)
    {
      const HutPackResting *resting = &g_array_index (look->bin->resting, HutPackResting, i);

      if (hut_no_fit_forbids (look->no_fits[i], hut_point_minus (p, resting->at)))
        return;
    }
  *look->best = (HutPackBest) { TRUE, look->way, p, first, second };
}

static int
compare_walls (gconstpointer a,
               gconstpointer b)
{
  const HutWall *x = a, *y = b;

  return (x->a.u > y->a.u) - (x->a.u < y->a.u);
}

/* All walls that the corner could touch, where they lie, each from left to right, sorted. */
static void
collect_walls (const Look *look,
               GArray *walls)
{
  g_array_set_size (walls, 0);
  for (guint i = 0; i < look->bin->resting->len; i++)
    {
      const HutPoint at = g_array_index (look->bin->resting, HutPackResting, i).at;
      const GArray *own_walls = hut_no_fit_get_walls (look->no_fits[i]);

      look->pack->work += own_walls->len;
      for (guint k = 0; k < own_walls->len; k++)
        {
          const HutWall wall = g_array_index (own_walls, HutWall, k);
          const HutPoint a = { wall.a.u + at.u, wall.a.v + at.v };
          const HutPoint b = { wall.b.u + at.u, wall.b.v + at.v };
          const HutWall placed = a.u <= b.u ? (HutWall) { a, b } : (HutWall) { b, a };

          if (placed.b.u >= -HUT_NO_FIT_SLACK_MM
              && placed.a.u <= look->room_u_mm + HUT_NO_FIT_SLACK_MM
              && MAX (a.v, b.v) >= -HUT_NO_FIT_SLACK_MM
              && MIN (a.v, b.v) <= look->room_v_mm + HUT_NO_FIT_SLACK_MM)
            g_array_append_val (walls, placed);
        }
    }
  g_array_sort (walls, compare_walls);
}

/* Where a wall meets the border of the room. */
static void
try_border (const Look *look,
            const HutWall *wall)
{
  const double edges_u_mm[] = { 0.0, look->room_u_mm }, edges_v_mm[] = { 0.0, look->room_v_mm };
  const HutPoint along = hut_point_minus (wall->b, wall->a);

  for (guint i = 0; i < 2; i++)
    {
      const double share_u = (edges_u_mm[i] - wall->a.u) / along.u;
      const double share_v = (edges_v_mm[i] - wall->a.v) / along.v;

      if (share_u >= 0.0 && share_u <= 1.0)
        try_place (look, (HutPoint) { edges_u_mm[i], wall->a.v + along.v * share_u });
      if (share_v >= 0.0 && share_v <= 1.0)
        try_place (look, (HutPoint) { wall->a.u + along.u * share_v, edges_v_mm[i] });
    }
}

static void
try_crossing (const Look *look,
              const HutWall *a,
              const HutWall *b)
{
  const HutPoint along_a = hut_point_minus (a->b, a->a), along_b = hut_point_minus (b->b, b->a);
  const double sine_mm2 = hut_point_cross (along_a, along_b);
  const HutPoint gap = hut_point_minus (b->a, a->a);

  if (sine_mm2 == 0.0
      || fabs (sine_mm2) <= PARALLEL_SINE * (fabs (along_a.u) + fabs (along_a.v))
                              * (fabs (along_b.u) + fabs (along_b.v)))
    return;

  const double share_a = hut_point_cross (gap, along_b) / sine_mm2;
  const double share_b = hut_point_cross (gap, along_a) / sine_mm2;

  if (share_a < 0.0 || share_a > 1.0 || share_b < 0.0 || share_b > 1.0)
    return;
  /* A level wall gives its exact height, an upright one its exact place. */
  try_place (look,
             (HutPoint) { along_b.u == 0.0 ? b->a.u : a->a.u + along_a.u * share_a,
                          along_b.v == 0.0 ? b->a.v : a->a.v + along_a.v * share_a });
}

static void
try_walls (const Look *look,
           const GArray *walls)
{
  for (guint i = 0; i < walls->len; i++)
    {
      const HutWall *wall = &g_array_index (walls, HutWall, i);

      try_place (look, wall->a);
      try_place (look, wall->b);
      try_border (look, wall);
    }
  for (guint i = 0; i < walls->len; i++)
    {
      const HutWall *wall = &g_array_index (walls, HutWall, i);
      const double low_mm = MIN (wall->a.v, wall->b.v), high_mm = MAX (wall->a.v, wall->b.v);
      guint k = i + 1;

      for (; k < walls->len; k++)
        {
          const HutWall *other = &g_array_index (walls, HutWall, k);

          if (other->a.u > wall->b.u)
            break;
          if (MAX (other->a.v, other->b.v) >= low_mm && MIN (other->a.v, other->b.v) <= high_mm)
            try_crossing (look, wall, other);
        }
      look->pack->work += k - i;
    }
}

gboolean
hut_outline_pack_find_place (HutOutlinePack *self,
            const HutPackBin *bin,
            const HutPackItem *item,
            HutPlaceRule rule,
            HutPackBest *best)
{
  g_autofree HutNoFit **no_fits = g_new (HutNoFit *, bin->resting->len + 1);

  best->found = FALSE;
  if (bin->load_mm2 + item->area_mm2
      > self->width_mm * self->height_mm * (1.0 + HUT_NO_FIT_SLACK_MM))
    return FALSE;
  for (guint i = 0; i < item->ways->len; i++)
    {
      const guint shape_index = g_array_index (item->ways, HutPackWay, i).shape;
      const HutPackShape *shape = g_ptr_array_index (self->shapes, shape_index);
      const Look look = {
        .pack = self,
        .bin = bin,
        .shape = shape,
        .no_fits = no_fits,
        .way = i,
        .rule = rule,
        .room_u_mm = MAX (self->width_mm - shape->width_mm, 0.0),
        .room_v_mm = MAX (self->height_mm - shape->height_mm, 0.0),
        .best = best,
      };

      for (guint k = 0; k < bin->resting->len; k++)
        no_fits[k] = hut_outline_pack_get_no_fit (
          self, g_array_index (bin->resting, HutPackResting, k).shape, shape_index);
      try_place (&look, (HutPoint) { 0.0, 0.0 });
      try_place (&look, (HutPoint) { look.room_u_mm, 0.0 });
      try_place (&look, (HutPoint) { 0.0, look.room_v_mm });
      try_place (&look, (HutPoint) { look.room_u_mm, look.room_v_mm });
      collect_walls (&look, self->walls);
      try_walls (&look, self->walls);
    }
  return best->found;
}

/* src/sheets/hut-separate.c: shapes that overlap in bins are moved apart.
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Strategy: a round takes the items that overlap in an order by lot. Each looks at places by lot in
 * all bins and near its own; the best few are improved: out of the pieces that hold it (the exact
 * place of contact, or the crossing of two), then along the axes and diagonals with steps that get
 * shorter. After each round, overlaps cost more. When the total does not shrink for a number of
 * rounds, the best state is taken up again, a few times.
 * Invariants: every item lies inside its bin at all times; fixed ones are never moved.
 * Not promised: that it ends without overlap where that is possible. */
#define G_LOG_DOMAIN "hut-sheets"
#include "config.h"
#include "sheets/hut-separate.h"
#include <math.h>

/* Places by lot in all bins, and near where the item is (count). Own choices by trial on the
 * published sets, as all numbers here. */
#define WIDE_SAMPLES 24
#define NEAR_SAMPLES 12
/* How far near is, in sides of the item's box (ratio). */
#define NEAR_RATIO 0.5
/* Of these the best are improved (count). */
#define CHOICES 3
/* First and last step along the axes, in shorter sides of the box; how steps change (ratios). */
#define FIRST_STEP_RATIO 0.08
#define LAST_STEP_RATIO 0.0005
#define LONGER_RATIO 1.1
#define SHORTER_RATIO 0.5
/* Overlaps of one item whose ways out are tried (count). */
#define PUSHES_MAX 6
/* Ways out that cross at a smaller sine are not joined. */
#define PUSH_SINE 0.05
/* How much more an overlap costs after a round: from least to most, by its share of the deepest;
 * and how fast it is forgotten. Source: Gardeyn et al., see the header. */
#define HEAVIER_LEAST 1.2
#define HEAVIER_MOST 2.0
#define LIGHTER_RATIO 0.95
/* Rounds without gain until the best state is taken up again, and how often it is (count). */
#define IDLE_ROUNDS 60
#define STRIKES_MAX 3
/* A gain is at least this share of the total (ratio). */
#define GAIN_RATIO 0.98

typedef struct
{
  HutPoint out; /* unit vector */
  double depth_mm;
} Push;

typedef struct
{
  HutSpot spot;
  double loss; /* weighted depths, mm */
} Choice;

void
hut_separation_init (HutSeparation *self,
                     HutOutlinePack *pack,
                     guint64 seed)
{
  const gsize count = pack->items->len;

  *self = (HutSeparation) {
    .pack = pack,
    .bin_count = 1,
    .width_mm = pack->width_mm,
    .height_mm = pack->height_mm,
    .spots = g_new0 (HutSpot, count + 1),
    .weights = g_new (double, count * count + 1),
    .depths_mm = g_new0 (double, count * count + 1),
    .no_fits = g_new0 (HutNoFit *, (gsize) pack->shapes->len * pack->shapes->len + 1),
    .order = g_new0 (guint, count + 1),
    .kept = g_new0 (HutSpot, count + 1),
  };
  hut_lot_init (&self->lot, seed);
  for (guint i = 0; i < count; i++)
    {
      const HutPackItem *item = g_ptr_array_index (pack->items, i);

      if (item->fixed)
        self->spots[i] = (HutSpot) { item->fixed_bin, 0, item->fixed_at };
    }
}

void
hut_separation_clear (HutSeparation *self)
{
  g_clear_pointer (&self->spots, g_free);
  g_clear_pointer (&self->weights, g_free);
  g_clear_pointer (&self->depths_mm, g_free);
  g_clear_pointer (&self->no_fits, g_free);
  g_clear_pointer (&self->order, g_free);
  g_clear_pointer (&self->kept, g_free);
}

/* ---- looking --------------------------------------------------------------------------------- */

static guint
shape_index (const HutSeparation *self,
             guint item,
             guint way)
{
  const HutPackItem *of = g_ptr_array_index (self->pack->items, item);

  return g_array_index (of->ways, HutPackWay, way).shape;
}

static const HutPackShape *
get_shape (const HutSeparation *self,
           guint item,
           guint way)
{
  return g_ptr_array_index (self->pack->shapes, shape_index (self, item, way));
}

static const HutNoFit *
get_no_fit (HutSeparation *self,
            guint moving,
            guint resting)
{
  HutNoFit **at = &self->no_fits[(gsize) moving * self->pack->shapes->len + resting];

  if (*at == NULL)
    *at = hut_outline_pack_get_no_fit (self->pack, resting, moving);
  return *at;
}

/* Weighted depth of the item at @spot in all others; given up, with what it is by then, from @limit
 * on. @pushes: (nullable) (out) (array length=push_count): ways out, PUSHES_MAX at most */
static double
find_loss (HutSeparation *self,
           guint item,
           const HutSpot *spot,
           double limit,
           Push *pushes,
           guint *push_count)
{
  const guint count = self->pack->items->len;
  const guint moving = shape_index (self, item, spot->way);
  const double *weights = &self->weights[(gsize) item * count];
  double loss = 0.0;

  self->pack->work += count / 4;
  for (guint i = 0; i < count; i++)
    {
      const HutSpot *other = &self->spots[i];
      const HutPoint shift = hut_point_minus (spot->at, other->at);
      const HutNoFit *no_fit;
      HutPoint out;
      double depth_mm;

      if (i == item || other->bin != spot->bin)
        continue;
      no_fit = get_no_fit (self, moving, shape_index (self, i, other->way));
      if (shift.u <= no_fit->bounds.u0 || shift.u >= no_fit->bounds.u1
          || shift.v <= no_fit->bounds.v0 || shift.v >= no_fit->bounds.v1)
        continue;
      self->pack->work += no_fit->boxes->len;
      depth_mm = hut_no_fit_depth_mm (no_fit, shift, &out);
      if (depth_mm <= 0.0)
        continue;
      loss += weights[i] * depth_mm;
      if (loss >= limit)
        return loss;
      if (pushes != NULL && *push_count < PUSHES_MAX)
        pushes[(*push_count)++] = (Push) { out, depth_mm };
    }
  return loss;
}

/* How far the corner of the item may go in that way; FALSE when it does not fit. */
static gboolean
find_room (const HutSeparation *self,
           guint item,
           guint way,
           HutPoint *room_mm)
{
  const HutPackShape *shape = get_shape (self, item, way);

  room_mm->u = self->width_mm - shape->width_mm;
  room_mm->v = self->height_mm - shape->height_mm;
  if (room_mm->u < -HUT_NO_FIT_SLACK_MM || room_mm->v < -HUT_NO_FIT_SLACK_MM)
    return FALSE;
  room_mm->u = MAX (room_mm->u, 0.0);
  room_mm->v = MAX (room_mm->v, 0.0);
  return TRUE;
}

static HutPoint
held_inside (HutPoint p,
             HutPoint room_mm)
{
  return (HutPoint) { CLAMP (p.u, 0.0, room_mm.u), CLAMP (p.v, 0.0, room_mm.v) };
}

/* A way in which it fits, by lot; FALSE when there is none. */
static gboolean
draw_way (HutSeparation *self,
          guint item,
          guint *way,
          HutPoint *room_mm)
{
  const HutPackItem *of = g_ptr_array_index (self->pack->items, item);
  const guint first = hut_lot_below (&self->lot, of->ways->len);

  for (guint i = 0; i < of->ways->len; i++)
    {
      *way = (first + i) % of->ways->len;
      if (find_room (self, item, *way, room_mm))
        return TRUE;
    }
  return FALSE;
}

static gboolean
draw_spot (HutSeparation *self,
           guint item,
           HutSpot *spot)
{
  HutPoint room_mm;

  if (!draw_way (self, item, &spot->way, &room_mm))
    return FALSE;
  spot->bin = hut_lot_below (&self->lot, self->bin_count);
  spot->at.u = hut_lot_ratio (&self->lot) * room_mm.u;
  spot->at.v = hut_lot_ratio (&self->lot) * room_mm.v;
  return TRUE;
}

gboolean
hut_separation_draw (HutSeparation *self,
                     guint item)
{
  return draw_spot (self, item, &self->spots[item]);
}

/* ---- improving ------------------------------------------------------------------------------- */

/* The choice moved by @shift, if that is better. */
static gboolean
try_shift (HutSeparation *self,
           guint item,
           HutPoint room_mm,
           HutPoint shift,
           Choice *choice)
{
  HutSpot spot = choice->spot;
  double loss;

  spot.at = held_inside ((HutPoint) { spot.at.u + shift.u, spot.at.v + shift.v }, room_mm);
  if (spot.at.u == choice->spot.at.u && spot.at.v == choice->spot.at.v)
    return FALSE;
  loss = find_loss (self, item, &spot, choice->loss, NULL, NULL);
  if (loss >= choice->loss)
    return FALSE;
  *choice = (Choice) { spot, loss };
  return TRUE;
}

/* The shift that leaves both pieces; FALSE when their sides are all but parallel. */
static gboolean
join_pushes (const Push *a,
             const Push *b,
             HutPoint *shift)
{
  const double sine = hut_point_cross (a->out, b->out);

  if (fabs (sine) < PUSH_SINE)
    return FALSE;
  *shift = (HutPoint) { (a->depth_mm * b->out.v - b->depth_mm * a->out.v) / sine,
                        (b->depth_mm * a->out.u - a->depth_mm * b->out.u) / sine };
  return TRUE;
}

/* Out of the pieces that hold it. */
static void
push_out (HutSeparation *self,
          guint item,
          HutPoint room_mm,
          Choice *choice)
{
  gboolean gained = TRUE;

  while (gained && choice->loss > 0.0)
    {
      Push pushes[PUSHES_MAX];
      guint count = 0;
      const HutSpot from = choice->spot;

      gained = FALSE;
      find_loss (self, item, &from, G_MAXDOUBLE, pushes, &count);
      for (guint i = 0; i < count && choice->loss > 0.0; i++)
        for (guint k = i; k < count && choice->loss > 0.0; k++)
          {
            HutPoint shift = { pushes[i].out.u * pushes[i].depth_mm,
                               pushes[i].out.v * pushes[i].depth_mm };

            if (k > i && !join_pushes (&pushes[i], &pushes[k], &shift))
              continue;
            /* The choice may have moved on already. */
            shift.u += from.at.u - choice->spot.at.u;
            shift.v += from.at.v - choice->spot.at.v;
            gained |= try_shift (self, item, room_mm, shift, choice);
          }
    }
}

static void
step_along (HutSeparation *self,
            guint item,
            HutPoint room_mm,
            Choice *choice)
{
  static const HutPoint directions[] = { { 1, 0 }, { 0, 1 }, { G_SQRT2 / 2, G_SQRT2 / 2 },
                                         { G_SQRT2 / 2, -G_SQRT2 / 2 } };
  const HutPackShape *shape = get_shape (self, item, choice->spot.way);
  const double side_mm = MIN (shape->width_mm, shape->height_mm);
  double step_mm = FIRST_STEP_RATIO * side_mm;

  while (step_mm > LAST_STEP_RATIO * side_mm && choice->loss > 0.0)
    {
      const HutPoint along = directions[hut_lot_below (&self->lot, G_N_ELEMENTS (directions))];
      const HutPoint ahead = { along.u * step_mm, along.v * step_mm };
      const HutPoint back = { -ahead.u, -ahead.v };

      if (try_shift (self, item, room_mm, ahead, choice)
          || try_shift (self, item, room_mm, back, choice))
        step_mm *= LONGER_RATIO;
      else
        step_mm *= SHORTER_RATIO;
    }
}

static void
improve (HutSeparation *self,
         guint item,
         Choice *choice)
{
  HutPoint room_mm;

  if (!find_room (self, item, choice->spot.way, &room_mm))
    return;
  push_out (self, item, room_mm, choice);
  step_along (self, item, room_mm, choice);
  push_out (self, item, room_mm, choice);
}

/* ---- one item -------------------------------------------------------------------------------- */

/* Keeps the best few, best first. */
static void
offer (HutSeparation *self,
       guint item,
       const HutSpot *spot,
       Choice choices[CHOICES])
{
  const double loss = find_loss (self, item, spot, choices[CHOICES - 1].loss, NULL, NULL);
  guint at = CHOICES - 1;

  if (loss >= choices[at].loss)
    return;
  for (; at > 0 && choices[at - 1].loss > loss; at--)
    choices[at] = choices[at - 1];
  choices[at] = (Choice) { *spot, loss };
}

static void
offer_samples (HutSeparation *self,
               guint item,
               Choice choices[CHOICES])
{
  const HutSpot here = self->spots[item];

  for (guint i = 0; i < WIDE_SAMPLES; i++)
    {
      HutSpot spot;

      if (draw_spot (self, item, &spot))
        offer (self, item, &spot, choices);
    }
  for (guint i = 0; i < NEAR_SAMPLES; i++)
    {
      HutSpot spot = here;
      HutPoint room_mm;
      const HutPackShape *shape;

      if (!draw_way (self, item, &spot.way, &room_mm))
        return;
      shape = get_shape (self, item, spot.way);
      spot.at.u += NEAR_RATIO * shape->width_mm * (2.0 * hut_lot_ratio (&self->lot) - 1.0);
      spot.at.v += NEAR_RATIO * shape->height_mm * (2.0 * hut_lot_ratio (&self->lot) - 1.0);
      spot.at = held_inside (spot.at, room_mm);
      offer (self, item, &spot, choices);
    }
}

/* Puts the item where it overlaps least. */
static void
move_item (HutSeparation *self,
           guint item)
{
  Choice choices[CHOICES], best;

  best.spot = self->spots[item];
  best.loss = find_loss (self, item, &best.spot, G_MAXDOUBLE, NULL, NULL);
  if (best.loss <= 0.0)
    return;
  for (guint i = 0; i < CHOICES; i++)
    choices[i].loss = G_MAXDOUBLE;
  offer_samples (self, item, choices);
  improve (self, item, &best);
  for (guint i = 0; i < CHOICES && best.loss > 0.0; i++)
    {
      if (choices[i].loss == G_MAXDOUBLE)
        break;
      improve (self, item, &choices[i]);
      if (choices[i].loss < best.loss)
        best = choices[i];
    }
  self->spots[item] = best.spot;
}

/* ---- rounds ---------------------------------------------------------------------------------- */

static gboolean
is_fixed (const HutSeparation *self,
          guint item)
{
  return ((const HutPackItem *) g_ptr_array_index (self->pack->items, item))->fixed;
}

/* All depths anew. Returns: their sum, mm; what fixed ones do among themselves is not counted */
static double
find_depths (HutSeparation *self,
             double *deepest_mm)
{
  const gsize count = self->pack->items->len;
  double sum_mm = 0.0;

  *deepest_mm = 0.0;
  for (guint i = 0; i < count; i++)
    for (guint k = i + 1; k < count; k++)
      {
        const HutSpot *a = &self->spots[i], *b = &self->spots[k];
        double depth_mm = 0.0;

        if (a->bin == b->bin && !(is_fixed (self, i) && is_fixed (self, k)))
          {
            const HutNoFit *no_fit = get_no_fit (self, shape_index (self, i, a->way),
                                                 shape_index (self, k, b->way));

            depth_mm = hut_no_fit_depth_mm (no_fit, hut_point_minus (a->at, b->at), NULL);
          }
        self->depths_mm[i * count + k] = self->depths_mm[k * count + i] = depth_mm;
        sum_mm += depth_mm;
        *deepest_mm = MAX (*deepest_mm, depth_mm);
      }
  self->pack->work += count * count / 4;
  return sum_mm;
}

static void
weigh (HutSeparation *self,
       double deepest_mm)
{
  const gsize count = self->pack->items->len;

  for (gsize i = 0; i < count * count; i++)
    if (self->depths_mm[i] > 0.0)
      self->weights[i] *= HEAVIER_LEAST
                          + (HEAVIER_MOST - HEAVIER_LEAST) * self->depths_mm[i] / deepest_mm;
    else
      self->weights[i] = MAX (self->weights[i] * LIGHTER_RATIO, 1.0);
}

/* The items that overlap, in an order by lot. Returns: how many */
static guint
draw_order (HutSeparation *self)
{
  const gsize count = self->pack->items->len;
  guint found = 0;

  for (guint i = 0; i < count; i++)
    {
      guint k = 0;

      if (is_fixed (self, i))
        continue;
      while (k < count && self->depths_mm[i * count + k] <= 0.0)
        k++;
      if (k < count)
        self->order[found++] = i;
    }
  for (guint i = found; i > 1; i--)
    {
      const guint k = hut_lot_below (&self->lot, i);
      const guint swap = self->order[i - 1];

      self->order[i - 1] = self->order[k];
      self->order[k] = swap;
    }
  return found;
}

/* Puts everything back inside bins that may have become smaller. */
static void
hold_all (HutSeparation *self)
{
  for (guint i = 0; i < self->pack->items->len; i++)
    {
      HutSpot *spot = &self->spots[i];
      HutPoint room_mm;

      if (is_fixed (self, i))
        continue;
      if (spot->bin >= self->bin_count || !find_room (self, i, spot->way, &room_mm))
        hut_separation_draw (self, i);
      else
        spot->at = held_inside (spot->at, room_mm);
    }
}

gboolean
hut_separation_run (HutSeparation *self,
                    guint64 work_limit,
                    const HutPackWatch *watch)
{
  g_return_val_if_fail (self != NULL && self->pack != NULL, FALSE);

  const gsize count = self->pack->items->len;
  guint idle = 0, strikes = 0;
  double least_mm, sum_mm, deepest_mm;
  gboolean strike_gained = FALSE;

  hold_all (self);
  for (gsize i = 0; i < count * count; i++)
    self->weights[i] = 1.0;
  sum_mm = least_mm = find_depths (self, &deepest_mm);
  memcpy (self->kept, self->spots, count * sizeof *self->kept);
  while (sum_mm > 0.0 && self->pack->work < work_limit && strikes < STRIKES_MAX)
    {
      const guint found = draw_order (self);

      if (watch != NULL && watch->go_on != NULL
          && !watch->go_on ((double) self->pack->work / (double) work_limit, watch->user_data))
        break;
      for (guint i = 0; i < found; i++)
        move_item (self, self->order[i]);
      sum_mm = find_depths (self, &deepest_mm);
      weigh (self, deepest_mm);
      idle = sum_mm < GAIN_RATIO * least_mm ? 0 : idle + 1;
      if (sum_mm < least_mm)
        {
          strike_gained |= sum_mm < GAIN_RATIO * least_mm;
          least_mm = sum_mm;
          memcpy (self->kept, self->spots, count * sizeof *self->kept);
        }
      if (idle < IDLE_ROUNDS)
        continue;
      strikes = strike_gained ? 1 : strikes + 1;
      strike_gained = FALSE;
      idle = 0;
      memcpy (self->spots, self->kept, count * sizeof *self->kept);
      find_depths (self, &deepest_mm);
    }
  if (sum_mm <= 0.0)
    return TRUE;
  memcpy (self->spots, self->kept, count * sizeof *self->kept);
  return FALSE;
}

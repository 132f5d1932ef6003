/* src/sheets/hut-blank.c: how bought sheets are sawn down to what the bed takes.
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Strategy: the most blanks that a piece gives is the best, over all cuts that leave some widths of
 * blanks on one side, of what both sides give; what was found for a size is kept. A piece of a
 * blank's size is one, a piece that no blank fits into is none.
 * Invariants: blanks are a saw kerf apart or more; a cut goes from edge to edge of its piece. */
#define G_LOG_DOMAIN "hut-sheets"
#include "config.h"
#include "sheets/hut-blank.h"
#include <math.h>

#define UM_PER_MM 1000.0
/* Lengths that differ by less are the same, mm. */
#define SAME_MM (HUT_GRID_MM / 2.0)
/* A cut leaves at most so many widths and so many depths of blanks on its near side (count). Own
 * choice: deeper mixtures do not pay on sheets of a shop. */
#define NEAR_MAX 3
/* Over so many blanks a sheet (by area) they lie in rows. Own choice: keeps it instant. */
#define MIXED_MAX 60

typedef struct
{
  guint count;      /* blanks */
  gboolean upright; /* the cut runs along v */
  double near_mm;   /* what it leaves on its near side; 0: no cut */
} Best;

typedef struct
{
  double u_mm, v_mm;   /* a blank on the sheet as its grain asks for */
  gboolean both_ways;  /* turned as well */
  gboolean mixed;
  GHashTable *found;   /* size -> Best */
} Sawing;

static gboolean
same (double a_mm,
      double b_mm)
{
  return fabs (a_mm - b_mm) <= SAME_MM;
}

static gboolean
is_blank (const Sawing *self,
          double width_mm,
          double depth_mm)
{
  return (same (width_mm, self->u_mm) && same (depth_mm, self->v_mm))
         || (self->both_ways && same (width_mm, self->v_mm) && same (depth_mm, self->u_mm));
}

static gboolean
takes_blank (const Sawing *self,
             double width_mm,
             double depth_mm)
{
  return (width_mm >= self->u_mm - SAME_MM && depth_mm >= self->v_mm - SAME_MM)
         || (self->both_ways && width_mm >= self->v_mm - SAME_MM
             && depth_mm >= self->u_mm - SAME_MM);
}

static const Best *find_best (Sawing *self, double width_mm, double depth_mm);

static void
try_cut (Sawing *self,
         double width_mm,
         double depth_mm,
         gboolean upright,
         double near_mm,
         Best *best)
{
  const double length_mm = upright ? width_mm : depth_mm;
  const double far_mm = MAX (length_mm - near_mm - HUT_SAW_KERF_MM, 0.0);
  guint count;

  if (near_mm > length_mm - SAME_MM)
    return;
  count = upright ? find_best (self, near_mm, depth_mm)->count
                        + find_best (self, far_mm, depth_mm)->count
                  : find_best (self, width_mm, near_mm)->count
                        + find_best (self, width_mm, far_mm)->count;
  if (count > best->count)
    *best = (Best) { count, upright, near_mm };
}

static void
try_cuts (Sawing *self,
          double width_mm,
          double depth_mm,
          Best *best)
{
  for (guint a = 0; a <= NEAR_MAX; a++)
    for (guint b = 0; b <= NEAR_MAX; b++)
      {
        const double near_mm
            = a * self->u_mm + b * self->v_mm + (a + b - 1.0) * HUT_SAW_KERF_MM;

        if (a + b == 0 || (!self->mixed && a + b > 1))
          continue;
        if (b == 0 || self->both_ways)
          try_cut (self, width_mm, depth_mm, TRUE, near_mm, best);
        if (a == 0 || self->both_ways)
          try_cut (self, width_mm, depth_mm, FALSE, near_mm, best);
      }
}

static const Best *
find_best (Sawing *self,
           double width_mm,
           double depth_mm)
{
  const gint64 key = (gint64) round (width_mm * UM_PER_MM) << 32
                     | (gint64) round (depth_mm * UM_PER_MM);
  Best *best = g_hash_table_lookup (self->found, &key);

  if (best != NULL)
    return best;

  Best own = { 0 };

  if (is_blank (self, width_mm, depth_mm))
    own.count = 1;
  else if (takes_blank (self, width_mm, depth_mm))
    try_cuts (self, width_mm, depth_mm, &own);
  best = g_memdup2 (&own, sizeof own);
  g_hash_table_insert (self->found, g_memdup2 (&key, sizeof key), best);
  return best;
}

/* Writes down how the piece is sawn. */
static void
saw (Sawing *self,
     HutBlankPlan *plan,
     HutRect piece)
{
  const Best best = *find_best (self, piece.u1 - piece.u0, piece.v1 - piece.v0);
  HutRect near = piece, far = piece;
  HutSawCut cut;

  if (best.count == 0)
    return;
  if (best.near_mm == 0.0)
    {
      g_array_append_val (plan->blanks, piece);
      return;
    }
  if (best.upright)
    {
      near.u1 = piece.u0 + best.near_mm;
      far.u0 = MIN (near.u1 + HUT_SAW_KERF_MM, piece.u1);
      cut.from = (HutPoint) { near.u1 + HUT_SAW_KERF_MM / 2.0, piece.v0 };
      cut.to = (HutPoint) { cut.from.u, piece.v1 };
    }
  else
    {
      near.v1 = piece.v0 + best.near_mm;
      far.v0 = MIN (near.v1 + HUT_SAW_KERF_MM, piece.v1);
      cut.from = (HutPoint) { piece.u0, near.v1 + HUT_SAW_KERF_MM / 2.0 };
      cut.to = (HutPoint) { piece.u1, cut.from.v };
    }
  g_array_append_val (plan->cuts, cut);
  saw (self, plan, near);
  saw (self, plan, far);
}

HutBlankPlan *
hut_blank_plan_new (const HutCutter *cutter,
                    const HutStock *stock)
{
  g_return_val_if_fail (cutter != NULL && stock != NULL, NULL);

  HutBlankPlan *self = g_new0 (HutBlankPlan, 1);
  const gboolean turned = hut_cutter_turns_sheet (cutter, stock);
  g_autoptr(GHashTable) found
      = g_hash_table_new_full (g_int64_hash, g_int64_equal, g_free, g_free);
  Sawing sawing = { .both_ways = stock->grain == HUT_GRAIN_NONE, .found = found };

  self->blanks = g_array_new (FALSE, FALSE, sizeof (HutRect));
  self->cuts = g_array_new (FALSE, FALSE, sizeof (HutSawCut));
  hut_cutter_sheet (cutter, stock, &self->width_mm, &self->depth_mm);
  sawing.u_mm = turned ? self->depth_mm : self->width_mm;
  sawing.v_mm = turned ? self->width_mm : self->depth_mm;
  sawing.mixed = stock->sheet_width_mm * stock->sheet_depth_mm
                 <= MIXED_MAX * self->width_mm * self->depth_mm;
  sawing.both_ways &= sawing.mixed;
  saw (&sawing, self, (HutRect) { 0, 0, stock->sheet_width_mm, stock->sheet_depth_mm });
  return self;
}

void
hut_blank_plan_free (HutBlankPlan *self)
{
  if (self == NULL)
    return;
  g_array_unref (self->blanks);
  g_array_unref (self->cuts);
  g_free (self);
}

guint
hut_blank_plan_count_sheets (const HutBlankPlan *self,
                             guint blank_count)
{
  g_return_val_if_fail (self != NULL && self->blanks->len > 0, 0);

  return (blank_count + self->blanks->len - 1) / self->blanks->len;
}

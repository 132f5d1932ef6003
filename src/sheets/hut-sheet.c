/* src/sheets/hut-sheet.c: parts laid on sheets that the bed takes.
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Strategy: each part is the outline of its cut lines with half the part gap around it, so that
 * outlines that touch keep the gap, while the bare outline has to stay inside the usable area.
 * Notches between fingers and holes that take no part are filled: what is left is simple. Those are
 * packed (hut-outline-pack.h); shelves are the plain second opinion.
 * Invariants: cut lines keep the part gap from each other and lie inside the usable area; each part
 * that is cut is laid once or listed as unplaced; sheets are no more than shelves need, unless the
 * owner pinned parts. */
#define G_LOG_DOMAIN "hut-sheets"
#include "config.h"
#include "sheets/hut-sheet.h"
#include "assembly/hut-part-grain.h"
#include "assembly/hut-spot-place.h"
#include "sheets/hut-outline-pack.h"
#include "sheets/hut-shelf-pack.h"
#include "sheets/hut-spot-pin.h"
#include <math.h>

/* A box may stick out by this much, mm. Own choice: a thousandth of the grid, takes up rounding. */
#define SLACK_MM 1e-6
/* Notches up to twice this many thicknesses are filled (ratio): fingers are at most 6 thicknesses
 * wide, see HutJoints. */
#define CLOSE_THICKNESS_RATIO 3.0
/* An edge is worth lying along the bed when it is longer than this share of the part's diagonal.
 * Own choice. */
#define LONG_EDGE_RATIO 0.25
/* The sine of an angle that is no right angle is larger. Own choice: what a grid step makes of a
 * long edge is less. */
#define SLANTED_SINE 1e-3
#define QUARTERS 4 /* quarter turns, count */

HutRect
hut_sheet_usable (const HutCutter *cutter,
                  const HutStock *stock)
{
  g_return_val_if_fail (cutter != NULL && stock != NULL, ((HutRect) { 0, 0, -1, -1 }));

  return hut_cutter_usable (cutter, stock);
}

HutRegion *
hut_laid_part_dup_cut (const HutLaidPart *self,
                       const HutPartSet *parts,
                       GError **error)
{
  g_return_val_if_fail (self != NULL && parts != NULL && self->part < parts->parts->len, NULL);

  const HutPart *part = g_ptr_array_index (parts->parts, self->part);
  g_autoptr(HutRegion) cut = hut_part_dup_cut (part, error);

  return cut != NULL ? hut_region_dup_placed (cut, &self->placement) : NULL;
}

void
hut_sheet_free (HutSheet *self)
{
  if (self == NULL)
    return;
  g_array_unref (self->laid);
  g_free (self);
}

HutSheet *
hut_sheet_new (const HutCutter *cutter,
               const HutStock *stock,
               guint number)
{
  g_return_val_if_fail (cutter != NULL && stock != NULL, NULL);

  HutSheet *self = g_new0 (HutSheet, 1);

  self->stock = stock;
  self->cutter = cutter;
  self->number = number;
  hut_cutter_sheet (cutter, stock, &self->width_mm, &self->depth_mm);
  self->laid = g_array_new (FALSE, FALSE, sizeof (HutLaidPart));
  return self;
}

/* ---- one stock ------------------------------------------------------------------------------- */

/* The parts of one stock while they are laid out. */
typedef struct
{
  const HutPartSet *parts;
  const HutCutter *cutter;
  const HutStock *stock;
  HutRect usable;
  const HutSheetPin **pins; /* per part of the set; NULL: free */
  gboolean any_pinned;      /* of this stock */
  GArray *indices; /* guint: the parts that are laid, as they were added to the pack */
  GPtrArray *ways; /* GArray of HutOutlineWay of each of them */
} Job;

/* The line that room is kept from: the cut, or where kerf swallows something of it the part, and
 * how far from it (what is reported elsewhere needs room too). */
static HutRegion *
dup_line (const HutPart *part,
          double *grow_mm)
{
  HutRegion *cut = hut_part_dup_cut (part, NULL);

  *grow_mm = cut != NULL ? 0.0 : part->stock->kerf_mm / 2.0;
  return cut != NULL ? cut : hut_region_copy (part->region);
}

/* Notches narrower than twice this can take no part of the stock, mm. */
static double
find_close_mm (const Job *job)
{
  double close_mm = CLOSE_THICKNESS_RATIO * hut_stock_mean_mm (job->stock);

  for (guint i = 0; i < job->indices->len; i++)
    {
      const HutPart *part = g_ptr_array_index (job->parts->parts,
                                               g_array_index (job->indices, guint, i));
      const HutRect box = hut_region_bounds (part->region);
      const double short_mm = MIN (box.u1 - box.u0, box.v1 - box.v0);

      close_mm = MIN (close_mm, short_mm / 2.0);
    }
  return close_mm;
}

/* Adds the way in which the line lies when turned so. */
static void
append_way (GArray *ways,
            const HutPath *outer,
            double turn_rad,
            double grow_mm)
{
  const HutPlacement placement = { .turn_rad = turn_rad };
  g_autoptr(HutPath) turned = hut_path_dup_placed (outer, &placement);
  const HutRect box = hut_path_bounds (turned);
  const HutOutlineWay way = {
    turn_rad,
    { box.u0 - grow_mm, box.v0 - grow_mm, box.u1 + grow_mm, box.v1 + grow_mm },
  };

  g_array_append_val (ways, way);
}

/* Ways in which a long slanted edge of the outline lies along the bed. */
static void
append_slanted_ways (GArray *ways,
                     const HutPath *outer,
                     double grow_mm)
{
  const HutRect box = hut_path_bounds (outer);
  const double long_mm = LONG_EDGE_RATIO * hypot (box.u1 - box.u0, box.v1 - box.v0);

  for (guint i = 0; i < hut_path_get_count (outer); i++)
    {
      const HutSegment edge = hut_path_get_segment (outer, i);
      const HutPoint along = hut_point_minus (edge.end, edge.start);
      const double length_mm = hypot (along.u, along.v);

      if (edge.bulge != 0.0 || length_mm < long_mm
          || MIN (fabs (along.u), fabs (along.v)) < SLANTED_SINE * length_mm)
        continue;
      for (guint quarter = 0; quarter < QUARTERS; quarter++)
        append_way (ways, outer, quarter * G_PI_2 - atan2 (along.v, along.u), grow_mm);
    }
}

/* The ways that the cutter and the grain allow; right angles first. (element-type HutOutlineWay) */
static GArray *
dup_ways (const Job *job,
          const HutPart *part,
          const HutPath *outer,
          double grow_mm)
{
  const gboolean ruled = hut_part_grain_rule (part) != HUT_GRAIN_RULE_FREE
                         && hut_part_keeps_grain (part, job->cutter);
  const HutRect box = hut_path_bounds (outer);
  GArray *ways = g_array_new (FALSE, FALSE, sizeof (HutOutlineWay));
  double turn_rad;

  for (guint quarter = 0; quarter < QUARTERS; quarter++)
    if (hut_part_may_turn (part, job->cutter, quarter))
      append_way (ways, outer, quarter * G_PI_2, grow_mm);
  if (!job->cutter->any_angle || ruled)
    return ways;
  append_slanted_ways (ways, outer, grow_mm);
  if (hut_rect_fits_turned (box.u1 - box.u0 + 2.0 * grow_mm, box.v1 - box.v0 + 2.0 * grow_mm,
                            job->usable.u1 - job->usable.u0 + SLACK_MM,
                            job->usable.v1 - job->usable.v0 + SLACK_MM, &turn_rad))
    append_way (ways, outer, turn_rad, grow_mm);
  return ways;
}

/* The part as it is pinned. */
static void
add_pinned (Job *job,
            HutOutlinePack *pack,
            const HutSheetPin *pin,
            const HutRegion *line,
            double grow_mm,
            const HutConvexSet *shape)
{
  const HutPlacement placement
      = hut_sheet_pin_placement (pin, g_ptr_array_index (job->parts->parts, pin->part));
  GArray *ways = g_array_new (FALSE, FALSE, sizeof (HutOutlineWay));
  const HutOutlineWay *way;

  append_way (ways, line->outer, placement.turn_rad, grow_mm);
  way = &g_array_index (ways, HutOutlineWay, 0);
  hut_outline_pack_add_fixed (pack, shape, way,
                              CLAMP (pin->number, 1, HUT_SHEET_PIN_NUMBER_MAX) - 1,
                              (HutPoint) { placement.shift.u + way->box.u0 - job->usable.u0,
                                           placement.shift.v + way->box.v0 - job->usable.v0 },
                              hut_region_area_mm2 (line));
  g_ptr_array_add (job->ways, ways);
  job->any_pinned = TRUE;
}

/* FALSE when it fits no way. */
static gboolean
add_part (Job *job,
          HutOutlinePack *pack,
          guint index,
          double close_mm)
{
  const HutPart *part = g_ptr_array_index (job->parts->parts, index);
  double grow_mm;
  g_autoptr(HutRegion) line = dup_line (part, &grow_mm);
  g_autoptr(HutConvexSet) shape = hut_convex_set_new_around (
    line, grow_mm + job->cutter->part_gap_mm / 2.0, close_mm);
  g_autoptr(GArray) ways = NULL;

  if (job->pins[index] != NULL)
    {
      add_pinned (job, pack, job->pins[index], line, grow_mm, shape);
      return TRUE;
    }
  ways = dup_ways (job, part, line->outer, grow_mm);
  if (!hut_outline_pack_add (pack, shape, (const HutOutlineWay *) (const void *) ways->data,
                             ways->len, hut_region_area_mm2 (line)))
    return FALSE;
  g_ptr_array_add (job->ways, g_steal_pointer (&ways));
  return TRUE;
}

static int
compare_ids (gconstpointer a,
             gconstpointer b,
             gpointer parts)
{
  const HutPart *x = g_ptr_array_index ((GPtrArray *) parts, *(const guint *) a);
  const HutPart *y = g_ptr_array_index ((GPtrArray *) parts, *(const guint *) b);

  return strcmp (x->id, y->id);
}

/* Puts the stock's parts in the pack; those that fit no sheet are added to @unplaced. */
static void
fill_pack (Job *job,
           HutOutlinePack *pack,
           GArray *unplaced)
{
  double close_mm;
  guint kept = 0;

  g_array_sort_with_data (job->indices, compare_ids, job->parts->parts);
  close_mm = find_close_mm (job);
  for (guint i = 0; i < job->indices->len; i++)
    {
      const guint index = g_array_index (job->indices, guint, i);

      if (add_part (job, pack, index, close_mm))
        g_array_index (job->indices, guint, kept++) = index;
      else
        g_array_append_val (unplaced, index);
    }
  g_array_set_size (job->indices, kept);
}

/* Leaves out sheets without parts. */
static void
drop_empty (GPtrArray *sheets)
{
  for (guint i = 0; i < sheets->len;)
    {
      HutSheet *sheet = g_ptr_array_index (sheets, i);

      sheet->number = i + 1;
      if (sheet->laid->len == 0)
        g_ptr_array_remove_index (sheets, i);
      else
        i++;
    }
}

/* (transfer full) (element-type HutSheet) */
static GPtrArray *
sheets_from_places (const Job *job,
                    const GArray *places)
{
  GPtrArray *sheets = g_ptr_array_new_with_free_func ((GDestroyNotify) hut_sheet_free);

  for (guint i = 0; i < places->len; i++)
    {
      const HutOutlinePlace *place = &g_array_index (places, HutOutlinePlace, i);
      const HutOutlineWay *way = &g_array_index ((GArray *) g_ptr_array_index (job->ways, i),
                                                 HutOutlineWay, place->way);
      const HutLaidPart laid = {
        .part = g_array_index (job->indices, guint, i),
        .placement = {
          .turn_rad = way->turn_rad,
          .shift = { job->usable.u0 + place->at.u - way->box.u0,
                     job->usable.v0 + place->at.v - way->box.v0 },
        },
        .pinned = job->pins[g_array_index (job->indices, guint, i)] != NULL,
      };
      HutSheet *sheet;

      while (sheets->len <= place->bin)
        g_ptr_array_add (sheets, hut_sheet_new (job->cutter, job->stock, sheets->len + 1));
      sheet = g_ptr_array_index (sheets, place->bin);
      g_array_append_val (sheet->laid, laid);
    }
  drop_empty (sheets);
  return sheets;
}

static guint
count_laid (const GPtrArray *sheets)
{
  guint count = 0;

  for (guint i = 0; i < sheets->len; i++)
    count += ((const HutSheet *) g_ptr_array_index (sheets, i))->laid->len;
  return count;
}

static void
lay_stock (HutSheetSet *self,
           Job *job,
           guint64 work_limit,
           const HutPackWatch *watch)
{
  g_autoptr(HutOutlinePack) pack = hut_outline_pack_new (job->usable.u1 - job->usable.u0,
                                                         job->usable.v1 - job->usable.v0);

  fill_pack (job, pack, self->unplaced);

  g_autoptr(GArray) places = hut_outline_pack_run (pack, work_limit, watch);
  g_autoptr(GPtrArray) sheets = sheets_from_places (job, places);
  g_autoptr(GPtrArray) shelves = hut_shelf_pack (job->parts, job->indices, job->cutter, job->stock);

  if (!job->any_pinned && count_laid (shelves) == places->len && shelves->len < sheets->len)
    g_ptr_array_extend_and_steal (self->sheets, g_steal_pointer (&shelves));
  else
    g_ptr_array_extend_and_steal (self->sheets, g_steal_pointer (&sheets));
}

/* ---- the set --------------------------------------------------------------------------------- */

static int
compare_guint (gconstpointer a,
               gconstpointer b)
{
  const guint x = *(const guint *) a, y = *(const guint *) b;

  return (x > y) - (x < y);
}

/* How far one stock after the other is. */
typedef struct
{
  const HutPackWatch *watch; /* (nullable) */
  guint done, count;         /* stocks */
  gboolean stopped;
} Progress;

static gboolean
tell_progress (double done_ratio,
               gpointer user_data)
{
  Progress *self = user_data;

  if (!self->stopped && self->watch != NULL && self->watch->go_on != NULL)
    self->stopped = !self->watch->go_on ((self->done + MIN (done_ratio, 1.0)) / self->count,
                                         self->watch->user_data);
  return !self->stopped;
}

/* Parts of the stock that are cut. (element-type guint) (transfer full) */
static GArray *
dup_indices (const HutPartSet *parts,
             const HutStock *stock)
{
  GArray *indices = g_array_new (FALSE, FALSE, sizeof (guint));

  for (guint i = 0; i < parts->parts->len; i++)
    {
      const HutPart *part = g_ptr_array_index (parts->parts, i);

      if (!part->bought && part->stock == stock)
        g_array_append_val (indices, i);
    }
  return indices;
}

/* The first pin of each part. (transfer full) (array of the parts' count) */
static const HutSheetPin **
dup_first_pins (const HutPartSet *parts,
                const GArray *pins)
{
  const HutSheetPin **first = g_new0 (const HutSheetPin *, parts->parts->len + 1);

  for (guint i = 0; pins != NULL && i < pins->len; i++)
    {
      const HutSheetPin *pin = &g_array_index (pins, HutSheetPin, i);

      if (pin->part < parts->parts->len && first[pin->part] == NULL)
        first[pin->part] = pin;
    }
  return first;
}

HutSheetSet *
hut_sheet_set_new_pinned (const HutAssembly *assembly,
                          const HutPartSet *parts,
                          const GArray *pins,
                          guint64 work_limit,
                          const HutPackWatch *watch)
{
  g_return_val_if_fail (assembly != NULL && parts != NULL, NULL);

  const HutDesign *design = assembly->design;
  g_autofree const HutSheetPin **first_pins = dup_first_pins (parts, pins);
  HutSheetSet *self = g_new0 (HutSheetSet, 1);
  Progress progress = { .watch = watch, .count = MAX (design->stocks->len, 1) };
  const HutPackWatch stock_watch = { tell_progress, &progress };

  self->sheets = g_ptr_array_new_with_free_func ((GDestroyNotify) hut_sheet_free);
  self->unplaced = g_array_new (FALSE, FALSE, sizeof (guint));
  for (; progress.done < design->stocks->len; progress.done++)
    {
      const HutStock *stock = g_ptr_array_index (design->stocks, progress.done);
      g_autoptr(GArray) indices = dup_indices (parts, stock);
      g_autoptr(GPtrArray) ways
          = g_ptr_array_new_with_free_func ((GDestroyNotify) g_array_unref);
      Job job = {
        .parts = parts,
        .cutter = &design->cutter,
        .stock = stock,
        .usable = hut_sheet_usable (&design->cutter, stock),
        .pins = first_pins,
        .indices = indices,
        .ways = ways,
      };

      lay_stock (self, &job, work_limit / progress.count, &stock_watch);
    }
  g_array_sort (self->unplaced, compare_guint);
  return self;
}

HutSheetSet *
hut_sheet_set_new_within (const HutAssembly *assembly,
                          const HutPartSet *parts,
                          guint64 work_limit,
                          const HutPackWatch *watch)
{
  g_return_val_if_fail (assembly != NULL && parts != NULL, NULL);

  g_autoptr(GArray) pins = hut_sheet_pins_new_from_spots (assembly, parts);

  return hut_sheet_set_new_pinned (assembly, parts, pins, work_limit, watch);
}

HutSheetSet *
hut_sheet_set_new (const HutAssembly *assembly,
                   const HutPartSet *parts)
{
  return hut_sheet_set_new_within (assembly, parts, HUT_SHEET_WORK, NULL);
}

void
hut_sheet_set_free (HutSheetSet *self)
{
  if (self == NULL)
    return;
  g_ptr_array_unref (self->sheets);
  g_array_unref (self->unplaced);
  g_free (self);
}

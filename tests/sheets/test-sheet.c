/* tests/sheets/test-sheet.c: parts laid on sheets that the bed takes.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "sheets/hut-sheet.h"
#include "assembly/hut-part-grain.h"
#include "geom/hut-geos.h"
#include "sheets/hut-shelf-pack.h"
#include "hut-assert.h"
#include "hut-hand-part.h"
#include "hut-random-design.h"

#define ROUNDING_MM 1e-5 /* ten times what a box may stick out */
#define OVERLAP_MM2 1e-2 /* a rounding along 1 m of border */
#define RANDOM_HEAPS 12
#define RANDOM_DESIGNS 8

static const HutLaidPart *
laid_at (const HutSheetSet *set,
         guint sheet,
         guint index)
{
  const HutSheet *self = g_ptr_array_index (set->sheets, sheet);

  return &g_array_index (self->laid, HutLaidPart, index);
}

/* What room must be kept around, sheet frame: the cut, or where kerf swallows something of it the
 * part itself, and @grow_mm around that. */
static HutRegion *
dup_line (const HutLaidPart *laid,
          const HutPartSet *parts,
          double *grow_mm)
{
  HutRegion *cut = hut_laid_part_dup_cut (laid, parts, NULL);
  const HutPart *part = g_ptr_array_index (parts->parts, laid->part);

  *grow_mm = cut != NULL ? 0.0 : part->stock->kerf_mm / 2.0;
  return cut != NULL ? cut : hut_region_dup_placed (part->region, &laid->placement);
}

static HutRect
cut_bounds (const HutLaidPart *laid,
            const HutPartSet *parts)
{
  double grow_mm;
  g_autoptr(HutRegion) line = dup_line (laid, parts, &grow_mm);
  const HutRect box = hut_region_bounds (line);

  return (HutRect) { box.u0 - grow_mm, box.v0 - grow_mm, box.u1 + grow_mm, box.v1 + grow_mm };
}

static void
assert_rect (HutRect is,
             HutRect must)
{
  assert_near_mm (is.u0, must.u0, 1e-9);
  assert_near_mm (is.v0, must.v0, 1e-9);
  assert_near_mm (is.u1, must.u1, 1e-9);
  assert_near_mm (is.v1, must.v1, 1e-9);
}

/* ---- what must hold for every set ------------------------------------------------------------ */

/* A part that can keep its grain lies at a right angle that keeps it. */
static void
assert_grain (const HutPart *part,
              const HutCutter *cutter,
              const HutPlacement *placement,
              guint64 seed)
{
  const double quarters = placement->turn_rad / G_PI_2;

  if (hut_part_grain_rule (part) == HUT_GRAIN_RULE_FREE || !hut_part_keeps_grain (part, cutter))
    return;
  if (quarters != round (quarters) || !hut_part_may_turn (part, cutter, (guint) round (quarters)))
    fail_msg ("seed %" G_GUINT64_FORMAT ": %s lies against its grain", seed, part->id);
}

static void
assert_each_part_once (const HutSheetSet *set,
                       const HutPartSet *parts,
                       const HutCutter *cutter,
                       guint64 seed)
{
  g_autofree guint *seen = g_new0 (guint, parts->parts->len + 1);

  for (guint i = 0; i < set->sheets->len; i++)
    {
      const HutSheet *sheet = g_ptr_array_index (set->sheets, i);

      assert_true (sheet->laid->len > 0);
      for (guint k = 0; k < sheet->laid->len; k++)
        {
          const HutLaidPart *laid = &g_array_index (sheet->laid, HutLaidPart, k);
          const HutPart *part = g_ptr_array_index (parts->parts, laid->part);

          assert_ptr_equal (part->stock, sheet->stock);
          assert_grain (part, cutter, &laid->placement, seed);
          assert_false (laid->placement.mirrored);
          seen[laid->part]++;
        }
    }
  for (guint i = 0; i < set->unplaced->len; i++)
    seen[g_array_index (set->unplaced, guint, i)]++;
  for (guint i = 0; i < parts->parts->len; i++)
    {
      const HutPart *part = g_ptr_array_index (parts->parts, i);

      if (seen[i] != (part->bought ? 0 : 1))
        fail_msg ("seed %" G_GUINT64_FORMAT ": part %s is laid %u times", seed, part->id, seen[i]);
    }
}

/* GEOS measures the true outlines wherever their boxes are nearer than the gap. */
static void
assert_apart (const HutSheet *sheet,
              const HutPartSet *parts,
              double gap_mm,
              guint64 seed)
{
  for (guint i = 0; i < sheet->laid->len; i++)
    for (guint k = i + 1; k < sheet->laid->len; k++)
      {
        const HutLaidPart *a = &g_array_index (sheet->laid, HutLaidPart, i);
        const HutLaidPart *b = &g_array_index (sheet->laid, HutLaidPart, k);
        const HutRect ra = cut_bounds (a, parts), rb = cut_bounds (b, parts);
        const double apart_mm = MAX (MAX (ra.u0 - rb.u1, rb.u0 - ra.u1),
                                     MAX (ra.v0 - rb.v1, rb.v0 - ra.v1));
        g_autoptr(GError) error = NULL;
        double grow_a_mm, grow_b_mm;

        if (apart_mm > gap_mm + ROUNDING_MM)
          continue;

        g_autoptr(HutRegion) line_a = dup_line (a, parts, &grow_a_mm);
        g_autoptr(HutRegion) line_b = dup_line (b, parts, &grow_b_mm);
        const double distance_mm = hut_geos_distance_mm (line_a, line_b, &error);

        assert_ok (error == NULL, error);
        if (distance_mm < gap_mm + grow_a_mm + grow_b_mm - ROUNDING_MM)
          fail_msg ("seed %" G_GUINT64_FORMAT ": parts %u and %u are %g mm apart, must be %g", seed,
                    a->part, b->part, distance_mm, gap_mm);
        /* A distance of 0 is also what overlapping parts have. */
        if (gap_mm > ROUNDING_MM)
          continue;

        const double area_mm2 = hut_geos_op_area_mm2 (line_a, line_b, HUT_GEOS_INTERSECTION, &error);

        assert_ok (error == NULL, error);
        assert_near (area_mm2, 0.0, OVERLAP_MM2);
      }
}

/* ---- waste ----------------------------------------------------------------------------------- */

static HutRegion *
box_about (HutPoint middle,
           double width_mm,
           double height_mm)
{
  return hut_region_new (hut_path_new_rect (
    (HutRect) { middle.u - width_mm / 2.0, middle.v - height_mm / 2.0, middle.u + width_mm / 2.0,
                middle.v + height_mm / 2.0 },
    0.0));
}

/* TRUE when the box, with room, lies in the hole and meets nothing on the sheet. */
static gboolean
box_is_free (const HutRegion *box,
             const HutRegion *hole,
             const HutSheet *sheet,
             const HutPartSet *parts)
{
  if (hut_geos_op_area_mm2 (box, hole, HUT_GEOS_DIFFERENCE, NULL) > 0.0)
    return FALSE;
  for (guint i = 0; i < sheet->laid->len; i++)
    {
      double grow_mm;
      g_autoptr(HutRegion) line
          = dup_line (&g_array_index (sheet->laid, HutLaidPart, i), parts, &grow_mm);

      if (hut_geos_distance_mm (line, box, NULL) <= grow_mm)
        return FALSE;
    }
  return TRUE;
}

/* Counts the holes of @sheet in whose middle the box of @part would have room, and is not. */
static guint
count_wasted (const HutSheet *sheet,
              const HutPartSet *parts,
              HutRect part,
              double gap_mm)
{
  const double long_mm = part.u1 - part.u0 + 2.0 * gap_mm + ROUNDING_MM;
  const double short_mm = part.v1 - part.v0 + 2.0 * gap_mm + ROUNDING_MM;
  guint count = 0;

  for (guint i = 0; i < sheet->laid->len; i++)
    {
      double grow_mm;
      g_autoptr(HutRegion) line
          = dup_line (&g_array_index (sheet->laid, HutLaidPart, i), parts, &grow_mm);

      for (guint k = 0; k < line->holes->len; k++)
        {
          g_autoptr(HutRegion) hole = hut_region_new (hut_path_copy (line->holes->pdata[k]));
          const HutRect room = hut_region_bounds (hole);
          const HutPoint middle = { (room.u0 + room.u1) / 2.0, (room.v0 + room.v1) / 2.0 };
          g_autoptr(HutRegion) lying = box_about (middle, long_mm, short_mm);
          g_autoptr(HutRegion) standing = box_about (middle, short_mm, long_mm);

          count += box_is_free (lying, hole, sheet, parts)
                   || box_is_free (standing, hole, sheet, parts);
        }
    }
  return count;
}

/* No part lies on a sheet of its stock while an earlier one has a hole free that takes it. */
static void
assert_waste_is_used (const HutSheetSet *set,
                      const HutPartSet *parts,
                      double gap_mm,
                      guint64 seed)
{
  for (guint i = 1; i < set->sheets->len; i++)
    {
      const HutSheet *later = g_ptr_array_index (set->sheets, i);

      for (guint k = 0; k < i; k++)
        {
          const HutSheet *earlier = g_ptr_array_index (set->sheets, k);

          for (guint m = 0; earlier->stock == later->stock && m < later->laid->len; m++)
            {
              const HutLaidPart *laid = &g_array_index (later->laid, HutLaidPart, m);

              if (count_wasted (earlier, parts, cut_bounds (laid, parts), gap_mm) > 0)
                fail_msg ("seed %" G_GUINT64_FORMAT ": part %u of sheet %u would lie in a hole of %u",
                          seed, laid->part, later->number, earlier->number);
            }
        }
    }
}

static void
assert_sheet (const HutSheet *sheet,
              const HutPartSet *parts,
              const HutCutter *cutter,
              guint64 seed)
{
  const double margin_mm = cutter->margin_mm;
  const HutStock *stock = sheet->stock;

  /* Not larger than the bed, and cut from a sheet as it is bought, straight or turned. */
  assert_true (sheet->width_mm <= cutter->bed_width_mm && sheet->depth_mm <= cutter->bed_depth_mm);
  assert_true (
      (sheet->width_mm <= stock->sheet_width_mm && sheet->depth_mm <= stock->sheet_depth_mm)
      || (sheet->width_mm <= stock->sheet_depth_mm && sheet->depth_mm <= stock->sheet_width_mm));
  for (guint i = 0; i < sheet->laid->len; i++)
    {
      const HutLaidPart *laid = &g_array_index (sheet->laid, HutLaidPart, i);
      const HutRect box = cut_bounds (laid, parts);

      if (box.u0 < margin_mm - ROUNDING_MM || box.v0 < margin_mm - ROUNDING_MM
          || box.u1 > sheet->width_mm - margin_mm + ROUNDING_MM
          || box.v1 > sheet->depth_mm - margin_mm + ROUNDING_MM)
        fail_msg ("seed %" G_GUINT64_FORMAT ": part %u leaves the bed: %g,%g to %g,%g on %g x %g",
                  seed, laid->part, box.u0, box.v0, box.u1, box.v1, sheet->width_mm,
                  sheet->depth_mm);
    }
  assert_apart (sheet, parts, cutter->part_gap_mm, seed);
}

static void
assert_same (const HutSheetSet *a,
             const HutSheetSet *b)
{
  assert_int_equal (a->sheets->len, b->sheets->len);
  assert_int_equal (a->unplaced->len, b->unplaced->len);
  for (guint i = 0; i < a->sheets->len; i++)
    {
      const HutSheet *x = g_ptr_array_index (a->sheets, i), *y = g_ptr_array_index (b->sheets, i);

      assert_int_equal (x->laid->len, y->laid->len);
      for (guint k = 0; k < x->laid->len; k++)
        {
          const HutLaidPart *p = &g_array_index (x->laid, HutLaidPart, k);
          const HutLaidPart *q = &g_array_index (y->laid, HutLaidPart, k);

          assert_int_equal (p->part, q->part);
          assert_true (p->placement.turn_rad == q->placement.turn_rad);
          assert_true (p->placement.shift.u == q->placement.shift.u);
          assert_true (p->placement.shift.v == q->placement.shift.v);
        }
    }
}

static void
assert_no_more_than_shelves (const HutAssembly *assembly,
                             const HutPartSet *parts,
                             const HutSheetSet *set,
                             guint64 seed)
{
  guint shelf_sheets = 0, shelf_parts = 0, set_parts = 0;

  for (guint i = 0; i < assembly->design->stocks->len; i++)
    {
      const HutStock *stock = g_ptr_array_index (assembly->design->stocks, i);
      g_autoptr(GArray) indices = g_array_new (FALSE, FALSE, sizeof (guint));

      for (guint k = 0; k < parts->parts->len; k++)
        {
          const HutPart *part = g_ptr_array_index (parts->parts, k);

          if (part->stock == stock && !part->bought)
            g_array_append_val (indices, k);
        }

      g_autoptr(GPtrArray) shelves
          = hut_shelf_pack (parts, indices, &assembly->design->cutter, stock);

      /* Shelves know right angles only: what they leave out needs no sheet. */
      shelf_sheets += shelves->len;
      for (guint k = 0; k < shelves->len; k++)
        shelf_parts += ((HutSheet *) g_ptr_array_index (shelves, k))->laid->len;
    }
  for (guint i = 0; i < set->sheets->len; i++)
    set_parts += ((HutSheet *) g_ptr_array_index (set->sheets, i))->laid->len;
  assert_true (set_parts >= shelf_parts);
  if (set_parts == shelf_parts && set->sheets->len > shelf_sheets)
    fail_msg ("seed %" G_GUINT64_FORMAT ": %u sheets, shelves need %u", seed, set->sheets->len,
              shelf_sheets);
}

/* What splitting says fits the bed, packing must be able to lay. */
static void
assert_what_fits_is_laid (const HutAssembly *assembly,
                          const HutPartSet *parts,
                          const HutSheetSet *set,
                          guint64 seed)
{
  for (guint i = 0; i < set->unplaced->len; i++)
    {
      const HutPart *part = g_ptr_array_index (parts->parts,
                                               g_array_index (set->unplaced, guint, i));
      const HutRect box = hut_region_bounds (part->region);
      const HutCutter *cutter = &assembly->design->cutter;
      /* The bed's rule knows neither that a slanted box of the cut needs more than a kerf over the
       * part's, nor that a tight fit moves mating edges further out than half a kerf. */
      const double grow_mm = (cutter->any_angle ? part->stock->kerf_mm : 0.0)
                             + MAX (-part->stock->allowance_mm, 0.0);

      if (hut_cutter_takes_stock (cutter, part->stock, box.u1 - box.u0 + grow_mm,
                                  box.v1 - box.v0 + grow_mm))
        fail_msg ("seed %" G_GUINT64_FORMAT ": %s fits the bed but is on no sheet", seed, part->id);
    }
}

static void
assert_set (const HutAssembly *assembly,
            const HutPartSet *parts,
            guint64 seed)
{
  g_autoptr(HutSheetSet) set = hut_sheet_set_new (assembly, parts);
  g_autoptr(HutSheetSet) again = hut_sheet_set_new (assembly, parts);

  assert_same (set, again);
  assert_each_part_once (set, parts, &assembly->design->cutter, seed);
  assert_what_fits_is_laid (assembly, parts, set, seed);
  for (guint i = 0; i < set->sheets->len; i++)
    {
      const HutSheet *sheet = g_ptr_array_index (set->sheets, i);
      const HutSheet *before = i > 0 ? g_ptr_array_index (set->sheets, i - 1) : NULL;
      const gboolean goes_on = before != NULL && before->stock == sheet->stock;

      assert_int_equal (sheet->number, goes_on ? before->number + 1 : 1);
      assert_sheet (sheet, parts, &assembly->design->cutter, seed);
    }
  assert_waste_is_used (set, parts, assembly->design->cutter.part_gap_mm, seed);
  assert_no_more_than_shelves (assembly, parts, set, seed);
}

/* ---- by hand --------------------------------------------------------------------------------- */

static void
first_part_lies_in_the_corner_of_the_margin (void **state)
{
  HutHandParts *hand = *state;

  g_autoptr(GError) error = NULL;

  hut_hand_parts_add_rect (hand, "a", 100, 50);

  g_autoptr(HutSheetSet) set = hut_sheet_set_new (hand->assembly, hand->parts);
  g_autoptr(HutRegion) cut = hut_laid_part_dup_cut (laid_at (set, 0, 0), hand->parts, &error);

  assert_ok (cut != NULL, error);
  assert_int_equal (set->sheets->len, 1);
  assert_int_equal (set->unplaced->len, 0);
  assert_rect (cut_bounds (laid_at (set, 0, 0), hand->parts), (HutRect) { 10, 10, 110, 60 });
}

/* Kerf 0.3: the cut lines are 0.15 outside the part; they, not the part, keep margin and gap. */
static void
cut_lines_keep_margin_and_gap (void **state)
{
  HutHandParts *hand = *state;

  hand->stock->kerf_mm = 0.3;
  hut_hand_parts_add_rect (hand, "a", 100, 50);
  hut_hand_parts_add_rect (hand, "b", 100, 50);

  g_autoptr(HutSheetSet) set = hut_sheet_set_new (hand->assembly, hand->parts);

  /* 205.6 x 50.3 is a smaller box than 100.3 x 105.6. */
  assert_rect (cut_bounds (laid_at (set, 0, 0), hand->parts), (HutRect) { 10, 10, 110.3, 60.3 });
  assert_rect (cut_bounds (laid_at (set, 0, 1), hand->parts),
               (HutRect) { 115.3, 10, 215.6, 60.3 });
  assert_near_mm (laid_at (set, 0, 0)->placement.shift.u, 10.15, 1e-9);
}

/* Usable 380 x 280: 100 x 300 goes in only when it lies. */
static void
part_that_is_too_high_is_turned_by_90_degrees (void **state)
{
  HutHandParts *hand = *state;

  hut_hand_parts_add_rect (hand, "a", 100, 300);

  g_autoptr(HutSheetSet) set = hut_sheet_set_new (hand->assembly, hand->parts);

  assert_int_equal (set->unplaced->len, 0);
  assert_near (laid_at (set, 0, 0)->placement.turn_rad, G_PI_2, 0.0);
  assert_rect (cut_bounds (laid_at (set, 0, 0), hand->parts), (HutRect) { 10, 10, 310, 110 });
}

static void
part_of_exactly_the_usable_bed_fits_and_one_that_is_0_01_mm_larger_does_not (void **state)
{
  HutHandParts *hand = *state;

  hand->stock->kerf_mm = 0.2;
  hut_hand_parts_add_rect (hand, "fits", 379.8, 279.8);
  hut_hand_parts_add_rect (hand, "large", 379.81, 279.8);

  g_autoptr(HutSheetSet) set = hut_sheet_set_new (hand->assembly, hand->parts);

  assert_int_equal (set->sheets->len, 1);
  assert_int_equal (laid_at (set, 0, 0)->part, 0);
  assert_int_equal (set->unplaced->len, 1);
  assert_int_equal (g_array_index (set->unplaced, guint, 0), 1);
}

/* The diagonal of 380 x 280 is 472 mm long. */
static void
long_slim_part_fits_only_when_any_angle_is_allowed (void **state)
{
  HutHandParts *hand = *state;

  hut_hand_parts_add_rect (hand, "long", 440, 20);

  g_autoptr(HutSheetSet) straight = hut_sheet_set_new (hand->assembly, hand->parts);

  assert_int_equal (straight->unplaced->len, 1);
  hand->cutter->any_angle = TRUE;

  g_autoptr(HutSheetSet) turned = hut_sheet_set_new (hand->assembly, hand->parts);

  assert_int_equal (turned->unplaced->len, 0);
  assert_int_equal (turned->sheets->len, 1);
  assert_set (hand->assembly, hand->parts, 0);
}

/* Six of 120 x 90: 3 x 3 of them go on 380 x 280 as they are (3 x 120 + 2 x 5 = 370 wide, 3 x 90 + 10 =
 * 280 deep), and turned as well, with 4 x 90 + 15 = 375. By the rule all lie turned. */
static void
panels_lie_as_their_grain_asks_for (void **state)
{
  HutHandParts *hand = *state;

  for (guint i = 0; i < 6; i++)
    hut_hand_parts_add_rect (hand, (const char *[]) { "a", "b", "c", "d", "e", "f" }[i], 120, 90);
  hand->stock->grain = HUT_GRAIN_DEPTH;
  hand->stock->grain_rule = HUT_GRAIN_RULE_ACROSS;
  hand->cutter->any_angle = TRUE;

  g_autoptr(HutSheetSet) set = hut_sheet_set_new (hand->assembly, hand->parts);

  assert_int_equal (set->sheets->len, 1);
  assert_int_equal (set->unplaced->len, 0);
  for (guint i = 0; i < 6; i++)
    assert_near (fabs (sin (laid_at (set, 0, i)->placement.turn_rad)), 1.0, 1e-9);
}

static void
part_that_is_too_long_for_the_diagonal_is_unplaced (void **state)
{
  HutHandParts *hand = *state;

  hand->cutter->any_angle = TRUE;
  hut_hand_parts_add_rect (hand, "long", 473, 1);

  g_autoptr(HutSheetSet) set = hut_sheet_set_new (hand->assembly, hand->parts);

  assert_int_equal (set->unplaced->len, 1);
  assert_int_equal (set->sheets->len, 0);
}

static void
bought_part_is_on_no_sheet_and_not_unplaced (void **state)
{
  HutHandParts *hand = *state;

  hut_hand_parts_add_rect (hand, "bought", 5000, 5000)->bought = TRUE;

  g_autoptr(HutSheetSet) set = hut_sheet_set_new (hand->assembly, hand->parts);

  assert_int_equal (set->sheets->len, 0);
  assert_int_equal (set->unplaced->len, 0);
}

/* Bed 400 x 300, sheet 250 x 600: turned it would cover 400 x 250, more than 250 x 300. */
static void
sheet_smaller_than_the_bed_limits_the_parts_and_is_turned_for_more_room (void **state)
{
  HutHandParts *hand = *state;

  hand->stock->sheet_width_mm = 250.0;
  hand->stock->sheet_depth_mm = 600.0;
  hut_hand_parts_add_rect (hand, "wide", 380, 230);
  hut_hand_parts_add_rect (hand, "high", 200, 231);

  g_autoptr(HutSheetSet) set = hut_sheet_set_new (hand->assembly, hand->parts);
  const HutSheet *sheet = g_ptr_array_index (set->sheets, 0);

  assert_near_mm (sheet->width_mm, 400.0, 0.0);
  assert_near_mm (sheet->depth_mm, 250.0, 0.0);
  assert_int_equal (set->sheets->len, 2);
  assert_rect (cut_bounds (laid_at (set, 1, 0), hand->parts), (HutRect) { 10, 10, 241, 210 });
}

static void
bed_smaller_than_its_margins_takes_nothing (void **state)
{
  HutHandParts *hand = *state;

  hand->cutter->margin_mm = 200.0;
  hut_hand_parts_add_rect (hand, "a", 1, 1);

  g_autoptr(HutSheetSet) set = hut_sheet_set_new (hand->assembly, hand->parts);

  assert_int_equal (set->sheets->len, 0);
  assert_int_equal (set->unplaced->len, 1);
}

static void
order_of_equal_parts_is_that_of_their_ids (void **state)
{
  HutHandParts *hand = *state;

  hut_hand_parts_add_rect (hand, "b", 50, 50);
  hut_hand_parts_add_rect (hand, "a", 50, 50);

  g_autoptr(HutSheetSet) set = hut_sheet_set_new (hand->assembly, hand->parts);

  assert_int_equal (laid_at (set, 0, 0)->part, 1);
  assert_int_equal (laid_at (set, 0, 1)->part, 0);
}

/* The kerf swallows a slot of 0.2 mm: there is no cut, but room is still kept for the part. */
static void
part_whose_cut_vanishes_has_a_place_and_an_error (void **state)
{
  HutHandParts *hand = *state;
  HutPart *part = hut_hand_parts_add_rect (hand, "a", 100, 50);
  g_autoptr(GError) error = NULL;

  hand->stock->kerf_mm = 0.5;
  hut_region_take_hole (part->region, hut_path_new_rect ((HutRect) { 40, 20, 40.2, 30 }, 0.0));

  g_autoptr(HutSheetSet) set = hut_sheet_set_new (hand->assembly, hand->parts);

  assert_int_equal (set->sheets->len, 1);
  assert_near_mm (laid_at (set, 0, 0)->placement.shift.u, 10.25, 1e-9);
  assert_null (hut_laid_part_dup_cut (laid_at (set, 0, 0), hand->parts, &error));
  assert_true (g_error_matches (error, HUT_GEOM_ERROR, HUT_GEOM_ERROR_VANISHED));
}

/* ---- true outlines --------------------------------------------------------------------------- */

/* @hand: gets frames of 200 with holes of 160 and squares of 80, a gap of 0 and a bed of 600 x 400:
 * areas 6 (200^2 - 160^2) + 24 80^2 = 600 400, so one sheet, full to the last corner. */
static void
add_frames_and_squares (HutHandParts *hand,
                        double gap_mm)
{
  const double side_mm = 80.0, hole_mm = 2.0 * side_mm + 3.0 * gap_mm, frame_mm = hole_mm + 40.0;

  hand->cutter->part_gap_mm = gap_mm;
  hand->cutter->margin_mm = gap_mm;
  hand->cutter->bed_width_mm = 3.0 * frame_mm + 4.0 * gap_mm;
  hand->cutter->bed_depth_mm = 2.0 * frame_mm + 3.0 * gap_mm;
  for (guint i = 0; i < 6; i++)
    {
      g_autofree char *id = g_strdup_printf ("frame-%u", i);
      HutPart *frame = hut_hand_parts_add_rect (hand, id, frame_mm, frame_mm);

      hut_region_take_hole (frame->region,
                            hut_path_new_rect ((HutRect) { 20, 20, 20 + hole_mm, 20 + hole_mm }, 0.0));
    }
  for (guint i = 0; i < 24; i++)
    {
      g_autofree char *id = g_strdup_printf ("square-%u", i);

      hut_hand_parts_add_rect (hand, id, side_mm, side_mm);
    }
}

static void
holes_of_frames_are_filled_to_the_last_corner (void **state)
{
  const double gaps_mm[] = { 0.0, 3.0 };

  for (guint i = 0; i < G_N_ELEMENTS (gaps_mm); i++)
    {
      HutHandParts hand;

      hut_hand_parts_init (&hand);
      add_frames_and_squares (&hand, gaps_mm[i]);

      g_autoptr(HutSheetSet) set = hut_sheet_set_new (hand.assembly, hand.parts);

      assert_int_equal (set->unplaced->len, 0);
      assert_int_equal (set->sheets->len, 1);
      assert_sheet (g_ptr_array_index (set->sheets, 0), hand.parts, hand.cutter, i);
      hut_hand_parts_clear (&hand);
    }
}

/* An L of 200 x 200 with arms of 95, kerf 0, gap 10: two of them make a block of 305 x 200, one turned
 * by half. As boxes they need 410. */
static void
corner_pieces_lie_in_each_other (void **state)
{
  HutHandParts *hand = *state;

  hand->cutter->bed_width_mm = 325.0;
  hand->cutter->bed_depth_mm = 220.0;
  hand->cutter->part_gap_mm = 10.0;
  for (guint i = 0; i < 2; i++)
    {
      HutPath *outer = hut_path_new ();
      const HutPoint corners[] = { { 0, 0 }, { 200, 0 }, { 200, 95 }, { 95, 95 }, { 95, 200 },
                                   { 0, 200 } };

      for (guint k = 0; k < G_N_ELEMENTS (corners); k++)
        hut_path_append (outer, corners[k], 0.0, HUT_EDGE_PLAIN);
      hut_hand_parts_take (hand, i == 0 ? "a" : "b", outer);
    }

  g_autoptr(HutSheetSet) set = hut_sheet_set_new (hand->assembly, hand->parts);

  assert_int_equal (set->sheets->len, 1);
  assert_set (hand->assembly, hand->parts, 0);
}

/* A right triangle with legs of 350: its hypotenuse of 495 along the bed needs 495 x 247.5. */
static void
slanted_edge_lies_along_the_bed_when_any_angle_is_allowed (void **state)
{
  HutHandParts *hand = *state;
  HutPath *outer = hut_path_new ();

  hand->cutter->bed_width_mm = 516.0;
  hand->cutter->bed_depth_mm = 268.0;
  hut_path_append (outer, (HutPoint) { 0, 0 }, 0.0, HUT_EDGE_PLAIN);
  hut_path_append (outer, (HutPoint) { 350, 0 }, 0.0, HUT_EDGE_PLAIN);
  hut_path_append (outer, (HutPoint) { 0, 350 }, 0.0, HUT_EDGE_PLAIN);
  hut_hand_parts_take (hand, "a", outer);

  g_autoptr(HutSheetSet) straight = hut_sheet_set_new (hand->assembly, hand->parts);

  assert_int_equal (straight->unplaced->len, 1);
  hand->cutter->any_angle = TRUE;

  g_autoptr(HutSheetSet) turned = hut_sheet_set_new (hand->assembly, hand->parts);

  assert_int_equal (turned->unplaced->len, 0);
  assert_set (hand->assembly, hand->parts, 0);
}

/* ---- progress -------------------------------------------------------------------------------- */

typedef struct
{
  guint calls, stop_at;
  double last_ratio;
} Watched;

static gboolean
watch_closely (double done_ratio,
               gpointer user_data)
{
  Watched *self = user_data;

  assert_true (done_ratio >= self->last_ratio && done_ratio <= 1.0);
  self->last_ratio = done_ratio;
  return ++self->calls != self->stop_at;
}

static void
packing_that_is_stopped_gives_a_whole_layout_and_a_watched_one_the_same (void **state)
{
  HutHandParts *hand = *state;
  Watched watched = { 0 }, stopping = { .stop_at = 1 };

  add_frames_and_squares (hand, 1.0);

  g_autoptr(HutSheetSet) free_run = hut_sheet_set_new (hand->assembly, hand->parts);
  g_autoptr(HutSheetSet) watched_run
      = hut_sheet_set_new_within (hand->assembly, hand->parts, HUT_SHEET_WORK,
                                  &(HutPackWatch) { watch_closely, &watched });
  g_autoptr(HutSheetSet) stopped
      = hut_sheet_set_new_within (hand->assembly, hand->parts, HUT_SHEET_WORK,
                                  &(HutPackWatch) { watch_closely, &stopping });

  assert_same (free_run, watched_run);
  assert_true (watched.calls > 1);
  assert_int_equal (stopping.calls, 1);
  assert_each_part_once (stopped, hand->parts, hand->cutter, 0);
}

/* ---- random ---------------------------------------------------------------------------------- */

static void
random_heaps_of_rectangles_lie_apart_inside_the_bed (void **state)
{
  for (guint64 seed = 1; seed <= hut_random_seed_count (RANDOM_HEAPS); seed++)
    {
      HutHandParts hand;
      HutRandom random;

      hut_hand_parts_init (&hand);
      hut_random_init (&random, seed);
      hand.stock->kerf_mm = hut_random_typed (&random, 0.0, 3.0);
      hand.cutter->part_gap_mm = hut_random_typed (&random, 0.0, 10.0);
      hand.cutter->margin_mm = hut_random_typed (&random, 0.0, 20.0);
      hand.cutter->any_angle = hut_random_chance (&random, 0.5);
      for (guint i = hut_random_below (&random, 40); i > 0; i--)
        {
          g_autofree char *id = g_strdup_printf ("part-%u", i);

          hut_hand_parts_add_rect (&hand, id, hut_random_octaves (&random, 8, 450),
                                   hut_random_octaves (&random, 8, 450));
        }
      assert_set (hand.assembly, hand.parts, seed);
      hut_hand_parts_clear (&hand);
    }
}

static void
parts_of_random_designs_lie_apart_inside_the_bed (void **state)
{
  const guint64 count = hut_random_seed_count (RANDOM_DESIGNS);

  for (guint64 seed = hut_random_first_seed (); seed < hut_random_first_seed () + count; seed++)
    {
      g_autoptr(HutDesign) design = hut_random_design (seed);
      g_autoptr(HutAssembly) assembly = hut_assembly_new (design);
      g_autoptr(HutPartSet) parts = hut_part_set_new (assembly);

      assert_set (assembly, parts, seed);
    }
}

#define BY_HAND(test) cmocka_unit_test_setup_teardown (test, \
        hut_hand_parts_set_up, hut_hand_parts_tear_down)

int
main (void)
{
  const struct CMUnitTest tests[] = {
    BY_HAND (first_part_lies_in_the_corner_of_the_margin),
    BY_HAND (cut_lines_keep_margin_and_gap),
    BY_HAND (part_that_is_too_high_is_turned_by_90_degrees),
    BY_HAND (part_of_exactly_the_usable_bed_fits_and_one_that_is_0_01_mm_larger_does_not),
    BY_HAND (long_slim_part_fits_only_when_any_angle_is_allowed),
    BY_HAND (panels_lie_as_their_grain_asks_for),
    BY_HAND (part_that_is_too_long_for_the_diagonal_is_unplaced),
    BY_HAND (bought_part_is_on_no_sheet_and_not_unplaced),
    BY_HAND (sheet_smaller_than_the_bed_limits_the_parts_and_is_turned_for_more_room),
    BY_HAND (bed_smaller_than_its_margins_takes_nothing),
    BY_HAND (order_of_equal_parts_is_that_of_their_ids),
    BY_HAND (part_whose_cut_vanishes_has_a_place_and_an_error),
    cmocka_unit_test (holes_of_frames_are_filled_to_the_last_corner),
    BY_HAND (corner_pieces_lie_in_each_other),
    BY_HAND (slanted_edge_lies_along_the_bed_when_any_angle_is_allowed),
    BY_HAND (packing_that_is_stopped_gives_a_whole_layout_and_a_watched_one_the_same),
    cmocka_unit_test (random_heaps_of_rectangles_lie_apart_inside_the_bed),
    cmocka_unit_test (parts_of_random_designs_lie_apart_inside_the_bed),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}

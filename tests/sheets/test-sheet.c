/* tests/sheets/test-sheet.c: parts laid on sheets that the bed takes.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "sheets/hut-sheet.h"
#include "geom/hut-geos.h"
#include "hut-assert.h"
#include "hut-hand-part.h"
#include "hut-random-design.h"

#define ROUNDING_MM 1e-5 /* ten times what a box may stick out */
#define RANDOM_HEAPS 300
#define RANDOM_DESIGNS 60

static const HutLaidPart *
laid_at (const HutSheetSet *set,
         guint sheet,
         guint index)
{
  const HutSheet *self = g_ptr_array_index (set->sheets, sheet);

  return &g_array_index (self->laid, HutLaidPart, index);
}

static HutRect
cut_bounds (const HutLaidPart *laid,
            const HutPartSet *parts)
{
  g_autoptr(HutRegion) cut = hut_laid_part_dup_cut (laid, parts, NULL);

  if (cut != NULL)
    return hut_region_bounds (cut);

  /* Kerf swallows something of it: then room must be kept for the part and half a kerf. */
  const HutPart *part = g_ptr_array_index (parts->parts, laid->part);
  const double half_kerf_mm = part->stock->kerf_mm / 2.0;
  g_autoptr(HutRegion) placed = hut_region_dup_placed (part->region, &laid->placement);
  const HutRect box = hut_region_bounds (placed);

  return (HutRect) { box.u0 - half_kerf_mm, box.v0 - half_kerf_mm, box.u1 + half_kerf_mm,
                     box.v1 + half_kerf_mm };
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

static void
assert_each_part_once (const HutSheetSet *set,
                       const HutPartSet *parts,
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

/* Boxes of cut lines keep the gap; where they are near, GEOS looks at the true outlines too. */
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

        if (apart_mm < gap_mm - ROUNDING_MM)
          fail_msg ("seed %" G_GUINT64_FORMAT ": parts %u and %u are %g mm apart, must be %g", seed,
                    a->part, b->part, apart_mm, gap_mm);
        if (apart_mm > gap_mm + 1.0)
          continue;

        g_autoptr(GError) error = NULL;
        g_autoptr(HutRegion) cut_a = hut_laid_part_dup_cut (a, parts, NULL);
        g_autoptr(HutRegion) cut_b = hut_laid_part_dup_cut (b, parts, NULL);

        if (cut_a == NULL || cut_b == NULL)
          continue;

        const double area_mm2 = hut_geos_op_area_mm2 (cut_a, cut_b, HUT_GEOS_INTERSECTION, &error);
        const double distance_mm = hut_geos_distance_mm (cut_a, cut_b, &error);

        assert_ok (error == NULL, error);
        assert_near (area_mm2, 0.0, 1e-6);
        if (distance_mm < gap_mm - ROUNDING_MM)
          fail_msg ("seed %" G_GUINT64_FORMAT ": GEOS finds parts %u and %u %g mm apart", seed,
                    a->part, b->part, distance_mm);
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
assert_set (const HutAssembly *assembly,
            const HutPartSet *parts,
            guint64 seed)
{
  g_autoptr(HutSheetSet) set = hut_sheet_set_new (assembly, parts);
  g_autoptr(HutSheetSet) again = hut_sheet_set_new (assembly, parts);

  assert_same (set, again);
  assert_each_part_once (set, parts, seed);
  for (guint i = 0; i < set->sheets->len; i++)
    {
      const HutSheet *sheet = g_ptr_array_index (set->sheets, i);
      const HutSheet *before = i > 0 ? g_ptr_array_index (set->sheets, i - 1) : NULL;
      const gboolean goes_on = before != NULL && before->stock == sheet->stock;

      assert_int_equal (sheet->number, goes_on ? before->number + 1 : 1);
      assert_sheet (sheet, parts, &assembly->design->cutter, seed);
    }
}

/* ---- by hand --------------------------------------------------------------------------------- */

static int
set_up (void **state)
{
  HutHandParts *hand = g_new0 (HutHandParts, 1);

  hut_hand_parts_init (hand);
  *state = hand;
  return 0;
}

static int
tear_down (void **state)
{
  hut_hand_parts_clear (*state);
  g_free (*state);
  return 0;
}

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

/* Heights 60, 50, 40, widths 200: a row of 380 takes one, since 200 + 5 + 200 > 380. Three rows are
 * 60 + 5 + 50 + 5 + 40 = 160 high, of 280. */
static void
parts_stand_in_rows_with_the_highest_first (void **state)
{
  HutHandParts *hand = *state;

  hut_hand_parts_add_rect (hand, "low", 200, 40);
  hut_hand_parts_add_rect (hand, "high", 200, 60);
  hut_hand_parts_add_rect (hand, "middle", 200, 50);

  g_autoptr(HutSheetSet) set = hut_sheet_set_new (hand->assembly, hand->parts);

  assert_int_equal (set->sheets->len, 1);
  assert_rect (cut_bounds (laid_at (set, 0, 0), hand->parts), (HutRect) { 10, 10, 210, 70 });
  assert_rect (cut_bounds (laid_at (set, 0, 1), hand->parts), (HutRect) { 10, 75, 210, 125 });
  assert_rect (cut_bounds (laid_at (set, 0, 2), hand->parts), (HutRect) { 10, 130, 210, 170 });
  assert_int_equal (laid_at (set, 0, 2)->part, 0);
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

/* ---- random ---------------------------------------------------------------------------------- */

static void
random_heaps_of_rectangles_lie_apart_inside_the_bed (void **state)
{
  for (guint64 seed = 1; seed <= RANDOM_HEAPS; seed++)
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
  for (guint64 seed = 1; seed <= RANDOM_DESIGNS; seed++)
    {
      g_autoptr(HutDesign) design = hut_random_design (seed);
      g_autoptr(HutAssembly) assembly = hut_assembly_new (design);
      g_autoptr(HutPartSet) parts = hut_part_set_new (assembly);

      assert_set (assembly, parts, seed);
    }
}

/* What splitting says fits the bed, packing must be able to lay. */
static void
parts_that_splitting_made_to_fit_are_laid (void **state)
{
  guint laid = 0;

  for (guint64 seed = 1; seed <= RANDOM_DESIGNS; seed++)
    {
      g_autoptr(HutDesign) design = hut_random_design (seed);
      g_autoptr(HutAssembly) assembly = hut_assembly_new (design);
      g_autoptr(HutPartSet) parts = hut_part_set_new (assembly);
      g_autoptr(HutSheetSet) set = hut_sheet_set_new (assembly, parts);

      for (guint i = 0; i < set->unplaced->len; i++)
        {
          const guint index = g_array_index (set->unplaced, guint, i);
          const HutPart *part = g_ptr_array_index (parts->parts, index);
          const HutRect box = hut_region_bounds (part->region);

          if (hut_cutter_takes_stock (&design->cutter, part->stock, box.u1 - box.u0,
                                      box.v1 - box.v0))
            fail_msg ("seed %" G_GUINT64_FORMAT ": %s fits the bed but is on no sheet", seed,
                      part->id);
        }
      for (guint i = 0; i < set->sheets->len; i++)
        laid += ((HutSheet *) g_ptr_array_index (set->sheets, i))->laid->len;
    }
  assert_true (laid > RANDOM_DESIGNS);
}

#define BY_HAND(test) cmocka_unit_test_setup_teardown (test, set_up, tear_down)

int
main (void)
{
  const struct CMUnitTest tests[] = {
    BY_HAND (first_part_lies_in_the_corner_of_the_margin),
    BY_HAND (cut_lines_keep_margin_and_gap),
    BY_HAND (part_that_is_too_high_is_turned_by_90_degrees),
    BY_HAND (part_of_exactly_the_usable_bed_fits_and_one_that_is_0_01_mm_larger_does_not),
    BY_HAND (long_slim_part_fits_only_when_any_angle_is_allowed),
    BY_HAND (part_that_is_too_long_for_the_diagonal_is_unplaced),
    BY_HAND (bought_part_is_on_no_sheet_and_not_unplaced),
    BY_HAND (sheet_smaller_than_the_bed_limits_the_parts_and_is_turned_for_more_room),
    BY_HAND (bed_smaller_than_its_margins_takes_nothing),
    BY_HAND (parts_stand_in_rows_with_the_highest_first),
    BY_HAND (order_of_equal_parts_is_that_of_their_ids),
    BY_HAND (part_whose_cut_vanishes_has_a_place_and_an_error),
    cmocka_unit_test (random_heaps_of_rectangles_lie_apart_inside_the_bed),
    cmocka_unit_test (parts_of_random_designs_lie_apart_inside_the_bed),
    cmocka_unit_test (parts_that_splitting_made_to_fit_are_laid),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}

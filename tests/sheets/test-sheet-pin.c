/* tests/sheets/test-sheet-pin.c: parts that stay where their owner laid them.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "sheets/hut-sheet-pin.h"
#include "geom/hut-geos.h"
#include "hut-assert.h"
#include "hut-hand-part.h"
#include "hut-random-design.h"

#define ROUNDING_MM 1e-5
#define RANDOM_DESIGNS 3
#define PINNED_SHARE 0.3

static HutSheetSet *
lay (const HutHandParts *hand,
     const HutSheetPin *pins,
     guint count)
{
  g_autoptr(GArray) array = g_array_new (FALSE, FALSE, sizeof (HutSheetPin));

  g_array_append_vals (array, pins, count);
  return hut_sheet_set_new_pinned (hand->assembly, hand->parts, array, HUT_SHEET_WORK, NULL);
}

/* The laid part and the index of its sheet; fails when it is laid nowhere or twice. */
static const HutLaidPart *
find_laid (const HutSheetSet *set,
           guint part,
           guint *sheet_index)
{
  const HutLaidPart *found = NULL;

  for (guint i = 0; i < set->sheets->len; i++)
    {
      const HutSheet *sheet = g_ptr_array_index (set->sheets, i);

      for (guint k = 0; k < sheet->laid->len; k++)
        if (g_array_index (sheet->laid, HutLaidPart, k).part == part)
          {
            assert_null (found);
            found = &g_array_index (sheet->laid, HutLaidPart, k);
            *sheet_index = i;
          }
    }
  assert_non_null (found);
  return found;
}

/* What room must be kept around: the cut, or where kerf swallows something of it the part. */
static HutRegion *
dup_line (const HutLaidPart *laid,
          const HutPartSet *parts)
{
  HutRegion *cut = hut_laid_part_dup_cut (laid, parts, NULL);
  const HutPart *part = g_ptr_array_index (parts->parts, laid->part);

  return cut != NULL ? cut : hut_region_dup_placed (part->region, &laid->placement);
}

static double
gap_mm (const HutSheetSet *set,
        const HutPartSet *parts,
        guint a,
        guint b)
{
  g_autoptr(GError) error = NULL;
  guint sheet_a, sheet_b;
  const HutLaidPart *laid_a = find_laid (set, a, &sheet_a), *laid_b = find_laid (set, b, &sheet_b);
  g_autoptr(HutRegion) line_a = dup_line (laid_a, parts);
  g_autoptr(HutRegion) line_b = dup_line (laid_b, parts);

  if (sheet_a != sheet_b)
    return G_MAXDOUBLE;
  return hut_geos_distance_mm (line_a, line_b, &error);
}

/* 100 x 50 turned by a quarter is a box from (-50, 0) to (0, 100): its corner at (30, 40) takes a
 * shift by (80, 40). */
static void
pin_and_placement_say_the_same (void **state)
{
  HutHandParts *hand = *state;
  const HutPart *part = hut_hand_parts_add_rect (hand, "a", 100, 50);
  const HutSheetPin pin = { .part = 0, .number = 2, .turn_rad = G_PI_2, .corner = { 30, 40 } };
  const HutPlacement placement = hut_sheet_pin_placement (&pin, part);
  const HutSheetPin back = hut_sheet_pin_at (part, 0, 2, &placement);

  assert_near_mm (placement.shift.u, 80, 1e-9);
  assert_near_mm (placement.shift.v, 40, 1e-9);
  assert_near (placement.turn_rad, G_PI_2, 0.0);
  assert_int_equal (back.number, 2);
  assert_near_mm (back.corner.u, 30, 1e-9);
  assert_near_mm (back.corner.v, 40, 1e-9);
}

/* Usable 380 x 280, gap 5: the pinned 100 x 280 in the middle leaves 135 on each side, so that two of
 * 130 x 280 fit beside it, and a third does not. */
static void
others_are_laid_around_a_pinned_part (void **state)
{
  HutHandParts *hand = *state;
  const HutSheetPin pin = { .part = 0, .number = 1, .corner = { 150, 10 } };
  guint sheet;

  hut_hand_parts_add_rect (hand, "a", 100, 280);
  hut_hand_parts_add_rect (hand, "b", 130, 280);
  hut_hand_parts_add_rect (hand, "c", 130, 280);

  g_autoptr(HutSheetSet) set = lay (hand, &pin, 1);

  assert_int_equal (set->sheets->len, 1);
  assert_near_mm (find_laid (set, 0, &sheet)->placement.shift.u, 150, 1e-9);
  assert_true (find_laid (set, 0, &sheet)->pinned);
  assert_false (find_laid (set, 1, &sheet)->pinned);
  assert_true (gap_mm (set, hand->parts, 0, 1) >= 5 - ROUNDING_MM);
  assert_true (gap_mm (set, hand->parts, 0, 2) >= 5 - ROUNDING_MM);

  hut_hand_parts_add_rect (hand, "d", 130, 280);

  g_autoptr(HutSheetSet) more = lay (hand, &pin, 1);

  assert_int_equal (more->sheets->len, 2);
  assert_near_mm (find_laid (more, 0, &sheet)->placement.shift.u, 150, 1e-9);
}

/* Two on each other and one that hangs over the edge: they stay, and the free one keeps clear. */
static void
pinned_parts_may_overlap_and_leave_the_sheet (void **state)
{
  HutHandParts *hand = *state;
  const HutSheetPin pins[] = {
    { .part = 0, .number = 1, .corner = { 10, 10 } },
    { .part = 1, .number = 1, .corner = { 60, 10 } },
    { .part = 2, .number = 1, .corner = { -50, 200 } },
  };
  guint sheet;

  for (guint i = 0; i < 4; i++)
    hut_hand_parts_add_rect (hand, (const char *[]) { "a", "b", "c", "d" }[i], 100, 50);

  g_autoptr(HutSheetSet) set = lay (hand, pins, G_N_ELEMENTS (pins));

  assert_int_equal (set->sheets->len, 1);
  for (guint i = 0; i < G_N_ELEMENTS (pins); i++)
    {
      const HutLaidPart *laid = find_laid (set, i, &sheet);

      assert_near_mm (laid->placement.shift.u, pins[i].corner.u, 1e-9);
      assert_near_mm (laid->placement.shift.v, pins[i].corner.v, 1e-9);
      assert_true (gap_mm (set, hand->parts, i, 3) >= 5 - ROUNDING_MM);
    }
  assert_near (gap_mm (set, hand->parts, 0, 1), 0.0, 0.0);
}

/* Sheet 3 alone is asked for: it becomes the second, since the free part needs one and fills the
 * first. */
static void
sheets_that_stay_empty_are_left_out (void **state)
{
  HutHandParts *hand = *state;
  const HutSheetPin pin = { .part = 0, .number = 3, .corner = { 10, 10 } };
  guint sheet;

  hut_hand_parts_add_rect (hand, "a", 380, 280);
  hut_hand_parts_add_rect (hand, "b", 100, 50);

  g_autoptr(HutSheetSet) set = lay (hand, &pin, 1);

  assert_int_equal (set->sheets->len, 2);
  find_laid (set, 0, &sheet);
  assert_int_equal (sheet, 1);
  assert_int_equal (((const HutSheet *) g_ptr_array_index (set->sheets, 1))->number, 2);
}

/* The second pin of a part, one of a part that is not there, and one of a bought part. */
static void
pins_without_sense_are_passed_over (void **state)
{
  HutHandParts *hand = *state;
  const HutSheetPin pins[] = {
    { .part = 0, .number = G_MAXUINT, .corner = { 20, 30 } },
    { .part = 0, .number = 1, .corner = { 70, 80 } },
    { .part = 7, .number = 1, .corner = { 10, 10 } },
    { .part = 1, .number = 1, .corner = { 10, 10 } },
  };
  guint sheet;

  hut_hand_parts_add_rect (hand, "a", 100, 50);
  hut_hand_parts_add_rect (hand, "b", 100, 50)->bought = TRUE;

  g_autoptr(HutSheetSet) set = lay (hand, pins, G_N_ELEMENTS (pins));

  assert_int_equal (set->sheets->len, 1);
  assert_near_mm (find_laid (set, 0, &sheet)->placement.shift.u, 20, 1e-9);
  assert_int_equal (((const HutSheet *) g_ptr_array_index (set->sheets, 0))->laid->len, 1);
}

/* ---- random ---------------------------------------------------------------------------------- */

/* Some parts of a packed design, pinned where they lie, and @shift_mm beside. */
static GArray *
dup_some_pins (const HutSheetSet *set,
               const HutPartSet *parts,
               HutRandom *random,
               double shift_mm)
{
  GArray *pins = g_array_new (FALSE, FALSE, sizeof (HutSheetPin));

  for (guint i = 0; i < set->sheets->len; i++)
    {
      const HutSheet *sheet = g_ptr_array_index (set->sheets, i);

      for (guint k = 0; k < sheet->laid->len; k++)
        {
          const HutLaidPart *laid = &g_array_index (sheet->laid, HutLaidPart, k);
          HutSheetPin pin = hut_sheet_pin_at (g_ptr_array_index (parts->parts, laid->part),
                                              laid->part, sheet->number, &laid->placement);

          pin.corner.u += shift_mm;
          if (hut_random_chance (random, PINNED_SHARE))
            g_array_append_val (pins, pin);
        }
    }
  return pins;
}

static void
assert_pins_hold (const HutSheetSet *set,
                  const HutPartSet *parts,
                  const GArray *pins)
{
  for (guint i = 0; i < pins->len; i++)
    {
      const HutSheetPin *pin = &g_array_index (pins, HutSheetPin, i);
      guint sheet;
      const HutLaidPart *laid = find_laid (set, pin->part, &sheet);
      const HutPlacement must
          = hut_sheet_pin_placement (pin, g_ptr_array_index (parts->parts, pin->part));

      assert_true (laid->pinned);
      assert_near_mm (laid->placement.shift.u, must.shift.u, 1e-9);
      assert_near_mm (laid->placement.shift.v, must.shift.v, 1e-9);
      assert_near (laid->placement.turn_rad, must.turn_rad, 0.0);
    }
}

static void
pins_of_random_designs_hold_and_the_rest_keeps_clear (void **state)
{
  const guint64 count = hut_random_seed_count (RANDOM_DESIGNS);

  for (guint64 seed = hut_random_first_seed (); seed < hut_random_first_seed () + count; seed++)
    {
      g_autoptr(HutDesign) design = hut_random_design (seed);
      g_autoptr(HutAssembly) assembly = hut_assembly_new (design);
      g_autoptr(HutPartSet) parts = hut_part_set_new (assembly);
      g_autoptr(HutSheetSet) free_set = hut_sheet_set_new (assembly, parts);
      HutRandom random;

      hut_random_init (&random, seed);

      g_autoptr(GArray) pins = dup_some_pins (free_set, parts, &random,
                                              hut_random_between (&random, -20.0, 20.0));
      g_autoptr(HutSheetSet) set
          = hut_sheet_set_new_pinned (assembly, parts, pins, HUT_SHEET_WORK, NULL);

      assert_pins_hold (set, parts, pins);
      for (guint i = 0; i < set->sheets->len; i++)
        {
          const HutSheet *sheet = g_ptr_array_index (set->sheets, i);

          for (guint k = 0; k < sheet->laid->len; k++)
            for (guint m = 0; m < k; m++)
              {
                const HutLaidPart *a = &g_array_index (sheet->laid, HutLaidPart, k);
                const HutLaidPart *b = &g_array_index (sheet->laid, HutLaidPart, m);

                if ((!a->pinned || !b->pinned)
                    && gap_mm (set, parts, a->part, b->part)
                           < design->cutter.part_gap_mm - ROUNDING_MM)
                  fail_msg ("seed %" G_GUINT64_FORMAT ": parts %u and %u are too near", seed,
                            a->part, b->part);
              }
        }
    }
}

#define BY_HAND(test) cmocka_unit_test_setup_teardown (test, \
        hut_hand_parts_set_up, hut_hand_parts_tear_down)

int
main (void)
{
  const struct CMUnitTest tests[] = {
    BY_HAND (pin_and_placement_say_the_same),
    BY_HAND (others_are_laid_around_a_pinned_part),
    BY_HAND (pinned_parts_may_overlap_and_leave_the_sheet),
    BY_HAND (sheets_that_stay_empty_are_left_out),
    BY_HAND (pins_without_sense_are_passed_over),
    cmocka_unit_test (pins_of_random_designs_hold_and_the_rest_keeps_clear),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}

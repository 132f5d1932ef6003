/* tests/sheets/test-shelf-pack.c: boxes of parts on shelves.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "sheets/hut-shelf-pack.h"
#include "hut-assert.h"
#include "hut-hand-part.h"

static GPtrArray *
pack_all (const HutHandParts *hand)
{
  g_autoptr(GArray) indices = g_array_new (FALSE, FALSE, sizeof (guint));

  for (guint i = 0; i < hand->parts->parts->len; i++)
    g_array_append_val (indices, i);
  return hut_shelf_pack (hand->parts, indices, hand->cutter, hand->stock);
}

static void
assert_lies (const GPtrArray *sheets,
             guint sheet,
             guint index,
             guint part,
             HutPoint shift)
{
  const HutSheet *on = g_ptr_array_index (sheets, sheet);
  const HutLaidPart *laid = &g_array_index (on->laid, HutLaidPart, index);

  assert_int_equal (laid->part, part);
  assert_near_mm (laid->placement.shift.u, shift.u, 1e-9);
  assert_near_mm (laid->placement.shift.v, shift.v, 1e-9);
}

/* Heights 60, 50, 40, widths 200: a row of 380 takes one, since 200 + 5 + 200 > 380. Three rows are
 * 60 + 5 + 50 + 5 + 40 = 160 high, of 280. */
static void
parts_stand_in_rows_with_the_highest_first (void **state)
{
  HutHandParts hand;

  hut_hand_parts_init (&hand);
  hut_hand_parts_add_rect (&hand, "low", 200, 40);
  hut_hand_parts_add_rect (&hand, "high", 200, 60);
  hut_hand_parts_add_rect (&hand, "middle", 200, 50);

  g_autoptr(GPtrArray) sheets = pack_all (&hand);

  assert_int_equal (sheets->len, 1);
  assert_lies (sheets, 0, 0, 1, (HutPoint) { 10, 10 });
  assert_lies (sheets, 0, 1, 2, (HutPoint) { 10, 75 });
  assert_lies (sheets, 0, 2, 0, (HutPoint) { 10, 130 });
  hut_hand_parts_clear (&hand);
}

/* Rows of 380: 180 + 5 + 180 fits, a third one starts the next row; two rows of 130 + 5 are 265 of
 * 280, so the fifth goes to a new sheet. */
static void
row_and_sheet_that_are_full_are_followed_by_new_ones (void **state)
{
  HutHandParts hand;

  hut_hand_parts_init (&hand);
  for (guint i = 0; i < 5; i++)
    {
      g_autofree char *id = g_strdup_printf ("part-%u", i);

      hut_hand_parts_add_rect (&hand, id, 180, 130);
    }

  g_autoptr(GPtrArray) sheets = pack_all (&hand);

  assert_int_equal (sheets->len, 2);
  assert_lies (sheets, 0, 1, 1, (HutPoint) { 195, 10 });
  assert_lies (sheets, 0, 2, 2, (HutPoint) { 10, 145 });
  assert_lies (sheets, 1, 0, 4, (HutPoint) { 10, 10 });
  assert_int_equal (((HutSheet *) g_ptr_array_index (sheets, 1))->number, 2);
  hut_hand_parts_clear (&hand);
}

static void
part_that_fits_no_sheet_is_left_out (void **state)
{
  HutHandParts hand;

  hut_hand_parts_init (&hand);
  hut_hand_parts_add_rect (&hand, "large", 381, 100);

  g_autoptr(GPtrArray) sheets = pack_all (&hand);

  assert_int_equal (sheets->len, 0);
  hut_hand_parts_clear (&hand);
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (parts_stand_in_rows_with_the_highest_first),
    cmocka_unit_test (row_and_sheet_that_are_full_are_followed_by_new_ones),
    cmocka_unit_test (part_that_fits_no_sheet_is_left_out),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}

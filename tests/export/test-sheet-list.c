/* tests/export/test-sheet-list.c: the sheets as a table, and what all of them take.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "export/hut-sheet-figures.h"
#include "export/hut-write.h"
#include "hut-assert.h"
#include "hut-hand-part.h"
#include <string.h>

static void
table_has_a_line_per_sheet_and_one_for_all (void **state)
{
  HutHandParts hand;

  hut_hand_parts_init (&hand);
  hut_hand_parts_add_rect (&hand, "plate", 300, 200);
  hut_hand_parts_add_rect (&hand, "other", 300, 200);
  hand.stock->price = 12.5;
  hand.stock->sheet_width_mm = 804; /* two of the bed's 400 x 300 and a saw cut of 4 */
  hand.stock->sheet_depth_mm = 300;

  g_autoptr(HutSheetSet) set = hut_sheet_set_new (hand.assembly, hand.parts);
  g_autoptr(GBytes) bytes = hut_write_marked_sheet_list (hand.parts, set, "CHECKS OVERRIDDEN: a, b");
  g_autofree char *text = g_strndup (g_bytes_get_data (bytes, NULL), g_bytes_get_size (bytes));
  g_auto(GStrv) lines = g_strsplit (text, "\r\n", -1);
  HutSheetTotals totals;

  assert_int_equal (set->sheets->len, 2);
  assert_int_equal (g_strv_length (lines), 5); /* head, two, all, nothing */
  assert_non_null (strstr (lines[1], ",400,300,"));
  assert_non_null (strstr (lines[1], ",50,1000,1,0,")); /* 60000 of 120000 mm2; 1000 mm round */
  assert_true (g_str_has_prefix (lines[3], "all,,,,,50,2000,2,,,"));
  assert_true (g_str_has_suffix (lines[3], ",1,12.5,\"CHECKS OVERRIDDEN: a, b\""));
  hut_sheet_set_get_totals (hand.parts, set, &totals);
  assert_near (totals.used_ratio, 0.5, 1e-12);
  assert_near_mm (totals.cut_length_mm, 2000, 1e-9);
  assert_true (totals.price_known);
  assert_near (totals.price, 12.5, 1e-12);
  hut_hand_parts_clear (&hand);
}

static void
stock_sheets_to_buy_are_counted_in_rows_and_columns (void **state)
{
  g_autoptr(HutStock) stock = hut_stock_new ("ply");
  const HutCutter cutter = { .bed_width_mm = 400, .bed_depth_mm = 300 };

  stock->sheet_width_mm = 1208;
  stock->sheet_depth_mm = 604;
  /* By hand: 3 x 2 of 400 x 300 with saw cuts of 4 between them. */
  assert_int_equal (hut_stock_sheets_to_buy (stock, &cutter, 0), 0);
  assert_int_equal (hut_stock_sheets_to_buy (stock, &cutter, 6), 1);
  assert_int_equal (hut_stock_sheets_to_buy (stock, &cutter, 7), 2);
  stock->sheet_width_mm = 300;
  stock->sheet_depth_mm = 200; /* smaller than the bed: each is one */
  assert_int_equal (hut_stock_sheets_to_buy (stock, &cutter, 3), 3);
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (table_has_a_line_per_sheet_and_one_for_all),
    cmocka_unit_test (stock_sheets_to_buy_are_counted_in_rows_and_columns),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}

/* tests/export/test-blank-list.c: the list of sheets to buy and of their saw cuts.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "export/hut-write.h"
#include "hut-assert.h"
#include "hut-hand-part.h"

#define HEAD "stock,what,number,width_mm,depth_mm,from_left_mm,from_front_mm,note\r\n"

static char *
dup_list (HutHandParts *hand,
          const char *mark)
{
  g_autoptr(HutSheetSet) set = hut_sheet_set_new (hand->assembly, hand->parts);
  g_autoptr(GBytes) table = hut_write_marked_blank_list (hand->assembly, set, mark);
  gsize size;
  const char *data = table != NULL ? g_bytes_get_data (table, &size) : NULL;

  return data != NULL ? g_strndup (data, size) : NULL;
}

/* Bed 400 x 300, three parts that each take a whole sheet of it. The bought sheet of 804 x 310 gives two
 * blanks: 400 + 4 + 400 wide. First 300 is sawn off all along (the saw's middle at 302), then that is
 * parted at 402. So two sheets are bought. */
static void
larger_sheets_are_sawn_down_and_counted (void **state)
{
  HutHandParts hand;
  g_autofree char *list = NULL;

  hut_hand_parts_init (&hand);
  hand.stock->sheet_width_mm = 804;
  hand.stock->sheet_depth_mm = 310;
  for (guint i = 0; i < 3; i++)
    hut_hand_parts_add_rect (&hand, (const char *[]) { "a", "b", "c" }[i], 370, 270);
  list = dup_list (&hand, "mark, so");
  assert_string_equal (
    list, HEAD "ply,sheets to buy,2,804,310,0,0,\"mark, so\"\r\n"
               "ply,saw cut,1,804,0,0,302,"
               "\"sawn by hand or by the supplier, before the sheet goes on the bed\"\r\n"
               "ply,saw cut,2,0,300,402,0,"
               "\"sawn by hand or by the supplier, before the sheet goes on the bed\"\r\n"
               "ply,blank,1,400,300,0,0,\"mark, so\"\r\n"
               "ply,blank,2,400,300,404,0,\"mark, so\"\r\n");
  hut_hand_parts_clear (&hand);
}

static void
sheets_that_go_on_the_bed_are_only_counted (void **state)
{
  HutHandParts hand;
  g_autofree char *list = NULL, *none = NULL;

  hut_hand_parts_init (&hand);
  hand.stock->sheet_width_mm = 400;
  hand.stock->sheet_depth_mm = 300;
  none = dup_list (&hand, NULL);
  assert_null (none);
  hut_hand_parts_add_rect (&hand, "a", 370, 270);
  list = dup_list (&hand, NULL);
  assert_string_equal (list, HEAD "ply,sheets to buy,1,400,300,0,0,\r\n");
  hut_hand_parts_clear (&hand);
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (larger_sheets_are_sawn_down_and_counted),
    cmocka_unit_test (sheets_that_go_on_the_bed_are_only_counted),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}

/* tests/sheets/test-spot-pin.c: spots of the design in the packing.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "sheets/hut-spot-pin.h"
#include "hut-assert.h"
#include "hut-hand-part.h"

/* Bed 400 x 300, margin 10, gap 5, no kerf. Three parts of 100 x 50. */
static int
set_up (void **state)
{
  HutHandParts *hand = g_new0 (HutHandParts, 1);

  hut_hand_parts_init (hand);
  hut_hand_parts_add_rect (hand, "a", 100, 50);
  hut_hand_parts_add_rect (hand, "b", 100, 50);
  hut_hand_parts_add_rect (hand, "c", 100, 50);
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

static HutSpot *
put (HutHandParts *hand,
     const char *part,
     double left_mm,
     double front_mm,
     gboolean kept)
{
  HutSpot *spot = hut_spot_new (part);

  spot->left_mm = left_mm;
  spot->front_mm = front_mm;
  spot->width_mm = 100;
  spot->height_mm = 50;
  spot->kept = kept;
  g_ptr_array_add (hand->design->spots, spot);
  return spot;
}

/* Where a part's front left corner lies in the layout of the whole program. */
static HutPoint
corner_of (HutHandParts *hand,
           guint part)
{
  g_autoptr(HutSheetSet) set = hut_sheet_set_new (hand->assembly, hand->parts);

  for (guint i = 0; i < set->sheets->len; i++)
    {
      const HutSheet *sheet = g_ptr_array_index (set->sheets, i);

      for (guint k = 0; k < sheet->laid->len; k++)
        {
          const HutLaidPart *laid = &g_array_index (sheet->laid, HutLaidPart, k);
          const HutPart *found = g_ptr_array_index (hand->parts->parts, laid->part);
          g_autoptr(HutRegion) placed = hut_region_dup_placed (found->region, &laid->placement);
          const HutRect box = hut_region_bounds (placed);

          if (laid->part == part)
            return (HutPoint) { box.u0, box.v0 };
        }
    }
  fail_msg ("part %u is on no sheet", part);
  return (HutPoint) { 0, 0 };
}

static void
assert_corner (HutHandParts *hand,
               guint part,
               double left_mm,
               double front_mm)
{
  const HutPoint corner = corner_of (hand, part);

  assert_near_mm (corner.u, left_mm, 1e-5);
  assert_near_mm (corner.v, front_mm, 1e-5);
}

static guint
count_pins (HutHandParts *hand)
{
  g_autoptr(GArray) pins = hut_sheet_pins_new_from_spots (hand->assembly, hand->parts);

  return pins->len;
}

static void
part_stays_where_it_was_kept (void **state)
{
  put (*state, "b", 123, 77, TRUE);
  assert_int_equal (count_pins (*state), 1);
  assert_corner (*state, 1, 123, 77);
}

static void
layout_that_was_taken_over_holds_as_a_whole (void **state)
{
  put (*state, "a", 200, 200, FALSE);
  put (*state, "b", 123, 77, FALSE);
  put (*state, "c", 20, 20, FALSE);
  assert_corner (*state, 0, 200, 200);
  assert_corner (*state, 1, 123, 77);
  assert_corner (*state, 2, 20, 20);
}

static void
without_a_spot_for_each_part_only_kept_ones_hold (void **state)
{
  put (*state, "a", 200, 200, FALSE);
  put (*state, "b", 123, 77, TRUE);
  assert_int_equal (count_pins (*state), 1);
  assert_corner (*state, 1, 123, 77);
}

static void
part_of_another_size_ends_the_layout_but_not_what_is_kept (void **state)
{
  put (*state, "a", 200, 200, FALSE)->width_mm = 90;
  put (*state, "b", 123, 77, TRUE)->width_mm = 90;
  put (*state, "c", 20, 20, FALSE);
  assert_int_equal (count_pins (*state), 1);
  assert_corner (*state, 1, 123, 77);
}

static void
only_what_is_in_the_way_of_a_kept_part_gives_way (void **state)
{
  put (*state, "a", 130, 80, FALSE);
  put (*state, "b", 123, 77, TRUE);
  put (*state, "c", 20, 200, FALSE);
  assert_int_equal (count_pins (*state), 2);
  assert_corner (*state, 1, 123, 77);
  assert_corner (*state, 2, 20, 200);
}

static void
layout_whose_parts_come_too_near_each_other_is_dropped (void **state)
{
  HutHandParts *hand = *state;

  put (hand, "a", 20, 20, FALSE);
  put (hand, "b", 20, 75, FALSE);
  put (hand, "c", 20, 130, FALSE);
  assert_int_equal (count_pins (hand), 3);
  hand->cutter->part_gap_mm = 6.0;
  assert_int_equal (count_pins (hand), 0);
}

static void
layout_that_leaves_the_bed_is_dropped (void **state)
{
  put (*state, "a", 291, 20, FALSE);
  put (*state, "b", 20, 75, FALSE);
  put (*state, "c", 20, 130, FALSE);
  assert_int_equal (count_pins (*state), 0);
}

static void
kept_parts_may_lie_on_each_other (void **state)
{
  put (*state, "a", 50, 50, TRUE);
  put (*state, "b", 60, 60, TRUE);
  assert_corner (*state, 0, 50, 50);
  assert_corner (*state, 1, 60, 60);
}

static void
part_that_no_sheet_takes_needs_no_spot (void **state)
{
  hut_hand_parts_add_rect (*state, "z", 500, 500);
  put (*state, "a", 200, 200, FALSE);
  put (*state, "b", 123, 77, FALSE);
  put (*state, "c", 20, 20, FALSE);
  assert_int_equal (count_pins (*state), 3);
}

static void
spot_of_a_part_that_is_gone_does_nothing (void **state)
{
  put (*state, "ghost", 200, 200, TRUE);
  assert_int_equal (count_pins (*state), 0);
  (void) corner_of (*state, 0);
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test_setup_teardown (part_stays_where_it_was_kept, set_up, tear_down),
    cmocka_unit_test_setup_teardown (layout_that_was_taken_over_holds_as_a_whole, set_up,
                                     tear_down),
    cmocka_unit_test_setup_teardown (without_a_spot_for_each_part_only_kept_ones_hold, set_up,
                                     tear_down),
    cmocka_unit_test_setup_teardown (part_of_another_size_ends_the_layout_but_not_what_is_kept,
                                     set_up, tear_down),
    cmocka_unit_test_setup_teardown (only_what_is_in_the_way_of_a_kept_part_gives_way, set_up,
                                     tear_down),
    cmocka_unit_test_setup_teardown (layout_whose_parts_come_too_near_each_other_is_dropped, set_up,
                                     tear_down),
    cmocka_unit_test_setup_teardown (layout_that_leaves_the_bed_is_dropped, set_up, tear_down),
    cmocka_unit_test_setup_teardown (kept_parts_may_lie_on_each_other, set_up, tear_down),
    cmocka_unit_test_setup_teardown (part_that_no_sheet_takes_needs_no_spot, set_up, tear_down),
    cmocka_unit_test_setup_teardown (spot_of_a_part_that_is_gone_does_nothing, set_up, tear_down),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}

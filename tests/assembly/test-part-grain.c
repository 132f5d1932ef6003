/* tests/assembly/test-part-grain.c: how a part may lie on a sheet with grain.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "assembly/hut-part-grain.h"
#include "hut-assert.h"
#include "hut-hand-part.h"

/* Bed 400 x 300, margin 10: room 380 x 280. The sheet is larger both ways: it lies straight. */
static HutPart *
begin (HutHandParts *hand,
       double width_mm,
       double height_mm)
{
  hut_hand_parts_init (hand);
  hand->stock->grain = HUT_GRAIN_DEPTH;
  return hut_hand_parts_add_rect (hand, "a", width_mm, height_mm);
}

static void
assert_turns (const HutPart *part,
              const HutCutter *cutter,
              gboolean even,
              gboolean odd)
{
  for (guint quarters = 0; quarters < 4; quarters++)
    assert_int_equal (hut_part_may_turn (part, cutter, quarters), quarters % 2 ? odd : even);
}

/* The grain runs up the bed: upright panels lie as they stand, those across lie turned. */
static void
grain_along_the_depth_keeps_upright_panels_upright (void **state)
{
  HutHandParts hand;
  const HutPart *part = begin (&hand, 200, 100);

  assert_turns (part, hand.cutter, TRUE, FALSE);
  hand.stock->grain_rule = HUT_GRAIN_RULE_ACROSS;
  assert_turns (part, hand.cutter, FALSE, TRUE);
  hand.stock->grain = HUT_GRAIN_WIDTH;
  assert_turns (part, hand.cutter, TRUE, FALSE);
  hand.stock->grain_rule = HUT_GRAIN_RULE_UP;
  assert_turns (part, hand.cutter, FALSE, TRUE);
  hut_hand_parts_clear (&hand);
}

static void
without_grain_or_rule_and_for_other_parts_every_way_is_allowed (void **state)
{
  HutHandParts hand;
  HutPart *part = begin (&hand, 200, 100);

  part->kind = HUT_PART_STRAP;
  assert_turns (part, hand.cutter, TRUE, TRUE);
  part->kind = HUT_PART_PANEL;
  hand.stock->grain_rule = HUT_GRAIN_RULE_FREE;
  assert_turns (part, hand.cutter, TRUE, TRUE);
  hand.stock->grain_rule = HUT_GRAIN_RULE_UP;
  hand.stock->grain = HUT_GRAIN_NONE;
  assert_turns (part, hand.cutter, TRUE, TRUE);
  assert_true (hut_part_keeps_grain (part, hand.cutter));
  hut_hand_parts_clear (&hand);
}

/* A sheet of 250 x 390 goes on the bed of 400 x 300 only turned: its depth lies along the bed. */
static void
grain_turns_with_the_sheet (void **state)
{
  HutHandParts hand;
  const HutPart *part = begin (&hand, 200, 100);

  hand.stock->sheet_width_mm = 250;
  hand.stock->sheet_depth_mm = 390;
  assert_true (hut_cutter_turns_sheet (hand.cutter, hand.stock));
  assert_turns (part, hand.cutter, FALSE, TRUE);
  hut_hand_parts_clear (&hand);
}

/* 100 x 300 is too high for the room of 280: it fits only turned, against its rule. */
static void
part_that_fits_only_against_the_grain_may_lie_in_any_way (void **state)
{
  HutHandParts hand;
  const HutPart *part = begin (&hand, 100, 300);

  assert_false (hut_part_keeps_grain (part, hand.cutter));
  assert_turns (part, hand.cutter, TRUE, TRUE);
  hut_hand_parts_clear (&hand);
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (grain_along_the_depth_keeps_upright_panels_upright),
    cmocka_unit_test (without_grain_or_rule_and_for_other_parts_every_way_is_allowed),
    cmocka_unit_test (grain_turns_with_the_sheet),
    cmocka_unit_test (part_that_fits_only_against_the_grain_may_lie_in_any_way),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}

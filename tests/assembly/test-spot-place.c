/* tests/assembly/test-spot-place.c: where a spot puts its part, and how far parts lie apart.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "assembly/hut-spot-place.h"
#include "hut-assert.h"
#include "hut-hand-part.h"

/* 100 x 50 turned by a quarter: a box from (-50, 0) to (0, 100); its corner at (30, 40) takes a shift
 * by (80, 40). */
static void
spot_and_placement_say_the_same (void **state)
{
  const HutPart *part = hut_hand_parts_add_rect (*state, "a", 100, 50);
  g_autoptr(HutSpot) spot = hut_spot_new ("a");
  g_autoptr(HutSpot) back = NULL;
  HutPlacement placement;

  spot->left_mm = 30;
  spot->front_mm = 40;
  spot->turn_deg = 90;
  spot->sheet = 2;
  spot->width_mm = 100;
  spot->height_mm = 50;
  spot->kept = TRUE;
  placement = hut_spot_placement (spot, part);
  assert_near_mm (placement.shift.u, 80, 1e-9);
  assert_near_mm (placement.shift.v, 40, 1e-9);
  back = hut_spot_new_at (part, 2, &placement, TRUE);
  assert_true (hut_spot_equal (spot, back));
}

static void
turns_stay_within_one_round_and_quarters_exact (void **state)
{
  const HutPart *part = hut_hand_parts_add_rect (*state, "a", 100, 50);

  for (int quarter = -5; quarter <= 5; quarter++)
    {
      const HutPlacement placement = { .turn_rad = quarter * G_PI_2 };
      g_autoptr(HutSpot) spot = hut_spot_new_at (part, 1, &placement, FALSE);

      assert_near (spot->turn_deg, (double) ((quarter + 8) % 4) * 90.0, 0.0);
    }
}

static void
part_is_found_by_its_id_unless_it_is_bought (void **state)
{
  HutPart *part = hut_hand_parts_add_rect (*state, "a", 100, 50);
  const HutPartSet *parts = ((HutHandParts *) *state)->parts;
  g_autoptr(HutSpot) spot = hut_spot_new ("a");
  g_autoptr(HutSpot) other = hut_spot_new ("b");
  guint index = 9;

  assert_ptr_equal (hut_spot_get_part (spot, parts, &index), part);
  assert_int_equal (index, 0);
  assert_null (hut_spot_get_part (other, parts, NULL));
  part->bought = TRUE;
  assert_null (hut_spot_get_part (spot, parts, NULL));
}

static void
a_step_of_the_grid_is_another_size (void **state)
{
  const HutPart *part = hut_hand_parts_add_rect (*state, "a", 100, 50);
  g_autoptr(HutSpot) spot = hut_spot_new ("a");

  spot->width_mm = 100;
  spot->height_mm = 50;
  assert_true (hut_spot_has_size (spot, part));
  spot->height_mm = 50.002;
  assert_false (hut_spot_has_size (spot, part));
}

/* Kerf 2: cuts are 1 outside each part. Parts 3 apart along a diagonal of (3, 4) less 2 each way. */
static void
gap_is_between_cut_lines (void **state)
{
  HutHandParts *hand = *state;
  const HutPart *part = hut_hand_parts_add_rect (hand, "a", 100, 50);
  const HutPlacement at = { .shift = { 0, 0 } }, right = { .shift = { 107, 0 } };
  const HutPlacement corner = { .shift = { 105, 56 } }, on = { .shift = { 50, 20 } };
  g_auto(HutLaidCut) a = { NULL };
  g_auto(HutLaidCut) b = { NULL };
  g_auto(HutLaidCut) c = { NULL };
  g_auto(HutLaidCut) d = { NULL };

  hand->stock->kerf_mm = 2.0;
  hut_laid_cut_init (&a, part, &at);
  hut_laid_cut_init (&b, part, &right);
  hut_laid_cut_init (&c, part, &corner);
  hut_laid_cut_init (&d, part, &on);
  assert_near_mm (hut_laid_cut_gap_mm (&a, &b, 10), 5.0, 1e-9);
  assert_near_mm (hut_laid_cut_gap_mm (&a, &c, 10), 5.0, 1e-9);
  assert_near_mm (hut_laid_cut_gap_mm (&a, &d, 10), 0.0, 0.0);
  assert_true (hut_laid_cut_gap_mm (&a, &b, 4) > 4.0);
}

/* 400 x 300 with margin 10: at (5, 10) the part sticks out 5 to the left. */
static void
out_of_the_usable_sheet_is_measured (void **state)
{
  HutHandParts *hand = *state;
  const HutPart *part = hut_hand_parts_add_rect (hand, "a", 100, 50);
  const HutRect usable = hut_cutter_usable (hand->cutter, hand->stock);
  const HutPlacement left = { .shift = { 5, 10 } }, back = { .shift = { 10, 242 } };
  g_auto(HutLaidCut) a = { NULL };
  g_auto(HutLaidCut) b = { NULL };

  assert_near_mm (usable.u1, 390, 0.0);
  assert_near_mm (usable.v1, 290, 0.0);
  hut_laid_cut_init (&a, part, &left);
  hut_laid_cut_init (&b, part, &back);
  assert_near_mm (hut_laid_cut_out_mm (&a, usable), 5, 1e-9);
  assert_near_mm (hut_laid_cut_out_mm (&b, usable), 2, 1e-9);
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test_setup_teardown (spot_and_placement_say_the_same,
                                     hut_hand_parts_set_up, hut_hand_parts_tear_down),
    cmocka_unit_test_setup_teardown (turns_stay_within_one_round_and_quarters_exact,
                                     hut_hand_parts_set_up, hut_hand_parts_tear_down),
    cmocka_unit_test_setup_teardown (part_is_found_by_its_id_unless_it_is_bought,
                                     hut_hand_parts_set_up, hut_hand_parts_tear_down),
    cmocka_unit_test_setup_teardown (a_step_of_the_grid_is_another_size,
                                     hut_hand_parts_set_up, hut_hand_parts_tear_down),
    cmocka_unit_test_setup_teardown (gap_is_between_cut_lines,
                                     hut_hand_parts_set_up, hut_hand_parts_tear_down),
    cmocka_unit_test_setup_teardown (out_of_the_usable_sheet_is_measured,
                                     hut_hand_parts_set_up, hut_hand_parts_tear_down),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}

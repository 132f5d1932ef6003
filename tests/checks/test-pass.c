/* tests/checks/test-pass.c: whether the head of a lead, hose or duct passes an opening.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "config.h"
#include "checks/hut-pass.h"
#include "hut-assert.h"
#include <math.h>

static gboolean
round_lets (double diameter_mm,
            HutHead head)
{
  const HutGate gate = { TRUE, diameter_mm, diameter_mm, diameter_mm / 2 };

  return hut_pass_lets (&gate, head);
}

static gboolean
rectangle_lets (double width_mm,
                double height_mm,
                double radius_mm,
                HutHead head)
{
  const HutGate gate = { FALSE, width_mm, height_mm, radius_mm };

  return hut_pass_lets (&gate, head);
}

/* Heads and the round holes listed for them: the diagonal and 1, rounded up to 0.5. Sizes of plugs
 * from memory and from published drawings. */
static void
round_holes_agree_with_the_list_of_heads (void **state)
{
  static const struct
  {
    double width_mm, height_mm, hole_mm;
  } heads[] = {
    { 16, 8, 19 },    { 11.5, 10.5, 17 }, { 12.35, 6.5, 15 }, { 12, 8, 15.5 },   { 27, 20, 35 },
    { 26, 18, 33 },   { 17, 10, 21 },     { 36, 14, 40 },     { 50, 48, 70.5 },  { 27, 25, 38 },
    { 12.4, 5.8, 15 }, { 10.7, 7.5, 14.5 }, { 11.7, 8.2, 15.5 }, { 14, 12.5, 20 }, { 33, 16, 38 },
    { 21, 11, 25 },
  };

  for (gsize i = 0; i < G_N_ELEMENTS (heads); i++)
    {
      const HutHead head = { FALSE, heads[i].width_mm, heads[i].height_mm };

      assert_true (round_lets (heads[i].hole_mm, head));
      assert_false (round_lets (heads[i].hole_mm - 1.0, head));
    }
}

static void
round_heads_need_a_millimetre_more (void **state)
{
  const HutHead hose = { TRUE, 40, 40 };

  assert_true (round_lets (41, hose));
  assert_false (round_lets (40.99, hose));
  assert_true (rectangle_lets (60, 41, 0, hose));
  assert_false (rectangle_lets (60, 40, 0, hose));
}

static void
slots_are_smaller_than_the_round_hole (void **state)
{
  const HutHead c13 = { FALSE, 27, 20 };

  assert_true (rectangle_lets (28, 21, 0, c13));
  assert_true (rectangle_lets (21, 28, 0, c13)); /* turned by a quarter */
  assert_false (rectangle_lets (28, 20.9, 0, c13));
  assert_false (rectangle_lets (27.9, 21, 0, c13));
}

static void
round_corners_are_in_the_way_of_square_ones (void **state)
{
  /* A corner at (14, 10.5) in a rectangle of 28 x 21 with radius 2 misses. Grown by d all round, it
   * is d from both sides; the circle of radius 2 about (2, 2) from the corner takes it when
   * sqrt 2 (2 - d) <= 2: d >= 2 - sqrt 2 = 0.586. */
  const HutHead head = { FALSE, 27, 20 };

  assert_false (rectangle_lets (28, 21, 2, head));
  assert_false (rectangle_lets (28 + 2 * 0.58, 21 + 2 * 0.58, 2, head));
  assert_true (rectangle_lets (28 + 2 * 0.59, 21 + 2 * 0.59, 2, head));
}

static void
slots_with_round_ends_need_length (void **state)
{
  /* Slot 20 x 10 and a head of 12.35 x 6.5: half 6.675 x 3.75 with the play; its corner is from
   * the end's middle (5, 0) hypot (1.675, 3.75) = 4.107 away, under the radius of 5. */
  const HutHead usb_c = { FALSE, 12.35, 6.5 };

  assert_true (rectangle_lets (20, 10, 5, usb_c));
  /* 16 long: the middle is at 3: hypot (3.675, 3.75) = 5.25. */
  assert_false (rectangle_lets (16, 10, 5, usb_c));
}

static void
a_long_thin_head_passes_along_the_diagonal (void **state)
{
  /* 49 x 1, with play 50 x 2, along the diagonal of a square of side a: (50 + 2) / sqrt 2 = 36.77. */
  const HutHead blade = { FALSE, 49, 1 };

  assert_true (rectangle_lets (36.8, 36.8, 0, blade));
  assert_false (rectangle_lets (36.7, 36.7, 0, blade));
}

static void
numbers_say_what_passes_and_what_must (void **state)
{
  const HutHead c13 = { FALSE, 27, 20 };
  const HutGate hole = { TRUE, 30, 30, 15 }, slot = { FALSE, 30, 16, 0 };
  double is_mm, must_mm;

  hut_pass_numbers (&hole, c13, &is_mm, &must_mm);
  assert_near_mm (is_mm, 30, 0);
  assert_near_mm (must_mm, hypot (27, 20) + 1, 1e-9);
  /* 15 of height pass: as long as 15 x 27 / 20 = 20.25. */
  hut_pass_numbers (&slot, c13, &is_mm, &must_mm);
  assert_near_mm (is_mm, 20.25, 1e-3);
  assert_near_mm (must_mm, 27, 0);
}

static void
kinds_decide_what_is_round (void **state)
{
  HutService service = { .kind = HUT_SERVICE_HOSE, .head_width_mm = 8.5, .head_height_mm = 9 };
  HutHead head = hut_head_of (&service);

  assert_true (head.round);
  assert_near_mm (head.width_mm, 9, 0);
  service.kind = HUT_SERVICE_LEAD;
  head = hut_head_of (&service);
  assert_false (head.round);
  assert_near_mm (head.width_mm, 8.5, 0);
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (round_holes_agree_with_the_list_of_heads),
    cmocka_unit_test (round_heads_need_a_millimetre_more),
    cmocka_unit_test (slots_are_smaller_than_the_round_hole),
    cmocka_unit_test (round_corners_are_in_the_way_of_square_ones),
    cmocka_unit_test (slots_with_round_ends_need_length),
    cmocka_unit_test (a_long_thin_head_passes_along_the_diagonal),
    cmocka_unit_test (numbers_say_what_passes_and_what_must),
    cmocka_unit_test (kinds_decide_what_is_round),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}

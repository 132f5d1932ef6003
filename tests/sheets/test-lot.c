/* tests/sheets/test-lot.c: numbers drawn by lot, the same on any machine.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "sheets/hut-lot.h"
#include "hut-assert.h"

#define DRAWS 10000

/* The finisher by hand for the first draw of seed 0, state = 0x9e3779b97f4a7c15; worked out with
 * arbitrary-precision integers. */
static void
first_draw_of_seed_0_is_what_the_formula_gives (void **state)
{
  HutLot lot;

  hut_lot_init (&lot, 0);
  assert_true (hut_lot_next (&lot) == G_GUINT64_CONSTANT (0xe220a8397b1dcdaf));
}

static void
draws_below_a_limit_are_even (void **state)
{
  guint counts[7] = { 0 };
  HutLot lot;

  hut_lot_init (&lot, 1);
  for (guint i = 0; i < DRAWS; i++)
    {
      const guint draw = hut_lot_below (&lot, G_N_ELEMENTS (counts));

      assert_true (draw < G_N_ELEMENTS (counts));
      counts[draw]++;
    }
  /* 1429 expected, standard deviation sqrt (10000 6 / 49) = 35. */
  for (guint i = 0; i < G_N_ELEMENTS (counts); i++)
    assert_near (counts[i], DRAWS / 7.0, 175.0);
  assert_int_equal (hut_lot_below (&lot, 0), 0);
}

static void
ratios_are_below_1_with_a_mean_of_a_half (void **state)
{
  double sum = 0.0;
  HutLot lot;

  hut_lot_init (&lot, 2);
  for (guint i = 0; i < DRAWS; i++)
    {
      const double ratio = hut_lot_ratio (&lot);

      assert_true (ratio >= 0.0 && ratio < 1.0);
      sum += ratio;
    }
  /* Standard deviation of the mean: sqrt (1 / 12 / 10000) = 0.0029. */
  assert_near (sum / DRAWS, 0.5, 0.0145);
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (first_draw_of_seed_0_is_what_the_formula_gives),
    cmocka_unit_test (draws_below_a_limit_are_even),
    cmocka_unit_test (ratios_are_below_1_with_a_mean_of_a_half),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}

/* tests/sheets/test-blank.c: how bought sheets are sawn down to what the bed takes.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "sheets/hut-blank.h"
#include "hut-assert.h"
#include "hut-random.h"

#define RANDOM_PLANS 200
#define ROUNDING_MM 1e-6

static HutStock *
stock_of (double width_mm,
          double depth_mm,
          HutGrain grain)
{
  HutStock *stock = hut_stock_new ("ply");

  stock->sheet_width_mm = width_mm;
  stock->sheet_depth_mm = depth_mm;
  stock->grain = grain;
  return stock;
}

static HutBlankPlan *
plan_of (double bed_width_mm,
         double bed_depth_mm,
         const HutStock *stock)
{
  const HutCutter cutter = { .bed_width_mm = bed_width_mm, .bed_depth_mm = bed_depth_mm };

  return hut_blank_plan_new (&cutter, stock);
}

static void
sheet_that_goes_on_the_bed_is_one_blank_without_a_cut (void **state)
{
  g_autoptr(HutStock) stock = stock_of (400, 300, HUT_GRAIN_NONE);
  g_autoptr(HutBlankPlan) plan = plan_of (500, 300, stock);

  assert_int_equal (plan->blanks->len, 1);
  assert_int_equal (plan->cuts->len, 0);
  assert_int_equal (hut_blank_plan_count_sheets (plan, 5), 5);
  assert_int_equal (hut_blank_plan_count_sheets (plan, 0), 0);
}

/* 1220 x 610, bed 600 x 400: turned, 3 x 400 + 2 x 4 = 1208 wide and 600 deep. As the grain wants them,
 * 2 x 600 + 4 = 1204 wide and one row of 400: the second would need 804. */
static void
blanks_lie_turned_where_that_gives_more_and_there_is_no_grain (void **state)
{
  g_autoptr(HutStock) plain = stock_of (1220, 610, HUT_GRAIN_NONE);
  g_autoptr(HutStock) grained = stock_of (1220, 610, HUT_GRAIN_WIDTH);
  g_autoptr(HutBlankPlan) turned = plan_of (600, 400, plain);
  g_autoptr(HutBlankPlan) straight = plan_of (600, 400, grained);

  assert_int_equal (turned->blanks->len, 3);
  assert_int_equal (hut_blank_plan_count_sheets (turned, 4), 2);
  assert_int_equal (straight->blanks->len, 2);
  for (guint i = 0; i < 2; i++)
    {
      const HutRect blank = g_array_index (straight->blanks, HutRect, i);

      assert_near_mm (blank.u1 - blank.u0, 600, ROUNDING_MM);
      assert_near_mm (blank.v1 - blank.v0, 400, ROUNDING_MM);
    }
}

/* 1204 x 400 is two of 600 x 400 by the one cut at 602; 1203 is too narrow for its kerf. */
static void
saw_kerf_is_taken_off (void **state)
{
  g_autoptr(HutStock) enough = stock_of (1204, 400, HUT_GRAIN_NONE);
  g_autoptr(HutStock) short_of = stock_of (1203, 400, HUT_GRAIN_NONE);
  g_autoptr(HutBlankPlan) two = plan_of (600, 400, enough);
  g_autoptr(HutBlankPlan) one = plan_of (600, 400, short_of);

  assert_int_equal (two->blanks->len, 2);
  assert_int_equal (two->cuts->len, 1);
  assert_near_mm (g_array_index (two->cuts, HutSawCut, 0).from.u, 602, ROUNDING_MM);
  assert_near_mm (g_array_index (two->cuts, HutSawCut, 0).to.v, 400, ROUNDING_MM);
  assert_int_equal (one->blanks->len, 1);
}

/* 500 x 508, bed 300 x 200. Rows: one column of two lying (404 deep), or 2 x 200 + 4 = 404 wide of one
 * standing row. Mixed: two standing in a row of 404 x 300 below, and one lying above in what is left,
 * 500 x 204. */
static void
standing_and_lying_blanks_share_a_sheet (void **state)
{
  g_autoptr(HutStock) stock = stock_of (500, 508, HUT_GRAIN_NONE);
  g_autoptr(HutBlankPlan) plan = plan_of (300, 200, stock);

  assert_int_equal (plan->blanks->len, 3);
}

static void
random_plans_are_sawn_from_edge_to_edge_and_no_worse_than_rows (void **state)
{
  for (guint64 seed = 1; seed <= RANDOM_PLANS; seed++)
    {
      HutRandom random;

      hut_random_init (&random, seed);

      const double bed_u_mm = hut_random_between (&random, 150, 900);
      const double bed_v_mm = hut_random_between (&random, 150, 900);
      g_autoptr(HutStock) stock = stock_of (hut_random_between (&random, 200, 3000),
                                            hut_random_between (&random, 200, 1600),
                                            (HutGrain) hut_random_below (&random, 3));
      g_autoptr(HutBlankPlan) plan = plan_of (bed_u_mm, bed_v_mm, stock);
      const HutCutter cutter = { .bed_width_mm = bed_u_mm, .bed_depth_mm = bed_v_mm };
      const gboolean turned = hut_cutter_turns_sheet (&cutter, stock);
      const double u_mm = turned ? plan->depth_mm : plan->width_mm;
      const double v_mm = turned ? plan->width_mm : plan->depth_mm;
      const guint rows = (guint) ((stock->sheet_width_mm + HUT_SAW_KERF_MM + ROUNDING_MM)
                                  / (u_mm + HUT_SAW_KERF_MM))
                         * (guint) ((stock->sheet_depth_mm + HUT_SAW_KERF_MM + ROUNDING_MM)
                                    / (v_mm + HUT_SAW_KERF_MM));

      if (stock->grain != HUT_GRAIN_NONE)
        assert_int_equal (plan->blanks->len, rows);
      assert_true (plan->blanks->len >= MAX (rows, 1));
      for (guint i = 0; i < plan->blanks->len; i++)
        {
          const HutRect a = g_array_index (plan->blanks, HutRect, i);

          assert_true (a.u0 >= 0 && a.v0 >= 0 && a.u1 <= stock->sheet_width_mm + ROUNDING_MM
                       && a.v1 <= stock->sheet_depth_mm + ROUNDING_MM);
          assert_near_mm ((a.u1 - a.u0) * (a.v1 - a.v0), u_mm * v_mm, 0.01 * u_mm * v_mm);
          for (guint k = 0; k < i; k++)
            {
              const HutRect b = g_array_index (plan->blanks, HutRect, k);

              assert_true (MAX (MAX (a.u0 - b.u1, b.u0 - a.u1), MAX (a.v0 - b.v1, b.v0 - a.v1))
                           >= HUT_SAW_KERF_MM - ROUNDING_MM);
            }
          for (guint k = 0; k < plan->cuts->len; k++)
            {
              const HutSawCut cut = g_array_index (plan->cuts, HutSawCut, k);

              assert_false (MAX (cut.from.u, a.u0) < MIN (cut.to.u, a.u1) - ROUNDING_MM
                            && cut.from.v > a.v0 && cut.from.v < a.v1);
              assert_false (MAX (cut.from.v, a.v0) < MIN (cut.to.v, a.v1) - ROUNDING_MM
                            && cut.from.u > a.u0 && cut.from.u < a.u1);
            }
        }
    }
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (sheet_that_goes_on_the_bed_is_one_blank_without_a_cut),
    cmocka_unit_test (blanks_lie_turned_where_that_gives_more_and_there_is_no_grain),
    cmocka_unit_test (saw_kerf_is_taken_off),
    cmocka_unit_test (standing_and_lying_blanks_share_a_sheet),
    cmocka_unit_test (random_plans_are_sawn_from_edge_to_edge_and_no_worse_than_rows),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}

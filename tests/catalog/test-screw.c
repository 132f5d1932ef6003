/* tests/catalog/test-screw.c: screws, nuts, washers and their holes.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "catalog/hut-screw.h"
#include "hut-assert.h"

static void
clearance_holes_are_those_of_iso_273 (void **state)
{
  /* ISO 273 (fine, medium, coarse) as an engineering reference table prints it. */
  static const double rows[][4] = {
    { 2, 2.2, 2.4, 2.6 },   { 2.5, 2.7, 2.9, 3.1 }, { 3, 3.2, 3.4, 3.6 }, { 3.5, 3.7, 3.9, 4.2 },
    { 4, 4.3, 4.5, 4.8 },   { 5, 5.3, 5.5, 5.8 },   { 6, 6.4, 6.6, 7.0 }, { 8, 8.4, 9.0, 10.0 },
  };
  guint count = 0;

  assert_non_null (hut_screw_list (&count));
  assert_int_equal (count, G_N_ELEMENTS (rows));
  for (gsize i = 0; i < G_N_ELEMENTS (rows); i++)
    for (int hole_class = HUT_HOLE_FINE; hole_class <= HUT_HOLE_COARSE; hole_class++)
      assert_near_mm (hut_screw_get (rows[i][0])->hole_mm[hole_class], rows[i][1 + hole_class], 0.0);
}

static void
a_thread_that_the_table_does_not_have_gives_nothing (void **state)
{
  assert_null (hut_screw_get (7.0));
  assert_null (hut_screw_get (0.0));
  assert_near_mm (hut_screw_length_mm (7.0, 10.0), 0.0, 0.0);
}

static void
each_row_is_in_proportion (void **state)
{
  guint count = 0;
  const HutScrew *screws = hut_screw_list (&count);

  for (guint i = 0; i < count; i++)
    {
      const HutScrew *screw = &screws[i];

      assert_true (i == 0 || screw->thread_mm > screws[i - 1].thread_mm);
      assert_true (screw->thread_mm < screw->hole_mm[HUT_HOLE_FINE]);
      assert_true (screw->hole_mm[HUT_HOLE_FINE] < screw->hole_mm[HUT_HOLE_MEDIUM]);
      assert_true (screw->hole_mm[HUT_HOLE_MEDIUM] < screw->hole_mm[HUT_HOLE_COARSE]);
      /* A hexagon is 2 / sqrt 3 = 1.155 wider over its corners; standards allow less, as corners
       * are rounded. */
      assert_true (screw->nut_corners_mm > 1.09 * screw->nut_flats_mm);
      assert_true (screw->nut_corners_mm < 1.156 * screw->nut_flats_mm);
      assert_true (screw->nut_height_mm < screw->thread_mm);
      assert_true (screw->washer_outer_mm > screw->nut_flats_mm);
      /* A 90 degree head is as high as half of what it sticks out on both sides. */
      assert_near_mm (screw->sunk_head_height_mm,
                      (screw->sunk_head_mm - screw->thread_mm) / 2.0, 0.16);
      assert_true (screw->pan_head_mm > screw->hole_mm[HUT_HOLE_COARSE]);
    }
}

static void
iso_7046_heads_of_m4_are_larger_than_din_965_ones (void **state)
{
  /* A hole countersunk for DIN 965 (7.5, table of a seller of fasteners) leaves the ISO head
   * proud: the table holds the theoretical diameter of ISO 2009/7046, 9.4. */
  assert_near_mm (hut_screw_get (4.0)->sunk_head_mm, 9.4, 0.0);
  assert_true (hut_screw_get (4.0)->sunk_head_mm > 8.4); /* the actual ISO head, from memory */
}

static void
lengths_to_buy_are_the_next_standard_ones (void **state)
{
  static const double cases[][3] = {
    { 4, 16.0, 16 }, { 4, 16.1, 20 }, { 4, 33, 35 }, { 4, 40, 40 }, { 4, 40.5, 0 },
    { 3, 1.0, 5 },   { 3, 13, 16 },   { 6, 51, 60 }, { 2, 20.1, 0 }, { 8, 80, 80 },
  };

  for (gsize i = 0; i < G_N_ELEMENTS (cases); i++)
    assert_near_mm (hut_screw_length_mm (cases[i][0], cases[i][1]), cases[i][2], 0.0);
}

static void
pilots_follow_the_chart_and_the_handbook_between (void **state)
{
  assert_near_mm (hut_screw_pilot_mm (3.0), 2.0, 0.0);
  assert_near_mm (hut_screw_pilot_mm (4.0), 2.5, 0.0);
  assert_near_mm (hut_screw_pilot_mm (5.0), 3.0, 0.0);
  assert_near_mm (hut_screw_pilot_mm (2.5), 1.5, 1e-9); /* 0.6 * 2.5 */
  assert_near_mm (hut_screw_pilot_mm (6.0), 3.6, 1e-9);
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (clearance_holes_are_those_of_iso_273),
    cmocka_unit_test (a_thread_that_the_table_does_not_have_gives_nothing),
    cmocka_unit_test (each_row_is_in_proportion),
    cmocka_unit_test (iso_7046_heads_of_m4_are_larger_than_din_965_ones),
    cmocka_unit_test (lengths_to_buy_are_the_next_standard_ones),
    cmocka_unit_test (pilots_follow_the_chart_and_the_handbook_between),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}

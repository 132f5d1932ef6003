/* tests/design/test-stock.c: a sheet material as measured.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "design/hut-design.h"
#include "hut-assert.h"

static HutStock *
new_stock_of (guint n,
              const double *readings_mm)
{
  HutStock *stock = hut_stock_new ("ply");

  g_array_set_size (stock->readings_mm, 0);
  g_array_append_vals (stock->readings_mm, readings_mm, n);
  return stock;
}

static void
thickness_is_what_was_read (void **state)
{
  g_autoptr(HutStock) stock = new_stock_of (4, (double[]) { 5.92, 6.04, 5.98, 5.95 });

  /* by hand: 23.89 / 4 = 5.9725, which the 1 um grid rounds to 5.972 or 5.973 */
  assert_near_mm (hut_stock_mean_mm (stock), 5.9725, 0.00051);
  assert_near_mm (hut_stock_mean_mm (stock), hut_snap_mm (hut_stock_mean_mm (stock)), 0.0);
  assert_near_mm (hut_stock_min_mm (stock), 5.92, 0.0);
  assert_near_mm (hut_stock_max_mm (stock), 6.04, 0.0);
}

static void
one_reading_is_mean_least_and_most (void **state)
{
  g_autoptr(HutStock) stock = new_stock_of (1, (double[]) { 2.95 });

  assert_near_mm (hut_stock_mean_mm (stock), 2.95, 1e-12);
  assert_near_mm (hut_stock_min_mm (stock), 2.95, 0.0);
  assert_near_mm (hut_stock_max_mm (stock), 2.95, 0.0);
}

static void
mean_lies_on_the_grid_where_readings_do_not_divide (void **state)
{
  g_autoptr(HutStock) stock = new_stock_of (3, (double[]) { 3.0, 3.0, 3.1 });

  assert_near_mm (hut_stock_mean_mm (stock), 3.033, 1e-12); /* 3.0333... */
}

static void
without_a_reading_the_nominal_thickness_stands_in (void **state)
{
  g_autoptr(HutStock) stock = new_stock_of (0, NULL);

  stock->nominal_mm = 4.0;
  assert_near_mm (hut_stock_mean_mm (stock), 4.0, 0.0);
  assert_near_mm (hut_stock_min_mm (stock), 4.0, 0.0);
  assert_near_mm (hut_stock_max_mm (stock), 4.0, 0.0);
}

static void
copy_of_a_stock_has_its_own_readings (void **state)
{
  g_autoptr(HutStock) stock = new_stock_of (2, (double[]) { 5.9, 6.0 });
  g_autoptr(HutStock) copy = hut_stock_copy (stock);

  assert_true (hut_stock_equal (stock, copy));
  g_array_index (copy->readings_mm, double, 1) = 6.01;
  assert_near_mm (hut_stock_max_mm (stock), 6.0, 0.0);
  assert_false (hut_stock_equal (stock, copy));
  g_array_set_size (copy->readings_mm, 1);
  assert_false (hut_stock_equal (stock, copy));
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (thickness_is_what_was_read),
    cmocka_unit_test (one_reading_is_mean_least_and_most),
    cmocka_unit_test (mean_lies_on_the_grid_where_readings_do_not_divide),
    cmocka_unit_test (without_a_reading_the_nominal_thickness_stands_in),
    cmocka_unit_test (copy_of_a_stock_has_its_own_readings),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}

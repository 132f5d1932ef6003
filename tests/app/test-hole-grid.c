/* tests/app/test-hole-grid.c: the holes of a pattern as columns and rows, and as text.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "app/hut-hole-grid.h"
#include "hut-assert.h"
#include <locale.h>

static GArray *
new_holes (const HutPoint *holes,
           guint count)
{
  GArray *array = g_array_new (FALSE, FALSE, sizeof (HutPoint));

  g_array_append_vals (array, holes, count);
  return array;
}

static void
three_columns_and_two_rows_lie_about_the_middle (void **state)
{
  const HutHoleGrid grid = { 3, 2, 10.0, 8.0 };
  g_autoptr(GArray) holes = hut_hole_grid_dup_holes (&grid);
  /* By hand: columns at -10, 0, 10; rows at -4, 4. */
  const HutPoint expected[]
      = { { -10, -4 }, { 0, -4 }, { 10, -4 }, { -10, 4 }, { 0, 4 }, { 10, 4 } };

  assert_int_equal (holes->len, G_N_ELEMENTS (expected));
  for (guint i = 0; i < holes->len; i++)
    {
      assert_near_mm (g_array_index (holes, HutPoint, i).u, expected[i].u, 1e-12);
      assert_near_mm (g_array_index (holes, HutPoint, i).v, expected[i].v, 1e-12);
    }
}

static void
a_grid_is_recognised_whatever_the_order_of_its_holes (void **state)
{
  const HutPoint shuffled[]
      = { { 10, 4 }, { -10, -4 }, { 0, 4 }, { 10, -4 }, { -10, 4 }, { 0, -4 } };
  g_autoptr(GArray) holes = new_holes (shuffled, G_N_ELEMENTS (shuffled));
  const HutHoleGrid grid = hut_hole_grid_read (holes);

  assert_int_equal (grid.columns, 3);
  assert_int_equal (grid.rows, 2);
  assert_near_mm (grid.column_pitch_mm, 10.0, 1e-9);
  assert_near_mm (grid.row_pitch_mm, 8.0, 1e-9);
}

static void
a_pitch_off_the_grid_of_a_micrometre_is_still_recognised (void **state)
{
  const HutHoleGrid made = { 4, 1, 3.333, 0.0 };
  g_autoptr(GArray) holes = hut_hole_grid_dup_holes (&made);
  const HutHoleGrid grid = hut_hole_grid_read (holes);

  assert_int_equal (grid.columns, 4);
  assert_int_equal (grid.rows, 1);
  assert_near_mm (grid.column_pitch_mm, 3.333, 0.001);
}

static void
what_is_no_grid_is_told_by_no_columns (void **state)
{
  const HutPoint triangle[] = { { 0, 10 }, { -8, -5 }, { 8, -5 } };
  const HutPoint off_middle[] = { { 0, 0 }, { 10, 0 } };
  const HutPoint twice[] = { { 0, 0 }, { 0, 0 } };
  g_autoptr(GArray) a = new_holes (triangle, G_N_ELEMENTS (triangle));
  g_autoptr(GArray) b = new_holes (off_middle, G_N_ELEMENTS (off_middle));
  g_autoptr(GArray) c = new_holes (twice, G_N_ELEMENTS (twice));
  g_autoptr(GArray) none = new_holes (NULL, 0);

  assert_int_equal (hut_hole_grid_read (a).columns, 0);
  assert_int_equal (hut_hole_grid_read (b).columns, 0);
  assert_int_equal (hut_hole_grid_read (c).columns, 0);
  assert_int_equal (hut_hole_grid_read (none).columns, 0);
}

static void
holes_are_written_and_read_as_pairs (void **state)
{
  const HutPoint points[] = { { -12.5, 0 }, { 12.5, 3 } };
  g_autoptr(GArray) holes = new_holes (points, G_N_ELEMENTS (points));
  g_autofree char *text = hut_holes_dup_text (holes, HUT_UNITS_MM);
  g_autoptr(GError) error = NULL;
  g_autoptr(GArray) read = NULL;

  assert_string_equal (text, "-12.5 0; 12.5 3");
  read = hut_holes_parse ("-12,5 0 ;12.5  3;", HUT_UNITS_MM, &error);
  assert_ok (read != NULL, error);
  assert_int_equal (read->len, 2);
  assert_near_mm (g_array_index (read, HutPoint, 0).u, -12.5, 1e-12);
  assert_near_mm (g_array_index (read, HutPoint, 1).v, 3.0, 1e-12);
}

static void
pairs_that_are_none_are_refused (void **state)
{
  const char *const texts[] = { "", ";", "1", "1 2 3", "1 x", "1 20000" };

  for (guint i = 0; i < G_N_ELEMENTS (texts); i++)
    {
      g_autoptr(GError) error = NULL;
      g_autoptr(GArray) holes = hut_holes_parse (texts[i], HUT_UNITS_MM, &error);

      print_message ("typed: %s\n", texts[i]);
      assert_null (holes);
      assert_non_null (error);
      assert_int_equal (error->domain, HUT_UNITS_ERROR);
    }
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (three_columns_and_two_rows_lie_about_the_middle),
    cmocka_unit_test (a_grid_is_recognised_whatever_the_order_of_its_holes),
    cmocka_unit_test (a_pitch_off_the_grid_of_a_micrometre_is_still_recognised),
    cmocka_unit_test (what_is_no_grid_is_told_by_no_columns),
    cmocka_unit_test (holes_are_written_and_read_as_pairs),
    cmocka_unit_test (pairs_that_are_none_are_refused),
  };

  setlocale (LC_ALL, "C");
  return cmocka_run_group_tests_name ("hole-grid", tests, NULL, NULL);
}

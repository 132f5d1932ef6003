/* tests/draw/test-tiling.c: a drawing in full size over several sheets of paper.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "draw/hut-tiling.h"
#include "hut-assert.h"
#include "hut-random.h"

static HutTiling
tiling (HutPaper paper,
        double width_mm,
        double height_mm)
{
  HutTiling self;

  hut_tiling_init (&self, paper, (HutRect) { 5, 7, 5 + width_mm, 7 + height_mm });
  return self;
}

static void
what_fits_one_paper_takes_one (void **state)
{
  /* A4 less 14 all round: 182 x 269, or across. */
  HutTiling self = tiling (HUT_PAPER_A4, 182, 269);

  assert_int_equal (self.columns * self.rows, 1);
  assert_near_mm (self.paper_width_mm, 210, 0);
  self = tiling (HUT_PAPER_A4, 269, 182);
  assert_int_equal (self.columns * self.rows, 1);
  assert_near_mm (self.paper_width_mm, 297, 0);
  self = tiling (HUT_PAPER_A4, 182.01, 269);
  assert_int_equal (self.columns * self.rows, 2);
  self = tiling (HUT_PAPER_LETTER, 187.9, 251.4);
  assert_int_equal (self.columns * self.rows, 1);
  self = tiling (HUT_PAPER_A3, 269, 392);
  assert_int_equal (self.columns * self.rows, 1);
}

static void
tiles_overlap_by_10_mm_and_cover_the_drawing (void **state)
{
  HutRandom random;

  hut_random_init (&random, 4);
  for (guint i = 0; i < 500; i++)
    {
      const double width_mm = hut_random_octaves (&random, 1, 3000);
      const double height_mm = hut_random_octaves (&random, 1, 3000);
      const HutTiling self
          = tiling ((HutPaper) hut_random_below (&random, HUT_PAPER_COUNT), width_mm, height_mm);
      const HutRect last = hut_tiling_tile (&self, self.columns - 1, self.rows - 1);
      const HutRect first = hut_tiling_tile (&self, 0, 0);

      assert_near_mm (first.u0, 5, 1e-9);
      assert_near_mm (first.v1, 7 + height_mm, 1e-9);
      assert_true (last.u1 >= 5 + width_mm - 0.001 && last.v0 <= 7 + 0.001);
      /* One less would not do. */
      if (self.columns > 1)
        {
          const HutRect before = hut_tiling_tile (&self, self.columns - 2, 0);

          assert_true (before.u1 < 5 + width_mm);
          assert_near_mm (before.u1 - last.u0, 10, 1e-9);
        }
    }
}

static void
marks_of_neighbours_are_one_point_of_the_drawing (void **state)
{
  const HutTiling self = tiling (HUT_PAPER_A4, 500, 600);

  assert_true (self.columns >= 2 && self.rows >= 2);
  for (guint row = 0; row < self.rows; row++)
    for (guint column = 0; column + 1 < self.columns; column++)
      {
        HutPoint left[HUT_TILE_MARKS_MAX], right[HUT_TILE_MARKS_MAX];
        const guint left_count = hut_tiling_marks (&self, column, row, left);
        const guint right_count = hut_tiling_marks (&self, column + 1, row, right);
        const HutPoint a = hut_tiling_to_page (&self, column, row, (HutPoint) { 0, 0 });
        const HutPoint b = hut_tiling_to_page (&self, column + 1, row, (HutPoint) { 0, 0 });
        guint shared = 0;

        for (guint i = 0; i < left_count; i++)
          for (guint k = 0; k < right_count; k++)
            shared += fabs (left[i].u - a.u - (right[k].u - b.u)) < 1e-9
                              && fabs (left[i].v - right[k].v) < 1e-9
                          ? 1
                          : 0;
        assert_int_equal (shared, 2);
      }
}

static void
lone_paper_has_no_marks (void **state)
{
  const HutTiling self = tiling (HUT_PAPER_A4, 100, 100);
  HutPoint marks[HUT_TILE_MARKS_MAX];

  assert_int_equal (hut_tiling_marks (&self, 0, 0, marks), 0);
}

static void
bar_and_mark_are_drawn_in_their_size (void **state)
{
  cairo_surface_t *surface = cairo_recording_surface_create (CAIRO_CONTENT_COLOR_ALPHA, NULL);
  cairo_t *cr = cairo_create (surface);
  double x, y, width, height; /* whole units: hundredths of a mm */

  cairo_scale (cr, 100, 100);
  hut_scale_bar_draw (cr, (HutPoint) { 20, 30 }, 100);
  cairo_recording_surface_ink_extents (surface, &x, &y, &width, &height);
  /* Half a line of 0.15 sticks out beside the first and the last tick. */
  assert_near_mm (x / 100, 20 - 0.075, 0.011);
  assert_near_mm (width / 100, 100.15, 0.021);
  hut_tile_mark_draw (cr, (HutPoint) { 70, 80 });
  cairo_recording_surface_ink_extents (surface, &x, &y, &width, &height);
  assert_near_mm ((y + height) / 100, 84, 0.021);
  cairo_destroy (cr);
  cairo_surface_destroy (surface);
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (what_fits_one_paper_takes_one),
    cmocka_unit_test (tiles_overlap_by_10_mm_and_cover_the_drawing),
    cmocka_unit_test (marks_of_neighbours_are_one_point_of_the_drawing),
    cmocka_unit_test (lone_paper_has_no_marks),
    cmocka_unit_test (bar_and_mark_are_drawn_in_their_size),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}

/* tests/draw/test-flat-grid.c: the grid is round and never crowded.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "draw/hut-flat-grid.h"
#include "draw/hut-draw-case.h"
#include "draw/hut-picture.h"

static void
lines_are_at_least_14_px_apart (void **state)
{
  const double scales[] = { 0.1, 0.2, 0.5, 1.4, 5.0 };
  const double metric_mm[]
      = { 500.0, 100.0, 50.0, 10.0, 10.0 }; /* by hand: 14 px / scale, rounded up */
  const double inch_mm[] = { 508.0, 127.0, 127.0, 12.7, 12.7 };

  for (gsize i = 0; i < G_N_ELEMENTS (scales); i++)
    {
      assert_near_mm (hut_flat_grid_step_mm (scales[i], FALSE), metric_mm[i], 1e-9);
      assert_near_mm (hut_flat_grid_step_mm (scales[i], TRUE), inch_mm[i], 1e-9);
    }
}

static void
lines_start_at_the_lower_left_corner (void **state)
{
  g_auto (HutDrawCase) c = hut_draw_case_take (hut_draw_case_box ("base-front", 100, 40, 10));
  const guint front = hut_draw_case_panel (&c, "base-front");
  const HutFlatStyle style = hut_flat_style_plain ();
  g_auto (HutPicture) picture = hut_picture_new (CASE_WIDTH_PX, CASE_HEIGHT_PX);
  HutInk ink;
  double x0, y0;

  c.view.scale_px_per_mm = 2.0; /* 10 mm lines, 20 px apart */
  hut_flat_view_to_px (&c.view, c.layout, front, (HutPoint){ 0, 0 }, &x0, &y0);
  c.view.pan_x_px += 100.5 - x0;
  c.view.pan_y_px += 600.5 - y0;
  hut_ink_begin (&ink, picture.cr, hut_palette_get (FALSE, FALSE), CASE_WIDTH_PX, CASE_HEIGHT_PX,
                 0.0);
  hut_flat_grid_draw (&(HutFlatScene){ &ink, c.assembly, c.parts, NULL, c.layout, c.view, &style },
                      front);
  hut_ink_end (&ink);
  cairo_surface_flush (picture.surface);
  const guint8 *row = cairo_image_surface_get_data (picture.surface)
                      + 590 * cairo_image_surface_get_stride (picture.surface);
  for (int x = 95; x < 200; x++)
    assert_int_equal (row[4 * x + 3] > 0, x > 100 && (x - 100) % 20 == 0);
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (lines_are_at_least_14_px_apart),
    cmocka_unit_test (lines_start_at_the_lower_left_corner),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}

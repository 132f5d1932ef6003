/* tests/draw/test-plot.c: axes, ticks and curves of a plot.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "draw/hut-plot.h"
#include "hut-assert.h"
#include <cairo.h>

#define WIDTH_PX 320
#define HEIGHT_PX 240

static HutPlot *
new_plot (void)
{
  HutPlot *plot = hut_plot_new ("Title", "Flow, m³/h", "Pressure, Pa");
  GArray *points = hut_plot_add_series (plot, "line", HUT_LINE_SOLID);
  const HutPoint ends[] = { { 0, 100 }, { 50, 20 } };

  g_array_append_vals (points, ends, 2);
  return plot;
}

/* By hand: 65 / 6 = 10.83, so 20; 0.9 / 5 = 0.18, so 0.2; 100 / 5 is 20 itself. */
static void
ticks_are_round_and_few_enough (void **state)
{
  assert_near (hut_plot_step (65, 6), 20, 1e-12);
  assert_near (hut_plot_step (0.9, 5), 0.2, 1e-12);
  assert_near (hut_plot_step (100, 5), 20, 1e-12);
  assert_near (hut_plot_step (101, 5), 50, 1e-12);
  assert_near (hut_plot_step (7e6, 1), 1e7, 1e-3);
}

static void
axes_begin_at_zero_and_leave_room_over_the_curve (void **state)
{
  g_autoptr(HutPlot) plot = new_plot ();
  const HutRect range = hut_plot_range (plot);

  assert_near (range.u0, 0, 0);
  assert_near (range.u1, 50, 0);
  assert_near (range.v0, 0, 0);
  assert_true (range.v1 > 100 && range.v1 < 110);
}

static void
curves_are_cut_off_where_it_is_asked (void **state)
{
  g_autoptr(HutPlot) plot = new_plot ();

  plot->v_top = 50;
  assert_true (hut_plot_range (plot).v1 < 55);
}

static void
a_plot_without_points_is_empty (void **state)
{
  g_autoptr(HutPlot) plot = hut_plot_new ("Title", "u", "v");
  const HutRect range = hut_plot_range (plot);

  assert_true (range.u1 < range.u0);
}

static guint
count_inked (const HutPlot *plot)
{
  cairo_surface_t *surface = cairo_image_surface_create (CAIRO_FORMAT_A8, WIDTH_PX, HEIGHT_PX);
  cairo_t *cr = cairo_create (surface);
  HutInk ink;
  const unsigned char *data;
  guint n = 0;

  hut_ink_begin (&ink, cr, hut_palette_get (FALSE, FALSE), WIDTH_PX, HEIGHT_PX, 0);
  hut_plot_draw (plot, &ink, 0, 0, WIDTH_PX, HEIGHT_PX);
  hut_ink_end (&ink);
  cairo_surface_flush (surface);
  data = cairo_image_surface_get_data (surface);
  for (int i = 0; i < cairo_image_surface_get_stride (surface) * HEIGHT_PX; i++)
    n += data[i] > 0 ? 1 : 0;
  cairo_destroy (cr);
  cairo_surface_destroy (surface);
  return n;
}

static void
points_and_marks_are_drawn_and_nothing_without_them (void **state)
{
  g_autoptr(HutPlot) plot = new_plot ();
  g_autoptr(HutPlot) empty = hut_plot_new ("Title", "u", "v");
  const guint plain = count_inked (plot);

  assert_true (plain > 500);
  hut_plot_add_mark (plot, (HutPoint) { 25, 60 }, g_strdup ("here"));
  assert_true (count_inked (plot) > plain);
  assert_int_equal (count_inked (empty), 0);
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (ticks_are_round_and_few_enough),
    cmocka_unit_test (axes_begin_at_zero_and_leave_room_over_the_curve),
    cmocka_unit_test (curves_are_cut_off_where_it_is_asked),
    cmocka_unit_test (a_plot_without_points_is_empty),
    cmocka_unit_test (points_and_marks_are_drawn_and_nothing_without_them),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}

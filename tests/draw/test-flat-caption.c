/* tests/draw/test-flat-caption.c: panels have names and sizes, and keep them in sight.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "draw/hut-flat-caption.h"
#include "draw/hut-draw-case.h"
#include "draw/hut-picture.h"

typedef void (*DrawPart) (const HutFlatScene *scene, guint panel);

static HutPicture
draw (const HutDrawCase *c,
      DrawPart part,
      guint panel)
{
  const HutFlatStyle style = hut_flat_style_plain ();
  HutPicture picture = hut_picture_new (CASE_WIDTH_PX, CASE_HEIGHT_PX);
  HutInk ink;

  hut_ink_begin (&ink, picture.cr, hut_palette_get (FALSE, FALSE), CASE_WIDTH_PX, CASE_HEIGHT_PX,
                 0.0);
  part (&(HutFlatScene){ &ink, c->assembly, c->parts, NULL, c->layout, c->view, &style }, panel);
  hut_ink_end (&ink);
  return picture;
}

static double
ink_between (const HutPicture *picture,
             double y0,
             double y1)
{
  const guint8 *data;
  const int stride = cairo_image_surface_get_stride (picture->surface);
  double sum = 0.0;

  cairo_surface_flush (picture->surface);
  data = cairo_image_surface_get_data (picture->surface);
  for (int y = MAX (0, (int)y0); y < MIN (picture->height, (int)y1); y++)
    for (int x = 0; x < picture->width; x++)
      sum += data[y * stride + 4 * x + 3] / 255.0;
  return sum;
}

static void
name_stands_over_its_panel (void **state)
{
  g_auto (HutDrawCase) c = hut_draw_case_example ("engraver");
  const guint front = hut_draw_case_panel (&c, "base-front");
  const HutPanel *panel = g_ptr_array_index (c.assembly->panels, front);
  double x, y;

  g_auto (HutPicture) picture = draw (&c, hut_flat_caption_draw, front);
  hut_flat_view_to_px (&c.view, c.layout, front, (HutPoint){ 0, panel->height_mm }, &x, &y);
  assert_true (ink_between (&picture, y - 24, y) > 100.0);
  assert_near (ink_between (&picture, y - 24, y), hut_picture_ink_px2 (&picture), 1.0);
}

static void
name_stays_in_sight_when_the_panel_is_scrolled_up (void **state)
{
  g_auto (HutDrawCase) c = hut_draw_case_example ("engraver");
  const guint front = hut_draw_case_panel (&c, "base-front");
  const HutPanel *panel = g_ptr_array_index (c.assembly->panels, front);
  double x, y;

  /* Its upper border 100 px over the page, its lower one on it. */
  c.view.scale_px_per_mm = 2.0;
  hut_flat_view_to_px (&c.view, c.layout, front, (HutPoint){ 0.0, 0.0 }, &x, &y);
  c.view.pan_x_px += 50.0 - x;
  c.view.pan_y_px += 2.0 * panel->height_mm - 100.0 - y;
  g_auto (HutPicture) picture = draw (&c, hut_flat_caption_draw, front);
  assert_true (ink_between (&picture, 0, 40) > 100.0);
}

static void
a_tiny_panel_has_no_name (void **state)
{
  g_auto (HutDrawCase) c = hut_draw_case_example ("engraver");
  const guint front = hut_draw_case_panel (&c, "base-front");

  c.view.scale_px_per_mm = 0.03; /* 600 mm: 18 px */
  g_auto (HutPicture) picture = draw (&c, hut_flat_caption_draw, front);
  assert_near (hut_picture_ink_px2 (&picture), 0.0, 0.0);
}

static void
sizes_stand_left_of_and_under_the_panel (void **state)
{
  g_auto (HutDrawCase) c = hut_draw_case_example ("mini-router");
  const guint left = hut_draw_case_panel (&c, "base-left");
  double x, y;

  g_auto (HutPicture) picture = draw (&c, hut_flat_dimensions_draw, left);
  hut_flat_view_to_px (&c.view, c.layout, left, (HutPoint){ 0, 0 }, &x, &y);
  assert_true (ink_between (&picture, y + 1, y + 20) > 100.0);
  assert_near (hut_picture_count (&picture, hut_palette_get (FALSE, FALSE)->plate, (int)x, 0,
                                  CASE_WIDTH_PX, (int)y),
               0.0, 0.0);
  assert_true (hut_picture_count (&picture, hut_palette_get (FALSE, FALSE)->plate, (int)x - 20, 0,
                                  (int)x, (int)y)
               > 20);
}

static void
a_dimension_that_is_too_short_for_its_value_is_left_out (void **state)
{
  for (int long_enough = 0; long_enough < 2; long_enough++)
    {
      g_auto (HutPicture) picture = hut_picture_new (200, 60);
      HutInk ink;

      hut_ink_begin (&ink, picture.cr, hut_palette_get (FALSE, FALSE), 200, 60, 0.0);
      hut_flat_dimension (&ink, (HutPoint){ 20, 30 }, (HutPoint){ long_enough ? 150 : 40, 30 },
                          1234.5, ink.palette->text_dim);
      hut_ink_end (&ink);
      if (long_enough)
        assert_true (hut_picture_ink_px2 (&picture) > 100.0);
      else
        assert_near (hut_picture_ink_px2 (&picture), 0.0, 0.0);
    }
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (name_stands_over_its_panel),
    cmocka_unit_test (name_stays_in_sight_when_the_panel_is_scrolled_up),
    cmocka_unit_test (a_tiny_panel_has_no_name),
    cmocka_unit_test (sizes_stand_left_of_and_under_the_panel),
    cmocka_unit_test (a_dimension_that_is_too_short_for_its_value_is_left_out),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}

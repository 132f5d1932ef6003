/* tests/draw/test-flat-panel.c: a panel shows what is cut, what is hidden and what does not fit.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "draw/hut-flat-panel.h"
#include "draw/hut-draw-case.h"
#include "draw/hut-picture.h"

static HutPicture
draw (HutDrawCase *c,
      const char *panel,
      const HutFlatStyle *style)
{
  const guint index = hut_draw_case_panel (c, panel);
  HutPicture picture = hut_picture_new (CASE_WIDTH_PX, CASE_HEIGHT_PX);
  HutInk ink;

  c->view = hut_flat_view_fit (hut_flat_layout_panel_rect (c->layout, c->assembly, index),
                               CASE_WIDTH_PX, CASE_HEIGHT_PX, 60.0);
  hut_ink_begin (&ink, picture.cr, hut_palette_get (FALSE, FALSE), CASE_WIDTH_PX, CASE_HEIGHT_PX,
                 0.0);
  const HutFlatScene scene = { &ink, c->assembly, c->parts, NULL, c->layout, c->view, style };
  hut_flat_panel_fill (&scene, index);
  hut_flat_panel_draw (&scene, index);
  hut_ink_end (&ink);
  return picture;
}

/* Pixels of the outline's colour in a square round a point of the base front. */
static int
dark_px (const HutDrawCase *c,
         const HutPicture *picture,
         HutPoint at,
         int reach_px)
{
  double x, y;

  hut_flat_view_to_px (&c->view, c->layout, hut_draw_case_panel (c, "base-front"), at, &x, &y);
  return hut_picture_count (picture, hut_palette_get (FALSE, FALSE)->outline, (int)x - reach_px,
                            (int)y - reach_px, (int)x + reach_px, (int)y + reach_px);
}

static void
material_covers_its_area (void **state)
{
  g_auto (HutDrawCase) c = hut_draw_case_take (hut_draw_case_box ("base-front", 100, 40, 40));
  const HutFlatStyle style = hut_flat_style_plain ();
  g_auto (HutPicture) picture = draw (&c, "base-front", &style);
  const HutPanel *panel
      = g_ptr_array_index (c.assembly->panels, hut_draw_case_panel (&c, "base-front"));
  const double area_px2
      = hut_region_area_mm2 (panel->region) * c.view.scale_px_per_mm * c.view.scale_px_per_mm;
  const double edge_px2
      = hut_region_length_mm (panel->region) * c.view.scale_px_per_mm * 0.8; /* half of 1.6 px */

  /* Name of the hole covers a little of the hole. */
  assert_near (hut_picture_ink_px2 (&picture), area_px2 + edge_px2, 0.02 * area_px2);
}

static void
a_hole_that_is_not_cut_has_a_broken_outline (void **state)
{
  g_auto (HutDrawCase) cut = hut_draw_case_take (hut_draw_case_box ("base-front", 100, 40, 40));
  g_auto (HutDrawCase) not_cut = hut_draw_case_take (hut_draw_case_box ("base-front", 10, 40, 40));
  const HutFlatStyle style = hut_flat_style_plain ();
  g_auto (HutPicture) a = draw (&cut, "base-front", &style);
  g_auto (HutPicture) b = draw (&not_cut, "base-front", &style);

  assert_true (((HutPlacedHole *)g_ptr_array_index (cut.assembly->holes, 0))->cut);
  assert_false (((HutPlacedHole *)g_ptr_array_index (not_cut.assembly->holes, 0))->cut);
  /* A quarter circle of the outline: solid, or two thirds of it. */
  const int solid_px = dark_px (&cut, &a, (HutPoint){ 120, 40 }, 30);
  const int broken_px = dark_px (&not_cut, &b, (HutPoint){ 30, 40 }, 30);
  assert_true (solid_px > 20);
  assert_true (broken_px > 5);
  assert_true (broken_px < 0.85 * solid_px);
}

static void
the_panel_that_a_drop_would_go_to_stands_out (void **state)
{
  g_auto (HutDrawCase) c = hut_draw_case_take (hut_draw_case_box ("base-front", 100, 40, 40));
  const HutPanelId front = { HUT_SHELL_BASE, HUT_SIDE_FRONT },
                   back = { HUT_SHELL_BASE, HUT_SIDE_BACK };
  const HutColour colour = hut_palette_get (FALSE, FALSE)->selection;
  HutFlatStyle style = hut_flat_style_plain ();

  style.target = &front;
  g_auto (HutPicture) marked = draw (&c, "base-front", &style);
  style.target = &back;
  g_auto (HutPicture) plain = draw (&c, "base-front", &style);
  assert_true (hut_picture_count (&marked, colour, 0, 0, CASE_WIDTH_PX, CASE_HEIGHT_PX) > 500);
  assert_int_equal (hut_picture_count (&plain, colour, 0, 0, CASE_WIDTH_PX, CASE_HEIGHT_PX), 0);
}

static void
a_window_shows_glazing_and_frame_as_hidden_edges (void **state)
{
  g_auto (HutDrawCase) c = hut_draw_case_example ("mini-router");
  const HutFlatStyle style = hut_flat_style_plain ();
  g_auto (HutPicture) picture = draw (&c, "lid-front", &style);
  const HutPlate *plate = NULL;
  double x0, y0, x1, y1;

  for (guint i = 0; i < c.assembly->plates->len && plate == NULL; i++)
    plate = g_ptr_array_index (c.assembly->plates, i);
  assert_non_null (plate);
  const HutRect b = hut_region_bounds (plate->region);
  hut_flat_view_to_px (&c.view, c.layout, plate->panel, (HutPoint){ b.u0, (b.v0 + b.v1) / 2.0 },
                       &x0, &y0);
  hut_flat_view_to_px (&c.view, c.layout, plate->panel, (HutPoint){ b.u1, (b.v0 + b.v1) / 2.0 },
                       &x1, &y1);
  for (int side = 0; side < 2; side++)
    {
      const int x = (int)(side == 0 ? x0 : x1);
      int rows = 0;

      for (int y = (int)y0 - 45; y < (int)y0 + 45; y++)
        {
          gboolean seen = FALSE;

          for (int dx = -2; dx <= 2; dx++)
            {
              const HutColour p = hut_picture_at (&picture, x + dx, y);
              seen = seen
                     || hut_colour_contrast_ratio (p, hut_palette_get (FALSE, FALSE)->sheet) > 2.0;
            }
          rows += seen ? 1 : 0;
        }
      assert_true (rows > 40 && rows < 85); /* 6 of 9 px are drawn: about 60 of 90 */
    }
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (material_covers_its_area),
    cmocka_unit_test (a_hole_that_is_not_cut_has_a_broken_outline),
    cmocka_unit_test (the_panel_that_a_drop_would_go_to_stands_out),
    cmocka_unit_test (a_window_shows_glazing_and_frame_as_hidden_edges),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}

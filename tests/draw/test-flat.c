/* tests/draw/test-flat.c: the whole flat view: what is where, and what is left out.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "draw/hut-flat.h"
#include "draw/hut-draw-case.h"
#include "draw/hut-picture.h"

static HutFlatStyle
bare_style (void)
{
  HutFlatStyle style = hut_flat_style_plain ();

  style.show_machine = style.show_splices = style.show_dimensions = FALSE;
  return style;
}

static HutPicture
draw (const HutDrawCase *c,
      const HutFlatStyle *style)
{
  HutPicture picture = hut_picture_new (CASE_WIDTH_PX, CASE_HEIGHT_PX);

  hut_flat_draw (picture.cr, c->assembly, c->parts, NULL, c->layout, &c->view, style, CASE_WIDTH_PX,
                 CASE_HEIGHT_PX);
  assert_int_equal (cairo_status (picture.cr), CAIRO_STATUS_SUCCESS);
  return picture;
}

static HutColour
colour_at (const HutDrawCase *c,
           const HutPicture *picture,
           guint panel,
           HutPoint at)
{
  double x, y;

  hut_flat_view_to_px (&c->view, c->layout, panel, at, &x, &y);
  return hut_picture_at (picture, (int)floor (x), (int)floor (y));
}

static void
material_is_sheet_and_holes_are_ground (void **state)
{
  g_auto (HutDrawCase) c = hut_draw_case_take (hut_draw_case_box ("base-front", 100, 40, 40));
  const HutFlatStyle style = bare_style ();
  g_auto (HutPicture) picture = draw (&c, &style);
  const HutPalette *palette = hut_palette_get (FALSE, FALSE);
  const guint front = hut_draw_case_panel (&c, "base-front");

  assert_true (
      hut_colour_is_near (colour_at (&c, &picture, front, (HutPoint){ 200, 40 }), palette->sheet));
  assert_true (hut_colour_is_near (colour_at (&c, &picture, front, (HutPoint){ 108, 52 }),
                                   palette->background));
  assert_true (hut_colour_is_near (hut_picture_at (&picture, 2, 2), palette->background));
}

/* Where the region has no material inside the outer rectangle, fingers of the neighbour go: ground.
 */
static void
finger_gaps_are_ground_and_fingers_are_sheet (void **state)
{
  g_auto (HutDrawCase) c = hut_draw_case_take (hut_draw_case_box ("base-left", 60, 40, 10));
  const HutFlatStyle style = bare_style ();
  const guint left = hut_draw_case_panel (&c, "base-left");
  const HutPanel *panel = g_ptr_array_index (c.assembly->panels, left);
  const double half_mm = panel->edges[HUT_EDGE_RIGHT].depth_mm / 2.0;
  int gaps = 0, fingers = 0;

  c.view = hut_flat_view_fit (hut_flat_layout_panel_rect (c.layout, c.assembly, left),
                              CASE_WIDTH_PX, CASE_HEIGHT_PX, 60);
  g_auto (HutPicture) picture = draw (&c, &style);
  for (double v_mm = 4.0; v_mm < panel->height_mm - 4.0; v_mm += 1.0)
    {
      const HutPoint at = { panel->width_mm - half_mm, v_mm };
      const gboolean inside = hut_region_contains (panel->region, at);
      const HutColour seen = colour_at (&c, &picture, left, at);
      const HutPoint above = { at.u, v_mm + 1.0 }, below = { at.u, v_mm - 1.0 };

      if (hut_region_contains (panel->region, above) != inside
          || hut_region_contains (panel->region, below) != inside)
        continue; /* on the line itself */
      assert_true (hut_colour_is_near (seen, inside ? hut_palette_get (FALSE, FALSE)->sheet
                                                    : hut_palette_get (FALSE, FALSE)->background));
      *(inside ? &fingers : &gaps) += 1;
    }
  assert_true (gaps > 5 && fingers > 5);
}

static void
dark_style_draws_with_the_dark_palette (void **state)
{
  g_auto (HutDrawCase) c = hut_draw_case_take (hut_draw_case_box ("base-front", 100, 40, 40));
  HutFlatStyle style = bare_style ();

  style.dark = TRUE;
  g_auto (HutPicture) picture = draw (&c, &style);
  assert_true (hut_colour_is_near (hut_picture_at (&picture, 2, 2),
                                   hut_palette_get (TRUE, FALSE)->background));
}

static void
the_same_design_gives_the_same_picture (void **state)
{
  g_auto (HutDrawCase) c = hut_draw_case_example ("engraver");
  g_auto (HutDrawCase) d = hut_draw_case_example ("engraver");
  const HutFlatStyle style = hut_flat_style_plain ();
  g_auto (HutPicture) a = draw (&c, &style);
  g_auto (HutPicture) b = draw (&d, &style);
  const int bytes = cairo_image_surface_get_stride (a.surface) * CASE_HEIGHT_PX;

  cairo_surface_flush (a.surface);
  cairo_surface_flush (b.surface);
  assert_memory_equal (cairo_image_surface_get_data (a.surface),
                       cairo_image_surface_get_data (b.surface), (gsize)bytes);
}

/* Far away from all panels only the ground is left. */
static void
what_is_out_of_sight_is_not_drawn (void **state)
{
  g_auto (HutDrawCase) c = hut_draw_case_example ("engraver");
  const HutFlatStyle style = hut_flat_style_plain ();

  c.view.pan_x_px -= 100000.0;
  g_auto (HutPicture) picture = draw (&c, &style);
  assert_int_equal (hut_picture_count (&picture, hut_palette_get (FALSE, FALSE)->background, 0, 0,
                                       CASE_WIDTH_PX, CASE_HEIGHT_PX),
                    CASE_WIDTH_PX * CASE_HEIGHT_PX);
}

static void
legend_finds_a_corner_or_stays_away (void **state)
{
  g_auto (HutDrawCase) c = hut_draw_case_example ("engraver");
  HutFlatStyle style = bare_style ();

  style.show_legend = TRUE;
  g_auto (HutPicture) with = draw (&c, &style);
  assert_true (hut_picture_count (&with, hut_palette_get (FALSE, FALSE)->splice, 0, 0,
                                  CASE_WIDTH_PX, CASE_HEIGHT_PX)
               > 10);
  /* Zoomed in, panels are everywhere. */
  c.view = hut_flat_view_fit (
      hut_flat_layout_panel_rect (c.layout, c.assembly, hut_draw_case_panel (&c, "lid-top")),
      CASE_WIDTH_PX, CASE_HEIGHT_PX, -200.0);
  g_auto (HutPicture) without = draw (&c, &style);
  assert_int_equal (hut_picture_count (&without, hut_palette_get (FALSE, FALSE)->splice, 0, 0,
                                       CASE_WIDTH_PX, CASE_HEIGHT_PX),
                    0);
}

static void
an_enclosure_that_is_not_whole_is_just_ground (void **state)
{
  HutDesign *design = hut_design_new ();
  HutFlatStyle style = hut_flat_style_plain ();

  design->shell.fitted = FALSE;
  design->shell.inside_mm = (HutVec3){ 0.0, 0.0, 0.0 };
  g_auto (HutDrawCase) c = hut_draw_case_take (design);
  assert_false (c.assembly->whole);
  style.show_legend = TRUE;
  style.selected = "hole";
  g_auto (HutPicture) picture = draw (&c, &style);
  assert_int_equal (hut_picture_count (&picture, hut_palette_get (FALSE, FALSE)->background, 0, 0,
                                       CASE_WIDTH_PX, CASE_HEIGHT_PX),
                    CASE_WIDTH_PX * CASE_HEIGHT_PX);
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (material_is_sheet_and_holes_are_ground),
    cmocka_unit_test (finger_gaps_are_ground_and_fingers_are_sheet),
    cmocka_unit_test (dark_style_draws_with_the_dark_palette),
    cmocka_unit_test (the_same_design_gives_the_same_picture),
    cmocka_unit_test (what_is_out_of_sight_is_not_drawn),
    cmocka_unit_test (legend_finds_a_corner_or_stays_away),
    cmocka_unit_test (an_enclosure_that_is_not_whole_is_just_ground),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}

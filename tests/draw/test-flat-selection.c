/* tests/draw/test-flat-selection.c: frame, handles and guides of what is selected.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "draw/hut-flat-selection.h"
#include "draw/hut-draw-case.h"
#include "draw/hut-picture.h"

typedef void (*DrawPart) (const HutFlatScene *scene);

static int
count_colour (const HutDrawCase *c,
              DrawPart part,
              const HutFlatStyle *style,
              HutColour colour)
{
  g_auto (HutPicture) picture = hut_picture_new (CASE_WIDTH_PX, CASE_HEIGHT_PX);
  HutInk ink;

  hut_ink_begin (&ink, picture.cr, hut_palette_get (FALSE, FALSE), CASE_WIDTH_PX, CASE_HEIGHT_PX,
                 0.0);
  part (&(HutFlatScene){ &ink, c->assembly, c->parts, NULL, c->layout, c->view, style });
  hut_ink_end (&ink);
  return hut_picture_count_line (&picture, colour, 0, 0, CASE_WIDTH_PX, CASE_HEIGHT_PX);
}

static void
handles_are_found_at_the_corners_only (void **state)
{
  g_auto (HutDrawCase) c = hut_draw_case_take (hut_draw_case_box ("base-front", 100, 40, 40));
  const guint front = hut_draw_case_panel (&c, "base-front");
  const struct
  {
    HutPoint at;
    HutHandle handle;
  } cases[] = {
    { { 80, 20 }, HUT_HANDLE_LOWER_LEFT },   { { 120, 20 }, HUT_HANDLE_LOWER_RIGHT },
    { { 120, 60 }, HUT_HANDLE_UPPER_RIGHT }, { { 80, 60 }, HUT_HANDLE_UPPER_LEFT },
    { { 100, 40 }, HUT_HANDLE_NONE },        { { 100, 60 }, HUT_HANDLE_NONE },
  };

  for (gsize i = 0; i < G_N_ELEMENTS (cases); i++)
    {
      double x, y;

      hut_flat_view_to_px (&c.view, c.layout, front, cases[i].at, &x, &y);
      assert_int_equal (hut_flat_pick_handle (c.layout, c.assembly, &c.view, "hole", x, y),
                        cases[i].handle);
      assert_int_equal (hut_flat_pick_handle (c.layout, c.assembly, &c.view, NULL, x, y),
                        HUT_HANDLE_NONE);
    }
}

static void
a_pattern_has_no_handles (void **state)
{
  HutDesign *design = hut_draw_case_box ("base-front", 100, 40, 8);
  const HutPoint at[] = { { -20, -20 }, { 20, 20 } };
  HutOpening *opening = g_ptr_array_index (design->openings, 0);

  opening->shape = HUT_SHAPE_PATTERN;
  g_array_append_vals (opening->holes, at, 2);
  g_auto (HutDrawCase) c = hut_draw_case_take (design);
  assert_false (hut_flat_item_has_handles (c.assembly, "hole"));

  double x, y;
  hut_flat_view_to_px (&c.view, c.layout, hut_draw_case_panel (&c, "base-front"),
                       (HutPoint){ 76, 16 }, &x, &y);
  assert_int_equal (hut_flat_pick_handle (c.layout, c.assembly, &c.view, "hole", x, y),
                    HUT_HANDLE_NONE);
}

static void
only_what_is_selected_has_a_frame (void **state)
{
  g_auto (HutDrawCase) c = hut_draw_case_take (hut_draw_case_box ("base-front", 100, 40, 40));
  const HutColour colour = hut_palette_get (FALSE, FALSE)->selection;
  HutFlatStyle style = hut_flat_style_plain ();

  assert_int_equal (count_colour (&c, hut_flat_selection_draw, &style, colour), 0);
  style.selected = "no-such";
  assert_int_equal (count_colour (&c, hut_flat_selection_draw, &style, colour), 0);
  style.selected = "hole";
  assert_true (count_colour (&c, hut_flat_selection_draw, &style, colour) > 50);
}

static void
distances_are_drawn_when_asked_for (void **state)
{
  g_auto (HutDrawCase) c = hut_draw_case_take (hut_draw_case_box ("base-front", 100, 40, 40));
  const HutColour plate = hut_palette_get (FALSE, FALSE)->plate;
  HutFlatStyle style = hut_flat_style_plain ();

  style.selected = "hole";
  const int without = count_colour (&c, hut_flat_selection_draw, &style, plate);
  style.show_distances = TRUE;
  assert_true (count_colour (&c, hut_flat_selection_draw, &style, plate)
               > without + 100); /* label grounds */
}

static void
hovering_over_the_selected_item_adds_nothing (void **state)
{
  g_auto (HutDrawCase) c = hut_draw_case_take (hut_draw_case_box ("base-front", 100, 40, 40));
  HutFlatStyle style = hut_flat_style_plain ();
  g_auto (HutPicture) picture = hut_picture_new (CASE_WIDTH_PX, CASE_HEIGHT_PX);
  HutInk ink;

  hut_ink_begin (&ink, picture.cr, hut_palette_get (FALSE, FALSE), CASE_WIDTH_PX, CASE_HEIGHT_PX,
                 0.0);
  const HutFlatScene scene = { &ink, c.assembly, c.parts, NULL, c.layout, c.view, &style };
  style.hovered = style.selected = "hole";
  hut_flat_hover_draw (&scene);
  assert_near (hut_picture_ink_px2 (&picture), 0.0, 0.0);
  style.selected = NULL;
  hut_flat_hover_draw (&scene);
  assert_true (hut_picture_ink_px2 (&picture) > 50.0);
  hut_ink_end (&ink);
}

static void
guides_run_across_their_panel_and_beyond (void **state)
{
  g_auto (HutDrawCase) c = hut_draw_case_take (hut_draw_case_box ("base-front", 100, 40, 40));
  const guint front = hut_draw_case_panel (&c, "base-front");
  const HutGuide guide = { front, TRUE, 150.0 };
  const HutPanel *panel = g_ptr_array_index (c.assembly->panels, front);
  const HutColour colour = hut_palette_get (FALSE, FALSE)->guide;
  HutFlatStyle style = hut_flat_style_plain ();
  g_auto (HutPicture) picture = hut_picture_new (CASE_WIDTH_PX, CASE_HEIGHT_PX);
  HutInk ink;
  double x, top, bottom;

  style.guides = &guide;
  style.guide_count = 1;
  hut_ink_begin (&ink, picture.cr, hut_palette_get (FALSE, FALSE), CASE_WIDTH_PX, CASE_HEIGHT_PX,
                 0.0);
  c.view.pan_x_px = floor (c.view.pan_x_px);
  hut_flat_guides_draw (
      &(HutFlatScene){ &ink, c.assembly, c.parts, NULL, c.layout, c.view, &style });
  hut_ink_end (&ink);
  hut_flat_view_to_px (&c.view, c.layout, front, (HutPoint){ 150, panel->height_mm }, &x, &top);
  hut_flat_view_to_px (&c.view, c.layout, front, (HutPoint){ 150, 0 }, &x, &bottom);

  int rows = 0, beyond = 0;
  for (int y = 0; y < CASE_HEIGHT_PX; y++)
    {
      HutColour seen = { 0 };
      double most = 0.0;

      for (int dx = -2; dx <= 2; dx++)
        {
          const HutColour p = hut_picture_at (&picture, (int)x + dx, y);

          if (p.r > most)
            {
              most = p.r;
              seen = p;
            }
        }
      if (seen.r < 0.4 * colour.r)
        continue;
      rows++;
      beyond += y < top - 2 || y > bottom + 2 ? 1 : 0;
    }
  assert_true (rows > (bottom - top) / 3.0); /* dashed: half of it */
  assert_true (beyond > 4);
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (handles_are_found_at_the_corners_only),
    cmocka_unit_test (a_pattern_has_no_handles),
    cmocka_unit_test (only_what_is_selected_has_a_frame),
    cmocka_unit_test (distances_are_drawn_when_asked_for),
    cmocka_unit_test (hovering_over_the_selected_item_adds_nothing),
    cmocka_unit_test (guides_run_across_their_panel_and_beyond),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}

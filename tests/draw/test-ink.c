/* tests/draw/test-ink.c: outlines, patterns, hatches and numbers come out as asked.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "draw/hut-ink.h"
#include "draw/hut-picture.h"
#include "hut-assert.h"

static HutInk
begin (HutPicture *picture)
{
  HutInk ink;

  hut_ink_begin (&ink, picture->cr, hut_palette_get (FALSE, FALSE), picture->width, picture->height,
                 0.0);
  return ink;
}

static void
a_filled_circle_covers_its_area (void **state)
{
  g_auto (HutPicture) picture = hut_picture_new (200, 200);
  HutInk ink = begin (&picture);
  g_autoptr (HutPath) circle = hut_path_new_circle ((HutPoint){ 20, 10 }, 15);

  hut_ink_path (&ink, circle, 40.0, 140.0, 4.0); /* middle at (120, 100), radius 60 px */
  hut_ink_colour (&ink, (HutColour){ 0, 0, 0 });
  cairo_fill (picture.cr);
  hut_ink_end (&ink);
  assert_near (hut_picture_ink_px2 (&picture), G_PI * 60 * 60, 40.0);
  assert_near (hut_picture_at (&picture, 120, 100).g, 0.0, 0.01);
  assert_near (hut_picture_count (&picture, (HutColour){ 0, 0, 0 }, 119, 41, 121, 159), 2 * 118, 2);
}

static void
arcs_bulge_to_the_side_their_sign_says (void **state)
{
  g_auto (HutPicture) picture = hut_picture_new (100, 100);
  HutInk ink = begin (&picture);
  g_autoptr (HutPath) path = hut_path_new ();

  /* A square of 40 mm whose right side bulges out (counter-clockwise half circle) and whose left
   * side bulges in: the areas cancel. */
  hut_path_append (path, (HutPoint){ 20, 20 }, 0.0, HUT_EDGE_PLAIN);
  hut_path_append (path, (HutPoint){ 60, 20 }, 1.0, HUT_EDGE_PLAIN);
  hut_path_append (path, (HutPoint){ 60, 60 }, 0.0, HUT_EDGE_PLAIN);
  hut_path_append (path, (HutPoint){ 20, 60 }, -1.0, HUT_EDGE_PLAIN);
  hut_ink_path (&ink, path, 0.0, 90.0, 1.0);
  hut_ink_colour (&ink, (HutColour){ 0, 0, 0 });
  cairo_fill (picture.cr);
  hut_ink_end (&ink);
  assert_near (hut_picture_ink_px2 (&picture), 1600.0, 12.0);
  assert_int_equal (hut_picture_count (&picture, (HutColour){ 0, 0, 0 }, 70, 48, 76, 52),
                    24); /* right: full */
}

static void
region_leaves_its_holes_open (void **state)
{
  g_auto (HutPicture) picture = hut_picture_new (120, 120);
  HutInk ink = begin (&picture);
  g_autoptr (HutRegion) region
      = hut_region_new (hut_path_new_rect ((HutRect){ 0, 0, 100, 100 }, 0));

  hut_region_take_hole (region, hut_path_new_rect ((HutRect){ 30, 30, 50, 70 }, 0));
  hut_ink_region (&ink, region, 10.0, 110.0, 1.0);
  hut_ink_colour (&ink, (HutColour){ 0, 0, 0 });
  cairo_fill (picture.cr);
  hut_ink_end (&ink);
  assert_near (hut_picture_ink_px2 (&picture), 10000.0 - 800.0, 1.0);
}

/* The same line in each pattern: no two give the same picture, so none is told by colour alone. */
static void
no_two_line_patterns_look_alike (void **state)
{
  HutLineKind kind;
  const int length_px = 120;
  guchar rows[HUT_LINE_GUIDE + 1][120];

  for (kind = HUT_LINE_SOLID; kind <= HUT_LINE_GUIDE; kind++)
    {
      g_auto (HutPicture) picture = hut_picture_new (length_px, 3);
      HutInk ink = begin (&picture);

      hut_ink_line (&ink, kind, 1.0);
      hut_ink_colour (&ink, (HutColour){ 1, 1, 1 });
      cairo_move_to (picture.cr, 0.0, 1.5);
      cairo_line_to (picture.cr, length_px, 1.5);
      cairo_stroke (picture.cr);
      hut_ink_end (&ink);
      for (int x = 0; x < length_px; x++)
        rows[kind][x] = (guchar)(255.0 * hut_picture_at (&picture, x, 1).g);
    }
  for (int a = 0; a <= HUT_LINE_GUIDE; a++)
    for (int b = a + 1; b <= HUT_LINE_GUIDE; b++)
      {
        int differ_px = 0;

        for (int x = 0; x < length_px; x++)
          differ_px += ABS (rows[a][x] - rows[b][x]) > 100 ? 1 : 0;
        if (differ_px < 10)
          fail_msg ("patterns %d and %d differ in %d of %d px only", a, b, differ_px, length_px);
      }
}

static void
hatch_fills_its_box_evenly_and_nothing_else (void **state)
{
  g_auto (HutPicture) picture = hut_picture_new (300, 200);
  HutInk ink = begin (&picture);

  cairo_rectangle (picture.cr, 50, 40, 160, 100);
  cairo_clip (picture.cr);
  hut_ink_line (&ink, HUT_LINE_SOLID, 1.0);
  hut_ink_colour (&ink, (HutColour){ 0, 0, 0 });
  hut_ink_hatch (&ink, 50, 40, 160, 100, 10.0);
  hut_ink_end (&ink);
  /* Lines under 45 degrees, 10 px apart along x: each px row has one line, sqrt 2 px wide, per 10
   * px. */
  assert_near (hut_picture_ink_px2 (&picture), 160.0 * 100.0 * G_SQRT2 / 10.0, 60.0);
}

static void
hatch_of_a_huge_box_still_fills_what_is_seen (void **state)
{
  g_auto (HutPicture) picture = hut_picture_new (100, 100);
  HutInk ink = begin (&picture);

  hut_ink_line (&ink, HUT_LINE_SOLID, 1.0);
  hut_ink_colour (&ink, (HutColour){ 0, 0, 0 });
  hut_ink_hatch (&ink, -20000, -30000, 90000, 80000, 10.0);
  hut_ink_end (&ink);
  assert_near (hut_picture_ink_px2 (&picture), 100.0 * 100.0 * G_SQRT2 / 10.0, 40.0);
}

static void
assert_length (const HutInk *ink,
               double length_mm,
               guint decimals,
               const char *expected)
{
  g_autofree char *text = hut_ink_dup_length (ink, length_mm, decimals);

  assert_string_equal (text, expected);
}

static void
lengths_follow_unit_and_decimal_mark (void **state)
{
  g_auto (HutPicture) picture = hut_picture_new (10, 10);
  HutInk ink = begin (&picture);

  assert_length (&ink, 12.34, 1, "12.3");
  assert_length (&ink, 12.0, 1, "12");
  ink.decimal_point = ",";
  assert_length (&ink, 12.34, 1, "12,3");
  assert_string_equal (hut_ink_unit (&ink), "mm");
  ink.inches = TRUE;
  assert_length (&ink, 31.75, 1, "1,25");
  assert_string_equal (hut_ink_unit (&ink), "in");
  hut_ink_end (&ink);
}

static int
count_ink (HutPicture *picture,
           HutInkText how)
{
  HutInk ink = begin (picture);

  hut_ink_text (&ink, "HHH", &how);
  hut_ink_end (&ink);
  return (int)hut_picture_ink_px2 (picture);
}

static void
text_starts_ends_or_centres_at_its_point (void **state)
{
  const HutTextAlign aligns[] = { HUT_TEXT_START, HUT_TEXT_MIDDLE, HUT_TEXT_END };

  for (int i = 0; i < 3; i++)
    {
      g_auto (HutPicture) picture = hut_picture_new (200, 40);
      double left = 0.0, right = 0.0;

      assert_true (count_ink (&picture, (HutInkText){ .x_px = 100, .y_px = 20, .align = aligns[i] })
                   > 20);
      for (int y = 0; y < 40; y++)
        for (int x = 0; x < 200; x++)
          {
            const guint8 *data = cairo_image_surface_get_data (picture.surface);
            const double a = data[y * cairo_image_surface_get_stride (picture.surface) + 4 * x + 3];

            *(x < 100 ? &left : &right) += a;
          }
      if (aligns[i] == HUT_TEXT_START)
        assert_near (left, 0.0, 1.0);
      else if (aligns[i] == HUT_TEXT_END)
        assert_near (right, 0.0, 1.0);
      else
        assert_near (left / (left + right), 0.5, 0.12);
    }
}

static void
turned_text_is_higher_than_wide (void **state)
{
  g_auto (HutPicture) picture = hut_picture_new (100, 100);
  int columns = 0, rows = 0;

  count_ink (&picture,
             (HutInkText){ .x_px = 50, .y_px = 50, .align = HUT_TEXT_MIDDLE, .turned = TRUE });
  for (int i = 0; i < 100; i++)
    {
      double column = 0.0, row = 0.0;

      for (int k = 0; k < 100; k++)
        {
          const guint8 *data = cairo_image_surface_get_data (picture.surface);
          const int stride = cairo_image_surface_get_stride (picture.surface);

          column += data[k * stride + 4 * i + 3];
          row += data[i * stride + 4 * k + 3];
        }
      columns += column > 0.0 ? 1 : 0;
      rows += row > 0.0 ? 1 : 0;
    }
  assert_true (rows > columns + 5);
}

static void
plate_hides_what_lies_under_a_label (void **state)
{
  g_auto (HutPicture) picture = hut_picture_new (100, 40);
  const HutColour red = { 1, 0, 0 };

  cairo_set_source_rgb (picture.cr, 1, 0, 0);
  cairo_paint (picture.cr);
  count_ink (&picture,
             (HutInkText){ .x_px = 50, .y_px = 20, .align = HUT_TEXT_MIDDLE, .plate = TRUE });
  assert_int_equal (hut_picture_count (&picture, red, 42, 16, 58, 24), 0);
  assert_int_equal (hut_picture_count (&picture, red, 0, 0, 10, 40), 400);
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (a_filled_circle_covers_its_area),
    cmocka_unit_test (arcs_bulge_to_the_side_their_sign_says),
    cmocka_unit_test (region_leaves_its_holes_open),
    cmocka_unit_test (no_two_line_patterns_look_alike),
    cmocka_unit_test (hatch_fills_its_box_evenly_and_nothing_else),
    cmocka_unit_test (hatch_of_a_huge_box_still_fills_what_is_seen),
    cmocka_unit_test (lengths_follow_unit_and_decimal_mark),
    cmocka_unit_test (text_starts_ends_or_centres_at_its_point),
    cmocka_unit_test (turned_text_is_higher_than_wide),
    cmocka_unit_test (plate_hides_what_lies_under_a_label),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}

/* tests/draw/test-flat-marks.c: findings are marked where they are, each with its number and shape.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "draw/hut-flat-marks.h"
#include "draw/hut-draw-case.h"
#include "draw/hut-picture.h"

static void
add_finding (GPtrArray *findings,
             HutSeverity severity,
             HutPanelId panel,
             HutRect rect)
{
  HutFinding *finding = g_new0 (HutFinding, 1);
  const HutPlace place = { TRUE, panel, rect };

  finding->check = "opening.edge";
  finding->severity = severity;
  finding->message = "test";
  finding->places = g_array_new (FALSE, FALSE, sizeof (HutPlace));
  g_array_append_val (finding->places, place);
  g_ptr_array_add (findings, finding);
}

static GPtrArray *
new_findings (void)
{
  return g_ptr_array_new_with_free_func ((GDestroyNotify)hut_finding_free);
}

static const HutPanelId base_front = { HUT_SHELL_BASE, HUT_SIDE_FRONT };

static void
each_place_has_a_mark_on_its_upper_right_corner (void **state)
{
  g_auto (HutDrawCase) c = hut_draw_case_take (hut_draw_case_box ("base-front", 100, 40, 20));
  g_autoptr (GPtrArray) findings = new_findings ();
  g_autoptr (GArray) marks = NULL;
  double x, y;

  add_finding (findings, HUT_SEVERITY_BLOCKS, base_front, (HutRect){ 100, 30, 150, 50 });
  marks = hut_flat_marks_new (findings, c.assembly, c.layout, &c.view);
  assert_int_equal (marks->len, 1);
  const HutMark *mark = &g_array_index (marks, HutMark, 0);
  hut_flat_view_to_px (&c.view, c.layout, hut_draw_case_panel (&c, "base-front"),
                       (HutPoint){ 150, 50 }, &x, &y);
  assert_near (mark->x_px, x, 1e-6);
  assert_near (mark->y_px, y, 1e-6);
}

static void
a_place_on_a_panel_that_is_not_there_has_no_mark (void **state)
{
  g_auto (HutDrawCase) c = hut_draw_case_take (hut_draw_case_box ("base-front", 100, 40, 20));
  g_autoptr (GPtrArray) findings = new_findings ();
  g_autoptr (GArray) marks = NULL, none = NULL;

  add_finding (findings, HUT_SEVERITY_NOTES, (HutPanelId){ HUT_SHELL_BASE, HUT_SIDE_TOP },
               (HutRect){ 0, 0, 10, 10 });
  marks = hut_flat_marks_new (findings, c.assembly, c.layout, &c.view);
  assert_int_equal (marks->len, 0);
  none = hut_flat_marks_new (NULL, c.assembly, c.layout, &c.view);
  assert_int_equal (none->len, 0);
}

static void
badges_at_one_place_step_aside_and_are_picked_one_by_one (void **state)
{
  g_auto (HutDrawCase) c = hut_draw_case_take (hut_draw_case_box ("base-front", 100, 40, 20));
  g_autoptr (GPtrArray) findings = new_findings ();
  g_autoptr (GArray) marks = NULL;

  for (int i = 0; i < 6; i++)
    add_finding (findings, HUT_SEVERITY_WARNS, base_front, (HutRect){ 100, 30, 110, 40 });
  marks = hut_flat_marks_new (findings, c.assembly, c.layout, &c.view);
  for (guint i = 0; i < marks->len; i++)
    {
      const HutMark *a = &g_array_index (marks, HutMark, i);

      assert_int_equal (hut_flat_marks_pick (marks, a->x_px, a->y_px), (int)i);
      for (guint k = i + 1; k < marks->len; k++)
        {
          const HutMark *b = &g_array_index (marks, HutMark, k);

          assert_true (hypot (a->x_px - b->x_px, a->y_px - b->y_px) >= 2.0 * HUT_MARK_RADIUS_PX);
        }
    }
  assert_int_equal (hut_flat_marks_pick (marks, 3.0, 3.0), -1);
}

/* At the panel's upper border the badge moves inside: the caption above stays readable. */
static void
a_badge_stays_inside_its_panel (void **state)
{
  g_auto (HutDrawCase) c = hut_draw_case_take (hut_draw_case_box ("base-front", 100, 40, 20));
  const guint front = hut_draw_case_panel (&c, "base-front");
  const HutPanel *panel = g_ptr_array_index (c.assembly->panels, front);
  g_autoptr (GPtrArray) findings = new_findings ();
  g_autoptr (GArray) marks = NULL;
  double x, top;

  add_finding (findings, HUT_SEVERITY_BLOCKS, base_front,
               (HutRect){ 0, 0, panel->width_mm, panel->height_mm });
  marks = hut_flat_marks_new (findings, c.assembly, c.layout, &c.view);
  hut_flat_view_to_px (&c.view, c.layout, front, (HutPoint){ panel->width_mm, panel->height_mm },
                       &x, &top);
  assert_true (g_array_index (marks, HutMark, 0).y_px - HUT_MARK_RADIUS_PX >= top);
  assert_true (g_array_index (marks, HutMark, 0).x_px + HUT_MARK_RADIUS_PX <= x);
}

static double
badge_area_px2 (HutSeverity severity,
                int *width_px)
{
  g_auto (HutPicture) picture = hut_picture_new (60, 60);
  HutInk ink;

  hut_ink_begin (&ink, picture.cr, hut_palette_get (FALSE, FALSE), 60, 60, 0.0);
  hut_flat_mark_badge (&ink, severity, 0, 30, 30);
  hut_ink_end (&ink);
  *width_px = 0;
  for (int x = 0; x < 60; x++) /* a row in the upper third: there the triangle is narrow */
    *width_px
        += hut_colour_is_near (hut_picture_at (&picture, x, 23), (HutColour){ 0, 0, 0 }) ? 0 : 1;
  return hut_picture_ink_px2 (&picture);
}

static void
severities_have_shapes_of_their_own (void **state)
{
  int blocks_px, warns_px, notes_px;
  const double blocks = badge_area_px2 (HUT_SEVERITY_BLOCKS, &blocks_px);
  const double warns = badge_area_px2 (HUT_SEVERITY_WARNS, &warns_px);
  const double notes = badge_area_px2 (HUT_SEVERITY_NOTES, &notes_px);

  /* With its border of 1.2 px a circle of radius 9 covers pi 9.6^2 = 290 px2; the octagon,
   * radius 9.54, about 2.83 (9.54 + 0.65)^2 = 294 px2; the triangle, radius 13.05, with its mitred
   * corners 1.299 (13.05 + 1.2)^2 = 264 px2. */
  assert_near (notes, 290.0, 5.0);
  assert_near (blocks, 294.0, 6.0);
  assert_near (warns, 264.0, 8.0);
  assert_true (warns_px < notes_px - 3);
}

static void
badge_tells_its_number (void **state)
{
  double ink_px2[2];

  for (guint number = 1; number <= 2; number++)
    {
      g_auto (HutPicture) picture = hut_picture_new (60, 60);
      HutInk ink;
      int dark_px = 0;

      hut_ink_begin (&ink, picture.cr, hut_palette_get (FALSE, FALSE), 60, 60, 0.0);
      hut_flat_mark_badge (&ink, HUT_SEVERITY_BLOCKS, number * 11, 30, 30);
      hut_ink_end (&ink);
      dark_px = hut_picture_count (&picture, (HutColour){ 1, 1, 1 }, 22, 22, 38, 38);
      ink_px2[number - 1] = dark_px;
      assert_true (dark_px > 3);
    }
  assert_true (ink_px2[0] != ink_px2[1]);
}

static void
the_selected_finding_is_outlined_more_heavily (void **state)
{
  g_auto (HutDrawCase) c = hut_draw_case_take (hut_draw_case_box ("base-front", 100, 40, 20));
  g_autoptr (GPtrArray) findings = new_findings ();
  double ink_px2[2];

  add_finding (findings, HUT_SEVERITY_BLOCKS, base_front, (HutRect){ 100, 30, 150, 50 });
  for (int i = 0; i < 2; i++)
    {
      g_auto (HutPicture) picture = hut_picture_new (CASE_WIDTH_PX, CASE_HEIGHT_PX);
      HutFlatStyle style = hut_flat_style_plain ();
      HutInk ink;

      style.selected_finding = i - 1;
      hut_ink_begin (&ink, picture.cr, hut_palette_get (FALSE, FALSE), CASE_WIDTH_PX,
                     CASE_HEIGHT_PX, 0.0);
      hut_flat_marks_draw (
          &(HutFlatScene){ &ink, c.assembly, NULL, findings, c.layout, c.view, &style });
      hut_ink_end (&ink);
      ink_px2[i] = hut_picture_ink_px2 (&picture);
    }
  assert_true (ink_px2[1] > 1.2 * ink_px2[0]);
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (each_place_has_a_mark_on_its_upper_right_corner),
    cmocka_unit_test (a_place_on_a_panel_that_is_not_there_has_no_mark),
    cmocka_unit_test (badges_at_one_place_step_aside_and_are_picked_one_by_one),
    cmocka_unit_test (a_badge_stays_inside_its_panel),
    cmocka_unit_test (severities_have_shapes_of_their_own),
    cmocka_unit_test (badge_tells_its_number),
    cmocka_unit_test (the_selected_finding_is_outlined_more_heavily),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}

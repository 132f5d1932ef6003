/* tests/draw/test-flat-splice.c: splices, straps and the hinge line are drawn where they are.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "draw/hut-flat-splice.h"
#include "draw/hut-draw-case.h"
#include "draw/hut-picture.h"

typedef void (*DrawPart) (const HutFlatScene *scene, guint panel);

static HutPicture
draw (const HutDrawCase *c,
      DrawPart part,
      guint panel,
      const HutPartSet *parts)
{
  const HutFlatStyle style = hut_flat_style_plain ();
  HutPicture picture = hut_picture_new (CASE_WIDTH_PX, CASE_HEIGHT_PX);
  HutInk ink;

  hut_ink_begin (&ink, picture.cr, hut_palette_get (FALSE, FALSE), CASE_WIDTH_PX, CASE_HEIGHT_PX,
                 0.0);
  part (&(HutFlatScene){ &ink, c->assembly, parts, NULL, c->layout, c->view, &style }, panel);
  hut_ink_end (&ink);
  return picture;
}

static void
show_panel (HutDrawCase *c,
            guint panel)
{
  c->view = hut_flat_view_fit (hut_flat_layout_panel_rect (c->layout, c->assembly, panel),
                               CASE_WIDTH_PX, CASE_HEIGHT_PX, 30.0);
}

/* Each splice's fingers reach from one side of the line to the other, and over its whole length. */
static void
splice_fingers_fill_their_band (void **state)
{
  g_auto (HutDrawCase) c = hut_draw_case_example ("engraver");
  const HutColour colour = hut_palette_get (FALSE, FALSE)->splice;
  guint checked = 0;

  for (guint i = 0; i < c.parts->splices->len; i++)
    {
      const HutSplice *splice = &g_array_index (c.parts->splices, HutSplice, i);
      double x0, y0, x1, y1;

      if (splice->finger_count == 0 || splice->of != HUT_PART_PANEL || !splice->vertical)
        continue;
      show_panel (&c, splice->panel);
      g_auto (HutPicture) picture = draw (&c, hut_flat_splice_draw, splice->panel, c.parts);
      hut_flat_view_to_px (&c.view, c.layout, splice->panel,
                           (HutPoint){ splice->at_mm - splice->reach_mm, splice->to_mm }, &x0, &y0);
      hut_flat_view_to_px (&c.view, c.layout, splice->panel,
                           (HutPoint){ splice->at_mm + splice->reach_mm, splice->from_mm }, &x1,
                           &y1);
      /* Some ink at both sides of the band: the fingers really alternate. */
      assert_true (
          hut_picture_count_line (&picture, colour, (int)x0 - 2, (int)y0, (int)x0 + 3, (int)y1)
          > 10);
      assert_true (
          hut_picture_count_line (&picture, colour, (int)x1 - 2, (int)y0, (int)x1 + 3, (int)y1)
          > 10);
      /* Both ends. */
      assert_true (
          hut_picture_count_line (&picture, colour, (int)x0 - 2, (int)y0, (int)x1 + 3, (int)y0 + 60)
          > 5);
      assert_true (
          hut_picture_count_line (&picture, colour, (int)x0 - 2, (int)y1 - 60, (int)x1 + 3, (int)y1)
          > 5);
      checked++;
    }
  assert_true (checked > 0);
}

static void
without_parts_there_is_no_splice (void **state)
{
  g_auto (HutDrawCase) c = hut_draw_case_example ("engraver");

  for (guint i = 0; i < c.layout->panel_count; i++)
    {
      g_auto (HutPicture) picture = draw (&c, hut_flat_splice_draw, i, NULL);

      assert_near (hut_picture_ink_px2 (&picture), 0.0, 0.0);
    }
}

static void
straps_have_hidden_edges (void **state)
{
  g_auto (HutDrawCase) c = hut_draw_case_example ("engraver");
  const HutColour colour = hut_palette_get (FALSE, FALSE)->strap;
  guint straps = 0;

  for (guint i = 0; i < c.parts->solids->len; i++)
    {
      const HutSolid *solid = &g_array_index (c.parts->solids, HutSolid, i);

      if (solid->kind != HUT_SOLID_STRAP)
        continue;
      show_panel (&c, solid->panel);
      g_auto (HutPicture) picture = draw (&c, hut_flat_splice_draw, solid->panel, c.parts);
      assert_true (hut_picture_count_line (&picture, colour, 0, 0, CASE_WIDTH_PX, CASE_HEIGHT_PX)
                   > 20);
      straps++;
    }
  assert_true (straps > 0);
}

/* The hood of the engraver turns on a line at the back: seen along on the back panels, end on at
 * the sides, and not at all on the front. */
static void
hinge_line_lies_on_the_back_and_is_seen_end_on_at_the_sides (void **state)
{
  g_auto (HutDrawCase) c = hut_draw_case_example ("engraver");
  const HutColour colour = hut_palette_get (FALSE, FALSE)->hinge;
  const struct
  {
    const char *panel;
    double least_mm, most_mm; /* how wide it is drawn */
  } cases[] = { { "lid-back", 500, 700 },
                { "base-back", 500, 700 },
                { "lid-left", 2, 120 },
                { "lid-front", 0, 0 } };

  assert_true (c.assembly->hinged);
  for (gsize i = 0; i < G_N_ELEMENTS (cases); i++)
    {
      int left = CASE_WIDTH_PX, right = 0;

      g_auto (HutPicture) picture
          = draw (&c, hut_flat_hinge_draw, hut_draw_case_panel (&c, cases[i].panel), NULL);
      for (int x = 0; x < CASE_WIDTH_PX; x++)
        if (hut_picture_count_line (&picture, colour, x, 0, x + 1, CASE_HEIGHT_PX) > 0)
          {
            left = MIN (left, x);
            right = MAX (right, x + 1);
          }
      const double width_mm = MAX (0, right - left) / c.view.scale_px_per_mm;
      if (width_mm < cases[i].least_mm || width_mm > cases[i].most_mm)
        fail_msg ("%s: hinge line is %.1f mm wide, must be %.0f to %.0f", cases[i].panel, width_mm,
                  cases[i].least_mm, cases[i].most_mm);
    }
}

static void
a_lid_that_is_lifted_off_has_no_hinge_line (void **state)
{
  HutDesign *design = hut_draw_case_box ("base-front", 100, 40, 20);

  design->shell.lid = HUT_LID_LIFT_OFF;
  g_auto (HutDrawCase) c = hut_draw_case_take (design);
  assert_false (c.assembly->hinged);
  for (guint i = 0; i < c.layout->panel_count; i++)
    {
      g_auto (HutPicture) picture = draw (&c, hut_flat_hinge_draw, i, NULL);

      assert_near (hut_picture_ink_px2 (&picture), 0.0, 0.0);
    }
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (splice_fingers_fill_their_band),
    cmocka_unit_test (without_parts_there_is_no_splice),
    cmocka_unit_test (straps_have_hidden_edges),
    cmocka_unit_test (hinge_line_lies_on_the_back_and_is_seen_end_on_at_the_sides),
    cmocka_unit_test (a_lid_that_is_lifted_off_has_no_hinge_line),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}

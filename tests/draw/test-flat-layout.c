/* tests/draw/test-flat-layout.c: the box is unfolded without overlap, and pixels find their panel.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "draw/hut-flat-layout.h"
#include "draw/hut-draw-case.h"
#include "hut-random-design.h"

#define RANDOM_COUNT 150

static HutRect
rect_of (const HutDrawCase *c,
         const char *panel)
{
  return hut_flat_layout_panel_rect (c->layout, c->assembly, hut_draw_case_panel (c, panel));
}

static void
no_two_panels_overlap_in_random_designs (void **state)
{
  for (guint64 seed = 1; seed <= RANDOM_COUNT; seed++)
    {
      g_auto (HutDrawCase) c = hut_draw_case_take (hut_random_design (seed));

      for (guint i = 0; i < c.layout->panel_count; i++)
        for (guint k = i + 1; k < c.layout->panel_count; k++)
          {
            const HutRect a = hut_flat_layout_panel_rect (c.layout, c.assembly, i);
            const HutRect b = hut_flat_layout_panel_rect (c.layout, c.assembly, k);

            if (a.u0 < b.u1 && b.u0 < a.u1 && a.v0 < b.v1 && b.v0 < a.v1)
              fail_msg ("seed %" G_GUINT64_FORMAT ": panels %u and %u overlap", seed, i, k);
          }
    }
}

static void
with_two_rows_of_walls_left_and_right_stand_beside_the_front (void **state)
{
  g_auto (HutDrawCase) c = hut_draw_case_take (hut_draw_case_box ("base-front", 100, 40, 20));
  const char *const shells[] = { "base", "lid" };

  for (int i = 0; i < 2; i++)
    {
      g_autofree char *left = g_strdup_printf ("%s-left", shells[i]);
      g_autofree char *front = g_strdup_printf ("%s-front", shells[i]);
      g_autofree char *right = g_strdup_printf ("%s-right", shells[i]);

      assert_near_mm (rect_of (&c, front).u0 - rect_of (&c, left).u1, c.layout->gap_mm, 1e-9);
      assert_near_mm (rect_of (&c, right).u0 - rect_of (&c, front).u1, c.layout->gap_mm, 1e-9);
      assert_near_mm (rect_of (&c, left).v0, rect_of (&c, front).v0, 1e-9);
      assert_near_mm (rect_of (&c, left).v0, rect_of (&c, right).v0, 1e-9);
    }
}

static void
with_two_rows_of_walls_each_column_is_stacked_without_holes (void **state)
{
  g_auto (HutDrawCase) c = hut_draw_case_take (hut_draw_case_box ("base-front", 100, 40, 20));
  const char *const columns[][4] = { { "lid-top", "lid-front", "base-front", "base-bottom" },
                                     { "lid-back", "lid-right", "base-right", "base-back" } };

  for (gsize k = 0; k < G_N_ELEMENTS (columns); k++)
    for (gsize i = 0; i < 3; i++)
      {
        const HutRect upper = rect_of (&c, columns[k][i]), lower = rect_of (&c, columns[k][i + 1]);

        assert_near_mm (upper.v0 - lower.v1, c.layout->gap_mm, 1e-9);
        assert_near_mm (upper.u0, lower.u0, 1e-9);
      }
}

static void
with_one_row_of_walls_they_stand_in_the_order_round_the_box (void **state)
{
  HutDesign *design = hut_draw_case_box ("base-front", 100, 40, 20);

  design->shell.lid = HUT_LID_TOP;
  g_auto (HutDrawCase) c = hut_draw_case_take (design);
  assert_near_mm (rect_of (&c, "base-front").u0 - rect_of (&c, "base-left").u1, c.layout->gap_mm,
                  1e-9);
  assert_near_mm (rect_of (&c, "base-right").u0 - rect_of (&c, "base-front").u1, c.layout->gap_mm,
                  1e-9);
  assert_near_mm (rect_of (&c, "base-back").u0 - rect_of (&c, "base-right").u1, c.layout->gap_mm,
                  1e-9);
  assert_near_mm (rect_of (&c, "lid-top").v0 - rect_of (&c, "base-front").v1, c.layout->gap_mm,
                  1e-9);
  assert_near_mm (rect_of (&c, "base-front").v0 - rect_of (&c, "base-bottom").v1, c.layout->gap_mm,
                  1e-9);
}

/* The edge that two neighbours in the drawing share is the same line in the world. */
static void
neighbours_in_the_drawing_are_neighbours_in_the_world (void **state)
{
  HutDesign *design = hut_draw_case_box ("base-front", 100, 40, 20);
  const char *const pairs[][2] = { { "base-left", "base-front" },
                                   { "base-front", "base-right" },
                                   { "base-right", "base-back" } };

  design->shell.lid = HUT_LID_TOP;
  g_auto (HutDrawCase) c = hut_draw_case_take (design);
  for (gsize i = 0; i < G_N_ELEMENTS (pairs); i++)
    {
      const HutPanel *a
          = g_ptr_array_index (c.assembly->panels, hut_draw_case_panel (&c, pairs[i][0]));
      const HutPanel *b
          = g_ptr_array_index (c.assembly->panels, hut_draw_case_panel (&c, pairs[i][1]));
      const HutVec3 right = hut_frame3_to_world (&a->frame, a->width_mm, 10.0, 0.0);
      const HutVec3 left = hut_frame3_to_world (&b->frame, 0.0, 10.0, 0.0);

      assert_near_mm (right.x, left.x, 1e-9);
      assert_near_mm (right.y, left.y, 1e-9);
      assert_near_mm (right.z, left.z, 1e-9);
    }
}

static void
hinged_front_closes_the_row_of_the_base (void **state)
{
  g_auto (HutDrawCase) c = hut_draw_case_example ("mini-router");

  assert_near_mm (rect_of (&c, "lid-front").v0, rect_of (&c, "base-left").v0, 1e-9);
  assert_true (rect_of (&c, "lid-front").u0 > rect_of (&c, "base-left").u1);
  assert_true (rect_of (&c, "lid-front").u1 < rect_of (&c, "base-right").u0);
}

static void
bounds_hold_all_panels_and_touch_them (void **state)
{
  g_auto (HutDrawCase) c = hut_draw_case_example ("engraver");
  const HutRect b = c.layout->bounds;
  HutRect seen = { INFINITY, INFINITY, -INFINITY, -INFINITY };

  for (guint i = 0; i < c.layout->panel_count; i++)
    {
      const HutRect r = hut_flat_layout_panel_rect (c.layout, c.assembly, i);

      seen.u0 = MIN (seen.u0, r.u0);
      seen.v0 = MIN (seen.v0, r.v0);
      seen.u1 = MAX (seen.u1, r.u1);
      seen.v1 = MAX (seen.v1, r.v1);
    }
  assert_near_mm (b.u0, seen.u0, 0);
  assert_near_mm (b.v0, seen.v0, 0);
  assert_near_mm (b.u1, seen.u1, 0);
  assert_near_mm (b.v1, seen.v1, 0);
}

static void
enclosure_that_is_not_whole_has_an_empty_layout (void **state)
{
  HutDesign *design = hut_design_new ();

  design->shell.fitted = FALSE;
  design->shell.inside_mm = (HutVec3){ -1.0, 100.0, 100.0 };
  g_auto (HutDrawCase) c = hut_draw_case_take (design);

  assert_false (c.assembly->whole);
  assert_int_equal (c.layout->panel_count, 0);
  assert_true (c.layout->bounds.u1 < c.layout->bounds.u0);
  assert_near (hut_flat_view_fit (c.layout->bounds, 100, 100, 10).scale_px_per_mm, 1.0, 0.0);
}

static void
fit_puts_the_drawing_in_the_middle_within_the_border (void **state)
{
  /* 200 x 100 mm in 440 x 400 px with 20 px border: 400 / 200 = 2 px per mm */
  const HutFlatView view = hut_flat_view_fit ((HutRect){ 10, 20, 210, 120 }, 440, 400, 20);

  assert_near (view.scale_px_per_mm, 2.0, 1e-12);
  assert_near (view.pan_x_px + 10 * 2.0, 20.0, 1e-9);  /* left border */
  assert_near (view.pan_y_px - 70 * 2.0, 200.0, 1e-9); /* middle of the height */
}

static void
a_pixel_leads_to_the_point_it_came_from (void **state)
{
  g_auto (HutDrawCase) c = hut_draw_case_example ("engraver");

  for (guint i = 0; i < c.layout->panel_count; i++)
    {
      const HutPanel *panel = g_ptr_array_index (c.assembly->panels, i);
      const HutPoint from = { panel->width_mm / 3.0, panel->height_mm / 4.0 };
      HutPoint at;
      double x, y;

      hut_flat_view_to_px (&c.view, c.layout, i, from, &x, &y);
      assert_int_equal (hut_flat_pick_panel (c.layout, c.assembly, &c.view, x, y, &at), (int)i);
      assert_near_mm (at.u, from.u, 1e-6);
      assert_near_mm (at.v, from.v, 1e-6);
    }
}

static void
between_panels_there_is_none (void **state)
{
  g_auto (HutDrawCase) c = hut_draw_case_example ("engraver");
  const guint front = hut_draw_case_panel (&c, "base-front");
  HutPoint at = { 7, 7 };
  double x, y;

  hut_flat_view_to_px (&c.view, c.layout, front, (HutPoint){ -c.layout->gap_mm / 2.0, 50.0 }, &x,
                       &y);
  assert_int_equal (hut_flat_pick_panel (c.layout, c.assembly, &c.view, x, y, &at), -1);
  assert_near_mm (at.u, 7.0, 0.0);
}

static HutDesign *
two_holes (void)
{
  HutDesign *design = hut_draw_case_box ("base-front", 100, 40, 60);
  HutOpening *small = hut_opening_copy (g_ptr_array_index (design->openings, 0));

  g_free (small->id);
  small->id = g_strdup ("small");
  small->at.u_offset_mm = 135.0;
  small->diameter_mm = 8.0;
  g_ptr_array_add (design->openings, small);
  return design;
}

static const char *
item_at (const HutDrawCase *c,
         double u_mm,
         double v_mm,
         double reach_px)
{
  double x, y;

  hut_flat_view_to_px (&c->view, c->layout, hut_draw_case_panel (c, "base-front"),
                       (HutPoint){ u_mm, v_mm }, &x, &y);
  return hut_flat_pick_item (c->layout, c->assembly, &c->view, x, y, reach_px);
}

static void
what_is_under_the_pixel_goes_before_what_is_near (void **state)
{
  g_auto (HutDrawCase) c = hut_draw_case_take (two_holes ());
  const double near_px = 3.0 * c.view.scale_px_per_mm; /* reaches 3 mm */

  assert_string_equal (item_at (&c, 100, 40, near_px), "hole");
  assert_string_equal (item_at (&c, 135, 40, near_px), "small");
  assert_string_equal (item_at (&c, 129.5, 40, near_px),
                       "hole"); /* in it, though "small" is nearer than 3 mm */
  assert_string_equal (item_at (&c, 141.0, 40, near_px), "small"); /* beside it */
  assert_null (item_at (&c, 145.0, 40, near_px));
}

/* Screws of a window's frame belong to the window, both leaves of a hinge to the hinge. */
static void
stepping_visits_each_item_once_and_ends (void **state)
{
  for (const char *const *name = hut_example_names (); *name != NULL; name++)
    {
      g_auto (HutDrawCase) c = hut_draw_case_example (*name);
      const HutDesign *design = c.assembly->design;
      g_autoptr (GHashTable) seen = g_hash_table_new (g_str_hash, g_str_equal);
      g_autoptr (GPtrArray) order = g_ptr_array_new ();
      const char *item = NULL;

      while ((item = hut_flat_next_item (c.assembly, item, TRUE)) != NULL)
        {
          assert_true (g_hash_table_add (seen, (gpointer)item));
          g_ptr_array_add (order, (gpointer)item);
        }
      assert_int_equal (order->len,
                        design->windows->len + design->openings->len + design->hardware->len);
      for (guint i = order->len; i-- > 0;)
        {
          item = hut_flat_next_item (c.assembly, item, FALSE);
          assert_string_equal (item, g_ptr_array_index (order, i));
        }
      assert_null (hut_flat_next_item (c.assembly, item, FALSE));
    }
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (no_two_panels_overlap_in_random_designs),
    cmocka_unit_test (with_two_rows_of_walls_left_and_right_stand_beside_the_front),
    cmocka_unit_test (with_two_rows_of_walls_each_column_is_stacked_without_holes),
    cmocka_unit_test (with_one_row_of_walls_they_stand_in_the_order_round_the_box),
    cmocka_unit_test (neighbours_in_the_drawing_are_neighbours_in_the_world),
    cmocka_unit_test (hinged_front_closes_the_row_of_the_base),
    cmocka_unit_test (bounds_hold_all_panels_and_touch_them),
    cmocka_unit_test (enclosure_that_is_not_whole_has_an_empty_layout),
    cmocka_unit_test (fit_puts_the_drawing_in_the_middle_within_the_border),
    cmocka_unit_test (a_pixel_leads_to_the_point_it_came_from),
    cmocka_unit_test (between_panels_there_is_none),
    cmocka_unit_test (what_is_under_the_pixel_goes_before_what_is_near),
    cmocka_unit_test (stepping_visits_each_item_once_and_ends),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}
